import { accountOf, type AccountDocument } from '../../src/batch/account.js';
import type { DocumentRecord, ItemRecord, RunRecord, StackRecord } from '../../src/batch/run-record.js';
import { item } from '../batch/fakes.js';

const unread = { code: 'verify/code-lost', message: 'A code of the label can not be read back.', remedy: 'Download it again.' } as const;
const empty = { code: 'batch/changed', message: 'The file was changed.', remedy: 'Run again.' } as const;
const noLabel = { code: 'batch/no-label', message: 'No label on it.', remedy: 'Nothing, if that is so.' } as const;

const one = (id: string, changes: Partial<ItemRecord>): ItemRecord => ({
  id,
  page: 1,
  role: 'label',
  state: 'ready',
  turn: 0,
  scale: 1,
  evidence: [],
  codes: [],
  ...changes,
});

const document = (name: string, state: DocumentRecord['state'], pages: number, items: readonly ItemRecord[]): DocumentRecord => ({
  name,
  channel: 'north',
  recipe: 'any-page',
  sha256: '00',
  size: 1,
  state,
  pages,
  diagnostics: [],
  items,
});

const printed = (number: number, page: number): Partial<ItemRecord> => ({ printed: { stack: 'print/stack-4x6in.pdf', number, page } });
const held = (n: number, id: string): Partial<ItemRecord> => ({
  state: 'held',
  reason: unread,
  held: { picture: `held/00${n}-b.pdf-${id}.png`, reason: `held/00${n}-b.pdf-${id}.json` },
});

export const STACK: StackRecord = {
  file: 'print/stack-4x6in.pdf',
  output: 'roll',
  media: '4x6in',
  grid: '203dpi',
  parcels: 1,
  pages: 2,
  sheets: 2,
  sha256: '00',
};

export const DOCUMENTS: readonly DocumentRecord[] = [
  document('in/a.pdf', 'read', 2, [one('p1', printed(1, 1)), one('p2', { page: 2, role: 'slip', ...printed(1, 2) })]),
  document('in/b.pdf', 'read', 3, [
    one('p1', held(1, 'p1')),
    one('p2', { page: 2, ...held(2, 'p2') }),
    one('p3', { page: 3, role: 'page', state: 'skipped', reason: noLabel }),
  ]),
  document('in/c.pdf', 'failed', 0, [one('document', { page: 0, role: 'page', state: 'failed', reason: empty })]),
];

/** The record of a run over `documents`; its account counts them. */
export function record(documents: readonly DocumentRecord[], stacks: readonly StackRecord[]): RunRecord {
  const counted = documents.map(({ state, pages, items }): AccountDocument => ({
    state,
    pageCount: pages,
    items: items.map((each) =>
      item(each.id, {
        page: each.page,
        role: each.role,
        state: each.state === 'ready' ? { kind: 'ready' } : { kind: each.state, ...(each.reason ?? empty) },
      }),
    ),
  }));
  const account = accountOf({
    taken: documents.length,
    given: documents.reduce((sum, { items }) => sum + items.length, 0),
    documents: counted,
    stackPages: stacks,
  });
  const work = { documentsOpened: 0, sourceRasters: 0, outputRasters: 0, decodes: 0 };
  return { format: 1, media: '4x6in', grid: '203dpi', account, work, stacks, diagnostics: [], documents };
}
