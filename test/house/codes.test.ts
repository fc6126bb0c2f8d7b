import { describe, expect, it } from 'vitest';
import { DIAGNOSTIC_CODES } from '../../src/diagnostics/codes.js';
import { ROOMS } from './rooms.js';
import { sources } from './tree.js';

const prefixes = new Set([
  ...Object.keys(ROOMS),
  ...sources()
    .filter((path) => path.startsWith('src/steps/'))
    .map((path) => path.slice('src/steps/'.length, -'.ts'.length)),
]);

describe('diagnostic codes', () => {
  it('are sorted and each there once', () => {
    expect([...DIAGNOSTIC_CODES]).toEqual([...new Set(DIAGNOSTIC_CODES)].sort());
  });

  it.each([...DIAGNOSTIC_CODES])('%s is prefix/what, its prefix a room or a step', (code) => {
    expect(code).toMatch(/^[a-z]+(?:-[a-z]+)*\/[a-z0-9]+(?:-[a-z0-9]+)*$/);
    expect(prefixes).toContain(code.split('/')[0]);
  });
});
