import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { cornerFrames } from '../../src/locating/corner-frames.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { survey } from '../../src/locating/survey.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed } from '../steps/on-sample.js';

/** Two short lines in each corner of a box, `arm` pt long. */
function marks(d: Drawing, { x, y, width, height }: Box, arm = 16, line = 1.5): Drawing {
  for (const [cx, dx] of [
    [x, 1],
    [x + width, -1],
  ] as const)
    for (const [cy, dy] of [
      [y, 1],
      [y + height, -1],
    ] as const) {
      d.rect(Math.min(cx, cx + dx * arm), Math.min(cy, cy + dy * line), arm, line);
      d.rect(Math.min(cx, cx + dx * line), Math.min(cy, cy + dy * arm), line, arm);
    }
  return d;
}

async function framesOn(d: Drawing): Promise<readonly Box[]> {
  const ink = (await drawnPage(d)).ink();
  return cornerFrames(ink, inkBlobs(ink));
}
const BOX: Box = { x: 60, y: 60, width: 432, height: 288 };

describe('corner frames', () => {
  it.each([8, 16, 30])('are found by their four marks of %i pt', async (arm) => {
    const [found, ...more] = await framesOn(marks(new Drawing(612, 792), BOX, arm));
    expect(more).toEqual([]);
    for (const key of ['x', 'y', 'width', 'height'] as const) expect(Math.abs((found?.[key] ?? NaN) - BOX[key])).toBeLessThan(1.5);
  });

  it('are one for each of two labels in a column, and none around both', async () => {
    const upper = { ...BOX, height: 200 };
    const frames = await framesOn(marks(marks(new Drawing(612, 792), upper), { ...upper, y: 400 }));
    expect(frames.map(({ y }) => Math.round(y / 10))).toEqual([6, 40]);
  });

  it('are found with words just inside a mark', async () => {
    const d = marks(new Drawing(612, 792), BOX, 24).text(72, 80, 'i', { size: 9 });
    expect(await framesOn(d)).toHaveLength(1);
  });

  it('are apart for two labels side by side', async () => {
    const second = { x: 60, y: 420, width: 432, height: 288 };
    const found = await framesOn(marks(marks(new Drawing(612, 792), BOX), second, 20));
    expect(found.map(({ height }) => Math.round(height))).toEqual([288, 288]);
  });

  it.each<[string, (d: Drawing) => unknown]>([
    ['three marks', (d) => marks(d, BOX).items.splice(0, 2)],
    ['boxes to tick in the corners', (d) => [60, 476].forEach((x) => [60, 332].forEach((y) => d.frame(x, y, 16, 16, 1.5)))],
    ['black squares in the corners', (d) => marks(d, BOX, 16, 16)],
    ['what is smaller than an inch', (d) => marks(d, { ...BOX, height: 60 })],
  ])('are none with %s', async (_, draw) => {
    const d = new Drawing(612, 792).text(300, 700, 'Sample', { size: 9 });
    draw(d);
    expect(await framesOn(d)).toEqual([]);
  });

  it('end a label whose lines stand far apart', async () => {
    const d = marks(new Drawing(612, 792), { x: 60, y: 60, width: 288, height: 432 });
    d.text(76, 92, 'Halvorne', { size: 18 }).block(76, 150, ['Ship to', 'Bela Invented', '3 Sample Row', 'Alder Halt EX 00188'], {
      size: 12,
    });
    d.bars(code128('9059961705749'), 204, 330, 1.2, 80).text(76, 470, 'Tracking no 9059961705749', { size: 9 });
    d.text(60, 510, 'Packing slip', { size: 18 });
    const page = await drawnPage(d);
    const seen = await survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72));
    expect(seen).toMatchObject({ kind: 'labels', labels: [{ edge: 'frame' }] });
  });
});
