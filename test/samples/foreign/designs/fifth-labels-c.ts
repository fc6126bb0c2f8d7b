import { spaced } from './content.js';
import { BLACK, upper } from './fifth-labels-a.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';

/** A sales channel's own label: heavy frame with round corners, square code and order side by side, long code at the foot. */
export const quickquill: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(1.25, 1.25, w - 2.5, h - 2.5, { line: 2.5, radius: 12 });
  art.code('qr', `QQ|${parcel.order}|${parcel.tracking}|${parcel.postcode}`, 16, v(16), 80, v(80));
  art.text(108, v(34), parcel.order, { size: 22, bold: true, family: 'mono', fit: w - 120 });
  art.lines(108, v(54), ['quickquill', serviceOf(s, look), `${label.date} ${day}`, `${label.weight} ${parcel.weight}`], {
    size: 10,
    leading: 13.5,
    fit: w - 120,
  });
  art.line(2.5, v(106), w - 2.5, v(106), { line: 1 }).text(14, v(122), label.to, { size: 8, bold: true });
  art.lines(14, v(142), parcel.to, { size: 15, leading: 18.5, fit: w - 28 });
  art.line(2.5, v(218), w - 2.5, v(218), { line: 1 }).text(14, v(230), label.from, { size: 7 });
  art.lines(14, v(242), [parcel.from[0] ?? '', parcel.from.slice(1).join(', ')], { size: 8.5, leading: 10.5, fit: w - 28 });
  art.line(2.5, v(264), w - 2.5, v(264), { line: 1 });
  art.code('code128', `QQ${parcel.tracking}`, CLEAR + 4, v(274), w - 2 * CLEAR - 8, v(90));
  art.text(w / 2, v(380), `QQ ${spaced(parcel.tracking)}`, { size: 12, bold: true, anchor: 'middle' });
  return art.text(w / 2, v(404), parcel.mark, { size: 8, bold: true, anchor: 'middle', fit: w - 30 });
};

/** A registered item's label in a plain frame: postage block, item number with its code, a second code for the sorting hall. */
export const postella: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0.5, 0.5, w - 1, h - 1, { line: 1 });
  art.disc(28, v(32), v(20)).text(28, v(41), 'P', { size: 26, bold: true, fill: '#ffffff', anchor: 'middle', family: 'serif' });
  art
    .text(58, v(30), 'Postella', { size: 20, family: 'serif', bold: true })
    .text(58, v(45), serviceOf(s, look), { size: 10, fit: w - 160 });
  art.rect(w - 92, v(10), 82, v(44), { line: 0.8 });
  art.lines(w - 51, v(23), ['PORTO', 'SAMPLE', day], { size: 8, leading: v(13), anchor: 'middle', fit: 76 });
  art.line(0.5, v(64), w - 0.5, v(64), { line: 1 });
  art.text(10, v(77), label.from, { size: 6.5 }).lines(10, v(88), parcel.from, { size: 8, leading: 10, fit: w - 20 });
  art.line(0.5, v(120), w - 0.5, v(120), { line: 1 }).text(10, v(133), label.to, { size: 7.5, bold: true });
  art.lines(24, v(152), parcel.to, { size: 14.5, leading: 17.5, fit: w - 34 });
  art.line(0.5, v(218), w - 0.5, v(218), { line: 1 });
  art.code('itf', `${parcel.routing}9`, CLEAR + 4, v(226), w - 2 * CLEAR - 8, v(44));
  art.text(w / 2, v(282), `${parcel.depot}  ${parcel.routing}9`, { size: 8.5, anchor: 'middle' });
  art.line(0.5, v(290), w - 0.5, v(290), { line: 1 });
  art.text(12, v(320), 'R', { size: 28, bold: true }).code('code128', parcel.s10, 44, v(298), w - 66, v(70));
  const s10 = `${parcel.s10.slice(0, 2)} ${spaced(parcel.s10.slice(2, 11), 3)} ${parcel.s10.slice(11)}`;
  art.text(w / 2 + 10, v(382), s10, { size: 11, bold: true, anchor: 'middle' });
  art
    .line(0.5, v(392), w - 0.5, v(392), { line: 1 })
    .text(10, v(401), `${label.weight} ${parcel.weight}   ${label.ref} ${parcel.order}`, { size: 6.5 });
  return art.text(10, v(414), parcel.mark, { size: 8, bold: true, fit: w - 20 });
};

/** A black band down the left side with the carrier's name turned in it; white around the rest. */
export const ottermile: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const left = 42;
  const art = begin(look).rect(0, 0, 30, h, BLACK);
  art.text(22, h / 2, `OTTERMILE  ${parcel.depot}`, { size: 20, bold: true, fill: '#ffffff', anchor: 'middle', turn: 270 });
  art
    .text(left, v(16), serviceOf(s, look).toUpperCase(), { size: 15, bold: true, fit: w - left - 66 })
    .text(w, v(16), label.piece, { size: 10, anchor: 'end' });
  art.lines(left, v(36), [...parcel.from, s.phone], { size: 8, leading: 10, fit: w - left });
  art.line(left, v(84), w, v(84), { line: 0.6 }).text(left, v(100), label.to, { size: 8, bold: true });
  art.lines(left, v(120), upper(parcel.to), { size: 14, leading: 17.5, bold: true, fit: w - left });
  art.line(left, v(194), w, v(194), { line: 0.6 });
  art.code('datamatrix', `OM${parcel.tracking}|${parcel.postcode}`, left + 4, v(204), 60, v(60));
  art.text(left + 84, v(232), parcel.postcode, { size: 34, bold: true, fit: w - left - 90 });
  art.lines(left + 84, v(252), [`${label.weight} ${parcel.weight}  ${label.date} ${day}`], { size: 8, fit: w - left - 84 });
  art.line(left, v(274), w, v(274), { line: 0.6 });
  art.code('code128', `OM${parcel.tracking}`, left + 6, v(284), w - left - 12, v(84));
  art.text((left + w) / 2, v(382), `OM ${spaced(parcel.tracking)}`, { size: 11, bold: true, anchor: 'middle' });
  art.text(left, v(400), `${label.ref} ${parcel.order}`, { size: 8 });
  return art.text(left, v(415), parcel.mark, { size: 8, bold: true, fit: w - left });
};

/** Two heavy bars across, the sorting word as large as the label is wide, two codes below one another, no line at the sides. */
export const gullhaven: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.text(0, v(58), `${parcel.depot}-${parcel.postcode.slice(2)}`, { size: v(58), bold: true, fit: w });
  art.rect(0, v(68), w, 6, BLACK);
  art.text(0, v(90), 'Gullhaven', { size: 13, bold: true }).text(w, v(90), serviceOf(s, look), { size: 11, anchor: 'end', fit: w * 0.6 });
  art.text(0, v(112), label.from, { size: 6.5 }).lines(0, v(122), parcel.from, { size: 7.8, leading: 9.6, fit: w * 0.4 });
  art.text(w * 0.44, v(112), label.to, { size: 8, bold: true });
  art.lines(w * 0.44, v(128), parcel.to, { size: 12, leading: 15, bold: true, fit: w * 0.56 });
  art.lines(0, v(200), [`${label.weight} ${parcel.weight}   ${label.date} ${day}   ${label.ref} ${parcel.order}`], { size: 8.5, fit: w });
  art.rect(0, v(208), w, 6, BLACK);
  art.code('code39', `${parcel.postcode}${parcel.depot}`, CLEAR, v(224), w - 2 * CLEAR, v(48));
  art.text(w / 2, v(285), `${parcel.postcode} ${parcel.depot}`, { size: 9.5, anchor: 'middle' });
  art.code('code128', `GH${parcel.tracking}`, CLEAR, v(296), w - 2 * CLEAR, v(80));
  art.text(w / 2, v(390), `${label.tracking} GH ${spaced(parcel.tracking, 3)}`, { size: 10, bold: true, anchor: 'middle', fit: w });
  return art.text(0, v(414), parcel.mark, { size: 8, bold: true, fit: w });
};

/** Designed lying, six inches wide: addresses at the left, a code at the right with its number, a bar below; no frame. */
export const tarntide: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 272;
  const { label } = words;
  const art = begin(look);
  const mid = w * 0.45;
  art
    .text(0, v(20), 'TARN & TIDE', { size: 20, bold: true, family: 'serif' })
    .text(w, v(18), serviceOf(s, look).toUpperCase(), { size: 14, bold: true, anchor: 'end', fit: w * 0.5 });
  art.line(0, v(30), w, v(30), { line: 1.5 });
  art.text(0, v(44), label.from, { size: 7 }).lines(0, v(55), [...parcel.from, s.phone], { size: 8.5, leading: 10.5, fit: mid - 8 });
  art
    .text(0, v(116), label.to, { size: 8, bold: true })
    .lines(0, v(134), upper(parcel.to), { size: 13, leading: 16, bold: true, fit: mid - 8 });
  art.code('datamatrix', `TT${parcel.tracking}${parcel.postcode}`, mid, v(40), 50, 50);
  art.lines(mid + 62, v(50), [`${label.date} ${day}`, `${label.weight} ${parcel.weight}`, `${label.ref} ${parcel.order}`, label.piece], {
    size: 9,
    leading: 12,
    fit: w - mid - 64,
  });
  art.code('code128', `TT${parcel.tracking}`, mid + 6, v(108), w - mid - 12, v(92));
  art.text(mid + (w - mid) / 2, v(214), `TT ${spaced(parcel.tracking, 3)}`, { size: 11, bold: true, anchor: 'middle' });
  art.text(0, v(238), `${parcel.depot} ${parcel.postcode}`, { size: 30, bold: true, fit: mid - 8 });
  art.rect(0, v(246), w, 4, BLACK);
  return art.text(0, v(266), parcel.mark, { size: 8.5, bold: true, fit: w });
};

/** Designed lying in a thin frame: the code stands at the left like a ladder, the receiver in the middle, the square code at the right. */
export const fellbrook: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 272;
  const { label } = words;
  const art = begin(look).rect(0.5, 0.5, w - 1, h - 1, { line: 1 });
  art.code('code128', `FB${parcel.tracking}`, 14, 16, 62, h - 32, 90);
  art
    .text(88, h / 2, `FB ${spaced(parcel.tracking, 3)}`, { size: 9.5, bold: true, anchor: 'middle', turn: 90 })
    .line(100, 0.5, 100, h - 0.5, { line: 1 });
  art
    .text(110, v(24), 'Fellbrook', { size: 18, bold: true })
    .text(w - 12, v(22), serviceOf(s, look), { size: 11, anchor: 'end', fit: w * 0.4 });
  art.line(100, v(34), w - 0.5, v(34), { line: 1 }).text(110, v(47), label.from, { size: 6.5 });
  art.lines(110, v(58), [...parcel.from, s.phone], { size: 8, leading: 10, fit: 190 });
  art.lines(w - 12, v(50), [day, parcel.weight, label.piece, parcel.depot], { size: 9, leading: 12, anchor: 'end' });
  art.line(100, v(104), w - 0.5, v(104), { line: 1 }).text(110, v(118), label.to, { size: 8, bold: true });
  art.lines(110, v(138), parcel.to, { size: 15, leading: 18, bold: true, fit: w - 222 });
  art.code('qr', `FB:${parcel.tracking}:${parcel.postcode}:${parcel.order}`, w - 96, v(116), 80, v(80));
  art
    .line(100, v(222), w - 0.5, v(222), { line: 1 })
    .text(110, v(240), `${label.ref} ${parcel.order}   ${label.tracking} FB${parcel.tracking}`, { size: 8.5, fit: w - 124 });
  return art.text(110, v(260), parcel.mark, { size: 8.5, bold: true, fit: w - 124 });
};
