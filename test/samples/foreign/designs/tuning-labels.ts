import { Art } from '../kit/art.js';
import type { Family } from '../kit/shapes.js';
import type { Parcel } from './content.js';
import { ascii, spaced } from './content.js';

export interface Look {
  readonly width: number;
  readonly height: number;
  readonly family?: Family;
  readonly dot?: number;
}
const start = ({ width, height, family, dot }: Look): Art => new Art(width, height, family, dot);

/** A postal label: big letter and service banner on top, framed, tracking code between two heavy rules. */
export function larkmoss(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(1, 1, w - 2, h - 2, { line: 2 });
  art.text(34, 58, 'P', { size: 60, bold: true, anchor: 'middle' }).line(68, 1, 68, 72, { line: 1.5 });
  art.code('datamatrix', `${parcel.tracking}${parcel.depot}`, 80, 10, 54, 54);
  art.text(w - 12, 26, 'LARKMOSS POST', { size: 13, bold: true, anchor: 'end' });
  art.lines(w - 12, 42, ['US POSTAGE NOT PAID', parcel.mark], { size: 7, anchor: 'end', fit: w - 160 });
  art.line(1, 72, w - 1, 72, { line: 2 }).text(w / 2, 92, 'LARKMOSS PRIORITY', { size: 18, bold: true, anchor: 'middle' });
  art.line(1, 100, w - 1, 100, { line: 2 });
  art.lines(12, 114, parcel.from, { size: 8 });
  art
    .text(w - 12, 116, `Weight ${parcel.weight}`, { size: 8, anchor: 'end' })
    .rect(w - 62, 124, 50, 22)
    .text(w - 37, 140, parcel.depot, { size: 14, bold: true, anchor: 'middle' });
  art.text(14, h * 0.42, 'SHIP TO:', { size: 7 }).lines(60, h * 0.42 + 4, parcel.to, { size: 13, leading: 15, fit: w - 76 });
  const y = h * 0.62;
  art.line(1, y, w - 1, y, { line: 3 }).text(w / 2, y + 15, 'LARKMOSS TRACKING #', { size: 11, bold: true, anchor: 'middle' });
  art.code('gs1-128', `[420]${parcel.postcode}[92]${parcel.tracking}${parcel.depot.slice(2)}0`, 22, y + 22, w - 44, h * 0.38 - 86);
  art.text(w / 2, h - 50, spaced(`92${parcel.tracking}`), { size: 12, bold: true, anchor: 'middle' });
  art.line(1, h - 42, w - 1, h - 42, { line: 3 }).text(12, h - 24, `Ref ${parcel.order}`, { size: 8 });
  art.text(12, h - 12, 'Electronic rate approved: example', { size: 6 });
  return art;
}

/** An express label of ruled cells with a hexagon code. */
export function dunwhit(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(0.5, 0.5, w - 1, h - 1, { line: 1 });
  const rows = [0.19, 0.4, 0.58, 0.66, 0.9].map((part) => h * part);
  for (const y of rows) art.line(0.5, y, w - 0.5, y);
  const [a = 0, b = 0, c = 0, d = 0, e = 0] = rows;
  art.lines(8, 14, parcel.from, { size: 7.5, fit: w * 0.55 });
  art.text(w - 8, 16, parcel.weight, { size: 11, bold: true, anchor: 'end' }).text(w - 8, 30, '1 OF 1', { size: 11, anchor: 'end' });
  art.text(8, a - 6, parcel.mark, { size: 6.5, fit: w - 20 });
  art.text(8, a + 14, 'SHIP TO', { size: 8, bold: true }).lines(22, a + 30, parcel.to, { size: 12, leading: 14, fit: w - 34 });
  art.line(88, b, 88, c).code('maxicode', `${parcel.tracking} ${parcel.depot}`, 9, b + 5, 70, c - b - 10);
  art.text(100, b + 30, `${parcel.depot} ${parcel.routing.slice(0, 4)}`, { size: 26, bold: true, fit: w - 110 });
  art.code('code128', parcel.routing.slice(0, 8), 102, b + 38, w * 0.42, c - b - 46);
  art.text(8, c + (d - c) * 0.7, 'DUNWHIT NEXT DAY AIR', { size: 16, bold: true, fit: w - 70 });
  art.rect(w - 44, c, 44, d - c, { fill: '#000000' }).text(w - 22, d - 8, '1', { size: 24, bold: true, anchor: 'middle', fill: '#ffffff' });
  art.text(8, d + 14, `TRACKING #: 1D ${spaced(parcel.tracking, 3)}`, { size: 9.5 });
  art.code('code128', `1D${parcel.tracking}`, 26, d + 20, w - 52, e - d - 28);
  art.text(8, e + 14, 'BILLING: P/P (example)', { size: 8 }).text(8, e + 28, `REF 1: ${parcel.order}`, { size: 8 });
  art.text(w - 6, h - 5, 'DW 24.11 not a real shipment', { size: 5.5, anchor: 'end' });
  return art;
}

/** No frame at all: everything stands free, a ladder code at the right. */
export function vellapost(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look);
  art
    .poly([
      [4, 30],
      [22, 4],
      [40, 30],
    ])
    .text(48, 27, 'vellapost', { size: 24, bold: true, fit: w - 165 });
  art.text(w - 70, 27, 'XL', { size: 24, bold: true, anchor: 'end' });
  art.text(4, 44, parcel.mark, { size: 7, fit: w - 80 }).text(4, 62, 'From', { size: 7 });
  art.lines(30, 62, parcel.from, { size: 7.5, fit: w - 100 });
  art.line(4, 112, w - 66, 112, { line: 0.8 }).text(4, 130, 'To', { size: 9, bold: true });
  art.lines(30, 131, parcel.to, { size: 14, leading: 17, fit: w - 100, bold: true });
  art.text(4, 236, parcel.postcode, { size: 34, bold: true, fit: w * 0.5 }).text(w - 74, 236, parcel.depot, { size: 20, anchor: 'end' });
  art.code('itf', parcel.routing + '4', w - 56, 16, 46, 238, 90);
  art.code('code128', parcel.s10, 14, 262, w - 28, h - 318);
  art.text(w / 2, h - 38, `${parcel.s10.slice(0, 2)} ${spaced(parcel.s10.slice(2, 11), 3)} ${parcel.s10.slice(11)}`, {
    size: 15,
    bold: true,
    anchor: 'middle',
  });
  art.text(4, h - 16, `Order ${parcel.order}`, { size: 7 }).text(w - 4, h - 16, parcel.weight, { size: 7, anchor: 'end' });
  art.text(4, h - 4, 'Terms of carriage do not apply to this trial print.', { size: 5.5 });
  return art;
}

/** A pallet-like label: cells on top, wide SSCC code at the bottom, rounded by nothing. */
export function orrinway(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(0.75, 0.75, w - 1.5, h - 1.5, { line: 1.5 });
  art.rect(0, 0, w, 40, { fill: '#000000' }).text(10, 28, 'ORRINWAY', { size: 22, bold: true, fill: '#ffffff' });
  art.text(w - 10, 27, 'PARCEL CONNECT', { size: 9, anchor: 'end', fill: '#ffffff' });
  art
    .line(w / 2, 40, w / 2, 118)
    .line(0, 118, w, 118)
    .text(6, 50, 'SENDER', { size: 6 })
    .text(w / 2 + 6, 50, 'CONTENT', { size: 6 });
  art.lines(6, 62, parcel.from, { size: 7.5, fit: w / 2 - 12 });
  art.lines(w / 2 + 6, 62, [`Order ${parcel.order}`, `Weight ${parcel.weight}`, 'Pieces 1/1', parcel.mark], { size: 7.5, fit: w / 2 - 12 });
  art.text(6, 130, 'DELIVER TO', { size: 6 }).lines(6, 148, parcel.to, { size: 13, leading: 15.5, fit: w - 100 });
  art.code('qr', `OW:${parcel.sscc}:${parcel.depot}`, w - 84, 126, 74, 74).line(0, 216, w, 216);
  art
    .text(8, 252, parcel.depot, { size: 36, bold: true })
    .text(w - 8, 250, ascii(parcel.town).toUpperCase(), { size: 16, anchor: 'end', fit: w * 0.55 });
  art.line(0, 262, w, 262).code('gs1-128', `[00]${parcel.sscc}`, 20, 274, w - 40, h - 312);
  art.text(w / 2, h - 18, `(00) ${parcel.sscc}`, { size: 12, anchor: 'middle', family: 'mono', bold: true });
  return art;
}

/** Designed lying: the address left, everything for the machine right. */
export function tamsilk(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look).rect(1.5, 1.5, w - 3, h - 3, { line: 3 });
  art.line(w * 0.46, 1, w * 0.46, h * 0.62, { line: 1 }).line(1, h * 0.62, w - 1, h * 0.62, { line: 1 });
  art.text(12, 30, 'Tamsilk', { size: 24, bold: true, family: 'serif' }).text(12, 44, parcel.mark, { size: 6.5, fit: w * 0.42 });
  art.lines(12, 60, parcel.from, { size: 7, fit: w * 0.42 });
  art.text(12, 112, 'DELIVERY ADDRESS', { size: 6.5, bold: true }).lines(12, 128, parcel.to, { size: 11.5, leading: 14, fit: w * 0.42 });
  art.text(w * 0.49, 34, 'EVENING', { size: 22, bold: true }).text(w - 12, 34, parcel.depot, { size: 22, bold: true, anchor: 'end' });
  art.code(
    'pdf417',
    `TS|${parcel.tracking}|${parcel.postcode}|${parcel.order}|${parcel.weight}|EXAMPLE`,
    w * 0.48,
    46,
    w * 0.5 - 8,
    h * 0.62 - 72,
  );
  art
    .text(w * 0.49, h * 0.62 - 10, `Ref. ${parcel.order}`, { size: 8 })
    .text(w - 12, h * 0.62 - 10, parcel.weight, { size: 8, anchor: 'end' });
  art.code('code128', `TS${parcel.tracking}7`, w * 0.15, h * 0.65, w * 0.7, h * 0.24);
  art.text(w / 2, h - 12, `TS ${spaced(parcel.tracking)} 7`, { size: 12, anchor: 'middle', bold: true });
  return art;
}

/** Letters small, one big block for the depot, frame only around the address; the rest free. */
export function brackenjet(parcel: Parcel, look: Look): Art {
  const { width: w, height: h } = look;
  const art = start(look);
  art
    .rect(0, 0, w, 26, { fill: '#000000' })
    .text(w / 2, 19, 'BRACKENJET ECONOMY', { size: 15, bold: true, anchor: 'middle', fill: '#ffffff' });
  art.lines(6, 40, parcel.from, { size: 7, fit: w * 0.6 });
  art.code('aztec', `BJ${parcel.tracking}${parcel.depot}`, w - 66, 34, 60, 60);
  art
    .rect(6, 106, w - 12, 96, { line: 1 })
    .text(12, 118, 'RECIPIENT', { size: 6.5 })
    .lines(16, 136, parcel.to, { size: 13, leading: 16, fit: w - 36 });
  art.text(6, 250, `${parcel.depot}-${parcel.routing.slice(0, 3)}`, { size: 38, bold: true, fit: w * 0.66 });
  art.rect(w - 60, 212, 54, 44, { line: 2 }).text(w - 33, 244, 'E2', { size: 26, bold: true, anchor: 'middle' });
  art.code('code128', `BJ${parcel.tracking}ZZ`, 16, 266, w - 32, h - 322);
  art.text(w / 2, h - 40, `BJ ${spaced(parcel.tracking, 3)} ZZ`, { size: 13, anchor: 'middle' });
  art
    .text(6, h - 22, parcel.mark, { size: 8, bold: true, fit: w - 20 })
    .text(6, h - 10, `Customer ref ${parcel.order}, ${parcel.weight}`, { size: 6.5 });
  art.rect(0, h - 4, w, 4, { fill: '#000000' });
  return art;
}

export const TUNING_LABELS = { larkmoss, dunwhit, vellapost, orrinway, tamsilk, brackenjet } as const;
