import { describe, expect, it } from 'vitest';
import { insideCutLine } from '../../src/steps/inside-cut-line.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';

const box = { x: 100, y: 100, width: 304, height: 446 };
const content = (d: Drawing): Drawing =>
  d
    .frame(108, 108, 288, 430, 1)
    .bars(code128('SAMPLE-000001'), 252, 320, 1.06, 60)
    .text(120, 500, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 8 });

describe('insideCutLine', () => {
  it('gives the bounds of what a dashed line encloses, without its dashes', async () => {
    const page = await drawnPage(content(new Drawing(612, 792)).frame(box.x, box.y, box.width, box.height, 1, 'lines', 4));
    const inside = insideCutLine(page, box);
    expect(inside?.x).toBeCloseTo(107, -0.5);
    expect(inside?.y).toBeCloseTo(107, -0.5);
    expect(inside?.width).toBeCloseTo(290, -0.5);
    expect(inside?.height).toBeCloseTo(432, -0.5);
  });

  it('leaves a solid frame alone: it belongs to its label', async () => {
    const page = await drawnPage(content(new Drawing(612, 792)).frame(box.x, box.y, box.width, box.height, 1));
    expect(insideCutLine(page, box)).toBeUndefined();
  });

  it('is for the box of the cut line only', async () => {
    const page = await drawnPage(content(new Drawing(612, 792)).frame(box.x, box.y, box.width, box.height, 1, 'lines', 4));
    expect(insideCutLine(page, { ...box, width: 200 })).toBeUndefined();
  });
});
