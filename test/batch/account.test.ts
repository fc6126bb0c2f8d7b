import { describe, expect, it } from 'vitest';
import { type AccountInput, accountOf, misprints, mismatches } from '../../src/batch/account.js';
import { FAILED, HELD, item, SKIPPED } from './fakes.js';

const RIGHT: AccountInput = {
  taken: 3,
  given: 5,
  documents: [
    { state: 'read', pageCount: 2, items: [item('p1'), item('p1.2', { state: HELD }), item('p2', { page: 2, role: 'slip' })] },
    { state: 'failed', pageCount: 0, items: [item('document', { page: 0, role: 'page', state: FAILED })] },
    { state: 'skipped', pageCount: 0, items: [item('document', { page: 0, role: 'page', state: SKIPPED })] },
  ],
  stackPages: [
    { output: 'roll', pages: 1 },
    { output: 'roll', pages: 1 },
  ],
};

it('counts documents, pages, items by role, and output pages', () => {
  const account = accountOf(RIGHT);
  expect(mismatches(account)).toEqual([]);
  expect(account).toEqual({
    documents: { taken: 3, read: 1, failed: 1, skipped: 1 },
    pages: { source: 2, withItems: 2 },
    items: {
      given: 5,
      ready: 2,
      held: 1,
      skipped: 1,
      failed: 1,
      byRole: {
        label: { ready: 1, held: 1, skipped: 0, failed: 0 },
        slip: { ready: 1, held: 0, skipped: 0, failed: 0 },
        page: { ready: 0, held: 0, skipped: 1, failed: 1 },
      },
    },
    output: {
      readyItems: 2,
      madePages: 0,
      stackPages: 2,
      byOutput: { roll: { readyItems: 2, madePages: 0, stackPages: 2 } },
    },
  });
});

describe('an account that does not add up says so with its numbers', () => {
  const first = RIGHT.documents[0];
  if (!first) throw new Error('no first document');
  it.each<[lost: string, input: AccountInput, message: RegExp]>([
    [
      'a document',
      { ...RIGHT, documents: RIGHT.documents.slice(0, 2), given: 4 },
      /3 documents were taken in, but 1 read \+ 1 failed \+ 0 skipped are 2/,
    ],
    [
      'a page',
      { ...RIGHT, documents: [{ ...first, pageCount: 3 }, ...RIGHT.documents.slice(1)] },
      /the documents have 3 pages, but only 2 became items/,
    ],
    ['an item', { ...RIGHT, given: 6 }, /6 items were found, but 5 are in a state/],
    ['an output page', { ...RIGHT, stackPages: [{ output: 'roll', pages: 1 }] }, /2 items are ready, but the stacks have 1 pages/],
  ])('when %s gets lost', (_, input, message) => {
    const wrong = mismatches(accountOf(input));
    expect(wrong).toHaveLength(1);
    expect(wrong[0]).toMatch(message);
  });

  it('when a page is in the stack of another printer, though the sum of all is right', () => {
    const documents = [
      { state: 'read' as const, pageCount: 1, items: [item('p1'), item('p1.form', { role: 'customs-form', output: 'office' })] },
    ];
    const account = accountOf({ taken: 1, given: 2, documents, stackPages: [{ output: 'roll', pages: 2 }] });
    expect(account.output).toMatchObject({ readyItems: 2, stackPages: 2 });
    expect(mismatches(account)).toEqual([
      '1 items are ready for roll, but the stacks have 2 pages there',
      '1 items are ready for office, but the stacks have 0 pages there',
    ]);
  });

  it('takes no item of a page that does not exist for the page', () => {
    const documents = [{ state: 'read' as const, pageCount: 1, items: [item('p2', { page: 2, state: HELD })] }];
    expect(mismatches(accountOf({ taken: 1, given: 1, documents, stackPages: [] }))).toHaveLength(1);
  });
});

describe('misprints', () => {
  it('finds an item that is printed twice in place of one that is missing, though the sums are right', () => {
    expect(misprints(['0 p1', '0 p2', '1 p1'], ['0 p1', '0 p1', '1 p1'])).toEqual([
      '1 ready items are in no stack',
      '1 pages are in the stacks once more than they should',
    ]);
    expect(misprints(['0 p1'], ['0 p1', '0 p2'])).toEqual(['1 items are in a stack that are not ready']);
    expect(misprints(['0 p1', '0 p2'], ['0 p2', '0 p1'])).toEqual([]);
  });
});
