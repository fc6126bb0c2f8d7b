import { aztec, code128, gs1DataMatrix } from '../code-art.js';
import type { LabelContent } from '../content.js';
import { DOT, Drawing, MIL } from '../drawing.js';
import { CARRIERS } from '../names.js';
import { addMark, inFours } from './mark.js';

/** A6 of ruled cells, each round one code: Aztec, GS1 Data Matrix, and the main code as a ladder up the right side. */
export function pellodan(content: LabelContent): Drawing {
  const [w, h] = [297.64, 419.53];
  const d = new Drawing(w, h);
  d.edge = 'frame';
  d.frame(0, 0, w, h, 1.5);
  d.frame(0, 0, 130, 92, 1);
  d.text(10, 32, CARRIERS.pellodan, { size: 22, bold: true });
  d.text(10, 50, content.service, { size: 12 });
  d.text(10, 66, content.weight, { size: 9 });
  d.text(10, 80, 'Porto bezahlt / PP', { size: 8 });
  d.frame(129, 0, 80, 92, 1);
  d.matrix(aztec(`PD${content.serial}${content.postcode}`), 169, 46, 5 * DOT);
  d.frame(208, 0, w - 208, h, 1);
  d.bars(code128(`PD${content.serial.slice(0, 14)}XX`), 246, h / 2, 15 * MIL, 52, 90);
  d.text(284, h / 2, `PD ${inFours(content.serial.slice(0, 14))} XX`, { size: 9, bold: true, turn: 90, align: 'center' });
  d.frame(0, 91, 209, 62, 1);
  d.text(8, 103, 'Absender / Sender', { size: 7 });
  d.block(8, 114, content.from, { size: 8 }, 1.15);
  d.frame(0, 152, 209, 118, 1);
  d.text(8, 165, 'Empfänger / Recipient', { size: 7 });
  d.block(14, 186, content.to, { size: 13, bold: true, maxWidth: 186 }, 1.35);
  d.frame(0, 269, 209, h - 269, 1);
  d.matrix(gs1DataMatrix(['00', content.sscc], ['420', content.postcode], ['92', content.order]), 58, 330, 5 * DOT);
  d.text(116, 322, '4B', { size: 48, bold: true });
  d.text(116, 346, 'Tour 118', { size: 10 });
  d.text(10, 396, `Ref. ${content.order}`, { size: 8 });
  addMark(d, content, {
    line: { x: 104, y: 411, width: 190, size: 8 },
    side: { x: 204, y: 212, height: 100 },
    watermark: { x: 110, y: 230, width: 200 },
  });
  return d;
}
