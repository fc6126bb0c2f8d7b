import { fennbrook, gravelund, pinderhaus, tollivane, type ThirdDesign } from '../designs/third-labels-a.js';
import { kestrelby, mellowick, zumbray } from '../designs/third-labels-b.js';
import { foldLine, returnForm } from '../designs/third-papers-b.js';
import { head, howTo, invoice, packingSlip, plainHints, senderPart } from '../designs/third-papers-a.js';
import { ALL_LATIN, posted, WESTERN } from '../designs/third-words.js';
import { Art } from '../kit/art.js';
import type { Document, Edge, Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { cutLabel, cycle, label, other, page, pictured, range, slipPart } from './parts.js';
import { WORKSPACE } from './workspace.js';

export const { a4, letter, legal, a5, a6 } = SIZES;
export const FULL = { width: 288, height: 432 };
export const INSIDE = { width: 270, height: 410 };
export const METRIC = { width: 283, height: 425 };
export const TALL: readonly (readonly [ThirdDesign, Edge])[] = [
  [fennbrook, 'frame'],
  [gravelund, 'ink'],
  [tollivane, 'frame'],
  [pinderhaus, 'ink'],
  [mellowick, 'frame'],
  [kestrelby, 'frame'],
  [zumbray, 'frame'],
];
type More = Omit<Document, 'name' | 'pages'>;
/** Two documents, each with half of the pages. */
export const halves = (name: string, pages: readonly Page[], first: More, second: More = first): Document[] => [
  { name: `${name}-1`, ...first, pages: pages.slice(0, Math.ceil(pages.length / 2)) },
  { name: `${name}-2`, ...second, pages: pages.slice(Math.ceil(pages.length / 2)) },
];

const plain: Layout = {
  name: 'v01-plain-page',
  about: 'FOP, pages of 4x6 in, some of 100x150 mm: the label alone with a margin of a few millimetres',
  documents: () => {
    const pages = range(9).map((i): Page => {
      const [design, edge] = cycle(TALL, i);
      const art = design(posted(100 + i, i % ALL_LATIN), INSIDE);
      if (i % 4 === 3) return page('label', SIZES['100x150'], [label(art, { x: 6.5, y: 7.5 }, edge)]);
      return page('label', SIZES['4x6'], [label(art, { x: 9, y: 11 }, 'page')]);
    });
    return halves(
      'v01-plain-page',
      pages,
      { producer: 'fop', fonts: { sans: 'Liberation Sans' } },
      { producer: 'fop', fonts: { sans: 'DejaVu Sans' } },
    );
  },
};

const topHalf: Layout = {
  name: 'v02-top-half',
  about: 'Prawn, letter and A4: label lying on the upper half, a line to fold along, numbered steps and small print below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(200 + i, i % WESTERN);
      const size = i % 4 === 3 ? a4 : letter;
      const [design, edge] = cycle(TALL, i + 1);
      const turn: Turn = i % 3 === 2 ? 270 : 90;
      return page('label', size, [
        label(design(each, FULL), { x: (size.width - 432) / 2, y: 46 + (i % 2) * 8, turn }, edge),
        other(foldLine(size.width - 48, each.words.fold), { x: 24, y: size.height / 2 - 6 }),
        other(howTo(each, { width: size.width - 130, height: 300 }), { x: 65, y: size.height / 2 + 40 }),
      ]);
    });
    return halves('v02-top-half', pages, { producer: 'prawn' });
  },
};

const quarter: Layout = {
  name: 'v03-quarter',
  about: 'TCPDF, A4 and letter: label upright in one quarter of the page; hints in the quarter beside, or nothing else at all',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(300 + i, i % WESTERN);
      const size = i % 3 === 1 ? letter : a4;
      const [design, edge] = cycle(TALL, i + 2);
      const corner = cycle([0, 0, 1, 0, 2, 0, 1, 3], i);
      const room = { width: 268, height: size.height / 2 - 24 };
      const [left, top] = [(corner % 2) * (size.width / 2) + 14, Math.floor(corner / 2) * (size.height / 2) + 12];
      const beside = plainHints(each, { width: 220, height: 200 });
      const x = corner % 2 === 0 ? size.width / 2 + 36 : 34;
      return page('label', size, [
        label(design(each, room), { x: left, y: top }, edge),
        ...(i % 2 === 0 ? [other(beside, { x, y: top + 20 })] : []),
      ]);
    });
    return halves('v03-quarter', pages, { producer: 'tcpdf' }, { producer: 'tcpdf', fonts: { sans: 'dejavusans' } });
  },
};

const withInvoice: Layout = {
  name: 'v04-with-invoice',
  about: 'PDF::API2, A4 and letter: invoice over the head of the page, label upright in a lower corner, receipt or nothing beside it',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(400 + i, i % ALL_LATIN);
      const size = i % 2 === 0 ? a4 : letter;
      const [design, edge] = cycle(TALL, i + 3);
      const right = i % 3 !== 0;
      const art = design(each, { width: 276, height: 414 });
      return page('label', size, [
        other(invoice(each, { width: size.width - 90, height: 300 }, (['none', 'qr', 'none', 'code128'] as const)[i % 4]), {
          x: 45,
          y: 24,
        }),
        label(art, { x: right ? size.width - 300 : 24, y: size.height - 414 - 18 }, edge),
        ...(i % 2 === 1 ? [other(senderPart(each, { width: 220, height: 150 }), { x: right ? 45 : 340, y: size.height - 300 })] : []),
      ]);
    });
    return halves('v04-with-invoice', pages, { producer: 'pdfapi2' }, { producer: 'pdfapi2', fonts: { sans: 'Sans' } });
  },
};

const photographed: Layout = {
  name: 'v05-photographed',
  about:
    'whole-page colour JPEGs of an app that straightens photographs, 150 dpi, paper yellowish: A4, letter, A5 and label paper, up to 2 degrees askew',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(500 + i, i % ALL_LATIN);
      const size = cycle([a4, letter, a5, letter], i);
      const [design, edge] = cycle(TALL, i);
      const small = size === a5;
      const turn: Turn = small ? 0 : cycle<Turn>([90, 0, 0, 270], i);
      const y = small ? 70 : 50;
      return page(
        'label',
        size,
        [
          label(design(each, FULL), { x: small ? 62 : 84, y, turn }, edge),
          ...(small ? [] : [other(howTo(each, { width: 400, height: 250 }, false), { x: 84, y: turn === 0 ? 540 : 420 })]),
        ],
        { skew: cycle([0.6, -1.1, 1.8, -0.4, 1.3, -1.9, 0.3, 0.9], i) },
      );
    });
    return halves(
      'v05-photographed',
      pages,
      { producer: 'scan-colour', dpi: 150, fonts: { sans: 'Liberation Sans' } },
      { producer: 'scan-colour', dpi: 150, fonts: { sans: 'Nimbus Sans' } },
    );
  },
};

const pictureInPage: Layout = {
  name: 'v06-picture-in-page',
  about:
    'Prawn, letter, A4 and legal: label as one picture (grey, 1 bit, JPEG at 200 to 240 dpi) under a title, upright or lying, steps below or beside',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(600 + i, i % WESTERN);
      const size = cycle([letter, a4, letter, legal], i);
      const [design, edge] = cycle(TALL, i + 1);
      const turn = cycle<Turn>([0, 90, 0, 270], i);
      const dpi = cycle([203, 240, 203, 200], i);
      const art = new Art(FULL.width, FULL.height).put(design(each, { width: 268, height: 408 }), 10, 12);
      const lying = turn % 180 === 90;
      const title = new Art(400, 20).text(0, 15, each.words.steps[0], { size: 16, bold: true, fit: 400 });
      return page('label', size, [
        other(title, { x: 54, y: 30 }),
        pictured(art, { x: lying ? 70 : 54, y: 66, turn, stored: i % 4 === 1 }, edge === 'frame' ? edge : 'picture', WORKSPACE, {
          dpi,
          ink: cycle(['grey', 'bilevel', 'jpeg'] as const, i),
        }),
        other(plainHints(each, { width: lying ? 420 : 190, height: 200 }), lying ? { x: 70, y: 400 } : { x: 372, y: 90 }),
      ]);
    });
    return halves('v06-picture-in-page', pages, { producer: 'prawn' });
  },
};

const a5Lying: Layout = {
  name: 'v07-a5-lying',
  about: 'TCPDF, A5 lying: label upright at the left, receipt with its own number or hints at the right, a dashed line between',
  documents: () => {
    const size = { width: a5.height, height: a5.width };
    const pages = range(8).map((i): Page => {
      const each = posted(700 + i, i % WESTERN);
      const [design, edge] = cycle(TALL, i + 4);
      const line = new Art(2, size.height).line(1, 8, 1, size.height - 8, { line: 0.5, dash: [4, 3] });
      const left = i % 4 !== 2;
      const stub = senderPart(each, { width: 238, height: 190 }, i % 2 === 0 ? 'code128' : 'none', `Q${each.parcel.routing}`);
      return page(
        'label',
        size,
        [
          label(design(each, { width: 262, height: 392 }), { x: left ? 14 : size.width - 276, y: 14 }, edge),
          other(line, { x: left ? 292 : size.width - 292, y: 0 }),
          other(stub, { x: left ? 320 : 28, y: 30 }),
          ...(i % 3 === 0 ? [other(plainHints(each, { width: 230, height: 100 }), { x: left ? 320 : 28, y: 270 })] : []),
        ],
        { rotate: cycle<Turn>([0, 0, 0, 90, 0, 0, 0, 0], i) },
      );
    });
    return halves('v07-a5-lying', pages, { producer: 'tcpdf', fonts: { sans: 'dejavusanscondensed' } }, { producer: 'tcpdf' });
  },
};

const slipOver: Layout = {
  name: 'v08-slip-above',
  about: 'pdfTeX in Computer Modern, letter, English: packing slip on the upper half, a line to fold along, label lying on the lower half',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(800 + i, 0);
      const [design, edge] = cycle(TALL, i + 5);
      const turn: Turn = i % 2 === 0 ? 90 : 270;
      return page('label', letter, [
        slipPart(packingSlip(each, { width: 480, height: 300 }, i % 3 !== 2), { x: 66, y: 34 }),
        other(foldLine(560, i % 2 === 0 ? each.words.fold : ''), { x: 26, y: 400 }),
        label(design(each, FULL), { x: 90, y: 466 + (i % 3) * 8, turn }, edge),
      ]);
    });
    return halves('v08-slip-above', pages, { producer: 'pdftex' });
  },
};

const returns: Layout = {
  name: 'v09-return-page',
  about:
    'Chromium and FOP, letter and A4: return label upright inside a cut line or with its frame, its title above, a form for the box with reasons to tick beside or below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const sold = posted(900 + i, i % ALL_LATIN);
      // Back goes from the buyer to the shop.
      const each = { ...sold, parcel: { ...sold.parcel, from: sold.parcel.to, to: sold.parcel.from.slice(0, 3) } };
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle([TALL[0], TALL[4], TALL[6]] as readonly (readonly [ThirdDesign, Edge])[], i);
      const art = design(each, INSIDE);
      const title = new Art(420, 30).text(0, 22, each.words.back, { size: 22, bold: true, fit: 420 });
      const at = { x: 44, y: 130, turn: i === 5 ? (180 as const) : (0 as const) };
      return page('return-label', size, [
        other(head(sold, size.width - 90), { x: 44, y: 26 }),
        other(title, { x: 44, y: 84 }),
        i % 2 === 0 ? cutLabel(art, at, 9, 'return-label') : label(art, at, edge, 'return-label'),
        other(plainHints(each, { width: 210, height: 200 }), { x: 350, y: 140 }),
        other(returnForm(each, { width: 480, height: 180 }), { x: 44, y: 590 }),
      ]);
    });
    return halves(
      'v09-return-page',
      pages,
      { producer: 'chromium', fonts: { sans: 'DejaVu Sans' } },
      { producer: 'fop', fonts: { sans: 'DejaVu Sans Condensed' } },
    );
  },
};

export const THIRD_A = [plain, topHalf, quarter, withInvoice, photographed, pictureInPage, a5Lying, slipOver, returns] as const;
