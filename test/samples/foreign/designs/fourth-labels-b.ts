import { spaced } from './content.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';

const BLACK = { fill: '#000000' } as const;

/** Black bar on top, no frame; postcode in large figures, a small square code, the long code between hairlines. */
export const veltbode: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0, 0, w, v(36), BLACK).text(10, v(25), 'veltbode', { size: 20, bold: true, fill: '#ffffff' });
  art.text(w - 10, v(24), serviceOf(s, look), { size: 12, bold: true, fill: '#ffffff', anchor: 'end', fit: w * 0.5 });
  art.code('datamatrix', `VB${parcel.tracking}${parcel.postcode}${parcel.order}`, 6, v(46), 72, 72);
  art.text(92, v(82), parcel.postcode, { size: 40, bold: true }).text(92, v(108), parcel.depot, { size: 20, bold: true });
  art.lines(w, v(60), [day, parcel.weight, label.piece], { size: 8.5, leading: 13, anchor: 'end', fit: 74 });
  art.line(0, v(126), w, v(126), { line: 0.8 }).text(0, v(138), label.to, { size: 7.5 });
  art.lines(12, v(156), parcel.to, { size: 13.5, leading: 16.5, fit: w - 16 });
  art.line(0, v(226), w, v(226), { line: 0.8 }).text(0, v(238), label.from, { size: 7.5 });
  art.lines(12, v(250), parcel.from, { size: 8, leading: 10, fit: w * 0.6 });
  art.lines(w, v(250), [label.ref, parcel.order], { size: 8, leading: 10, anchor: 'end', fit: w * 0.34 });
  art.line(0, v(284), w, v(284), { line: 0.8 });
  art.code('code128', `3V${parcel.tracking}`, CLEAR, v(294), w - 2 * CLEAR, v(84));
  art.text(w / 2, v(394), `3V ${spaced(parcel.tracking)}`, { size: 12, bold: true, anchor: 'middle' });
  art.line(0, v(402), w, v(402), { line: 0.8 });
  return art.text(w / 2, v(417), parcel.mark, { size: 8.5, anchor: 'middle', bold: true, fit: w });
};

/** Many captioned cells in a frame, as freight forms have them, a serial container number in a wide code at the foot. */
export const ostervang: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5 });
  const cell = (x: number, y: number, width: number, caption: string, value: string, size = 10): void => {
    art.text(x + 5, y + 8.5, caption, { size: 6 }).text(x + 5, y + 11 + size, value, { size, bold: true, fit: width - 10 });
  };
  art
    .text(8, v(22), 'ØSTERVANG', { size: 16, bold: true, fit: w * 0.45 })
    .text(w - 8, v(21), serviceOf(s, look), { size: 12, bold: true, anchor: 'end', fit: w * 0.48 });
  for (const y of [30, 92, 176, 206, 258, 282]) art.line(0.75, v(y), w - 0.75, v(y), { line: 0.9 });
  art.text(6, v(30) + 9, label.from, { size: 6 }).lines(6, v(30) + 20, parcel.from, { size: 8.5, leading: 11, fit: w * 0.6 - 10 });
  art.line(w * 0.62, v(30), w * 0.62, v(92), { line: 0.9 });
  cell(w * 0.62, v(30), w * 0.38, label.date, day, 9);
  art.line(w * 0.62, v(61), w - 0.75, v(61), { line: 0.9 });
  cell(w * 0.62, v(61), w * 0.38, label.ref, parcel.order, 9);
  art.text(6, v(92) + 9, label.to, { size: 6 }).lines(14, v(92) + 26, parcel.to, { size: 12.5, leading: 15.5, fit: w - 104 });
  art.code('qr', `OV|${parcel.sscc}|${parcel.postcode}|${parcel.order}`, w - 84, v(98), 70, v(72));
  const third = (w - 1.5) / 3;
  for (const k of [1, 2]) art.line(0.75 + k * third, v(176), 0.75 + k * third, v(206), { line: 0.9 });
  cell(0.75, v(176), third, label.weight, parcel.weight);
  cell(0.75 + third, v(176), third, label.piece.split(' ')[0] ?? '', '1 / 1');
  cell(0.75 + 2 * third, v(176), third, 'Tel.', s.phone);
  art.text(w / 2, v(246), `${parcel.depot.slice(0, 2)} ${parcel.postcode} ${parcel.routing.slice(0, 2)}`, {
    size: 34,
    bold: true,
    anchor: 'middle',
    fit: w - 24,
  });
  art.text(8, v(274), `${label.tracking}: (00) ${parcel.sscc}`, { size: 9.5, fit: w - 16 });
  art.code('gs1-128', `[00]${parcel.sscc}`, CLEAR, v(292), w - 2 * CLEAR, v(84));
  art.text(w / 2, v(389), `(00) ${spaced(parcel.sscc, 6)}`, { size: 10, bold: true, anchor: 'middle' });
  return art.text(w / 2, v(408), parcel.mark, { size: 8, anchor: 'middle', bold: true, fit: w - 18 });
};

/** Frame with a ladder code at the right side, the sector in a black cell, an older code for the order at the foot. */
export const trevolto: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0.5, 0.5, w - 1, h - 1, { line: 1 });
  art.text(10, v(28), 'TREVOLTO', { size: 22, bold: true, fit: w * 0.5 }).text(10, v(44), serviceOf(s, look), { size: 10, fit: w * 0.5 });
  art
    .rect(w * 0.56, 0.5, w * 0.44 - 0.5, v(54), BLACK)
    .text(w * 0.78, v(39), parcel.depot, { size: 30, bold: true, fill: '#ffffff', anchor: 'middle', fit: w * 0.4 });
  art.line(0.5, v(54), w - 0.5, v(54)).line(w - 82, v(54), w - 82, v(318));
  art
    .text(8, v(66), label.from, { size: 7, bold: true })
    .lines(8, v(77), [...parcel.from, `tel. ${s.phone}`], { size: 8, leading: 10, fit: w - 98 });
  art.line(0.5, v(120), w - 82, v(120)).text(8, v(132), label.to, { size: 7, bold: true });
  art.lines(8, v(148), parcel.to, { size: 13, leading: 16, bold: true, fit: w - 98 });
  art.line(0.5, v(216), w - 82, v(216));
  const half = (w - 82) / 2;
  art.line(half, v(216), half, v(264)).line(0.5, v(264), w - 82, v(264));
  art.text(8, v(227), label.weight, { size: 6.5 }).text(8, v(248), parcel.weight, { size: 15, bold: true, fit: half - 14 });
  art.text(half + 7, v(227), label.piece.split(' ')[0] ?? '', { size: 6.5 }).text(half + 7, v(248), '1 / 1', { size: 15, bold: true });
  art.lines(8, v(278), [`${label.date} ${day}`, `${label.ref} ${parcel.order}`, `${label.tracking} TV${parcel.tracking}`], {
    size: 8.5,
    leading: 12.5,
    fit: w - 98,
  });
  art.code('code128', `TV${parcel.tracking}`, w - 70, v(54) + 10, 44, v(264) - 20, 90);
  art.text(w - 12, v(186), `TV ${spaced(parcel.tracking)}`, { size: 8.5, bold: true, turn: 90, anchor: 'middle' });
  art.line(0.5, v(318), w - 0.5, v(318));
  art
    .code('code39', parcel.routing.slice(0, 8), CLEAR + 6, v(328), w - 2 * CLEAR - 12, v(50))
    .text(w / 2, v(390), `*${parcel.routing.slice(0, 8)}*`, { size: 9, anchor: 'middle', family: 'mono' });
  return art.text(w / 2, v(410), parcel.mark, { size: 8, anchor: 'middle', bold: true, fit: w - 16 });
};

/** Frame of two lines' width, the postcode reversed out, a square code of rings beside the receiver, two of five at the foot. */
export const correvaz: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(1, 1, w - 2, h - 2, { line: 2, radius: 4 });
  art
    .text(10, v(30), 'correvaz', { size: 24, bold: true, fit: w * 0.5 })
    .text(w - 10, v(19), serviceOf(s, look), { size: 11, bold: true, anchor: 'end', fit: w * 0.46 });
  art.text(w - 10, v(33), `${day}   ${label.piece}`, { size: 8, anchor: 'end' }).line(1, v(42), w - 1, v(42), { line: 1.2 });
  art.text(8, v(54), label.from, { size: 6.5 }).lines(8, v(64), parcel.from, { size: 8, leading: 9.6, fit: w - 20 });
  art.line(1, v(92), w - 1, v(92), { line: 1.2 }).text(8, v(104), label.to, { size: 6.5 });
  art.lines(8, v(120), parcel.to, { size: 12.5, leading: 15, fit: w - 100 });
  art.code('aztec', `CVZ ${parcel.tracking} ${parcel.postcode} ${parcel.order}`, w - 80, v(102), 66, 66);
  art.line(1, v(180), w - 1, v(180), { line: 1.2 });
  art
    .rect(8, v(188), 112, v(40), BLACK)
    .text(64, v(218), parcel.postcode, { size: 30, bold: true, fill: '#ffffff', anchor: 'middle', fit: 100 });
  art.lines(130, v(202), [`${label.depot}: ${parcel.depot}`, `${label.weight}: ${parcel.weight}`], {
    size: 12,
    leading: 17,
    bold: true,
    fit: w - 142,
  });
  art.line(1, v(236), w - 1, v(236), { line: 1.2 });
  art.code('code128', `CZ${parcel.tracking}`, CLEAR, v(246), w - 2 * CLEAR, v(68));
  art.text(w / 2, v(328), `CZ ${spaced(parcel.tracking, 2)}`, { size: 10.5, bold: true, anchor: 'middle', fit: w - 24 });
  art.line(1, v(336), w - 1, v(336), { line: 1.2 });
  art
    .code('itf', parcel.routing.slice(0, 12), CLEAR, v(346), 156, v(38))
    .text(w - 10, v(366), label.ref, { size: 7, anchor: 'end' })
    .text(w - 10, v(378), parcel.order, { size: 8.5, anchor: 'end', bold: true, fit: 72 });
  return art.text(w / 2, v(408), parcel.mark, { size: 8.5, anchor: 'middle', bold: true, fit: w - 18 });
};

/** No frame: locker and size in large letters beside a square code, hairlines, the long code in the middle. */
export const przesylnik: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look)
    .text(0, v(20), 'PRZESYLNIK', { size: 20, bold: true, fit: w * 0.55 })
    .text(w, v(18), serviceOf(s, look), { size: 10, anchor: 'end', fit: w * 0.42 });
  art.line(0, v(28), w, v(28), { line: 1.5 });
  art.code('qr', `PRZ:${parcel.tracking}:${parcel.depot}:${parcel.order}`, 10, v(42), 84, 84);
  art.text(112, v(74), parcel.depot, { size: 34, bold: true, fit: w - 160 }).rect(w - 40, v(44), 38, 38, { line: 2 });
  art.text(w - 21, v(44) + 28, parcel.routing.charAt(0) < '5' ? 'A' : 'B', { size: 26, bold: true, anchor: 'middle' });
  art.lines(112, v(96), [`${label.date}: ${day}`, `${label.weight}: ${parcel.weight}`, `${label.ref}: ${parcel.order}`], {
    size: 8.5,
    leading: 12.5,
    fit: w - 116,
  });
  art.line(0, v(140), w, v(140), { line: 1.5 });
  art.code('code128', `PS${parcel.tracking}`, CLEAR, v(152), w - 2 * CLEAR, v(80));
  art.text(w / 2, v(248), `PS ${spaced(parcel.tracking)}`, { size: 11, anchor: 'middle', family: 'mono', bold: true });
  art.line(0, v(258), w, v(258), { line: 1.5 }).text(0, v(271), label.to, { size: 7 });
  art.lines(0, v(288), parcel.to, { size: 14, leading: 17, bold: true, fit: w - 8 });
  art.line(0, v(352), w, v(352), { line: 0.7 }).text(0, v(363), label.from, { size: 7 });
  art.lines(0, v(374), parcel.from, { size: 8.5, leading: 10.5, fit: w * 0.7 });
  return art.text(w, v(417), parcel.mark, { size: 8, anchor: 'end', bold: true, fit: w });
};

/** Designed lying, 6 wide and 4 high: addresses at the left, service and square code at the right, the long code over the foot. */
export const halvorne: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 276;
  const { label } = words;
  const art = begin(look).rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5 });
  art
    .text(12, v(28), 'HALVORNE', { size: 22, bold: true })
    .text(w - 12, v(27), serviceOf(s, look), { size: 16, bold: true, anchor: 'end', fit: w * 0.5 });
  art.line(0.75, v(38), w - 0.75, v(38)).line(w * 0.66, v(38), w * 0.66, v(158));
  art.text(10, v(50), label.from, { size: 7 }).lines(10, v(61), parcel.from, { size: 8.5, leading: 10.5, fit: w * 0.62 });
  art.line(0.75, v(88), w * 0.66, v(88)).text(10, v(99), label.to, { size: 7 });
  art.lines(10, v(113), parcel.to, { size: 12.5, leading: 14, bold: true, fit: w * 0.62 });
  art.code('datamatrix', `HV${parcel.tracking}${parcel.postcode}${parcel.order}`, w * 0.66 + 10, v(46), 64, 64);
  art
    .text(w - 10, v(66), parcel.depot, { size: 15, bold: true, anchor: 'end', fit: 58 })
    .lines(w - 10, v(84), [parcel.weight, day, label.piece], { size: 8, leading: 11, anchor: 'end', fit: 58 });
  art.text(w * 0.66 + 10, v(140), label.ref, { size: 7 }).text(w * 0.66 + 10, v(152), parcel.order, { size: 9, bold: true });
  art.line(0.75, v(158), w - 0.75, v(158));
  art.code('code128', `HV${parcel.tracking}`, 56, v(166), w - 112, v(68));
  art.text(w / 2, v(248), `${label.tracking} HV ${spaced(parcel.tracking)}`, { size: 11, bold: true, anchor: 'middle' });
  return art.text(w / 2, v(266), parcel.mark, { size: 8, anchor: 'middle', bold: true, fit: w - 20 });
};
