import { Art } from '../kit/art.js';
import type { Family } from '../kit/shapes.js';
import { ascii, spaced } from './content.js';
import type { Sent } from './fourth-words.js';

/** A dot of a printer of 8 dots/mm, in pt: carriers draw their codes for it. */
export const DOT = 72 / 203.2;
export interface FourthLook {
  readonly width: number;
  readonly height: number;
  readonly family?: Family;
  readonly dot?: number;
  /** The label of a return: it says so. */
  readonly back?: boolean;
}
export type FourthDesign = (sent: Sent, look: FourthLook) => Art;

export const begin = ({ width, height, family, dot = DOT }: FourthLook): Art => new Art(width, height, family, dot);
/** Widest a linear code may be with ten modules of clear paper at both sides, as long as a module is 2 pt or less. */
export const CLEAR = 22;
const BLACK = { fill: '#000000' } as const;
export const serviceOf = ({ words }: Sent, { back = false }: FourthLook): string => (back ? words.label.back : words.label.service);

/** Heavy frame, a letter as large as its cell, postage box, thick rules around the code to track by. */
export const brindlewick: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(1, 1, w - 2, h - 2, { line: 2 });
  art.text(36, v(58), look.back === true ? 'R' : 'G', { size: v(62), bold: true, anchor: 'middle' }).line(72, 1, 72, v(72), { line: 2 });
  art.rect(w - 112, 10, 102, v(54), { line: 0.8 });
  art.lines(w - 61, 23, ['NO POSTAGE PAID', 'BRINDLEWICK', day, 'eSpecimen'], { size: 8, leading: 11.5, anchor: 'middle', fit: 96 });
  art.lines(82, v(24), [parcel.weight, `ZONE ${parcel.routing.slice(0, 1)}`, label.piece], { size: 9, leading: 14, fit: w - 202 });
  art.line(1, v(72), w - 1, v(72), { line: 2 });
  art.text(w / 2, v(92), `BRINDLEWICK ${serviceOf(s, look).toUpperCase()}`, { size: 17, bold: true, anchor: 'middle', fit: w - 20 });
  art.line(1, v(100), w - 1, v(100), { line: 2 });
  art.lines(12, v(114), [...parcel.from, s.phone], { size: 8, leading: 9.8, fit: w - 110 });
  art
    .rect(w - 66, v(108), 54, 18, { line: 1 })
    .text(w - 39, v(108) + 13, parcel.depot, { size: 11, bold: true, anchor: 'middle', fit: 48 });
  art.text(12, v(172), label.to, { size: 8, bold: true });
  art.code('datamatrix', `BW${s.package22}${parcel.postcode}`, 12, v(180), 48, 48);
  art.lines(
    72,
    v(186),
    parcel.to.map((each) => each.toUpperCase()),
    { size: 12, leading: 14.5, fit: w - 86 },
  );
  art.line(1, v(260), w - 1, v(260), { line: 4 });
  art.text(w / 2, v(275), `BRINDLEWICK ${label.tracking}`, { size: 10, bold: true, anchor: 'middle' });
  art.code('gs1-128', `[420]${parcel.postcode}[92]${s.package22.slice(2)}`, 13, v(286), w - 26, v(60));
  art.text(w / 2, v(362), spaced(s.package22), { size: 11, bold: true, anchor: 'middle' });
  art.line(1, v(371), w - 1, v(371), { line: 4 });
  art.text(12, v(387), `${label.ref}: ${parcel.order}`, { size: 8 }).code('datamatrix', parcel.order, w - 42, v(378), 32, 32);
  return art.text(12, v(408), parcel.mark, { size: 8, bold: true, fit: w - 66 });
};

/** No outer frame: rules from side to side only, the heavy ones as thick as a finger; routing beside a hexagon code. */
export const tamberline: FourthDesign = (s, look) => {
  const { parcel, words } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.lines(0, 8, [...parcel.from, s.phone], { size: 7.5, leading: 9.2, fit: w * 0.56 });
  art
    .text(w - 72, 11, parcel.weight.toUpperCase(), { size: 12, bold: true, anchor: 'end' })
    .text(w, 11, label.piece, { size: 11, bold: true, anchor: 'end', fit: 66 });
  art.text(0, v(62), label.to, { size: 9, bold: true });
  art.lines(
    18,
    v(76),
    parcel.to.map((each) => each.toUpperCase()),
    { size: 12.5, leading: 14.5, bold: true, fit: w - 24 },
  );
  art.line(0, v(138), w, v(138), { line: 1 }).line(w - 96, v(138), w - 96, v(226), { line: 1 });
  art.text(6, v(168), `EX ${parcel.routing.slice(0, 3)} ${parcel.depot.slice(3, 4)}-${parcel.routing.slice(4, 6)}`, {
    size: 30,
    bold: true,
    fit: w - 110,
  });
  art.code('code128', `420${parcel.postcode}`, 22, v(178), w - 144, v(40));
  art.code('maxicode', `TAMBER ${parcel.postcode} ${parcel.tracking.slice(0, 9)}`, w - 88, v(138) + 6, 80, 77);
  art.rect(0, v(228), w, 8, BLACK);
  art.text(0, v(260), `TAMBERLINE ${serviceOf(s, look).toUpperCase()}`, { size: 19, bold: true, fit: w - 52 });
  art.text(0, v(274), `${label.tracking} TB ${spaced(parcel.tracking)}`, { size: 9.5, fit: w - 52 });
  art
    .rect(w - 38, v(240), 36, v(36), BLACK)
    .text(w - 20, v(240) + 28, look.back === true ? 'R' : '2', { size: 28, bold: true, fill: '#ffffff', anchor: 'middle' });
  art.line(0, v(281), w, v(281), { line: 1 });
  art.code('code128', `TB${parcel.tracking}`, CLEAR, v(290), w - 2 * CLEAR, v(74));
  art.rect(0, v(374), w, 8, BLACK);
  art.lines(0, v(394), [`BILLING: NONE     ${label.ref}: ${parcel.order}`], { size: 8.5, fit: w * 0.76 });
  art.text(w, v(394), parcel.depot, { size: 8.5, anchor: 'end' });
  return art.text(0, v(416), parcel.mark, { size: 8, bold: true, fit: w });
};

/** Frame with rules between all rows; the receiver's town in large letters, two wide codes below one another. */
export const dornwald: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0.6, 0.6, w - 1.2, h - 1.2, { line: 1.2 });
  art.text(8, 13, label.from, { size: 6.5 }).lines(8, 24, parcel.from, { size: 8, leading: 10, fit: w * 0.56 });
  art
    .rect(w - 100, 0.6, 99.4, v(62), BLACK)
    .text(w - 50, v(28), 'DORNWALD', { size: 15, bold: true, fill: '#ffffff', anchor: 'middle', fit: 88 });
  art.text(w - 50, v(48), serviceOf(s, look), { size: 10, fill: '#ffffff', anchor: 'middle', fit: 88 });
  art.line(0.6, v(62), w - 0.6, v(62), { line: 1.2 }).text(8, v(62) + 12, label.to, { size: 7 });
  const town = parcel.to.at(-1) ?? '';
  art.lines(20, v(62) + 28, parcel.to.slice(0, -1), { size: 12, leading: 14.5, fit: w - 34 });
  art.text(20, v(146), town, { size: 19, bold: true, fit: w - 34 });
  art.line(0.6, v(156), w - 0.6, v(156), { line: 1.2 });
  const cells = [
    [label.weight, parcel.weight],
    [label.date, day],
    [label.ref, parcel.order],
    [label.depot, parcel.depot],
  ] as const;
  for (const [k, [caption, value]] of cells.entries()) {
    const x = 0.6 + ((w - 1.2) * k) / 4;
    if (k > 0) art.line(x, v(156), x, v(188), { line: 0.6 });
    art
      .text(x + 5, v(156) + 10, caption, { size: 6, fit: w / 4 - 8 })
      .text(x + 5, v(156) + 24, value, { size: 9.5, bold: true, fit: w / 4 - 9 });
  }
  art.line(0.6, v(188), w - 0.6, v(188), { line: 1.2 });
  art.code('itf', `${parcel.routing}7`, CLEAR, v(198), w - 2 * CLEAR, v(66));
  art.text(w / 2, v(276), `${parcel.postcode}.${spaced(parcel.routing.slice(0, 9), 3).replaceAll(' ', '.')}`, {
    size: 9,
    anchor: 'middle',
  });
  art.line(0.6, v(284), w - 0.6, v(284), { line: 1.2 });
  art.code('code128', `DW${parcel.tracking}`, CLEAR, v(294), w - 2 * CLEAR, v(78));
  art.text(w / 2, v(385), `${label.tracking} DW ${spaced(parcel.tracking, 3)}`, { size: 10, bold: true, anchor: 'middle', fit: w - 20 });
  art.line(0.6, v(394), w - 0.6, v(394), { line: 0.6 });
  return art.text(w / 2, v(410), parcel.mark, { size: 8, anchor: 'middle', bold: true, fit: w - 16 });
};

/** Thin frame with round corners, a depot in a box, a stacked code in the middle, the long code at the foot with its number above. */
export const colisandre: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look).rect(0.5, 0.5, w - 1, h - 1, { line: 1, radius: 9 });
  art.disc(22, v(24), 12, '#000000').disc(26, v(21), 7, '#ffffff').text(40, v(30), 'colisandre', { size: 19, bold: true, family: 'serif' });
  art.rect(w - 104, v(8), 94, v(34), { line: 1.6 }).text(w - 57, v(33), parcel.depot, { size: 20, bold: true, anchor: 'middle', fit: 84 });
  art.line(0.5, v(50), w - 0.5, v(50), { line: 0.7 }).text(10, v(68), serviceOf(s, look), { size: 14, bold: true, fit: w * 0.62 });
  art.lines(w - 10, v(62), [day, `${label.weight} : ${parcel.weight}`], { size: 8, leading: 10.5, anchor: 'end' });
  art.line(0.5, v(78), w - 0.5, v(78), { line: 0.7 }).text(10, v(90), `${label.to} :`, { size: 8 });
  art.lines(10, v(106), parcel.to, { size: 13, leading: 16, fit: w - 20 });
  art.text(10, v(174), `Tél. ${s.phone}`, { size: 8 }).text(w - 10, v(174), label.piece, { size: 9, bold: true, anchor: 'end' });
  art.line(0.5, v(182), w - 0.5, v(182), { line: 0.7 });
  art.code('pdf417', `CLS|${parcel.tracking}|${parcel.postcode}|${parcel.order}|${ascii(parcel.town)}`, 14, v(190), w - 28, v(52));
  art.line(0.5, v(250), w - 0.5, v(250), { line: 0.7 });
  art.text(w / 2, v(268), `${label.tracking} : 8C ${spaced(parcel.tracking, 4)}`, { size: 11, bold: true, anchor: 'middle', fit: w - 20 });
  art.code('code128', `8C${parcel.tracking}`, CLEAR, v(276), w - 2 * CLEAR, v(82));
  art.line(0.5, v(366), w - 0.5, v(366), { line: 0.7 }).text(10, v(377), `${label.from} :`, { size: 6.5 });
  art.lines(10, v(386), [parcel.from[0] ?? '', parcel.from.slice(1).join(', ')], { size: 7.5, leading: 9, fit: w - 110 });
  art.text(w - 10, v(386), `${label.ref} ${parcel.order}`, { size: 7.5, anchor: 'end', fit: 96 });
  return art.text(10, v(412), parcel.mark, { size: 8, bold: true, fit: w - 20 });
};
