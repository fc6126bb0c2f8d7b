import type { FourthDesign } from '../designs/fourth-labels-a.js';
import { foldAcross, goodsSlip, instructions, masthead } from '../designs/fourth-papers.js';
import { ALL, sent, WEST } from '../designs/fourth-words.js';
import { Art } from '../kit/art.js';
import type { Edge, Layout, Page, Part } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Ink } from '../kit/raster.js';
import type { Turn } from '../kit/shapes.js';
import { a4, a5, documents, INNER, letter, UPRIGHT, WHOLE } from './fourth-parts.js';
import { cycle, label, other, page, pictured, range, slipPart } from './parts.js';
import { WORKSPACE } from './workspace.js';

/** A label of 4x6 in as the picture that a carrier's server gives, margins and all. */
function thermal(
  i: number,
  language: number,
  at: { readonly x: number; readonly y: number; readonly turn?: Turn; readonly stored?: boolean },
  options: { readonly dpi: number; readonly ink: Ink },
): Part {
  const [design, edge] = cycle(UPRIGHT, i);
  const each = sent(i * 3 + 611, language);
  const dot = 72 / options.dpi;
  const art = new Art(WHOLE.width, WHOLE.height).put(design(each, { ...INNER, dot }), 8, 9);
  return pictured(art, at, edge === 'frame' ? edge : 'picture', WORKSPACE, {
    ...options,
    fonts: { sans: cycle(['Liberation Sans', 'Roboto', 'Open Sans'], i) },
  });
}

const twoUp: Layout = {
  name: 'w06-two-pictures',
  about: 'PDFBox, letter and A4: two labels a sheet, each the picture of a 4x6 in label lying in its half, nothing else; some halves empty',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const size = i % 4 === 2 ? a4 : letter;
      const half = size.height / 2;
      const x = (size.width - WHOLE.height) / 2;
      const y = (half - WHOLE.width) / 2;
      const one = (k: number): Part =>
        thermal(
          i * 2 + k,
          (i + k) % ALL,
          { x, y: y + k * half, turn: i % 3 === 1 ? 270 : 90, stored: i % 2 === 0 },
          { dpi: i % 4 === 3 ? 300 : 203, ink: i % 3 === 1 && i % 4 !== 3 ? 'grey' : 'bilevel' },
        );
      return page('label', size, i % 4 === 3 ? [one(0)] : [one(0), one(1)]);
    });
    return documents('w06-two-pictures', pages, { producer: 'pdfbox' }, { producer: 'pdfbox' });
  },
};

const flatbed: Layout = {
  name: 'w07-flatbed',
  about:
    'clean grey scans of a flatbed, JPEG at 150 and 170 dpi in pages of libharu: letter, A4 and A5, up to 1.2 degrees askew, one fed upside down',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(700 + i, i % ALL);
      const size = cycle([letter, a4, letter, a5], i);
      const [design, edge] = cycle(UPRIGHT, i + 5);
      const small = size === a5;
      const turn: Turn = small ? 0 : cycle<Turn>([90, 0, 270, 90], i + (i > 3 ? 1 : 0));
      const lying = turn % 180 === 90;
      const flip = i === 4;
      const art = design(each, INNER);
      const box = art.bounds(turn);
      const x = small ? (size.width - box.width) / 2 : 72;
      const at = flip
        ? { x: size.width - x - box.width, y: size.height - 58 - box.height, turn: ((turn + 180) % 360) as Turn }
        : { x, y: 58, turn };
      const text = instructions(each, { width: 400, height: 240 });
      const below = { x: 84, y: lying ? 430 : 520 };
      return page(
        'label',
        size,
        [
          label(art, at, edge),
          ...(small ? [] : [other(text, flip ? { x: size.width - 484, y: size.height - below.y - 240, turn: 180 } : below)]),
        ],
        { skew: cycle([0.4, -0.7, 1.2, -0.3, 0.9, -1.1, 0.2, 0.6], i) },
      );
    });
    return documents(
      'w07-flatbed',
      pages,
      { producer: 'scan-flat', dpi: 150, fonts: { sans: 'liberation/LiberationSans' } },
      { producer: 'scan-flat', dpi: 170 },
    );
  },
};

const files: Layout = {
  name: 'w08-picture-files',
  about:
    'PNG files of their own, no PDF: 812x1218 in 1 bit and grey, 1200x1800, 1218x812 with the label on its side; half of them say no dots per inch',
  documents: () =>
    range(8).map((i) => {
      const [design] = cycle(UPRIGHT, i + 6);
      const dpi = i % 4 === 3 ? 300 : 203;
      const lying = i === 5;
      const turn: Turn = lying ? 90 : 0;
      const dot = 72 / dpi;
      const art = new Art(WHOLE.width, WHOLE.height).put(design(sent(800 + i, i % ALL), { ...INNER, dot }), 8, 9);
      return {
        name: `w08-picture-files-${i + 1}`,
        producer: 'picture-file' as const,
        dpi,
        grey: i % 3 === 1,
        bare: i % 2 === 1,
        fonts: { sans: cycle(['Liberation Sans', 'Roboto', 'DejaVu Sans Condensed'], i) },
        pages: [page('label', lying ? SIZES['6x4'] : SIZES['4x6'], [label(art, { x: 0, y: 0, turn }, 'page')])],
      };
    }),
};

const pictureOnPage: Layout = {
  name: 'w09-picture-on-page',
  about:
    'FPDF and libharu, letter and A4: the picture of a 4x6 in label in the upper left corner or the middle, alone or under the name of the shop',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const size = i % 2 === 0 ? letter : a4;
      const language = i % WEST;
      const x = i % 4 === 1 ? (size.width - WHOLE.width) / 2 : i % 4 === 3 ? 0 : 28;
      const titled = i % 4 === 1;
      const y = titled ? 100 : i % 4 === 3 ? 0 : 28;
      const picture = thermal(
        i + 2,
        language,
        { x, y },
        { dpi: i % 4 === 2 ? 300 : 203, ink: cycle(['bilevel', 'jpeg', 'bilevel', 'grey'] as const, i) },
      );
      return page('label', size, [...(titled ? [other(masthead(sent(900 + i, language), 400), { x: 60, y: 30 })] : []), picture]);
    });
    return documents('w09-picture-on-page', pages, { producer: 'fpdf' }, { producer: 'libharu' });
  },
};

const smallPages: Layout = {
  name: 'w10-small-pages',
  about: 'libharu, pages of A6 and 100x150 mm: the label alone with margins of two to four millimetres',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const [design, edge] = cycle(UPRIGHT, i * 2 + 1);
      const size = i < 4 ? SIZES.a6 : SIZES['100x150'];
      const gap = i % 2 === 0 ? 7 : 10;
      return page('label', size, [
        label(design(sent(1000 + i, i % ALL), { width: size.width - 2 * gap, height: size.height - 2 * gap }), { x: gap, y: gap }, edge),
      ]);
    });
    return documents(
      'w10-small-pages',
      pages,
      { producer: 'libharu', fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' } },
      { producer: 'libharu', fonts: { sans: 'liberation/LiberationSans' } },
    );
  },
};

/** Designs that boxes of HTML can draw: nothing round, nothing turned. */
const BOXES: readonly (readonly [FourthDesign, Edge])[] = [0, 1, 3, 5, 7, 8].flatMap((k) => UPRIGHT.slice(k, k + 1));

const a5Page: Layout = {
  name: 'w11-a5-page',
  about: 'Dompdf, A5: label upright in the upper part of the page, below it the shop’s name and a few lines of what to do',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1100 + i, i % WEST);
      const [design, edge] = cycle(BOXES, i);
      const foot = new Art(340, 110)
        .line(0, 0, 340, 0, { line: 0.5, stroke: '#777777' })
        .text(0, 16, each.parcel.from[0] ?? '', { size: 11, bold: true });
      for (const [k, step] of each.words.how.slice(1, 4).entries()) foot.text(0, 34 + k * 13, `${k + 1}. ${step}`, { size: 8.5, fit: 340 });
      foot.text(0, 84, each.parcel.mark, { size: 7, fill: '#555555' });
      return page('label', a5, [
        label(design(each, INNER), { x: i % 2 === 0 ? 74 : 36, y: 26 }, edge),
        ...(i % 4 === 3 ? [] : [other(foot, { x: 40, y: 470 })]),
      ]);
    });
    return documents(
      'w11-a5-page',
      pages,
      { producer: 'dompdf', fonts: { sans: 'Helvetica' } },
      { producer: 'dompdf', fonts: { sans: 'Helvetica' } },
    );
  },
};

const slipBelow: Layout = {
  name: 'w17-slip-below',
  about: 'PDFBox, letter and A4: label lying on the upper half, a line to cut along, packing slip with the shop’s head on the lower half',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1700 + i, i % ALL);
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(UPRIGHT, i + 7);
      const turn: Turn = i % 4 === 2 ? 270 : 90;
      return page('label', size, [
        label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: 44, turn }, edge),
        other(foldAcross(size.width - 40, i % 2 === 0 ? each.words.cut : ''), { x: 20, y: size.height / 2 - 16 }),
        slipPart(goodsSlip(each, { width: size.width - 110, height: 330 }), { x: 55, y: size.height / 2 + 26 }),
      ]);
    });
    return documents(
      'w17-slip-below',
      pages,
      { producer: 'pdfbox', fonts: { sans: 'open-sans/OpenSans' } },
      { producer: 'pdfbox', fonts: { sans: 'liberation/LiberationSans' } },
    );
  },
};

export const FOURTH_B = [twoUp, flatbed, files, pictureOnPage, smallPages, a5Page, slipBelow] as const;
