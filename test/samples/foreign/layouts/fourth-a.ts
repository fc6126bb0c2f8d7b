import { foldAcross, goodsSlip, instructions, record, trackingText } from '../designs/fourth-papers.js';
import { ALL, sent, WEST } from '../designs/fourth-words.js';
import { Art } from '../kit/art.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { a4, documents, INNER, letter, UPRIGHT } from './fourth-parts.js';
import { cycle, label, other, page, range, slipPart } from './parts.js';

const alone: Layout = {
  name: 'w01-label-alone',
  about: 'iText, pages of 4x6 in, all labels of a day in one document: the label alone with ordinary margins',
  documents: () => {
    const pages = range(10).map((i): Page => {
      const [design] = cycle(UPRIGHT, i);
      return page('label', SIZES['4x6'], [label(design(sent(100 + i, i % ALL), INNER), { x: 8, y: 9 }, 'page')]);
    });
    return documents(
      'w01-label-alone',
      pages,
      { producer: 'itext', fonts: { sans: 'liberation/LiberationSans' } },
      { producer: 'itext', fonts: { sans: 'open-sans/OpenSans' } },
    );
  },
};

const upperHalf: Layout = {
  name: 'w02-upper-half',
  about: 'FPDF, letter and A4: label on the upper half, turned sideways, a dashed line to fold along, numbered instructions below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(200 + i, i % WEST);
      const size = i % 3 === 2 ? a4 : letter;
      const [design, edge] = cycle(UPRIGHT, i + 1);
      const turn: Turn = i % 4 === 3 ? 270 : 90;
      return page('label', size, [
        label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: 50, turn }, edge),
        other(foldAcross(size.width - 36, each.words.fold), { x: 18, y: size.height / 2 - 6 }),
        other(instructions(each, { width: size.width - 108, height: 300 }), { x: 54, y: size.height / 2 + 34 }),
      ]);
    });
    return documents('w02-upper-half', pages, { producer: 'fpdf' }, { producer: 'fpdf' });
  },
};

const quarter: Layout = {
  name: 'w03-quarter',
  about: 'pdfkit, A4: label upright in one quarter of the page, thin grey lines between the quarters, how to cut in another',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(300 + i, i % WEST);
      const [design, edge] = cycle(UPRIGHT, i + 2);
      const corner = cycle([0, 0, 0, 1, 0, 2, 0, 3], i);
      const at = { x: (corner % 2) * (a4.width / 2) + 15, y: Math.floor(corner / 2) * (a4.height / 2) + 10 };
      const cross = new Art(a4.width, a4.height)
        .line(a4.width / 2, 0, a4.width / 2, a4.height, { line: 0.4, stroke: '#aaaaaa', dash: [3, 3] })
        .line(0, a4.height / 2, a4.width, a4.height / 2, { line: 0.4, stroke: '#aaaaaa', dash: [3, 3] });
      const free = cycle([1, 3, 1, 0, 3, 0, 2, 0], i);
      const tips = instructions(each, { width: 240, height: 340 }, i % 2 === 0);
      return page('label', a4, [
        other(cross, { x: 0, y: 0 }),
        label(design(each, { width: 267, height: 400 }), at, edge),
        ...(i % 4 === 2 ? [] : [other(tips, { x: (free % 2) * (a4.width / 2) + 28, y: Math.floor(free / 2) * (a4.height / 2) + 36 })]),
      ]);
    });
    return documents('w03-quarter', pages, { producer: 'pdfkit' }, { producer: 'pdfkit', fonts: { sans: 'lato/Lato' } });
  },
};

const beside: Layout = {
  name: 'w04-slip-beside',
  about: 'wkhtmltopdf, lying letter and A4: label upright on the left half, packing slip on the right half, a line between',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(400 + i, i % ALL);
      const [w, h] = i < 4 ? [letter.height, letter.width] : [a4.height, a4.width];
      const [design, edge] = cycle(UPRIGHT, i + 3);
      const line = new Art(2, h).line(1, 12, 1, h - 12, { line: 0.5, stroke: '#888888', ...(i % 2 === 0 ? { dash: [4, 4] } : {}) });
      return page('label', { width: w, height: h }, [
        label(design(each, INNER), { x: 50, y: (h - INNER.height) / 2 }, edge),
        other(line, { x: w / 2 - 1, y: 0 }),
        slipPart(goodsSlip(each, { width: w / 2 - 80, height: h - 100 }), { x: w / 2 + 36, y: 60 }),
      ]);
    });
    return documents(
      'w04-slip-beside',
      pages,
      { producer: 'wkhtmltopdf', fonts: { sans: 'Open Sans', serif: 'Liberation Serif' } },
      { producer: 'wkhtmltopdf', fonts: { sans: 'Liberation Sans' } },
    );
  },
};

const withRecord: Layout = {
  name: 'w05-label-and-record',
  about: 'jsPDF, letter and A4: label lying on the upper half, the sender’s record and a few instructions side by side below the line',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(500 + i, i % ALL);
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(UPRIGHT, i + 4);
      const turn: Turn = i % 3 === 1 ? 270 : 90;
      const number = trackingText(each);
      const below = size.height / 2 + 34;
      return page('label', size, [
        label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: 46, turn }, edge),
        other(foldAcross(size.width - 40, each.words.cut), { x: 20, y: size.height / 2 - 8 }),
        other(record(each, { width: 250, height: 280 }, number, i % 2 === 1), { x: 36, y: below }),
        other(instructions(each, { width: size.width / 2 - 56, height: 280 }, false), { x: size.width / 2 + 18, y: below }),
      ]);
    });
    return documents(
      'w05-label-and-record',
      pages,
      { producer: 'jspdf', fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' } },
      { producer: 'jspdf', fonts: { sans: 'liberation/LiberationSans' } },
    );
  },
};

export const FOURTH_A = [alone, upperHalf, quarter, beside, withRecord] as const;
