import { fellbrook, tarntide } from '../designs/fifth-labels-c.js';
import { customsSheet, foldDown, foldLine, packing, steps, stub, banner, numberOf } from '../designs/fifth-papers.js';
import { ALL_TEN, posted, tongue } from '../designs/fifth-words.js';
import { Art } from '../kit/art.js';
import type { Layout, Page, Part } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { BOTH, FONTS, INNER, MORE, POST, WHOLE } from './fifth-parts.js';
import type { Styled } from './fifth-parts.js';
import { a4, documents, letter } from './fourth-parts.js';
import { cycle, label, other, page, range, slipPart } from './parts.js';

const twoUp: Layout = {
  name: 'z09-two-per-page',
  about: 'muhammara, letter and A4: two labels a sheet, each lying in its half, a line between or nothing; some halves empty',
  documents: () => {
    const pages = range(5).map((i): Page => {
      const size = i % 2 === 0 ? letter : a4;
      const half = size.height / 2;
      const one = (k: number): Part => {
        const [design, edge] = cycle(BOTH, i * 2 + k);
        const at = { x: (size.width - INNER.height) / 2, y: (half - INNER.width) / 2 + k * half, turn: (i % 3 === 1 ? 270 : 90) as Turn };
        return label(design(posted(900 + i * 2 + k, tongue(i * 2 + k)), INNER), at, edge);
      };
      const line = i % 2 === 0 ? [other(foldLine(size.width, '', i !== 2), { x: 0, y: half - 12 })] : [];
      return page('label', size, [...(i === 3 ? [one(0)] : [one(0), one(1)]), ...line]);
    });
    return documents(
      'z09-two-per-page',
      pages,
      { producer: 'muhammara', fonts: FONTS.liberation },
      { producer: 'muhammara', fonts: FONTS.lato },
    );
  },
};

const slipBelow: Layout = {
  name: 'z10-slip-below',
  about: 'MuPDF, letter and A4: label lying on the upper half, a line to cut along or only white, the packing list below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1000 + i, tongue(i));
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(MORE, i);
      return page('label', size, [
        label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: 40, turn: i % 4 === 1 ? 270 : 90 }, edge),
        ...(i % 4 === 3 ? [] : [other(foldLine(size.width - 60, each.words.cut), { x: 30, y: size.height / 2 - 26 })]),
        slipPart(packing(each, { width: size.width - 130, height: 320 }, i % 2 === 0), { x: 65, y: size.height / 2 + 24 }),
      ]);
    });
    return documents('z10-slip-below', pages, { producer: 'mupdf' }, { producer: 'mupdf' });
  },
};

const postAbroad: Layout = {
  name: 'z11-post-abroad',
  about:
    'react-pdf, a post’s label for abroad with the declaration inside: alone on 4x6 in, in the upper left of A4, or lying on a letter page with steps below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1100 + i, tongue(i + 8));
      const [design, edge] = POST;
      const art = design(each, INNER);
      if (i % 3 === 0) return page('label', SIZES['4x6'], [label(art, { x: 8.5, y: 8.5 }, 'page')]);
      if (i % 3 === 1) return page('label', a4, [label(art, { x: 26, y: 24 }, edge)]);
      return page('label', letter, [
        label(art, { x: (letter.width - INNER.height) / 2, y: 46, turn: 90 }, edge),
        other(foldLine(letter.width - 40, each.words.fold), { x: 20, y: letter.height / 2 - 14 }),
        other(steps(each, { width: 460, height: 280 }), { x: 76, y: letter.height / 2 + 36 }),
      ]);
    });
    return documents('z11-post-abroad', pages, { producer: 'react-pdf' }, { producer: 'react-pdf' });
  },
};

const declaredBeside: Layout = {
  name: 'z12-declared-beside',
  about: 'fpdf2, lying A4 and letter with a declaration beside the label; or the label on 4x6 in and the declaration on the next page',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = posted(1200 + i, tongue(i, ALL_TEN));
      const [design, edge] = cycle(MORE, i + 1);
      const art = design(each, INNER);
      if (i % 2 === 1)
        return [
          page('label', SIZES['4x6'], [label(art, { x: 8.5, y: 8.5 }, 'page')]),
          page('customs', SIZES['4x6'], [other(customsSheet(each, { width: 268, height: 400 }, i % 4 === 1), { x: 10, y: 16 })]),
        ];
      const [w, h] = i % 4 === 0 ? [a4.height, a4.width] : [letter.height, letter.width];
      return [
        page('customs', { width: w, height: h }, [
          label(art, { x: 54, y: (h - INNER.height) / 2 }, edge),
          other(foldDown(h - 40), { x: w / 2 - 1, y: 20 }),
          other(customsSheet(each, { width: w / 2 - 80, height: 330 }, i % 4 === 0), { x: w / 2 + 40, y: 90 }),
        ]),
      ];
    });
    return documents(
      'z12-declared-beside',
      pages,
      { producer: 'fpdf2', fonts: FONTS.roboto },
      { producer: 'fpdf2', fonts: FONTS.liberation },
    );
  },
};

/** A whole page that is a picture of a label: margins and all. */
const pixelPage = (i: number, styled: Styled, seed: number, language: number, dpi: number): Page => {
  const [design] = styled;
  const art = new Art(WHOLE.width, WHOLE.height).put(design(posted(seed, language), { ...INNER, dot: 72 / dpi }), 8.5, 8.5);
  const lying = i % 4 === 3;
  return page('label', lying ? SIZES['6x4'] : SIZES['4x6'], [
    label(art, { x: 0, y: 0, turn: lying ? (i % 8 === 3 ? 270 : 90) : 0 }, 'page'),
  ]);
};
const pixelPages: Layout = {
  name: 'z13-pixels',
  about: 'Pillow, no words: pages of 4x6 in, some lying, each one picture at 203 dpi in 1 bit or at 300 dpi in grey',
  documents: () => {
    const pages = (from: number, dpi: number): Page[] =>
      range(4).map((i) => pixelPage(i + from, cycle(BOTH, i + from + 3), 1300 + i + from, tongue(i + from + 8, ALL_TEN), dpi));
    return [
      { name: 'z13-pixels-1', producer: 'pillow', pages: pages(0, 203), fonts: { sans: 'Liberation Sans' } },
      { name: 'z13-pixels-2', producer: 'pillow', pages: pages(4, 300), dpi: 300, grey: true, fonts: { sans: 'Roboto' } },
    ];
  },
};

const flatbed: Layout = {
  name: 'z14-grey-scans',
  about: 'grey scans of a flatbed, JPEG at 150 and 200 dpi in pages of Pillow: letter, A4 and A5, up to 2.5 degrees askew, some noise',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1400 + i, tongue(i, ALL_TEN));
      const size = cycle([letter, SIZES.a5, a4, letter], i);
      const small = size === SIZES.a5;
      const [design, edge] = cycle(BOTH, i * 2 + 1);
      const turn: Turn = small ? (i === 5 ? 180 : 0) : 90;
      const x = small ? 70 : (size.width - INNER.height) / 2;
      return page(
        'label',
        size,
        [
          label(design(each, INNER), { x, y: small ? 90 : 60, turn }, edge),
          ...(small ? [] : [other(steps(each, { width: 420, height: 260 }), { x: 80, y: size.height / 2 + 40 })]),
        ],
        { skew: cycle([0.8, -1.4, 2.5, -0.5, -2.2, 1.7, 0.3, -1.9], i) },
      );
    });
    return documents('z14-grey-scans', pages, { producer: 'scan-pillow', dpi: 150 }, { producer: 'scan-pillow', dpi: 200 });
  },
};

const LYING: readonly Styled[] = [
  [tarntide, 'ink'],
  [fellbrook, 'frame'],
];
const lying: Layout = {
  name: 'z15-designed-lying',
  about:
    'Qt, labels designed lying: alone on 6x4 in, at the head of letter or A4 with steps or a receipt below, or standing on its side at the left',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1500 + i, tongue(i + 8));
      const [design, edge] = cycle(LYING, i);
      const art = design(each, { width: INNER.height, height: INNER.width });
      if (i % 4 === 0 || i === 5) return page('label', SIZES['6x4'], [label(art, { x: 8.5, y: 8.5 }, 'page')]);
      const size = i % 2 === 0 ? letter : a4;
      if (i % 4 === 3)
        return page('label', size, [
          label(art, { x: 30, y: 34, turn: 90 }, edge),
          other(steps(each, { width: 230, height: 300 }, false), { x: 340, y: 50 }),
        ]);
      return page('label', size, [
        label(art, { x: (size.width - INNER.height) / 2, y: 44 }, edge),
        other(foldLine(size.width - 50, each.words.fold), { x: 25, y: size.height / 2 - 20 }),
        other(stub(each, { width: 280, height: 260 }, numberOf(each), i === 1), { x: 80, y: size.height / 2 + 30 }),
      ]);
    });
    return documents('z15-designed-lying', pages, { producer: 'qt', fonts: FONTS.roboto }, { producer: 'qt', fonts: FONTS.liberation });
  },
};

const underBanner: Layout = {
  name: 'z16-under-banner',
  about: 'R, A4: a day’s labels, each upright in the middle of its page under the shop’s name, a line of the order at the foot',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1600 + i, tongue(i));
      const [design, edge] = cycle(MORE, i + 3);
      const foot = new Art(480, 14).text(0, 10, `${each.words.slip[3]} ${each.parcel.order}   ${each.parcel.mark}`, { size: 8, fit: 480 });
      return page('label', a4, [
        other(banner(each, 480), { x: 58, y: 34 }),
        label(design(each, INNER), { x: (a4.width - INNER.width) / 2, y: 150 }, edge),
        ...(i % 2 === 0 ? [other(foot, { x: 58, y: a4.height - 60 })] : []),
      ]);
    });
    return documents('z16-under-banner', pages, { producer: 'r' }, { producer: 'r' });
  },
};

export const FIFTH_B = [twoUp, slipBelow, postAbroad, declaredBeside, pixelPages, flatbed, lying, underBanner] as const;
