import { cpSync, rmSync } from 'node:fs';
import { expect } from 'vitest';
import { filesIn, lastingFilesIn } from '../batch/inbox.js';

export type Files = ReadonlyMap<string, Buffer>;

/** What a run left for its reader: without times, and without what a killed run left behind under hidden names. */
export function visibleFilesIn(out: string): Files {
  return new Map([...lastingFilesIn(out)].filter(([path]) => !/(?:^|\/)\./.test(path)));
}

/**
 * What holds at every moment, also for a run that was killed: a file in print/ or held/ is a whole one of the run before or
 * of this one, and as long as there is a run.json, it and everything else is of one run.
 */
export function expectWhole(out: string, before: Files, after: Files): void {
  const now = visibleFilesIn(out);
  for (const [path, bytes] of now) {
    const whole = [before.get(path), after.get(path)].some((each) => each?.equals(bytes) === true);
    expect(whole, `${path} is whole`).toBe(true);
  }
  const account = now.get('run.json');
  if (account) expect(now).toEqual(account.equals(before.get('run.json') ?? Buffer.alloc(0)) ? before : after);
}

/** Nothing is left over: no lock, no temporary files. */
export function expectTidy(out: string): void {
  expect([...filesIn(out).keys()].filter((path) => /(?:^|\/)\./.test(path))).toEqual([]);
}

export function copyFresh(from: string, to: string): void {
  rmSync(to, { recursive: true, force: true });
  cpSync(from, to, { recursive: true });
}
