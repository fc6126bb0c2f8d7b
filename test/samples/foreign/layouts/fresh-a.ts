import {
  advertPanel,
  appPanel,
  counterCopy,
  foldMark,
  helpSteps,
  letterhead,
  packed,
  smallPrint,
  voucherPanel,
} from '../designs/fresh-beside.js';
import { harrowtern, moldwerf, ostrelane, pellwyck, skimmerdal } from '../designs/fresh-labels.js';
import { freshParcel, wordsOf } from '../designs/fresh-words.js';
import { Art } from '../kit/art.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { escape } from '../kit/svg.js';
import { bySize, cutLabel, cycle, flow, label, other, page, range, slipPart } from './parts.js';

const FOUR_SIX = { width: 288, height: 432 };
const METRIC = { width: 283.46, height: 425.2 };

/** The delivery note runs over the page's head, the label stands in a corner of the foot. */
const noteAbove: Layout = {
  name: 'f01-note-above',
  about:
    'WeasyPrint, A4 and letter: label upright in the lower right or left corner, letterhead and delivery note above, app code and small print beside',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const [each, words] = [freshParcel(100 + i, i), wordsOf(i)];
      const size = i % 4 === 3 ? SIZES.letter : SIZES.a4;
      const art = cycle([pellwyck, ostrelane, moldwerf], i)(each, i % 2 === 0 ? METRIC : { width: 276, height: 414 }, words);
      const right = i % 3 !== 1;
      const rows = each.goods
        .slice(0, 4)
        .map(([count, what, price]) => `<tr><td>${count}</td><td>${escape(what)}</td><td>${price}</td></tr>`)
        .join('');
      const [title, order, quantity, item, price] = words.slip;
      const note = `<h1>${title}</h1><p>${order} <b>${each.order}</b>. ${escape(each.to.join(', '))}</p><table><tr><th>${quantity}</th><th>${item}</th><th>${price}</th></tr>${rows}</table><p>${escape(each.mark)}</p>`;
      const at = {
        x: right ? size.width - 310 : 26 + (i % 4) * 3,
        y: size.height - 446 + (i % 3) * 4,
        turn: i % 7 === 5 ? (180 as const) : (0 as const),
      };
      const x = right ? 36 : size.width - 250;
      return page('label', size, [
        other(letterhead(each, { width: size.width - 90, height: 34 }), { x: 45, y: 28 }),
        flow(45, 82, size.width - 90, note, 'slip'),
        label(art, at, i % 3 === 2 ? 'ink' : 'frame'),
        other(appPanel(each, words, { width: 180, height: 60 }), { x, y: size.height - 400 }),
        other(smallPrint(words, { width: 180, height: 200, family: 'serif' }, 1, 2), { x, y: size.height - 270 }),
      ]);
    });
    return range(2).map((k) => ({
      name: `f01-note-above-${k + 1}`,
      producer: 'weasyprint',
      fonts: k === 0 ? { sans: 'Nimbus Sans', serif: 'C059' } : { sans: 'DejaVu Sans Condensed', serif: 'Noto Serif' },
      pages: pages.slice(k * 8, k * 8 + 8),
    }));
  },
};

/** The counter's receipt on top in its frame, the label lying below it inside points to cut along. */
const counterSheet: Layout = {
  name: 'f02-counter-sheet',
  about:
    'Chromium, A4 and letter: framed counter receipt with the same tracking code and steps on top, label lying below inside a dashed cut line',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const [each, words] = [freshParcel(200 + i, i + 1), wordsOf(i + 1)];
      const size = i % 3 === 1 ? SIZES.letter : SIZES.a4;
      const kind = i % 3;
      const art = cycle([skimmerdal, harrowtern, ostrelane], kind)(each, METRIC, words);
      const tracking = cycle([`SK${each.tracking}`, `HT${each.routing.slice(0, 8)}`, `OL${each.tracking}8`], kind);
      const turn: Turn = i % 2 === 0 ? 270 : 90;
      const gap = 6 + (i % 3) * 3;
      return page('label', size, [
        other(counterCopy(each, words, { width: 270, height: 150 }, tracking), { x: 40, y: 50 }),
        other(helpSteps(each, words, { width: 220, height: 180 }), { x: 340, y: 60 }),
        ...(i % 4 === 0 ? [other(voucherPanel(each, words, { width: 200, height: 130 }), { x: 350, y: 250 })] : []),
        other(foldMark(size.width, words.fold), { x: 0, y: 420 }),
        cutLabel(art, { x: 60 + (i % 5) * 9, y: 456 + (i % 2) * 10, turn }, gap),
      ]);
    });
    const fonts = [{ sans: 'Liberation Sans Narrow' }, { sans: 'Noto Serif' }, { sans: 'DejaVu Sans' }];
    return fonts.map((font, k) => ({
      name: `f02-counter-sheet-${k + 1}`,
      producer: 'chromium',
      fonts: font,
      pages: pages.slice(k * 5, k * 5 + 5),
    }));
  },
};

/** A lying page: two vector labels, or a label and the list of what is packed. */
const twoUp: Layout = {
  name: 'f03-two-up',
  about:
    'cairo, lying letter and A4: two vector labels of different carriers beside each other, or one with what is packed beside it; some by /Rotate',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const [each, words] = [freshParcel(300 + i, i + 2), wordsOf(i + 2)];
      const size = i % 2 === 0 ? { width: 841.89, height: 595.28 } : { width: 792, height: 612 };
      const rotate = cycle<Turn>([0, 90, 0, 270, 0, 0, 180], i);
      const first = cycle([pellwyck, ostrelane, harrowtern, moldwerf], i)(each, FOUR_SIX, words);
      const edge = i % 4 < 2 ? ('frame' as const) : ('ink' as const);
      const y = 70 + (i % 4) * 8;
      if (i % 3 === 0) {
        const [next, second] = [freshParcel(350 + i, i + 3), wordsOf(i + 3)];
        const art = i % 2 === 0 ? ostrelane(next, FOUR_SIX, second) : pellwyck(next, FOUR_SIX, second);
        const middle = new Art(12, size.height).line(6, 0, 6, size.height, { line: 0.6, dash: [2, 3], stroke: '#444444' });
        return page(
          'label',
          size,
          [
            label(first, { x: size.width / 4 - 144, y }, edge),
            other(middle, { x: size.width / 2 - 6, y: 0 }),
            label(art, { x: (size.width * 3) / 4 - 144, y: y + 6, turn: i % 2 === 0 ? 0 : 180 }, 'frame'),
          ],
          { rotate },
        );
      }
      const left = i % 3 === 1;
      const list = packed(each, words, { width: 310, height: 380, family: i % 2 === 0 ? 'serif' : 'sans' }, i % 4 === 1);
      return page(
        'label',
        size,
        [
          label(first, { x: left ? 48 : size.width - 340, y, turn: i % 5 === 1 ? 180 : 0 }, edge),
          slipPart(list, { x: left ? 400 : 50, y: y + 10 }),
        ],
        { rotate: i % 2 === 0 ? rotate : 0 },
      );
    });
    return [
      { name: 'f03-two-up-1', producer: 'cairo', fonts: { sans: 'DejaVu Sans', serif: 'Noto Serif' }, pages: pages.slice(0, 8) },
      { name: 'f03-two-up-2', producer: 'cairo', fonts: { sans: 'Nimbus Sans Narrow', serif: 'P052' }, pages: pages.slice(8) },
    ];
  },
};

/** An office letter: head, label in the middle of the page, three columns of small print below. */
const officeMiddle: Layout = {
  name: 'f04-office-middle',
  about:
    'LibreOffice, A4, letter and A5: label in the middle of the page at any turn between letterhead and columns of small print or a framed advert',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const [each, words] = [freshParcel(400 + i, i + 3), wordsOf(i + 3)];
      const size = cycle([SIZES.a4, SIZES.letter, SIZES.a4, SIZES.a5, SIZES.letter], i);
      const art = cycle([harrowtern, pellwyck, ostrelane], i)(
        each,
        i % 4 === 1 ? { width: 270, height: 405 } : { width: 280, height: 420 },
        words,
      );
      const edge = i % 3 === 0 ? ('ink' as const) : ('frame' as const);
      const head = other(letterhead(each, { width: size.width - 100, height: 30 }), { x: 50, y: 26 });
      if (size === SIZES.a5)
        return page('label', size, [head, label(art, { x: 70, y: 90 + (i % 2) * 20, turn: i % 2 === 0 ? 180 : 0 }, edge)]);
      const turn = cycle<Turn>([90, 0, 270, 0, 180, 270], i);
      const lying = turn % 180 === 90;
      const [width] = lying ? [art.height] : [art.width];
      const main = label(art, { x: (size.width - width) / 2 + (i % 3) * 7 - 7, y: lying ? 190 : 100, turn }, edge);
      const below = lying
        ? [
            other(advertPanel(each, words, { width: size.width - 110, height: size.height - 560 }), { x: 55, y: 520 }),
            other(appPanel(each, words, { width: 190, height: 56 }), { x: 56, y: 92 }),
          ]
        : [other(smallPrint(words, { width: size.width - 80, height: 150, family: 'serif' }, 3, 2), { x: 40, y: 570 })];
      return page('label', size, [head, main, ...below]);
    });
    return bySize(pages).map((group, k) => ({
      name: `f04-office-middle-${k + 1}`,
      producer: 'libreoffice',
      pages: group,
      fonts: { sans: cycle(['DejaVu Sans Condensed', 'Nimbus Sans', 'Liberation Sans'], k), serif: 'Liberation Serif' },
    }));
  },
};

export const FRESH_A = [noteAbove, counterSheet, twoUp, officeMiddle] as const;
