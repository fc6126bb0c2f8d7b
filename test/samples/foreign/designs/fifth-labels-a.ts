import { spaced } from './content.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';

export const BLACK = { fill: '#000000' } as const;
export const upper = (lines: readonly string[]): string[] => lines.map((each) => each.toUpperCase());

/** No outer frame: a line of weight and day far above the rest, postage block at the right, bars as thick as a finger around the code. */
export const hollowpost: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.lines(0, v(8), [`${label.date} ${day}   ${label.weight} ${parcel.weight}   ${label.piece}`], { size: 7.5, fit: w * 0.7 });
  art.text(0, v(70), look.back === true ? 'R' : 'H', { size: v(58), bold: true, family: 'serif' });
  art.rect(w - 104, v(26), 103, v(50), { line: 0.9 });
  art.lines(w - 52, v(38), ['eSAMPLE', 'HOLLOWPOST', 'NOT PAID', `PERMIT ${parcel.depot}`], {
    size: 8,
    leading: v(10.5),
    anchor: 'middle',
    fit: 96,
  });
  art.line(0, v(84), w, v(84), { line: 1.2 });
  art.text(w / 2, v(103), `HOLLOWPOST ${serviceOf(s, look).toUpperCase()}`, { size: 16, bold: true, anchor: 'middle', fit: w - 8 });
  art.line(0, v(111), w, v(111), { line: 1.2 });
  art.lines(0, v(124), [...parcel.from, s.phone], { size: 8, leading: 9.6, fit: w * 0.62 });
  art.text(w, v(124), parcel.depot, { size: 13, bold: true, anchor: 'end' });
  art.text(0, v(192), label.to, { size: 8, bold: true });
  art.lines(28, v(206), upper(parcel.to), { size: 12.5, leading: 15, fit: w - 34 });
  art.rect(0, v(268), w, 5, BLACK).text(w / 2, v(287), `HOLLOWPOST ${label.tracking}`, { size: 10, bold: true, anchor: 'middle' });
  art.code('gs1-128', `[420]${parcel.postcode}[93]${s.package22.slice(2)}`, 8, v(297), w - 16, v(62));
  art.text(w / 2, v(373), spaced(s.package22), { size: 10.5, bold: true, anchor: 'middle' });
  art.rect(0, v(382), w, 5, BLACK);
  art.text(0, v(402), `${label.ref}: ${parcel.order}`, { size: 8, fit: w * 0.6 });
  return art.text(0, v(417), parcel.mark, { size: 8, bold: true, fit: w });
};

/** No outer frame: sender small, receiver large, a routing word over half the width beside a hexagon code, thin rules only. */
export const vantreck: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.lines(0, 8, [...parcel.from, s.phone], { size: 7.5, leading: 9, fit: w * 0.55 });
  art.lines(w, 9, [parcel.weight.toUpperCase(), day, label.piece], { size: 9, leading: 11.5, bold: true, anchor: 'end', fit: w * 0.4 });
  art.text(0, v(58), label.to, { size: 9, bold: true });
  art.lines(14, v(74), upper(parcel.to), { size: 13.5, leading: 16, bold: true, fit: w - 20 });
  art.line(0, v(144), w, v(144), { line: 0.8 });
  art.code('maxicode', `VANTRECK ${parcel.postcode} ${parcel.tracking.slice(0, 9)}`, 6, v(150), 80, 78);
  art.text(w, v(190), `${parcel.depot} ${parcel.routing.slice(0, 3)}-${parcel.routing.slice(3, 5)}`, {
    size: 33,
    bold: true,
    anchor: 'end',
    fit: w - 110,
  });
  art.text(w, v(222), parcel.postcode, { size: 20, anchor: 'end' });
  art.line(0, v(236), w, v(236), { line: 3 });
  art.text(0, v(258), `VANTRECK ${serviceOf(s, look).toUpperCase()}`, { size: 17, bold: true, fit: w - 50 });
  art.text(w, v(260), look.back === true ? 'RS' : '3D', { size: 24, bold: true, anchor: 'end' });
  art.text(0, v(272), `${label.tracking}: VT ${spaced(parcel.tracking)}`, { size: 8.5, fit: w - 50 });
  art.line(0, v(279), w, v(279), { line: 0.8 });
  art.code('code128', `VT${parcel.tracking}`, CLEAR, v(288), w - 2 * CLEAR, v(80));
  art.line(0, v(378), w, v(378), { line: 3 });
  art.lines(0, v(393), [`${label.ref}: ${parcel.order}`, parcel.mark], { size: 8, leading: v(12), fit: w * 0.82 });
  return art.text(w, v(405), 'XOL 20.1', { size: 6, anchor: 'end' });
};

/** Thin frame: the service's letters reversed in a square, a matrix code, the receiver in a large cell, two codes. */
export const kestrelo: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0.4, 0.4, w - 0.8, h - 0.8, { line: 0.8 });
  art
    .rect(8, 8, 44, v(44), BLACK)
    .text(30, v(40), look.back === true ? 'RT' : 'KE', { size: 24, bold: true, fill: '#ffffff', anchor: 'middle' });
  art.text(60, v(24), 'kestrelo', { size: 20, bold: true }).text(60, v(42), serviceOf(s, look), { size: 11, fit: w - 150 });
  art.code('datamatrix', `KE${parcel.tracking}${parcel.postcode}`, w - 60, v(4), 52, v(50));
  art.line(0.4, v(62), w - 0.4, v(62), { line: 0.8 });
  art.text(8, v(74), label.from, { size: 6.5 }).lines(8, v(85), parcel.from, { size: 8, leading: 10, fit: w / 2 - 14 });
  art.line(w / 2, v(62), w / 2, v(118), { line: 0.8 });
  art.lines(w / 2 + 8, v(76), [`${label.weight} ${parcel.weight}`, `${label.date} ${day}`, `${label.ref} ${parcel.order}`], {
    size: 8.5,
    leading: 13,
    fit: w / 2 - 16,
  });
  art.line(0.4, v(118), w - 0.4, v(118), { line: 0.8 }).text(8, v(131), label.to, { size: 7.5, bold: true });
  art.lines(22, v(148), parcel.to, { size: 14, leading: 17, fit: w - 34 });
  art.line(0.4, v(216), w - 0.4, v(216), { line: 0.8 });
  art.code('code39', `${parcel.depot}${parcel.routing.slice(0, 5)}`, CLEAR + 4, v(224), w - 2 * CLEAR - 8, v(38));
  art.text(w / 2, v(274), `${parcel.depot} ${parcel.routing.slice(0, 5)}`, { size: 10, bold: true, anchor: 'middle' });
  art.line(0.4, v(282), w - 0.4, v(282), { line: 0.8 });
  art.code('code128', `KE${parcel.tracking}`, CLEAR, v(292), w - 2 * CLEAR, v(78));
  art.text(w / 2, v(384), `KE ${spaced(parcel.tracking, 3)}`, { size: 11, bold: true, anchor: 'middle' });
  art.line(0.4, v(394), w - 0.4, v(394), { line: 0.8 });
  return art.text(8, v(410), parcel.mark, { size: 8, bold: true, fit: w - 16 });
};

/** Marks at the four corners and nothing else around; a two-of-five code above, the long code below, route between. */
export const brisko: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  for (const [x, dx] of [
    [0.5, 12],
    [w - 0.5, -12],
  ] as const)
    for (const [y, dy] of [
      [0.5, 12],
      [h - 0.5, -12],
    ] as const)
      art.line(x, y, x + dx, y, { line: 1 }).line(x, y, x, y + dy, { line: 1 });
  art.text(14, v(30), 'brisko', { size: 24, bold: true }).text(88, v(30), serviceOf(s, look), { size: 12, fit: w - 160 });
  art.text(w - 14, v(30), label.piece, { size: 9, anchor: 'end' });
  art.text(14, v(50), `${label.from}: ${parcel.from.join(', ')}`, { size: 7, fit: w - 28 });
  art.text(14, v(70), label.to, { size: 8, bold: true });
  art.lines(14, v(87), parcel.to, { size: 14, leading: 17, bold: true, fit: w - 28 });
  art.code('itf', `${parcel.routing}4`, CLEAR, v(156), w - 2 * CLEAR, v(62));
  art.text(w / 2, v(230), spaced(`${parcel.routing}4`, 2), { size: 9, anchor: 'middle' });
  art.text(14, v(266), `${parcel.depot}-${parcel.postcode.slice(0, 2)}`, { size: 30, bold: true });
  art.lines(w - 14, v(252), [`${label.weight} ${parcel.weight}`, `${label.date} ${day}`], { size: 9, leading: 12, anchor: 'end' });
  art.code('code128', `BK${parcel.tracking}`, CLEAR, v(284), w - 2 * CLEAR, v(82));
  art.text(w / 2, v(380), `${label.tracking} BK ${spaced(parcel.tracking, 3)}`, { size: 10, bold: true, anchor: 'middle', fit: w - 30 });
  return art.text(w / 2, v(405), parcel.mark, { size: 8, anchor: 'middle', fit: w - 36 });
};

/** Rules from side to side only; the sorting letters fill the foot, a serial container code above, a square code beside the receiver. */
export const nordvik: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art
    .text(0, v(18), 'NORDVIK', { size: 22, bold: true })
    .text(w, v(18), serviceOf(s, look), { size: 12, bold: true, anchor: 'end', fit: w * 0.5 });
  art.line(0, v(26), w, v(26), { line: 1.4 });
  art.text(0, v(38), label.from, { size: 6.5, bold: true }).lines(0, v(48), parcel.from, { size: 8, leading: 9.8, fit: w * 0.6 });
  art.lines(w, v(40), [day, parcel.weight, label.piece], { size: 8.5, leading: 11, anchor: 'end' });
  art.line(0, v(82), w, v(82), { line: 1.4 }).text(0, v(95), label.to, { size: 6.5, bold: true });
  art.lines(0, v(112), parcel.to, { size: 13.5, leading: 16.5, fit: w - 78 });
  art.code('gs1-datamatrix', `[00]${parcel.sscc}[420]${parcel.postcode}`, w - 66, v(98), 62, 62);
  art.line(0, v(184), w, v(184), { line: 1.4 });
  art.lines(0, v(198), [`${label.ref} ${parcel.order}`, `${label.tracking} (00) ${parcel.sscc}`], { size: 9, leading: 13, fit: w });
  art.code('gs1-128', `[00]${parcel.sscc}`, 16, v(222), w - 32, v(88));
  art.text(w / 2, v(324), `(00) ${parcel.sscc}`, { size: 10, anchor: 'middle' }).line(0, v(332), w, v(332), { line: 1.4 });
  art.text(0, v(384), `${parcel.depot}${parcel.routing.slice(0, 2)}`, { size: v(58), bold: true });
  art.text(w, v(384), parcel.postcode, { size: v(30), anchor: 'end' });
  art.line(0, v(394), w, v(394), { line: 1.4 });
  return art.text(0, v(409), parcel.mark, { size: 8, bold: true, fit: w });
};

/** Boxes inside only: one for the sender, one for the receiver, a square code above, legal line far below the number. */
export const rapidelle: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.poly([
    [0, v(6)],
    [26, v(20)],
    [0, v(34)],
  ]);
  art.text(32, v(28), 'rapidelle', { size: 21, bold: true }).text(32, v(44), serviceOf(s, look), { size: 10, fit: w - 110 });
  art.code('qr', `RPD:${parcel.tracking}:${parcel.postcode}`, w - 64, v(2), 62, 62);
  art.lines(0, v(60), [`${label.date} ${day}`, `${label.weight} ${parcel.weight}   ${label.depot} ${parcel.depot}`], {
    size: 8.5,
    leading: 11.5,
  });
  art.rect(0.5, v(82), w - 1, v(84), { line: 1, radius: 6 }).text(10, v(95), label.to, { size: 7 });
  art.lines(14, v(112), parcel.to, { size: 13.5, leading: 16, bold: true, fit: w - 28 });
  art.rect(0.5, v(174), w - 1, v(50), { line: 0.6, radius: 6 }).text(10, v(185), label.from, { size: 7 });
  art.lines(14, v(197), [parcel.from[0] ?? '', parcel.from.slice(1).join(', ')], { size: 8.5, leading: 11, fit: w - 28 });
  art.text(0, v(244), `${label.tracking} 6R ${spaced(parcel.tracking)}`, { size: 11, bold: true, fit: w * 0.74 });
  art.text(w, v(244), label.piece, { size: 9, anchor: 'end' });
  art.code('code128', `6R${parcel.tracking}`, CLEAR, v(254), w - 2 * CLEAR, v(96));
  art.text(w / 2, v(366), `${label.ref} ${parcel.order}`, { size: 9, anchor: 'middle' });
  return art.text(0, v(398), parcel.mark, { size: 8, fit: w });
};

/** A black bar with the name at the head and one at the foot, white between: no line at the sides. */
export const zwaluw: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0, 0, w, v(34), BLACK);
  art.text(8, v(24), 'ZWALUW EXPRESS', { size: 16, bold: true, fill: '#ffffff', fit: w * 0.55 });
  art.text(w - 8, v(23), serviceOf(s, look), { size: 12, fill: '#ffffff', anchor: 'end', fit: w * 0.38 });
  art.lines(4, v(52), [label.from, ...parcel.from], { size: 8, leading: 10, fit: w * 0.5 });
  art.code('aztec', `ZW${parcel.tracking}|${parcel.postcode}|${parcel.order}`, w - 74, v(42), 66, 66);
  art.lines(w * 0.52, v(52), [label.weight, parcel.weight, day], { size: 9, leading: 12, fit: w * 0.2 });
  art.text(4, v(128), label.to, { size: 9, bold: true });
  art.lines(24, v(146), parcel.to, { size: 15, leading: 18, bold: true, fit: w - 32 });
  art.text(4, v(248), parcel.depot, { size: 34, bold: true }).text(w - 4, v(246), parcel.postcode, { size: 26, anchor: 'end' });
  art.code('code128', `ZW${parcel.tracking}NL`, CLEAR, v(264), w - 2 * CLEAR, v(92));
  art.text(w / 2, v(371), `ZW ${spaced(parcel.tracking, 3)} NL`, { size: 12, bold: true, anchor: 'middle' });
  art.text(4, v(388), `${label.ref} ${parcel.order}`, { size: 8 });
  return art
    .rect(0, v(396), w, v(24), BLACK)
    .text(w / 2, v(412), parcel.mark, { size: 9, bold: true, fill: '#ffffff', anchor: 'middle', fit: w - 12 });
};
