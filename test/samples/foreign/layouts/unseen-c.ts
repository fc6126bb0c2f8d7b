import { appCode, receipt } from '../designs/beside.js';
import { parcel, UNSEEN } from '../designs/content.js';
import { UNSEEN_LABELS } from '../designs/unseen-labels.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { cycle, flow, label, other, page, range } from './parts.js';

const { siltwing, marrowgate, ulvepost, thistledray, nubelina, zephrook } = UNSEEN_LABELS;
const FOUR_SIX = { width: 288, height: 432 };

/** Vector pages of odd sizes, and a typeset letter's own size. */
const oddSizes: Layout = {
  name: 'u10-odd-sizes',
  about:
    'Chromium and groff, pages of A6, 4x6.75, 4x8, 120x170 mm, 6x4: label to the edge, smaller than the page, with a stub or a line of words',
  documents: () => {
    const sizes = [SIZES['4x6.75'], SIZES.a6, { width: 340.16, height: 481.89 }, SIZES['6x4'], SIZES['4x8']];
    const pages = range(10).map((i): Page => {
      const each = parcel(4000 + i, UNSEEN);
      const size = cycle(sizes, i);
      const rotate = cycle<Turn>([0, 0, 180, 0, 90, 0, 270], i);
      if (size === SIZES['6x4'])
        return page(
          'label',
          size,
          [label(nubelina(each, { width: 420, height: 276 }), { x: 6, y: 6, turn: i % 2 === 0 ? 180 : 0 }, 'frame')],
          { rotate },
        );
      if (size === SIZES.a6)
        return page('label', size, [label(ulvepost(each, { width: 285.64, height: 405.53 }), { x: 6, y: 8 }, 'page')], { rotate });
      if (size === SIZES['4x8'])
        return page(
          'label',
          size,
          [
            label(siltwing(each, { width: 280, height: 420 }), { x: 4, y: 4 }, 'frame'),
            other(receipt(each, { width: 260, height: 110 }, `SW${each.tracking}`), { x: 14, y: 446 }),
          ],
          { rotate },
        );
      if (size === SIZES['4x6.75'])
        return page(
          'label',
          size,
          [
            label(marrowgate(each, { width: 278, height: 420 }), { x: 5, y: 5 }, 'frame'),
            other(appCode(each, { width: 180, height: 40 }), { x: 20, y: 436 }),
          ],
          { rotate },
        );
      return page(
        'label',
        size,
        [label(zephrook(each, { width: 280, height: 425 }), { x: 30, y: 24, turn: i % 2 === 0 ? 0 : 180 }, 'ink')],
        { rotate },
      );
    });
    const letters = range(5).map((i): Page => {
      const each = parcel(4020 + i, UNSEEN);
      const words = `.fam P\n.ps 9\n.vs 11\nStick the upper part on the parcel. ${each.mark}.`;
      return page('label', SIZES.a5, [
        label(thistledray(each, FOUR_SIX), { x: 50 + i * 5, y: 40, turn: i % 2 === 0 ? 0 : 180 }, 'frame'),
        flow(60, 510, 300, words),
      ]);
    });
    return [
      { name: 'u10-odd-sizes-1', producer: 'chromium', fonts: { sans: 'Noto Sans' }, pages },
      { name: 'u10-odd-sizes-2', producer: 'groff', fonts: { sans: 'AvantGarde' }, pages: letters },
    ];
  },
};

export const UNSEEN_C = [oddSizes] as const;
