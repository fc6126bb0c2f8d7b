import { describe, expect, it } from 'vitest';
import { fourStateWords, judgeFourState } from '../../src/proof/four-state-size.js';
import { findFourState, type FourStateRow } from '../../src/reading/four-state.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS, sample } from '../samples/sample.js';
import { barsOf, lettersTurned, picturePage, vectorPage } from './four-state-art.js';
import { opened } from './risky-pages.js';

const LETTERS = 'AADTFFDFTDADTAADAATFDTDDAAADDTDTTDAFADADDDTFFFDDTTTADFAAADFTDAADA';

function rowsOn(source: SourceDocument): readonly FourStateRow[] {
  const page = source.page(1);
  const rows = findFourState(page, { x: 0, y: 0, width: page.width, height: page.height });
  source.close();
  return rows;
}

const outside = (row: FourStateRow | undefined, scale = 1): readonly string[] =>
  row ? [...new Set(judgeFourState(row, scale, 0.18).flatMap(({ isInside, range }) => (isInside ? [] : [range.what])))] : ['no row'];

describe('a row of 4-state bars', () => {
  it.each(QUARTER_TURNS)('as vectors, turned %i: found, its bars told, measured to a hundredth of an inch and better', async (turn) => {
    const rows = rowsOn(await vectorPage(barsOf(LETTERS), turn));
    expect(rows).toHaveLength(1);
    const [row] = rows as [FourStateRow];
    expect(row.run).toBe(turn % 180 === 0 ? 'level' : 'upright');
    expect(row.bars).toBe(lettersTurned(LETTERS, turn));
    expect(Math.abs(row.barsPerInch - 21.5)).toBeLessThan(0.1);
    expect(Math.abs(row.barWidth / 72 - 0.02)).toBeLessThan(0.003);
    for (const [state, inches] of [
      ['T', 0.049],
      ['A', 0.097],
      ['D', 0.097],
      ['F', 0.145],
    ] as const) {
      expect(Math.abs((row.heights[state] ?? 0) / 72 - inches)).toBeLessThan(0.005);
    }
    expect(outside(row)).toEqual([]);
  });

  it.each(QUARTER_TURNS)('as a picture of 203 dpi, turned %i', async (turn) => {
    const rows = rowsOn(await picturePage(barsOf(LETTERS), 203, turn));
    expect(rows.map(({ bars }) => bars)).toEqual([lettersTurned(LETTERS, turn)]);
    expect(Math.abs((rows[0]?.barsPerInch ?? 0) - 21.5)).toBeLessThan(0.2);
  });

  it('of other lengths is measured and held against nothing', async () => {
    const [row] = rowsOn(await vectorPage(barsOf(LETTERS.slice(0, 36))));
    expect(row?.bars).toBe(LETTERS.slice(0, 36));
    expect(row && judgeFourState(row, 1, 0)).toEqual([]);
  });

  it('is looked for only inside the box', async () => {
    const source = await vectorPage(barsOf(LETTERS));
    expect(findFourState(source.page(1), { x: 0, y: 120, width: 288, height: 312 })).toEqual([]);
    source.close();
  });
});

describe('sizes', () => {
  it.each<[string, number, number, readonly string[]]>([
    ['drawn small', 0.75, 1, ['pitch', 'height of the full bars', 'height of the ascenders and descenders']],
    ['drawn right and printed small', 1, 0.75, ['pitch', 'height of the full bars', 'height of the ascenders and descenders']],
    ['drawn large', 1.18, 1, ['pitch', 'height of the full bars', 'height of the ascenders and descenders']],
    ['printed at 97 %', 1, 0.97, []],
  ])('%s', async (_, drawn, printed, broken) => {
    const [row] = rowsOn(await vectorPage(barsOf(LETTERS, drawn)));
    expect(outside(row, printed)).toEqual(broken);
  });

  it('are told in mm and bars, beside the rule', async () => {
    const [row] = rowsOn(await vectorPage(barsOf(LETTERS)));
    const words = row ? judgeFourState(row, 1, 0).map(fourStateWords) : [];
    expect(words[0]).toBe('pitch 21.5 bars per inch, 20.0 to 24.0 bars per inch by rule');
    expect(words[2]).toMatch(/^height of the full bars 3\.[67]\d mm, 3\.17 to 4\.19 mm by rule$/);
  });

  it('bars too close to each other', async () => {
    const [row] = rowsOn(await vectorPage(barsOf(LETTERS, 1, 1 / 27)));
    expect(outside(row)).toEqual(['pitch']);
  });
});

describe('what is none', () => {
  it.each<[string, string]>([
    ['equal bars', 'F'.repeat(65)],
    ['a ruler: bars that reach down only', 'TTTTD'.repeat(13)],
    ['bars that reach up only', 'TTA'.repeat(22)],
    ['too few', LETTERS.slice(0, 20)],
  ])('%s', async (_, letters) => {
    expect(rowsOn(await vectorPage(barsOf(letters)))).toEqual([]);
  });

  it.each(LAYOUTS.map(({ name }, index) => [name, index] as const).filter(([, index]) => index % 3 === 0))(
    'anything on the sample %s',
    async (_, index) => {
      const layout = LAYOUTS[index];
      const { bytes } = await sample(layout as (typeof LAYOUTS)[number], layout?.kinds[0] ?? 'vector', QUARTER_TURNS[index % 4] ?? 0);
      if (bytes[0] === 0x25) expect(rowsOn(await opened(bytes))).toEqual([]);
    },
  );
});
