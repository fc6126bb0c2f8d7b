import { code128, dataMatrix } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark, inFours } from './mark.js';

/** 4×6 in, in outlines: a frame round addresses and a small code only; the main code stands below it, outside any frame. */
export function fernwhistle(content: LabelContent): Drawing {
  const d = new Drawing(288, 432);
  d.face = 'noto';
  d.text(14, 34, CARRIERS.fernwhistle, { size: 22, bold: true });
  d.text(274, 34, content.service, { size: 12, bold: true, align: 'right' });
  d.frame(24, 46, 240, 196, 1);
  d.text(32, 60, 'From', { size: 7 });
  d.block(32, 71, content.from, { size: 8 }, 1.25);
  d.line(24, 114, 264, 114, 1);
  d.text(32, 128, 'To', { size: 7 });
  d.block(40, 144, content.to, { size: 12, bold: true, maxWidth: 216 }, 1.3);
  d.matrix(dataMatrix(`FW;${content.serial};${content.order}`), 236, 214, 4 * DOT);
  d.text(32, 232, `${content.weight}   Ref ${content.order}`, { size: 9 });
  d.bars(code128(`FW${content.serial}`), 144, 316, 4 * DOT, 110);
  d.text(144, 388, `FW ${inFours(content.serial)}`, { size: 12, bold: true, align: 'center' });
  d.text(14, 416, 'Scan on hand-over', { size: 8 });
  d.text(274, 416, content.postcode, { size: 18, bold: true, align: 'right' });
  addMark(d, content, {
    line: { x: 144, y: 254, width: 240, size: 9 },
    side: { x: 262, y: 160, height: 80 },
    watermark: { x: 144, y: 190, width: 200 },
  });
  return d;
}
