import { foldDown, foldLine, invoiceSheet, numberOf, packing, returnForm, returnTitle, steps, stub } from '../designs/fifth-papers.js';
import { ALL_TEN, posted, tongue } from '../designs/fifth-words.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { FONTS, INNER, OPEN, QUARTER, serverPicture, WHOLE } from './fifth-parts.js';
import { a4, documents, letter } from './fourth-parts.js';
import { cutLabel, cycle, label, other, page, range, slipPart } from './parts.js';

const alone: Layout = {
  name: 'z01-label-alone',
  about: 'fpdf2, pages of 4x6 in: the label alone, most without a frame',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const [design] = cycle(OPEN, i);
      return page('label', SIZES['4x6'], [label(design(posted(100 + i, tongue(i + 10, ALL_TEN)), INNER), { x: 8.5, y: 8.5 }, 'page')]);
    });
    return documents('z01-label-alone', pages, { producer: 'fpdf2', fonts: FONTS.liberation }, { producer: 'fpdf2', fonts: FONTS.lato });
  },
};

const foldedLetter: Layout = {
  name: 'z02-half-and-steps',
  about: 'muhammara, letter and A4: label lying on the upper half, a line to fold along, steps below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(200 + i, tongue(i + 8));
      const size = i % 3 === 1 ? a4 : letter;
      const [design, edge] = cycle(OPEN, i + 1);
      const turn: Turn = i % 4 === 2 ? 270 : 90;
      return page('label', size, [
        label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: 52, turn }, edge),
        other(foldLine(size.width - 40, each.words.fold), { x: 20, y: size.height / 2 - 12 }),
        other(steps(each, { width: size.width - 120, height: 300 }), { x: 60, y: size.height / 2 + 30 }),
      ]);
    });
    return documents(
      'z02-half-and-steps',
      pages,
      { producer: 'muhammara', fonts: FONTS.open },
      { producer: 'muhammara', fonts: FONTS.roboto },
    );
  },
};

const quarterPage: Layout = {
  name: 'z03-quarter-alone',
  about: 'MuPDF, A4: label upright in the upper left quarter; the rest is white, or the order is named at the foot',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(300 + i, tongue(i));
      const [design, edge] = cycle(OPEN, i + 2);
      const at = { x: 18 + (i % 3) * 3, y: 16 + (i % 2) * 4 };
      return page('label', a4, [
        label(design(each, QUARTER), at, edge),
        ...(i % 2 === 0 ? [other(stub(each, { width: 240, height: 180 }, numberOf(each)), { x: 40, y: 560 })] : []),
      ]);
    });
    return documents('z03-quarter-alone', pages, { producer: 'mupdf' }, { producer: 'mupdf' });
  },
};

const besideSlip: Layout = {
  name: 'z04-beside-slip',
  about: 'Qt, lying letter and A4: label upright at the left, packing list at the right, a line to fold along between or nothing',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(400 + i, tongue(i + 12, ALL_TEN));
      const [w, h] = i % 2 === 0 ? [letter.height, letter.width] : [a4.height, a4.width];
      const [design, edge] = cycle(OPEN, i + 3);
      return page('label', { width: w, height: h }, [
        label(design(each, INNER), { x: 52, y: (h - INNER.height) / 2 }, edge),
        ...(i % 4 === 3 ? [] : [other(foldDown(h - 30), { x: w / 2 - 1, y: 15 })]),
        slipPart(packing(each, { width: w / 2 - 90, height: h - 110 }), { x: w / 2 + 40, y: 62 }),
      ]);
    });
    return documents('z04-beside-slip', pages, { producer: 'qt', fonts: FONTS.liberation }, { producer: 'qt', fonts: FONTS.open });
  },
};

const receiptBelow: Layout = {
  name: 'z05-receipt-below',
  about: 'R, letter: label lying on the upper half, the sender’s receipt below the line, with or without a code',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(500 + i, tongue(i));
      const [design, edge] = cycle(OPEN, i + 4);
      const turn: Turn = i % 3 === 0 ? 270 : 90;
      return page('label', letter, [
        label(design(each, INNER), { x: (letter.width - INNER.height) / 2, y: 48, turn }, edge),
        other(foldLine(letter.width - 36, i % 2 === 0 ? each.words.cut : '', i % 4 !== 3), { x: 18, y: letter.height / 2 - 12 }),
        other(stub(each, { width: 260, height: 260 }, numberOf(each), i % 2 === 1), { x: 60, y: letter.height / 2 + 40 }),
      ]);
    });
    return documents('z05-receipt-below', pages, { producer: 'r' }, { producer: 'r' });
  },
};

const invoiceNext: Layout = {
  name: 'z06-invoice-next',
  about: 'react-pdf, a label on a page of 4x6 in or at the top left of letter or A4, its invoice on the next page',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = posted(600 + i, tongue(i + 8));
      const paper = i % 4 === 1 ? letter : a4;
      const [design, edge] = cycle(OPEN, i + 5);
      const art = design(each, INNER);
      const first =
        i % 2 === 0
          ? page('label', SIZES['4x6'], [label(art, { x: 8.5, y: 8.5 }, 'page')])
          : page('label', paper, [label(art, { x: 30, y: 30 }, edge)]);
      const code = cycle(['none', 'qr', 'code128'] as const, i);
      return [
        first,
        page('invoice', paper, [other(invoiceSheet(each, { width: paper.width - 120, height: 600 }, code), { x: 60, y: 50 })]),
      ];
    });
    return documents('z06-invoice-next', pages, { producer: 'react-pdf' }, { producer: 'react-pdf' });
  },
};

const returnPage: Layout = {
  name: 'z07-return-page',
  about:
    'XeTeX, letter and A4: title and steps of a return on top, the return label below them upright or lying, in a cut line or with nothing around it',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(700 + i, tongue(i + 10, ALL_TEN));
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(OPEN, i + 6);
      const lying = i % 4 >= 2;
      const art = design(each, { ...INNER, back: true });
      const at = lying
        ? { x: (size.width - INNER.height) / 2, y: size.height - INNER.width - 60, turn: 90 as const }
        : { x: 60, y: size.height - INNER.height - 56 };
      const cut = i % 2 === 1;
      return page('return-label', size, [
        other(returnTitle(each, size.width - 120), { x: 60, y: 44 }),
        other(returnForm(each, { width: size.width - 120, height: 130 }), { x: 60, y: 100 }),
        cut ? cutLabel(art, at, 9, 'return-label') : label(art, at, edge, 'return-label'),
        ...(cut || !lying ? [] : [other(foldLine(size.width - 120, each.words.cut), { x: 60, y: at.y - 44 })]),
      ]);
    });
    return documents('z07-return-page', pages, { producer: 'xetex', fonts: FONTS.liberation }, { producer: 'xetex', fonts: FONTS.roboto });
  },
};

const picturesPlaced: Layout = {
  name: 'z08-picture-placed',
  about:
    'fpdf2 and Qt, letter and A4: the picture of a 4x6 in label (1 bit at 203 and 300 dpi, grey, JPEG) in the upper left or lying on the upper half, alone or with steps',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const language = tongue(i + 8);
      const size = i % 2 === 0 ? letter : a4;
      const lying = i % 4 >= 2;
      const at = lying ? { x: (size.width - WHOLE.height) / 2, y: 36, turn: 90 as const, stored: i % 4 === 3 } : { x: 24, y: 24 };
      const options = {
        dpi: i === 1 ? 300 : 203,
        ink: cycle(['grey', 'grey', 'jpeg', 'grey', 'bilevel', 'bilevel', 'bilevel', 'bilevel'] as const, i),
      };
      const text = steps(posted(800 + i, language), { width: lying ? size.width - 120 : 220, height: 260 }, false);
      return page('label', size, [
        serverPicture(cycle(OPEN, i + 7), 800 + i, language, at, options),
        ...(i % 4 === 0 ? [] : [other(text, lying ? { x: 60, y: size.height / 2 + 40 } : { x: 340, y: 60 })]),
      ]);
    });
    return documents('z08-picture-placed', pages, { producer: 'fpdf2', fonts: FONTS.open }, { producer: 'qt', fonts: FONTS.roboto });
  },
};

export const FIFTH_A = [alone, foldedLetter, quarterPage, besideSlip, receiptBelow, invoiceNext, returnPage, picturesPlaced] as const;
