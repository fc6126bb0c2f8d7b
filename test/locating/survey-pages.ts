import { code128, gs1Code128, qr } from '../samples/code-art.js';
import { contentFor, type LabelContent } from '../samples/content.js';
import { Drawing } from '../samples/drawing.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { label, LETTER, other, slip, type LayoutPage } from '../samples/layout.js';
import { packingSlip } from '../samples/other-pages.js';

export const contentOf = (order: number): LabelContent => contentFor(`survey ${order}`, order, 'line');
/** A letter page with these drawings as they are. */
export const letter = (...regions: LayoutPage['regions']): LayoutPage => ({ ...LETTER, regions });

export const uprightLabel = (order: number, x: number, y: number): LayoutPage['regions'][number] => label(tidewick(contentOf(order)), x, y);
export const sidewaysLabel = (order: number, y: number): LayoutPage['regions'][number] => label(tidewick(contentOf(order)), 90, y, 90);

/** Words without anything else, from the top left corner. */
export function lines(width: number, height: number, text: readonly string[], size = 10): Drawing {
  const d = new Drawing(width, height);
  d.block(10, 10 + size, text, { size }, 1.5);
  return d;
}

const RUNNING_TEXT = [
  'The mugs come from the kiln on Thursdays and are wrapped the day after.',
  'Each is a little different, which is as it should be with things made by hand.',
  'Write to us when anything is amiss, and we will see what can be done.',
];
export const writing = (): Drawing => lines(500, 100, RUNNING_TEXT);

/** A framed box with a row of bars in it and not a word; `number` is what the bars say. */
export function bareBox(width: number, height: number, number: string, module: number, barHeight: number): Drawing {
  const d = new Drawing(width, height);
  d.frame(0, 0, width, height, 1.5);
  d.bars(code128(number), width / 2, height / 2, module, barHeight);
  return d;
}

/** Running text with two rows of small bars in its middle: a figure of a label, as large together as a label. */
export function figureInWords(): Drawing {
  const d = new Drawing(420, 280);
  d.block(0, 12, RUNNING_TEXT, { size: 11 }, 1.5);
  d.bars(code128('0034000012345678'), 210, 130, 0.55, 30).bars(code128('17-0031'), 210, 180, 0.55, 20);
  d.block(0, 240, RUNNING_TEXT, { size: 11 }, 1.5);
  return d;
}

/** Running text above a box that has a row of bars as large as a label's: together as large as a label. */
export function couponInWords(): Drawing {
  const d = new Drawing(420, 250);
  d.block(0, 12, RUNNING_TEXT, { size: 11 }, 1.5);
  d.frame(0, 100, 420, 140, 1).bars(code128('0034000012345678'), 210, 170, 1.2, 40);
  return d;
}

/** An address and a matrix code that says a number, with no words of a label but these. */
export function addressedMatrix(number: string, words: readonly string[] = []): Drawing {
  const d = new Drawing(262, 360);
  d.block(0, 20, ['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'], { size: 20 }, 1.2);
  d.matrix(qr(number), 131, 160, 5);
  d.text(0, 270, number, { size: 24, bold: true });
  d.block(0, 290, words, { size: 9 }, 1.3);
  d.rect(0, 330, 262, 12);
  return d;
}

/** A matrix code alone, its modules so many pt wide. */
export function matrixAlone(module: number): Drawing {
  const d = new Drawing(400, 400);
  d.matrix(qr('https://mugmonger.example/offer'), 200, 200, module);
  return d;
}

/** A voucher with bars of its own, about as large as a label. */
export function voucher(width = 400, height = 260): Drawing {
  const d = new Drawing(width, height);
  d.frame(0, 0, width, height, 2);
  d.text(width / 2, 60, 'VOUCHER', { size: 34, bold: true, align: 'center' });
  d.text(width / 2, 90, 'Ten off your next order over forty.', { size: 11, align: 'center' });
  d.bars(code128('TENOFF-2031'), width / 2, 160, 1.3, 50);
  d.text(width / 2, 215, 'Not valid for carriage. Sample.', { size: 9, align: 'center' });
  return d;
}

/** The part that the sender keeps: the label's own number once more, on a framed slip of paper. */
export function senderCopy({ serial, postcode, service }: LabelContent): Drawing {
  const d = new Drawing(400, 250);
  d.frame(0, 0, 400, 250, 1.5);
  d.text(16, 32, "Sender's copy", { size: 20, bold: true });
  d.text(16, 56, `Tracking no`, { size: 10 });
  d.text(16, 72, `Service ${service}`, { size: 10 });
  d.bars(gs1Code128(['420', postcode], ['92', serial]), 200, 140, 1.1, 60);
  d.text(200, 200, 'Sample. Keep for your records.', { size: 9, align: 'center' });
  return d;
}

/** A customs declaration of its own size, with the bars that posts put on it where `bars` says so. */
export function customs(width: number, height: number, size = 9): Drawing {
  const d = new Drawing(width, height);
  d.text(12, 26, 'CUSTOMS DECLARATION', { size: size * 1.8, bold: true });
  d.text(width - 12, 26, 'CN 22', { size: size * 1.4, align: 'right' });
  const rows = ['Detailed description of contents', 'Net weight', 'Value and currency', 'Country of origin', 'Signature of the sender'];
  rows.forEach((row, index) => {
    const y = 44 + index * ((height - 56) / rows.length);
    d.line(12, y, width - 12, y, 0.75);
    d.text(16, y + size + 4, row, { size });
  });
  d.text(width - 12, height - 8, 'Sample, not valid', { size, align: 'right' });
  return d;
}

/** The slip as an L about a label in the page's upper left corner: no rectangle has all of it and nothing of the label. */
export function slipAround(order: number): LayoutPage {
  const slipDrawing = packingSlip(540, 220, contentOf(order));
  return letter(
    uprightLabel(order, 24, 24),
    slip(slipDrawing, 36, 500),
    other(lines(200, 120, ['Bud vase, celadon', 'Ramen bowl, tenmoku']), 380, 60),
  );
}
export const slipDrawing = (order: number, width = 540, height = 360): Drawing => packingSlip(width, height, contentOf(order));

/** A framed label of 4×6 in with both addresses, a few words and small bars. */
export function smallBarred(from: readonly string[], to: readonly string[], words: readonly string[], number: string): Drawing {
  const d = new Drawing(288, 432);
  d.frame(0, 0, 288, 432, 1.5);
  d.block(14, 30, from, { size: 8 }, 1.2);
  d.block(150, 30, words, { size: 8 }, 1.3);
  d.block(14, 100, to, { size: 14 }, 1.2);
  d.bars(code128(number), 144, 294, 0.7, 40).text(144, 330, number, { size: 10, align: 'center' });
  d.line(14, 200, 274, 200).line(14, 380, 274, 380);
  return d;
}

/** A page of the media's size with writing at the top and one large row of bars below, as rolls of labels are printed with; what stands behind a `|` is a column of its own. */
export function onRoll(text: readonly string[], number: string): LayoutPage {
  const columns = text.map((line) => line.split('|'));
  const d = lines(
    288,
    432,
    columns.map(([first = '']) => first),
  );
  d.block(
    60,
    20,
    columns.map(([, second = '']) => second),
    { size: 10 },
    1.5,
  );
  d.bars(code128(number), 144, 260, 1.1, 90);
  return { width: 288, height: 432, regions: [other(d, 0, 0)] };
}
