import { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import { senderPart } from './third-papers-a.js';
import type { Posted } from './third-words.js';

const start = ({ width, height, family }: Spot): Art => new Art(width, height, family);

/** A declaration of contents for parcels that go abroad: boxes to tick, a table, a place to sign. */
export function customsForm({ parcel, words, day }: Posted, spot: Spot, code = true): Art {
  const { width: w, height: h } = spot;
  const [title, contents, value, sign] = words.customs;
  const art = start(spot)
    .rect(0.5, 0.5, w - 1, h - 1)
    .text(8, 19, title, { size: 12.5, bold: true, fit: w * 0.62 });
  if (code) art.code('code128', parcel.s10, w * 0.64, 5, w * 0.34, 20).text(w * 0.81, 32, parcel.s10, { size: 7, anchor: 'middle' });
  art.line(0, 37, w, 37, { line: 0.6 });
  for (const k of [0, 1, 2, 3])
    art.rect(8 + (k * w) / 4, 43, 8, 8, { line: 0.7 }).line(22 + (k * w) / 4, 51, (k + 0.8) * (w / 4), 51, { line: 0.3 });
  art.line(8, 43, 16, 51, { line: 0.8 }).line(16, 43, 8, 51, { line: 0.8 }).line(0, 57, w, 57, { line: 0.6 });
  art
    .text(6, 67, contents, { size: 7, fit: w * 0.5 })
    .text(w * 0.6, 67, words.label[2], { size: 7 })
    .text(w - 6, 67, value, { size: 7, anchor: 'end' });
  art.line(0, 72, w, 72, { line: 0.6 });
  const last = h - 52;
  for (const [k, [count, what, price]] of parcel.goods.entries()) {
    const y = 86 + k * 15;
    if (y > last - 6) break;
    art
      .text(6, y, `${count} x ${what}`, { size: 8.5, fit: w * 0.5 })
      .text(w * 0.6, y, `0.${count}5`, { size: 8.5 })
      .text(w - 6, y, price, { size: 8.5, anchor: 'end' });
  }
  art
    .line(w * 0.57, 57, w * 0.57, last, { line: 0.6 })
    .line(w * 0.78, 57, w * 0.78, last, { line: 0.6 })
    .line(0, last, w, last, { line: 0.6 });
  const end = art.paragraph(6, last + 10, w * 0.56, words.small, { size: 5.2, leading: 6 });
  art.text(6, Math.min(h - 4, end + 4), parcel.mark, { size: 6, fit: w * 0.54 });
  return art
    .text(w * 0.6, last + 10, sign, { size: 6.5, fit: w * 0.38 })
    .text(w * 0.6, last + 30, day, { size: 9 })
    .line(w * 0.6, last + 34, w - 8, last + 34, { line: 0.4 });
}

/** What to put in the box with goods that come back. */
export function returnForm({ parcel, words }: Posted, spot: Spot): Art {
  const { width: w } = spot;
  const [title, ...reasons] = words.reasons;
  const art = start(spot)
    .text(0, 16, `${words.slip[3]} ${parcel.order}`, { size: 13, bold: true, fit: w })
    .text(0, 34, title, { size: 10.5, fit: w });
  for (const [k, reason] of reasons.entries()) {
    const [x, y] = [(k % 2) * (w / 2), 52 + Math.floor(k / 2) * 18];
    art.rect(x, y - 8, 9, 9, { line: 0.8 }).text(x + 15, y, reason, { size: 9, fit: w / 2 - 24 });
  }
  for (const [k, [count, what]] of parcel.goods.entries()) {
    art.text(0, 100 + k * 16, `${count} x ${what}`, { size: 9, fit: w - 60 }).rect(w - 40, 91 + k * 16, 36, 12, { line: 0.5 });
  }
  return art.text(0, 106 + parcel.goods.length * 16, parcel.mark, { size: 7, fit: w });
}

/** A voucher with a code, in a frame as large as asked. */
export function voucher({ parcel, words }: Posted, spot: Spot, kind: 'qr' | 'code128' = 'qr', tint = '#eef3e6'): Art {
  const { width: w, height: h } = spot;
  const art = start(spot)
    .rect(1, 1, w - 2, h - 2, { line: 1.2, fill: tint, radius: 6 })
    .text(16, 34, words.advert[0], { size: 20, bold: true, fit: w - 32 });
  art.paragraph(16, 54, kind === 'qr' ? w - 120 : w - 32, words.advert[1], { size: 10, leading: 13 });
  if (kind === 'qr')
    art.rect(w - 92, h - 92, 80, 80, { fill: '#ffffff' }).code('qr', `https://www.example/${parcel.order}`, w - 86, h - 86, 68, 68);
  else art.rect(16, h - 56, 160, 34, { fill: '#ffffff' }).code('code128', `TILE-${parcel.order}`, 26, h - 52, 140, 26);
  return art.text(16, h - 8, parcel.mark, { size: 7, fit: w - 120 });
}

/** Columns of small print, as the back of a form has it. */
export function smallPrint({ parcel, words }: Posted, spot: Spot, columns = 2, paragraphs = 7): Art {
  const width = (spot.width - (columns - 1) * 16) / columns;
  const art = start(spot).text(0, 16, parcel.from[0] ?? '', { size: 13, bold: true, fit: spot.width });
  for (let column = 0; column < columns; column++) {
    let y = 36;
    for (let k = 0; k < paragraphs; k++) {
      art.text(column * (width + 16), y, `§ ${column * paragraphs + k + 1}`, { size: 8, bold: true });
      y = art.paragraph(column * (width + 16), y + 11, width, words.small, { size: 7.5, leading: 9.4 }) + 6;
    }
  }
  return art.text(0, spot.height - 4, parcel.mark, { size: 7, fit: spot.width });
}

/** One row for each parcel that a driver takes along. */
export function handOver(all: readonly Posted[], spot: Spot): Art {
  const { width: w } = spot;
  const [first] = all;
  const art = start(spot)
    .text(0, 18, 'Hand-over list / Manifest', { size: 16, bold: true })
    .text(w, 16, first?.day ?? '', { size: 10, anchor: 'end' });
  art.rect(0, 30, w, 18, { fill: '#dddddd' });
  for (const [k, title] of ['No.', 'Tracking', 'Postcode', 'Weight', 'Order'].entries())
    art.text(6 + (k * w) / 5, 42, title, { size: 8.5, bold: true });
  for (const [row, { parcel }] of all.entries()) {
    const y = 62 + row * 17;
    for (const [k, cell] of [String(row + 1), parcel.tracking, parcel.postcode, parcel.weight, parcel.order].entries()) {
      art.text(6 + (k * w) / 5, y, cell, { size: 8.5, family: k === 1 ? 'mono' : 'sans', fit: w / 5 - 8 });
    }
    art.line(0, y + 5, w, y + 5, { line: 0.3 });
  }
  const y = 84 + all.length * 17;
  art
    .code('code128', `LIST${first?.parcel.routing ?? ''}`, 0, y, 200, 36)
    .line(w - 200, y + 36, w, y + 36, { line: 0.5 })
    .text(w - 200, y + 46, 'Driver', { size: 8 });
  return art.text(0, y + 60, first?.parcel.mark ?? '', { size: 7, fit: w });
}

/** A dashed line across with a word in its middle. */
export function foldLine(width: number, words: string): Art {
  const art = new Art(width, 12).line(0, 6, width, 6, { line: 0.5, dash: [3, 3] });
  return words === ''
    ? art
    : art.rect(width / 2 - 42, 0, 84, 12, { fill: '#ffffff' }).text(width / 2, 9, words, { size: 8, anchor: 'middle', fit: 80 });
}

export const counterfoil = (posted: Posted, spot: Spot): Art => senderPart(posted, spot, 'code128', `RC${posted.parcel.routing}`);
