import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mediaNamed } from '../../../src/geometry/media.js';
import type { Block, Mark } from '../../../src/press/lists/block.js';
import { ListFace } from '../../../src/press/lists/face.js';
import type { List, ListColumn, ListRow, ListText } from '../../../src/press/lists/list.js';
import { measuresOf } from '../../../src/press/lists/measures.js';
import { columnsOf, headBlock, rowBlocks, shortBlock } from '../../../src/press/lists/table.js';

const face = new ListFace();
const SMALL = measuresOf(mediaNamed('4x6in'));
const LETTER = measuresOf(mediaNamed('letter'));

const plain = (text: string): readonly ListText[] => [{ text, style: 'plain' }];
const rowOf = (name: string, ...cells: readonly (readonly ListText[])[]): ListRow => ({ name, cells });
const listOf = (columns: readonly ListColumn[], ...rows: readonly ListRow[]): List => ({
  title: 'List',
  date: '2026-11-28',
  intro: [],
  columns,
  sections: [{ heading: '', ownPage: false, rows, closing: undefined, sign: [] }],
  caution: '',
});
const COLUMNS: readonly ListColumn[] = [
  { head: 'Bin', align: 'left', width: 0.2 },
  { head: 'Article', align: 'left', width: 'rest' },
  { head: 'Pieces', align: 'right', width: 0.2 },
];

const texts = ({ marks }: Block): readonly string[] => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.line.text] : []));
const typeIn = (block: Block): readonly Extract<Mark, { kind: 'text' }>[] =>
  block.marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));

describe('the columns of a table', () => {
  it('are as wide as their widest text, and the rest is for the one that takes it', () => {
    const columns = columnsOf(listOf(COLUMNS, rowOf('a', plain('A1'), plain('Mug'), plain('12'))), SMALL, face);
    const [bin = 0, article = 0, pieces = 0] = columns.width;
    expect(bin).toBeLessThan(30);
    expect(article).toBeGreaterThan(0.6 * SMALL.width);
    expect(bin + article + pieces + 2 * SMALL.gap).toBeCloseTo(SMALL.width, 6);
    expect(columns.x.map((x, at) => x + (columns.width[at] ?? 0)).at(-1)).toBeCloseTo(SMALL.width, 6);
  });

  it('are no wider than their share, whatever stands in them', () => {
    const long = 'BOX-SMALL-0012-'.repeat(20);
    const { width } = columnsOf(listOf(COLUMNS, rowOf('a', plain(long), plain(long), plain(long))), SMALL, face);
    const room = SMALL.width - 2 * SMALL.gap;
    expect(width[0]).toBeCloseTo(0.2 * room, 6);
    expect(width[2]).toBeCloseTo(0.2 * room, 6);
  });

  it('of an empty table hold their heads', () => {
    const columns = columnsOf(listOf(COLUMNS), SMALL, face);
    expect(texts(headBlock(columns, SMALL, face))).toEqual(['Bin', 'Article', 'Pieces']);
  });
});

describe('a row', () => {
  const columns = columnsOf(listOf(COLUMNS, rowOf('a', plain('A1'), plain('Mug'), plain('12'))), SMALL, face);

  it('has the first lines of its cells on one baseline, and figures at the right edge', () => {
    const [block, ...more] = rowBlocks(rowOf('a', plain('A1'), [{ text: 'Mug', style: 'big' }], plain('3')), columns, 400, SMALL, face);
    expect(more).toEqual([]);
    if (!block) return;
    const [bin, article, pieces] = typeIn(block);
    expect(new Set([bin?.baseline, article?.baseline, pieces?.baseline]).size).toBe(1);
    expect((pieces?.x ?? 0) + (pieces?.line.width ?? 0)).toBeCloseTo(SMALL.width, 2);
    expect(bin?.x).toBe(0);
  });

  it('has what is written to the left at the right edge of its column', () => {
    const [block] = rowBlocks(rowOf('a', [], plain('ספל'), []), columns, 400, SMALL, face);
    const [word] = block ? typeIn(block) : [];
    const [x = 0, width = 0] = [columns.x[1], columns.width[1]];
    expect((word?.x ?? 0) + (word?.line.width ?? 0)).toBeCloseTo(x + width, 2);
  });

  it('has a square for each thing to tick, as high as its type', () => {
    const [block] = rowBlocks(rowOf('a', [{ tick: true }], plain('Mug'), []), columns, 400, SMALL, face);
    const squares = block?.marks.filter(({ kind }) => kind === 'square') ?? [];
    expect(squares).toMatchObject([{ x: 0 }]);
  });

  it('without a text in any cell is a line to itself, and no more', () => {
    const [block, ...more] = rowBlocks(rowOf('a', [], [], []), columns, 400, SMALL, face);
    expect([texts(block ?? { height: 0, marks: [] }), more]).toEqual([[], []]);
  });

  it('too high for a page is torn between lines: nothing lost, each part with its name, none too high', () => {
    const words = Array.from({ length: 400 }, (_, at) => `word${at}`);
    for (const measures of [SMALL, LETTER]) {
      const set = columnsOf(listOf(COLUMNS), measures, face);
      const blocks = rowBlocks(rowOf('Order A-1', plain('A1'), plain(words.join(' ')), plain('3')), set, 150, measures, face);
      expect(blocks.length).toBeGreaterThan(1);
      for (const block of blocks) expect(block.height).toBeLessThanOrEqual(150);
      for (const block of blocks.slice(1)) expect(texts(block)[0]).toBe('Order A-1, continued');
      const all = blocks.flatMap((block) => texts(block).join(' ').replace('Order A-1, continued', '').split(/\s+/));
      expect(all.filter((each) => each.startsWith('word'))).toEqual(words);
      expect(all.filter((each) => each === 'A1' || each === '3')).toEqual(['A1', '3']);
    }
  });

  it('on a page too low for a line still ends', () => {
    const blocks = rowBlocks(rowOf('a', plain('A1'), plain('one two three '.repeat(30)), []), columns, 3, SMALL, face);
    expect(blocks.flatMap(texts).filter((each) => each !== 'a, continued').length).toBeGreaterThan(3);
  });

  it('lies, for any texts, within its block and its columns', () => {
    const text = fc.array(fc.constantFrom('mug', 'ספל', '器', 'BOX-0012-LARGE', 'ğ', '12', '🐦', '\n'), { maxLength: 20 }).map((all) => all.join(' ')); // prettier-ignore
    fc.assert(
      fc.property(text, text, text, fc.integer({ min: 60, max: 300 }), (a, b, c, most) => {
        for (const block of rowBlocks(rowOf('name', plain(a), plain(b), plain(c)), columns, most, SMALL, face)) {
          expect(block.height).toBeLessThanOrEqual(most + 0.001);
          for (const { x, baseline, line } of typeIn(block)) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x + line.width).toBeLessThanOrEqual(SMALL.width + 0.01);
            expect(baseline - line.up).toBeGreaterThanOrEqual(-0.001);
            expect(baseline + line.down).toBeLessThanOrEqual(block.height + 0.001);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('what stands on each page again', () => {
  it('is cut after three lines, with its end left on', () => {
    const block = shortBlock('word '.repeat(300), ', continued', 'small', SMALL, face);
    expect(typeIn(block)).toHaveLength(3);
    expect(texts(block).at(-1)).toMatch(/…, continued$/);
    expect(texts(shortBlock('Short', ', continued', 'small', SMALL, face))).toEqual(['Short, continued']);
  });
});
