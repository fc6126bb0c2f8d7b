import { Art } from '../kit/art.js';
import { spaced } from './content.js';
import type { Sent } from './second-words.js';
import type { Look } from './tuning-labels.js';

const start = ({ width, height, family, dot }: Look): Art => new Art(width, height, family, dot);
export type SecondDesign = (sent: Sent, look: Look) => Art;

/** A rounded frame; the tracking code between thick black bars. */
export const quillmarsh: SecondDesign = ({ parcel, words }, look) => {
  const { width: w, height: h } = look;
  const art = start(look).rect(1, 1, w - 2, h - 2, { line: 2, radius: 14 });
  art.rect(14, 14, 62, 62, { line: 1.5, radius: 6 }).text(45, 60, 'Q', { size: 46, bold: true, anchor: 'middle', family: 'serif' });
  art.text(86, 34, 'Quillmarsh', { size: 20, bold: true, fit: w - 180 }).text(86, 50, words.label[3], { size: 10, fit: w - 180 });
  art.code('datamatrix', `QM${parcel.tracking}/${parcel.postcode}`, w - 76, 14, 60, 60);
  art.line(1, 86, w - 1, 86).text(14, 100, words.label[0], { size: 7 });
  art.lines(14, 112, parcel.from, { size: 8, fit: w - 28 });
  art.line(1, 150, w - 1, 150).text(14, 164, words.label[1], { size: 8 });
  art.lines(34, 184, parcel.to, { size: 14, leading: 18, bold: true, fit: w - 50 });
  const y = h * 0.58;
  art
    .rect(1, y, w - 2, 7, { fill: '#000000' })
    .code('gs1-128', `[420]${parcel.postcode}[92]${parcel.tracking}`, 26, y + 22, w - 52, h * 0.19);
  art.text(w / 2, y + h * 0.19 + 36, spaced(`92${parcel.tracking}`), { size: 11, bold: true, anchor: 'middle' });
  art.rect(1, y + h * 0.19 + 44, w - 2, 7, { fill: '#000000' });
  art.text(16, h - 30, `${words.label[2]} ${parcel.weight}`, { size: 9 }).text(w - 16, h - 30, parcel.order, { size: 9, anchor: 'end' });
  return art.text(w / 2, h - 13, parcel.mark, { size: 8, bold: true, anchor: 'middle', fit: w - 40 });
};

/** A frame whose sides are open in the middle; two square codes and one linear. */
export const borrelunde: SecondDesign = ({ parcel, words }, look) => {
  const { width: w, height: h } = look;
  const art = start(look);
  for (const y of [0, h - 1.5]) for (const x of [0, w * 0.58]) art.rect(x, y, w * 0.42, 1.5, { fill: '#000000' });
  for (const x of [0, w - 1.5]) for (const y of [0, h * 0.56]) art.rect(x, y, 1.5, h * 0.44, { fill: '#000000' });
  art.text(w / 2, 36, 'BORRELUNDE', { size: 24, anchor: 'middle', family: 'serif', fit: w - 40 });
  art.text(w / 2, 52, `${words.label[3]} · ${parcel.depot}`.replace(' · ', ' - '), { size: 10, anchor: 'middle' });
  art.code('code128', parcel.s10, 28, 66, w - 56, h * 0.18);
  const y = 66 + h * 0.18;
  art.text(w / 2, y + 14, parcel.s10, { size: 11, anchor: 'middle', family: 'mono', bold: true }).line(16, y + 24, w - 16, y + 24);
  art.text(16, y + 38, words.label[1], { size: 8 }).lines(16, y + 58, parcel.to, { size: 15, leading: 19, fit: w - 32 });
  art.line(16, y + 116, w - 16, y + 116).code('qr', `BL:${parcel.s10}:${parcel.order}`, 16, y + 126, 80, 80);
  art
    .code('aztec', `BL${parcel.sscc}`, w - 86, y + 130, 70, 70)
    .text(w / 2, y + 172, parcel.depot, { size: 26, bold: true, anchor: 'middle', fit: w - 210 });
  art.text(16, h - 44, words.label[0], { size: 7 }).text(16, h - 33, parcel.from.join(', '), { size: 7.5, fit: w - 32 });
  return art.text(w / 2, h - 14, parcel.mark, { size: 8, anchor: 'middle', fit: w - 40 });
};

/** No line around: words at the left edge, black bars of different length. */
export const tindervane: SecondDesign = ({ parcel, words }, look) => {
  const { width: w, height: h } = look;
  const art = start(look).rect(0, 0, w, 30, { fill: '#000000' });
  art
    .text(8, 22, 'tindervane', { size: 19, bold: true, fill: '#ffffff' })
    .text(w - 8, 20, words.label[3], { size: 11, anchor: 'end', fill: '#ffffff' });
  art.code('pdf417', `TV|${parcel.tracking}|${parcel.postcode}|${parcel.order}|SPECIMEN`, 0, 42, w, 58);
  art.text(0, 116, words.label[0], { size: 7 }).lines(0, 128, parcel.from, { size: 8, fit: w * 0.6 });
  art.text(w, 150, parcel.depot, { size: 34, bold: true, anchor: 'end' });
  art.rect(0, 168, w, 3, { fill: '#000000' }).text(0, 184, words.label[1], { size: 8 });
  art.lines(18, 206, parcel.to, { size: 15, leading: 19, fit: w - 20 });
  const y = h * 0.62;
  art.code('code128', `TV${parcel.tracking}`, 14, y, w - 28, h * 0.22);
  art.text(w / 2, y + h * 0.22 + 16, `TV ${spaced(parcel.tracking)}`, { size: 12, anchor: 'middle', bold: true });
  art.text(0, h - 18, `${words.label[2]} ${parcel.weight}   ${parcel.order}`, { size: 9 });
  return art.text(0, h - 4, parcel.mark, { size: 8, fit: w });
};

/** All cells, as a table prints: every side ruled, ITF and a square code. */
export const wexmallow: SecondDesign = ({ parcel, words }, look) => {
  const { width: w, height: h } = look;
  const rows = [0.5, h * 0.12, h * 0.27, h * 0.47, h * 0.6, h * 0.86, h - 0.5];
  const art = start(look).rect(0.5, 0.5, w - 1, h - 1);
  for (const y of rows.slice(1, -1)) art.line(0.5, y, w - 0.5, y);
  const [, a = 0, b = 0, c = 0, d = 0, e = 0] = rows;
  art.line(w * 0.7, 0.5, w * 0.7, b).line(w / 2, c, w / 2, d);
  art
    .text(8, a * 0.7, 'Wexmallow', { size: 22, family: 'serif', fit: w * 0.65 })
    .text(w * 0.72, a * 0.65, words.label[3], { size: 10, fit: w * 0.26 });
  art.text(6, a + 11, words.label[0], { size: 6.5 }).lines(6, a + 23, parcel.from, { size: 8.5, fit: w * 0.66 });
  art.code('datamatrix', `WX${parcel.tracking}`, w * 0.72, a + 5, w * 0.26, b - a - 10);
  art.text(6, b + 12, words.label[1], { size: 7 }).lines(24, b + 31, parcel.to, { size: 14, leading: 18, bold: true, fit: w - 40 });
  art.text(w / 4, d - 14, parcel.depot, { size: 30, bold: true, anchor: 'middle', fit: w / 2 - 12 });
  art.text(w / 2 + 8, c + 20, `${words.label[2]} ${parcel.weight}`, { size: 9 }).text(w / 2 + 8, c + 38, parcel.order, { size: 9 });
  art.code('itf-14', parcel.routing.slice(0, 13), 30, d + 10, w - 60, e - d - 32);
  art.text(w / 2, e - 7, parcel.routing.slice(0, 13), { size: 10, anchor: 'middle', family: 'mono' });
  return art.text(w / 2, (e + h) / 2 + 3, parcel.mark, { size: 9, bold: true, anchor: 'middle', fit: w - 16 });
};

/** Designed lying, 6 in wide: two columns, thick frame. */
export const nordhavel: SecondDesign = ({ parcel, words }, look) => {
  const { width: w, height: h } = look;
  const art = start(look)
    .rect(2, 2, w - 4, h - 4, { line: 4 })
    .line(w * 0.42, 4, w * 0.42, h * 0.56, { line: 1.5 });
  art.text(14, 34, 'NORDHAVEL', { size: 22, bold: true, fit: w * 0.38 }).text(14, 50, words.label[3], { size: 9.5 });
  art.text(14, 70, words.label[0], { size: 7 }).lines(14, 82, parcel.from, { size: 8, fit: w * 0.38 });
  art
    .code('qr', `NH ${parcel.tracking} ${parcel.order}`, w * 0.24, h * 0.56 - 66, 58, 58)
    .text(14, h * 0.56 - 24, parcel.depot, { size: 20, bold: true, fit: w * 0.22 });
  art.text(w * 0.42 + 10, 24, words.label[1], { size: 8 }).lines(w * 0.42 + 20, 50, parcel.to, { size: 16, leading: 22, fit: w * 0.52 });
  art.text(w * 0.42 + 20, h * 0.56 - 12, `${words.label[2]} ${parcel.weight}`, { size: 9 });
  art.line(2, h * 0.56, w - 2, h * 0.56, { line: 1.5 }).code('gs1-128', `[00]${parcel.sscc}`, 40, h * 0.56 + 12, w - 80, h * 0.24);
  art.text(w / 2, h * 0.8 + 25, `(00) ${parcel.sscc}`, { size: 11, anchor: 'middle' });
  return art.text(w / 2, h - 12, parcel.mark, { size: 8, bold: true, anchor: 'middle', fit: w - 40 });
};

/** Double frame, thick and thin, with a grey head; MaxiCode beside the linear code's number. */
export const cobblefinch: SecondDesign = ({ parcel, words }, look) => {
  const { width: w, height: h } = look;
  const art = start(look)
    .rect(1.5, 1.5, w - 3, h - 3, { line: 3 })
    .rect(6, 6, w - 12, h - 12, { line: 0.5 });
  art.rect(10, 10, w - 20, 44, { fill: '#d8d8d8' }).text(20, 42, 'Cobblefinch', { size: 25, bold: true, fit: w * 0.6 });
  art.text(w - 18, 40, words.label[3], { size: 10, anchor: 'end', fit: w * 0.3 });
  art.text(14, 68, words.label[0], { size: 7 }).lines(14, 80, parcel.from, { size: 8, fit: w - 28 });
  art.line(10, 110, w - 10, 110, { line: 0.5 }).text(14, 123, words.label[1], { size: 8 });
  art.lines(30, 142, parcel.to, { size: 14, leading: 18, bold: true, fit: w - 48 });
  const y = h * 0.46;
  art.line(10, y, w - 10, y, { line: 0.5 }).code('maxicode', `CF ${parcel.postcode} ${parcel.tracking}`, 16, y + 8, 82, 76);
  art
    .text(w - 16, y + 40, parcel.depot, { size: 32, bold: true, anchor: 'end' })
    .text(w - 16, y + 64, `${words.label[2]} ${parcel.weight}`, { size: 9, anchor: 'end' });
  art.text(w - 16, y + 80, parcel.order, { size: 9, anchor: 'end' }).line(10, y + 94, w - 10, y + 94, { line: 2 });
  art.code('code128', `CF${parcel.tracking}`, 26, y + 104, w - 52, h - y - 156);
  art.text(w / 2, h - 36, `CF ${spaced(parcel.tracking, 3)}`, { size: 11, anchor: 'middle', bold: true });
  return art.text(w / 2, h - 16, parcel.mark, { size: 7.5, anchor: 'middle', fit: w - 36 });
};
