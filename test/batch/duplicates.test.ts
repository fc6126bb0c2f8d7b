import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutDuplicates } from '../../src/batch/duplicates.js';
import { holdParcels } from '../../src/batch/parcels.js';
import type { CodeSummary, ItemResult } from '../../src/recipe/outcome.js';
import { HELD } from './fakes.js';

const code = (role: CodeSummary['role'], digest: string, trust?: 'published' | 'likely'): CodeSummary => ({
  symbology: 'Code 128',
  identifier: ']C0',
  role,
  ...(trust ? { tracking: { digest: `number ${digest}`, trust } } : {}),
  digest,
  tail: '0000',
  moduleDots: 3,
});
const tracking = (digest: string): CodeSummary => code('tracking', digest, 'published');
const likely = (digest: string): CodeSummary => code('tracking', digest, 'likely');
const routing = (digest: string): CodeSummary => code('routing', digest);
const unknown = (digest: string): CodeSummary => code('unknown', digest);

const item = (more: Partial<ItemResult> = {}): ItemResult => ({
  id: 'p1',
  page: 1,
  role: 'label',
  state: { kind: 'ready' },
  box: { x: 0, y: 0, width: 288, height: 432 },
  turn: 0,
  scale: 1,
  parcel: 1,
  evidence: [],
  codes: [tracking('a')],
  picture: 'dots-a',
  pressedPage: 1,
  drawnBox: undefined,
  numberBox: undefined,
  ...more,
});
const slip = (picture: string): ItemResult => item({ id: 'p2', page: 2, role: 'slip', codes: [], picture });

const ends = (...documents: readonly (readonly ItemResult[])[]): readonly string[] =>
  withoutDuplicates(documents.map((items, index) => ({ name: `order-${index + 1}.pdf`, items }))).items.map((items) =>
    items.map(({ state }) => (state.kind === 'ready' ? 'ready' : `${state.kind} ${state.code}`)).join(', '),
  );

describe('duplicates in a run', () => {
  it('the same code and the same picture: made once, the second named', () => {
    expect(ends([item()], [item()], [item()])).toEqual(['ready', 'skipped batch/duplicate', 'skipped batch/duplicate']);
    const { items } = withoutDuplicates([
      { name: 'a.pdf', items: [item()] },
      { name: 'b.pdf', items: [item()] },
    ]);
    expect(items[1]?.[0]?.state).toMatchObject({ message: 'the same as a.pdf, page 1, which is made once' });
  });

  it('the same code and another picture: neither is printed, both are held side by side', () => {
    expect(ends([item()], [item({ picture: 'dots-b' })])).toEqual(['held batch/same-tracking-code', 'held batch/same-tracking-code']);
    const { pairs } = withoutDuplicates([
      { name: 'a.pdf', items: [item()] },
      { name: 'b.png', items: [item({ picture: 'dots-b' })] },
    ]);
    expect(pairs.map(({ document, other }) => [document, other.document])).toEqual([
      [0, 1],
      [1, 0],
    ]);
  });

  it('of three, two of them alike, none is printed', () => {
    expect(ends([item()], [item()], [item({ picture: 'dots-b' })])).toEqual(Array(3).fill('held batch/same-tracking-code'));
  });

  it('parcels of one order share their routing code and are no duplicates', () => {
    const first = item({ codes: [tracking('a'), routing('r')] });
    const second = item({ codes: [tracking('b'), routing('r')], picture: 'dots-b' });
    expect(ends([first], [second])).toEqual(['ready', 'ready']);
  });

  it('without a tracking code the picture decides', () => {
    const bare = item({ codes: [routing('r')] });
    expect(ends([bare], [{ ...bare }], [item({ codes: [routing('r')], picture: 'dots-b' })])).toEqual([
      'ready',
      'skipped batch/duplicate',
      'ready',
    ]);
  });

  it('counts twice in one document, too, and only what would be printed', () => {
    expect(ends([item(), item({ id: 'p3', page: 3, parcel: 2 })])).toEqual(['ready, skipped batch/duplicate']);
    const held = item({ state: { kind: 'held', code: 'verify/too-fine', message: '', remedy: '' }, picture: 'dots-b' });
    expect(ends([held], [item()])).toEqual(['held verify/too-fine', 'ready']);
  });

  it('names one that looks different, not one that looks the same', () => {
    const { items } = withoutDuplicates(
      ['dots-a', 'dots-b', 'dots-a'].map((picture, index) => ({ name: `${index}.pdf`, items: [item({ picture })] })),
    );
    expect(items.map(([only]) => /on (\d)\.pdf/.exec(only?.state.kind === 'held' ? only.state.message : '')?.[1])).toEqual(['1', '0', '1']);
  });

  it('one number is enough, and what belongs together by two numbers is one group', () => {
    const both = item({ codes: [tracking('a'), tracking('b')], picture: 'dots-c' });
    expect(ends([item({ codes: [tracking('a')] })], [item({ codes: [tracking('b')], picture: 'dots-b' })], [both])).toEqual(
      Array(3).fill('held batch/same-tracking-code'),
    );
  });

  it('a likely tracking code counts only where no other number says that there are two parcels', () => {
    const of = (picture: string, ...codes: readonly CodeSummary[]): ItemResult => item({ picture, codes });
    // The longest code is the order's, each parcel has a number of its own.
    expect(ends([of('1', likely('order'), unknown('p1'))], [of('2', likely('order'), unknown('p2'))])).toEqual(['ready', 'ready']);
    // PDF and PNG of one label, of which the picture shows one code less.
    expect(ends([of('1', likely('p1'), unknown('x'))], [of('2', likely('p1'))])).toEqual(Array(2).fill('held batch/same-tracking-code'));
    expect(ends([of('1', likely('p1'), unknown('x'))], [of('1', likely('p1'), unknown('x'))])).toEqual([
      'ready',
      'skipped batch/duplicate',
    ]);
    // A published number is the parcel's, whatever else is on the label.
    expect(ends([of('1', tracking('p1'), unknown('x'))], [of('2', tracking('p1'), unknown('y'))])).toEqual(
      Array(2).fill('held batch/same-tracking-code'),
    );
  });

  it('the slip of a label that is not made again goes with it; another slip is held', () => {
    expect(ends([item(), slip('s')], [item(), slip('s')])).toEqual(['ready, ready', 'skipped batch/duplicate, skipped batch/duplicate']);
    expect(ends([item(), slip('s')], [item(), slip('t')])).toEqual(['ready, ready', 'skipped batch/duplicate, held batch/other-slip']);
  });

  it('holds the whole parcel of a label that is held, and makes the copy of what is held with it', () => {
    const label = (digest: string, picture: string): ItemResult => item({ codes: [tracking(digest)], picture });
    const back = (picture: string): ItemResult => item({ id: 'p3', page: 3, role: 'return-label', codes: [tracking('back')], picture });
    expect(ends([label('a', '1'), back('2')], [label('b', '3'), back('4')], [label('a', '1')])).toEqual([
      'held batch/parcel-held, held batch/same-tracking-code',
      'held batch/parcel-held, held batch/same-tracking-code',
      'ready',
    ]);
  });

  it('never names as made what is held: a return label without its label, and its copies', () => {
    const back = item({ id: 'p3', page: 3, role: 'return-label', codes: [tracking('back')], picture: 'dots-back' });
    expect(ends([item()], [item(), { ...back }], [item({ codes: [tracking('c')], picture: 'dots-c' }), { ...back }])).toEqual([
      'ready',
      'held batch/parcel-held, held batch/other-slip',
      'ready, ready',
    ]);
  });

  it('a return label that all orders share is made once and stops none of them', () => {
    const order = (digest: string): readonly ItemResult[] => [
      item({ codes: [tracking(digest)], picture: `dots-${digest}` }),
      item({ id: 'p2', page: 2, role: 'return-label', codes: [], picture: 'dots-back' }),
    ];
    expect(ends(order('a'), order('b'), order('c'))).toEqual([
      'ready, ready',
      'ready, skipped batch/duplicate',
      'ready, skipped batch/duplicate',
    ]);
  });

  it('a label that is twice in its own parcel is made once, with its slip', () => {
    expect(ends([item(), item({ id: 'p3', page: 3 }), slip('s')])).toEqual(['ready, skipped batch/duplicate, ready']);
  });

  it('every item stays, none is ready that was not, of equal labels one at most is, and twice is as good as once', () => {
    const digest = fc.constantFrom('a', 'b', 'c');
    const some = fc.record({
      role: fc.constantFrom('label' as const, 'return-label' as const, 'slip' as const, 'customs-form' as const),
      codes: fc.array(fc.oneof(digest.map(tracking), digest.map(likely), digest.map(unknown), digest.map(routing)), { maxLength: 3 }),
      picture: fc.constantFrom('1', '2', '3'),
      parcel: fc.constantFrom(1, 2, undefined),
      held: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(fc.array(some, { maxLength: 4 }), { maxLength: 5 }), (told) => {
        const documents = told.map((items, index) => ({
          name: `${index}.pdf`,
          items: holdParcels(
            items.map(({ held, ...each }, at) => item({ ...each, id: `p${at + 1}`, page: at + 1, ...(held ? { state: HELD } : {}) })),
          ),
        }));
        const { items, pairs } = withoutDuplicates(documents);
        expect(items.map((each) => each.map(({ id }) => id))).toEqual(documents.map((each) => each.items.map(({ id }) => id)));
        const before = documents.flatMap((each) => each.items);
        const after = items.flat();
        for (const [at, { state }] of after.entries()) {
          if (before[at]?.state.kind !== 'ready') expect(state).toEqual(before[at]?.state);
        }
        const labels = after.filter(({ role, state }) => state.kind === 'ready' && (role === 'label' || role === 'return-label'));
        const numbers = labels.flatMap(({ codes }) => [
          ...new Set(codes.flatMap(({ tracking: each }) => (each?.trust === 'published' ? [each.digest] : []))),
        ]);
        expect(new Set(numbers).size).toBe(numbers.length);
        for (const { document, item: one } of pairs) {
          expect(items[document]?.find(({ id }) => id === one.id)?.state).toMatchObject({ code: 'batch/same-tracking-code' });
        }
        // What a skipped label is said to be the same as is made.
        for (const { state } of after) {
          const named = state.kind === 'skipped' && /^the same as (\d)\.pdf, page (\d)/.exec(state.message);
          if (named) expect(items[Number(named[1])]?.[Number(named[2]) - 1]?.state.kind).toBe('ready');
        }
        const again = withoutDuplicates(documents.map(({ name }, index) => ({ name, items: items[index] ?? [] })));
        expect(again).toEqual({ items, pairs: [] });
      }),
      { numRuns: 500 },
    );
  });

  it('a label seen again only makes it sure, whatever number it has in its document', () => {
    const again = withoutDuplicates([
      { name: 'a.pdf', items: [item()] },
      { name: 'b.pdf', items: [item()] },
    ]);
    const twice = withoutDuplicates(again.items.map((items, index) => ({ name: index === 0 ? 'a.pdf' : 'b.pdf', items })));
    expect(twice.items).toEqual(again.items);
    expect(twice.pairs).toEqual([]);
  });
});
