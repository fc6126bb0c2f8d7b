import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { lineBelow, writingBeside } from '../../src/locating/line-outside.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { judged } from './judged.js';

const LABEL: Box = { x: 60, y: 60, width: 260, height: 200 };
const lines = (drawing: Drawing): Drawing => {
  drawing.block(LABEL.x, LABEL.y + 20, ['Ada Invented', '14 Sample Lane', 'Larch Halt EX1 2AB'], { size: 14 });
  return drawing;
};

describe('lineBelow', () => {
  /** Whether a line of type in its column, this far (mm) below a label, may be its last. */
  const below = async (white: number, text: string, more: (d: Drawing, y: number) => unknown = () => undefined, label = LABEL) => {
    const y = LABEL.y + LABEL.height + mmToPt(white) + 7;
    const drawing = lines(new Drawing(612, 792)).text(LABEL.x, y, text, { size: 10 });
    more(drawing, y);
    const page = await drawnPage(drawing);
    return lineBelow(judged(label, 0.9, { edge: 'ink' }), page, inkBlobs(page.ink()));
  };

  it('is a line alone within 22 mm', async () => {
    expect((await below(18, '316-H80'))?.y).toBeCloseTo(LABEL.y + LABEL.height + mmToPt(18), -1);
    expect(await below(24, '316-H80')).toBeUndefined();
  });

  it.each(['Thank you!', 'Sheet 2 of 5', 'The refund follows within fourteen days.'])('is none that a page says: %s', async (text) => {
    expect(await below(18, text)).toBeUndefined();
  });

  it('is none with more below it, outside the column, or below a whole label', async () => {
    expect(await below(18, 'Summary', (d, y) => d.text(LABEL.x, y + 20, 'Two mugs', { size: 10 }))).toBeUndefined();
    expect(await below(18, 'A line of type that goes on far beyond the side of the label, as pages do')).toBeUndefined();
    expect(
      await below(18, '316-H80', () => undefined, { ...LABEL, y: LABEL.y + LABEL.height - 422, width: 280, height: 422 }),
    ).toBeUndefined();
  });
});

describe('writingBeside', () => {
  /** A label that lies on its page with a line beside it, and what the page says below, upright or as the label is. */
  const beside = async (pages?: 0 | -90): Promise<Box | undefined> => {
    const drawing = new Drawing(612, 792);
    for (const [at, text] of ['Ada Invented', '14 Sample Lane', 'Larch Halt EX1 2AB'].entries())
      drawing.text(80 + 20 * at, 260, text, { size: 14, turn: -90 });
    drawing.text(240, 260, 'SAMPLE', { size: 8, turn: -90 });
    if (pages !== undefined)
      drawing.text(60, 700, 'What is written for the seller on this page, and stands upright on it, mostly', { size: 9, turn: pages });
    return writingBeside(judged({ x: 60, y: 100, width: 100, height: 170 }, 0.9, { edge: 'ink' }), await drawnPage(drawing), []);
  };

  it('is what stands along a label as its own writing does, on a page that is written otherwise', async () => {
    const line = await beside(0);
    expect(line?.x).toBeCloseTo(234, -1);
    expect(line?.height).toBeGreaterThan(line?.width ?? NaN);
  });

  it('is a single turned line where the page says nothing else', async () => {
    expect((await beside())?.x).toBeCloseTo(234, -1);
  });

  it('is none where the page is written as the label is', async () => {
    expect(await beside(-90)).toBeUndefined();
  });
});
