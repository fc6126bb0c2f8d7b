import { halvorne } from '../designs/fourth-labels-b.js';
import { bill, declaration, foldAcross, instructions, masthead, returnSheet } from '../designs/fourth-papers.js';
import type { Sent } from '../designs/fourth-words.js';
import { ALL, sent, WEST } from '../designs/fourth-words.js';
import { Art } from '../kit/art.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { a4, documents, INNER, letter, UPRIGHT } from './fourth-parts.js';
import { cutLabel, cycle, label, other, page, range } from './parts.js';

const thenInvoice: Layout = {
  name: 'w12-then-invoice',
  about: 'iText, a label on a page of 4x6 in and its invoice on the next page of A4 or letter, order by order',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = sent(1200 + i, i % ALL);
      const [design] = cycle(UPRIGHT, i + 2);
      const size = i % 2 === 0 ? a4 : letter;
      return [
        page('label', SIZES['4x6'], [label(design(each, { width: 276, height: 418 }), { x: 6, y: 7 }, 'page')]),
        page('invoice', size, [
          other(bill(each, { width: size.width - 110, height: 600 }, cycle(['none', 'qr', 'none', 'code128'] as const, i)), {
            x: 55,
            y: 44,
          }),
        ]),
      ];
    });
    return documents(
      'w12-then-invoice',
      pages,
      { producer: 'itext', fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' } },
      { producer: 'itext', fonts: { sans: 'dejavu/DejaVuSans', serif: 'dejavu/DejaVuSerif' } },
    );
  },
};

/** Back goes from the buyer to the shop. */
const goingBack = (each: Sent): Sent => ({ ...each, parcel: { ...each.parcel, from: each.parcel.to, to: each.parcel.from } });

const returned: Layout = {
  name: 'w13-return-letter',
  about:
    'pdfkit, letter and A4: head of the shop, return label upright or lying in a cut line or its frame, below it the sheet with reasons for the box',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const sold = sent(1300 + i, i % WEST);
      const each = goingBack(sold);
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(UPRIGHT, i * 4);
      const lying = i % 4 === 1;
      const turn: Turn = lying ? 90 : 0;
      const art = design(each, { ...INNER, back: true });
      const at = { x: lying ? 84 : 46, y: 128, turn };
      const steps = new Art(210, 220).text(0, 12, sold.words.back[0], { size: 12, bold: true, fit: 210 });
      let y = 32;
      for (const step of sold.words.how.slice(2, 5)) y = steps.paragraph(0, y, 210, step, { size: 9.5, leading: 12 }) + 6;
      return page('return-label', size, [
        other(masthead(sold, 480), { x: 46, y: 28 }),
        other(new Art(480, 24).text(0, 18, sold.words.back[0], { size: 18, bold: true, fit: 480 }), { x: 46, y: 84 }),
        i % 2 === 0 ? cutLabel(art, at, 8, 'return-label') : label(art, at, edge, 'return-label'),
        ...(lying ? [] : [other(steps, { x: 346, y: 140 })]),
        other(returnSheet(sold, { width: 500, height: 140 }, i % 3 !== 2), { x: 46, y: lying ? 470 : 592 }),
      ]);
    });
    return documents('w13-return-letter', pages, { producer: 'pdfkit' }, { producer: 'pdfkit', fonts: { sans: 'open-sans/OpenSans' } });
  },
};

const abroad: Layout = {
  name: 'w14-declared',
  about:
    'jsPDF, A4 with the label lying on top and the declaration for customs below; or a label of 4x6 in and its declaration on a second page of 4x6 in',
  documents: () => {
    const sheets = range(4).map((i): Page => {
      const each = sent(1400 + i, i * 2);
      const [design, edge] = cycle(UPRIGHT, i * 2);
      return page('label', a4, [
        label(design(each, INNER), { x: (a4.width - INNER.height) / 2, y: 44, turn: 90 }, edge),
        other(foldAcross(a4.width - 40, each.words.cut), { x: 20, y: a4.height / 2 - 22 }),
        other(declaration(each, { width: 500, height: 330 }), { x: 48, y: a4.height / 2 + 22 }),
      ]);
    });
    const pairs = range(4).flatMap((i): Page[] => {
      const each = sent(1440 + i, i * 2 + 1);
      const [design] = cycle(UPRIGHT, i * 2 + 3);
      const form = declaration(each, { width: 410, height: 270 }, i % 2 === 0);
      return [
        page('label', SIZES['4x6'], [label(design(each, INNER), { x: 8, y: 9 }, 'page')]),
        page('customs', SIZES['4x6'], [other(form, { x: 9, y: 11, turn: 90 })]),
      ];
    });
    return documents('w14-declared', sheets, { producer: 'jspdf', fonts: { sans: 'liberation/LiberationSans' } }).concat(
      documents('w14-declared-pairs', pairs, { producer: 'jspdf', fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' } }),
    );
  },
};

const lyingDesign: Layout = {
  name: 'w15-wide-label',
  about:
    'libharu, letter and A4: a label designed lying, 6 in wide, upright at the head of the page with instructions below; some alone on a page of 6x4 in',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1500 + i, i % ALL);
      const art = halvorne(each, { width: 416, height: 272 });
      if (i % 4 === 3) return page('label', SIZES['6x4'], [label(art, { x: 8, y: 8 }, 'page')]);
      const size = i % 2 === 0 ? letter : a4;
      return page('label', size, [
        label(art, { x: i % 4 === 2 ? 36 : (size.width - 416) / 2, y: 40 }, 'frame'),
        ...(i % 4 === 2 ? [] : [other(foldAcross(size.width - 60, each.words.cut), { x: 30, y: 346 })]),
        other(instructions(each, { width: size.width - 120, height: 300 }), { x: 60, y: 396 }),
      ]);
    });
    return documents(
      'w15-wide-label',
      pages,
      { producer: 'libharu', fonts: { sans: 'lato/Lato' } },
      { producer: 'libharu', fonts: { sans: 'open-sans/OpenSans' } },
    );
  },
};

/** What a shipping page says beside its label: addresses and figures in two columns, no boxes. */
function details(each: Sent): Art {
  const { parcel, words, day } = each;
  const art = new Art(220, 330)
    .text(0, 13, words.slip[3], { size: 9, fill: '#666666' })
    .text(0, 30, parcel.order, { size: 15, bold: true });
  art.text(0, 54, words.slip[4], { size: 9, fill: '#666666' });
  let y = art.lines(0, 68, [...parcel.to, each.phone], { size: 10, leading: 13 }) + 10;
  for (const [caption, value] of [
    [words.label.service, parcel.depot],
    [words.label.weight, parcel.weight],
    [words.label.date, day],
  ]) {
    art.text(0, y, caption ?? '', { size: 9, fill: '#666666', fit: 110 }).text(120, y, value ?? '', { size: 10, bold: true });
    y += 16;
  }
  y += 12;
  for (const [count, what] of parcel.goods) {
    art.text(0, y, `${count} x ${what}`, { size: 10, fit: 220 });
    y += 15;
  }
  return art.text(0, y + 12, parcel.mark, { size: 7, fill: '#666666', fit: 220 });
}

const withDetails: Layout = {
  name: 'w16-order-page',
  about: 'iText and PDFBox, letter and A4: label upright in the upper left, what the order is beside it, instructions below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1600 + i, i % ALL);
      const size = i % 4 === 1 ? a4 : letter;
      const [design, edge] = cycle(UPRIGHT, i + 1);
      const art = design(each, INNER);
      const framed = edge !== 'frame' && i % 2 === 1;
      return page('label', size, [
        framed ? cutLabel(art, { x: 36, y: 40 }, 6) : label(art, { x: 30, y: 34 }, edge),
        other(details(each), { x: 350, y: 44 }),
        other(instructions(each, { width: size.width - 90, height: 240 }), { x: 44, y: 490 }),
      ]);
    });
    return documents(
      'w16-order-page',
      pages,
      { producer: 'itext', fonts: { sans: 'lato/Lato' } },
      { producer: 'pdfbox', fonts: { sans: 'dejavu/DejaVuSansCondensed', mono: 'dejavu/DejaVuSansMono' } },
    );
  },
};

export const FOURTH_C = [thenInvoice, returned, abroad, lyingDesign, withDetails] as const;
