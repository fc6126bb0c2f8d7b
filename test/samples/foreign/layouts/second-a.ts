import { borrelunde, cobblefinch, nordhavel, quillmarsh, tindervane, wexmallow, type SecondDesign } from '../designs/second-labels.js';
import { browserLines, coupon, declaration, goodsList, invoice, receipt, scissorsLine, steps } from '../designs/second-papers.js';
import { LATIN, sent, WITHOUT_KANJI } from '../designs/second-words.js';
import { Art } from '../kit/art.js';
import type { Document, Edge, Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { cutLabel, cycle, label, other, page, range, slipPart } from './parts.js';

export const FOUR_SIX = { width: 288, height: 432 };
export const SMALLER = { width: 274, height: 411 };
export const LYING = { width: 424, height: 282 };
export const { a4, letter, legal, a5, a6 } = SIZES;

/** Designs with how their outside shows. */
export const DESIGNS: readonly (readonly [SecondDesign, Edge])[] = [
  [quillmarsh, 'frame'],
  [borrelunde, 'frame'],
  [tindervane, 'ink'],
  [wexmallow, 'frame'],
  [cobblefinch, 'frame'],
];
/** One document of all pages, or two of half. */
export const inTwo = (name: string, pages: readonly Page[], first: Omit<Document, 'name' | 'pages'>, second = first): Document[] => [
  { name: `${name}-1`, ...first, pages: pages.slice(0, Math.ceil(pages.length / 2)) },
  { name: `${name}-2`, ...second, pages: pages.slice(Math.ceil(pages.length / 2)) },
];

/** A page as a browser prints it: date and address on its edges. */
const browserPrint: Layout = {
  name: 's01-browser-print',
  about:
    'Chromium, A4 and letter: date, address and page number of a browser at the edges, label upright at the left, steps and coupon around it',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(100 + i, i);
      const size = i % 2 === 0 ? a4 : letter;
      const [design, edge] = cycle(DESIGNS, i);
      return page('label', size, [
        other(browserLines(size.width, size.height, 'stall-manager'), { x: 0, y: 0 }),
        label(design(each, i % 3 === 0 ? SMALLER : FOUR_SIX), { x: 24 + (i % 3) * 6, y: 44 + i * 5 }, edge),
        other(steps(each, { width: 200, height: 200 }), { x: 370, y: 60 }),
        other(coupon(each, { width: size.width - 90, height: 150 }), { x: 40, y: 560 }),
      ]);
    });
    return inTwo(
      's01-browser-print',
      pages,
      { producer: 'chromium', fonts: { sans: 'Liberation Sans' } },
      { producer: 'chromium', fonts: { sans: 'DejaVu Serif' } },
    );
  },
};

/** The upper half to stick on, the lower to keep; scissors between. */
const halfScissors: Layout = {
  name: 's02-half-scissors',
  about:
    'cairo, A4 and letter: label lying in one half, scissors on a dashed line across the middle, receipt with the same code and steps in the other half',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(200 + i, i);
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(DESIGNS, i + 1);
      const turn: Turn = i % 2 === 0 ? 90 : 270;
      const upper = i % 4 < 3;
      const [top, rest] = upper ? [36, size.height / 2 + 24] : [size.height / 2 + 34, 40];
      return page('label', size, [
        label(design(each, FOUR_SIX), { x: 70 + (i % 3) * 12, y: top + (i % 2) * 6, turn }, edge),
        other(scissorsLine(size.width - 20, each.words.cut), { x: 10, y: size.height / 2 - 8 }),
        other(receipt(each, { width: 230, height: 150 }, `TV${each.parcel.tracking}`), { x: 50, y: rest }),
        other(steps(each, { width: 230, height: 150 }), { x: 320, y: rest }),
      ]);
    });
    return inTwo(
      's02-half-scissors',
      pages,
      { producer: 'cairo', fonts: { sans: 'DejaVu Sans Condensed' } },
      { producer: 'cairo', fonts: { sans: 'Liberation Sans' } },
    );
  },
};

/** A bill with the label on top. */
const aboveInvoice: Layout = {
  name: 's03-above-invoice',
  about: 'Ghostscript, letter, legal and A4: label lying above an invoice with a code to pay by, or upright at its side',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(300 + i, i % LATIN);
      const size = cycle([letter, legal, a4, legal], i);
      const [design, edge] = cycle(DESIGNS, i + 2);
      const turn = cycle<Turn>([90, 0, 270, 180], i);
      const lying = turn % 180 === 90;
      const y = lying ? 350 : 500;
      return page('label', size, [
        label(design(each, FOUR_SIX), { x: lying ? 90 : 290, y: 30 + i * 2, turn }, edge),
        ...(lying ? [] : [other(coupon(each, { width: 210, height: 170 }, '#dde6ee'), { x: 40, y: 60 })]),
        slipPart(invoice(each, { width: size.width - 100, height: 380 }, (['qr', 'itf', 'none'] as const)[i % 3]), { x: 50, y }),
      ]);
    });
    return inTwo(
      's03-above-invoice',
      pages,
      { producer: 'ghostscript' },
      { producer: 'ghostscript', fonts: { sans: 'Bookman', serif: 'Palatino' } },
    );
  },
};

/** Sheets of two, three and four. */
const sheets: Layout = {
  name: 's04-sheets',
  about: 'ReportLab, A4 and letter: two, three or four labels of different carriers on one sheet, thin lines between the places',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const count = cycle([4, 2, 3, 4], i);
      const size = i % 2 === 0 ? a4 : letter;
      const [w, h] = [size.width / 2, size.height / 2];
      const scale = Math.min((w - 16) / 288, (h - 16) / 432);
      const turned = i % 4 === 3;
      const lines = new Art(size.width, size.height).line(w, 0, w, size.height, { line: 0.3, stroke: '#999999' });
      return page('label', size, [
        other(lines.line(0, h, size.width, h, { line: 0.3, stroke: '#999999' }), { x: 0, y: 0 }),
        ...range(count).map((k) => {
          const [design, edge] = cycle(DESIGNS, i + k);
          const [x, y] = [(k % 2) * w + (w - 288 * scale) / 2, Math.floor(k / 2) * h + (h - 432 * scale) / 2];
          return label(design(sent(400 + i * 4 + k, (i + k) % WITHOUT_KANJI), FOUR_SIX), { x, y, scale, turn: turned ? 180 : 0 }, edge);
        }),
      ]);
    });
    return inTwo('s04-sheets', pages, { producer: 'reportlab' });
  },
};

/** A label for the way back with what to do. */
const wayBack: Layout = {
  name: 's05-way-back',
  about: 'ReportLab, letter, A4 and A5: return label inside a cut line or a rounded frame, its title above, steps below or beside',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(500 + i, i % WITHOUT_KANJI);
      const size = cycle([letter, a4, a5], i);
      const art = (i % 2 === 0 ? wexmallow : quillmarsh)(each, SMALLER);
      const title = new Art(300, 24).text(0, 18, each.words.back, { size: 17, bold: true, fit: 300 });
      const at = { x: size === a5 ? 70 : 50 + (i % 3) * 30, y: 100, turn: cycle<Turn>([0, 0, 0, 180, 0, 0], i) };
      return page('return-label', size, [
        other(title, { x: 50, y: 40 }),
        i % 3 === 1 ? cutLabel(art, at, 8, 'return-label') : label(art, at, 'frame', 'return-label'),
        ...(size === a5 ? [] : [other(steps(each, { width: 400, height: 150 }), { x: 60, y: 560 })]),
      ]);
    });
    return inTwo('s05-way-back', pages, { producer: 'reportlab' });
  },
};

/** A lying label with its declaration below. */
const abroad: Layout = {
  name: 's06-declared',
  about:
    'cairo, A4 and letter: label designed lying, upright on the page or turned, with a customs declaration that has its own code below; or the declaration alone',
  documents: () => {
    const pages = range(10).map((i): Page => {
      const each = sent(600 + i, i);
      const size = i % 2 === 0 ? a4 : letter;
      const form = declaration(each, { width: 430, height: 260 });
      if (i % 5 === 4) return page('customs', size, [other(form, { x: 70, y: 60 + i * 10 })]);
      return page('label', size, [
        label(nordhavel(each, LYING), { x: 70 + (i % 3) * 8, y: 50 + i * 3, turn: i % 4 === 3 ? 180 : 0 }, 'frame'),
        other(form, { x: 70, y: 440 }),
      ]);
    });
    return inTwo(
      's06-declared',
      pages,
      { producer: 'cairo', fonts: { sans: 'DejaVu Sans' } },
      { producer: 'cairo', fonts: { sans: 'Nimbus Sans' } },
    );
  },
};

/** Words as outlines, adverts in colour. */
const outlined: Layout = {
  name: 's07-outlined',
  about:
    'Ghostscript with words as outlines, A4 and letter: label in the lower left or upper right corner, coloured coupons with codes in the others',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(700 + i, i % LATIN);
      const size = i % 2 === 0 ? a4 : letter;
      const [design, edge] = cycle(DESIGNS, i + 3);
      const low = i % 2 === 0;
      const at = low ? { x: 26, y: size.height - 460 } : { x: size.width - 310, y: 30 };
      return page('label', size, [
        label(design(each, SMALLER), { ...at, turn: i % 4 === 1 ? 180 : 0 }, edge),
        other(coupon(each, { width: 240, height: 190 }), { x: low ? 325 : 34, y: low ? size.height - 300 : 60 }),
        other(coupon(sent(750 + i, i % LATIN), { width: 500, height: 150 }, '#d9ead3'), { x: 40, y: low ? 60 : size.height - 200 }),
      ]);
    });
    return inTwo('s07-outlined', pages, { producer: 'outlines' }, { producer: 'outlines', fonts: { sans: 'AvantGarde' } });
  },
};

/** Beside the list that a picker ticks. */
const beside: Layout = {
  name: 's08-pick-beside',
  about: 'WeasyPrint, lying A4 and letter: label at one side, picking list with boxes to tick at the other; some by /Rotate',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(800 + i, i);
      const size = i % 2 === 0 ? { width: a4.height, height: a4.width } : { width: letter.height, height: letter.width };
      const [design, edge] = cycle(DESIGNS, i + 4);
      const left = i % 4 < 2;
      const list = goodsList(each, { width: 330, height: 400 }, { picks: true });
      return page(
        'label',
        size,
        [
          label(design(each, FOUR_SIX), { x: left ? 40 : size.width - 330, y: 60 + i * 4 }, edge),
          slipPart(list, { x: left ? 400 : 50, y: 80 }),
        ],
        { rotate: cycle<Turn>([0, 0, 90, 270], i) },
      );
    });
    return inTwo(
      's08-pick-beside',
      pages,
      { producer: 'weasyprint', fonts: { sans: 'Liberation Sans' } },
      { producer: 'weasyprint', fonts: { sans: 'DejaVu Sans Condensed' } },
    );
  },
};

export const SECOND_A = [browserPrint, halfScissors, aboveInvoice, sheets, wayBack, abroad, outlined, beside] as const;
