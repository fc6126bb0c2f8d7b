import { contentFor } from './content.js';
import { A4, label, layout, LETTER, other, slip, type Layout } from './layout.js';
import { norrvane } from './labels/norrvane.js';
import { quillhaul } from './labels/quillhaul.js';
import { tidewick } from './labels/tidewick.js';
import { advert, instructions, packingSlip, receipt } from './other-pages.js';

/** Every layout, each a way in which a channel hands its labels over. */
export const LAYOUTS: readonly Layout[] = [
  layout({
    name: 'letter-upper-sideways',
    about: 'Letter page, framed label sideways on the upper half, receipt below.',
    traits: [],
    pages: () => {
      const content = contentFor('letter-upper-sideways', 0, 'line');
      return [{ ...LETTER, regions: [label(tidewick(content), 90, 54, 90), other(receipt(540, 300, content), 36, 420)] }];
    },
  }),
  layout({
    name: 'letter-upper-sideways-frameless',
    about: 'Letter page, label without frame sideways on the upper half (turned the other way), instructions below.',
    traits: ['frameless'],
    pages: () => [
      {
        ...LETTER,
        regions: [label(quillhaul(contentFor('letter-frameless', 3, 'line')), 90, 48, 270), other(instructions(540, 300), 36, 430)],
      },
    ],
  }),
  layout({
    name: 'letter-ruled-cells',
    about: 'Letter page, label of ruled cells that each enclose one code, sideways on the upper half.',
    traits: ['ruled-cells'],
    origin: [36, -18],
    pages: () => [
      {
        ...LETTER,
        regions: [label(norrvane(contentFor('letter-ruled-cells', 4, 'line')), 90, 40, 90), other(instructions(540, 300), 36, 430)],
      },
    ],
  }),
  layout({
    name: 'a4-two-labels',
    about: 'A4 page with two framed labels sideways, one on each half.',
    traits: ['two-labels'],
    pages: () => [
      {
        ...A4,
        regions: [
          label(tidewick(contentFor('a4-two-1', 5, 'watermark')), 82, 66, 90),
          label(tidewick(contentFor('a4-two-2', 5, 'watermark'), { frame: 'lines' }), 82, 488, 90),
        ],
      },
    ],
  }),
  layout({
    name: 'page-4x6',
    about: 'A 4×6 page that is the label.',
    traits: ['label-size-page'],
    pages: () => [{ width: 288, height: 432, regions: [label(quillhaul(contentFor('page-4x6', 1, 'line')), 0, 0)] }],
  }),
  layout({
    name: 'label-then-slip',
    about: 'Letter page with a label without frame in the upper left corner, then a letter page with its packing slip.',
    traits: ['frameless', 'slip-next-page'],
    pages: () => {
      const content = contentFor('label-then-slip', 2, 'watermark');
      return [
        { ...LETTER, regions: [label(quillhaul(content), 24, 24)] },
        { ...LETTER, regions: [slip(packingSlip(540, 500, content), 36, 36)] },
      ];
    },
  }),
  layout({
    name: 'letter-cut-line',
    about: 'Landscape letter page, label inside a dashed cut line on the left half, instructions on the right.',
    traits: ['cut-line'],
    bleed: 9,
    pages: () => [
      {
        width: 792,
        height: 612,
        regions: [
          label(quillhaul(contentFor('letter-cut-line', 6, 'watermark'), { cutLine: true }), 54, 90),
          other(instructions(372, 400), 396, 80),
        ],
      },
    ],
  }),
  layout({
    name: 'letter-advert',
    about: 'Letter page, framed label sideways on the upper half, framed advert with a QR code of its own below.',
    traits: ['other-code'],
    pages: () => [
      {
        ...LETTER,
        regions: [label(tidewick(contentFor('letter-advert', 7, 'line')), 90, 48, 270), other(advert(552, 330), 30, 430)],
      },
    ],
  }),
];
