import { Art } from '../kit/art.js';
import type { Parcel } from './content.js';
import { spaced } from './content.js';
import type { Words } from './fresh-words.js';
import type { Look } from './tuning-labels.js';

const start = ({ width, height, family, dot }: Look): Art => new Art(width, height, family, dot);
const item = (s10: string): string => `${s10.slice(0, 2)} ${spaced(s10.slice(2, 11), 3)} ${s10.slice(11)}`;
export type Design = (parcel: Parcel, look: Look, words: Words) => Art;

/** Two thin frames, one in the other; the code across the middle, the sender at the bottom. */
export const pellwyck: Design = (parcel, look, { label: [from, to, weight, reference, service] }) => {
  const { width: w, height: h } = look;
  const art = start(look)
    .rect(0.5, 0.5, w - 1, h - 1)
    .rect(5, 5, w - 10, h - 10, { line: 0.6 });
  art
    .text(14, 31, 'pellwyck', { size: 21, bold: true, family: 'serif' })
    .text(w - 14, 30, service, { size: 11, anchor: 'end', fit: w * 0.5 });
  art.line(5, 44, w - 5, 44, { line: 0.6 }).text(14, 58, to, { size: 7 });
  art.lines(14, 76, parcel.to, { size: 13.5, leading: 16, fit: w - 104 });
  art.code('datamatrix', `PW${parcel.tracking}${parcel.postcode}`, w - 78, 54, 62, 62);
  const y = h * 0.36;
  art.line(5, y, w - 5, y, { line: 0.6 }).code('code128', `PW${parcel.tracking}`, 26, y + 10, w - 52, h * 0.25);
  art.text(w / 2, y + h * 0.25 + 26, `PW ${spaced(parcel.tracking, 3)}`, { size: 12, anchor: 'middle', family: 'mono', bold: true });
  const y2 = y + h * 0.25 + 36;
  art.line(5, y2, w - 5, y2, { line: 0.6 }).text(14, y2 + 34, parcel.depot, { size: 32, bold: true });
  art.text(w - 14, y2 + 32, parcel.postcode, { size: 24, anchor: 'end' }).line(5, y2 + 44, w - 5, y2 + 44, { line: 0.6 });
  art.text(14, y2 + 55, from, { size: 6.5 }).lines(14, y2 + 66, parcel.from, { size: 7.5, fit: w * 0.56 });
  art.text(w - 14, y2 + 60, `${weight} ${parcel.weight}`, { size: 8, anchor: 'end', fit: w * 0.36 });
  art.text(w - 14, y2 + 74, `${reference} ${parcel.order}`, { size: 8, anchor: 'end', fit: w * 0.36 });
  return art.text(w / 2, h - 11, parcel.mark, { size: 7.5, bold: true, anchor: 'middle', fit: w - 30 });
};

/** Closed by bars above and below and open at the sides; two linear codes one above the other. */
export const harrowtern: Design = (parcel, look, { label: [from, to, weight, , service] }) => {
  const { width: w, height: h } = look;
  const art = start(look).rect(0, 0, w, 5, { fill: '#000000' });
  art.text(0, 30, 'HARROWTERN', { size: 21, bold: true, fit: w - 80 }).text(0, 45, service, { size: 10, fit: w - 80 });
  art.code('aztec', `HT${parcel.sscc}`, w - 60, 12, 60, 60).text(0, 58, from, { size: 6 });
  art.lines(0, 68, parcel.from, { size: 7.5, fit: w - 76 });
  art.line(0, 104, w, 104, { line: 2 }).text(0, 117, to, { size: 8, bold: true });
  art.lines(22, 136, parcel.to, { size: 15, leading: 18, bold: true, fit: w - 30 });
  const y = h * 0.48;
  art.rect(1, y, w * 0.4, 42, { line: 1.5 }).text(w * 0.2, y + 31, parcel.depot, { size: 27, bold: true, anchor: 'middle' });
  art
    .text(w, y + 18, parcel.postcode, { size: 20, anchor: 'end' })
    .text(w, y + 38, `${weight} ${parcel.weight}`, { size: 9, anchor: 'end' });
  const routing = `HT${parcel.routing.slice(0, 8)}`;
  art.code('code128', routing, 30, y + 52, w - 60, h * 0.1).text(w / 2, y + 62 + h * 0.1, routing, { size: 8, anchor: 'middle' });
  const low = y + 68 + h * 0.1;
  art.code('gs1-128', `[00]${parcel.sscc}`, 12, low, w - 24, h * 0.18);
  art.text(w / 2, low + h * 0.18 + 11, `(00) ${parcel.sscc}`, { size: 10.5, anchor: 'middle' });
  art.text(0, h - 8, parcel.mark, { size: 7, fit: w * 0.62 }).text(w, h - 8, parcel.order, { size: 7, anchor: 'end' });
  return art.rect(0, h - 5, w, 5, { fill: '#000000' });
};

/** No frame; the only linear code stands along the left side. */
export const skimmerdal: Design = (parcel, look, { label: [from, to, weight, reference, service] }) => {
  const { width: w, height: h } = look;
  const art = start(look).code('code128', `SK${parcel.tracking}`, 0, 0, 56, h * 0.72, 90);
  art.text(62, h * 0.1, `SK ${spaced(parcel.tracking)}`, { size: 9.5, turn: 90, bold: true });
  art.text(84, 22, 'Skimmerdal', { size: 24, fit: w - 88 }).text(84, 37, service, { size: 10, bold: true, fit: w - 88 });
  art.text(84, 52, from, { size: 6.5 }).lines(84, 62, parcel.from, { size: 7.5, fit: w - 88 });
  art.line(84, 104, w, 104).text(84, 116, to, { size: 7 });
  art.lines(84, 136, parcel.to, { size: 14, leading: 17, fit: w - 88 });
  const low = h * 0.75;
  art.text(84, low - 14, parcel.depot, { size: 30, bold: true });
  art.code('qr', `SK:${parcel.tracking}:${parcel.order}`, w - (low - 226), 218, low - 228, low - 228);
  art.line(0, low, w, low, { line: 3 }).text(0, low + 38, parcel.postcode, { size: 36, bold: true });
  art.text(w, low + 22, `${weight} ${parcel.weight}`, { size: 10, anchor: 'end' });
  art.text(w, low + 38, `${reference} ${parcel.order}`, { size: 9, anchor: 'end' });
  art.text(0, h - 16, parcel.mark, { size: 9, bold: true, fit: w });
  return art.text(0, h - 3, 'skimmerdal (make-believe) / 555-0188', { size: 6.5 });
};

/** Framed; a stacked code on top, a black band across, the tracking code at the bottom. */
export const ostrelane: Design = (parcel, look, { label: [from, to, weight, reference, service] }) => {
  const { width: w, height: h } = look;
  const art = start(look).rect(1, 1, w - 2, h - 2, { line: 2 });
  art.code('pdf417', `OL|${parcel.tracking}|${parcel.postcode}|${parcel.order}|MADE UP`, 16, 10, w - 32, h * 0.14);
  const y = h * 0.14 + 18;
  art
    .line(1, y, w - 1, y)
    .line(w * 0.58, y, w * 0.58, y + 62)
    .text(8, y + 10, from, { size: 6 });
  art.lines(8, y + 21, parcel.from, { size: 7.5, fit: w * 0.55 - 10 });
  art.lines(w * 0.58 + 6, y + 14, [`${reference} ${parcel.order}`, `${weight} ${parcel.weight}`, 'OSTRELANE', '1 / 1'], {
    size: 8,
    fit: w * 0.38,
  });
  const y2 = y + 62;
  art
    .rect(0, y2, w, 30, { fill: '#000000' })
    .text(w / 2, y2 + 21, service, { size: 16, bold: true, anchor: 'middle', fill: '#ffffff', fit: w - 20 });
  art.text(10, y2 + 42, to, { size: 7 }).lines(24, y2 + 60, parcel.to, { size: 14, leading: 17, fit: w - 100 });
  art.text(w - 8, y2 + 66, parcel.depot, { size: 24, bold: true, anchor: 'end' });
  const y3 = h * 0.66;
  art.line(1, y3, w - 1, y3).code('code128', `OL${parcel.tracking}8`, 24, y3 + 10, w - 48, h * 0.34 - 58);
  art.text(w / 2, h - 33, `OL ${spaced(parcel.tracking)} 8`, { size: 12, anchor: 'middle', bold: true });
  return art.line(1, h - 25, w - 1, h - 25).text(8, h - 10, parcel.mark, { size: 7.5, fit: w - 16 });
};

/** Only the corners are marked; code under the name, square code and routing code at the bottom. */
export const moldwerf: Design = (parcel, look, { label: [from, to, weight, , service] }) => {
  const { width: w, height: h } = look;
  const art = start(look);
  for (const x of [0, w - 26]) for (const y of [0, h - 3]) art.rect(x, y, 26, 3, { fill: '#000000' });
  for (const x of [0, w - 3]) for (const y of [0, h - 26]) art.rect(x, y, 3, 26, { fill: '#000000' });
  art
    .text(w / 2, 32, 'Moldwerf', { size: 22, bold: true, anchor: 'middle' })
    .text(w / 2, 48, service, { size: 10, anchor: 'middle', fit: w - 60 });
  art.code('code128', parcel.s10, 30, 58, w - 60, h * 0.17);
  const y = 58 + h * 0.17;
  art.text(w / 2, y + 14, item(parcel.s10), { size: 12, anchor: 'middle', bold: true }).line(18, y + 24, w - 18, y + 24, { line: 0.7 });
  art.text(22, y + 38, to, { size: 7.5 }).lines(40, y + 58, parcel.to, { size: 14, leading: 17, fit: w - 66 });
  const low = h * 0.66;
  art.line(18, low, w - 18, low, { line: 0.7 }).code('qr', `MW/${parcel.s10}/${parcel.order}`, 20, low + 9, 76, 76);
  art
    .code('itf', `${parcel.routing}4`, 112, low + 12, w - 134, 34)
    .text(w - 22, low + 57, `${parcel.routing}4`, { size: 8.5, anchor: 'end' });
  art
    .text(112, low + 84, parcel.depot, { size: 24, bold: true })
    .text(w - 22, low + 82, `${weight} ${parcel.weight}`, { size: 9, anchor: 'end', fit: 80 });
  art.text(22, low + 100, `${from}: ${parcel.from.join(', ')}`, { size: 7, fit: w - 44 });
  return art.text(32, low + 115, parcel.mark, { size: 8, bold: true, fit: w - 64 });
};
