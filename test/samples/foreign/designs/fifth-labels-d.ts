import { Art } from '../kit/art.js';
import { spaced } from './content.js';
import { upper } from './fifth-labels-a.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';
import type { Sent } from './fourth-words.js';

const itemNumber = ({ parcel: { s10 } }: Sent): string => `${s10.slice(0, 2)} ${spaced(s10.slice(2, 11), 3)} ${s10.slice(11)}`;

/** What customs asks for, `width` pt wide: title, a table of contents, a line to sign on; in a box or between two rules. */
function declared({ parcel, words, day }: Sent, width: number, boxed: boolean): Art {
  const [title, contents, weight, value, , sign] = words.customs;
  const height = 118;
  const art = new Art(width, height);
  if (boxed) art.rect(0.4, 0.4, width - 0.8, height - 0.8, { line: 0.8 });
  else art.line(0, 0.5, width, 0.5, { line: 1 }).line(0, height - 0.5, width, height - 0.5, { line: 1 });
  art.text(5, 12, title, { size: 8, bold: true, fit: width - 54 }).text(width - 5, 12, 'CN22', { size: 9, bold: true, anchor: 'end' });
  art.line(0.4, 17, width - 0.4, 17, { line: 0.5 });
  art
    .text(5, 26, contents, { size: 6, fit: width * 0.5 })
    .text(width * 0.6, 26, weight, { size: 6 })
    .text(width - 5, 26, value, { size: 6, anchor: 'end' });
  let y = 28;
  for (const [pieces, thing, price] of parcel.goods.slice(0, 3)) {
    y += 12;
    art.text(5, y, `${pieces} x ${thing}`, { size: 7.5, fit: width * 0.54 }).text(width * 0.6, y, `0,${pieces}3 kg`, { size: 7.5 });
    art.text(width - 5, y, `${(pieces * Number(price)).toFixed(2)} ${words.currency}`, { size: 7.5, anchor: 'end' });
  }
  art.line(0.4, 70, width - 0.4, 70, { line: 0.5 }).paragraph(5, 79, width - 10, words.small, { size: 5.2, leading: 6.4 });
  return art.text(5, height - 5, `${sign}: ${day}`, { size: 6.5, fit: width - 10 });
}

/** A post's label for abroad in a plain frame: the declaration in a box of its own in the middle, the item's code at the foot. */
export const albarela: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0.6, 0.6, w - 1.2, h - 1.2, { line: 1.2 });
  art.text(12, v(26), 'ALBARELA', { size: 19, bold: true }).text(12, v(40), serviceOf(s, look), { size: 9, fit: w * 0.5 });
  art
    .text(w - 12, v(26), 'PRIORITY SAMPLE', { size: 9, bold: true, anchor: 'end', fit: w * 0.4 })
    .text(w - 12, v(40), `${day}  ${parcel.weight}`, { size: 8.5, anchor: 'end' });
  art.line(0.6, v(48), w - 0.6, v(48), { line: 0.8 });
  art
    .text(12, v(60), label.from, { size: 6.5 })
    .lines(12, v(71), [parcel.from[0] ?? '', parcel.from.slice(1).join(', ')], { size: 8, leading: 10, fit: w - 24 });
  art.line(0.6, v(90), w - 0.6, v(90), { line: 0.8 }).text(12, v(103), label.to, { size: 7.5, bold: true });
  art.lines(24, v(119), [...upper(parcel.to), 'OUTLANDIA'], { size: 12.5, leading: 15, bold: true, fit: w - 36 });
  art.put(declared(s, w - 20, true), 10, v(188));
  art.code('code128', parcel.s10, CLEAR, v(322), w - 2 * CLEAR, v(58));
  art.text(w / 2, v(392), itemNumber(s), { size: 11.5, bold: true, anchor: 'middle' });
  return art.text(w / 2, v(412), parcel.mark, { size: 8, bold: true, anchor: 'middle', fit: w - 20 });
};

/** The same trade without any frame: code and addresses above, the declaration between two rules at the foot. */
export const kurenne: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.text(0, v(22), 'kurenne', { size: 22, bold: true }).text(w, v(14), day, { size: 8.5, anchor: 'end' });
  art
    .text(w, v(26), `${label.weight} ${parcel.weight}`, { size: 8.5, anchor: 'end' })
    .text(0, v(38), serviceOf(s, look), { size: 10, fit: w });
  art.text(0, v(58), label.from, { size: 6.5 }).lines(0, v(68), [...parcel.from, s.phone], { size: 8, leading: 9.8, fit: w * 0.6 });
  art.text(0, v(124), label.to, { size: 8, bold: true });
  art.lines(0, v(142), [...parcel.to, 'OUTLANDIA'], { size: 14, leading: 17, bold: true, fit: w });
  art.code('code128', parcel.s10, CLEAR, v(212), w - 2 * CLEAR, v(53));
  art.text(w / 2, v(278), itemNumber(s), { size: 11.5, bold: true, anchor: 'middle' });
  art.put(declared(s, w, false), 0, v(285));
  return art.text(0, v(418), parcel.mark, { size: 7.5, bold: true, fit: w });
};

/** Freight: blocks between rules, two serial codes below one another, the piece of how many as large as a hand. */
export const fernhaul: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.text(0, v(14), label.from, { size: 6.5 }).lines(0, v(25), parcel.from, { size: 8, leading: 10, fit: w * 0.52 });
  art.text(w, v(34), '1/1', { size: v(40), bold: true, anchor: 'end' }).line(0, v(54), w, v(54), { line: 1.2 });
  art.text(0, v(66), label.to, { size: 7, bold: true }).lines(0, v(83), parcel.to, { size: 14, leading: 17, bold: true, fit: w });
  art.line(0, v(150), w, v(150), { line: 1.2 });
  const cells = [
    ['Fernhaul', serviceOf(s, look)],
    [label.date, day],
    [label.weight, parcel.weight],
  ] as const;
  for (const [k, [caption, value]] of cells.entries())
    art.text((k * w) / 3, v(162), caption, { size: 6.5 }).text((k * w) / 3, v(176), value, { size: 9.5, bold: true, fit: w / 3 - 8 });
  art.line(0, v(184), w, v(184), { line: 1.2 });
  art
    .code('gs1-128', `[420]${parcel.postcode}`, CLEAR, v(194), w - 2 * CLEAR, v(54))
    .text(w / 2, v(261), `(420) ${parcel.postcode}`, { size: 9.5, anchor: 'middle' });
  art.line(0, v(270), w, v(270), { line: 1.2 });
  art
    .code('gs1-128', `[00]${parcel.sscc}`, 16, v(280), w - 32, v(84))
    .text(w / 2, v(378), `(00) ${parcel.sscc}`, { size: 10.5, bold: true, anchor: 'middle' });
  return art.text(0, v(392), `${label.ref} ${parcel.order}`, { size: 8 }).text(0, v(415), parcel.mark, { size: 8, bold: true, fit: w });
};

/** For lockers: one large square code in the middle, a word to type, no linear code at all; nothing around it. */
export const bramblebox: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.text(0, v(24), 'bramblebox', { size: 24, bold: true }).text(w, v(24), serviceOf(s, look), { size: 11, anchor: 'end', fit: w * 0.45 });
  art.text(0, v(50), label.to, { size: 8, bold: true }).lines(0, v(68), parcel.to, { size: 14.5, leading: 17.5, bold: true, fit: w });
  art.code('qr', `BX;${parcel.tracking};${parcel.postcode};${parcel.order};${parcel.depot}`, w / 2 - v(70), v(139), v(140), v(140));
  art.text(w / 2, v(316), `BX ${spaced(parcel.tracking, 4)}`, { size: 15, bold: true, anchor: 'middle', fit: w });
  art.text(w / 2, v(336), `${parcel.depot} ${label.depot}`, { size: 11, anchor: 'middle', fit: w });
  art
    .text(0, v(358), label.from, { size: 6.5 })
    .lines(0, v(369), [parcel.from[0] ?? '', parcel.from.slice(1).join(', ')], { size: 8, leading: 10, fit: w });
  art.text(0, v(392), `${label.date} ${day}   ${label.weight} ${parcel.weight}   ${label.ref} ${parcel.order}`, { size: 7.5, fit: w });
  return art.text(0, v(416), parcel.mark, { size: 8, bold: true, fit: w });
};

/** A grey panel down the right side for service and route, white at the left; the code over the whole width at the foot. */
export const osprelle: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(w - 84, 0, 84, v(252), { fill: '#b8b8b8' });
  const middle = { anchor: 'middle', fit: 76 } as const;
  art.text(w - 42, v(26), 'osprelle', { size: 17, bold: true, ...middle }).text(w - 42, v(44), serviceOf(s, look), { size: 9, ...middle });
  art
    .text(w - 42, v(110), parcel.depot, { size: 36, bold: true, ...middle })
    .text(w - 42, v(140), parcel.postcode, { size: 20, ...middle });
  art.lines(w - 42, v(190), [label.piece, day, parcel.weight], { size: 10, leading: 15, ...middle });
  art.text(0, v(14), label.from, { size: 6.5 }).lines(0, v(25), [...parcel.from, s.phone], { size: 8, leading: 10, fit: w - 92 });
  art.text(0, v(96), label.to, { size: 8, bold: true }).lines(0, v(114), parcel.to, { size: 13.5, leading: 17, bold: true, fit: w - 92 });
  art.code('datamatrix', `OS${parcel.tracking}|${parcel.order}`, 4, v(186), 56, v(58));
  art.text(72, v(216), parcel.order, { size: 11, family: 'mono', fit: w - 164 });
  art.code('code128', `OS${parcel.tracking}`, CLEAR, v(270), w - 2 * CLEAR, v(96));
  art.text(w / 2, v(381), `${label.tracking} OS ${spaced(parcel.tracking, 3)}`, { size: 10.5, bold: true, anchor: 'middle', fit: w });
  return art.text(w / 2, v(414), parcel.mark, { size: 8, anchor: 'middle', fit: w });
};
