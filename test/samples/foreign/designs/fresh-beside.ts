import { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import type { Parcel } from './content.js';
import type { Words } from './fresh-words.js';

const start = ({ width, height, family }: Spot): Art => new Art(width, height, family);

/** A list of what is packed, in ruled cells with a black head; `code` is the order as a barcode at the foot. */
export function packed(parcel: Parcel, { slip, label }: Words, spot: Spot, code = false): Art {
  const { width: w } = spot;
  const [title, order, quantity, item, price, thanks] = slip;
  const art = start(spot)
    .rect(0, 0, w, 26, { fill: '#000000' })
    .text(8, 19, title, { size: 15, bold: true, fill: '#ffffff', fit: w * 0.6 });
  art.text(w - 8, 18, `${order} ${parcel.order}`, { size: 9, anchor: 'end', fill: '#ffffff', fit: w * 0.36 });
  art.text(0, 42, label[1], { size: 7 });
  const top = art.lines(0, 54, parcel.to, { size: 9, fit: w * 0.9 }) + 6;
  const [a, b] = [w * 0.15, w * 0.78];
  const bottom = top + 18 * (parcel.goods.length + 1);
  art
    .rect(0, top, w, bottom - top, { line: 0.8 })
    .line(a, top, a, bottom, { line: 0.8 })
    .line(b, top, b, bottom, { line: 0.8 });
  for (const [k, row] of [[quantity, item, price] as const, ...parcel.goods].entries()) {
    const y = top + k * 18 + 13;
    if (k > 0) art.line(0, top + k * 18, w, top + k * 18, { line: 0.4 });
    const style = { size: 8.5, bold: k === 0 };
    art.text(4, y, String(row[0]), { ...style, fit: a - 8 }).text(a + 5, y, row[1], { ...style, fit: b - a - 10 });
    art.text(w - 4, y, row[2], { ...style, anchor: 'end', fit: w - b - 8 });
  }
  const y = art.paragraph(0, bottom + 16, w, `${thanks} ${parcel.mark}.`, { size: 8 });
  return code ? art.code('code39', parcel.order.replace('.', ''), w * 0.1, y + 4, w * 0.6, 26) : art;
}

/** What the counter stamps, in a frame, with a copy of the tracking code. */
export function counterCopy(parcel: Parcel, words: Words, spot: Spot, tracking: string): Art {
  const { width: w, height: h } = spot;
  const art = start(spot)
    .rect(0.5, 0.5, w - 1, h - 1)
    .text(8, 17, words.copy[0], { size: 12, bold: true, fit: w - 16 });
  art.text(8, 31, `${parcel.to[0] ?? ''}, ${parcel.town}   ${parcel.weight}`, { size: 8, fit: w - 16 });
  art.code('code128', tracking, 20, 40, Math.min(w - 40, 220), h - 84).text(20, h - 34, tracking, { size: 8.5 });
  art.paragraph(8, h - 20, w - 16, words.copy[1], { size: 7, leading: 8 });
  return art.text(w - 8, h - 34, parcel.mark, { size: 6.5, anchor: 'end', fit: w * 0.45 });
}

/** Steps in numbered discs. */
export function helpSteps(parcel: Parcel, { help }: Words, spot: Spot): Art {
  const { width: w } = spot;
  const [title, ...steps] = help;
  const art = start(spot).text(0, 14, title, { size: 14, bold: true });
  let y = 36;
  for (const [k, step] of steps.entries()) {
    art.disc(8, y - 3, 8).text(8, y, String(k + 1), { size: 9, bold: true, anchor: 'middle', fill: '#ffffff' });
    y = art.paragraph(24, y, w - 26, step, { size: 9.5, leading: 12 }) + 8;
  }
  art.text(0, y, parcel.mark, { size: 7, fit: w });
  return art;
}

/** A black panel with a code on white. */
export function voucherPanel(parcel: Parcel, { voucher }: Words, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).rect(0, 0, w, h, { fill: '#000000' });
  art.text(w / 2, 28, voucher[0], { size: 20, bold: true, anchor: 'middle', fill: '#ffffff', fit: w - 20 });
  art.paragraph(10, 44, w - 20, voucher[1], { size: 8, fill: '#ffffff' });
  const number = `29${parcel.routing.slice(0, 10)}`;
  art.rect(8, h - 64, w - 16, 56, { fill: '#ffffff' }).code('ean13', number, w * 0.2, h - 60, w * 0.6, 36);
  return art.text(w / 2, h - 13, parcel.mark, { size: 6.5, anchor: 'middle', fit: w - 24 });
}

/** An advert in a thick frame with white corners of its own, a picture of areas, and a code if it is large. */
export function advertPanel(parcel: Parcel, { advert }: Words, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot)
    .rect(3, 3, w - 6, h - 6, { line: 6 })
    .rect(12, 12, w - 24, h - 24, { line: 0.8 });
  for (const [k, fill] of ['#222222', '#777777', '#bbbbbb'].entries()) art.disc(w * (0.3 + k * 0.2), h * 0.25, Math.min(w, h) * 0.11, fill);
  art.text(w / 2, h * 0.48, advert[0], { size: 24, bold: true, anchor: 'middle', fit: w - 50, family: 'serif' });
  art.paragraph(28, h * 0.56, w - 56, advert[1], { size: 11, leading: 15, family: 'serif' });
  if (h > 260) art.code('qr', `https://example.com/open/${parcel.order}`, w / 2 - 36, h - 106, 72, 72);
  return art.text(w / 2, h - 18, parcel.mark, { size: 7, anchor: 'middle', fit: w - 50 });
}

/** A declaration whose heads are shaded; `code` is its number as a barcode at the bottom. */
export function declaration(parcel: Parcel, { customs, label }: Words, spot: Spot, code: boolean): Art {
  const { width: w, height: h } = spot;
  const [title, open, contents, value, gift, sale, sign] = customs;
  const art = start(spot)
    .rect(1, 1, w - 2, h - 2, { line: 2 })
    .rect(2, 2, w - 4, 34, { fill: '#dddddd' });
  art.text(8, 18, title, { size: 13, bold: true, fit: w * 0.6 }).text(8, 31, open, { size: 7, fit: w * 0.6 });
  art
    .text(w - 8, 22, 'CN / ZZ', { size: 14, bold: true, anchor: 'end' })
    .rect(10, 44, 9, 9)
    .rect(w * 0.5, 44, 9, 9);
  art
    .text(24, 52, gift, { size: 8 })
    .text(w * 0.5 + 14, 52, sale, { size: 8 })
    .line(1, 60, w - 1, 60);
  art.text(8, 70, label[0], { size: 6.5 }).lines(8, 81, parcel.from, { size: 8, fit: w / 2 - 16 });
  art.text(w / 2 + 8, 70, label[1], { size: 6.5 }).lines(w / 2 + 8, 81, parcel.to, { size: 8, fit: w / 2 - 16 });
  art.line(w / 2, 60, w / 2, 122).rect(2, 122, w - 4, 16, { fill: '#dddddd' });
  art.text(8, 133, contents, { size: 8, bold: true }).text(w - 8, 133, value, { size: 8, bold: true, anchor: 'end' });
  let y = 138;
  for (const [quantity, what, price] of parcel.goods.slice(0, 5)) {
    art.text(8, y + 14, `${quantity} ${what}`, { size: 8.5, fit: w * 0.6 }).text(w - 8, y + 14, price, { size: 8.5, anchor: 'end' });
    y += 20;
    art.line(1, y, w - 1, y, { line: 0.5 });
  }
  if (code) art.code('code128', parcel.s10, w * 0.22, y + 10, w * 0.56, 26).text(w / 2, y + 46, parcel.s10, { size: 8, anchor: 'middle' });
  art.line(1, h - 44, w - 1, h - 44).text(8, h - 32, sign, { size: 7, fit: w - 16 });
  return art.text(8, h - 8, parcel.mark, { size: 7, fit: w - 16 });
}

/** A workshop's head over the whole width, the name at the right. */
export function letterhead(parcel: Parcel, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot);
  for (const [k, x] of [0, 0.7, 1.4].entries())
    art.rect(x * h, 0, h * 0.55, h, { fill: ['#111111', '#666666', '#aaaaaa'][k] ?? '#111111' });
  art.text(w, h * 0.5, parcel.from[0] ?? '', { size: h * 0.42, bold: true, anchor: 'end', fit: w - 2.4 * h });
  return art.text(w, h * 0.92, `${parcel.from.slice(1).join(', ')} / 555-0164`, { size: 7, anchor: 'end', fit: w - 2.4 * h });
}

/** A square code with two lines at its left. */
export function appPanel(parcel: Parcel, { app }: Words, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot)
    .rect(0.5, 0.5, w - 1, h - 1, { line: 0.5 })
    .code('qr', `https://example.com/go/${parcel.order}`, w - h + 4, 4, h - 8, h - 8);
  art.lines(6, h * 0.4, app, { size: Math.min(11, h / 5), fit: w - h - 8 });
  return art;
}

/** A line of points over `width`, scissors' words in the middle. */
export function foldMark(width: number, words: string): Art {
  const art = new Art(width, 12).line(0, 8, width, 8, { line: 0.6, dash: [2, 3], stroke: '#444444' });
  return art.text(width / 2, 5, words, { size: 6, anchor: 'middle' });
}

/** Small print in columns. */
export function smallPrint({ terms }: Words, spot: Spot, columns: number, paragraphs: number): Art {
  const { width: w } = spot;
  const art = start(spot);
  const width = (w - 16 * (columns - 1)) / columns;
  for (let k = 0; k < columns; k++) {
    let y = 9;
    for (let i = 0; i < paragraphs; i++) {
      art.text(k * (width + 16), y, `§ ${k * paragraphs + i + 1} ${terms[0]}`, { size: 7.5, bold: true, fit: width });
      y = art.paragraph(k * (width + 16), y + 10, width, terms[1], { size: 7, leading: 8.6 }) + 6;
    }
  }
  return art;
}
