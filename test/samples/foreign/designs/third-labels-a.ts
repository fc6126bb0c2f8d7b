import { Art } from '../kit/art.js';
import { spaced } from './content.js';
import type { Posted } from './third-words.js';
import type { Look } from './tuning-labels.js';

export const start = ({ width, height, family, dot }: Look): Art => new Art(width, height, family, dot);
export type ThirdDesign = (posted: Posted, look: Look) => Art;

/** A frame of 1.5 pt in five bands; the receiver beside a square code, the tracking number between two rules as thick as a finger's nail. */
export const fennbrook: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const art = start(look).rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5 });
  const [a, b, c, d] = [h * 0.145, h * 0.21, Math.max(h * 0.5, h * 0.21 + 114), h * 0.83];
  art.text(12, a * 0.66, 'F', { size: a * 0.72, bold: true }).line(a * 0.78, 0.75, a * 0.78, a);
  art.lines(a * 0.78 + 10, 17, ['FENNBROOK', day, `${weight} ${parcel.weight}`, '1 / 1'], { size: 8.5, leading: 13, fit: w * 0.34 });
  art.rect(w - 104, 10, 92, a - 20, { line: 0.7 });
  art.lines(w - 58, 24, ['NO FEE PAID', 'EXAMPLE', parcel.order], { size: 8, leading: 13, anchor: 'middle', fit: 84 });
  art
    .line(0.75, a, w - 0.75, a, { line: 1.5 })
    .text(w / 2, (a + b) / 2 + 7, service, { size: 20, bold: true, anchor: 'middle', fit: w - 24 });
  art.line(0.75, b, w - 0.75, b, { line: 1.5 }).text(12, b + 12, from, { size: 6.5, bold: true });
  art.lines(12, b + 23, parcel.from, { size: 8, leading: 9.5, fit: w * 0.6 });
  art.text(w - 12, b + 20, parcel.depot, { size: 17, bold: true, anchor: 'end' });
  art.code('datamatrix', `FB${parcel.tracking}0${parcel.postcode}`, 12, c - 60, 50, 50);
  art.text(72, c - 56, to, { size: 6.5, bold: true }).lines(72, c - 40, parcel.to, { size: 12.5, leading: 15, fit: w - 86 });
  art.rect(0.75, c, w - 1.5, 4.5, { fill: '#000000' });
  art.text(w / 2, c + 19, `FENNBROOK ${ref} #`, { size: 9, bold: true, anchor: 'middle' });
  art.code('gs1-128', `[420]${parcel.postcode}[93]${parcel.tracking}`, 22, c + 28, w - 44, d - c - 58);
  art.text(w / 2, d - 14, spaced(`93${parcel.tracking}`), { size: 11, bold: true, anchor: 'middle' });
  art.rect(0.75, d - 4.5, w - 1.5, 4.5, { fill: '#000000' }).text(12, d + 16, `${ref}: ${parcel.order}`, { size: 8 });
  return art.text(w / 2, h - 12, parcel.mark, { size: 8, anchor: 'middle', bold: true, fit: w - 24 });
};

/** Thin lines, many small fields as a data processing department likes them, the code to sort by at the foot. */
export const tollivane: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const art = start(look).rect(0.25, 0.25, w - 0.5, h - 0.5, { line: 0.5 });
  const [a, b, c, d, e] = [h * 0.1, h * 0.22, h * 0.42, h * 0.52, h * 0.8];
  for (const y of [a, b, c, d, e]) art.line(0, y, w, y, { line: 0.5 });
  art
    .rect(6, 6, a - 12, a - 12, { fill: '#000000', radius: 6 })
    .text(a / 2, a * 0.68, 't', { size: a * 0.6, bold: true, fill: '#ffffff', anchor: 'middle' });
  art
    .text(a + 4, a * 0.66, 'tollivane', { size: 20, bold: true, fit: w * 0.4 })
    .text(w - 8, a * 0.62, service, { size: 12, anchor: 'end', bold: true, fit: w * 0.42 });
  art.text(6, a + 10, from, { size: 6 }).lines(6, a + 20, parcel.from, { size: 7.5, leading: 9, fit: w * 0.5 });
  art
    .line(w * 0.58, a, w * 0.58, b, { line: 0.5 })
    .text(w * 0.58 + 5, a + 10, ref, { size: 6 })
    .text(w * 0.58 + 5, a + 22, parcel.order, { size: 9, family: 'mono' });
  art.text(w * 0.58 + 5, a + 36, `${weight} ${parcel.weight}   ${day}`, { size: 7.5, fit: w * 0.4 });
  art.text(6, b + 11, to, { size: 6.5 }).lines(16, b + 29, parcel.to, { size: 14, leading: 17, fit: w - 110 });
  art.code('qr', `TV;${parcel.tracking};${parcel.postcode};${parcel.order}`, w - 80, b + 5, 72, c - b - 10);
  const cells = [parcel.depot, parcel.postcode, `R${parcel.routing.slice(0, 3)}`, '1/1'];
  for (const [k, cell] of cells.entries()) {
    if (k > 0) art.line((w * k) / 4, c, (w * k) / 4, d, { line: 0.5 });
    art.text((w * (k + 0.5)) / 4, (c + d) / 2 + 7, cell, { size: 18, bold: true, anchor: 'middle', fit: w / 4 - 10 });
  }
  art.code('code128', `TV${parcel.tracking}EX`, 24, d + 10, w - 48, e - d - 34);
  art.text(w / 2, e - 8, `TV ${spaced(parcel.tracking)} EX`, { size: 10, anchor: 'middle', family: 'mono' });
  art.code('itf', parcel.routing, 10, e + 8, w * 0.52, h - e - 36).text(10, h - 17, parcel.routing, { size: 7, family: 'mono' });
  const end = art.paragraph(w * 0.58, e + 14, w * 0.39, words.small.split('. ')[0] ?? '', { size: 5.5, leading: 7 });
  art.line(w * 0.58, end + 12, w - 8, end + 12, { line: 0.4 });
  return art.text(6, h - 5, parcel.mark, { size: 7, fit: w - 12 });
};

/** No frame: the routing number in large figures on top, the code to track by at the foot, hairlines between. */
export const gravelund: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const art = start(look).text(0, 30, 'gravelund', { size: 26, family: 'serif', bold: true });
  art.text(w, 26, service, { size: 11, anchor: 'end', fit: w * 0.45 }).line(0, 40, w, 40, { line: 0.4 });
  art.text(0, h * 0.235, `${parcel.depot} ${parcel.postcode}`, { size: 44, bold: true, fit: w });
  art.line(0, h * 0.26, w, h * 0.26, { line: 0.4 }).text(0, h * 0.26 + 12, to, { size: 7 });
  art.lines(0, h * 0.26 + 31, parcel.to, { size: 15, leading: 18, fit: w - 8 });
  const y = h * 0.47;
  art
    .line(0, y, w, y, { line: 0.4 })
    .text(0, y + 11, from, { size: 6.5 })
    .lines(0, y + 22, parcel.from, { size: 8, leading: 9.5, fit: w * 0.62 });
  art
    .text(w, y + 16, `${weight} ${parcel.weight}`, { size: 10, anchor: 'end' })
    .text(w, y + 30, `${ref} ${parcel.order}`, { size: 8, anchor: 'end', fit: w * 0.34 });
  art.text(w, y + 43, day, { size: 8, anchor: 'end' }).line(0, h * 0.6, w, h * 0.6, { line: 0.4 });
  art.code('itf', parcel.tracking, 10, h * 0.62, w - 20, h * 0.27);
  art.text(w / 2, h * 0.89 + 14, spaced(parcel.tracking, 2), { size: 12, bold: true, anchor: 'middle' });
  return art.text(0, h - 4, parcel.mark, { size: 9, fit: w });
};

/** Thick rules from side to side and no sides: a large letter, a hexagon code and two linear ones. */
export const pinderhaus: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const [a, b, c, d] = [h * 0.36, h * 0.56, h * 0.64, h * 0.89];
  const art = start(look);
  art.text(0, 9, from, { size: 6.5 }).lines(0, 20, parcel.from, { size: 8, leading: 9.5, fit: w * 0.55 });
  art.lines(w, 10, [`${weight} ${parcel.weight}`, '1 OF 1', day], { size: 9, leading: 12, anchor: 'end', bold: true });
  art.text(0, 72, `${to}:`, { size: 9, bold: true }).lines(30, 88, parcel.to, { size: 13, leading: 16, bold: true, fit: w - 36 });
  art
    .rect(0, a, w, 2, { fill: '#000000' })
    .code('maxicode', `PH ${parcel.postcode} ${parcel.tracking.slice(0, 9)}`, 6, a + 8, 80, b - a - 14);
  art.line(96, a, 96, b, { line: 1 }).text(104, a + 38, `PH ${parcel.depot}`, { size: 30, bold: true, fit: w - 110 });
  art.code('code128', `PH${parcel.routing}`, 112, a + 46, w - 124, b - a - 54);
  art
    .rect(0, b, w, 5, { fill: '#000000' })
    .text(0, c - 9, service, { size: 17, bold: true, fit: w * 0.8 })
    .rect(w - 30, b + 9, 26, c - b - 14, { fill: '#000000' });
  art.text(w - 17, c - 10, 'P', { size: 16, bold: true, fill: '#ffffff', anchor: 'middle' });
  art.line(0, c, w, c, { line: 1 }).text(0, c + 13, `${ref} #: PH ${spaced(parcel.tracking)}`, { size: 9, fit: w });
  art.code('code128', `PH${parcel.tracking}`, 14, c + 20, w - 28, d - c - 28);
  art.rect(0, d, w, 5, { fill: '#000000' }).text(0, d + 18, `${ref} 2: ${parcel.order}`, { size: 8 });
  return art.text(0, h - 3, parcel.mark, { size: 8.5, fit: w });
};
