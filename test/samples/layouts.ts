import { contentFor } from './content.js';
import { A4, label, layout, LETTER, other, slip, type Layout } from './layout.js';
import { bramblerun } from './labels/bramblerun.js';
import { fernwhistle } from './labels/fernwhistle.js';
import { kestomar } from './labels/kestomar.js';
import { overmoor } from './labels/overmoor.js';
import { pellodan } from './labels/pellodan.js';
import { zunderpost } from './labels/zunderpost.js';
import { norrvane } from './labels/norrvane.js';
import { quillhaul } from './labels/quillhaul.js';
import { tidewick } from './labels/tidewick.js';
import { advert, instructions, invoice, packingSlip, receipt } from './other-pages.js';

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
  layout({
    name: 'letter-lying-design',
    about: 'Letter page, label designed lying (6×4) on the upper half with its writing upright, instructions below.',
    traits: ['landscape'],
    pages: () => [
      { ...LETTER, regions: [label(zunderpost(contentFor('lying', 8, 'line')), 90, 54), other(instructions(540, 300), 36, 430)] },
    ],
  }),
  layout({
    name: 'page-4x6-full-bleed',
    about: 'A 4×6 page that is the label, black up to its edges.',
    traits: ['label-size-page', 'full-bleed', 'frameless'],
    pages: () => [{ width: 288, height: 432, regions: [label(overmoor(contentFor('bleed', 9, 'watermark')), 0, 0)] }],
  }),
  layout({
    name: 'letter-code-outside',
    about: 'Letter page, sideways label whose frame encloses a small code while the main code stands below the frame.',
    traits: ['main-code-outside-frame'],
    pages: () => {
      const content = contentFor('outside', 10, 'line');
      return [{ ...LETTER, regions: [label(fernwhistle(content), 90, 54, 90), other(receipt(540, 300, content), 36, 420)] }];
    },
  }),
  layout({
    name: 'letter-ninety-percent',
    about: 'Letter page, framed label drawn at 90 %, sideways on the upper half.',
    traits: ['ninety-percent'],
    pages: () => {
      const content = contentFor('ninety', 11, 'line');
      return [{ ...LETTER, regions: [label(bramblerun(content), 110, 60, 90, 0.9), other(receipt(540, 300, content), 36, 420)] }];
    },
  }),
  layout({
    name: 'letter-at-corner',
    about: "Letter page, framed label sideways with its frame on the page's upper and left edge, instructions below.",
    traits: ['touches-edge'],
    pages: () => [
      { ...LETTER, regions: [label(bramblerun(contentFor('corner', 0, 'side')), 0, 0, 270), other(instructions(540, 300), 36, 430)] },
    ],
  }),
  layout({
    name: 'a4-at-corner-frameless',
    about: "A4 page, label without frame upright in the upper left corner, its black bars on the page's edges.",
    traits: ['touches-edge', 'frameless'],
    pages: () => [{ ...A4, regions: [label(overmoor(contentFor('a4-corner', 6, 'line')), 0, 0), other(instructions(500, 300), 30, 500)] }],
  }),
  layout({
    name: 'a4-quarter-ruled-cells',
    about: 'A4 page, A6 label of ruled cells in the upper left quarter, its main code a ladder in a cell of its own.',
    traits: ['ruled-cells'],
    bleed: 14,
    origin: [-20, 40],
    pages: () => [
      { ...A4, regions: [label(pellodan(contentFor('a4-quarter', 3, 'line')), 0.4, 0.7), other(instructions(500, 300), 30, 500)] },
    ],
  }),
  layout({
    name: 'letter-label-and-slip',
    about: 'Letter page, framed label sideways on the upper half, its packing slip on the lower half.',
    traits: ['slip-same-page'],
    pages: () => {
      const content = contentFor('label-and-slip', 7, 'watermark');
      return [{ ...LETTER, regions: [label(bramblerun(content), 90, 50, 90), slip(packingSlip(540, 360, content), 36, 414)] }];
    },
  }),
  layout({
    name: 'letter-return-label',
    about: 'Letter page, return label upright inside a dashed cut line, instructions below.',
    traits: ['return-label', 'cut-line'],
    pages: () => {
      const art = quillhaul(contentFor('return', 8, 'watermark'), { cutLine: true });
      return [{ ...LETTER, regions: [{ ...label(art, 162, 40), role: 'return-label' }, other(instructions(540, 240), 36, 510)] }];
    },
  }),
  layout({
    name: 'letter-right-half-frameless',
    about: 'Landscape letter page, label without frame upright on the right half, receipt on the left.',
    traits: ['frameless'],
    pages: () => {
      const content = contentFor('right-half', 1, 'side');
      return [{ width: 792, height: 612, regions: [other(receipt(372, 400, content), 12, 90), label(kestomar(content), 450, 90)] }];
    },
  }),
  layout({
    name: 'page-a6',
    about: 'An A6 page that is the label.',
    traits: ['label-size-page', 'ruled-cells'],
    pages: () => [{ width: 297.64, height: 419.53, regions: [label(pellodan(contentFor('page-a6', 2, 'line')), 0, 0)] }],
  }),
  layout({
    name: 'picture-4x6',
    about: 'The label as a PNG (1 bit) or JPEG (grey), its resolution data right, missing or wrong.',
    traits: ['label-size-page', 'picture-file'],
    kinds: ['bilevel', 'grey'],
    pages: () => [{ width: 288, height: 432, regions: [label(tidewick(contentFor('picture', 4, 'line')), 0, 0)] }],
  }),
  layout({
    name: 'letter-whole-picture',
    about: 'Letter page that is one picture: framed label sideways on the upper half, receipt below.',
    traits: ['whole-page-picture'],
    kinds: ['bilevel', 'grey'],
    pages: () => {
      const content = contentFor('whole', 5, 'line');
      return [{ ...LETTER, regions: [label(tidewick(content), 90, 54, 270), other(receipt(540, 300, content), 36, 420)] }];
    },
  }),
];

const noLabel = (name: string, about: string, pages: Layout['pages']): Layout =>
  layout({ name, about, traits: ['no-label', 'whole-page-picture'], kinds: ['vector', 'grey'], pages });

/** Pages without any label, that must not be taken for one. */
export const NO_LABEL_LAYOUTS: readonly Layout[] = [
  noLabel('instructions', 'A page of instructions.', () => [{ ...LETTER, regions: [other(instructions(540, 600), 36, 60)] }]),
  noLabel('invoice', 'An invoice in a ruled frame.', () => [
    { ...A4, regions: [other(invoice(A4.width, A4.height, contentFor('invoice')), 0, 0)] },
  ]),
  noLabel('advert', 'An advert with a QR code in a frame.', () => [{ ...LETTER, regions: [other(advert(552, 330), 30, 60)] }]),
  noLabel('blank', 'A blank page.', () => [{ ...LETTER, regions: [] }]),
];
