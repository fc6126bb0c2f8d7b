import { dataMatrix, gs1Code128, itf } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark } from './mark.js';

/** Designed lying, 6×4 in, framed: addresses on the left, Data Matrix and ITF on the right, GS1-128 along the bottom. */
export function zunderpost(content: LabelContent): Drawing {
  const d = new Drawing(432, 288);
  d.edge = 'frame';
  d.frame(0, 0, 432, 288, 1.5);
  d.rect(0, 0, 432, 30);
  d.text(12, 22, CARRIERS.zunderpost, { size: 18, bold: true, grey: 1 });
  d.text(420, 21, content.service, { size: 14, bold: true, grey: 1, align: 'right' });
  d.text(12, 44, 'From', { size: 7 });
  d.block(12, 55, content.from, { size: 8 }, 1.25);
  d.line(0, 96, 262, 96, 1);
  d.text(12, 110, 'To', { size: 7 });
  d.block(30, 122, content.to, { size: 14, bold: true, maxWidth: 224 }, 1.25);
  d.line(262, 30, 262, 192, 1);
  d.matrix(dataMatrix(`ZP/${content.serial}/${content.postcode}/${content.order}`), 306, 74, 5 * DOT);
  d.text(350, 58, content.weight, { size: 11, bold: true });
  d.text(350, 74, `Ref ${content.order}`, { size: 9 });
  d.text(350, 88, 'Depot 044', { size: 9 });
  d.bars(itf(`${content.postcode}${content.serial.slice(0, 7)}`), 347, 144, 3 * DOT, 40);
  d.text(347, 176, `${content.postcode} ${content.serial.slice(0, 7)}`, { size: 8, align: 'center' });
  d.rect(0, 191, 432, 3);
  d.bars(gs1Code128(['00', content.sscc]), 170, 232, 4 * DOT, 62);
  d.text(170, 276, `(00) ${content.sscc}`, { size: 10, align: 'center' });
  d.text(350, 228, content.postcode.slice(2), { size: 40, bold: true });
  addMark(d, content, {
    line: { x: 361, y: 258, width: 126, size: 8 },
    side: { x: 426, y: 110, height: 100 },
    watermark: { x: 130, y: 150, width: 220 },
  });
  return d;
}
