import { expect, it } from 'vitest';
import { insideWhite } from '../../src/steps/inside-white.js';
import { scale } from '../../src/steps/scale.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { other } from '../samples/layout.js';
import { openedPages } from './on-pages.js';
import { labelOf, onMedia, optionsOf } from './on-sample.js';

const A6 = { x: 0, y: 0, width: 297.64, height: 419.53 };

/** A frame on A6 paper with a margin (pt) of white around it. */
function framedA6(margin: number): Drawing {
  const d = new Drawing(A6.width, A6.height);
  d.frame(margin, margin, A6.width - 2 * margin, A6.height - 2 * margin, 1);
  return d;
}

it('is the bounds of the ink in a box, with a hair of paper', async () => {
  const inside = insideWhite(await drawnPage(framedA6(10)), A6);
  expect(inside?.x).toBeCloseTo(9.3, 0);
  expect(inside?.width).toBeCloseTo(279, 0);
});

it('is nothing where ink crosses the edge, or where there is none', async () => {
  expect(insideWhite(await drawnPage(framedA6(10)), { ...A6, x: 100, width: 197 })).toBeUndefined();
  expect(insideWhite(await drawnPage(new Drawing(A6.width, A6.height)), A6)).toBeUndefined();
});

it.each([
  ['A6 with 7 pt of white goes at true size without it', 7, 1],
  ['A6 that is printed to 2 pt from its edge is shrunk', 2, 0.9676],
])('scale: %s', async (_, margin, factor) => {
  const document = await openedPages([{ width: A6.width, height: A6.height, regions: [other(framedA6(margin), 0, 0)] }]);
  const [made] = await scale.apply([labelOf(A6.width, A6.height, { box: A6 })], optionsOf(scale, { bars: 'as-drawn' }), onMedia(document));
  expect(made?.scale).toBeCloseTo(factor, 3);
  document.close();
});
