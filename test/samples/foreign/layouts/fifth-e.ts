import { dovecart, wrenmarket } from '../designs/fifth-labels-e.js';
import { ticket, voucher } from '../designs/fifth-none.js';
import { foldDown, foldLine, packing, steps } from '../designs/fifth-papers.js';
import { ALL_TEN, posted, tongue } from '../designs/fifth-words.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { FONTS, INNER } from './fifth-parts.js';
import type { Styled } from './fifth-parts.js';
import { a4, a6, documents, letter } from './fourth-parts.js';
import { cycle, label, other, page, range, slipPart } from './parts.js';

const BOXED: readonly Styled[] = [
  [wrenmarket, 'ink'],
  [dovecart, 'ink'],
];

const boxesInside: Layout = {
  name: 'z29-boxes-inside',
  about:
    'fpdf2 and muhammara, labels with boxes inside and none around: alone on 4x6 in, in the upper left of A4, lying on the upper half with steps below a line, beside a packing list',
  documents: () => {
    const pages = range(16).map((i): Page => {
      const each = posted(2900 + i, tongue(i, ALL_TEN));
      const [design, edge] = cycle(BOXED, i + Math.floor(i / 8));
      const art = design(each, INNER);
      const kind = Math.floor(i / 2) % 4;
      if (kind === 0) return page('label', SIZES['4x6'], [label(art, { x: 8.5, y: 8.5 }, 'page')]);
      if (kind === 1) return page('label', a4, [label(art, { x: 26, y: 30 }, edge)]);
      if (kind === 2)
        return page('label', letter, [
          label(art, { x: (letter.width - INNER.height) / 2, y: 46, turn: i % 4 < 2 ? 270 : 90 }, edge),
          other(foldLine(letter.width - 40, each.words.fold), { x: 20, y: letter.height / 2 - 14 }),
          other(steps(each, { width: 460, height: 280 }), { x: 76, y: letter.height / 2 + 36 }),
        ]);
      return page('label', { width: a4.height, height: a4.width }, [
        label(art, { x: 60, y: (a4.width - INNER.height) / 2 }, edge),
        other(foldDown(a4.width - 30), { x: a4.height / 2 - 1, y: 15 }),
        slipPart(packing(each, { width: a4.height / 2 - 90, height: 400 }), { x: a4.height / 2 + 40, y: 70 }),
      ]);
    });
    return documents(
      'z29-boxes-inside',
      pages,
      { producer: 'fpdf2', fonts: FONTS.open },
      { producer: 'muhammara', fonts: FONTS.liberation },
    );
  },
};

const ticketsNone: Layout = {
  name: 'z30-tickets-none',
  about: 'tickets that name who comes without a label’s word, and gift cards, on label paper and A6: no label',
  documents: () => {
    const pages = range(12).map((i): Page => {
      const each = posted(3000 + i, tongue(i, ALL_TEN));
      const size = i % 4 === 3 ? a6 : SIZES['4x6'];
      const spot = { width: size.width - 32, height: size.height - 36 };
      const bare = { ...each, words: { ...each.words, label: { ...each.words.label, to: 'No. 12', ref: '#' } } };
      const code = cycle(['code128', 'qr', 'aztec', 'pdf417'] as const, i);
      const gift = voucher(each, spot, cycle(['code128', 'datamatrix', 'qr'] as const, i), i % 2 === 0);
      return page(i % 3 === 2 ? 'advert' : 'other', size, [other(i % 3 === 2 ? gift : ticket(bare, spot, code), { x: 16, y: 18 })]);
    });
    return documents('z30-tickets-none', pages, { producer: 'fpdf2', fonts: FONTS.lato }, { producer: 'react-pdf' });
  },
};

export const FIFTH_E = [boxesInside, ticketsNone] as const;
