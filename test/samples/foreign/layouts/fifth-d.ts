import { albarela, bramblebox, fernhaul, kurenne, osprelle } from '../designs/fifth-labels-d.js';
import { customsSheet, foldLine, invoiceSheet, numberOf, packing, steps, stub, tab } from '../designs/fifth-papers.js';
import { ALL_TEN, posted, tongue } from '../designs/fifth-words.js';
import { Art } from '../kit/art.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { FONTS, INNER, MORE, OPEN, POST } from './fifth-parts.js';
import type { Styled } from './fifth-parts.js';
import { a4, a5, a6, documents, letter } from './fourth-parts.js';
import { cycle, label, other, page, range, slipPart } from './parts.js';

const ABROAD: readonly Styled[] = [[albarela, 'frame'], [kurenne, 'ink'], POST];
const LAST: readonly Styled[] = [
  [fernhaul, 'ink'],
  [bramblebox, 'ink'],
  [osprelle, 'ink'],
];

const abroadAlone: Layout = {
  name: 'z23-abroad-alone',
  about:
    'iText 5, a post’s label for abroad with the declaration inside, framed or not: alone on 4x6 in or A6, or in the upper left of A4 with nothing else',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(2300 + i, tongue(i, ALL_TEN));
      const [design, edge] = cycle(ABROAD, i);
      if (i % 4 === 3) return page('label', a4, [label(design(each, INNER), { x: 24, y: 24 }, edge)]);
      if (i % 4 === 2) return page('label', a6, [label(design(each, { width: 272, height: 402 }), { x: 13, y: 9 }, edge)]);
      return page('label', SIZES['4x6'], [label(design(each, INNER), { x: 8.5, y: 8.5 }, 'page')]);
    });
    return documents('z23-abroad-alone', pages, { producer: 'itext5', fonts: FONTS.liberation }, { producer: 'itext5', fonts: FONTS.open });
  },
};

const abroadFolded: Layout = {
  name: 'z24-abroad-folded',
  about:
    'PDF::Builder, letter and A4: such a label lying on the upper half, steps, receipt or the trade’s invoice below the line; or the invoice on the next page',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = posted(2400 + i, tongue(i + 8));
      const [design, edge] = cycle(ABROAD, i + 1);
      const size = i % 2 === 0 ? letter : a4;
      const [top, low] = [(size.width - INNER.height) / 2, size.height / 2];
      const art = label(design(each, INNER), { x: top, y: 40, turn: i % 4 === 3 ? 270 : 90 }, edge);
      const bill = invoiceSheet(each, { width: size.width - 130, height: 320 }, 'none');
      if (i % 4 === 1) return [page('label', size, [art]), page('invoice', size, [other(bill, { x: 65, y: 50 })])];
      const below =
        i % 4 === 2 ? stub(each, { width: 270, height: 240 }, numberOf(each)) : steps(each, { width: size.width - 140, height: 260 });
      return [
        page('label', size, [
          art,
          other(foldLine(size.width - 40, each.words.fold), { x: 20, y: low - 22 }),
          other(below, { x: 70, y: low + 30 }),
        ]),
      ];
    });
    return documents(
      'z24-abroad-folded',
      pages,
      { producer: 'pdf-builder', fonts: { sans: 'Sans' } },
      { producer: 'pdf-builder', fonts: { sans: 'SansNarrow' } },
    );
  },
};

const plainHalf: Layout = {
  name: 'z25-open-half',
  about:
    'iText 5, letter and A4: label without a frame lying on the upper half or upright in a corner; packing list or receipt elsewhere, a line between or only white',
  documents: () => {
    const pages = range(9).map((i): Page => {
      const each = posted(2500 + i, tongue(i + 1));
      const [design, edge] = cycle(LAST, i);
      const size = i % 2 === 0 ? a4 : letter;
      const list = packing(each, { width: size.width - 140, height: 300 }, i % 2 === 0);
      if (i % 3 === 2)
        return page('label', size, [
          label(design(each, INNER), { x: size.width - INNER.width - 34, y: size.height - INNER.height - 40 }, edge),
          other(stub(each, { width: 220, height: 220 }, numberOf(each), i === 5), { x: 40, y: 60 }),
        ]);
      return page('label', size, [
        label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: 44, turn: i % 2 === 0 ? 90 : 270 }, edge),
        ...(i % 3 === 0 ? [other(foldLine(size.width, '', true), { x: 0, y: size.height / 2 - 16 })] : []),
        slipPart(list, { x: 70, y: size.height / 2 + 34 }),
      ]);
    });
    return documents('z25-open-half', pages, { producer: 'itext5', fonts: FONTS.lato }, { producer: 'itext5', fonts: FONTS.roboto });
  },
};

const openSmall: Layout = {
  name: 'z26-open-small',
  about: 'PDF::Builder, pages of 4x6 in, 100x150 mm, A6 and A5: such a label alone, on A5 with the packing list’s first lines below a line',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(2600 + i, tongue(i));
      const [design, edge] = cycle(LAST, i + 1);
      const size = cycle([SIZES['4x6'], SIZES['100x150'], a6, a5], i);
      const art = design(each, { width: 264, height: 404 });
      const at = { x: (size.width - 264) / 2, y: size === a5 ? 20 : (size.height - 404) / 2 };
      if (size !== a5) return page('label', size, [label(art, at, i % 4 === 0 ? 'page' : edge)]);
      return page('label', size, [
        label(art, at, edge),
        other(foldLine(a5.width - 20, each.words.cut), { x: 10, y: 434 }),
        slipPart(tab(each, 330, 'contents'), { x: 44, y: 464 }),
      ]);
    });
    return documents(
      'z26-open-small',
      pages,
      { producer: 'pdf-builder', fonts: { sans: 'Sans' } },
      { producer: 'pdf-builder', fonts: { sans: 'SansNarrow' } },
    );
  },
};

const tabsAgain: Layout = {
  name: 'z27-tab-again',
  about:
    'MuPDF and muhammara, pages of 4x8 in and 4x6.75 in: label on the upper six inches, a perforated line short of the edges, receipt or contents below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(2700 + i, tongue(i + 8));
      const [design, edge] = cycle([...LAST, ...OPEN.slice(0, 5)], i);
      const long = i % 2 === 0;
      const size = long ? SIZES['4x8'] : SIZES['4x6.75'];
      const line = other(foldLine(264, '', true), { x: 12, y: 419 });
      const below = tab(each, 252, i % 4 === 0 ? 'receipt' : 'contents');
      const brief = new Art(252, 16).text(0, 12, `${each.words.slip[3]} ${each.parcel.order}   ${each.parcel.mark}`, { size: 8, fit: 252 });
      const part = !long
        ? other(brief, { x: 18, y: 448 })
        : i % 4 === 0
          ? other(below, { x: 18, y: 446 })
          : slipPart(below, { x: 18, y: 446 });
      return page('label', size, [label(design(each, { width: 264, height: 408 }), { x: 12, y: 9 }, edge), line, part]);
    });
    return documents('z27-tab-again', pages, { producer: 'mupdf' }, { producer: 'muhammara', fonts: FONTS.open });
  },
};

const withForm: Layout = {
  name: 'z28-with-form',
  about:
    'XeTeX, A4 and letter: label for abroad lying on the upper half, the full declaration in a frame below a line; or label alone and the form on the next page',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = posted(2800 + i, tongue(i + 8, ALL_TEN));
      const [design, edge] = cycle([...MORE.slice(0, 2), ...LAST], i);
      const size = i % 2 === 0 ? a4 : letter;
      const art = label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: 38, turn: 90 }, edge);
      const form = customsSheet(each, { width: size.width - 110, height: 320 }, i % 4 < 2);
      if (i % 2 === 1) return [page('label', size, [art]), page('customs', size, [other(form, { x: 55, y: 50 })])];
      return [
        page('customs', size, [
          art,
          other(foldLine(size.width - 60, each.words.cut), { x: 30, y: size.height / 2 - 30 }),
          other(form, { x: 55, y: size.height / 2 + 20 }),
        ]),
      ];
    });
    return documents('z28-with-form', pages, { producer: 'xetex', fonts: FONTS.roboto }, { producer: 'xetex', fonts: FONTS.liberation });
  },
};

export const FIFTH_D = [abroadAlone, abroadFolded, plainHalf, openSmall, tabsAgain, withForm] as const;
