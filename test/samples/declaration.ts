import { code128 } from './code-art.js';
import type { LabelContent } from './content.js';
import { Drawing } from './drawing.js';
import { STUDIO } from './names.js';

/** What the bars of a label's declaration say. */
export const declarationNumber = ({ serial }: LabelContent): string => `CD${serial.slice(-8)}`;

/**
 * A declaration for customs as posts hand it over on a page of its own: fields in small type over the whole width, a number in bars. Invented; too large
 * to be read at the size of a label.
 * @param copy which of how many: `1/2`
 */
export function declaration(width: number, height: number, content: LabelContent, copy: string): Drawing {
  const d = new Drawing(width, height);
  d.text(0, 22, 'CUSTOMS DECLARATION', { size: 17, bold: true });
  d.text(0, 36, `Copy ${copy}. Sample, not valid for carriage.`, { size: 7 });
  d.bars(code128(declarationNumber(content)), width - 90, 20, 1.1, 30);
  d.text(width - 90, 44, declarationNumber(content), { size: 7, align: 'center' });
  d.frame(0, 54, width, height - 54, 1);
  const half = width / 2;
  d.line(half, 54, half, 150, 0.75);
  d.text(6, 64, 'From', { size: 6 });
  d.block(6, 78, [STUDIO, '7 Example Street', 'Sampleton XX 00001'], { size: 8 }, 1.4);
  d.text(half + 6, 64, 'To', { size: 6 });
  d.block(half + 6, 78, content.to, { size: 8, maxWidth: half - 12 }, 1.4);
  d.line(0, 150, width, 150, 0.75);
  const columns: readonly (readonly [at: number, head: string])[] = [
    [6, 'Quantity and detailed description of contents'],
    [half, 'Net weight, kg'],
    [half + 90, 'Value and currency'],
    [half + 180, 'Country of origin'],
  ];
  for (const [at, head] of columns) d.text(at, 160, head, { size: 6 });
  content.items.forEach((item, index) => {
    const y = 178 + index * 20;
    d.text(6, y, item, { size: 8, maxWidth: half - 12 });
    d.text(half, y, `0.${String(4 + index)}`, { size: 8 });
    d.text(half + 90, y, `${String(18 + 7 * index)}.00 XXX`, { size: 8 });
    d.text(half + 180, y, 'XX', { size: 8 });
    d.line(0, y + 6, width, y + 6, 0.5);
  });
  const rows = [
    'Total weight and value',
    'Category of item: sale of goods',
    'Comments, quarantine, licences',
    'Office of origin, date of posting',
  ];
  rows.forEach((row, index) => {
    const y = 380 + index * 60;
    d.line(0, y - 12, width, y - 12, 0.75);
    d.text(6, y, row, { size: 6 });
  });
  d.text(6, height - 22, 'I, the sender, say that what is written here is right and that this item holds nothing dangerous.', { size: 6 });
  d.text(6, height - 10, "Date and sender's signature", { size: 6 });
  return d;
}
