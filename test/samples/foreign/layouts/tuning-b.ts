import { advert, appCode, coupon, customs, instructions, logo } from '../designs/beside.js';
import { Art } from '../kit/art.js';
import { parcel, TUNING } from '../designs/content.js';
import { TUNING_LABELS } from '../designs/tuning-labels.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { bySize, cycle, flow, label, other, page, pictured, range } from './parts.js';
import { WORKSPACE } from './workspace.js';

const { larkmoss, dunwhit, vellapost, orrinway, tamsilk, brackenjet } = TUNING_LABELS;
const FOUR_SIX = { width: 288, height: 432 };
const DOT = 72 / 203;

/** A shop's template of an office suite: label beside a framed advert that is larger. */
const officeAdvert: Layout = {
  name: 't04-office-advert',
  about: 'LibreOffice, A4 and legal: ruled label beside or above a framed advert larger than itself, logo block; some on A5 with no advert',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(400 + i, TUNING);
      const art = cycle([dunwhit, orrinway, larkmoss], i)(each, i % 3 === 0 ? { width: 264, height: 396 } : FOUR_SIX);
      if (i % 5 === 3)
        return page('label', SIZES.a5, [
          label(art, { x: 60, y: 90 }, 'frame'),
          other(logo(TUNING, { width: 240, height: 40 }, i), { x: 60, y: 30 }),
        ]);
      const size = i % 5 === 4 ? SIZES.legal : SIZES.a4;
      const turn: Turn = i % 2 === 0 ? 180 : 0;
      const big = advert(each, TUNING, { width: 520, height: size.height - 540 });
      const head = logo(TUNING, { width: 190, height: 40 }, i);
      return page('label', size, [
        label(art, { x: 30 + (i % 3) * 8, y: 36, turn }, 'frame'),
        other(big, { x: 36, y: 496 }),
        other(head, { x: 350, y: 60 }),
        other(appCode(each, { width: 190, height: 54 }), { x: 350, y: 140 }),
      ]);
    });
    return bySize(pages).map((group, k) => ({
      name: `t04-office-advert-${k + 1}`,
      producer: 'libreoffice',
      pages: group,
      ...(k === 1 ? { fonts: { sans: 'Noto Sans' } } : {}),
    }));
  },
};

/** Pages of the label's own size, pixels only. */
const thermalPictures: Layout = {
  name: 't05-label-pictures',
  about: 'img2pdf, 1 bit at 203 dpi, no words: pages of 4x6, 6x4, 4x6.75, 4x8, 100x150 mm; turned in pixels and by /Rotate',
  documents: () => {
    const sizes = [SIZES['4x6'], SIZES['6x4'], SIZES['4x6.75'], SIZES['4x8'], SIZES['100x150']];
    const pages = range(15).map((i): Page => {
      const each = parcel(500 + i, TUNING);
      const size = cycle(sizes, i);
      const lying = size.width > size.height;
      const rotate = cycle<Turn>([0, 0, 90, 180, 270, 0, 0], i);
      if (lying && i === 1) return page('label', size, [label(tamsilk(each, { ...size, dot: DOT }), { x: 0, y: 0 }, 'frame')]);
      const turn: Turn = lying ? (i % 2 === 0 ? 90 : 270) : i % 4 === 3 ? 180 : 0;
      const [width, height] = lying ? [size.height, size.width] : [size.width, size.height];
      if (i % 3 === 0)
        return page(
          'label',
          size,
          [label(dunwhit(each, { width: width - 8, height: height - 8, dot: DOT }), { x: 4, y: 4, turn }, 'frame')],
          { rotate },
        );
      if (i % 3 === 1)
        return page('label', size, [label(brackenjet(each, { width, height, dot: DOT }), { x: 0, y: 0, turn }, 'page')], { rotate });
      return page(
        'label',
        size,
        [label(vellapost(each, { width: width - 20, height: height - 20, dot: DOT }), { x: 10, y: 10, turn }, 'page')],
        { rotate },
      );
    });
    return [
      { name: 't05-label-pictures-1', producer: 'img2pdf', pages: pages.slice(0, 8) },
      { name: 't05-label-pictures-2', producer: 'img2pdf', fonts: { sans: 'DejaVu Sans' }, pages: pages.slice(8) },
    ];
  },
};

/** Two or four carrier pictures put on a sheet by a browser page. */
const severalPictures: Layout = {
  name: 't06-several-pictures',
  about: 'Chromium, letter and A4: two lying or four small label pictures a page (1 bit and grey), some places empty, a footer line',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const size = i % 2 === 0 ? SIZES.letter : SIZES.a4;
      const ink = i % 3 === 0 ? ('grey' as const) : ('bilevel' as const);
      const four = i % 3 === 1;
      const count = four ? (i % 4 === 0 ? 3 : 4) : i % 5 === 4 ? 1 : 2;
      const parts = range(count).map((k) => {
        const each = parcel(600 + i * 4 + k, TUNING);
        const options = { dpi: 203, ink };
        const frameless = i % 2 === 0;
        const art = (frameless ? vellapost : orrinway)(each, { ...FOUR_SIX, dot: DOT });
        const padded = new Art(art.width + 12, art.height + 12, 'sans', DOT).put(art, 6, 6);
        const used = frameless ? padded : art;
        const edge = frameless ? 'picture' : 'frame';
        if (four) {
          const scale = 0.8;
          return pictured(used, { x: 26 + (k % 2) * 290, y: 20 + Math.floor(k / 2) * 378, scale }, edge, WORKSPACE, options);
        }
        const turn = i % 4 < 2 ? (90 as const) : (270 as const);
        return pictured(used, { x: 80, y: 34 + k * 370, turn, stored: i % 2 === 1 }, edge, WORKSPACE, options);
      });
      const foot = flow(60, size.height - 22, 400, `Batch sheet ${i + 1}, trial run, void for shipping`);
      return page('label', size, [...parts, foot]);
    });
    return range(3).map((k) => ({ name: `t06-several-pictures-${k + 1}`, producer: 'chromium', pages: pages.slice(k * 5, k * 5 + 5) }));
  },
};

const LETTER_TEXT = `.fam T
.ps 12
.vs 15
.ad l
Dear customer,
.sp 6p
thank you for your order. The label below is yours to stick on the parcel that comes back to us; cut it out and
leave the bars uncovered. We pay the postage, you need no stamp.
.sp 6p
Should the box be larger than a shoe box, please bring it to the counter and do not leave it in the parcel locker.`;

/** A letter of a typesetter with the label placed in it. */
const typesetLetter: Layout = {
  name: 't07-typeset-letter',
  about: 'groff with an EPS label, letter and A4: running text above and below, the label upright or turned by half, some by /Rotate',
  documents: () => {
    const pages = (size: { width: number; height: number }, from: number, count: number): Page[] =>
      range(count).map((k): Page => {
        const i = from + k;
        const each = parcel(700 + i, TUNING);
        const art = cycle([larkmoss, brackenjet, dunwhit], i)(each, { width: 280, height: 420 });
        const edge = i % 3 === 1 ? ('ink' as const) : ('frame' as const);
        const x = 72 + (i % 4) * 42;
        const under = `.fam T\n.ps 10\n.vs 12\nOrder ${each.order}. Questions? Write to us, we answer within a working day. ${each.mark}.`;
        return page(
          'label',
          size,
          [flow(72, 60, 460, LETTER_TEXT), label(art, { x, y: 210, turn: i % 2 === 0 ? 0 : 180 }, edge), flow(72, 670, 440, under)],
          { rotate: i % 5 === 2 ? 90 : i % 5 === 4 ? 180 : 0 },
        );
      });
    return [
      { name: 't07-typeset-letter-1', producer: 'groff', pages: pages(SIZES.letter, 0, 8) },
      { name: 't07-typeset-letter-2', producer: 'groff', fonts: { sans: 'Bookman' }, pages: pages(SIZES.a4, 8, 7) },
    ];
  },
};

/** Labels for abroad: designed lying, with the declaration on the same page or the next, and a label for the way back. */
const abroad: Layout = {
  name: 't08-abroad',
  about: 'cairo, A4: label designed lying on top and a customs form below; or form on the next page; or a return label on the next page',
  documents: () => {
    const pages = range(15).flatMap((i): Page[] => {
      const each = parcel(800 + i, TUNING);
      const size = SIZES.a4;
      const turn: Turn = i % 5 === 3 ? 180 : 0;
      const main = label(tamsilk(each, { width: 432, height: 288 }), { x: 60 + (i % 4) * 14, y: 40, turn }, 'frame');
      const form = customs(each, { width: 432, height: 400, family: i % 2 === 0 ? 'sans' : 'serif' }, i % 3 === 0);
      if (i % 3 === 0) return [page('label', size, [main, other(form, { x: 80, y: 380 })])];
      const help = other(instructions({ width: 400, height: 160 }, each), { x: 80, y: 420 });
      if (i % 3 === 1) return [page('label', size, [main, help]), page('customs', size, [other(form, { x: 80, y: 60 })])];
      const back = new Art(432, 312, 'sans').put(
        tamsilk({ ...parcel(870 + i, TUNING), to: each.from, from: each.to }, { width: 432, height: 288 }),
        0,
        0,
      );
      const title = new Art(300, 20).text(0, 15, 'Return label: keep for sending things back', { size: 12, bold: true });
      const second = { ...label(back, { x: 70, y: 60 }, 'frame'), role: 'return-label' as const };
      return [
        page('label', size, [main, other(coupon(each, { width: 250, height: 140 }), { x: 90, y: 460 })]),
        page('return-label', size, [other(title, { x: 70, y: 30 }), second, help]),
      ];
    });
    return [
      { name: 't08-abroad-1', producer: 'cairo', pages: pages.slice(0, 13) },
      { name: 't08-abroad-2', producer: 'cairo', fonts: { sans: 'Noto Sans', serif: 'DejaVu Serif' }, pages: pages.slice(13) },
    ];
  },
};

export const TUNING_B = [officeAdvert, thermalPictures, severalPictures, typesetLetter, abroad] as const;
