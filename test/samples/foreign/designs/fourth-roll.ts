import type { Art } from '../kit/art.js';
import type { Spot } from './beside.js';
import { paper } from './fourth-papers.js';
import type { Sent } from './fourth-words.js';

const GREY = '#555555';

/** What a till prints on label paper: shop, goods with prices, a sum, thanks. */
export function tillReceipt({ parcel, words, day }: Sent, spot: Spot, coded: boolean): Art {
  const { width: w } = spot;
  const [, , net, tax, sum, terms] = words.bill;
  const art = paper(spot).text(w / 2, 16, parcel.from[0] ?? '', { size: 14, bold: true, anchor: 'middle', fit: w });
  art.lines(w / 2, 31, [parcel.from.slice(1).join(', '), `${day}   ${parcel.order}`], {
    size: 8.5,
    leading: 11.5,
    anchor: 'middle',
    fit: w,
  });
  let y = 66;
  art.line(0, 52, w, 52, { line: 0.6, dash: [3, 2] });
  for (const [count, what, price] of parcel.goods) {
    art.text(0, y, `${count} x ${what}`, { size: 9.5, family: 'mono', fit: w - 64 });
    art.text(w, y, (count * Number(price)).toFixed(2), { size: 9.5, family: 'mono', anchor: 'end' });
    y += 15;
  }
  const total = parcel.goods.reduce((all, [count, , price]) => all + count * Number(price), 0);
  art.line(0, y - 6, w, y - 6, { line: 0.6, dash: [3, 2] });
  for (const [caption, value] of [
    [net, total],
    [tax, total * 0.2],
    [sum, total * 1.2],
  ] as const) {
    y += 8;
    art
      .text(0, y, caption, { size: 9.5, bold: caption === sum })
      .text(w, y, `${words.currency} ${value.toFixed(2)}`, { size: 9.5, bold: caption === sum, anchor: 'end' });
    y += 7;
  }
  art.paragraph(0, y + 20, w, terms, { size: 9 });
  if (coded) art.code('code128', parcel.order.replace('-', ''), 30, y + 44, w - 60, 44);
  return art.text(w / 2, y + 116, parcel.mark, { size: 7, anchor: 'middle', fill: GREY, fit: w });
}

/** A card that goes into the box: thanks, a few words, a code for the shop's page. */
export function thanksCard({ parcel, words }: Sent, spot: Spot, coded: boolean): Art {
  const { width: w, height: h } = spot;
  const art = paper(spot).rect(1, 1, w - 2, h - 2, { line: 1.2, radius: 12 });
  art.paragraph(24, h * 0.16, w - 48, words.slip[5], { size: 19, bold: true, family: 'serif', leading: 24 });
  art.paragraph(24, h * 0.42, w - 48, words.advert[1], { size: 10.5, leading: 14 });
  if (coded) art.code('qr', `https://shop.example/hello/${parcel.order}`, w / 2 - 45, h * 0.58, 90, 90);
  art.text(w / 2, h - 30, parcel.from[0] ?? '', { size: 12, anchor: 'middle', bold: true, fit: w - 40 });
  return art.text(w / 2, h - 12, parcel.mark, { size: 7, anchor: 'middle', fill: GREY, fit: w - 30 });
}

/** One order to be fetched from the shelves, on label paper: number and code on top, boxes to tick. */
export function pickTicket({ parcel, words, day }: Sent, spot: Spot): Art {
  const { width: w } = spot;
  const art = paper(spot)
    .text(0, 20, words.lists[0], { size: 18, bold: true, fit: w * 0.7 })
    .text(w, 18, day, { size: 9, anchor: 'end' });
  art
    .code('code128', parcel.order.replace('-', ''), 24, 34, w - 48, 46)
    .text(w / 2, 94, parcel.order, { size: 11, bold: true, anchor: 'middle' });
  art.line(0, 104, w, 104, { line: 1 });
  let y = 126;
  for (const [k, [count, what]] of parcel.goods.entries()) {
    art
      .rect(0, y - 12, 14, 14, { line: 1 })
      .text(24, y, `${count} x`, { size: 12, bold: true })
      .text(56, y, what, { size: 11, fit: w - 60 });
    art.text(56, y + 13, `${words.lists[2]} ${String.fromCharCode(65 + k)}-${count}${k + 1}`, { size: 9, fill: GREY });
    y += 36;
  }
  return art
    .text(0, y + 10, `${words.label.to} ${parcel.to[0] ?? ''}`, { size: 9.5, fit: w })
    .text(0, y + 30, parcel.mark, { size: 7, fill: GREY, fit: w });
}

/** How to send goods back, on label paper: no label itself. */
export function backHelp({ parcel, words }: Sent, spot: Spot, coded: boolean): Art {
  const { width: w } = spot;
  const [title, , ...reasons] = words.back;
  const art = paper(spot).text(0, 20, title, { size: 16, bold: true, fit: w });
  let y = 42;
  for (const step of words.how.slice(2, 5)) y = art.paragraph(0, y, w, step, { size: 9.5, leading: 12.5 }) + 6;
  for (const reason of reasons) {
    art.rect(0, y - 3, 9, 9, { line: 0.8 }).text(16, y + 5, reason, { size: 9.5 });
    y += 17;
  }
  if (coded) art.code('qr', `https://shop.example/back/${parcel.order}`, w / 2 - 40, y + 16, 80, 80);
  return art.text(0, spot.height - 6, parcel.mark, { size: 7, fill: GREY, fit: w });
}
