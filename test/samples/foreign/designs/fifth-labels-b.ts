import { spaced } from './content.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';
import { upper } from './fifth-labels-a.js';

/** Nothing but white around words in the middle; the code stands high at the right, its number turned beside it. */
export const correluz: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const left = w - 92;
  const art = begin(look);
  art.text(0, v(22), 'CORRELUZ', { size: 25, bold: true, family: 'serif', fit: left });
  art.text(0, v(38), serviceOf(s, look), { size: 11, fit: left }).line(0, v(46), left, v(46), { line: 2 });
  art.text(0, v(62), label.from, { size: 7 }).lines(0, v(74), [...parcel.from, s.phone], { size: 8.5, leading: 10.6, fit: left });
  art.line(0, v(122), left, v(122), { line: 0.6 }).text(0, v(138), label.to, { size: 8, bold: true });
  art.lines(0, v(158), parcel.to, { size: 13, leading: 17, bold: true, fit: left - 4 });
  art.line(0, v(236), left, v(236), { line: 0.6 });
  art.lines(0, v(252), [`${label.date}: ${day}`, `${label.weight}: ${parcel.weight}`, `${label.ref}: ${parcel.order}`, label.piece], {
    size: 9,
    leading: 13,
    fit: left - 80,
  });
  art.code('datamatrix', `CZ${parcel.tracking}${parcel.postcode}`, left - 70, v(244), 66, 66);
  art
    .text(0, v(372), parcel.depot, { size: v(52), bold: true })
    .text(left - 4, v(372), parcel.postcode.slice(0, 2), { size: v(52), anchor: 'end' });
  art.code('code128', `CZ${parcel.tracking}`, w - 76, CLEAR, 60, h - 2 * CLEAR, 90);
  art.text(w - 8, h / 2, `CZ ${spaced(parcel.tracking, 4)}`, { size: 10, bold: true, anchor: 'middle', turn: 90 });
  return art.text(0, v(414), parcel.mark, { size: 7.5, bold: true, fit: left });
};

/** A post's label for abroad, rules from side to side: item number on top, addresses, the declaration in its lower half. */
export const svalpost: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const [title, contents, weight, value, origin, sign] = words.customs;
  const art = begin(look);
  art.text(0, v(24), 'svalpost', { size: 24, bold: true, family: 'serif' }).text(0, v(38), serviceOf(s, look), { size: 9, fit: w * 0.45 });
  art.rect(w - 96, v(4), 95, v(34), { line: 0.8 });
  art.lines(w - 48, v(16), ['SAMPLE: NOT FRANKED', day, parcel.weight], { size: 7.5, leading: v(9.5), anchor: 'middle', fit: 88 });
  art.line(0, v(46), w, v(46), { line: 2 });
  art.code('code128', parcel.s10, CLEAR, v(54), w - 2 * CLEAR, v(54));
  const s10 = `${parcel.s10.slice(0, 2)} ${spaced(parcel.s10.slice(2, 11), 3)} ${parcel.s10.slice(11)}`;
  art.text(w / 2, v(121), s10, { size: 12, bold: true, anchor: 'middle' }).line(0, v(129), w, v(129), { line: 2 });
  art.text(0, v(141), label.from, { size: 6.5 }).lines(0, v(152), [...parcel.from, s.phone], { size: 8, leading: 10, fit: w * 0.42 });
  art.text(w * 0.46, v(141), label.to, { size: 6.5, bold: true });
  art.lines(w * 0.46, v(156), [...upper(parcel.to), 'OUTLANDIA'], { size: 11.5, leading: 14.5, bold: true, fit: w * 0.54 });
  art.line(0, v(226), w, v(226), { line: 2 });
  art.text(0, v(240), title, { size: 9, bold: true, fit: w * 0.76 }).text(w, v(240), 'CN 22', { size: 11, bold: true, anchor: 'end' });
  for (const [k, what] of ['Gift', 'Docs', 'Sale', 'Other'].entries()) {
    art
      .rect(k * (w / 4), v(247), 7, 7, { line: 0.7, ...(k === 2 ? { fill: '#000000' } : {}) })
      .text(k * (w / 4) + 11, v(247) + 6.5, what, { size: 7 });
  }
  const at = [0, w * 0.5, w * 0.68, w * 0.86];
  let y = v(264);
  art.line(0, y, w, y, { line: 0.5 });
  for (const [k, caption] of [contents, weight, `${value} ${words.currency}`, origin].entries())
    art.text((at[k] ?? 0) + (k === 0 ? 0 : 4), y + 9, caption, { size: 6, fit: w * (k === 0 ? 0.48 : 0.14) });
  y += 12;
  for (const [pieces, thing, price] of parcel.goods.slice(0, 3)) {
    art.line(0, y, w, y, { line: 0.3 }).text(0, y + 11, `${pieces} ${thing}`, { size: 8, fit: w * 0.48 });
    art
      .text((at[1] ?? 0) + 4, y + 11, `0,${pieces}1 kg`, { size: 8 })
      .text((at[2] ?? 0) + 4, y + 11, (pieces * Number(price)).toFixed(2), { size: 8 });
    art.text((at[3] ?? 0) + 4, y + 11, 'ZZ', { size: 8 });
    y += 15;
  }
  art.line(0, y, w, y, { line: 0.5 }).paragraph(0, v(344), w, words.small, { size: 5.8, leading: 7.2 });
  art.line(0, v(388), w * 0.55, v(388), { line: 0.5 }).text(0, v(396), `${sign} ${day}`, { size: 6, fit: w * 0.55 });
  return art.line(0, v(402), w, v(402), { line: 2 }).text(0, v(416), parcel.mark, { size: 8, bold: true, fit: w });
};

/** A table without its outer sides: cells by rules that end nowhere, a stacked code, then the code to track by. */
export const poltrasa: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.text(4, v(22), 'Poltrasa', { size: 22, bold: true }).text(w - 4, v(22), parcel.depot, { size: 24, bold: true, anchor: 'end' });
  art.line(0, v(32), w, v(32), { line: 0.9 }).line(w * 0.5, v(32), w * 0.5, v(96), { line: 0.9 });
  art.text(4, v(43), label.from, { size: 6.5 }).lines(4, v(54), [...parcel.from, s.phone], { size: 7.8, leading: 10, fit: w * 0.48 });
  art.lines(w * 0.5 + 6, v(46), [serviceOf(s, look), `${label.weight} ${parcel.weight}`, `${label.date} ${day}`, label.piece], {
    size: 9,
    leading: 13,
    fit: w * 0.5 - 10,
  });
  art.line(0, v(96), w, v(96), { line: 0.9 }).text(4, v(108), label.to, { size: 7.5, bold: true });
  art.lines(16, v(126), parcel.to, { size: 15, leading: 18, bold: true, fit: w - 20 });
  art.line(0, v(196), w, v(196), { line: 0.9 });
  art.code('pdf417', `PTR;${parcel.tracking};${parcel.postcode};${parcel.order};${parcel.routing}`, 12, v(204), w - 24, v(48));
  art.line(0, v(260), w, v(260), { line: 0.9 });
  art.code('code128', `PT${parcel.tracking}PL`, CLEAR, v(270), w - 2 * CLEAR, v(86));
  art.text(w / 2, v(370), `PT ${spaced(parcel.tracking, 4)} PL`, { size: 11, bold: true, anchor: 'middle' });
  art.line(0, v(378), w, v(378), { line: 0.9 }).line(w * 0.5, v(378), w * 0.5, v(400), { line: 0.9 });
  art
    .text(4, v(393), `${label.ref} ${parcel.order}`, { size: 8.5, fit: w * 0.48 })
    .text(w * 0.5 + 6, v(393), parcel.routing, { size: 8.5 });
  return art.line(0, v(400), w, v(400), { line: 0.9 }).text(4, v(414), parcel.mark, { size: 8, bold: true, fit: w - 8 });
};

/** Nothing but white: words set in the middle, one code, a line at the head and one at the foot that stand away. */
export const meridian: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  const middle = { anchor: 'middle', fit: w } as const;
  art.text(w / 2, v(8), `Meridian Loop   ${day}   ${parcel.weight}   ${label.piece}`, { size: 8, ...middle });
  art.text(w / 2, v(52), serviceOf(s, look).toUpperCase(), { size: 18, bold: true, ...middle });
  art.text(w / 2, v(78), label.from, { size: 7, ...middle }).text(w / 2, v(89), parcel.from.join(' - '), { size: 8, ...middle });
  art.text(w / 2, v(118), label.to, { size: 8, bold: true, ...middle });
  art.lines(w / 2, v(138), upper(parcel.to), { size: 15, leading: 18.5, bold: true, ...middle });
  art.text(w / 2, v(248), `${parcel.depot} ${parcel.postcode}`, { size: 36, bold: true, ...middle });
  art.code('code128', `ML${parcel.tracking}`, CLEAR, v(266), w - 2 * CLEAR, v(94));
  art.text(w / 2, v(376), `${label.tracking} ML ${spaced(parcel.tracking)}`, { size: 10.5, bold: true, ...middle });
  art.text(w / 2, v(388), `${label.ref} ${parcel.order}`, { size: 8, ...middle });
  return art.text(w / 2, v(417), parcel.mark, { size: 7.5, ...middle });
};
