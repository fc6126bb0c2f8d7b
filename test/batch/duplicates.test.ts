import { describe, expect, it } from 'vitest';
import { withoutDuplicates } from '../../src/batch/duplicates.js';
import type { CodeSummary, ItemResult } from '../../src/recipe/outcome.js';

const tracking = (digest: string): CodeSummary => ({
  symbology: 'Code 128',
  identifier: ']C0',
  role: 'tracking',
  digest,
  tail: '0000',
  moduleDots: 3,
});
const routing = (digest: string): CodeSummary => ({ ...tracking(digest), role: 'routing' });

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
    expect(pairs.map(({ document, otherDocument }) => [document, otherDocument])).toEqual([
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

  it('the slip of a label that is not made again goes with it; another slip is held', () => {
    expect(ends([item(), slip('s')], [item(), slip('s')])).toEqual(['ready, ready', 'skipped batch/duplicate, skipped batch/duplicate']);
    expect(ends([item(), slip('s')], [item(), slip('t')])).toEqual(['ready, ready', 'skipped batch/duplicate, held batch/other-slip']);
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
