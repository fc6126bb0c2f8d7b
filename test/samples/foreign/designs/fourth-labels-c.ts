import { spaced } from './content.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';

const BLACK = { fill: '#000000' } as const;

/** Frame, the service reversed out at the head, number and code to track by above the addresses, a square code at the foot. */
export const marlowend: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look)
    .rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5 })
    .rect(0.75, 0.75, w - 1.5, v(40), BLACK);
  art.text(12, v(29), 'MARLOWEND', { size: 21, bold: true, fill: '#ffffff', fit: w * 0.5 });
  art.text(w - 12, v(27), serviceOf(s, look), { size: 13, bold: true, fill: '#ffffff', anchor: 'end', fit: w * 0.42 });
  art.text(12, v(56), label.tracking, { size: 7.5 }).text(w - 12, v(56), label.piece, { size: 8.5, bold: true, anchor: 'end' });
  art.code('code128', `MW${parcel.tracking}`, CLEAR, v(64), w - 2 * CLEAR, v(72));
  art.text(w / 2, v(150), `MW ${spaced(parcel.tracking)}`, { size: 12, bold: true, anchor: 'middle' });
  art.line(0.75, v(160), w - 0.75, v(160), { line: 1.5 }).text(12, v(172), label.to, { size: 7.5 });
  art.lines(12, v(189), parcel.to, { size: 14, leading: 17, bold: true, fit: w - 24 });
  art.line(0.75, v(262), w - 0.75, v(262), { line: 0.75 }).text(12, v(274), label.from, { size: 7.5 });
  art.lines(12, v(286), [...parcel.from, s.phone], { size: 8.5, leading: 10.5, fit: w - 130 });
  art
    .line(w - 112, v(262), w - 112, v(390), { line: 0.75 })
    .code('datamatrix', `MW${parcel.tracking}|${parcel.postcode}|${parcel.order}`, w - 102, v(272), 90, v(90));
  art.line(0.75, v(334), w - 112, v(334), { line: 0.75 });
  art.lines(12, v(350), [`${label.depot} ${parcel.depot}`, `${label.weight} ${parcel.weight}`, `${label.date} ${day}`], {
    size: 9,
    leading: 13,
    fit: w - 130,
  });
  art.line(0.75, v(390), w - 0.75, v(390), { line: 0.75 });
  return art.text(w / 2, v(408), parcel.mark, { size: 8.5, bold: true, anchor: 'middle', fit: w - 20 });
};

/** A post's label for abroad with the declaration in its lower half: item number on top, a table of contents, a line to sign on. */
export const postalba: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const [title, contents, weight, value, , sign] = words.customs;
  const art = begin(look).rect(0.5, 0.5, w - 1, h - 1, { line: 1 });
  art.text(10, v(24), 'Postalba', { size: 20, bold: true, family: 'serif' }).text(10, v(36), serviceOf(s, look), { size: 8, fit: w * 0.4 });
  art
    .rect(w - 116, v(8), 106, v(30), { line: 1 })
    .lines(w - 63, v(20), ['PORT PAYE / NO POSTAGE', day], { size: 7.5, leading: 10.5, anchor: 'middle', fit: 98 });
  art.line(0.5, v(46), w - 0.5, v(46), { line: 0.8 });
  art.code('code128', parcel.s10, CLEAR, v(54), w - 2 * CLEAR, v(50));
  art.text(w / 2, v(118), `${parcel.s10.slice(0, 2)} ${spaced(parcel.s10.slice(2, 11), 3)} ${parcel.s10.slice(11)}`, {
    size: 11.5,
    bold: true,
    anchor: 'middle',
  });
  art.line(0.5, v(126), w - 0.5, v(126), { line: 0.8 }).line(w * 0.44, v(126), w * 0.44, v(228), { line: 0.8 });
  art
    .text(7, v(137), label.from, { size: 6.5 })
    .lines(7, v(149), [...parcel.from, s.phone], { size: 8, leading: 10.5, fit: w * 0.44 - 12 });
  art.text(w * 0.44 + 7, v(137), label.to, { size: 6.5 });
  art.lines(w * 0.44 + 7, v(153), [...parcel.to, 'FARAWAYLAND'], { size: 11, leading: 14, bold: true, fit: w * 0.56 - 14 });
  art
    .line(0.5, v(228), w - 0.5, v(228), { line: 0.8 })
    .text(7, v(240), title, { size: 8.5, bold: true, fit: w * 0.66 })
    .text(w - 7, v(240), 'CN 22 XX', { size: 8.5, bold: true, anchor: 'end' });
  const top = v(246);
  art.line(0.5, top, w - 0.5, top, { line: 0.5 });
  const at = [0, w * 0.58, w * 0.79];
  for (const [k, caption] of [contents, weight, `${value} (${words.currency})`].entries())
    art.text((at[k] ?? 0) + 6, top + 9, caption, { size: 6, fit: w * (k === 0 ? 0.56 : 0.2) - 8 });
  let y = top + 13;
  for (const [count, what, price] of parcel.goods.slice(0, 4)) {
    art.line(0.5, y, w - 0.5, y, { line: 0.4 }).text(6, y + 11, `${count} ${what}`, { size: 8, fit: w * 0.55 });
    art
      .text(w * 0.58 + 6, y + 11, `0.${count}2 kg`, { size: 8 })
      .text(w * 0.79 + 6, y + 11, (count * Number(price)).toFixed(2), { size: 8 });
    y += 16;
  }
  for (const x of at.slice(1)) art.line(x, top, x, y, { line: 0.4 });
  art.line(0.5, y, w - 0.5, y, { line: 0.5 }).paragraph(6, v(352), w - 12, words.small, { size: 5.6, leading: 7 });
  art.line(8, v(394), w * 0.6, v(394), { line: 0.5 }).text(8, v(401), `${sign}  ${day}`, { size: 5.8, fit: w * 0.6 });
  return art.text(w / 2, v(414), parcel.mark, { size: 8, bold: true, anchor: 'middle', fit: w - 16 });
};

/** Rules only: large postcode and square code side by side, the receiver in capitals, code to track by with a heavy rule above and below. */
export const rijnkoerel: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look)
    .text(0, v(22), 'rijnkoerel', { size: 24, bold: true })
    .text(w, v(20), serviceOf(s, look), { size: 11, bold: true, anchor: 'end', fit: w * 0.44 });
  art
    .line(0, v(32), w, v(32), { line: 2.5 })
    .lines(0, v(46), [parcel.from[0] ?? '', parcel.from.slice(1).join(', ')], { size: 7.5, leading: 9.5, fit: w });
  art.line(0, v(64), w, v(64), { line: 0.8 }).text(0, v(118), parcel.postcode, { size: 52, bold: true, fit: w * 0.56 });
  art.text(0, v(146), `${parcel.depot}  ${label.piece}`, { size: 16, bold: true, fit: w * 0.58 });
  art.code('qr', `RK1;${parcel.tracking};${parcel.postcode};${parcel.order};${parcel.weight}`, w - 90, v(76), 78, 78);
  art.line(0, v(166), w, v(166), { line: 0.8 });
  art.lines(
    0,
    v(186),
    parcel.to.map((each) => each.toUpperCase()),
    { size: 13.5, leading: 17, bold: true, fit: w },
  );
  art.lines(0, v(262), [`${label.weight} ${parcel.weight}   ${label.date} ${day}   ${label.ref} ${parcel.order}`], { size: 8.5, fit: w });
  art.line(0, v(272), w, v(272), { line: 2.5 });
  art.code('code128', `RK${parcel.tracking}`, CLEAR, v(284), w - 2 * CLEAR, v(88));
  art
    .text(w / 2, v(388), `RK ${spaced(parcel.tracking)}`, { size: 12, bold: true, anchor: 'middle' })
    .line(0, v(396), w, v(396), { line: 2.5 });
  return art.text(w / 2, v(414), parcel.mark, { size: 8.5, bold: true, anchor: 'middle', fit: w });
};

/** Frame in two columns: a ladder code over the whole height at the left, everything else at the right, a second code for the route. */
export const skarvline: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const x = 74;
  const art = begin(look)
    .rect(0.6, 0.6, w - 1.2, h - 1.2, { line: 1.2 })
    .line(x, 0.6, x, v(388), { line: 1.2 });
  art
    .code('code128', `SK${parcel.tracking}`, 12, v(20), 42, v(348), 270)
    .text(67, v(194), `SK ${spaced(parcel.tracking)}`, { size: 9, bold: true, turn: 270, anchor: 'middle' });
  art
    .text(x + 8, v(28), 'SKARVLINE', { size: 19, bold: true, fit: w - x - 16 })
    .text(x + 8, v(44), serviceOf(s, look), { size: 10, fit: w - x - 16 });
  art
    .line(x, v(54), w - 0.6, v(54))
    .text(x + 8, v(66), label.from, { size: 6.5 })
    .lines(x + 8, v(77), parcel.from, { size: 8, leading: 10, fit: w - x - 16 });
  art.line(x, v(110), w - 0.6, v(110)).text(x + 8, v(122), label.to, { size: 6.5 });
  art.lines(x + 8, v(138), parcel.to, { size: 12.5, leading: 15.5, bold: true, fit: w - x - 16 });
  art.line(x, v(206), w - 0.6, v(206)).text((x + w) / 2, v(240), parcel.depot, { size: 32, bold: true, anchor: 'middle', fit: w - x - 20 });
  art.line(x, v(252), w - 0.6, v(252));
  art.lines(x + 8, v(267), [`${label.weight}: ${parcel.weight}`, `${label.date}: ${day}`, `${label.ref}: ${parcel.order}`, label.piece], {
    size: 9,
    leading: 12.5,
    fit: w - x - 16,
  });
  art
    .line(x, v(314), w - 0.6, v(314))
    .code('itf', parcel.routing.slice(0, 10), x + 20, v(324), w - x - 40, v(44))
    .text((x + w) / 2, v(380), spaced(parcel.routing.slice(0, 10), 5), { size: 8.5, anchor: 'middle' });
  art.line(0.6, v(388), w - 0.6, v(388), { line: 1.2 });
  return art.text(w / 2, v(408), parcel.mark, { size: 8.5, bold: true, anchor: 'middle', fit: w - 18 });
};
