import { code128, dataMatrix, gs1Code128, qr } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark, inFours } from './mark.js';

/** 4×6 in of ruled cells, each of which encloses one code: no cell is the label. */
export function norrvane(content: LabelContent): Drawing {
  const d = new Drawing(288, 432);
  d.edge = 'frame';
  d.frame(0, 0, 288, 432, 1);
  d.frame(0, 0, 200, 84, 1);
  d.text(10, 28, CARRIERS.norrvane, { size: 20, bold: true });
  d.text(10, 46, content.service, { size: 14 });
  d.text(10, 62, `Weight ${content.weight}`, { size: 8 });
  d.text(10, 74, `Ref. ${content.order}`, { size: 8 });
  d.frame(199, 0, 89, 84, 1);
  d.matrix(qr(`NV:${content.serial}:${content.postcode}`), 243.5, 42, 6 * DOT);
  d.frame(0, 83, 288, 54, 1);
  d.text(8, 95, 'Sender', { size: 7 });
  d.block(8, 105, content.from, { size: 8 }, 1.1);
  d.frame(0, 136, 212, 92, 1);
  d.text(8, 148, 'Recipient', { size: 7 });
  d.block(14, 166, content.to, { size: 12, bold: true, maxWidth: 190 }, 1.3);
  d.frame(211, 136, 77, 188, 1);
  d.bars(code128(`N${content.postcode}${content.serial.slice(0, 2)}`), 251, 230, 3 * DOT, 46, 90);
  d.text(222, 230, `N${content.postcode}`, { size: 8, turn: 90, align: 'center' });
  d.frame(0, 227, 212, 97, 1);
  d.matrix(dataMatrix(`NVP1;${content.serial};${content.sscc};${content.postcode};B`), 56, 276, 5 * DOT);
  d.text(120, 262, 'B', { size: 34, bold: true });
  d.text(120, 284, 'Sort hall 12', { size: 9 });
  d.text(120, 298, 'Chute 31', { size: 9 });
  d.frame(0, 323, 288, 109, 1);
  d.bars(gs1Code128(['92', content.serial]), 144, 366, 3 * DOT, 64);
  d.text(144, 410, inFours(content.serial), { size: 10, align: 'center' });
  addMark(d, content, {
    line: { x: 144, y: 424, width: 250, size: 8 },
    side: { x: 282, y: 230, height: 170 },
    watermark: { x: 130, y: 250, width: 250 },
  });
  return d;
}
