import { spaced } from './content.js';
import type { FourthDesign } from './fourth-labels-a.js';
import { begin, CLEAR, serviceOf } from './fourth-labels-a.js';

/** Boxes inside only, square and one below the other with white between: service, receiver, code; sender and mark stand free. */
export const wrenmarket: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const art = begin(look);
  art.text(0, v(10), label.from, { size: 6.5 }).lines(0, v(20), [...parcel.from, s.phone], { size: 8, leading: 9.8, fit: w * 0.55 });
  art.lines(w, v(20), [day, parcel.weight, label.piece], { size: 9, leading: 12, anchor: 'end' });
  art.rect(0.5, v(66), w - 1, v(42), { line: 1 }).text(10, v(95), 'WRENMARKET', { size: 18, bold: true });
  art.text(w - 10, v(94), serviceOf(s, look), { size: 12, anchor: 'end', fit: w * 0.42 });
  art.rect(0.5, v(118), w - 1, v(98), { line: 1 }).text(10, v(131), label.to, { size: 7.5, bold: true });
  art.lines(20, v(150), parcel.to, { size: 14.5, leading: 17.5, bold: true, fit: w - 32 });
  art
    .rect(0.5, v(226), w - 1, v(138), { line: 1 })
    .text(10, v(240), `${label.tracking} WM ${spaced(parcel.tracking)}`, { size: 10, bold: true, fit: w - 20 });
  art.code('code128', `WM${parcel.tracking}`, CLEAR, v(248), w - 2 * CLEAR, v(106));
  art.text(0, v(382), `${label.ref} ${parcel.order}   ${parcel.depot}`, { size: 9, fit: w });
  return art.text(0, v(410), parcel.mark, { size: 8, bold: true, fit: w });
};

/** Two small boxes side by side at the head, the receiver and the code free below them, a box for the references at the foot. */
export const dovecart: FourthDesign = (s, look) => {
  const { parcel, words, day } = s;
  const { width: w, height: h } = look;
  const v = (y: number): number => (y * h) / 420;
  const { label } = words;
  const half = w / 2 - 5;
  const art = begin(look);
  art.rect(0.5, 0.5, half - 1, v(66), { line: 1.2, radius: 5 }).text(8, v(14), label.from, { size: 6.5 });
  art.lines(8, v(26), parcel.from, { size: 8, leading: 10.5, fit: half - 16 });
  art.rect(half + 10.5, 0.5, half - 1, v(66), { line: 1.2, radius: 5 }).text(half + 18, v(22), 'dovecart', { size: 15, bold: true });
  art.lines(half + 18, v(40), [serviceOf(s, look), `${parcel.weight}   ${day}`], { size: 9, leading: 12.5, fit: half - 18 });
  art.text(4, v(92), label.to, { size: 8, bold: true }).lines(4, v(112), parcel.to, { size: 15.5, leading: 19, bold: true, fit: w - 8 });
  art.text(4, v(222), parcel.depot, { size: 30, bold: true }).text(w - 4, v(222), parcel.postcode, { size: 24, anchor: 'end' });
  art.code('code128', `DC${parcel.tracking}`, CLEAR, v(236), w - 2 * CLEAR, v(96));
  art.text(w / 2, v(348), `DC ${spaced(parcel.tracking)}`, { size: 12, bold: true, anchor: 'middle' });
  art
    .rect(0.5, v(360), w - 1, v(56), { line: 1.2, radius: 5 })
    .text(8, v(378), `${label.ref} ${parcel.order}   ${label.piece}`, { size: 8.5, fit: w - 16 });
  return art.text(8, v(404), parcel.mark, { size: 8, bold: true, fit: w - 16 });
};
