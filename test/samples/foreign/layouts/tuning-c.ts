import { appCode, coupon, instructions, logo, receipt } from '../designs/beside.js';
import { parcel, TUNING } from '../designs/content.js';
import { TUNING_LABELS } from '../designs/tuning-labels.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { cutLabel, cycle, label, other, page, range } from './parts.js';

const { larkmoss, dunwhit, vellapost, orrinway, tamsilk, brackenjet } = TUNING_LABELS;
const SKEWS = [-3, -2.4, -1.7, -1.1, -0.5, 0.3, 0.8, 1.4, 2.1, 2.7, 3, -0.9, 1.9, -2.8, 0.5];

/** Somebody printed the page and scanned it. */
const scans: Layout = {
  name: 't09-scans',
  about: 'whole-page grey JPEG scans of letter and A5 pages at 200 dpi, -3 to 3 degrees askew, noisy, no words',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(900 + i, TUNING);
      const size = i % 2 === 0 ? SIZES.letter : SIZES.a5;
      const skew = cycle(SKEWS, i);
      const look = { width: 270, height: 405 };
      if (i % 2 === 1) {
        const art = cycle([orrinway, larkmoss], (i - 1) / 2)(each, { width: 288, height: 432 });
        return page('label', size, [label(art, { x: 62, y: 70, turn: i % 4 === 1 ? 0 : 180 }, 'frame')], { skew });
      }
      const turn: Turn = i % 4 === 0 ? 90 : 270;
      const art = cycle([dunwhit, larkmoss, orrinway], i / 2)(each, look);
      const main = i % 3 === 0 ? cutLabel(art, { x: 100, y: 50, turn }, 10) : label(art, { x: 100, y: 50, turn }, 'frame');
      const below =
        i % 4 === 0 ? instructions({ width: 280, height: 150 }, each) : receipt(each, { width: 380, height: 120 }, each.tracking);
      return page(
        'label',
        size,
        [main, other(below, { x: 80, y: 440 }), other(logo(TUNING, { width: 240, height: 36 }, i), { x: 80, y: 690 })],
        { skew },
      );
    });
    return [
      { name: 't09-scans-1', producer: 'scan-jpeg', pages: pages.slice(0, 8) },
      { name: 't09-scans-2', producer: 'scan-jpeg', fonts: { sans: 'DejaVu Sans' }, pages: pages.slice(8) },
    ];
  },
};

/** Vector pages of the label's size, a little larger, or odd. */
const oddPages: Layout = {
  name: 't10-odd-pages',
  about: 'Ghostscript, pages of A6, 4x6, 4x8, 4x6.75 and odd sizes: label filling the page, running to its edges, or with a stub below',
  documents: () => {
    const sizes = [SIZES.a6, SIZES['4x6'], { width: 340, height: 500 }, SIZES['4x8'], { width: 500, height: 330 }, SIZES['4x6.75']];
    const pages = range(15).map((i): Page => {
      const each = parcel(1000 + i, TUNING);
      const size = cycle(sizes, i);
      const rotate = cycle<Turn>([0, 0, 90, 0, 0, 180, 0, 270], i);
      if (size === SIZES.a6)
        return page(
          'label',
          size,
          [label(larkmoss(each, { width: 283, height: 405 }), { x: 7, y: 7, turn: i % 4 === 0 ? 0 : 180 }, 'frame')],
          { rotate },
        );
      if (size === SIZES['4x6']) return page('label', size, [label(brackenjet(each, size), { x: 0, y: 0 }, 'page')], { rotate });
      if (size.width === 500)
        return page('label', size, [label(tamsilk(each, { width: 432, height: 288 }), { x: 30, y: 20 }, 'frame')], { rotate });
      if (size === SIZES['4x8']) {
        const stub = coupon(each, { width: 250, height: 124 });
        return page(
          'label',
          size,
          [label(dunwhit(each, { width: 276, height: 420 }), { x: 6, y: 6 }, 'frame'), other(stub, { x: 18, y: 440 })],
          { rotate },
        );
      }
      if (size.width === 340)
        return page('label', size, [label(vellapost(each, { width: 280, height: 425 }), { x: 30, y: 30, turn: 180 }, 'ink')], { rotate });
      return page(
        'label',
        size,
        [
          label(orrinway(each, { width: 280, height: 415 }), { x: 4, y: 4 }, 'frame'),
          other(appCode(each, { width: 180, height: 46 }), { x: 20, y: 430 }),
        ],
        { rotate },
      );
    });
    return [
      { name: 't10-odd-pages-1', producer: 'ghostscript', pages: pages.slice(0, 8) },
      { name: 't10-odd-pages-2', producer: 'ghostscript', fonts: { sans: 'Palatino' }, pages: pages.slice(8) },
    ];
  },
};

export const TUNING_C = [scans, oddPages] as const;
