import { mellowick, oskarvik } from '../designs/third-labels-b.js';
import { head, howTo, invoice, packingSlip, plainHints } from '../designs/third-papers-a.js';
import { counterfoil, customsForm, smallPrint, voucher } from '../designs/third-papers-b.js';
import { ALL_LATIN, posted, WESTERN } from '../designs/third-words.js';
import { Art } from '../kit/art.js';
import type { Layout, Page, Part } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Rect, Turn } from '../kit/shapes.js';
import { place } from '../kit/shapes.js';
import { cycle, label, other, page, range, slipPart } from './parts.js';
import { a4, a5, FULL, halves, INSIDE, legal, letter, METRIC, TALL } from './third-a.js';

const twoUp: Layout = {
  name: 'v10-two-per-sheet',
  about: 'FOP, letter and A4: sheets of two labels to peel off, each lying in its half with nothing between; some halves empty',
  documents: () => {
    const pages = range(7).map((i): Page => {
      const size = i % 2 === 0 ? letter : a4;
      const filled = cycle([[0, 1], [0], [0, 1], [0, 1], [1]] as const, i);
      const parts = filled.map((half) => {
        const [design, edge] = cycle(TALL, i * 2 + half);
        const y = (half * size.height) / 2 + (size.height / 2 - FULL.width) / 2;
        return label(
          design(posted(1000 + i * 2 + half, (i + half) % ALL_LATIN), FULL),
          { x: (size.width - FULL.height) / 2, y, turn: i % 3 === 1 ? 270 : 90 },
          edge,
        );
      });
      return page('label', size, parts);
    });
    return halves(
      'v10-two-per-sheet',
      pages,
      { producer: 'fop', fonts: { sans: 'Liberation Sans' } },
      { producer: 'fop', fonts: { sans: 'DejaVu Sans Condensed' } },
    );
  },
};

const thermal: Layout = {
  name: 'v11-thermal-pictures',
  about: 'PDF::API2, no words: label paper as one picture, 4x6 in at 203 and 254 dpi in 1 bit or grey, 4x8 in and 6x4 in',
  documents: () => {
    const paper = (i: number): Page => {
      const each = posted(1100 + i, i % ALL_LATIN);
      if (i % 4 === 3) return page('label', SIZES['6x4'], [label(oskarvik(each, { width: 414, height: 272 }), { x: 9, y: 8 }, 'page')]);
      const [design, edge] = cycle(TALL, i + 2);
      if (i % 4 === 2)
        return page('label', SIZES['4x8'], [label(design(each, { width: 270, height: 556 }), { x: 9, y: 10, turn: 0 }, edge)]);
      return page('label', SIZES['4x6'], [label(design(each, INSIDE), { x: 9, y: 11, turn: i % 4 === 1 ? 180 : 0 }, 'page')]);
    };
    return [
      { name: 'v11-thermal-pictures-1', producer: 'pixels', dpi: 203, pages: range(4).map(paper) },
      { name: 'v11-thermal-pictures-2', producer: 'pixels', dpi: 254, grey: true, pages: range(4).map((k) => paper(k + 4)) },
    ];
  },
};

const thenSlip: Layout = {
  name: 'v12-label-then-slip',
  about: 'PDF::API2, pages of 4x6 in and A6: a label and on the next page its packing slip, order by order',
  documents: () => {
    const pages = range(6).flatMap((i): Page[] => {
      const each = posted(1200 + i, i % ALL_LATIN);
      const [design, edge] = cycle(TALL, i + 3);
      const size = i % 3 === 2 ? SIZES.a6 : SIZES['4x6'];
      const slip = packingSlip(each, { width: size.width - 36, height: 380 }, i % 2 === 0);
      return [
        page('label', size, [label(design(each, INSIDE), { x: (size.width - 270) / 2, y: 10 }, size === SIZES.a6 ? edge : 'page')]),
        page('packing-slip', size, [slipPart(slip, { x: 18, y: 20 })]),
      ];
    });
    return halves('v12-label-then-slip', pages, { producer: 'pdfapi2' }, { producer: 'pdfapi2', fonts: { sans: 'Sans' } });
  },
};

/** The outline of a label that peels off its sheet, drawn where it is punched. */
function punched(art: Art, x: number, y: number, gap: number, turn: Turn = 0): Part {
  const { width, height } = art.bounds(turn);
  const line: Rect = {
    kind: 'rect',
    x: x - gap,
    y: y - gap,
    width: width + 2 * gap,
    height: height + 2 * gap,
    line: 0.6,
    stroke: '#8a8a8a',
    radius: 12,
  };
  return { role: 'label', shapes: [...place(art.shapes, art, { x, y, turn }), line], edge: 'cut', turn, codes: art.codes };
}

const peelOff: Layout = {
  name: 'v13-peel-off',
  about:
    'cairo, A4 and letter: letter with a label to peel off, its punched outline printed grey with round corners, framed or frameless label inside, invoice or slip on the rest',
  documents: () => {
    const pages = range(7).map((i): Page => {
      const each = posted(1300 + i, i % ALL_LATIN);
      const size = i % 2 === 0 ? a4 : letter;
      const [design] = cycle(TALL, i + 1);
      const lying = i % 3 === 2;
      const art = design(each, { width: 262, height: 394 });
      const paper =
        lying || i % 2 === 1
          ? packingSlip(each, { width: size.width - 100, height: 300 })
          : invoice(each, { width: size.width - 100, height: 300 });
      const at = lying ? { x: 100, y: size.height - 310 } : { x: size.width - 300, y: size.height - 424 };
      return page('label', size, [
        lying || i % 2 === 1 ? slipPart(paper, { x: 50, y: 30 }) : other(paper, { x: 50, y: 30 }),
        punched(art, at.x, at.y, 12, lying ? 90 : 0),
        ...(lying ? [] : [other(plainHints(each, { width: 200, height: 200 }), { x: 50, y: size.height - 330 })]),
      ]);
    });
    return halves(
      'v13-peel-off',
      pages,
      { producer: 'cairo', fonts: { sans: 'Liberation Sans', serif: 'Liberation Serif' } },
      { producer: 'cairo', fonts: { sans: 'Noto Sans', serif: 'P052' } },
    );
  },
};

const declared: Layout = {
  name: 'v14-with-customs',
  about:
    'ReportLab and TCPDF, A4 and letter: label designed lying on top, a customs declaration under it, some with the same number in both; or label upright beside the declaration',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = posted(1400 + i, i % WESTERN);
      const size = i % 2 === 0 ? a4 : letter;
      if (i % 4 === 3) {
        return page('label', { width: size.height, height: size.width }, [
          label(mellowick(each, FULL), { x: 30, y: 70 }, 'frame'),
          other(customsForm(each, { width: 380, height: 300 }, false), { x: 370, y: 80 }),
        ]);
      }
      return page('label', size, [
        label(oskarvik(each, { width: 426, height: 280 }), { x: (size.width - 426) / 2, y: 48, turn: i % 4 === 2 ? 180 : 0 }, 'frame'),
        other(customsForm(each, { width: 426, height: 250 }, i % 2 === 0), { x: (size.width - 426) / 2, y: 400 + i * 4 }),
      ]);
    });
    return halves('v14-with-customs', pages, { producer: 'reportlab' }, { producer: 'tcpdf', fonts: { sans: 'dejavusans' } });
  },
};

const farWords: Layout = {
  name: 'v15-far-words',
  about:
    'cairo, A4, in Hebrew, Thai, Hungarian, Turkish and Romanian: label upright in the right half or lying on top, letterhead, steps and a voucher around it',
  documents: () => {
    const pages = range(7).map((i): Page => {
      const each = posted(1500 + i, 7 + (i % 5));
      const [design, edge] = cycle(TALL, i);
      const lying = i % 3 === 1;
      return page('label', a4, [
        other(head(each, 500), { x: 45, y: 24 }),
        label(design(each, METRIC), lying ? { x: 84, y: 84, turn: 90 } : { x: a4.width - 312, y: 92 + i * 3 }, edge),
        other(howTo(each, { width: lying ? 420 : 200, height: 300 }, false), lying ? { x: 84, y: 410 } : { x: 45, y: 110 }),
        other(voucher(each, { width: 500, height: 150 }, i % 2 === 0 ? 'qr' : 'code128'), { x: 45, y: 640 }),
      ]);
    });
    const fonts = { sans: 'DejaVu Sans', serif: 'DejaVu Serif' };
    return halves('v15-far-words', pages, { producer: 'cairo', fonts });
  },
};

const oddOnes: Layout = {
  name: 'v16-odd-ones',
  about:
    'Prawn, half letter, A5, legal and letter turned by /Rotate: label on its head, larger than 4x6 as an A5 label, with its counterfoil under it or small print beside, labels of 5.3x3.5 in',
  documents: () => {
    const half = { width: 396, height: 612 };
    const squat = { width: 380, height: 254 };
    const pages: Page[] = range(2).map((k) =>
      page('label', half, [
        label(cycle(TALL, k)[0](posted(1600 + k, k), FULL), { x: 54, y: 20, turn: k === 0 ? 180 : 0 }, cycle(TALL, k)[1]),
        other(counterfoil(posted(1600 + k, k), { width: 280, height: 180 }), { x: 58, y: 462 - k * 2 }),
      ]),
    );
    pages.push(page('label', a5, [label(oskarvik(posted(1610, 1), { width: 540, height: 360 }), { x: 30, y: 27, turn: 90 }, 'frame')]));
    pages.push(
      page('label', { width: a5.height, height: a5.width }, [
        label(oskarvik(posted(1611, 3), { width: 552, height: 376 }), { x: 22, y: 20 }, 'frame'),
      ]),
    );
    for (const k of range(2)) {
      const each = posted(1620 + k, 2 + k);
      pages.push(
        page(
          'label',
          k === 0 ? legal : letter,
          [
            label(cycle(TALL, 4 + k)[0](each, FULL), { x: 40, y: 60 }, 'frame'),
            other(smallPrint(each, { width: 230, height: 600 }, 1, 8), { x: 352, y: 60 }),
          ],
          { rotate: k === 0 ? 180 : 270 },
        ),
      );
    }
    for (const k of range(2)) {
      const each = posted(1630 + k, 4 + k);
      pages.push(
        page('label', letter, [
          label(oskarvik(each, squat), { x: 60 + k * 120, y: 80 + k * 200 }, 'frame'),
          other(plainHints(each, { width: 400, height: 150 }), { x: 80, y: k === 0 ? 460 : 60 }),
        ]),
      );
    }
    return halves('v16-odd-ones', pages, { producer: 'prawn' });
  },
};

export const THIRD_B = [twoUp, thermal, thenSlip, peelOff, declared, farWords, oddOnes] as const;
