import type { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import { masthead, paper } from './fourth-papers.js';
import type { Sent } from './fourth-words.js';

const GREY = '#555555';

/** A voucher with a code to type or to scan; on the paper of a label it fills the page. */
export function coupon({ parcel, words }: Sent, spot: Spot, code: 'qr' | 'code128' | 'none', framed = true): Art {
  const { width: w, height: h } = spot;
  const [title, text] = words.advert;
  const art = paper(spot);
  if (framed) art.rect(1, 1, w - 2, h - 2, { line: 1.4, dash: [6, 4] });
  art.text(w / 2, h * 0.2, title, { size: 22, bold: true, anchor: 'middle', family: 'serif', fit: w - 28 });
  art.paragraph(w * 0.12, h * 0.2 + 28, w * 0.76, text, { size: 10.5, leading: 14 });
  art.rect(w * 0.22, h * 0.46, w * 0.56, 34, { line: 1 }).text(w / 2, h * 0.46 + 23, `TWIST-${parcel.routing.slice(0, 4)}`, {
    size: 18,
    bold: true,
    anchor: 'middle',
    family: 'mono',
    fit: w * 0.5,
  });
  if (code === 'qr') art.code('qr', `https://shop.example/gift/${parcel.routing}`, w / 2 - 42, h * 0.6, 84, 84);
  if (code === 'code128') art.code('code128', `GIFT${parcel.routing}`, w * 0.15, h * 0.62, w * 0.7, 48);
  art.text(w / 2, h - 24, parcel.from[0] ?? '', { size: 10, anchor: 'middle', bold: true, fit: w - 24 });
  return art.text(w / 2, h - 9, parcel.mark, { size: 7, anchor: 'middle', fill: GREY, fit: w - 20 });
}

/** What a day's parcels are handed over with: a table of numbers and towns, one code for the whole list. */
export function manifest(parcels: readonly Sent[], spot: Spot, coded: boolean): Art {
  const [first] = parcels;
  if (!first) throw new Error('A list of nothing');
  const { words, parcel, day } = first;
  const { width: w } = spot;
  const art = paper(spot).text(0, 18, words.lists[1], { size: 18, bold: true, fit: w * 0.55 });
  art.lines(0, 36, [`${words.label.date}: ${day}`, `${words.lists[3]}: ${parcels.length}`, ...parcel.from], { size: 9, leading: 12 });
  if (coded)
    art.code('code128', `MF${parcel.sscc}`, w - 210, 8, 200, 44).text(w - 110, 63, `MF ${parcel.sscc}`, { size: 8.5, anchor: 'middle' });
  const top = 108;
  art.line(0, top, w, top, { line: 1.2 });
  for (const [k, caption] of ['#', words.label.tracking, words.label.to, words.label.weight].entries())
    art.text([0, 24, w * 0.4, w - 60][k] ?? 0, top + 12, caption, { size: 8.5, bold: true });
  art.line(0, top + 17, w, top + 17, { line: 0.6 });
  for (const [k, each] of parcels.entries()) {
    const y = top + 30 + k * 17;
    art.text(0, y, String(k + 1), { size: 9 }).text(24, y, each.parcel.tracking, { size: 9, family: 'mono' });
    art
      .text(w * 0.4, y, `${each.parcel.to[0] ?? ''}, ${each.parcel.to.at(-1) ?? ''}`, { size: 9, fit: w * 0.42 })
      .text(w - 60, y, each.parcel.weight, { size: 9 });
    art.line(0, y + 5, w, y + 5, { line: 0.3, stroke: '#999999' });
  }
  const end = top + 50 + parcels.length * 17;
  art.line(0, end + 30, 180, end + 30, { line: 0.6 }).text(0, end + 41, words.customs[5], { size: 8 });
  return art.text(0, end + 62, parcel.mark, { size: 7, fill: GREY, fit: w });
}

/** What to fetch from the shelves, with boxes to tick. */
export function picking(orders: readonly Sent[], spot: Spot): Art {
  const [first] = orders;
  if (!first) throw new Error('A list of nothing');
  const { words, parcel, day } = first;
  const { width: w } = spot;
  const art = paper(spot).text(0, 18, words.lists[0], { size: 18, bold: true }).text(w, 16, day, { size: 10, anchor: 'end' });
  let y = 44;
  art.rect(0, y - 12, w, 17, { fill: '#e6e6e6' });
  for (const [k, caption] of ['', words.lists[2], words.slip[1], words.slip[2], words.slip[3]].entries())
    art.text([0, 24, 84, 124, w - 84][k] ?? 0, y, caption, { size: 8.5, bold: true });
  for (const [row, order] of orders.entries()) {
    for (const [count, what] of order.parcel.goods) {
      y += 19;
      art
        .rect(2, y - 9, 10, 10, { line: 0.8 })
        .text(24, y, `${String.fromCharCode(65 + (row % 6))}${row + 1}-${count}`, { size: 9, family: 'mono' });
      art.text(90, y, String(count), { size: 10, bold: true }).text(124, y, what, { size: 9.5, fit: w - 220 });
      art.text(w - 84, y, order.parcel.order, { size: 9 }).line(0, y + 6, w, y + 6, { line: 0.3, stroke: '#999999' });
    }
  }
  return art.text(0, y + 26, parcel.mark, { size: 7, fill: GREY, fit: w });
}

/** A code to show at a counter, where the label is printed: no label itself. */
export function atCounter(s: Sent, spot: Spot): Art {
  const { parcel, words } = s;
  const { width: w } = spot;
  const art = paper(spot).put(masthead(s, w), 0, 0);
  art.text(0, 80, words.how[0], { size: 16, bold: true, fit: w }).paragraph(0, 100, w, words.how.at(-1) ?? '', { size: 10, leading: 13 });
  art.code('qr', `DROP:${parcel.tracking}:${parcel.routing}`, w / 2 - 70, 150, 140, 140);
  art.text(w / 2, 316, parcel.tracking, { size: 12, anchor: 'middle', bold: true });
  art.lines(0, 350, [words.label.to, ...parcel.to], { size: 9.5, leading: 12 });
  art.paragraph(0, 420, w, words.small, { size: 7, leading: 9, fill: GREY });
  return art.text(0, 480, parcel.mark, { size: 7, fill: GREY, fit: w });
}

/** The confirmation of an order as an e-mail prints it. */
export function confirmation(s: Sent, spot: Spot): Art {
  const { parcel, words, day, phone } = s;
  const { width: w } = spot;
  const art = paper(spot).put(masthead(s, w), 0, 0).line(0, 48, w, 48, { line: 0.6 });
  art.text(0, 74, `${words.slip[3]} ${parcel.order}`, { size: 15, bold: true }).text(w, 74, day, { size: 10, anchor: 'end' });
  let y = 100;
  for (const [count, what, price] of parcel.goods) {
    art
      .rect(0, y - 6, 40, 40, { fill: '#d8dcd9' })
      .text(52, y + 10, what, { size: 11, bold: true })
      .text(52, y + 25, `${count} x ${price}`, { size: 10 });
    y += 54;
  }
  art.text(0, y + 8, words.slip[4], { size: 10, bold: true });
  y = art.lines(0, y + 24, [...parcel.to, phone], { size: 10, leading: 13 });
  art.paragraph(0, y + 14, w, words.slip[5], { size: 10 });
  return art.text(0, y + 50, parcel.mark, { size: 7, fill: GREY, fit: w });
}
