import { advertPanel, counterCopy, declaration, foldMark, helpSteps, letterhead, packed, voucherPanel } from '../designs/fresh-beside.js';
import { harrowtern, moldwerf, ostrelane, pellwyck, skimmerdal } from '../designs/fresh-labels.js';
import { ribbelac, voxhollow } from '../designs/fresh-lying.js';
import { freshParcel, wordsOf } from '../designs/fresh-words.js';
import { Art } from '../kit/art.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { cutLabel, cycle, flow, label, other, page, pictured, range, slipPart } from './parts.js';
import { WORKSPACE } from './workspace.js';

const FOUR_SIX = { width: 288, height: 432 };
const DOT = 72 / 203;
const SKEWS = [1.6, -2.6, 0.4, 2.8, -0.7, -1.9, 2.2, -3, 1.1, -1.2, 2.5, -0.3, 3, -2.1, 0.9];

/** Scans: the label anywhere, with a counter's receipt, a list or steps above or below. */
const scans: Layout = {
  name: 'f05-scans',
  about:
    'whole-page scans of A4, letter and A5 without words, JPEG at 200 dpi and 1-bit G4 at 300 dpi, -3 to 3 degrees askew; some labels designed lying',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const [each, words] = [freshParcel(500 + i, i + 4), wordsOf(i + 4)];
      const size = cycle([SIZES.a4, SIZES.letter, SIZES.a5], i);
      const skew = cycle(SKEWS, i);
      if (size === SIZES.a5) {
        const art = cycle([pellwyck, ostrelane], (i - 2) / 3)(each, FOUR_SIX, words);
        const turn: Turn = i % 2 === 0 ? 0 : 180;
        return page(
          'label',
          size,
          [other(letterhead(each, { width: 300, height: 26 }), { x: 60, y: 26 }), label(art, { x: 62, y: 100, turn }, 'frame')],
          { skew },
        );
      }
      if (i % 5 === 1) {
        const lying = ribbelac(each, { width: 424, height: 280 }, words);
        const copy = counterCopy(each, words, { width: 280, height: 140 }, `RL${each.tracking}`);
        return page('label', size, [label(lying, { x: 80, y: 80 }, 'frame'), other(copy, { x: 100, y: 470 })], { skew });
      }
      const art = cycle([ostrelane, pellwyck, harrowtern], i)(each, { width: 278, height: 417 }, words);
      const turn = cycle<Turn>([90, 270, 0, 180], i);
      const lying = turn % 180 === 90;
      const at = lying ? { x: 86, y: 440, turn } : { x: size.width - 350, y: 320, turn };
      const main = i % 2 === 0 ? cutLabel(art, at, 10) : label(art, at, i % 3 === 2 ? 'ink' : 'frame');
      const above = i % 4 === 1 ? packed(each, words, { width: 330, height: 230 }) : helpSteps(each, words, { width: 260, height: 180 });
      return page('label', size, [other(above, { x: 70, y: 50 }), main], { skew });
    });
    return [
      { name: 'f05-scans-1', producer: 'scan-g4', dpi: 300, fonts: { sans: 'Nimbus Sans' }, pages: pages.slice(0, 4) },
      { name: 'f05-scans-2', producer: 'scan-jpeg', pages: pages.slice(4, 10) },
      { name: 'f05-scans-3', producer: 'scan-jpeg', fonts: { sans: 'DejaVu Sans' }, pages: pages.slice(10) },
    ];
  },
};

const ABOUT_WHOLE =
  'tiff2pdf and img2pdf, no words: straight A4 and letter pages as pixels with the label in a corner and a voucher, advert or list; label pages of 4x6, A6, 4x8 and 4x6.75';

/** Pages that are one picture: a label's own paper, or an office page. */
const wholePixels: Layout = {
  name: 'f06-whole-pixels',
  about: ABOUT_WHOLE,
  documents: () => {
    const small = range(8).map((i): Page => {
      const [each, words] = [freshParcel(600 + i, i + 5), wordsOf(i + 5)];
      const size = cycle([SIZES['4x6'], SIZES.a6, SIZES['4x8'], SIZES['4x6.75']], i);
      const rotate = cycle<Turn>([0, 180, 90, 0, 270, 0], i);
      const turn: Turn = i % 3 === 2 ? 180 : 0;
      if (i % 4 === 0) {
        const art = (i === 0 ? harrowtern : moldwerf)(each, { width: 272, height: 416, dot: DOT }, words);
        return page('label', size, [label(art, { x: 8, y: 8, turn }, 'page')], { rotate });
      }
      const art = cycle([pellwyck, ostrelane], i)(each, { width: size.width - 14, height: size === SIZES.a6 ? 405 : 420, dot: DOT }, words);
      const stub =
        i % 4 === 2 ? [other(counterCopy(each, words, { width: 266, height: 120 }, `PW${each.tracking}`), { x: 11, y: 444 })] : [];
      return page('label', size, [label(art, { x: 7, y: 7, turn }, 'frame'), ...stub], { rotate });
    });
    const large = range(8).map((k): Page => {
      const i = k + 8;
      const [each, words] = [freshParcel(600 + i, i + 5), wordsOf(i + 5)];
      const size = i % 2 === 0 ? SIZES.a4 : SIZES.letter;
      const art = cycle([skimmerdal, pellwyck, ostrelane, harrowtern], i)(each, { ...FOUR_SIX, dot: DOT }, words);
      const edge = i % 4 === 0 || i % 4 === 3 ? ('ink' as const) : ('frame' as const);
      const below = i % 3 === 0 ? advertPanel(each, words, { width: 400, height: 250 }) : packed(each, words, { width: 400, height: 230 });
      return page('label', size, [
        label(art, { x: i % 3 === 1 ? size.width - 320 : 30, y: 34, turn: i % 5 === 0 ? 180 : 0 }, edge),
        other(voucherPanel(each, words, { width: 190, height: 120 }), { x: i % 3 === 1 ? 40 : 370, y: 60 }),
        other(below, { x: 90, y: 510 }),
      ]);
    });
    return [
      { name: 'f06-whole-pixels-1', producer: 'img2pdf', pages: small },
      { name: 'f06-whole-pixels-2', producer: 'tiff2pdf', fonts: { sans: 'DejaVu Sans' }, pages: large.slice(0, 4) },
      { name: 'f06-whole-pixels-3', producer: 'img2pdf', dpi: 300, fonts: { sans: 'Nimbus Sans' }, pages: large.slice(4) },
    ];
  },
};

/** A label picture in a page of words: lying above, or upright between two columns. */
const pictureInWords: Layout = {
  name: 'f07-picture-in-words',
  about:
    'WeasyPrint, A4 and letter: label as a picture (1 bit, grey, JPEG) lying on top or upright beside words, the slip below or on the next page',
  documents: () => {
    const pages = range(15).flatMap((i): Page[] => {
      const [each, words] = [freshParcel(700 + i, i + 6), wordsOf(i + 6)];
      const size = i % 3 === 0 ? SIZES.letter : SIZES.a4;
      const framed = i % 2 === 1;
      const art = (framed ? cycle([pellwyck, ostrelane], (i - 1) / 2) : cycle([moldwerf, harrowtern], i / 2))(
        each,
        { ...FOUR_SIX, dot: DOT },
        words,
      );
      const used = framed ? art : new Art(art.width + 14, art.height + 14, 'sans', DOT).put(art, 7, 7);
      const options = { dpi: 203, ink: cycle(['bilevel', 'bilevel', 'bilevel', 'grey', 'bilevel', 'jpeg'] as const, i) };
      const turn = cycle<Turn>([90, 0, 270, 180, 0, 90, 0, 270], i);
      const lying = turn % 180 === 90;
      const at = { x: lying ? 70 : size.width - 330, y: 60, turn, stored: i % 3 === 1, scale: i % 5 === 4 ? 0.9 : 1 };
      const main = pictured(used, at, framed ? 'frame' : 'picture', WORKSPACE, options);
      const text = flow(
        30,
        60,
        210,
        `<h2>${words.help[0]}</h2><ol><li>${words.help.slice(1).join('</li><li>')}</li></ol><p>${each.mark}</p>`,
      );
      const beside = lying ? [] : [text];
      const list = packed({ ...each, goods: each.goods.slice(0, 4) }, words, { width: 420, height: 260 }, i % 2 === 0);
      if (i % 5 === 2) return [page('label', size, [main, ...beside]), page('packing-slip', size, [slipPart(list, { x: 70, y: 70 })])];
      return [
        page('label', size, [
          main,
          ...beside,
          other(foldMark(size.width, words.fold), { x: 0, y: 520 }),
          slipPart(list, { x: 80, y: 538 }),
        ]),
      ];
    });
    return range(2).map((k) => ({
      name: `f07-picture-in-words-${k + 1}`,
      producer: 'weasyprint',
      fonts: { sans: k === 0 ? 'Liberation Sans' : 'Noto Sans' },
      pages: pages.slice(k * 9, k * 9 + 9),
    }));
  },
};

/** Parcels for abroad: labels designed lying, with a declaration or the label for the way back. */
const farAway: Layout = {
  name: 'f08-far-away',
  about:
    'cairo, A4 and letter: label designed lying, framed or open, upright or on its side; declaration below or on the next page, or a return label below or on the next page',
  documents: () => {
    const pages = range(16).flatMap((i): Page[] => {
      const [each, words] = [freshParcel(800 + i, i + 7), wordsOf(i + 7)];
      const size = i % 2 === 0 ? SIZES.a4 : SIZES.letter;
      const look = { width: 432, height: 288 };
      const framed = i % 3 !== 2;
      const design = framed ? ribbelac : voxhollow;
      const edge = framed ? ('frame' as const) : ('ink' as const);
      const x = 50 + (i % 4) * 16;
      const form = declaration(
        each,
        words,
        { width: 400, height: i % 4 === 0 ? 340 : 390, family: i % 2 === 0 ? 'serif' : 'sans' },
        i % 3 === 0,
      );
      if (i % 4 === 0)
        return [page('label', size, [label(design(each, look, words), { x, y: 44 }, edge), other(form, { x: x + 10, y: 400 })])];
      if (i % 4 === 2) {
        const stood = label(design(each, look, words), { x: 44, y: 60, turn: i % 8 === 2 ? 90 : 270 }, edge);
        const help = other(helpSteps(each, words, { width: 200, height: 200 }), { x: 360, y: 90 });
        return [page('label', size, [stood, help]), page('customs', size, [other(form, { x: 90, y: 60 })])];
      }
      const home = { ...freshParcel(860 + i, i + 7), to: each.from, from: each.to };
      const [from, to, weight, reference] = words.label;
      const back = design(home, look, { ...words, label: [from, to, weight, reference, words.back] });
      const title = new Art(400, 18).text(0, 14, words.back, { size: 13, bold: true });
      const main = label(design(each, look, words), { x, y: 40 }, edge);
      if (i % 4 === 1)
        return [
          page('label', size, [
            main,
            other(foldMark(size.width, words.fold), { x: 0, y: 372 }),
            other(title, { x, y: 392 }),
            label(back, { x, y: 424, turn: i % 8 === 1 ? 180 : 0 }, edge, 'return-label'),
          ]),
        ];
      const voucher = other(voucherPanel(each, words, { width: 220, height: 130 }), { x: 90, y: 420 });
      return [
        page('label', size, [main, voucher]),
        page('return-label', size, [other(title, { x: 70, y: 36 }), label(back, { x: 70, y: 90 }, edge, 'return-label')]),
      ];
    });
    return [
      { name: 'f08-far-away-1', producer: 'cairo', fonts: { sans: 'Noto Sans', serif: 'C059' }, pages: pages.slice(0, 12) },
      { name: 'f08-far-away-2', producer: 'cairo', fonts: { sans: 'Liberation Sans Narrow', serif: 'Noto Serif' }, pages: pages.slice(12) },
    ];
  },
};

export const FRESH_B = [scans, wholePixels, pictureInWords, farAway] as const;
