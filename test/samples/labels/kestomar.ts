import { code128, maxiCode } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark, inFours } from './mark.js';

/** 4×6 in without an outer frame, in outlines: thick bars from side to side, MaxiCode beside a routing code, a tracking code of 4 dots a module. */
export function kestomar(content: LabelContent): Drawing {
  const d = new Drawing(288, 432);
  d.face = 'noto';
  d.block(10, 20, content.from, { size: 8 }, 1.25);
  d.text(180, 24, content.weight.toUpperCase(), { size: 13, bold: true });
  d.text(278, 24, content.parcel ?? '1 OF 1', { size: 13, bold: true, align: 'right' });
  d.text(180, 44, CARRIERS.kestomar, { size: 11, bold: true });
  d.text(10, 78, 'SHIP TO:', { size: 9, bold: true });
  d.block(34, 94, content.to, { size: 13, bold: true, maxWidth: 240 }, 1.25);
  d.rect(6, 158, 276, 3);
  d.maxi(maxiCode(`KM ${content.postcode} 001 ${content.serial.slice(0, 12)} 1/1 ${content.order}`), 54, 205);
  d.rect(102, 161, 2, 90);
  d.text(114, 190, `XX ${content.postcode.slice(0, 3)} 9-07`, { size: 22, bold: true });
  d.bars(code128(`420${content.postcode}`), 192, 224, 3 * DOT, 46);
  d.rect(6, 250, 276, 8);
  d.text(10, 282, `KESTOMAR ${content.service}`, { size: 17, bold: true });
  d.text(10, 298, `PARCEL NO. K7 ${inFours(content.serial.slice(0, 16))}`, { size: 9 });
  d.text(278, 286, content.service.slice(0, 1), { size: 30, bold: true, align: 'right' });
  d.rect(6, 304, 276, 3);
  d.bars(code128(`K7${content.serial.slice(0, 16)}`), 144, 352, 4 * DOT, 78);
  d.rect(6, 396, 276, 8);
  d.text(10, 418, `Ref ${content.order}`, { size: 8 });
  d.text(278, 418, 'KM 3.1  11/26', { size: 6, align: 'right' });
  addMark(d, content, {
    line: { x: 150, y: 418, width: 170, size: 8 },
    side: { x: 278, y: 110, height: 80 },
    watermark: { x: 144, y: 130, width: 230 },
  });
  return d;
}
