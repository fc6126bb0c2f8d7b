import { describe, expect, it } from 'vitest';
import { byUnit, compareKeys, naturalKey } from '../../src/text/natural.js';

const inOrder = (...texts: readonly string[]): readonly string[] => texts.toSorted((a, b) => compareKeys(naturalKey(a), naturalKey(b)));

describe('natural order', () => {
  it('counts as a person does', () => {
    expect(inOrder('A-10', 'A-2', 'A-1')).toEqual(['A-1', 'A-2', 'A-10']);
  });

  it('is the same whatever the language and time zone of the machine: no accents, no dates', () => {
    expect(naturalKey('Žofi')).toBe(naturalKey('Zofi'));
    expect(inOrder('2026-02-01', '2026-01-15')).toEqual(['2026-01-15', '2026-02-01']);
    expect(naturalKey('2026-01-15').startsWith('/')).toBe(true);
    expect(naturalKey('誕')).not.toMatch(/\d/);
  });

  it('tells every two texts apart at the last', () => {
    expect([byUnit('a', 'b'), byUnit('b', 'a'), byUnit('a', 'a')]).toEqual([-1, 1, 0]);
  });
});
