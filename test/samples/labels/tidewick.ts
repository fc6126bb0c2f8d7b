import { dataMatrix, gs1Code128 } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark, inFours } from './mark.js';

/** 4×6 in with an outer frame: service box, banner, addresses, one big GS1-128 between two thick bars. */
export function tidewick(content: LabelContent, options: { readonly frame?: 'rectangle' | 'lines' } = {}): Drawing {
  const d = new Drawing(288, 432);
  d.edge = 'frame';
  d.frame(0, 0, 288, 432, 1.5, options.frame ?? 'rectangle');
  d.text(37, 56, content.service.slice(0, 1), { size: 60, bold: true, align: 'center' });
  d.line(74, 0.75, 74, 72, 1.5);
  d.text(84, 22, CARRIERS.tidewick, { size: 14, bold: true });
  d.text(84, 36, 'Account 000-0000', { size: 8 });
  d.text(84, 46, `Weight ${content.weight}`, { size: 8 });
  d.text(84, 56, 'Zone 4   Contract rate', { size: 8 });
  d.frame(212, 10, 66, 52, 0.75);
  d.block(245, 24, ['POSTAGE', 'ACCOUNT', 'BILLED', 'NOV 2026'], { size: 8, align: 'center' }, 1.3);
  d.line(0.75, 72, 287.25, 72, 1.5);
  d.text(144, 94, `TIDEWICK ${content.service}`, { size: 18, bold: true, align: 'center' });
  d.line(0.75, 102, 287.25, 102, 1.5);
  d.block(10, 116, content.from, { size: 8 });
  d.text(278, 116, `C${content.serial.slice(0, 3)}`, { size: 12, bold: true, align: 'right' });
  d.text(278, 128, `Ship date 11/24/26`, { size: 8, align: 'right' });
  d.text(10, 180, 'SHIP', { size: 8 });
  d.text(10, 190, 'TO:', { size: 8 });
  d.block(40, 182, content.to, { size: 12, maxWidth: 180 });
  const routing = dataMatrix(`${content.postcode}|${content.serial.slice(0, 12)}|TW`);
  d.matrix(routing, 250, 210, 4 * DOT);
  d.rect(0, 268, 288, 5);
  d.text(144, 286, 'TIDEWICK PARCEL NUMBER', { size: 10, bold: true, align: 'center' });
  d.bars(gs1Code128(['420', content.postcode], ['92', content.serial]), 144, 334, 3 * DOT, 76);
  d.text(144, 388, inFours(`92${content.serial}`), { size: 10, bold: true, align: 'center' });
  d.rect(0, 396, 288, 5);
  d.text(10, 424, `Order ${content.order}`, { size: 8 });
  addMark(d, content, {
    line: { x: 190, y: 418, width: 180 },
    side: { x: 280, y: 185, height: 90 },
    watermark: { x: 160, y: 200, width: 250 },
  });
  return d;
}
