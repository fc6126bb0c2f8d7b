import { code128, pdf417 } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing, MIL } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark } from './mark.js';

/** 4×6 in, framed by four lines: PDF417 with the parcel's data, a tracking code of 13 mil modules and a small ladder code. */
export function bramblerun(content: LabelContent): Drawing {
  const d = new Drawing(288, 432);
  d.edge = 'frame';
  d.frame(0, 0, 288, 432, 2, 'lines');
  d.block(10, 18, content.from, { size: 8 }, 1.25);
  d.text(278, 20, `ORIGIN ${content.serial.slice(0, 4)}`, { size: 8, align: 'right' });
  d.text(278, 32, `WGT ${content.weight}`, { size: 8, align: 'right' });
  d.text(278, 44, `REF ${content.order}`, { size: 8, align: 'right' });
  d.line(0, 62, 288, 62, 1);
  d.text(10, 78, 'TO', { size: 9, bold: true });
  d.block(30, 82, content.to, { size: 13, maxWidth: 200 }, 1.25);
  d.bars(code128(`BR${content.order}`), 262, 112, 2 * DOT, 26, 270);
  d.line(0, 158, 288, 158, 1);
  const data = [content.to.join('/'), content.serial, content.sscc, content.weight, 'BRP', '01'].join('|');
  d.matrix(pdf417(data, 8), 144, 200, 3 * DOT);
  d.line(0, 244, 288, 244, 2);
  d.text(10, 264, CARRIERS.bramblerun, { size: 15, bold: true });
  d.text(10, 282, `${content.service} - EVENING`, { size: 12 });
  d.rect(214, 250, 66, 40);
  d.text(247, 282, content.service.slice(0, 2), { size: 32, bold: true, grey: 1, align: 'center', maxWidth: 60 });
  d.text(10, 302, `TRK ${content.serial.slice(0, 12)}`, { size: 10, bold: true });
  d.text(278, 304, content.postcode, { size: 12, bold: true, align: 'right' });
  d.bars(code128(`${content.serial.slice(0, 12)}BR${content.postcode}`), 144, 356, 13 * MIL, 84);
  d.text(144, 411, `${content.serial.slice(0, 12)} BR ${content.postcode}`, { size: 9, align: 'center' });
  addMark(d, content, {
    line: { x: 144, y: 425, width: 250, size: 8 },
    side: { x: 8, y: 120, height: 70 },
    watermark: { x: 120, y: 140, width: 190 },
  });
  return d;
}
