import { borrelunde, nordhavel, quillmarsh } from '../designs/second-labels.js';
import { coupon, declaration, goodsList, invoice, receipt, scissorsLine, steps } from '../designs/second-papers.js';
import { LATIN, sent, WITHOUT_KANJI } from '../designs/second-words.js';
import { Art } from '../kit/art.js';
import type { Document, Kind, Layout, Page, Part, Producer } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { rasterise } from '../kit/raster.js';
import type { Shape, Turn } from '../kit/shapes.js';
import { place } from '../kit/shapes.js';
import { cycle, label, other, page, pictured, range, slipPart } from './parts.js';
import { a4, a5, a6, DESIGNS, FOUR_SIX, inTwo, legal, letter, LYING, SMALLER } from './second-a.js';
import { WORKSPACE } from './workspace.js';
import { join } from 'node:path';

const ground = (width: number, height: number, fill: string): Part =>
  other(new Art(width, height).rect(0, 0, width, height, { fill }), { x: 0, y: 0 });

/** A label's picture on a page with a coloured ground. */
const onColour: Layout = {
  name: 's09-on-colour',
  about:
    'WeasyPrint, A4, letter and A5: label as one picture (1 bit, grey, JPEG at 150 to 300 dpi) on a tinted page, steps and coupon around it',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(900 + i, i);
      const size = cycle([a4, letter, a5, a4], i);
      const [design] = cycle(DESIGNS, i);
      const turn = size === a5 ? 0 : cycle<Turn>([0, 90, 0, 270], i);
      const ink = cycle(['bilevel', 'grey', 'jpeg'] as const, i);
      const at = { x: size === a5 ? 60 : 60 + i * 4, y: size === a5 ? 80 : 70, turn, stored: i % 2 === 0 };
      const art = new Art(FOUR_SIX.width, FOUR_SIX.height).put(design(each, { width: 270, height: 405 }), 9, 13);
      return page('label', size, [
        ground(size.width, size.height, cycle(['#eaf1f7', '#f6f0e0', '#eeeeee'], i)),
        pictured(art, at, 'picture', WORKSPACE, { dpi: cycle([203, 150, 203, 150, 203, 300, 150, 203], i), ink }),
        ...(size === a5 ? [] : [other(coupon(each, { width: 420, height: 170 }, '#ffffff'), { x: 60, y: 580 })]),
      ]);
    });
    return inTwo('s09-on-colour', pages, { producer: 'weasyprint', fonts: { sans: 'Liberation Sans' } });
  },
};

let tiled = 0;
/** A label as many small pictures side by side, as some drivers cut a page. */
function inTiles(art: Art, x: number, y: number, turn: Turn, across: number, down: number): Part {
  const { width, height } = art.bounds(turn);
  const whole = place(art.shapes, art, { x: 0, y: 0, turn });
  const size = { width: width / across, height: height / down };
  const shapes = range(across * down).map((k): Shape => {
    const [left, top] = [(k % across) * size.width, Math.floor(k / across) * size.height];
    const moved = place(whole, { width, height }, { x: -left, y: -top });
    const file = rasterise(size, moved, join(WORKSPACE, `tile${tiled++}`), { dpi: 216, ink: 'bilevel' });
    return { kind: 'picture', x: x + left, y: y + top, ...size, file, turn: 0 };
  });
  return { role: 'label', shapes, edge: 'picture', turn, codes: art.codes };
}

const tiles: Layout = {
  name: 's10-tiles',
  about: 'ReportLab, A4 and letter: label built of 8 to 24 small 1-bit pictures, upright or lying, slip below or at its side',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1000 + i, i % WITHOUT_KANJI);
      const size = i % 2 === 0 ? letter : a4;
      const [design] = cycle(DESIGNS, i + 1);
      const turn = cycle<Turn>([0, 90, 0, 270], i);
      const [across, down] = cycle(
        [
          [1, 12],
          [4, 6],
          [2, 4],
        ] as const,
        i,
      );
      return page('label', size, [
        inTiles(design(each, FOUR_SIX), 54, 54, turn, across, down),
        slipPart(goodsList(each, { width: 420, height: 200 }), { x: 60, y: 510 }),
      ]);
    });
    return inTwo('s10-tiles', pages, { producer: 'reportlab' });
  },
};

/** Photographs and poor scans. */
const shaded: Layout = {
  name: 's11-shaded-scans',
  about:
    'whole-page JPEG scans at 150 to 200 dpi, darker towards one corner, noisy, up to 3 degrees askew: A4, letter and A5, label upright, lying or on its head',
  documents: () => {
    const pages = range(7).map((i): Page => {
      const each = sent(1100 + i, i);
      const size = cycle([letter, a4, a5], i);
      const [design, edge] = cycle(DESIGNS, i * 2 + 1);
      const turn = size === a5 ? 0 : cycle<Turn>([0, 270, 0, 180], i);
      const small = size === a5;
      return page(
        'label',
        size,
        [
          label(design(each, FOUR_SIX), { x: small ? 60 : 80, y: small ? 80 : 60, turn }, edge),
          ...(small ? [] : [other(steps(each, { width: 300, height: 150 }), { x: 90, y: 560 })]),
        ],
        { skew: cycle([-2.6, 1.2, 0.4, -0.9, 2.9, -1.7, 2.1], i) },
      );
    });
    return inTwo('s11-shaded-scans', pages, { producer: 'scan-shade', dpi: 150 }, { producer: 'scan-shade', dpi: 200 });
  },
};

/** Label paper with a tab below. */
const tabs: Layout = {
  name: 's12-doc-tab',
  about: 'Ghostscript, 4x8 in with a two inch tab below the label, 4x6.75 in, 100x150 mm, 4x6 and 6x4 in',
  documents: () => {
    const pages = range(10).map((i): Page => {
      const each = sent(1200 + i, i % LATIN);
      const [design, edge] = cycle(DESIGNS, i);
      if (i % 5 === 2) return page('label', SIZES['6x4'], [label(nordhavel(each, LYING), { x: 4, y: 3 }, 'page')]);
      if (i % 5 === 4) {
        const own = i === 4 ? SIZES['4x6'] : SIZES['100x150'];
        return page('label', own, [label(design(each, { width: 272, height: 408 }), { x: 6, y: 8 }, i === 4 ? 'page' : edge)]);
      }
      const long = i % 5 !== 1;
      const size = long ? SIZES['4x8'] : SIZES['4x6.75'];
      return page('label', size, [
        label(design(each, { width: 280, height: 424 }), { x: 4, y: 4 }, edge),
        ...(long
          ? [other(receipt(each, { width: 270, height: 120 }, each.parcel.order), { x: 10, y: 446 })]
          : [other(new Art(270, 20).text(0, 14, `${each.parcel.order}  ${each.parcel.mark}`, { size: 9, fit: 270 }), { x: 10, y: 450 })]),
      ]);
    });
    return inTwo('s12-doc-tab', pages, { producer: 'ghostscript' }, { producer: 'ghostscript', fonts: { sans: 'Palatino' } });
  },
};

/** A word across the whole page, in scripts other than Latin. */
const watermark: Layout = {
  name: 's13-watermark',
  about:
    'cairo, A4 and letter: a pale word leaning across page and label, Czech, Greek, Ukrainian and Japanese, coloured bar at the head, receipt below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1300 + i, 4 + (i % 4));
      const size = i % 2 === 0 ? a4 : letter;
      const [design, edge] = cycle(DESIGNS, i);
      const mark = new Art(size.width, size.height).text(size.width / 2, size.height * 0.45, 'SPECIMEN', {
        size: 110,
        bold: true,
        anchor: 'middle',
        fill: '#dcdcdc',
        lean: -40,
      });
      const bar = new Art(size.width, 34)
        .rect(0, 0, size.width, 34, { fill: '#2f5d50' })
        .text(30, 23, each.parcel.from[0] ?? '', { size: 15, fill: '#ffffff' });
      return page('label', size, [
        other(mark, { x: 0, y: 0 }),
        other(bar, { x: 0, y: 0 }),
        label(design(each, i % 2 === 0 ? SMALLER : FOUR_SIX), { x: 150 + i * 4, y: 70, turn: i % 4 === 2 ? 180 : 0 }, edge),
        other(receipt(each, { width: 300, height: 150 }), { x: 60, y: 600 }),
      ]);
    });
    return inTwo('s13-watermark', pages, { producer: 'cairo', fonts: { sans: 'DejaVu Sans', serif: 'DejaVu Serif' } });
  },
};

/** Straight pages as pixels, the receipt to tear off below. */
const tearOff: Layout = {
  name: 's14-tear-off',
  about:
    'img2pdf and tiff2pdf, 1 bit at 200 dpi, no words: legal, A5 and odd pages, label above a perforated line, receipt with the same code below',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1400 + i, i);
      const odd = { width: 340, height: 640 };
      const size = cycle([odd, a5, legal, odd], i);
      const [design, edge] = cycle(DESIGNS, i + 1);
      const left = size === legal ? 150 : (size.width - 288) / 2;
      return page('label', size, [
        label(design(each, FOUR_SIX), { x: left, y: 24, turn: i % 4 === 3 ? 180 : 0 }, edge),
        other(scissorsLine(size.width - 24, i % 2 === 0 ? each.words.cut : ''), { x: 12, y: 470 }),
        other(receipt(each, { width: 280, height: 96 }, `CF${each.parcel.tracking}`), { x: left, y: 490 }),
      ]);
    });
    return inTwo('s14-tear-off', pages, { producer: 'img2pdf', dpi: 200 }, { producer: 'tiff2pdf', dpi: 200 });
  },
};

/** There and back on one page. */
const thereAndBack: Layout = {
  name: 's15-there-and-back',
  about: 'Chromium, legal and A4: outgoing label lying on top, return label lying below it, its title between them',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(1500 + i, i);
      const size = i % 2 === 0 ? legal : a4;
      const turn: Turn = i % 2 === 0 ? 90 : 270;
      const low = size.height / 2 + 40;
      const title = new Art(300, 20).text(0, 15, each.words.back, { size: 14, bold: true, fit: 300 });
      return page('label', size, [
        label(quillmarsh(each, FOUR_SIX), { x: 70, y: 30, turn }, 'frame'),
        other(title, { x: 70, y: low - 28 }),
        label(borrelunde(sent(1550 + i, i), FOUR_SIX), { x: 80, y: low, turn: i % 3 === 0 ? turn : 90 }, 'frame', 'return-label'),
      ]);
    });
    return inTwo(
      's15-there-and-back',
      pages,
      { producer: 'chromium', fonts: { sans: 'Liberation Sans' } },
      { producer: 'chromium', fonts: { sans: 'DejaVu Sans Condensed' } },
    );
  },
};

/** Thirty pages without a label. */
const none: Layout = {
  name: 's16-none',
  about: 'thirty pages that are no labels: invoices, coupons with codes, declarations, picking lists, slips, steps, receipts, blanks',
  documents: () => {
    const one = (kind: Kind, size: { width: number; height: number }, art: Art, x = 50, y = 50): Page =>
      page(kind, size, [kind === 'packing-slip' ? slipPart(art, { x, y }) : other(art, { x, y })]);
    const box = { width: 480, height: 500 };
    const each = (k: number) => sent(1600 + k, k % LATIN);
    const bills = range(5).map((k) =>
      one('invoice', k % 2 === 0 ? a4 : letter, invoice(each(k), box, (['qr', 'itf', 'none'] as const)[k % 3])),
    );
    const adverts = range(5).map((k) =>
      k === 4
        ? one('advert', SIZES['4x6'], coupon(each(k), { width: 276, height: 420 }), 6, 6)
        : one('advert', k % 2 === 0 ? letter : a5, coupon(each(k), { width: 288, height: k === 1 ? 432 : 250 }, '#ffe9e0'), 60, 70),
    );
    const forms = range(4).map((k) =>
      k === 3
        ? one('customs', a6, declaration(each(k), { width: 280, height: 400 }), 8, 8)
        : one('customs', a4, declaration(each(k), { width: 440, height: 300 + k * 30 })),
    );
    const picks = range(4).map((k) =>
      one('pick-list', k % 2 === 0 ? letter : a4, goodsList(each(k), box, { picks: true, title: 'Picking list' })),
    );
    const slips = range(5).map((k) =>
      k === 4
        ? one('packing-slip', SIZES['4x6'], goodsList(each(k), { width: 260, height: 400 }), 14, 14)
        : one('packing-slip', k % 2 === 0 ? a4 : letter, goodsList(each(k), box)),
    );
    const help = range(2).map((k) => one('instructions', k === 0 ? a4 : letter, steps(each(k), box)));
    const stubs = range(3).map((k) =>
      one('other', k === 0 ? a6 : a4, receipt(each(k), { width: 270, height: 200 }, `RC${each(k).parcel.tracking}`), 14, 30),
    );
    const blanks = [page('blank', letter, []), page('blank', SIZES['4x6'], [])];
    const named = (name: string, producer: Producer, pages: readonly Page[], more: Partial<Document> = {}): Document => ({
      name: `s16-none-${name}`,
      producer,
      pages,
      ...more,
    });
    return [
      named('bills', 'reportlab', [...bills.slice(0, 3), ...slips.slice(0, 2), ...forms.slice(0, 1)]),
      named('desk', 'weasyprint', [...adverts.slice(0, 3), ...picks.slice(0, 2), ...help.slice(0, 1)]),
      named('post', 'ghostscript', [...forms.slice(1), ...stubs.slice(0, 2), ...slips.slice(4)]),
      named('shop', 'chromium', [...bills.slice(3), ...adverts.slice(3), ...slips.slice(2, 4), ...help.slice(1)]),
      named('stall', 'cairo', [...picks.slice(2), ...stubs.slice(2), ...blanks]),
    ];
  },
};

export const SECOND_B = [onColour, tiles, shaded, tabs, watermark, tearOff, thereAndBack, none] as const;
