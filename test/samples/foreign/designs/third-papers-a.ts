import { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import type { Posted } from './third-words.js';

const start = ({ width, height, family }: Spot): Art => new Art(width, height, family);

/** Numbered steps, the numbers in black discs, then the small print. */
export function howTo({ parcel, words }: Posted, spot: Spot, small = true): Art {
  const [title, ...rest] = words.steps;
  const art = start(spot).text(0, 15, title, { size: 15, bold: true, fit: spot.width });
  let y = 38;
  for (const [k, step] of rest.entries()) {
    art.disc(8, y - 3.5, 8).text(8, y, String(k + 1), { size: 10, bold: true, fill: '#ffffff', anchor: 'middle' });
    y = Math.max(y + 20, art.paragraph(26, y, spot.width - 26, step, { size: 10, leading: 13 }) + 7);
  }
  if (small) y = art.paragraph(0, y + 2, spot.width, words.small, { size: 7, leading: 8.6, fill: '#333333' });
  return art.text(0, y + 4, parcel.mark, { size: 7, fit: spot.width });
}

/** Two thin lines of words in capitals, as help pages have them, without numbers. */
export function plainHints({ words }: Posted, spot: Spot): Art {
  const [title, ...rest] = words.steps;
  const art = start(spot).text(0, 11, title, { size: 11, bold: true, fit: spot.width });
  let y = 27;
  for (const step of rest) {
    art.rect(1, y - 4.5, 3, 3, { fill: '#000000' });
    y = art.paragraph(10, y, spot.width - 10, step, { size: 9, leading: 11 }) + 3;
  }
  return art;
}

/** Rows of goods; prices only where asked. */
function goodsRows(art: Art, { parcel, words }: Posted, y: number, width: number, prices: boolean): number {
  const [, quantity, item] = words.slip;
  art
    .line(0, y, width, y, { line: 1 })
    .text(4, y + 12, quantity, { size: 8.5, bold: true })
    .text(56, y + 12, item, { size: 8.5, bold: true });
  if (prices) art.text(width - 4, y + 12, 'EUR', { size: 8.5, bold: true, anchor: 'end' });
  art.line(0, y + 17, width, y + 17, { line: 0.5 });
  let at = y + 17;
  for (const [k, [count, what, price]] of parcel.goods.entries()) {
    at += 16;
    art
      .text(4, at - 3, String(count), { size: 9 })
      .text(56, at - 3, what, { size: 9, fit: width - 130 })
      .text(width - 84, at - 3, prices ? '' : `K-${k + 1}0${count}`, { size: 8, family: 'mono' });
    if (prices) art.text(width - 4, at - 3, (count * Number(price)).toFixed(2), { size: 9, anchor: 'end' });
    art.line(0, at + 2, width, at + 2, { line: 0.25, stroke: '#777777' });
  }
  return at + 14;
}

/** Head of a small firm's letter: name, address in one line, a ring for a logo. */
export function head({ parcel }: Posted, width: number): Art {
  const art = new Art(width, 42).disc(20, 20, 18, '#5b6b7a').disc(20, 20, 11, '#ffffff').disc(20, 20, 5, '#5b6b7a');
  art.text(50, 20, parcel.from[0] ?? '', { size: 16, bold: true, fit: width - 60 });
  return art.text(50, 35, parcel.from.slice(1).join(' / '), { size: 8, fit: width - 60, fill: '#444444' });
}

export function packingSlip(posted: Posted, spot: Spot, withHead = true): Art {
  const { parcel, words, day } = posted;
  const { width: w } = spot;
  const art = start(spot);
  if (withHead) art.put(head(posted, w), 0, 0);
  const top = withHead ? 62 : 16;
  art.text(0, top + 4, words.slip[0], { size: 18, bold: true, fit: w * 0.55 });
  art
    .text(w, top, `${words.slip[3]} ${parcel.order}`, { size: 10, anchor: 'end', fit: w * 0.42 })
    .text(w, top + 13, day, { size: 9, anchor: 'end' });
  art.lines(0, top + 26, parcel.to, { size: 9.5, leading: 12, fit: w });
  const end = goodsRows(art, posted, top + 66, w, false);
  return art.text(0, end, words.slip[4], { size: 9, fit: w }).text(0, end + 14, parcel.mark, { size: 7, fit: w });
}

export function invoice(posted: Posted, spot: Spot, code: 'none' | 'qr' | 'code128' = 'none'): Art {
  const { parcel, words, day } = posted;
  const { width: w } = spot;
  const [title, net, tax, due, terms] = words.bill;
  const art = start(spot)
    .put(head(posted, w), 0, 0)
    .text(0, 62, parcel.from.slice(0, 3).join(', '), { size: 6, fit: w * 0.5 });
  art.lines(0, 78, parcel.to, { size: 10, leading: 12.5, fit: w * 0.5 });
  art.text(w * 0.6, 82, `${title} ${parcel.order}`, { size: 14, bold: true, fit: w * 0.4 }).text(w * 0.6, 98, day, { size: 9.5 });
  const y = goodsRows(art, posted, 128, w, true);
  const sum = parcel.goods.reduce((all, [count, , price]) => all + count * Number(price), 0);
  const rows: readonly (readonly [string, number])[] = [
    [net, sum / 1.2],
    [tax, sum - sum / 1.2],
    [due, sum],
  ];
  for (const [k, [name, value]] of rows.entries()) {
    art
      .text(w - 160, y + k * 14, name, { size: 9, bold: k === 2, fit: 90 })
      .text(w - 4, y + k * 14, value.toFixed(2), { size: 9, bold: k === 2, anchor: 'end' });
  }
  if (code === 'qr') art.code('qr', `PAY|${parcel.order}|${sum.toFixed(2)}|EXAMPLE ONLY`, 0, y - 4, 72, 72);
  if (code === 'code128') art.code('code128', `INV${parcel.order}`, 0, y - 4, 150, 28);
  art.text(w - 160, y + 46, terms, { size: 8, fit: 160 });
  return art.text(0, y + 84, parcel.mark, { size: 7, fit: w });
}

/** What the sender keeps, cut from the same form. */
export function senderPart({ parcel, words, day }: Posted, spot: Spot, code: 'code128' | 'none' = 'none', data = ''): Art {
  const { width: w } = spot;
  const art = start(spot).text(0, 14, words.receipt[0], { size: 13, bold: true, fit: w });
  art.text(0, 29, words.receipt[1], { size: 8, fit: w }).line(0, 36, w, 36, { line: 0.5 });
  const rows: readonly (readonly [string, string])[] = [
    [words.label[1], parcel.to.join(', ')],
    [words.label[0], parcel.from.slice(0, 3).join(', ')],
    [words.label[2], parcel.weight],
    [words.label[4], parcel.order],
    [words.label[3], day],
  ];
  for (const [k, [name, value]] of rows.entries()) {
    art.text(0, 50 + k * 14, name, { size: 7.5, bold: true, fit: 70 }).text(76, 50 + k * 14, value, { size: 8, fit: w - 78 });
  }
  if (code === 'code128') art.code('code128', data, 0, 128, Math.min(w, 190), 26).text(0, 164, data, { size: 7.5, family: 'mono' });
  return art.text(0, code === 'code128' ? 178 : 126, parcel.mark, { size: 6.5, fit: w });
}
