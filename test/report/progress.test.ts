import { PassThrough } from 'node:stream';
import { expect, it } from 'vitest';
import type { RunEvent } from '../../src/batch/events.js';
import { plainProgress, type Progress, silentProgress, terminalProgress } from '../../src/report/progress.js';

const ended = (done: number, of: number): RunEvent => ({
  type: 'document',
  name: `${done}.pdf`,
  channel: 'north',
  state: 'read',
  pages: 1,
  items: { ready: 1, held: 0, skipped: 0, failed: 0 },
  done,
  of,
});

function run(progress: Progress, of: number): void {
  for (let done = 1; done <= of; done += 1) progress.show(ended(done, of));
  progress.end();
  progress.show(ended(of, of));
}

it('is a plain line now and then where there is no terminal', () => {
  const lines: string[] = [];
  run(
    plainProgress((text) => lines.push(text)),
    200,
  );
  expect(lines).toHaveLength(10);
  expect(lines[0]).toBe('20 of 200 documents done\n');
  expect(lines.at(-1)).toBe('200 of 200 documents done\n');
});

it('says nothing of a few documents, and nothing at all when it is to be quiet', () => {
  const lines: string[] = [];
  run(
    plainProgress((text) => lines.push(text)),
    9,
  );
  run(silentProgress, 100);
  expect(lines).toEqual([]);
});

it('is one updating line on a terminal, and leaves the cursor alone', () => {
  const shown: string[] = [];
  const stream = new PassThrough();
  stream.on('data', (piece: Buffer) => shown.push(piece.toString()));
  const terminal = Object.assign(stream, {
    isTTY: true,
    columns: 120,
    rows: 40,
    cursorTo: () => true,
    clearLine: () => true,
    moveCursor: () => true,
  }) as unknown as NodeJS.WriteStream;
  run(terminalProgress(terminal), 3);
  const text = shown.join('');
  expect(text).toContain('0/3 documents');
  expect(text).not.toContain('\n');
  expect(text).not.toContain('\u001b[?25l');
});
