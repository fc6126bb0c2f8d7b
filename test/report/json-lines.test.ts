import { expect, it } from 'vitest';
import { endLines, eventLine, exitLine } from '../../src/report/json-lines.js';
import { DOCUMENTS, record, STACK } from './fakes.js';

const parsed = (text: string): unknown[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line): unknown => JSON.parse(line));

it('tells stacks, every item that is not ready, and the account, one JSON value a line', () => {
  const lines = parsed(endLines({ kind: 'finished', record: record(DOCUMENTS, [STACK]) })) as { type: string; item?: string }[];
  expect(lines.map(({ type, item }) => `${type} ${item ?? ''}`.trim())).toEqual([
    'stack',
    'item p1',
    'item p2',
    'item p3',
    'item document',
    'account',
  ]);
  expect(lines[1]).toMatchObject({ document: 'in/b.pdf', page: 1, state: 'held', reason: { code: 'verify/code-lost' } });
});

it('tells why a run did not come to its end', () => {
  expect(parsed(endLines({ kind: 'stopped', done: 2, of: 5 }))).toEqual([{ type: 'stopped', done: 2, of: 5 }]);
  const reason = { code: 'files/no-space', message: 'the disk is full', remedy: 'Free some space.' } as const;
  expect(parsed(endLines({ kind: 'cannot-go-on', reason }))).toEqual([{ type: 'cannot-go-on', reason }]);
  expect(parsed(endLines({ kind: 'cannot-go-on', reason, left: 'mixed' }))).toEqual([{ type: 'cannot-go-on', reason, left: 'mixed' }]);
});

it('keeps the talk of libraries to the log', () => {
  expect(eventLine({ type: 'talk', text: 'x' })).toBeUndefined();
  expect(eventLine({ type: 'stacking', pages: 2 })).toBe('{"type":"stacking","pages":2}\n');
  expect(exitLine(1)).toBe('{"type":"end","exitCode":1}\n');
});
