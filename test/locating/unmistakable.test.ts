import { expect, it } from 'vitest';
import { codesIn } from '../../src/locating/gather.js';
import { hasCarriersBars, isUnmistakable, looksLikeLabel } from '../../src/locating/unmistakable.js';
import { codeLikeAreas } from '../../src/reading/code-like.js';
import { code128, qr } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { drawnPage } from '../reading/drawn-page.js';

interface Made {
  readonly width?: number;
  readonly height?: number;
  readonly module?: number;
  readonly high?: number;
  readonly lines?: number;
  readonly number?: string;
  readonly second?: boolean;
}

/** A picture of a label, or of something less. */
async function looks({
  width = 288,
  height = 432,
  module = 1.35,
  high = 70,
  lines = 7,
  number = '9261290100130435082878',
  second = true,
}: Made) {
  const d = new Drawing(width, height);
  d.frame(2, 2, width - 4, height - 4, 1);
  for (let line = 0; line < lines; line++) d.text(20, 30 + 18 * line, 'Somebody     Somewhere', { size: 10 });
  d.bars(code128(number), width / 2, 220, module, high);
  if (second) d.matrix(qr('SAMPLE-0000001'), width / 2, 350, 2);
  const page = await drawnPage(d);
  const box = { x: 0, y: 0, width, height };
  const label = { box, edge: 'page', codes: codesIn(codeLikeAreas(page), box), score: 1, evidence: [] } as const;
  const codes = await page.codes(box, 203 / 72);
  return { plain: isUnmistakable(label, codes, page), like: looksLikeLabel(label, codes, page), bars: hasCarriersBars(label) };
}

it('a picture with all of a label needs no words', async () => {
  expect(await looks({})).toEqual({ plain: true, like: true, bars: true });
});

it('without a second code it is like a label', async () => {
  expect(await looks({ second: false })).toEqual({ plain: false, like: true, bars: true });
});

it.each<[string, Made, boolean]>([
  ['narrow bars', { module: 1 }, false],
  ['low bars', { high: 34 }, false],
  ['little type', { lines: 4 }, true],
  ['no number', { module: 1, number: 'BIN-ROW-SHELF-4711' }, true],
  ['an odd size', { width: 345, module: 1.6 }, true],
])('%s make less than a label', async (_, made, bars) => {
  expect(await looks(made)).toEqual({ plain: false, like: false, bars });
});
