import { appPanel, counterCopy, foldMark, voucherPanel } from '../designs/fresh-beside.js';
import { harrowtern, moldwerf, ostrelane, pellwyck, skimmerdal } from '../designs/fresh-labels.js';
import { ribbelac, voxhollow } from '../designs/fresh-lying.js';
import { freshParcel, POLISH, wordsOf } from '../designs/fresh-words.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { cycle, flow, label, other, page, range } from './parts.js';

const ASCII_QUOTE = /’/g;

/** A typeset letter whose label stands at the end of the page, under or over the words. */
const letterEnd: Layout = {
  name: 'f09-letter-end',
  about:
    'groff with EPS labels, A4 and letter: label below a letter in several languages, at any turn, framed or open, receipt with the same code beside; some by /Rotate',
  documents: () => {
    const pages = (size: { width: number; height: number }, from: number, count: number): Page[] =>
      range(count).map((k): Page => {
        const i = from + k;
        const language = i % POLISH;
        const [each, words] = [freshParcel(900 + i, language), wordsOf(language)];
        const kind = i % 4;
        const art = cycle([ostrelane, moldwerf, pellwyck, skimmerdal], kind)(each, { width: 284, height: 426 }, words);
        const turn = cycle<Turn>([0, 270, 90, 180, 0], i);
        const lying = turn % 180 === 90;
        const [hello, first, second] = words.letter.map((text) => text.replaceAll(ASCII_QUOTE, "'"));
        const mark = each.mark.replaceAll(ASCII_QUOTE, "'");
        const text = `.fam ${cycle(['P', 'H', 'T', 'N'], i)}\n.ps 11\n.vs 14\n.ad l\n${hello ?? ''},\n.sp 5p\n${first ?? ''}\n.sp 5p\n${second ?? ''} ${mark}.`;
        const y = lying ? size.height - 360 : size.height - 480;
        const x = lying ? 80 + (i % 3) * 12 : 44 + (i % 3) * 6;
        const copy = counterCopy(
          each,
          words,
          { width: 200, height: 150 },
          cycle([`OL${each.tracking}8`, each.s10, `PW${each.tracking}`, `SK${each.tracking}`], kind),
        );
        return page(
          'label',
          size,
          [
            flow(70, 50, 440, text),
            other(foldMark(size.width, words.fold), { x: 0, y: y - 30 }),
            label(art, { x, y, turn }, kind % 2 === 0 ? 'frame' : 'ink'),
            ...(lying ? [] : [other(copy, { x: 370, y: y + 40 })]),
          ],
          { rotate: cycle<Turn>([0, 0, 270, 0, 180, 90], i) },
        );
      });
    return [
      { name: 'f09-letter-end-1', producer: 'groff', fonts: { sans: 'Helvetica' }, pages: pages(SIZES.a4, 0, 8) },
      { name: 'f09-letter-end-2', producer: 'groff', fonts: { sans: 'Palatino' }, pages: pages(SIZES.letter, 8, 7) },
    ];
  },
};

/** Label printers' paper and pages a little larger, from a printer's driver and a browser. */
const labelPaper: Layout = {
  name: 'f10-label-paper',
  about:
    'Ghostscript and Chromium, pages of 4x6, 100x150 mm, 6x4, A6, 4x8, 110x210 mm and A5: label with margins or to the edge, stub or app code below',
  documents: () => {
    const sizes = [
      SIZES['4x6'],
      SIZES['100x150'],
      SIZES['6x4'],
      SIZES.a6,
      SIZES['4x8'],
      { width: 311.81, height: 595.28 },
      SIZES.a5,
      SIZES['4x6'],
    ];
    const pages = range(18).map((i): Page => {
      const language = i % POLISH;
      const [each, words] = [freshParcel(1000 + i, language), wordsOf(language)];
      const size = cycle(sizes, i);
      const rotate = cycle<Turn>([0, 90, 0, 180, 0, 0, 270, 0, 0], i);
      const turn: Turn = i % 3 === 1 ? 180 : 0;
      switch (i % 8) {
        case 0:
          return page('label', size, [label(moldwerf(each, { width: 276, height: 420 }, words), { x: 6, y: 6, turn }, 'page')], { rotate });
        case 1:
          return page('label', size, [label(harrowtern(each, { width: 270, height: 412 }, words), { x: 6, y: 6, turn }, 'ink')], {
            rotate,
          });
        case 2:
          return page('label', size, [label(ribbelac(each, { width: 430, height: 286 }, words), { x: 1, y: 1, turn }, 'page')], { rotate });
        case 3:
          return page('label', size, [label(pellwyck(each, { width: 284, height: 406 }, words), { x: 7, y: 6, turn }, 'frame')], {
            rotate,
          });
        case 4: {
          const stub = counterCopy(each, words, { width: 260, height: 120 }, `OL${each.tracking}8`);
          return page(
            'label',
            size,
            [other(stub, { x: 14, y: 8 }), label(ostrelane(each, { width: 276, height: 426 }, words), { x: 6, y: 142, turn }, 'frame')],
            { rotate },
          );
        }
        case 5:
          return page(
            'label',
            size,
            [
              label(skimmerdal(each, { width: 284, height: 426 }, words), { x: 14, y: 14, turn }, 'ink'),
              other(voucherPanel(each, words, { width: 250, height: 118 }), { x: 30, y: 464 }),
            ],
            { rotate },
          );
        case 6: {
          const lying = voxhollow(each, { width: 432, height: 288 }, words);
          return page(
            'label',
            SIZES.a5,
            [
              label(lying, { x: 60, y: 60, turn: i % 16 === 6 ? 90 : 270 }, 'ink'),
              other(appPanel(each, words, { width: 180, height: 50 }), { x: 60, y: 516 }),
            ],
            { rotate },
          );
        }
        default:
          return page('label', size, [label(pellwyck(each, { width: 280, height: 424 }, words), { x: 4, y: 4, turn }, 'page')], { rotate });
      }
    });
    return [
      { name: 'f10-label-paper-1', producer: 'ghostscript', fonts: { sans: 'Bookman' }, pages: pages.slice(0, 9) },
      { name: 'f10-label-paper-2', producer: 'chromium', fonts: { sans: 'Nimbus Sans' }, pages: pages.slice(9) },
    ];
  },
};

export const FRESH_C = [letterEnd, labelPaper] as const;
