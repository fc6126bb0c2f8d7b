import { gs1Code128, qr } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark, inFours } from './mark.js';

/** 4×6 in that bleeds off: black from edge to edge at top and bottom, no frame. */
export function overmoor(content: LabelContent): Drawing {
  const d = new Drawing(288, 432);
  d.face = 'noto';
  d.rect(0, 0, 288, 58);
  d.text(14, 40, CARRIERS.overmoor, { size: 27, bold: true, grey: 1, maxWidth: 180 });
  d.text(274, 28, content.service, { size: 12, bold: true, grey: 1, align: 'right' });
  d.text(274, 46, content.weight, { size: 11, grey: 1, align: 'right' });
  d.text(14, 74, 'If undeliverable, return to', { size: 7 });
  d.block(14, 85, content.from, { size: 8 }, 1.2);
  d.matrix(qr(`OM:${content.serial}`), 244, 98, 5 * DOT);
  d.rect(0, 136, 288, 1.5);
  d.text(14, 152, 'DELIVER TO', { size: 8, bold: true });
  d.block(28, 172, content.to, { size: 15, bold: true, maxWidth: 246 }, 1.3);
  d.rect(0, 262, 288, 4);
  d.bars(gs1Code128(['420', content.postcode], ['92', content.serial.slice(0, 16)]), 144, 324, 3 * DOT, 88);
  d.text(144, 386, inFours(`92${content.serial.slice(0, 16)}`), { size: 11, bold: true, align: 'center' });
  d.rect(0, 394, 288, 38);
  d.text(14, 419, `Order ${content.order}`, { size: 11, grey: 1 });
  d.text(274, 419, content.postcode, { size: 16, bold: true, grey: 1, align: 'right' });
  addMark(d, content, {
    line: { x: 144, y: 275, width: 260, size: 8 },
    side: { x: 282, y: 200, height: 110 },
    watermark: { x: 144, y: 220, width: 230 },
  });
  return d;
}
