import { describe, expect, it } from 'vitest';
import { mediaNamed } from '../../../src/geometry/media.js';
import { handOverList } from '../../../src/press/lists/hand-over-list.js';

const parcel = { number: 7, tracking: 'KP0000000007', orders: ['S-1', 'S-2'], postcode: '00000', country: 'US' };

describe('a hand-over list', () => {
  it('gives each carrier pages, a count and lines to sign of its own', () => {
    const list = handOverList(
      [
        { carrier: 'Heron', parcels: [parcel] },
        { carrier: '', parcels: [{ number: 8, tracking: '', orders: [], postcode: '', country: '' }] },
      ],
      { date: 'today' },
      mediaNamed('letter'),
    );
    expect(list.intro).toEqual(['2 parcels in all: Heron 1, Carrier not known 1.']);
    expect(list.sections).toMatchObject([
      {
        heading: 'Heron',
        ownPage: true,
        closing: { of: 'Heron', sum: '1 parcel' },
        sign: ['Taken over by (name)', 'Signature', 'Date and time'],
      },
      { heading: 'Carrier not known', ownPage: true, closing: { of: 'Carrier not known', sum: '1 parcel' } },
    ]);
    const texts = list.sections.map(({ rows }) => rows.map(({ cells }) => cells.flat().map((each) => ('tick' in each ? '[]' : each.text))));
    expect(texts).toEqual([[['[]', '7', 'KP0000000007', 'S-1, S-2', '00000', 'US']], [['[]', '8', '–', '–', '–', '–']]]);
  });

  it('says on a label the same in fewer columns', () => {
    const list = handOverList([{ carrier: 'Heron', parcels: [parcel] }], { date: 'today' }, mediaNamed('4x6in'));
    const [row] = list.sections[0]?.rows ?? [];
    expect(row?.cells.flat().map((each) => ('tick' in each ? '[]' : each.text))).toEqual([
      '[]',
      '7',
      'KP0000000007',
      'S-1',
      'S-2',
      'US 00000',
    ]);
  });
});
