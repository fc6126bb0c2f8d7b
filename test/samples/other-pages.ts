import { qr } from './code-art.js';
import type { LabelContent } from './content.js';
import { Drawing } from './drawing.js';
import { CHANNELS, STUDIO } from './names.js';

/** What lies beside a label, or is no label at all; each `width` × `height` pt. */
export function instructions(width: number, height: number): Drawing {
  const d = new Drawing(width, height);
  d.text(24, 34, 'How to use your label', { size: 16, bold: true });
  const lines = [
    '1. Print this page. Do not change its size.',
    '2. Cut the label out along its border.',
    '3. Put it on the largest side of the parcel, flat, without folds over the bars.',
    '4. Cover it with clear tape, but leave the bars free of tape.',
    '5. Hand the parcel in at any counter by the end of the next working day.',
    'Each label is for one parcel. A copy will be charged again.',
  ];
  d.block(24, 58, lines, { size: 9.5, maxWidth: width - 48 }, 1.7);
  return d;
}

export function receipt(width: number, height: number, content: LabelContent): Drawing {
  const d = new Drawing(width, height);
  d.text(24, 34, 'Receipt for your records', { size: 14, bold: true });
  d.line(24, 42, width - 24, 42, 0.75);
  const rows: readonly (readonly [string, string])[] = [
    ['Order', content.order],
    ['Service', content.service],
    ['Weight', content.weight],
    ['Recipient', content.to[0] ?? ''],
    ['Postage', '7.35'],
    ['Insurance up to 100', '0.00'],
    ['Paid', '7.35'],
  ];
  let y = 60;
  for (const [label, value] of rows) {
    d.text(24, y, label, { size: 10 });
    d.text(width - 24, y, value, { size: 10, align: 'right' });
    y += 16;
  }
  d.line(24, y - 6, width - 24, y - 6, 0.75);
  d.text(24, y + 10, 'Refunds of unused labels within 30 days.', { size: 8 });
  return d;
}

/** A packing slip in outlines, so that its bounds are exact. */
export function packingSlip(width: number, height: number, content: LabelContent): Drawing {
  const d = new Drawing(width, height);
  d.face = 'noto';
  d.text(18, 34, 'Packing slip', { size: 18, bold: true });
  d.text(width - 18, 34, `Order ${content.order}`, { size: 11, bold: true, align: 'right' });
  d.text(18, 52, STUDIO, { size: 9 });
  d.line(18, 60, width - 18, 60, 1);
  const below = d.block(18, 76, ['Ship to', ...content.to], { size: 9 }, 1.35);
  d.line(18, below + 2, width - 18, below + 2, 0.75);
  d.text(18, below + 16, 'Quantity and item', { size: 9, bold: true });
  const end = d.block(18, below + 32, content.items, { size: 10, maxWidth: width - 36 }, 1.6);
  d.line(18, end, width - 18, end, 0.75);
  d.text(width / 2, end + 22, 'Thank you. Each piece is made by hand.', { size: 9, align: 'center' });
  return d;
}

export function invoice(width: number, height: number, content: LabelContent): Drawing {
  const d = new Drawing(width, height);
  d.text(48, 70, 'INVOICE', { size: 26, bold: true });
  d.block(width - 48, 60, [STUDIO, '7 Example Street', 'Sampleton XX 00001'], { size: 10, align: 'right' });
  d.block(48, 120, content.to, { size: 11 }, 1.3);
  d.text(48, 210, `Invoice ${content.order}-R`, { size: 10 });
  d.frame(48, 226, width - 96, 20 + content.items.length * 20, 0.75);
  d.line(48, 246, width - 48, 246, 0.75);
  d.text(56, 240, 'Item', { size: 10, bold: true });
  d.text(width - 56, 240, 'Amount', { size: 10, bold: true, align: 'right' });
  content.items.forEach((item, index) => {
    d.text(56, 260 + index * 20, item, { size: 10 });
    d.text(width - 56, 260 + index * 20, `${String(18 + 7 * index)}.00`, { size: 10, align: 'right' });
  });
  d.text(48, 290 + content.items.length * 20, 'Paid. This is no shipping label.', { size: 10 });
  return d;
}

/** An advert in a frame of its own, with a QR code that is no carrier's. */
export function advert(width: number, height: number): Drawing {
  const d = new Drawing(width, height);
  d.frame(30, 20, width - 60, height - 40, 2);
  d.text(width / 2, 80, 'Open your second shop with us', { size: 22, bold: true, align: 'center', maxWidth: width - 100 });
  d.text(width / 2, 106, `${CHANNELS[1]} sellers pay no fees until spring.`, { size: 11, align: 'center', maxWidth: width - 100 });
  d.matrix(qr('https://mugmonger.example/offer'), width / 2, 190, 4);
  d.text(width / 2, 270, 'Scan to begin', { size: 11, align: 'center' });
  return d;
}
