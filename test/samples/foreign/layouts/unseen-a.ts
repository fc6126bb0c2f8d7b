import { advert, appCode, coupon, foldLine, instructions, logo, receipt, slip } from '../designs/beside.js';
import { parcel, UNSEEN } from '../designs/content.js';
import { UNSEEN_LABELS } from '../designs/unseen-labels.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { escape } from '../kit/svg.js';
import { bySize, cutLabel, cycle, flow, label, other, page, range, slipPart } from './parts.js';

const { siltwing, marrowgate, ulvepost, thistledray, zephrook } = UNSEEN_LABELS;
const FOUR_SIX = { width: 288, height: 432 };
const METRIC = { width: 283.46, height: 425.2 };

/** A web shop's paper engine: note on the left and label on the right, or the note on top. */
const engineNote: Layout = {
  name: 'u01-engine-note',
  about: 'WeasyPrint, letter and A4: framed label at the right with the delivery note left of it, or at the bottom with the note above',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(3100 + i, UNSEEN);
      const size = i % 2 === 0 ? SIZES.letter : SIZES.a4;
      const below = i % 3 === 1;
      const art = cycle([siltwing, thistledray, marrowgate], i)(each, i % 4 === 3 ? METRIC : FOUR_SIX);
      const rows = each.goods.map(([count, what, price]) => `<tr><td>${count}</td><td>${escape(what)}</td><td>${price}</td></tr>`).join('');
      const note = `<h2>Delivery note ${each.order}</h2><p>${each.to.map(escape).join(', ')}</p><table><tr><th>No.</th><th>Article</th><th>Each</th></tr>${rows}</table><p>${escape(each.mark)}</p>`;
      const where = below
        ? { x: 110 + i * 4, y: size.height - 462, turn: 0 as const }
        : { x: size.width - 318 + (i % 3) * 4, y: 60 + i * 2, turn: i % 5 === 2 ? (180 as const) : (0 as const) };
      const words = below ? flow(60, 60, 440, note, 'slip') : flow(24, 70, 240, note, 'slip');
      return page('label', size, [
        words,
        label(art, where, 'frame'),
        ...(below ? [] : [other(logo(UNSEEN, { width: 200, height: 30 }, i), { x: 24, y: 24 })]),
      ]);
    });
    return [
      { name: 'u01-engine-note-1', producer: 'weasyprint', fonts: { sans: 'DejaVu Sans' }, pages: pages.slice(0, 8) },
      { name: 'u01-engine-note-2', producer: 'weasyprint', fonts: { sans: 'Noto Sans', serif: 'DejaVu Serif' }, pages: pages.slice(8) },
    ];
  },
};

/** Cut out and stick on: label upright with a line to cut along, voucher beside it. */
const cutOut: Layout = {
  name: 'u02-cut-out',
  about:
    'Chromium, letter and A4: label upright inside a dashed cut line, voucher with its own code beside it, instructions and app code below',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(3200 + i, UNSEEN);
      const size = i % 3 === 2 ? SIZES.letter : SIZES.a4;
      const art = cycle([zephrook, siltwing, ulvepost], i)(each, METRIC);
      const right = i % 2 === 1;
      const main = cutLabel(art, { x: right ? size.width - 312 : 30 + (i % 3) * 5, y: 40 + (i % 4) * 6, turn: i % 5 === 4 ? 180 : 0 }, 8);
      const x = right ? 24 : 350;
      return page('label', size, [
        main,
        other(coupon(each, { width: 210, height: 150 }), { x, y: 60 }),
        other(appCode(each, { width: 190, height: 60 }), { x, y: 250 }),
        other(instructions({ width: 400, height: 160 }, each), { x: 60, y: 540 }),
      ]);
    });
    const fonts = [{ sans: 'Noto Sans' }, { sans: 'Liberation Sans' }, { sans: 'Nimbus Sans' }];
    return fonts.map((font, k) => ({
      name: `u02-cut-out-${k + 1}`,
      producer: 'chromium',
      fonts: font,
      pages: pages.slice(k * 5, k * 5 + 5),
    }));
  },
};

/** Instructions first, label lying in the lower half, slip on the next page. */
const lowerHalf: Layout = {
  name: 'u03-lower-half',
  about:
    'cairo, letter and A4: frameless label lying in the lower half, instructions and voucher above, slip on the next page; some by /Rotate',
  documents: () => {
    const pages = range(15).flatMap((i): Page[] => {
      const each = parcel(3300 + i, UNSEEN);
      const size = i % 4 === 3 ? SIZES.a4 : SIZES.letter;
      const art = cycle([ulvepost, zephrook], i)(each, { width: 280, height: 420 });
      const rotate = cycle<Turn>([0, 270, 0, 180, 0, 90, 0], i);
      const first = page(
        'label',
        size,
        [
          other(instructions({ width: 300, height: 150 }, each), { x: 48, y: 60 }),
          ...(i % 2 === 0 ? [other(coupon(each, { width: 190, height: 140 }), { x: 380, y: 50 })] : []),
          other(foldLine(size.width, 'fold'), { x: 0, y: size.height / 2 - 20 }),
          label(art, { x: 84 + (i % 5) * 5, y: size.height / 2 + 40, turn: i % 3 === 0 ? 90 : 270 }, 'ink'),
        ],
        { rotate },
      );
      const sheet = slip(each, UNSEEN, { width: 470, height: 500, family: 'serif' }, { barcode: i % 3 === 0, title: 'Delivery note' });
      return [first, page('packing-slip', size, [slipPart(sheet, { x: 60, y: 50 })])];
    });
    return [
      { name: 'u03-lower-half-1', producer: 'cairo', fonts: { sans: 'Noto Sans' }, pages: pages.slice(0, 16) },
      { name: 'u03-lower-half-2', producer: 'cairo', fonts: { sans: 'Nimbus Sans', serif: 'P052' }, pages: pages.slice(16) },
    ];
  },
};

/** A big framed advert first; the label below it or beside a logo. */
const advertFirst: Layout = {
  name: 'u04-advert-first',
  about: 'Ghostscript, legal and A4: ruled label under a framed advert larger than itself, or between logo and sender copy',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(3400 + i, UNSEEN);
      const legal = i % 2 === 0;
      const size = legal ? SIZES.legal : SIZES.a4;
      const art = cycle([thistledray, marrowgate, siltwing], i)(each, legal ? FOUR_SIX : { width: 270, height: 405 });
      const turn = cycle<Turn>([0, 180, 90, 270], i);
      const x = 60 + (i % 4) * 8;
      if (legal) {
        const spot = { width: 540, height: 440 };
        return page('label', size, [other(advert(each, UNSEEN, spot), { x: 36, y: 30 }), label(art, { x, y: 520, turn }, 'frame')], {
          rotate: i % 6 === 4 ? 180 : 0,
        });
      }
      return page('label', size, [
        other(logo(UNSEEN, { width: 280, height: 60 }, i), { x: 50, y: 40 }),
        label(art, { x, y: 150, turn }, 'frame'),
        other(receipt(each, { width: 420, height: 110 }, `TD${each.tracking}1`), { x: 60, y: 640 }),
      ]);
    });
    return [
      { name: 'u04-advert-first-1', producer: 'ghostscript', fonts: { sans: 'Palatino' }, pages: pages.slice(0, 8) },
      { name: 'u04-advert-first-2', producer: 'ghostscript', pages: pages.slice(8) },
    ];
  },
};

/** An office template with everything on one page: sender copy, label, note. */
const officeAll: Layout = {
  name: 'u07-office-all',
  about: 'LibreOffice, letter, legal and A5: label lying at the bottom or the top with sender copy and delivery note on the same page',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(3700 + i, UNSEEN);
      const art = cycle([marrowgate, siltwing, thistledray], i)(each, { width: 280, height: 420 });
      if (i % 5 === 2)
        return page('label', SIZES.a5, [
          label(art, { x: 66, y: 40, turn: i % 2 === 0 ? 180 : 0 }, 'frame'),
          other(appCode(each, { width: 200, height: 60 }), { x: 80, y: 500 }),
        ]);
      const size = i % 5 === 4 ? SIZES.legal : SIZES.letter;
      const low = i % 2 === 0;
      const turn: Turn = i % 3 === 0 ? 90 : 270;
      const note = slip(each, UNSEEN, { width: 360, height: 330 }, { title: 'What is inside' });
      return page('label', size, [
        label(art, { x: 70 + (i % 4) * 6, y: low ? size.height - 320 : 36, turn }, 'frame'),
        slipPart(note, { x: 60, y: low ? 40 : 350 }),
        other(receipt(each, { width: 150, height: 110 }, each.s10), { x: 440, y: low ? 60 : 380 }),
      ]);
    });
    return bySize(pages).map((group, k) => ({
      name: `u07-office-all-${k + 1}`,
      producer: 'libreoffice',
      pages: group,
      fonts: { sans: k === 0 ? 'Liberation Sans' : 'DejaVu Sans' },
    }));
  },
};

export const UNSEEN_A = [engineNote, cutOut, lowerHalf, advertFirst, officeAll] as const;
