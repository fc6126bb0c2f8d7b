import { describe, expect, it } from 'vitest';
import { collate } from '../../src/batch/collate.js';
import { packedParcels } from '../../src/batch/packed-parcels.js';
import type { EndedDocument } from '../../src/batch/work-through.js';
import { order } from '../orders/make.js';
import { item } from './fakes.js';

const recipe = { name: 'clay', about: 'Clay.', steps: [] };
const channels = [
  { name: 'clay', files: [], carrier: 'Kite Post', recipe },
  { name: 'ink', files: [], recipe },
];
const document = (channel: number, tracking: string | undefined, text = 'x'): EndedDocument => ({
  work: { channel, path: 'a.pdf', entry: undefined, shownName: 'a.pdf', sha256: '', size: 1 },
  state: 'read',
  pageCount: 1,
  items: [],
  diagnostics: [],
  pressed: undefined,
  pressedElsewhere: new Map(),
  pictures: new Map(),
  texts: [
    {
      itemId: 'p1',
      codes: [
        { text: 'routing', tracking: undefined },
        { text, tracking },
      ],
      lines: [],
    },
  ],
  times: {},
  counts: { documentsOpened: 1, sourceRasters: 0, outputRasters: 0, decodes: 0 },
});

describe('the parcels that lists are made of', () => {
  it('have their orders, carrier and tracking number where those are known; a return label by itself is handed to nobody', () => {
    const documents = [document(0, 'KP0001'), document(1, undefined), document(1, 'KP0003')];
    const plan = { number: undefined, impose: undefined };
    const collated = collate(
      [item('p1'), item('p1'), item('p1', { role: 'return-label' })].map((each) => ({ plan, items: [each] })),
      () => '4x6in',
    );
    const parcels = new Map([
      ['0 p1', { label: '0 p1', orders: [order('A-1')], by: 'tracking' as const, also: [], number: 1, of: 1, returns: [] }],
    ]);
    const packed = packedParcels({ channels }, documents, collated, parcels);
    expect(packed.map(({ number, carrier, tracking, orders }) => [number, carrier, tracking, orders.map((each) => each.number)])).toEqual([
      [1, 'Kite Post', 'KP0001', ['A-1']],
      [2, '', '', []],
    ]);
  });

  it('have the number that their order knows where a code holds it and no published scheme says so', () => {
    const number = 'KQ40302011223344';
    const documents = [document(0, undefined, `42000001${number}`), document(0, undefined, '4200000177777777777')];
    const plan = { number: undefined, impose: undefined };
    const collated = collate(
      [item('p1'), item('p1')].map((each) => ({ plan, items: [each] })),
      () => '4x6in',
    );
    const parcels = new Map(
      [0, 1].map((at) => [
        `${at} p1`,
        {
          label: `${at} p1`,
          orders: [order('A-1', { tracking: [number] })],
          by: 'tracking' as const,
          also: [],
          number: 1,
          of: 1,
          returns: [],
        },
      ]),
    );
    expect(packedParcels({ channels }, documents, collated, parcels).map(({ tracking }) => tracking)).toEqual([number, '']);
  });
});
