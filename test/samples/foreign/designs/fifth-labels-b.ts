import { spaced } from './content.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';

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
