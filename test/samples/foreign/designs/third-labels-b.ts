import { spaced } from './content.js';
import { start, type ThirdDesign } from './third-labels-a.js';

/** Designed lying: a black column with the carrier's name on its side at the left, the code to track by under the receiver. */
export const oskarvik: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const art = start(look)
    .rect(0.5, 0.5, w - 1, h - 1)
    .rect(1, 1, 36, h - 2, { fill: '#000000' });
  art.text(27, h / 2, 'OSKARVIK', { size: 25, bold: true, fill: '#ffffff', anchor: 'middle', turn: 270 });
  art.text(46, 13, from, { size: 6.5 }).lines(46, 25, parcel.from, { size: 8, leading: 9.5, fit: w * 0.34 });
  art.line(w * 0.46, 1, w * 0.46, h * 0.25, { line: 0.6 }).text(w * 0.46 + 8, 20, service, { size: 14, bold: true, fit: w * 0.5 });
  art
    .text(w * 0.46 + 8, 36, `${weight} ${parcel.weight}`, { size: 9 })
    .text(w * 0.46 + 8, 50, `${ref} ${parcel.order}`, { size: 9, fit: w * 0.3 });
  art.text(w - 10, 50, day, { size: 8, anchor: 'end' }).line(37, h * 0.25, w, h * 0.25, { line: 0.6 });
  art.text(46, h * 0.25 + 13, to, { size: 7.5 }).lines(56, h * 0.25 + 34, parcel.to, { size: 16, leading: 20, fit: w * 0.56 });
  art.code('aztec', `OV/${parcel.tracking}/${parcel.postcode}`, w - 92, h * 0.27, 82, h * 0.3);
  art.line(37, h * 0.6, w, h * 0.6, { line: 0.6 }).code('code128', `OV${parcel.tracking}`, 60, h * 0.63, w - 150, h * 0.23);
  art.text(60 + (w - 150) / 2, h * 0.86 + 13, `OV ${spaced(parcel.tracking)}`, { size: 10.5, bold: true, anchor: 'middle' });
  art
    .text(w - 44, h * 0.76, parcel.depot, { size: 26, bold: true, anchor: 'middle', fit: 70 })
    .text(w - 44, h * 0.86, parcel.postcode, { size: 13, anchor: 'middle' });
  return art.text(46, h - 6, parcel.mark, { size: 7, fit: w - 60 });
};

/** Rounded corners, serif, an eight-sided seal; the number is an international one. */
export const mellowick: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const art = start({ family: 'serif', ...look }).rect(1, 1, w - 2, h - 2, { line: 2, radius: 9 });
  const seal = [0, 1, 2, 3, 4, 5, 6, 7].map((k): [number, number] => [
    34 + 22 * Math.cos((k * Math.PI) / 4),
    36 + 22 * Math.sin((k * Math.PI) / 4),
  ]);
  art.poly(seal).text(34, 45, 'M', { size: 26, bold: true, fill: '#ffffff', anchor: 'middle' });
  art.text(64, 34, 'Mellowick & Day', { size: 18, bold: true, fit: w - 156 }).text(64, 50, service, { size: 10, fit: w - 140 });
  art.code('aztec', `MD${parcel.s10}${parcel.postcode}`, w - 66, 10, 54, 54).line(1, 72, w - 1, 72, { line: 0.8 });
  art.text(12, 86, to, { size: 8 }).lines(26, 106, parcel.to, { size: 16, leading: 20, fit: w - 38 });
  const y = h * 0.42;
  art.line(1, y, w - 1, y, { line: 0.8 }).code('code128', parcel.s10, 34, y + 14, w - 68, h * 0.2);
  const [a, b, c] = [parcel.s10.slice(0, 2), parcel.s10.slice(2, 11), parcel.s10.slice(11)];
  art.text(w / 2, y + h * 0.2 + 30, `${a} ${spaced(b, 3)} ${c}`, { size: 13, bold: true, anchor: 'middle' });
  const z = y + h * 0.2 + 42;
  art
    .line(1, z, w - 1, z, { line: 0.8 })
    .text(12, z + 13, from, { size: 7 })
    .lines(12, z + 26, parcel.from, { size: 9, leading: 11, fit: w * 0.58 });
  art.line(w * 0.64, z, w * 0.64, h - 34, { line: 0.8 });
  art.lines(w * 0.64 + 8, z + 18, [`${weight} ${parcel.weight}`, day, `${ref} ${parcel.order}`], { size: 9, leading: 14, fit: w * 0.32 });
  art.line(1, h - 34, w - 1, h - 34, { line: 0.8 });
  return art.text(w / 2, h - 14, parcel.mark, { size: 9, anchor: 'middle', fit: w - 26 });
};

/** Grey panels in a plain frame, dotted lines between, a stacked code at the foot. */
export const kestrelby: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const art = start(look)
    .rect(0.5, 0.5, w - 1, h - 1)
    .rect(1, 1, w - 2, 34, { fill: '#c9c9c9' });
  art
    .text(10, 25, 'KESTRELBY express', { size: 17, bold: true, fit: w * 0.6 })
    .text(w - 10, 23, service, { size: 9.5, anchor: 'end', fit: w * 0.34 });
  art.text(10, 48, from, { size: 6.5 }).lines(10, 59, parcel.from, { size: 8, leading: 9.5, fit: w * 0.6 });
  art.lines(w - 10, 56, [day, `${weight} ${parcel.weight}`, `${ref} ${parcel.order}`], {
    size: 8,
    leading: 11,
    anchor: 'end',
    fit: w * 0.34,
  });
  art.line(4, 104, w - 4, 104, { line: 0.8, dash: [1.5, 2.5] }).text(10, 117, to, { size: 7.5, bold: true });
  art.lines(10, 136, parcel.to, { size: 14.5, leading: 18, fit: w - 20 });
  const y = Math.max(h * 0.43, 180);
  art
    .rect(1, y, w - 2, 30, { fill: '#e2e2e2' })
    .text(w / 2, y + 23, `${parcel.depot} - ${parcel.postcode}`, { size: 22, bold: true, anchor: 'middle' });
  art
    .code('code128', `KB${parcel.tracking}`, 20, y + 40, w - 40, h * 0.2)
    .text(w / 2, y + h * 0.2 + 54, `KB${parcel.tracking}`, { size: 10.5, anchor: 'middle', family: 'mono' });
  const z = y + h * 0.2 + 62;
  art.line(4, z, w - 4, z, { line: 0.8, dash: [1.5, 2.5] });
  art.code('pdf417', `KB|${parcel.tracking}|${parcel.postcode}|${parcel.order}|${parcel.weight}|${day}`, 12, z + 6, w - 24, h - z - 28);
  return art.text(w / 2, h - 8, parcel.mark, { size: 7.5, anchor: 'middle', bold: true, fit: w - 20 });
};

/** A column of cells at the right, the code standing in it on its side; the rest is left to the receiver. */
export const zumbray: ThirdDesign = ({ parcel, words, day }, look) => {
  const { width: w, height: h } = look;
  const [from, to, weight, service, ref] = words.label;
  const side = w * 0.7;
  const middle = Math.max(h * 0.52, 214);
  const art = start(look)
    .rect(1, 1, w - 2, h - 2, { line: 2 })
    .line(side, 1, side, h * 0.76, { line: 1 });
  art.code('code128', `ZU${parcel.tracking}`, side + 10, 14, w - side - 26, h * 0.76 - 28, 90);
  art.text(10, 30, 'zumbray', { size: 24, bold: true, fit: side - 20 }).rect(10, 38, side - 20, 20, { fill: '#000000' });
  art.text(16, 53, service, { size: 11, bold: true, fill: '#ffffff', fit: side - 32 });
  art.text(10, 74, from, { size: 6.5 }).lines(10, 85, parcel.from, { size: 8, leading: 10, fit: side - 20 });
  art
    .line(1, 132, side, 132)
    .text(10, 146, to, { size: 8 })
    .lines(10, 166, parcel.to, { size: 13, leading: 17, bold: true, fit: side - 18 });
  art.line(1, middle, side, middle).code('datamatrix', `ZU${parcel.tracking}${parcel.postcode}${parcel.depot}`, 12, middle + 10, 74, 74);
  art.lines(96, middle + 22, [`${weight} ${parcel.weight}`, `${ref} ${parcel.order}`, day], { size: 9, leading: 14, fit: side - 104 });
  art
    .line(1, h * 0.76, w - 1, h * 0.76)
    .text(10, h * 0.76 + 40, parcel.depot, { size: 36, bold: true })
    .text(w - 12, h * 0.76 + 36, parcel.postcode, { size: 28, bold: true, anchor: 'end' });
  art.text(w / 2, h * 0.76 + 60, `ZU ${spaced(parcel.tracking)}`, { size: 11, anchor: 'middle', family: 'mono' });
  return art.text(w / 2, h - 13, parcel.mark, { size: 8, anchor: 'middle', fit: w - 24 });
};
