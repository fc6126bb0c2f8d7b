import { foldLine, numberOf, packing, returnForm, returnTitle, steps, stub, tab } from '../designs/fifth-papers.js';
import { ALL_TEN, posted, tongue } from '../designs/fifth-words.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { BOTH, FONTS, INNER, MORE, serverPicture, WHOLE } from './fifth-parts.js';
import { a4, a5, a6, documents, letter } from './fourth-parts.js';
import { cutLabel, cycle, label, other, page, range, slipPart } from './parts.js';

const smallPages: Layout = {
  name: 'z17-small-pages',
  about:
    'XeTeX, pages of A6 and 100x150 mm: the label alone with margins of three millimetres; A5 with the label upright and a line of what to do',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1700 + i, tongue(i + 8, ALL_TEN));
      const [design, edge] = cycle(BOTH, i * 3 + 2);
      const size = cycle([a6, SIZES['100x150'], a5, a6], i);
      const art = design(each, { width: 266, height: 404 });
      if (size !== a5) return page('label', size, [label(art, { x: (size.width - 266) / 2, y: (size.height - 404) / 2 }, edge)]);
      return page('label', size, [
        label(art, { x: 76, y: 24 }, edge),
        other(steps(each, { width: 340, height: 110 }, false), { x: 40, y: 466 }),
      ]);
    });
    return documents('z17-small-pages', pages, { producer: 'xetex', fonts: FONTS.open }, { producer: 'xetex', fonts: FONTS.liberation });
  },
};

const tabbed: Layout = {
  name: 'z18-tab-below',
  about: 'fpdf2, pages of 4x8 in: the label on the upper six inches, a perforated line, the receipt or the contents on the tab below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1800 + i, tongue(i, ALL_TEN));
      const [design, edge] = cycle(MORE, i + 2);
      const receipt = i % 2 === 0;
      const below = tab(each, 252, receipt ? 'receipt' : 'contents');
      return page('label', SIZES['4x8'], [
        label(design(each, { width: 271, height: 412 }), { x: 8.5, y: 8.5 }, edge),
        other(foldLine(288, '', true), { x: 0, y: 420 }),
        receipt ? other(below, { x: 18, y: 444 }) : slipPart(below, { x: 18, y: 444 }),
      ]);
    });
    return documents('z18-tab-below', pages, { producer: 'fpdf2', fonts: FONTS.lato }, { producer: 'fpdf2', fonts: FONTS.open });
  },
};

const slipNext: Layout = {
  name: 'z19-slip-next',
  about:
    'react-pdf, a label on a page of 4x6 in and its packing list on the next, order by order; or label on letter, the list on the next page',
  documents: () => {
    const pages = range(8).flatMap((i): Page[] => {
      const each = posted(1900 + i, tongue(i));
      const [design, edge] = cycle(BOTH, i + 6);
      const art = design(each, INNER);
      if (i % 2 === 0)
        return [
          page('label', SIZES['4x6'], [label(art, { x: 8.5, y: 8.5 }, 'page')]),
          page('packing-slip', SIZES['4x6'], [slipPart(packing(each, { width: 256, height: 390 }, i % 4 === 0), { x: 16, y: 18 })]),
        ];
      return [
        page('label', letter, [label(art, { x: 36, y: 36 }, edge)]),
        page('packing-slip', letter, [slipPart(packing(each, { width: 480, height: 600 }), { x: 66, y: 50 })]),
      ];
    });
    return documents('z19-slip-next', pages, { producer: 'react-pdf' }, { producer: 'react-pdf' });
  },
};

const wayBack: Layout = {
  name: 'z20-out-and-back',
  about:
    'Qt, letter and A4: outgoing label lying on the upper half, return label lying or on its head below, a line between; or a return label alone with its form',
  documents: () => {
    const pages = range(6).map((i): Page => {
      const each = posted(2000 + i, tongue(i + 8));
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(MORE, i);
      const x = (size.width - INNER.height) / 2;
      const half = size.height / 2;
      if (i % 3 === 2)
        return page('return-label', size, [
          other(returnTitle(each, 480), { x: 60, y: 44 }),
          cutLabel(design(each, { ...INNER, back: true }), { x: 60, y: 110 }, 8, 'return-label'),
          other(returnForm(each, { width: 480, height: 130 }, i === 2), { x: 60, y: 580 }),
        ]);
      const [other2, edge2] = cycle(MORE, i + 3);
      return page('label', size, [
        label(design(each, INNER), { x, y: 44, turn: 90 }, edge),
        other(foldLine(size.width - 60, each.words.back[0]), { x: 30, y: half - 14 }),
        label(
          other2(posted(2050 + i, tongue(i + 8)), { ...INNER, back: true }),
          { x, y: half + 50, turn: i % 2 === 0 ? 90 : 270 },
          edge2,
          'return-label',
        ),
      ]);
    });
    return documents('z20-out-and-back', pages, { producer: 'qt', fonts: FONTS.lato }, { producer: 'qt', fonts: FONTS.roboto });
  },
};

const pictureAndSteps: Layout = {
  name: 'z21-picture-and-slip',
  about:
    'muhammara and react-pdf, letter and A4: the picture of a 4x6 in label (JPEG, grey, 1 bit) upright at the left or lying on top, receipt or packing list beside or below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const language = tongue(i + 8);
      const each = posted(2100 + i, language);
      const size = i % 2 === 0 ? a4 : letter;
      const lying = i % 4 >= 2;
      const at = lying ? { x: (size.width - WHOLE.height) / 2, y: 40, turn: 90 as const, stored: true } : { x: 20, y: 30 };
      const options = {
        dpi: i % 4 === 2 ? 300 : 203,
        ink: cycle(['jpeg', 'bilevel', 'bilevel', 'jpeg', 'grey', 'bilevel', 'bilevel', 'grey'] as const, i),
      };
      const right = size.width - 340;
      const beside = lying ? { x: 70, y: size.height / 2 + 30, w: size.width - 140 } : { x: 326, y: 60, w: right };
      const art =
        i % 2 === 0
          ? stub(each, { width: Math.min(beside.w, 270), height: 240 }, numberOf(each), i % 4 === 0)
          : packing(each, { width: beside.w, height: 300 }, lying);
      return page('label', size, [
        serverPicture(cycle(MORE, i), 2100 + i, language, at, options),
        i % 2 === 0 ? other(art, beside) : slipPart(art, beside),
      ]);
    });
    return documents('z21-picture-and-slip', pages, { producer: 'muhammara', fonts: FONTS.open }, { producer: 'react-pdf' });
  },
};

export const FIFTH_C = [smallPages, tabbed, slipNext, wayBack, pictureAndSteps] as const;
