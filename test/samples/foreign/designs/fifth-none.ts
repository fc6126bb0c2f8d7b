import { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import { banner } from './fifth-papers.js';
import type { Sent } from './fourth-words.js';

const GREY = '#444444';
const sheet = ({ width, height, family }: Spot): Art => new Art(width, height, family);

/** A voucher or gift card: its worth in large figures, a code of some kind or none, with or without a line around it. */
export function voucher({ parcel, words }: Sent, spot: Spot, code: 'qr' | 'code128' | 'datamatrix' | 'none', framed = false): Art {
  const { width: w, height: h } = spot;
  const [title, text] = words.advert;
  const art = sheet(spot);
  if (framed) art.rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5, radius: 10 });
  art.text(w / 2, h * 0.14, title, { size: 20, bold: true, family: 'serif', anchor: 'middle', fit: w - 30 });
  art.text(w / 2, h * 0.34, `${Number(parcel.routing.slice(0, 1)) * 5 + 10} ${words.currency}`, {
    size: 44,
    bold: true,
    anchor: 'middle',
    fit: w - 40,
  });
  art.paragraph(w * 0.12, h * 0.44, w * 0.76, text, { size: 10, leading: 13 });
  if (code === 'qr' || code === 'datamatrix') art.code(code, `https://shop.example/v/${parcel.order}`, w / 2 - 38, h * 0.58, 76, 76);
  if (code === 'code128')
    art
      .code('code128', `GV${parcel.routing}`, w * 0.14, h * 0.6, w * 0.72, 50)
      .text(w / 2, h * 0.6 + 64, `GV${parcel.routing}`, { size: 9, anchor: 'middle' });
  art.text(w / 2, h - 26, parcel.from[0] ?? '', { size: 11, bold: true, anchor: 'middle', fit: w - 30 });
  return art.text(w / 2, h - 11, parcel.mark, { size: 7, fill: GREY, anchor: 'middle', fit: w - 26 });
}

/** A ticket for an event: day and place in large letters, who comes, a square code or a long one at the side. */
export function ticket(s: Sent, spot: Spot, code: 'qr' | 'aztec' | 'pdf417' | 'code128'): Art {
  const { parcel, words, day } = s;
  const { width: w, height: h } = spot;
  const art = sheet(spot).text(0, 24, parcel.from[0] ?? '', { size: 20, bold: true, fit: w });
  art.line(0, 34, w, 34, { line: 1.5 }).text(0, 62, `${day}  19:30`, { size: 24, bold: true, fit: w });
  art.lines(0, 84, [parcel.from.slice(1).join(', '), `${words.label.to}: ${parcel.to[0] ?? ''}`, `${words.label.ref} ${parcel.order}`], {
    size: 10,
    leading: 14,
    fit: w,
  });
  if (code === 'pdf417') art.code('pdf417', `EV;${parcel.order};${parcel.routing}`, 0, h * 0.42, w, 64);
  else if (code === 'code128')
    art
      .code('code128', `EV${parcel.tracking}`, 22, h * 0.42, w - 44, 64)
      .text(w / 2, h * 0.42 + 78, `EV${parcel.tracking}`, { size: 10, anchor: 'middle' });
  else art.code(code, `EV-${parcel.order}-${parcel.routing}`, w / 2 - 50, h * 0.42, 100, 100);
  art.text(0, h - 40, `${s.phone}  tickets@shop.example`, { size: 8.5, fill: GREY });
  return art.text(0, h - 8, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}

/** What a till prints: goods right-aligned, sum, card, a code for the return or none. */
export function till(s: Sent, spot: Spot, coded: boolean): Art {
  const { parcel, words, day } = s;
  const { width: w, height: h } = spot;
  const art = sheet(spot).text(w / 2, 20, (parcel.from[0] ?? '').toUpperCase(), { size: 13, bold: true, anchor: 'middle', fit: w });
  art.lines(w / 2, 36, [...parcel.from.slice(1), s.phone], { size: 9, leading: 11.5, anchor: 'middle', fit: w });
  let y = 88;
  art.text(0, 76, `${day} 14:0${parcel.depot.slice(0, 1)}  #${parcel.order}`, { size: 9, family: 'mono', fit: w });
  for (const [pieces, thing, price] of parcel.goods) {
    y += 14;
    art
      .text(0, y, `${pieces} ${thing}`, { size: 9.5, family: 'mono', fit: w - 70 })
      .text(w, y, (pieces * Number(price)).toFixed(2), { size: 9.5, family: 'mono', anchor: 'end' });
  }
  const sum = parcel.goods.reduce((all, [pieces, , price]) => all + pieces * Number(price), 0);
  art
    .line(0, y + 8, w, y + 8, { line: 0.6, dash: [2, 2] })
    .text(0, y + 26, words.bill[4], { size: 13, bold: true })
    .text(w, y + 26, `${sum.toFixed(2)} ${words.currency}`, { size: 13, bold: true, anchor: 'end' });
  art.paragraph(0, y + 46, w, words.slip[5], { size: 9.5 });
  if (coded) art.code('code128', parcel.order, 30, y + 66, w - 60, 40);
  return art.text(w / 2, h - 6, parcel.mark, { size: 7.5, anchor: 'middle', fit: w });
}

/** A day's parcels handed over: rows of numbers, one code for the list or none. */
export function handOver(parcels: readonly Sent[], spot: Spot, coded: boolean): Art {
  const [first] = parcels;
  if (!first) throw new Error('An empty list');
  const { words, parcel, day } = first;
  const { width: w } = spot;
  const art = sheet(spot)
    .put(banner(first, w), 0, 0)
    .text(0, 70, words.lists[1], { size: 16, bold: true, fit: w * 0.5 });
  art.text(0, 86, `${day}   ${words.lists[3]}: ${parcels.length}`, { size: 9.5 });
  if (coded) art.code('code128', `HO${parcel.tracking}`, w - 190, 54, 180, 36);
  let y = 112;
  for (const [k, each] of parcels.entries()) {
    if (k % 2 === 0) art.rect(0, y - 12, w, 17, { fill: '#f0f0f0' });
    art.text(4, y, String(k + 1), { size: 9 }).text(28, y, each.parcel.tracking, { size: 9, family: 'mono' });
    art
      .text(w * 0.34, y, each.parcel.to[0] ?? '', { size: 9, fit: w * 0.3 })
      .text(w * 0.66, y, each.parcel.to.at(-1) ?? '', { size: 9, fit: w * 0.33 });
    y += 17;
  }
  return art.text(0, y + 20, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}

/** What to fetch and pack, a box before each thing. */
export function toPack(orders: readonly Sent[], spot: Spot): Art {
  const [first] = orders;
  if (!first) throw new Error('An empty list');
  const { words, parcel, day } = first;
  const { width: w } = spot;
  const art = sheet(spot)
    .text(0, 18, words.lists[0], { size: 17, bold: true, fit: w * 0.7 })
    .text(w, 16, day, { size: 10, anchor: 'end' });
  let y = 40;
  for (const order of orders) {
    art
      .text(0, y, `${words.slip[3]} ${order.parcel.order}`, { size: 10, bold: true })
      .text(w, y, order.parcel.to[0] ?? '', { size: 9, anchor: 'end' });
    for (const [pieces, thing] of order.parcel.goods) {
      y += 15;
      art
        .rect(2, y - 8, 8, 8, { line: 0.7 })
        .text(18, y, `${pieces} x ${thing}`, { size: 9.5 })
        .text(w, y, `${words.lists[2]} ${pieces}${thing.slice(0, 1)}`, { size: 9, anchor: 'end' });
    }
    y += 22;
  }
  return art.text(0, y + 4, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}

/** A page of a manual with a small drawing of how a label is laid out: grey bars for words, no code that can be read. */
export function manual({ parcel, words }: Sent, spot: Spot): Art {
  const { width: w } = spot;
  const [title, ...steps] = words.how;
  const art = sheet(spot).text(0, 20, title, { size: 18, bold: true, fit: w });
  let y = 44;
  for (const step of steps) y = art.paragraph(0, y, w * 0.52, step, { size: 10.5, leading: 14 }) + 8;
  const [x, top, fw, fh] = [w * 0.62, 40, w * 0.34, w * 0.5];
  art
    .rect(x, top, fw, fh, { line: 1 })
    .line(x, top + fh * 0.2, x + fw, top + fh * 0.2)
    .line(x, top + fh * 0.55, x + fw, top + fh * 0.55);
  for (const k of [0, 1, 2]) art.rect(x + 10, top + fh * 0.28 + k * 16, fw * (0.7 - k * 0.12), 7, { fill: '#bbbbbb' });
  for (const k of Array.from({ length: 22 }, (_, i) => i))
    art.rect(x + 14 + k * ((fw - 28) / 22), top + fh * 0.62, k % 3 === 0 ? 3 : 1.5, fh * 0.24, { fill: '#888888' });
  for (const [what, down] of [
    ['A', 0.12],
    ['B', 0.4],
    ['C', 0.75],
  ] as const)
    art.text(x + fw + 8, top + fh * down, what, { size: 12, bold: true });
  y = Math.max(y, top + fh + 30);
  y = art.paragraph(0, y, w, words.small, { size: 9, leading: 12 }) + 10;
  return art.text(0, y, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}

/** Terms in two columns of small print. */
export function terms({ parcel, words }: Sent, spot: Spot): Art {
  const { width: w, height: h } = spot;
  const art = sheet(spot).text(0, 18, words.bill[5], { size: 13, bold: true, fit: w });
  const half = w / 2 - 12;
  for (const column of [0, 1]) {
    let y = 40;
    for (let k = 1; y < h - 60; k++)
      y = art.paragraph(column * (w / 2 + 6), y, half, `${column * 9 + k}. ${words.small}`, { size: 8, leading: 10 }) + 6;
  }
  return art.text(0, h - 8, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}
