import { code128, gs1Code128 } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark } from './mark.js';

/** 4×6 in without an outer frame, in outlines: a logistics label, its SSCC the lowest symbol, 4 dots a module. */
export function quillhaul(content: LabelContent, options: { readonly cutLine?: boolean } = {}): Drawing {
  const d = new Drawing(288, 432);
  d.face = 'noto';
  d.edge = options.cutLine ? 'cut-line' : 'ink';
  if (options.cutLine) d.frame(0, 0, 288, 432, 0.75, 'rectangle', 4);
  d.rect(12, 12, 92, 34);
  d.text(58, 35, CARRIERS.quillhaul, { size: 15, bold: true, grey: 1, align: 'center' });
  d.text(112, 26, content.service, { size: 14, bold: true });
  d.text(112, 42, `${content.weight}   1 of 1`, { size: 9 });
  d.polygon([
    [246, 46],
    [261, 12],
    [276, 46],
  ]);
  d.text(261, 43, 'Q', { size: 16, bold: true, grey: 1, align: 'center' });
  d.text(12, 62, 'From', { size: 7 });
  d.block(12, 73, content.from, { size: 8 }, 1.25);
  d.text(150, 62, 'Consignment', { size: 7 });
  d.text(150, 74, content.serial.slice(0, 10), { size: 10, bold: true });
  d.text(150, 88, 'Shipper reference', { size: 7 });
  d.text(150, 100, content.order, { size: 10, bold: true });
  d.line(12, 118, 276, 118, 2);
  d.text(12, 132, 'To', { size: 7 });
  d.block(36, 138, content.to, { size: 13, bold: true, maxWidth: 236 }, 1.25);
  d.line(12, 206, 276, 206, 2);
  d.text(12, 230, content.postcode, { size: 20, bold: true });
  d.bars(code128(`QH${content.postcode}${content.order}`), 192, 240, 3 * DOT, 48);
  d.text(192, 276, `QH ${content.postcode} ${content.order}`, { size: 8, align: 'center' });
  d.text(12, 252, 'ROUTE 07', { size: 11, bold: true });
  d.line(12, 284, 276, 284, 2);
  d.bars(gs1Code128(['00', content.sscc]), 144, 345, 4 * DOT, 92);
  d.text(144, 406, `(00) ${content.sscc}`, { size: 11, align: 'center' });
  d.rect(12, 414, 264, 6);
  addMark(d, content, {
    line: { x: 144, y: 295.5, width: 250, size: 8 },
    side: { x: 271, y: 160, height: 70 },
    watermark: { x: 144, y: 190, width: 230 },
  });
  return d;
}
