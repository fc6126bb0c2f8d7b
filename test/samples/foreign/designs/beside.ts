import { Art } from '../kit/art.js';
import type { Family } from '../kit/shapes.js';
import type { Parcel, Vocabulary } from './content.js';
import { Dice } from './content.js';

/** Things that stand beside a label. All are drawn in their own size; `mark` says that they are samples too. */
export interface Spot {
  readonly width: number;
  readonly height: number;
  readonly family?: Family;
}
const start = ({ width, height, family }: Spot): Art => new Art(width, height, family);

/** A voucher with a dashed edge and a code of its own. */
export function coupon(parcel: Parcel, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).rect(1, 1, w - 2, h - 2, { line: 1.2, dash: [6, 4] });
  art.text(w / 2, 30, '15 % OFF', { size: 26, bold: true, anchor: 'middle', fit: w - 20 });
  art.paragraph(12, 48, w - 24, 'your next order with us. One voucher an order, not for gift cards.', { size: 8 });
  art.code('code128', `SAVE${parcel.order.replace('-', '')}`, w * 0.12, h - 62, w * 0.76, 36);
  art.text(w / 2, h - 14, `SAVE${parcel.order.replace('-', '')} (${parcel.mark})`, { size: 7, anchor: 'middle', fit: w - 14 });
  return art;
}

/** A framed advert. */
export function advert(parcel: Parcel, words: Vocabulary, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const dice = new Dice(parcel.order.length + parcel.tracking.charCodeAt(3) * 31);
  const art = start(spot).rect(1, 1, w - 2, h - 2, { line: 2 });
  art.rect(1, 1, w - 2, h * 0.22, { fill: '#333333' });
  art.text(w / 2, h * 0.14, dice.of(['Our winter fair', 'New: the small things', 'Come and see us']), {
    size: h * 0.08,
    bold: true,
    anchor: 'middle',
    fill: '#ffffff',
    fit: w - 30,
  });
  const y = art.paragraph(
    16,
    h * 0.32,
    w - 32,
    'Three hundred pieces by forty makers, all made within a day of here. Bring this page along and choose a postcard for nothing.',
    { size: 11, leading: 15 },
  );
  for (const [index, what] of words.goods.slice(0, 4).entries()) art.text(22, y + 8 + index * 15, `- ${what}`, { size: 10 });
  if (h > 240) art.code('qr', `https://example.com/fair/${parcel.order}`, w - 100, h - 106, 84, 84);
  art.text(16, h - 14, parcel.mark, { size: 7, fit: w - 130 });
  return art;
}

/** A shop's head: a mark of areas and the name. */
export function logo(words: Vocabulary, spot: Spot, which = 0): Art {
  const { width: w, height: h } = spot;
  const art = start(spot);
  art.disc(h / 2, h / 2, h / 2, '#222222').poly(
    [
      [h * 0.25, h * 0.7],
      [h * 0.5, h * 0.2],
      [h * 0.75, h * 0.7],
    ],
    '#ffffff',
  );
  art.text(h + 10, h * 0.62, words.shops[which % words.shops.length] ?? '', { size: h * 0.45, bold: true, fit: w - h - 14 });
  return art;
}

/** What the sender keeps, with a copy of the tracking code. */
export function receipt(parcel: Parcel, spot: Spot, tracking: string): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).text(0, 14, 'SENDER COPY - keep until delivered', { size: 10, bold: true, fit: w });
  art
    .text(0, 30, `Consignee ${parcel.to[0] ?? ''}, ${parcel.town}`, { size: 8, fit: w })
    .text(0, 42, `Order ${parcel.order}   ${parcel.weight}`, { size: 8, fit: w });
  art.code('code128', tracking, 8, 52, Math.min(w - 16, 240), Math.max(24, h - 86)).text(8, h - 20, tracking, { size: 9 });
  art.text(0, h - 6, `${parcel.mark}. Accepted by: ____________  Time: ______`, { size: 7, fit: w });
  return art;
}

/** Steps for whoever packs. */
export function instructions(spot: Spot, parcel: Parcel): Art {
  const { width: w } = spot;
  const art = start(spot).text(0, 14, 'How to use this page', { size: 13, bold: true });
  const steps = [
    'Print this page at its actual size; do not shrink it to fit.',
    'Fold along the dashed line, or cut there with scissors.',
    'Put the label into a clear pouch. Do not cover the bars with tape.',
    `Hand the parcel in at any counter before six o'clock. (${parcel.mark})`,
  ];
  let y = 34;
  for (const [index, step] of steps.entries()) {
    art.text(0, y, `${index + 1}.`, { size: 9 });
    y = art.paragraph(16, y, w - 18, step, { size: 9, leading: 12 }) + 4;
  }
  return art;
}

/** "Download our app". */
export function appCode(parcel: Parcel, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).code('qr', `https://example.com/app?from=${parcel.depot}`, 0, 0, h, h);
  art.lines(h + 8, h * 0.4, ['Download our app', 'and watch your parcel'], { size: Math.min(11, h / 5), fit: w - h - 10 });
  return art;
}

/** A packing slip: head, both addresses, ruled lines of goods, sum. */
export function slip(
  parcel: Parcel,
  words: Vocabulary,
  spot: Spot,
  options: { readonly barcode?: boolean; readonly title?: string } = {},
): Art {
  const { width: w } = spot;
  const art = start(spot).text(0, 20, options.title ?? 'Packing slip', { size: 18, bold: true });
  art
    .text(0, 36, `Order ${parcel.order}`, { size: 9 })
    .text(w, 20, parcel.from[0] ?? '', { size: 10, anchor: 'end', bold: true, fit: w * 0.5 });
  art.text(0, 56, 'Ship to', { size: 8, bold: true });
  let y = art.lines(0, 68, parcel.to, { size: 9, fit: w * 0.6 }) + 14;
  if (options.barcode === true) art.code('code128', parcel.order, w - Math.min(130, w * 0.45), 34, Math.min(130, w * 0.45), 34);
  art
    .rect(0, y - 12, w, 16, { fill: '#dddddd' })
    .text(4, y, 'Qty', { size: 8, bold: true })
    .text(34, y, 'Item', { size: 8, bold: true });
  art.text(w - 4, y, 'Price', { size: 8, bold: true, anchor: 'end' });
  for (const [quantity, what, price] of parcel.goods) {
    y += 18;
    art
      .text(4, y, String(quantity), { size: 9 })
      .text(34, y, what, { size: 9, fit: w - 90 })
      .text(w - 4, y, price, { size: 9, anchor: 'end' });
    art.line(0, y + 5, w, y + 5, { line: 0.5, stroke: '#888888' });
  }
  y = art.paragraph(0, y + 26, w, `Thank you for buying from ${words.shops[1] ?? ''}. ${parcel.mark}.`, { size: 8.5 });
  art.paragraph(0, y + 6, w, 'Something broken? Write to us within 14 days and tell us the order number above.', { size: 8 });
  return art;
}

/** A customs declaration of ruled cells. */
export function customs(parcel: Parcel, spot: Spot, barcode: boolean): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).rect(0.5, 0.5, w - 1, h - 1, { line: 1 });
  art.text(8, 20, 'CUSTOMS DECLARATION', { size: 13, bold: true, fit: w * 0.55 }).text(8, 34, 'May be opened officially', { size: 7 });
  if (barcode)
    art
      .code('code128', parcel.s10, w - Math.min(170, w * 0.5) - 10, 8, Math.min(170, w * 0.5), 28)
      .text(w - 12, 46, parcel.s10, { size: 8, anchor: 'end' });
  const top = h * 0.15;
  art
    .line(0, top, w, top)
    .line(w / 2, top, w / 2, h * 0.38)
    .text(6, top + 9, 'From', { size: 6.5 })
    .text(w / 2 + 6, top + 9, 'To', { size: 6.5 });
  art.lines(6, top + 21, parcel.from, { size: 8, fit: w / 2 - 12 });
  art.lines(w / 2 + 6, top + 21, parcel.to, { size: 8, fit: w / 2 - 12 });
  let y = h * 0.38;
  art
    .line(0, y, w, y)
    .text(6, y + 11, 'Detailed description of contents', { size: 7 })
    .text(w - 6, y + 11, 'Value', { size: 7, anchor: 'end' });
  for (const [quantity, what, price] of parcel.goods.slice(0, 5)) {
    y += h * 0.065;
    art
      .text(6, y + 12, `${quantity} x ${what}`, { size: 8, fit: w * 0.6 })
      .text(w - 6, y + 12, price, { size: 8, anchor: 'end' })
      .line(0, y + 17, w, y + 17, { line: 0.5 });
  }
  art.line(w * 0.72, h * 0.38, w * 0.72, h * 0.8).line(0, h * 0.8, w, h * 0.8);
  art
    .rect(8, h * 0.83, 8, 8)
    .text(20, h * 0.83 + 7, 'Gift', { size: 7 })
    .rect(60, h * 0.83, 8, 8)
    .text(72, h * 0.83 + 7, 'Sale of goods', { size: 7 });
  art
    .text(8, h * 0.93, `I certify that the particulars are correct. ${parcel.mark}`, { size: 7, fit: w - 16 })
    .text(8, h * 0.98, 'Date and signature', { size: 6.5 });
  return art;
}

/** A line to fold or to cut along, as wide as the page. */
export const foldLine = (width: number, words: string): Art => {
  const art = new Art(width, 12).line(0, 6, width, 6, { line: 0.8, dash: [5, 4], stroke: '#555555' });
  return art.text(10, 4, words, { size: 6 });
};
