import { expect, it } from 'vitest';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { tickBoxes } from '../../src/locating/tick-boxes.js';
import { drawnPage } from '../reading/drawn-page.js';
import { qr } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';

async function count(draw: (d: Drawing) => unknown, inside = { x: 0, y: 0, width: 288, height: 432 }): Promise<number> {
  const d = new Drawing(288, 432);
  draw(d);
  const page = await drawnPage(d);
  return tickBoxes(page.ink(), inkBlobs(page.ink()), inside).length;
}

it('finds empty squares to be ticked, of any usual size and line', async () => {
  for (const side of [7, 10, 14]) {
    for (const line of [0.75, 1, 1.5])
      expect(await count((d) => d.frame(20, 40, side, side, line).frame(120, 40.4, side, side, line)), `${side} ${line}`).toBe(2);
  }
});

it.each<[string, (d: Drawing) => unknown]>([
  ['a ticked one', (d) => d.frame(20, 40, 10, 10, 1).line(20, 40, 30, 50, 1)],
  ['a cell of a label', (d) => d.frame(20, 40, 60, 60, 1)],
  ['a long one', (d) => d.frame(20, 40, 16, 10, 1)],
  ['a solid one', (d) => d.rect(20, 40, 10, 10)],
  ['letters and figures', (d) => d.text(20, 60, 'O 0 D B 8 Q n u', { size: 14, bold: true }).text(20, 100, 'O D', { size: 20 })],
  ['a ring', (d) => d.disc(40, 60, 6).disc(40, 60, 4, 1)],
  ['a matrix code', (d) => d.matrix(qr('SAMPLE-0000001'), 100, 100, 2)],
])('%s is none', async (_, draw) => {
  expect(await count(draw)).toBe(0);
});

it('counts only what lies in the box', async () => {
  expect(await count((d) => d.frame(20, 40, 10, 10, 1), { x: 100, y: 0, width: 100, height: 100 })).toBe(0);
});
