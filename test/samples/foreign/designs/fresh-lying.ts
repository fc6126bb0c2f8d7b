import { Art } from '../kit/art.js';
import { spaced } from './content.js';
import type { Design } from './fresh-labels.js';
import type { Look } from './tuning-labels.js';

const start = ({ width, height, family, dot }: Look): Art => new Art(width, height, family, dot);

/** Designed lying, framed: the code stands at the right, square code beside the sender. */
export const ribbelac: Design = (parcel, look, { label: [from, to, weight, reference, service] }) => {
  const { width: w, height: h } = look;
  const art = start(look)
    .rect(1, 1, w - 2, h - 2, { line: 2 })
    .line(w - 100, 1, w - 100, h - 1);
  art.code('code128', `RL${parcel.tracking}`, w - 82, 22, 64, h - 44, 270);
  art.text(14, 31, 'RIBBELAC', { size: 24, bold: true }).text(w - 112, 31, parcel.depot, { size: 24, bold: true, anchor: 'end' });
  art.text(14, 48, service, { size: 11, fit: w - 220 }).text(w - 112, 48, `${weight} ${parcel.weight}`, { size: 9, anchor: 'end' });
  art
    .line(1, 58, w - 100, 58)
    .text(14, 71, to, { size: 7 })
    .lines(30, 92, parcel.to, { size: 16, leading: 19, fit: w - 150 });
  art
    .line(1, 172, w - 100, 172)
    .text(14, 183, from, { size: 7 })
    .lines(14, 195, parcel.from, { size: 8, fit: w - 208 });
  art.code('datamatrix', `RL${parcel.sscc}${parcel.postcode}`, w - 176, 180, 66, 66);
  art.text(14, h - 32, `RL ${spaced(parcel.tracking, 6)}`, { size: 13, bold: true, fit: w - 210 });
  art.text(14, h - 11, parcel.mark, { size: 8, fit: w - 236 });
  return art.text(w - 112, h - 11, `${reference} ${parcel.order}`, { size: 8, anchor: 'end', fit: 100 });
};

/** Designed lying, no frame: black bars above and below, the code wide at the bottom. */
export const voxhollow: Design = (parcel, look, { label: [from, to, , , service] }) => {
  const { width: w, height: h } = look;
  const art = start(look).rect(0, 0, w, 8, { fill: '#000000' });
  art.rect(0, h - 8, w, 8, { fill: '#000000' }).text(0, 34, 'voxhollow', { size: 25, bold: true, family: 'serif' });
  art.text(0, 49, service, { size: 11, fit: w * 0.55 }).text(0, 68, to, { size: 8, bold: true });
  art.lines(16, 89, parcel.to, { size: 16, leading: 19, fit: w * 0.56 });
  art.code('qr', `https://example.com/vx/${parcel.sscc}`, w - 78, 16, 76, 76).text(w * 0.64, 106, from, { size: 7 });
  art.lines(w * 0.64, 118, parcel.from, { size: 8, fit: w * 0.35 });
  art.text(w, 172, parcel.depot, { size: 20, bold: true, anchor: 'end' }).text(w * 0.64, 172, parcel.weight, { size: 9 });
  art.code('gs1-128', `[00]${parcel.sscc}`, 30, h - 106, w - 60, 64);
  art.text(w / 2, h - 28, `(00) ${spaced(parcel.sscc, 6)}`, { size: 11, anchor: 'middle' });
  return art.text(w / 2, h - 13, parcel.mark, { size: 8, anchor: 'middle', fit: w - 20 });
};
