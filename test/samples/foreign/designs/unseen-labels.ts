import { Art } from '../kit/art.js';
import type { Parcel } from './content.js';
import { ascii, spaced } from './content.js';
import type { Look } from './tuning-labels.js';

const start = ({ width, height, family, dot }: Look): Art => new Art(width, height, family, dot);

/** The code on top, the address in the middle, heavy frame with inner rules that do not reach it. */
export function siltwing(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(2, 2, w - 4, h - 4, { line: 4 });
  art
    .code('code128', `SW${parcel.tracking}`, 26, 18, w - 52, h * 0.2)
    .text(w / 2, h * 0.2 + 32, `SW ${spaced(parcel.tracking, 6)}`, { size: 11, bold: true, anchor: 'middle' });
  art
    .line(14, h * 0.2 + 42, w - 14, h * 0.2 + 42, { line: 1 })
    .text(16, h * 0.2 + 66, 'Siltwing Saver', { size: 20, bold: true, family: 'serif' });
  art.text(w - 16, h * 0.2 + 66, parcel.depot, { size: 20, anchor: 'end', bold: true });
  const y = h * 0.2 + 86;
  art.text(16, y, 'Deliver to:', { size: 8 });
  art.lines(16, y + 18, parcel.to, { size: 14, leading: 17, fit: w - 34 });
  art
    .line(14, h - 156, w - 14, h - 156, { line: 1 })
    .code('qr', `SW/${parcel.tracking}/${parcel.postcode}/${parcel.order}`, 16, h - 146, 88, 88);
  art.text(114, h - 136, 'Return address', { size: 7 });
  art.lines(114, h - 124, parcel.from, { size: 8, fit: w - 130 });
  art.text(114, h - 70, parcel.weight, { size: 14, bold: true }).text(16, h - 36, parcel.mark, { size: 9, bold: true, fit: w - 32 });
  art.text(16, h - 16, `Your ref. ${parcel.order}. Leave with a neighbour: yes`, { size: 7, fit: w - 32 });
  return art;
}

/** A mail label with a thin frame, a stamp block with an indicium, and the tracking code in a cell at the bottom. */
export function marrowgate(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(0.4, 0.4, w - 0.8, h - 0.8, { line: 0.8 });
  art.rect(w - 92, 8, 84, 62, { line: 1.4 }).code('datamatrix', `MG${parcel.sscc}`, w - 88, 16, 46, 46);
  art.lines(w - 38, 28, ['NO FEE', 'PAID', 'TRIAL'], { size: 7, bold: true });
  art
    .text(10, 26, 'MARROWGATE', { size: 17, bold: true })
    .text(10, 40, 'mail & small parcels', { size: 9 })
    .text(10, 62, parcel.mark, { size: 7, fit: w - 110 });
  art.line(0, 78, w, 78, { line: 0.8 });
  const below = art.lines(10, 90, parcel.from, { size: 7, fit: w - 20 });
  art
    .line(0, below + 2, w, below + 2, { line: 0.8 })
    .text(w / 2, below + 26, 'SECOND DAY TRACKED', { size: 19, anchor: 'middle', bold: true, fit: w - 20 });
  art.line(0, below + 36, w, below + 36, { line: 0.8 });
  art.lines(40, below + 66, parcel.to, { size: 14, leading: 18, fit: w - 54 });
  const y = h * 0.64;
  art
    .rect(0, y, w, 16, { fill: '#000000' })
    .text(w / 2, y + 12, 'TRACKED ITEM', { size: 10, bold: true, anchor: 'middle', fill: '#ffffff' });
  art
    .code('code128', parcel.s10, 24, y + 24, w - 48, h * 0.36 - 62)
    .text(w / 2, h - 24, `${parcel.s10.slice(0, 2)} ${spaced(parcel.s10.slice(2, 11), 3)} ${parcel.s10.slice(11)}`, {
      size: 12,
      anchor: 'middle',
      bold: true,
    });
  art.text(8, h - 8, `Ref ${parcel.order}`, { size: 7 }).text(w - 8, h - 8, parcel.weight, { size: 7, anchor: 'end' });
  return art;
}

/** No frame, heavy black bar left with white words running up, wide code at the bottom. */
export function ulvepost(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look);
  art
    .rect(0, 0, 34, h * 0.62, { fill: '#000000' })
    .text(24, h * 0.6, 'ULVEPOST HJEM 17-21', { size: 20, bold: true, fill: '#ffffff', turn: 270, fit: h * 0.58 });
  art.text(44, 12, 'Avsender / Sender', { size: 7 });
  art.lines(44, 24, parcel.from, { size: 8, fit: w - 120 });
  art.code('aztec', `UP${parcel.tracking}${parcel.depot}`, w - 64, 2, 62, 62);
  art.line(44, 86, w, 86, { line: 1 }).text(44, 98, 'Mottaker / Addressee', { size: 7 });
  art.lines(44, 118, parcel.to, { size: 15, leading: 18, fit: w - 48 });
  art
    .line(44, 196, w, 196, { line: 1 })
    .text(44, 236, parcel.depot, { size: 40, bold: true })
    .text(w, 236, parcel.routing.slice(0, 5), { size: 28, anchor: 'end' });
  art.text(44, h * 0.62, parcel.mark, { size: 8, fit: w - 48 });
  art
    .code('gs1-128', `[00]${parcel.sscc}`, 12, h * 0.62 + 12, w - 24, h * 0.38 - 54)
    .text(w / 2, h - 26, `(00) ${spaced(parcel.sscc, 6)}`, { size: 11, anchor: 'middle' });
  art.text(0, h - 4, `Ref ${parcel.order}`, { size: 7 }).text(w, h - 4, parcel.weight, { size: 7, anchor: 'end' });
  return art;
}

/** Many ruled cells, two linear codes, one standing. */
export function thistledray(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5 });
  const side = w - 70;
  const stops = [0.12, 0.3, 0.52, 0.62].map((part) => part * h);
  for (const y of stops) art.line(0, y, side, y);
  const [a = 0, b = 0, c = 0, d = 0] = stops;
  art.line(side, 0, side, d).line(0, d, w, d);
  art.text(8, a * 0.68, 'THISTLEDRAY', { size: 18, bold: true, fit: side - 14 }).text(6, a + 9, 'FROM', { size: 6 });
  art.lines(6, a + 21, parcel.from, { size: 7.5, fit: side - 12 });
  art.text(6, b + 9, 'TO', { size: 6 });
  art.lines(6, b + 26, parcel.to, { size: 12.5, leading: 15, fit: side - 12 });
  art
    .text(6, d - 12, 'EXPRESS BY 10:30', { size: 15, bold: true, fit: side * 0.66 })
    .text(side - 6, d - 12, parcel.depot, { size: 15, bold: true, anchor: 'end' });
  art.text(6, c + 10, 'SERVICE', { size: 6 }).code('itf', `${parcel.routing}2`, side + 14, 26, 42, d - 52, 270);
  art.text(8, d + 14, `Track ${spaced(parcel.tracking)}`, { size: 10, bold: true });
  art.code('code128', `TD${parcel.tracking}1`, 20, d + 22, w - 40, h - d - 62);
  art
    .line(0, h - 32, w, h - 32)
    .text(8, h - 20, `Customer order ${parcel.order}`, { size: 8 })
    .text(w - 8, h - 20, parcel.weight, { size: 8, anchor: 'end' });
  art.text(8, h - 7, parcel.mark, { size: 7, fit: w - 16 });
  return art;
}

/** Designed lying: code left standing along the side, address right. */
export function nubelina(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(1, 1, w - 2, h - 2, { line: 2 });
  art.rect(1, 1, w - 2, 36, { fill: '#000000' }).text(12, 27, 'Nubelina Correo', { size: 21, bold: true, fill: '#ffffff' });
  art.text(w - 12, 26, '48 HORAS', { size: 17, bold: true, anchor: 'end', fill: '#ffffff' });
  art
    .code('code128', `NB${parcel.tracking}`, 22, 52, w * 0.52, h * 0.34)
    .text(22 + w * 0.26, 52 + h * 0.34 + 14, `NB ${spaced(parcel.tracking)}`, { size: 11, anchor: 'middle', bold: true });
  art.code('pdf417', `NB|${parcel.tracking}|${parcel.postcode}|${ascii(parcel.town)}|${parcel.order}`, 16, h * 0.66, w * 0.5, h * 0.2);
  art.line(w * 0.62, 37, w * 0.62, h - 1, { line: 1 }).line(w * 0.62, h * 0.64, w - 1, h * 0.64, { line: 1 });
  art.text(w * 0.64, 50, 'DESTINO', { size: 6.5 });
  art.lines(w * 0.64, 68, parcel.to, { size: 11.5, leading: 14, fit: w * 0.34 });
  art
    .text(w * 0.64, h * 0.58, parcel.postcode, { size: 22, bold: true, fit: w * 0.33 })
    .text(w * 0.64, h * 0.64 + 12, 'REMITE', { size: 6.5 });
  art.lines(w * 0.64, h * 0.64 + 24, parcel.from, { size: 7.5, fit: w * 0.34 });
  art.text(16, h - 12, parcel.mark, { size: 7.5, fit: w * 0.5 }).text(w - 10, h - 12, parcel.weight, { size: 8, anchor: 'end' });
  return art;
}

/** Sparse: three code kinds far apart, thin words, no frame and hardly a rule. */
export function zephrook(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look);
  art
    .disc(22, 22, 20)
    .disc(22, 22, 12, '#ffffff')
    .text(50, 29, 'zephrook', { size: 22, fit: w * 0.45 })
    .text(w - 4, 28, `Z${parcel.depot.slice(2)}`, { size: 26, bold: true, anchor: 'end' });
  art.lines(4, 62, parcel.from, { size: 7.5, fit: w * 0.6 });
  art.code('maxicode', `ZR${parcel.tracking}`, w - 78, 46, 74, 74).text(4, 112, parcel.mark, { size: 7, fit: w - 96 });
  art.lines(30, 158, parcel.to, { size: 15, leading: 18, bold: true, fit: w - 40 });
  art.text(4, 254, `${parcel.routing.slice(0, 3)} ${parcel.routing.slice(3, 6)}`, { size: 24, bold: true });
  art.code('code39', parcel.routing.slice(0, 6), w * 0.46, 232, w * 0.52, 26);
  art
    .code('code128', `ZR${parcel.tracking}EX`, 10, 274, w - 20, h - 326)
    .text(w / 2, h - 34, `ZR ${spaced(parcel.tracking)} EX`, { size: 13, anchor: 'middle' });
  art.text(4, h - 12, `Order ${parcel.order}`, { size: 8 }).text(w - 4, h - 12, parcel.weight, { size: 8, anchor: 'end' });
  art.text(4, h - 2, 'Carried by nobody, anywhere.', { size: 5.5 });
  return art;
}

export const UNSEEN_LABELS = { siltwing, marrowgate, ulvepost, thistledray, nubelina, zephrook } as const;
