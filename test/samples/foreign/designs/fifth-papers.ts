import { Art } from '../kit/art.js';
import { textWidth } from '../kit/text-width.js';
import type { Spot } from './beside.js';
import type { Sent } from './fourth-words.js';

const GREY = '#444444';
const sheet = ({ width, height, family }: Spot): Art => new Art(width, height, family);
const priceOf = ({ parcel }: Sent): number => parcel.goods.reduce((sum, [count, , price]) => sum + count * Number(price), 0);

/** A heading and steps with a dot before each; small print after them. */
export function steps({ parcel, words }: Sent, spot: Spot, small = true): Art {
  const [title, ...each] = words.how;
  const art = sheet(spot).text(0, 14, title, { size: 14, bold: true, fit: spot.width });
  let y = 36;
  for (const step of each) {
    art.disc(4, y - 3.5, 2.2);
    y = art.paragraph(14, y, spot.width - 14, step, { size: 10, leading: 13 }) + 5;
  }
  if (small) y = art.paragraph(0, y + 10, spot.width, words.small, { size: 7.5, leading: 9.4, fill: GREY }) + 4;
  return art.text(0, y + 8, parcel.mark, { size: 7.5, fill: GREY, fit: spot.width });
}

/** A line over the page to fold or cut along, words above its left end. */
export function foldLine(width: number, words: string, dashed = true): Art {
  const art = new Art(width, 14).line(0, 12, width, 12, { line: 0.6, stroke: '#333333', ...(dashed ? { dash: [6, 4] } : {}) });
  return words === '' ? art : art.text(0, 8, words, { size: 7.5, fill: GREY });
}
/** The same standing, for pages that are folded the other way. */
export const foldDown = (height: number): Art => new Art(2, height).line(1, 0, 1, height, { line: 0.6, stroke: '#333333', dash: [6, 4] });

/** A shop's name in the middle between two hairlines. */
export function banner({ parcel, phone }: Sent, width: number): Art {
  const art = new Art(width, 46).text(width / 2, 18, parcel.from[0] ?? '', {
    size: 17,
    bold: true,
    family: 'serif',
    anchor: 'middle',
    fit: width,
  });
  const line = `${parcel.from.slice(1).join('  ')}  ${phone}  hello@shop.example`;
  art.text(width / 2, 34, line, { size: 8, fill: GREY, anchor: 'middle', fit: width });
  return art.line(0, 42, width, 42, { line: 0.5 });
}

/** What the sender keeps, two columns of captions over values; its number with or without a code. */
export function stub(s: Sent, spot: Spot, number: string, withCode = false): Art {
  const { parcel, words, day } = s;
  const [title, bought, paid, keep] = words.receipt;
  const { width: w } = spot;
  const art = sheet(spot).text(0, 15, title, { size: 15, bold: true, fit: w });
  const rows = [
    [words.label.tracking, number],
    [bought, day],
    [words.label.to, parcel.to[0] ?? ''],
    ['', parcel.to.at(-1) ?? ''],
    [words.label.weight, parcel.weight],
    [words.label.service, parcel.depot],
    [paid, `${(Number(parcel.routing.slice(0, 2)) / 7 + 3).toFixed(2)} ${words.currency}`],
  ] as const;
  for (const [k, [caption, value]] of rows.entries()) {
    const y = 36 + k * 15;
    art.text(0, y, caption, { size: 8.5, fill: GREY, fit: w * 0.4 }).text(w * 0.42, y, value, { size: 9.5, fit: w * 0.58 });
  }
  let y = 36 + rows.length * 15 + 4;
  if (withCode) {
    art.code('code128', number.replaceAll(' ', ''), 10, y, Math.min(200, w - 20), 30);
    y += 44;
  }
  y = art.paragraph(0, y + 6, w, keep, { size: 8.5, leading: 10.5 }) + 4;
  return art.text(0, y + 8, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}

function goodsTable(art: Art, s: Sent, y: number, prices: boolean): number {
  const { width: w } = art;
  const { words, parcel } = s;
  const [, count, what] = words.slip;
  art.line(0, y, w, y, { line: 1 });
  art.text(0, y + 12, what, { size: 8.5, bold: true }).text(w - (prices ? 80 : 0), y + 12, count, { size: 8.5, bold: true, anchor: 'end' });
  if (prices) art.text(w, y + 12, words.currency, { size: 8.5, bold: true, anchor: 'end' });
  let at = y + 17;
  art.line(0, at, w, at, { line: 0.5 });
  for (const [pieces, thing, price] of parcel.goods) {
    at += 18;
    art
      .text(0, at - 5, thing, { size: 9.5, fit: w - 130 })
      .text(w - (prices ? 80 : 0), at - 5, String(pieces), { size: 9.5, anchor: 'end' });
    if (prices) art.text(w, at - 5, (pieces * Number(price)).toFixed(2), { size: 9.5, anchor: 'end' });
  }
  art.line(0, at + 2, w, at + 2, { line: 0.5 });
  return at + 2;
}

export function packing(s: Sent, spot: Spot, head = true): Art {
  const { parcel, words, day } = s;
  const { width: w } = spot;
  const [title, , , order, to, thanks] = words.slip;
  const art = sheet(spot);
  if (head) art.put(banner(s, w), 0, 0);
  const y = head ? 72 : 18;
  art.text(0, y, title, { size: 16, bold: true, fit: w * 0.6 }).text(w, y, `${order} ${parcel.order}`, { size: 9.5, anchor: 'end' });
  art.text(w, y + 14, day, { size: 9.5, anchor: 'end' });
  art.text(0, y + 20, to, { size: 8, fill: GREY }).lines(0, y + 33, parcel.to, { size: 10, leading: 12.5, fit: w * 0.6 });
  const end = goodsTable(art, s, y + 92, false);
  const after = art.paragraph(0, end + 24, w, thanks, { size: 10, leading: 13 });
  return art.text(0, after + 10, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}

export function invoiceSheet(s: Sent, spot: Spot, code: 'none' | 'qr' | 'code128' = 'none'): Art {
  const { parcel, words, day } = s;
  const { width: w } = spot;
  const [title, number, net, tax, sum, terms] = words.bill;
  const art = sheet(spot).put(banner(s, w), 0, 0);
  art.text(0, 84, title, { size: 22, fit: w * 0.5 });
  art.lines(0, 106, [`${number} ${parcel.routing.slice(0, 6)}`, `${words.slip[3]} ${parcel.order}`, day], { size: 9, leading: 12 });
  art.lines(w * 0.55, 84, parcel.to, { size: 10, leading: 13, fit: w * 0.45 });
  let y = goodsTable(art, s, 152, true) + 4;
  const total = priceOf(s);
  for (const [k, [caption, value]] of [
    [net, total],
    [tax, total * 0.21],
    [sum, total * 1.21],
  ].entries()) {
    y += 15;
    art.text(w - 80, y, String(caption), { size: 9.5, bold: k === 2, anchor: 'end' });
    art.text(w, y, Number(value).toFixed(2), { size: 9.5, bold: k === 2, anchor: 'end' });
  }
  art.text(0, y + 28, terms, { size: 9, fit: w });
  if (code === 'qr') art.code('qr', `https://shop.example/bill/${parcel.order}`, 8, y + 46, 66, 66);
  if (code === 'code128')
    art.code('code128', parcel.order, 10, y + 46, 140, 34).text(80, y + 92, parcel.order, { size: 8, anchor: 'middle' });
  return art.text(0, y + 136, parcel.mark, { size: 7.5, fill: GREY, fit: w });
}

/** A declaration for customs: boxes to tick, a table, a line to sign on; `s10` with or without its code. */
export function customsSheet(s: Sent, spot: Spot, coded = true): Art {
  const { parcel, words, day } = s;
  const { width: w, height: h } = spot;
  const [title, contents, weight, value, origin, sign] = words.customs;
  const art = sheet(spot).rect(0.6, 0.6, w - 1.2, h - 1.2, { line: 1.2 });
  art.text(10, 20, title, { size: 12, bold: true, fit: w - 70 }).text(w - 10, 20, 'CN 22', { size: 13, bold: true, anchor: 'end' });
  art.line(0.6, 28, w - 0.6, 28, { line: 0.8 });
  for (const [k, what] of ['Gift', 'Sample', 'Sale', 'Return'].entries()) {
    art.rect(10 + k * (w / 4.3), 35, 9, 9, { line: 0.8 }).text(23 + k * (w / 4.3), 43, what, { size: 8 });
    if (k === 2) art.line(11 + k * (w / 4.3), 36, 18 + k * (w / 4.3), 43, { line: 1 }).line(18 + k * (w / 4.3), 36, 11 + k * (w / 4.3), 43);
  }
  art.line(0.6, 51, w - 0.6, 51, { line: 0.8 });
  const at = [0.6, w * 0.48, w * 0.66, w * 0.84];
  for (const [k, caption] of [contents, weight, `${value} ${words.currency}`, origin].entries())
    art.text((at[k] ?? 0) + 5, 62, caption, { size: 7, fit: w * (k === 0 ? 0.46 : 0.15) });
  art.line(0.6, 67, w - 0.6, 67, { line: 0.8 });
  let y = 67;
  for (const [pieces, thing, price] of parcel.goods.slice(0, 4)) {
    y += 16;
    art.text(6, y - 4, `${pieces} ${thing}`, { size: 8.5, fit: w * 0.46 }).text((at[1] ?? 0) + 5, y - 4, `0,${pieces}5 kg`, { size: 8.5 });
    art
      .text((at[2] ?? 0) + 5, y - 4, (pieces * Number(price)).toFixed(2), { size: 8.5 })
      .text((at[3] ?? 0) + 5, y - 4, 'ZZ', { size: 8.5 });
  }
  for (const x of at.slice(1)) art.line(x, 51, x, y + 2, { line: 0.8 });
  art.line(0.6, y + 2, w - 0.6, y + 2, { line: 0.8 });
  art.lines(8, y + 16, [`${words.label.from}: ${parcel.from.join(', ')}`, `${words.label.to}: ${parcel.to.join(', ')}`], {
    size: 8,
    leading: 11,
    fit: w - 16,
  });
  if (coded)
    art.code('code128', parcel.s10, 12, y + 36, Math.min(180, w - 40), 30).text(12, y + 77, parcel.s10, { size: 9, family: 'mono' });
  art.paragraph(8, h - 46, w - 16, words.small, { size: 6, leading: 7.2, fill: GREY });
  return art.text(8, h - 8, `${sign} ${day}   ${parcel.mark}`, { size: 7, fit: w - 16 });
}

/** The part of a return that goes into the box: reasons to tick, what was bought. */
export function returnForm(s: Sent, spot: Spot, coded = false): Art {
  const { parcel, words } = s;
  const { width: w } = spot;
  const [, why, ...reasons] = words.back;
  const art = sheet(spot).text(0, 12, why, { size: 11, bold: true, fit: w - 140 });
  if (coded) art.code('code128', `RT${parcel.order}`, w - 130, 0, 120, 28);
  let y = 34;
  for (const reason of reasons) {
    art.rect(0, y - 8, 9, 9, { line: 0.8 }).text(16, y, reason, { size: 10 });
    y += 17;
  }
  art.line(0, y + 14, w, y + 14, { line: 0.4 }).line(0, y + 32, w, y + 32, { line: 0.4 });
  return art.text(0, y + 46, `${words.slip[3]} ${parcel.order}   ${parcel.mark}`, { size: 7.5, fill: GREY, fit: w });
}

/** A heading of a return page, in large letters with one line below. */
export function returnTitle({ words }: Sent, width: number): Art {
  const [title] = words.back;
  const art = new Art(width, 40).text(0, 18, title, { size: Math.min(20, (20 * width) / textWidth(title, 20)), bold: true });
  return art.text(0, 34, words.how[2] ?? '', { size: 9.5, fit: width });
}

/** The number as the sender's part prints it. */
export const numberOf = ({ parcel }: Sent): string => `NO ${parcel.tracking}`;

/** What fits a tab of two inches below a label: the receipt in a few lines, or what is in the parcel. */
export function tab(s: Sent, width: number, kind: 'receipt' | 'contents'): Art {
  const { parcel, words, day } = s;
  const title = kind === 'receipt' ? words.receipt[0] : words.slip[0];
  const art = new Art(width, 124)
    .text(0, 13, title, { size: 12, bold: true, fit: width * 0.66 })
    .text(width, 13, day, { size: 9, anchor: 'end' });
  if (kind === 'receipt') {
    const rows = [
      `${words.label.tracking} ${numberOf(s)}`,
      `${words.label.to} ${parcel.to[0] ?? ''}, ${parcel.to.at(-1) ?? ''}`,
      words.receipt[3],
    ];
    art.lines(0, 34, rows, { size: 9, leading: 15, fit: width });
  } else {
    art
      .text(0, 30, `${words.slip[3]} ${parcel.order}   ${parcel.to[0] ?? ''}`, { size: 9, fit: width })
      .line(0, 36, width, 36, { line: 0.6 });
    for (const [k, [pieces, thing]] of parcel.goods.entries()) art.text(0, 49 + k * 14, `${pieces} x ${thing}`, { size: 9.5, fit: width });
  }
  return art.text(0, 120, parcel.mark, { size: 7.5, fill: GREY, fit: width });
}
