import type { FourthDesign } from '../designs/fourth-labels-a.js';
import { dornwald } from '../designs/fourth-labels-a.js';
import { marlowend, postalba, rijnkoerel, skarvline } from '../designs/fourth-labels-c.js';
import { manifest } from '../designs/fourth-none.js';
import { bill, foldAcross, instructions, record, trackingText } from '../designs/fourth-papers.js';
import { ALL, sent, WEST } from '../designs/fourth-words.js';
import { Art } from '../kit/art.js';
import type { Edge, Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { a4, documents, INNER, letter } from './fourth-parts.js';
import { cycle, label, other, page, range } from './parts.js';

const LATER: readonly (readonly [FourthDesign, Edge])[] = [
  [marlowend, 'frame'],
  [rijnkoerel, 'ink'],
  [skarvline, 'frame'],
  [dornwald, 'frame'],
];

const thenReceipt: Layout = {
  name: 'x01-then-receipt',
  about: 'FPDF, a label on a page of 4x6 in and the sender’s receipt on the next page of 4x6 in, its number with or without a code',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = sent(2100 + i, i % WEST);
      const [design] = cycle(LATER, i);
      return [
        page('label', SIZES['4x6'], [label(design(each, INNER), { x: 8, y: 9 }, 'page')]),
        page('other', SIZES['4x6'], [other(record(each, { width: 256, height: 380 }, trackingText(each), i % 2 === 0), { x: 16, y: 20 })]),
      ];
    });
    return documents('x01-then-receipt', pages, { producer: 'fpdf' }, { producer: 'fpdf' });
  },
};

const waybill: Layout = {
  name: 'x02-then-trade-invoice',
  about: 'iText, A4 and letter: label lying on the upper half and nothing below, the invoice for customs with a code on the next page',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = sent(2200 + i, i % ALL);
      const size = i % 2 === 0 ? a4 : letter;
      const [design, edge] = cycle(LATER, i + 1);
      const turn: Turn = i % 3 === 2 ? 270 : 90;
      return [
        page('label', size, [label(design(each, INNER), { x: i % 4 === 3 ? 30 : (size.width - INNER.height) / 2, y: 36, turn }, edge)]),
        page('invoice', size, [
          other(bill(each, { width: size.width - 100, height: 620 }, i % 2 === 0 ? 'code128' : 'none'), { x: 50, y: 40 }),
        ]),
      ];
    });
    return documents(
      'x02-then-trade-invoice',
      pages,
      { producer: 'itext', fonts: { sans: 'liberation/LiberationSans' } },
      { producer: 'itext', fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' } },
    );
  },
};

const declaredInside: Layout = {
  name: 'x03-declared-inside',
  about:
    'pdfkit, letter and A4: a post’s label for abroad with the declaration in its lower half, upright in the upper left or lying on top, instructions beside and below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(2300 + i, i % WEST);
      const size = i % 2 === 0 ? letter : a4;
      const lying = i % 4 === 3;
      const steps = instructions(each, { width: lying ? 480 : 220, height: 300 }, lying);
      return page('label', size, [
        label(postalba(each, INNER), { x: lying ? (size.width - INNER.height) / 2 : 36, y: 40, turn: lying ? 90 : 0 }, 'frame'),
        ...(lying ? [other(foldAcross(size.width - 40, each.words.fold), { x: 20, y: size.height / 2 - 10 })] : []),
        other(steps, lying ? { x: 58, y: size.height / 2 + 30 } : { x: 346, y: 48 }),
      ]);
    });
    return documents('x03-declared-inside', pages, { producer: 'pdfkit' }, { producer: 'pdfkit', fonts: { sans: 'open-sans/OpenSans' } });
  },
};

const cropped: Layout = {
  name: 'x04-cropped',
  about:
    'PDFBox, letter and A4 pages of which a viewer shows only the label, cropped by hand with margins of a few millimetres, or 6x4 in of it exactly; some turned by /Rotate',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(2400 + i, i % ALL);
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(LATER, i + 2);
      const upright = i % 4 === 3;
      const turn: Turn = upright ? 0 : 90;
      const x = upright ? 40 : (size.width - INNER.height) / 2;
      const exact = i % 4 === 2;
      const [w, h] = upright ? [INNER.width, INNER.height] : [INNER.height, INNER.width];
      const crop = exact
        ? { x: x - 9, y: 50 - 8, width: 432, height: 288 }
        : { x: x - 12 - i, y: 50 - 10 - (i % 3) * 3, width: w + 26 + i, height: h + 22 + (i % 3) * 4 };
      return page(
        'label',
        size,
        [
          label(design(each, INNER), { x, y: 50, turn }, exact ? 'page' : edge),
          other(foldAcross(size.width - 36, each.words.fold), { x: 18, y: size.height / 2 + 100 }),
          other(instructions(each, { width: size.width - 108, height: 240 }), { x: 54, y: size.height / 2 + 130 }),
        ],
        { crop, ...(i % 4 === 1 ? { rotate: 270 as const } : {}) },
      );
    });
    return documents(
      'x04-cropped',
      pages,
      { producer: 'pdfbox', fonts: { sans: 'lato/Lato' } },
      { producer: 'pdfbox', fonts: { sans: 'liberation/LiberationSans' } },
    );
  },
};

const batch: Layout = {
  name: 'x05-batch',
  about:
    'jsPDF and wkhtmltopdf, letter and A4: a list of a day’s parcels first, then a page for each with the label upright in the middle and one line of the order above',
  documents: () => {
    const days = [letter, a4].map((size, day) => {
      const parcels = range(5).map((k) => sent(2500 + day * 10 + k, day * 3 + 1));
      const cover = page('other', size, [other(manifest(parcels, { width: size.width - 110, height: 500 }, day === 0), { x: 55, y: 50 })]);
      const sheets = parcels.map((each, k): Page => {
        const [design, edge] = cycle(LATER, k + day);
        const line = new Art(400, 16).text(
          0,
          11,
          `${k + 1} / ${parcels.length}   ${each.words.slip[3]} ${each.parcel.order}   ${each.parcel.to[0] ?? ''}`,
          { size: 9, fit: 400 },
        );
        return page('label', size, [
          other(line, { x: 54, y: 36 }),
          label(design(each, INNER), { x: (size.width - INNER.width) / 2, y: 110 }, edge),
          other(new Art(size.width - 108, 12).text(0, 9, each.parcel.mark, { size: 7, fill: '#555555' }), { x: 54, y: size.height - 50 }),
        ]);
      });
      return [cover, ...sheets];
    });
    return documents(
      'x05-batch',
      days.flat(),
      { producer: 'jspdf', fonts: { sans: 'lato/Lato' } },
      { producer: 'wkhtmltopdf', fonts: { sans: 'Roboto', serif: 'Liberation Serif' } },
    );
  },
};

export const FOURTH_D = [thenReceipt, waybill, declaredInside, cropped, batch] as const;
