import { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import type { Sent } from './second-words.js';

const start = ({ width, height, family }: Spot): Art => new Art(width, height, family);

/** Head and foot of a page that a browser printed. */
export function browserLines(width: number, height: number, host: string): Art {
  const art = new Art(width, height)
    .text(24, 18, '4/11/20, 9:12 AM', { size: 7 })
    .text(width / 2, 18, 'Print your labels', { size: 7, anchor: 'middle' });
  return art
    .text(24, height - 12, `https://${host}.example/orders/print`, { size: 7 })
    .text(width - 24, height - 12, '1/1', { size: 7, anchor: 'end' });
}

/** Numbered lines with a title. */
export function steps({ parcel, words }: Sent, spot: Spot): Art {
  const [title, ...rest] = words.steps;
  const art = start(spot).text(0, 16, title, { size: 15, bold: true, fit: spot.width });
  let y = 36;
  for (const [k, step] of rest.entries()) y = art.paragraph(0, y, spot.width, `${k + 1}. ${step}`, { size: 10, leading: 13 }) + 4;
  return art.text(0, y + 4, parcel.mark, { size: 7, fit: spot.width });
}

/** A line of words and goods in columns; `picks` adds boxes to tick. */
export function goodsList({ parcel, words }: Sent, spot: Spot, more: { readonly title?: string; readonly picks?: boolean } = {}): Art {
  const { width: w } = spot;
  const art = start(spot).text(0, 18, more.title ?? words.slip[0], { size: 17, bold: true, fit: w * 0.6 });
  art.text(w, 16, parcel.order, { size: 10, anchor: 'end' }).lines(0, 38, parcel.to, { size: 9.5, fit: w });
  let y = 88;
  art
    .rect(0, y - 12, w, 18, { fill: '#e4e4e4' })
    .text(6, y, words.slip[1], { size: 9, bold: true })
    .text(60, y, words.slip[2], { size: 9, bold: true });
  for (const [count, what, price] of parcel.goods) {
    y += 20;
    art
      .text(6, y, String(count), { size: 9 })
      .text(60, y, what, { size: 9, fit: w - 150 })
      .line(0, y + 6, w, y + 6, { line: 0.4, stroke: '#888888' });
    if (more.picks === true) art.rect(w - 14, y - 9, 10, 10, { line: 0.8 });
    else art.text(w - 4, y, price, { size: 9, anchor: 'end' });
  }
  return art.text(0, y + 26, parcel.mark, { size: 7.5, fit: w });
}

/** A panel of colour with a code of its own. */
export function coupon({ parcel, words }: Sent, spot: Spot, tint = '#f3e3c8'): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).rect(1, 1, w - 2, h - 2, { fill: tint, line: 1.5, dash: [4, 3], stroke: '#555555' });
  art.text(14, 28, words.advert[0], { size: 17, bold: true, fit: w - 28 }).paragraph(14, 46, w - 28, words.advert[1], { size: 9 });
  art.rect(12, h - 58, 150, 36, { fill: '#ffffff' }).code('code128', `GIFT${parcel.order}`, 20, h - 54, 134, 28);
  return art.text(14, h - 9, `GIFT ${parcel.order}  ${parcel.mark}`, { size: 6.5, fit: w - 28 });
}

/** What the sender keeps: the same number, small. */
export function receipt({ parcel, words }: Sent, spot: Spot, code?: string): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).text(6, 18, words.receipt, { size: 12, bold: true, fit: w - 12 });
  art.lines(6, 36, [...parcel.to, parcel.weight], { size: 8.5, fit: h < 130 ? w - 180 : w * 0.9 });
  if (code !== undefined) {
    const [x, y] = h < 130 ? [w - 170, 28] : [10, h - 52];
    art.code('code128', code, x, y, 166, 28).text(x, y + 38, code, { size: 8 });
  }
  return art.text(6, h - 2, parcel.mark, { size: 6.5, fit: w - 12 });
}

/** A customs form with a number of its own. */
export function declaration({ parcel, words }: Sent, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot)
    .rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5 })
    .text(10, 22, words.customs[0], { size: 13, bold: true, fit: w * 0.6 });
  art
    .code('code128', `DC${parcel.routing.slice(0, 9)}`, w - 172, 8, 160, 28)
    .text(w - 92, 45, `DC${parcel.routing.slice(0, 9)}`, { size: 7.5, anchor: 'middle' });
  art.line(1, 52, w - 1, 52).lines(10, 66, parcel.from, { size: 8, fit: w / 2 - 16 });
  art.line(w / 2, 52, w / 2, 104).lines(w / 2 + 8, 66, parcel.to, { size: 8, fit: w / 2 - 16 });
  art
    .line(1, 104, w - 1, 104)
    .text(10, 118, words.customs[1], { size: 8, bold: true })
    .text(w - 10, 118, words.customs[2], { size: 8, bold: true, anchor: 'end' });
  for (const [k, [count, what, price]] of parcel.goods.entries()) {
    const y = 134 + k * 15;
    if (y < h - 24) art.text(10, y, `${count} x ${what}`, { size: 8.5 }).text(w - 10, y, price, { size: 8.5, anchor: 'end' });
  }
  return art.text(10, h - 8, parcel.mark, { size: 7, fit: w - 20 });
}

/** A bill: sums at the foot. */
export function invoice(each: Sent, spot: Spot, code: 'none' | 'qr' | 'itf' = 'none'): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).put(goodsList(each, { width: w, height: h }, { title: each.words.bill[0] }), 0, 0);
  const sum = each.parcel.goods.reduce((all, [count, , price]) => all + count * Number(price), 0);
  const y = 132 + each.parcel.goods.length * 20;
  art.text(w, y, `${each.words.bill[1]}  ${sum.toFixed(2)}`, { size: 13, bold: true, anchor: 'end' });
  if (code === 'qr') art.code('qr', `PAY/${sum.toFixed(2)}/${each.parcel.routing}`, 0, y + 10, 80, 80);
  if (code === 'itf') art.code('itf', each.parcel.routing, 0, y + 14, 200, 34);
  return art;
}

/** Something to fold or cut along, with scissors made of two rings and two blades. */
export function scissorsLine(width: number, text: string): Art {
  const art = new Art(width, 16).line(24, 8, width - 4, 8, { line: 0.7, dash: [6, 4] });
  art
    .disc(5, 4, 3)
    .disc(5, 4, 1.8, '#ffffff')
    .disc(5, 12, 3)
    .disc(5, 12, 1.8, '#ffffff')
    .line(7, 5, 19, 11, { line: 1.2 })
    .line(7, 11, 19, 5, { line: 1.2 });
  return text === ''
    ? art
    : art.rect(width / 2 - 45, 2, 90, 12, { fill: '#ffffff' }).text(width / 2, 11, text, { size: 8, anchor: 'middle', fit: 86 });
}
