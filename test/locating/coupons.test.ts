import { expect, it } from 'vitest';
import { withoutCoupons } from '../../src/locating/coupons.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

const LABEL = { box: { x: 30, y: 30, width: 280, height: 400 } };

async function left(framed: boolean, text: string, labels = [LABEL]): Promise<readonly string[]> {
  const d = new Drawing(612, 792)
    .text(40, 60, 'Parcel', { size: 12 })
    .text(360, 90, text, { size: 20 })
    .text(360, 120, 'until the end of May', { size: 9 });
  if (framed) d.frame(340, 60, 230, 120, 1);
  const page = await drawnPage(d);
  const facts = { page, blobs: inkBlobs(page.ink()), phrases: phrasesOf(page.words()), readCodes: () => Promise.resolve([]) };
  return withoutCoupons(labels, facts).map((phrase) => phrase.text);
}

it('leaves out what a coupon in a frame beside a label says', async () => {
  expect(await left(true, '15 % off')).toEqual(['Parcel']);
});

it('keeps other frames, what stands in none, and all of a page without a label', async () => {
  expect(await left(true, 'Packing slip')).toHaveLength(3);
  expect(await left(false, '15 % off')).toHaveLength(3);
  expect(await left(true, '15 % off', [])).toHaveLength(3);
});
