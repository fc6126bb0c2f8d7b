import { describe, expect, it } from 'vitest';
import { holdParcels, readyParcels } from '../../src/batch/parcels.js';
import type { ItemResult, ItemState } from '../../src/recipe/outcome.js';
import { FAILED, HELD, item, READY, SKIPPED } from './fakes.js';

const label = (state: ItemState = READY, parcel: number | undefined = 1): ItemResult => item('p1', { state, parcel });
const slip = (state: ItemState = READY, changes: Partial<ItemResult> = {}): ItemResult =>
  item('p2', { page: 2, role: 'slip', state, parcel: 1, ...changes });
const states = (items: readonly ItemResult[]): string[] => holdParcels(items).map(({ state }) => state.kind);

describe('what belongs together is held together', () => {
  it.each<[what: string, items: ItemResult[], expected: string[]]>([
    ['a label and its slip', [label(), slip()], ['ready', 'ready']],
    ['a label with a held slip', [label(), slip(HELD)], ['held', 'held']],
    ['a label with a failed slip', [label(), slip(FAILED)], ['held', 'failed']],
    ['a label whose slip may be missing', [label(), slip(HELD, { ifSlipHeld: 'release' })], ['ready', 'held']],
    ['a held label, even when the slip may be missing', [label(HELD), slip(READY, { ifSlipHeld: 'release' })], ['held', 'held']],
    ['a slip without a label', [slip(READY, { parcel: undefined })], ['held']],
    ['a slip whose label is another parcel', [label(READY, 2), slip()], ['ready', 'held']],
    ['a label alone', [label(READY, undefined)], ['ready']],
    ['two labels, one held, of two parcels', [label(), item('p3', { parcel: 2, state: HELD })], ['ready', 'held']],
    ['a label with a skipped page beside it', [label(), slip(SKIPPED)], ['ready', 'skipped']],
    [
      'a label with a held customs form',
      [label(), slip(), item('p3', { parcel: 1, role: 'customs-form', state: HELD })],
      ['held', 'held', 'held'],
    ],
    [
      'a label with a held customs form that may be missing',
      [label(), item('p3', { parcel: 1, role: 'customs-form', state: HELD, ifSlipHeld: 'release' })],
      ['ready', 'held'],
    ],
  ])('%s', (_, items, expected) => {
    expect(states(items)).toEqual(expected);
    expect(holdParcels(holdParcels(items))).toEqual(holdParcels(items));
  });

  it('says which page the cause is on', () => {
    expect(holdParcels([label(), slip(HELD)])[0]?.state).toMatchObject({
      code: 'batch/parcel-held',
      message: 'held with the packing slip of the same parcel (page 2), which is held',
    });
    const noSlip = { ...HELD, forParcel: 'page 2 is none of its own', remedy: 'Use another recipe.' } as ItemState;
    expect(holdParcels([label(), slip(noSlip)])[0]?.state).toEqual({
      kind: 'held',
      code: 'batch/parcel-held',
      message: 'page 2 is none of its own',
      remedy: 'Use another recipe.',
    });
    expect(holdParcels([slip(READY, { parcel: undefined })])[0]?.state).toMatchObject({ code: 'batch/no-label' });
  });
});

it('puts the slip behind its label although its page came first', () => {
  const items = [slip(READY, { page: 1, id: 'a' }), item('b', { page: 2, parcel: 1 }), item('c', { page: 3 })];
  expect(readyParcels(items).map((parcel) => parcel.map(({ id }) => id))).toEqual([['b', 'a'], ['c']]);
});
