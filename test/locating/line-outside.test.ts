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
  const beside = async (words: string, turn: 0 | 90): Promise<Box | undefined> => {
    // A page whose own writing stands upright, and a label that lies on it.
    const drawing = lines(new Drawing(792, 612)).text(60, 330, words, { size: 9 });
    const page = await drawnPage(drawing, turn);
    const all = page.words().map(({ box }) => box);
    const label = all.slice(0, -words.split(' ').length).reduce((sum, box) => {
      const [x, y] = [Math.min(sum.x, box.x), Math.min(sum.y, box.y)];
      return {
        x,
        y,
        width: Math.max(sum.x + sum.width, box.x + box.width) - x,
        height: Math.max(sum.y + sum.height, box.y + box.height) - y,
      };
    });
    const upright = page.words().map((word) => ({ ...word, box: { ...word.box, x: word.box.x + 2000 }, turn: 0 as const }));
    const both = { ...page, width: page.width, height: page.height, words: () => [...page.words(), ...upright] };
    return writingBeside(judged(label, 0.9, { edge: 'ink' }), both, []);
  };

  it('is what stands along a label as its own writing does, on a page that is written otherwise', async () => {
    expect(await beside('Larch Halt', 90)).toBeDefined();
  });

  it('is none where the page is written as the label is', async () => {
    expect(await beside('Larch Halt', 0)).toBeUndefined();
  });
});
