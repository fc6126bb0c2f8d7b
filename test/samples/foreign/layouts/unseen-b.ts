import { customs, instructions, logo, receipt } from '../designs/beside.js';
import { parcel, UNSEEN } from '../designs/content.js';
import { UNSEEN_LABELS } from '../designs/unseen-labels.js';
import { Art } from '../kit/art.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { cutLabel, cycle, flow, label, other, page, pictured, range } from './parts.js';
import { WORKSPACE } from './workspace.js';

const { siltwing, marrowgate, thistledray, nubelina, zephrook } = UNSEEN_LABELS;
const FOUR_SIX = { width: 288, height: 432 };
const DOT = 72 / 203;

/** Pages of the label's own size, grey or 1 bit. */
const labelPixels: Layout = {
  name: 'u05-label-pixels',
  about: 'tiff2pdf, 1 bit at 203 dpi and grey at 300 dpi, no words: pages of A6, 6x4, 4x6, 4x8, 100x150 mm; some by /Rotate',
  documents: () => {
    const sizes = [SIZES['4x6'], SIZES.a6, SIZES['100x150'], SIZES['6x4'], SIZES['4x8']];
    const pages = (count: number, from: number, dot: number): Page[] =>
      range(count).map((k): Page => {
        const i = from + k;
        const each = parcel(3500 + i, UNSEEN);
        const size = cycle(sizes, i);
        const rotate = cycle<Turn>([0, 90, 0, 0, 180, 0, 270], i);
        if (i === 3)
          return page('label', size, [label(nubelina(each, { width: 424, height: 280, dot }), { x: 4, y: 4 }, 'frame')], { rotate });
        const lying = size.width > size.height;
        const [width, height] = lying ? [size.height, size.width] : [size.width, size.height];
        const turn: Turn = lying ? 270 : i % 4 === 2 ? 180 : 0;
        const kind = i % 3;
        if (kind === 2)
          return page(
            'label',
            size,
            [label(zephrook(each, { width: width - 16, height: height - 16, dot }), { x: 8, y: 8, turn }, 'page')],
            { rotate },
          );
        const draw = kind === 0 ? marrowgate : thistledray;
        return page('label', size, [label(draw(each, { width: width - 10, height: height - 10, dot }), { x: 5, y: 5, turn }, 'frame')], {
          rotate,
        });
      });
    return [
      { name: 'u05-label-pixels-1', producer: 'tiff2pdf', pages: pages(9, 0, DOT) },
      {
        name: 'u05-label-pixels-2',
        producer: 'tiff2pdf',
        fonts: { sans: 'Noto Sans' },
        dpi: 300,
        grey: true,
        pages: pages(6, 9, 72 / 300),
      },
    ];
  },
};

/** Pictures side by side on a lying page, four on an upright one, or one above the other. */
const picturesPlaced: Layout = {
  name: 'u06-pictures-placed',
  about: 'cairo, lying letter, A4 and legal: two label pictures side by side, four small, or two lying; JPEG, grey and 1 bit; empty places',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const kind = i % 3;
      const ink = cycle(['jpeg', 'bilevel', 'bilevel', 'grey'] as const, i);
      const size = kind === 0 ? { width: 792, height: 612 } : kind === 1 ? SIZES.a4 : SIZES.legal;
      const count = kind === 1 ? (i % 2 === 0 ? 4 : 3) : i % 5 === 3 ? 1 : 2;
      const parts = range(count).map((k) => {
        const each = parcel(3600 + i * 4 + k, UNSEEN);
        const framed = i % 2 === 0;
        const art = (framed ? siltwing : zephrook)(each, { ...FOUR_SIX, dot: DOT });
        const used = framed ? art : new Art(art.width + 10, art.height + 10, 'sans', DOT).put(art, 5, 5);
        const edge = framed ? 'frame' : 'picture';
        const options = { dpi: 203, ink };
        if (kind === 0) return pictured(used, { x: 50 + k * 360, y: 70, turn: i % 6 === 3 ? 180 : 0 }, edge, WORKSPACE, options);
        if (kind === 1)
          return pictured(used, { x: 24 + (k % 2) * 284, y: 14 + Math.floor(k / 2) * 410, scale: 0.85 }, edge, WORKSPACE, options);
        return pictured(used, { x: 70, y: 60 + k * 440, turn: i % 2 === 0 ? 90 : 270, stored: i % 4 === 0 }, edge, WORKSPACE, options);
      });
      const foot = new Art(300, 12).text(0, 9, `Sheet ${i + 1} of the trial run - void`, { size: 7 });
      return page('label', size, [...parts, other(foot, { x: 60, y: size.height - 20 })]);
    });
    return range(3).map((k) => ({ name: `u06-pictures-placed-${k + 1}`, producer: 'cairo', pages: pages.slice(k * 5, k * 5 + 5) }));
  },
};

/** Parcels for abroad from a browser: label designed lying; the way back or the declaration on the same page or the next. */
const wayBack: Layout = {
  name: 'u08-way-back',
  about: 'Chromium, letter and A4: label designed lying with a return label below it; or a customs form on the next page or below',
  documents: () => {
    const pages = range(15).flatMap((i): Page[] => {
      const each = parcel(3800 + i, UNSEEN);
      const size = i % 2 === 0 ? SIZES.a4 : SIZES.letter;
      const x = 60 + (i % 5) * 10;
      const main = label(nubelina(each, { width: 432, height: 288 }), { x, y: 50 }, 'frame');
      const form = customs(each, { width: 440, height: 380, family: 'serif' }, i % 2 === 0);
      if (i % 3 === 0) {
        const back = nubelina({ ...parcel(3870 + i, UNSEEN), to: each.from, from: each.to }, { width: 432, height: 288 });
        const title = flow(x, 386, 400, '<h2>RETURN LABEL - only for sending back</h2>');
        return [page('label', size, [main, title, label(back, { x, y: 420, turn: i % 2 === 0 ? 0 : 180 }, 'frame', 'return-label')])];
      }
      if (i % 3 === 1) return [page('label', size, [main, other(form, { x, y: 370 })])];
      const help = other(instructions({ width: 380, height: 160 }, each), { x: 90, y: 430 });
      return [page('label', size, [main, help]), page('customs', size, [other(form, { x: 70, y: 80 })])];
    });
    return range(2).map((k) => ({
      name: `u08-way-back-${k + 1}`,
      producer: 'chromium',
      fonts: { sans: k === 0 ? 'DejaVu Sans' : 'Liberation Sans' },
      pages: pages.slice(k * 10, k * 10 + 10),
    }));
  },
};

const SKEWS = [2.9, -1.4, 0.6, -2.2, 1.8, -0.4, 2.4, -3, 1, -0.8];

/** Scanned pages: 1 bit, grey; and a page that is a picture but lies straight. */
const scanned: Layout = {
  name: 'u09-scanned',
  about:
    'whole-page pictures without words: 1-bit G4 scans at 300 dpi and JPEG scans at 200 dpi, -3 to 3 degrees askew; straight ones of img2pdf',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(3900 + i, UNSEEN);
      const size = cycle([SIZES.a4, SIZES.letter, SIZES.a5], i);
      const skew = i < 10 ? { skew: cycle(SKEWS, i) } : {};
      if (size === SIZES.a5) {
        const art = cycle([thistledray, siltwing], i)(each, FOUR_SIX);
        return page('label', size, [label(art, { x: 70, y: 90, turn: i % 2 === 0 ? 0 : 180 }, 'frame')], skew);
      }
      const art = cycle([marrowgate, thistledray, siltwing, marrowgate], i)(each, { width: 280, height: 420 });
      const turn: Turn = i % 4 === 1 ? 270 : i % 4 === 3 ? 90 : 0;
      const at = { x: turn === 0 ? 250 : 90, y: turn === 0 ? 330 : 430, turn };
      const main = i % 5 === 0 ? cutLabel(art, at, 9) : label(art, at, 'frame');
      const top = i % 2 === 0 ? instructions({ width: 300, height: 150 }, each) : receipt(each, { width: 400, height: 120 }, each.s10);
      return page(
        'label',
        size,
        [other(top, { x: 70, y: 60 }), other(logo(UNSEEN, { width: 220, height: 40 }, i), { x: 70, y: 250 }), main],
        skew,
      );
    });
    return [
      { name: 'u09-scanned-1', producer: 'scan-g4', dpi: 300, pages: pages.slice(0, 5) },
      { name: 'u09-scanned-2', producer: 'scan-jpeg', fonts: { sans: 'Noto Sans' }, pages: pages.slice(5, 10) },
      { name: 'u09-scanned-3', producer: 'img2pdf', grey: true, dpi: 200, pages: pages.slice(10) },
    ];
  },
};

export const UNSEEN_B = [labelPixels, picturesPlaced, wayBack, scanned] as const;
