import { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import type { Parcel } from './content.js';
import { Dice } from './content.js';
import type { Words } from './fresh-words.js';

const start = ({ width, height, family }: Spot): Art => new Art(width, height, family);

/** A bill on a grey ground, sums right; with or without a code to pay by. */
export function bill(parcel: Parcel, words: Words, spot: Spot, code: 'none' | 'qr' | 'code128'): Art {
  const { width: w, height: h } = spot;
  const [title, sum, pay] = words.bill;
  const art = start(spot).text(w, 26, title, { size: 24, anchor: 'end', family: 'serif' });
  art.lines(0, 20, parcel.from, { size: 9 });
  art.lines(0, 110, parcel.to, { size: 11 });
  art.lines(w, 110, [`${words.slip[1]} ${parcel.order}`, parcel.routing.slice(0, 9)], { size: 9, anchor: 'end' });
  let y = 190;
  for (const [k, [quantity, what, price]] of parcel.goods.entries()) {
    if (k % 2 === 0) art.rect(0, y - 13, w, 19, { fill: '#eeeeee' });
    art.text(6, y, `${quantity}  ${what}`, { size: 9.5, fit: w * 0.7 }).text(w - 6, y, price, { size: 9.5, anchor: 'end' });
    y += 19;
  }
  const total = parcel.goods.reduce((all, [quantity, , price]) => all + quantity * Number(price), 0).toFixed(2);
  art.rect(w * 0.55, y, w * 0.45, 26, { line: 1.2 }).text(w - 8, y + 18, `${sum} ${total}`, { size: 12, bold: true, anchor: 'end' });
  art.paragraph(0, y + 60, w * 0.5, `${pay} ${parcel.mark}.`, { size: 9 });
  if (code === 'qr') art.code('qr', `ZZPAY/${total}/${parcel.routing}`, w - 120, h - 170, 110, 110);
  if (code === 'code128')
    art.code('code128', `ZZ${parcel.routing}`, 0, h - 110, 230, 40).text(0, h - 58, `ZZ${parcel.routing}`, { size: 9 });
  return art.text(w / 2, h - 10, '0000 00 000000 / 555-0120', { size: 7.5, anchor: 'middle' });
}

/** A greeting card with a frame, about as large as a label. */
export function greeting(parcel: Parcel, words: Words, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot)
    .rect(4, 4, w - 8, h - 8, { line: 3 })
    .rect(12, 12, w - 24, h - 24, { line: 0.6, dash: [1, 2] });
  for (let k = 0; k < 5; k++) art.disc(w * 0.5, h * 0.3, w * (0.27 - k * 0.05), k % 2 === 0 ? '#333333' : '#ffffff');
  art.text(w / 2, h * 0.6, words.letter[0], { size: 26, family: 'serif', anchor: 'middle', fit: w - 50 });
  art.paragraph(30, h * 0.7, w - 60, words.slip[5], { size: 10, family: 'serif', leading: 14 });
  return art.text(w / 2, h - 24, parcel.mark, { size: 7, anchor: 'middle', fit: w - 50 });
}

/** A ticket: frame, square code, number, seat; nothing to send. */
export function ticket(parcel: Parcel, words: Words, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = start(spot)
    .rect(1, 1, w - 2, h - 2, { line: 2 })
    .rect(1, 1, w - 2, 40, { fill: '#000000' });
  art.text(14, 27, words.advert[0], { size: 18, bold: true, fill: '#ffffff', fit: w - 28 });
  art.paragraph(14, 62, w - 150, words.advert[1], { size: 10, leading: 13 });
  art
    .code('qr', `TICKET ${parcel.order} ${parcel.depot}`, w - 112, 54, 96, 96)
    .text(w - 64, 166, parcel.depot, { size: 14, bold: true, anchor: 'middle' });
  art.line(1, h - 64, w - 1, h - 64, { dash: [4, 3] }).code('code39', parcel.order.replace('.', ''), 16, h - 54, w * 0.5, 30);
  return art.text(16, h - 10, parcel.mark, { size: 7.5, fit: w - 32 });
}

/** What went out today: one row a parcel, each with its tracking code. */
export function manifest(parcels: readonly Parcel[], words: Words, spot: Spot, codes: boolean): Art {
  const { width: w } = spot;
  const art = start(spot)
    .text(0, 20, words.pick, { size: 18, bold: true })
    .text(w, 20, parcels[0]?.mark ?? '', { size: 8, anchor: 'end', fit: w * 0.5 });
  let y = 36;
  for (const [k, each] of parcels.entries()) {
    art
      .line(0, y, w, y, { line: 0.6 })
      .text(0, y + 15, `${k + 1}.`, { size: 10 })
      .text(24, y + 15, each.to[0] ?? '', { size: 9.5, fit: w * 0.35 });
    art.text(24, y + 28, `${each.town}, ${each.goods.map(([n, what]) => `${n} ${what}`).join(', ')}`, { size: 7.5, fit: w * 0.45 });
    if (codes) art.code('code128', `PW${each.tracking}`, w - 190, y + 5, 180, 24);
    else art.text(w, y + 20, each.tracking, { size: 10, anchor: 'end', family: 'mono' });
    y += 36;
  }
  return art.line(0, y, w, y, { line: 0.6 });
}

/** A letter with running text; `tear` adds a form to pay in money below a line. */
export function plainLetter(parcel: Parcel, words: Words, spot: Spot, tear: boolean): Art {
  const { width: w, height: h } = spot;
  const [hello, first, second] = words.letter;
  const art = start(spot);
  art.lines(0, 20, parcel.from, { size: 9 });
  art.lines(0, 90, parcel.to, { size: 11 });
  let y = art.text(0, 180, `${hello},`, { size: 11 }).paragraph(0, 204, w, first, { size: 11, leading: 16 });
  y = art.paragraph(0, y + 8, w, `${second} ${parcel.mark}.`, { size: 11, leading: 16 });
  art.text(0, y + 24, parcel.from[0] ?? '', { size: 11 });
  if (!tear) return art;
  const top = h - 190;
  art.line(0, top, w, top, { dash: [3, 3] }).rect(0.5, top + 14, w - 1, 170, { line: 1 });
  art.line(w * 0.35, top + 14, w * 0.35, top + 184).text(10, top + 32, words.bill[0], { size: 11, bold: true });
  art.lines(10, top + 50, parcel.from, { size: 8, fit: w * 0.33 });
  art.lines(w * 0.4, top + 32, parcel.to, { size: 9, fit: w * 0.55 });
  art.code('itf', `${parcel.routing}6`, w * 0.4, top + 120, w * 0.5, 40);
  return art.text(w * 0.4, top + 174, `${parcel.routing}6 >`, { size: 9, family: 'mono' });
}

/** Tags for things on a shelf, in round-cornered nothing: no frames, a code and a price each. */
export function priceTags(seed: number, words: Words, spot: Spot, columns: number, rows: number): Art {
  const { width: w, height: h } = spot;
  const dice = new Dice(seed);
  const art = start(spot);
  for (let k = 0; k < columns * rows; k++) {
    const [x, y] = [((k % columns) * w) / columns, (Math.floor(k / columns) * h) / rows];
    art.text(x + 4, y + 14, dice.of(words.goods), { size: 9, fit: w / columns - 12 });
    art.text(x + 4, y + 36, `${dice.between(3, 80)}.${dice.digits(2)}`, { size: 18, bold: true });
    art.code('code128', `A${dice.digits(7)}`, x + 4, y + 42, w / columns - 24, h / rows - 56);
  }
  return art.text(0, h + 8, words.marks[0], { size: 7 });
}

/** A form for what comes back: reasons to tick, and where to. No code. */
export function returnForm(parcel: Parcel, words: Words, spot: Spot): Art {
  const { width: w } = spot;
  const art = start(spot).text(0, 20, words.back, { size: 18, bold: true }).text(0, 36, `${words.slip[1]} ${parcel.order}`, { size: 10 });
  let y = 60;
  for (const [, what] of parcel.goods) {
    art
      .rect(0, y - 9, 10, 10)
      .text(18, y, what, { size: 10 })
      .line(w * 0.5, y + 2, w, y + 2, { line: 0.5 });
    y += 22;
  }
  y = art.lines(0, y + 20, parcel.from, { size: 11 });
  art.paragraph(0, y + 14, w, `${words.slip[5]} ${parcel.mark}.`, { size: 9 });
  return art;
}
