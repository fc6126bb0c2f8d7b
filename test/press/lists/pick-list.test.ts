import { describe, expect, it } from 'vitest';
import { mediaNamed } from '../../../src/geometry/media.js';
import { pickList } from '../../../src/press/lists/pick-list.js';

const row = { bin: 'A1', sku: 'PIN', description: 'Pin', variant: 'red', quantity: 2, parcels: '1' };
const heads = (lines: readonly (typeof row)[], media: string): readonly string[] =>
  pickList(lines, { date: 'today', parcels: 1 }, mediaNamed(media)).columns.map(({ head }) => head);

describe('a pick list', () => {
  it('has a column for each thing on wide paper, and one for the article on a label', () => {
    expect(heads([row], 'letter')).toEqual(['', 'Bin', 'SKU', 'Description', 'Variant', 'Pieces', 'For parcels']);
    expect(heads([row], '4x6in')).toEqual(['', 'Bin', 'Article', 'Pieces']);
  });

  it('leaves out columns that would be empty', () => {
    expect(heads([{ ...row, bin: '', variant: '' }], 'a4')).toEqual(['', 'SKU', 'Description', 'Pieces', 'For parcels']);
  });

  it('has columns that leave room for the description, however wide the others are', () => {
    const shares = pickList([row], { date: '', parcels: 1 }, mediaNamed('a4')).columns.map(({ width }) => (width === 'rest' ? 0 : width));
    expect(shares.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(0.9);
  });

  it('sums up in one sentence', () => {
    const intro = (lines: readonly (typeof row)[], parcels: number) => pickList(lines, { date: '', parcels }, mediaNamed('a4')).intro;
    expect(intro([row, row], 1)).toEqual(['2 articles, 4 pieces, for 1 parcel.']);
    expect(intro([], 3)).toEqual(['Nothing to fetch.']);
  });
});
