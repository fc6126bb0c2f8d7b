import { appCode, coupon, foldLine, instructions, logo, receipt, slip } from '../designs/beside.js';
import { parcel, TUNING } from '../designs/content.js';
import { TUNING_LABELS } from '../designs/tuning-labels.js';
import type { Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { escape } from '../kit/svg.js';
import { cutLabel, cycle, flow, label, other, page, range, slipPart } from './parts.js';

const { larkmoss, dunwhit, vellapost, orrinway } = TUNING_LABELS;
const FOUR_SIX = { width: 288, height: 432 };

/** A shop's own page printed from a browser: framed label left, slip as a table right or below. */
const browserSlip: Layout = {
  name: 't01-browser-slip',
  about: 'Chromium, letter and legal: label upright at the left with the slip beside and below, or lying on top with the slip below',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(100 + i, TUNING);
      const lying = i % 3 === 2;
      const size = i % 5 === 4 ? SIZES.legal : SIZES.letter;
      const art = cycle([larkmoss, dunwhit, orrinway], i)(each, FOUR_SIX);
      const rows = each.goods.map(([count, what, price]) => `<tr><td>${count}</td><td>${escape(what)}</td><td>${price}</td></tr>`).join('');
      const table = `<h1>Packing slip</h1><p>Order <b>${each.order}</b></p><p>${each.to.map(escape).join('<br>')}</p><table><tr><th>Qty</th><th>Item</th><th>Price</th></tr>${rows}</table><h2>Thank you!</h2><p>${escape(each.mark)}. Returns within 30 days, in the box it came in.</p>`;
      const at = lying ? { x: 40 + i * 6, y: 34, turn: i % 2 === 0 ? (90 as const) : (270 as const) } : { x: 28 + (i % 4) * 3, y: 36 };
      const beside = lying ? flow(42, 360, 500, table, 'slip') : flow(350, 40, 222, table, 'slip');
      const footer = other(logo(TUNING, { width: 200, height: 24 }, i), { x: 60, y: size.height - 50 });
      return page('label', size, [label(art, at, 'frame'), beside, footer]);
    });
    const fonts = [{ sans: 'Liberation Sans' }, { sans: 'Noto Sans' }, { sans: 'DejaVu Sans' }];
    return fonts.map((font, k) => ({
      name: `t01-browser-slip-${k + 1}`,
      producer: 'chromium',
      fonts: font,
      pages: pages.slice(k * 5, k * 5 + 5),
    }));
  },
};

/** A sheet to fold: label lying in the upper half inside a line to cut along, everything else below. */
const foldedSheet: Layout = {
  name: 't02-folded-a4',
  about: 'cairo, A4: frameless label lying in the upper half, dashed cut line around it; fold line, instructions and an app code below',
  documents: () => {
    const pages = range(15).map((i): Page => {
      const each = parcel(200 + i, TUNING);
      const size = SIZES.a4;
      const art = cycle([vellapost, larkmoss], i)(each, { width: 283.46, height: 425.2 });
      const turn = i % 3 === 1 ? 270 : 90;
      const x = (size.width - 425.2) / 2 + (i % 4) * 5 - 8;
      return page('label', size, [
        cutLabel(art, { x, y: 42 + (i % 3) * 4, turn }, 9),
        other(foldLine(size.width, 'fold here'), { x: 0, y: size.height / 2 - 6 }),
        other(instructions({ width: 280, height: 160 }, each), { x: 50, y: size.height / 2 + 40 }),
        other(appCode(each, { width: 190, height: 64 }), { x: 352, y: size.height / 2 + 50 }),
        other(logo(TUNING, { width: 260, height: 36 }, i), { x: 50, y: size.height - 90 }),
      ]);
    });
    return [
      { name: 't02-folded-a4-1', producer: 'cairo', pages: pages.slice(0, 8) },
      { name: 't02-folded-a4-2', producer: 'cairo', fonts: { sans: 'DejaVu Sans' }, pages: pages.slice(8) },
    ];
  },
};

/** Half a letter page, no frame, the sender's copy below, the slip on the next page. */
const senderCopy: Layout = {
  name: 't03-sender-copy',
  about:
    'Ghostscript, letter: frameless label lying in the upper half, sender copy with the same tracking code below, slip on the next page; half by /Rotate',
  documents: () => {
    const pages = range(15).flatMap((i): Page[] => {
      const each = parcel(300 + i, TUNING);
      const art = vellapost(each, { width: 288, height: 420 });
      const turn = i % 2 === 0 ? 90 : 270;
      const rotate = i % 4 === 1 ? 180 : i % 4 === 2 ? 90 : 0;
      const copy = receipt(each, { width: 420, height: 120 }, each.s10);
      const first = page(
        'label',
        SIZES.letter,
        [
          label(art, { x: 90 + (i % 5) * 4, y: 40, turn }, 'ink'),
          other(foldLine(612, 'tear here'), { x: 0, y: 390 }),
          other(copy, { x: 80, y: 430 }),
          ...(i % 3 === 0 ? [other(coupon(each, { width: 220, height: 130 }), { x: 340, y: 620 })] : []),
        ],
        { rotate },
      );
      const sheet = slip(each, TUNING, { width: 480, height: 500 }, { barcode: i % 2 === 0 });
      return [first, page('packing-slip', SIZES.letter, [slipPart(sheet, { x: 66, y: 60 })])];
    });
    return [
      { name: 't03-sender-copy-1', producer: 'ghostscript', pages: pages.slice(0, 16) },
      { name: 't03-sender-copy-2', producer: 'ghostscript', fonts: { sans: 'AvantGarde' }, pages: pages.slice(16) },
    ];
  },
};

export const TUNING_A = [browserSlip, foldedSheet, senderCopy] as const;
