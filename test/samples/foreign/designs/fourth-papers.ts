import { Art } from '../kit/art.js';
import { textWidth } from '../kit/text-width.js';
import type { Spot } from './beside.js';
import { spaced } from './content.js';
import type { Sent } from './fourth-words.js';

export const paper = ({ width, height, family }: Spot): Art => new Art(width, height, family);
const GREY = '#555555';

/** Instructions: a title, numbered paragraphs, small print and the mark. */
export function instructions({ parcel, words }: Sent, spot: Spot, small = true): Art {
  const [title, ...steps] = words.how;
  const art = paper(spot).text(0, 13, title, { size: 13, bold: true, fit: spot.width });
  let y = 32;
  for (const [k, step] of steps.entries()) {
    art.text(0, y, `${k + 1}.`, { size: 9.5, bold: true });
    y = art.paragraph(18, y, spot.width - 18, step, { size: 9.5, leading: 12 }) + 4;
  }
  if (small) y = art.paragraph(0, y + 6, spot.width, words.small, { size: 7, leading: 8.6, fill: GREY });
  return art.text(0, y + 8, parcel.mark, { size: 7, fill: GREY, fit: spot.width });
}

/** A dashed line over the page, its words in the middle with the line left out behind them. */
export function foldAcross(width: number, words: string, size = 7.5): Art {
  const art = new Art(width, 12);
  const half = words === '' ? 0 : textWidth(words, size) / 2 + 8;
  art.line(0, 6, width / 2 - half, 6, { line: 0.7, dash: [4, 3] }).line(width / 2 + half, 6, width, 6, { line: 0.7, dash: [4, 3] });
  return art.text(width / 2, 9, words, { size, anchor: 'middle' });
}

/** What the sender keeps: number, day, fee, addresses. No code unless asked. */
export function record(s: Sent, spot: Spot, number: string, withCode = false): Art {
  const { parcel, words, day } = s;
  const [title, posted, cost, line] = words.receipt;
  const { width: w } = spot;
  const art = paper(spot).text(0, 14, title, { size: 14, bold: true, fit: w });
  art.line(0, 21, w, 21, { line: 1 });
  const rows = [
    [words.label.tracking, number],
    [posted, day],
    [words.label.weight, parcel.weight],
    [words.label.service, parcel.depot],
    [cost, `${words.currency} ${(Number(parcel.routing.slice(0, 2)) / 9 + 4).toFixed(2)}`],
    [words.label.ref, parcel.order],
  ] as const;
  for (const [k, [caption, value]] of rows.entries())
    art
      .text(0, 36 + k * 14, caption, { size: 9, fill: GREY, fit: w * 0.42 })
      .text(w * 0.45, 36 + k * 14, value, { size: 9, bold: true, fit: w * 0.55 });
  let y = 36 + rows.length * 14 + 8;
  art.text(0, y, words.label.from, { size: 8, bold: true }).text(w / 2, y, words.label.to, { size: 8, bold: true });
  art.lines(0, y + 12, parcel.from, { size: 8.5, leading: 10.5, fit: w / 2 - 10 });
  y = Math.max(y + 48, art.lines(w / 2, y + 12, parcel.to, { size: 8.5, leading: 10.5, fit: w / 2 - 4 }) + 4);
  if (withCode) {
    art.code('code128', number.replaceAll(' ', ''), 14, y, w * 0.7, 32);
    y += 44;
  }
  art.paragraph(0, y + 8, w, line, { size: 8.5 });
  return art.text(0, y + 24, parcel.mark, { size: 7, fill: GREY, fit: w });
}

/** Name of a shop with a round mark, its place in one line. */
export function masthead({ parcel, phone }: Sent, width: number): Art {
  const art = new Art(width, 44).rect(0, 2, 36, 36, { fill: '#3d4f46', radius: 8 });
  art.text(18, 28, (parcel.from[0] ?? 'S').charAt(0), { size: 24, bold: true, fill: '#ffffff', anchor: 'middle', family: 'serif' });
  art.text(46, 19, parcel.from[0] ?? '', { size: 16, bold: true, family: 'serif', fit: width - 50 });
  return art.text(46, 34, `${parcel.from.slice(1).join(', ')}  |  ${phone}  |  shop.example`, { size: 8, fill: GREY, fit: width - 50 });
}

function table(art: Art, { parcel, words }: Sent, y: number, prices: boolean): number {
  const { width: w } = art;
  const [, quantity, item] = words.slip;
  art
    .rect(0, y, w, 17, { fill: '#e6e6e6' })
    .text(5, y + 12, quantity, { size: 8.5, bold: true })
    .text(50, y + 12, item, { size: 8.5, bold: true });
  if (prices) art.text(w - 5, y + 12, words.currency, { size: 8.5, bold: true, anchor: 'end' });
  let at = y + 17;
  for (const [count, what, price] of parcel.goods) {
    art.text(14, at + 13, String(count), { size: 9 }).text(50, at + 13, what, { size: 9, fit: w - (prices ? 115 : 60) });
    if (prices) art.text(w - 5, at + 13, (count * Number(price)).toFixed(2), { size: 9, anchor: 'end' });
    at += 19;
    art.line(0, at, w, at, { line: 0.4, stroke: '#999999' });
  }
  return at;
}

export function goodsSlip(s: Sent, spot: Spot, head = true): Art {
  const { parcel, words, day } = s;
  const { width: w } = spot;
  const [title, , , order, shipTo, thanks] = words.slip;
  const art = paper(spot);
  if (head) art.put(masthead(s, w), 0, 0);
  const y = head ? 66 : 16;
  art.text(0, y, title, { size: 17, bold: true, fit: w * 0.6 });
  art
    .text(0, y + 18, `${order}: ${parcel.order}`, { size: 9, fit: w * 0.5 })
    .text(0, y + 31, `${words.label.date}: ${day}`, { size: 9, fit: w * 0.48 });
  art.text(w * 0.5, y + 18, shipTo, { size: 8.5, bold: true }).lines(w * 0.5, y + 31, parcel.to, { size: 9, leading: 11.5, fit: w * 0.5 });
  const end = table(art, s, y + 82, false);
  art.paragraph(0, end + 18, w, thanks, { size: 9 });
  return art.text(0, end + 44, parcel.mark, { size: 7, fill: GREY, fit: w });
}

export function bill(s: Sent, spot: Spot, code: 'none' | 'qr' | 'code128' = 'none'): Art {
  const { parcel, words, day } = s;
  const { width: w } = spot;
  const [title, number, net, tax, sum, terms] = words.bill;
  const art = paper(spot).put(masthead(s, w), 0, 0);
  art.lines(0, 84, parcel.to, { size: 10, leading: 13, fit: w * 0.5 });
  art.text(w, 84, title, { size: 20, bold: true, anchor: 'end', fit: w * 0.45 });
  art.lines(w, 102, [`${number} 2020-${parcel.routing.slice(0, 5)}`, `${words.label.date} ${day}`, `${words.slip[3]} ${parcel.order}`], {
    size: 9,
    leading: 12,
    anchor: 'end',
    fit: w * 0.45,
  });
  let y = table(art, s, 158, true);
  const total = parcel.goods.reduce((all, [count, , price]) => all + count * Number(price), 0);
  for (const [k, [caption, value]] of [
    [net, total],
    [tax, total * 0.2],
    [sum, total * 1.2],
  ].entries()) {
    y += 16;
    art
      .text(w - 90, y, String(caption), { size: 9.5, bold: k === 2, anchor: 'end' })
      .text(w - 5, y, Number(value).toFixed(2), { size: 9.5, bold: k === 2, anchor: 'end' });
  }
  art.paragraph(0, y + 30, w * 0.6, terms, { size: 9 });
  if (code === 'qr') art.code('qr', `https://shop.example/pay/${parcel.order}`, 12, y + 50, 72, 72);
  if (code === 'code128')
    art.code('code128', parcel.order.replace('-', ''), 14, y + 50, 150, 36).text(89, y + 97, parcel.order, { size: 8, anchor: 'middle' });
  return art.text(0, y + 150, parcel.mark, { size: 7, fill: GREY, fit: w });
}

/** A declaration for customs in ruled cells. */
export function declaration(s: Sent, spot: Spot, coded = true): Art {
  const { parcel, words, day } = s;
  const { width: w, height: h } = spot;
  const [title, contents, weight, value, origin, sign] = words.customs;
  const art = paper(spot).rect(0.5, 0.5, w - 1, h - 1, { line: 1 });
  art.text(8, 17, title, { size: 12, bold: true, fit: w * 0.55 }).text(8, 30, parcel.s10, { size: 9, family: 'mono' });
  if (coded) art.code('code128', parcel.s10, w - Math.min(190, w * 0.42) - 14, 8, Math.min(190, w * 0.42), 28);
  const top = 42;
  art.line(0.5, top, w - 0.5, top, { line: 0.7 }).line(w / 2, top, w / 2, top + 64, { line: 0.7 });
  art
    .text(6, top + 10, words.label.from, { size: 6.5 })
    .lines(6, top + 22, [...parcel.from, s.phone], { size: 8.5, leading: 10.5, fit: w / 2 - 12 });
  art
    .text(w / 2 + 6, top + 10, words.label.to, { size: 6.5 })
    .lines(w / 2 + 6, top + 22, parcel.to, { size: 8.5, leading: 10.5, fit: w / 2 - 12 });
  const at = [0.5, w * 0.5, w * 0.67, w * 0.83];
  let y = top + 64;
  art.line(0.5, y, w - 0.5, y, { line: 0.7 });
  for (const [k, caption] of [contents, weight, `${value} (${words.currency})`, origin].entries())
    art.text((at[k] ?? 0) + 5, y + 10, caption, { size: 6.5, fit: (k === 0 ? w * 0.5 : w * 0.16) - 8 });
  y += 15;
  art.line(0.5, y, w - 0.5, y, { line: 0.7 });
  const rows = Math.min(4, parcel.goods.length);
  for (const [count, what, price] of parcel.goods.slice(0, rows)) {
    art.text(6, y + 12, `${count} x ${what}`, { size: 8.5, fit: w * 0.5 - 10 }).text(w * 0.5 + 5, y + 12, `0.${count}5 kg`, { size: 8.5 });
    art.text(w * 0.67 + 5, y + 12, (count * Number(price)).toFixed(2), { size: 8.5 }).text(w * 0.83 + 5, y + 12, 'XX', { size: 8.5 });
    y += 17;
    art.line(0.5, y, w - 0.5, y, { line: 0.4 });
  }
  for (const x of at.slice(1)) art.line(x, top + 64, x, y, { line: 0.7 });
  for (const [k, caption] of ['Gift', 'Documents', 'Sale of goods', 'Other'].entries()) {
    art
      .rect(8 + k * (w / 4.4), y + 8, 8, 8, { line: 0.7, ...(k === 2 ? { fill: '#000000' } : {}) })
      .text(20 + k * (w / 4.4), y + 15, caption, { size: 7.5 });
  }
  art.paragraph(6, y + 30, w - 12, words.small, { size: 6, leading: 7.4, fill: GREY });
  art.line(8, h - 24, w * 0.55, h - 24, { line: 0.5 }).text(8, h - 15, `${sign}   ${day}`, { size: 6.5, fit: w * 0.55 });
  return art.text(w - 8, h - 6, parcel.mark, { size: 7, bold: true, anchor: 'end', fit: w - 16 });
}

/** The part of a return that goes into the box: number, reasons to tick. */
export function returnSheet(s: Sent, spot: Spot, coded = true): Art {
  const { parcel, words } = s;
  const { width: w } = spot;
  const [title, why, ...reasons] = words.back;
  const art = paper(spot).text(0, 12, `${title}: ${parcel.order}`, { size: 11, bold: true, fit: coded ? w - 170 : w });
  if (coded) art.code('code128', `R${parcel.order.replace('-', '')}`, w - 150, 0, 140, 28);
  art.text(0, 34, why, { size: 9.5 });
  for (const [k, reason] of reasons.entries()) art.rect(0, 44 + k * 17, 9, 9, { line: 0.8 }).text(16, 52 + k * 17, reason, { size: 9.5 });
  for (const [k, [count, what]] of parcel.goods.slice(0, 4).entries())
    art.text(w * 0.5, 52 + k * 17, `${count} x ${what}`, { size: 9.5, fit: w * 0.48 });
  return art.text(0, 52 + reasons.length * 17 + 8, parcel.mark, { size: 7, fill: GREY, fit: w });
}

/** The tracking number as each design prints it beside its name. */
export const trackingText = ({ parcel }: Sent): string => `TRK ${spaced(parcel.tracking)}`;
