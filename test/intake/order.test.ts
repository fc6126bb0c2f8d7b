import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareNames, compareWork } from '../../src/intake/order.js';
import type { WorkItem } from '../../src/intake/work.js';

const item = (changes: Partial<WorkItem>): WorkItem => ({
  channel: 0,
  path: '/in/a.pdf',
  entry: undefined,
  shownName: 'a.pdf',
  sha256: 'aa',
  size: 1,
  ...changes,
});

describe('order', () => {
  it('counts as a person does', () => {
    const names = [
      'label 1.pdf',
      'label 2.pdf',
      'label 10.pdf',
      'Label 11.pdf',
      'label 011.pdf',
      'label 12.pdf',
      'order (2).pdf',
      'order (10).pdf',
    ];
    const sorted = [...names].reverse().sort(compareNames);
    expect(sorted.filter((name) => !name.includes('11'))).toEqual(names.filter((name) => !name.includes('11')));
    expect(sorted.slice(3, 5).sort()).toEqual(['Label 11.pdf', 'label 011.pdf']);
  });

  it('treats a date in a name as the numbers it is made of', () => {
    const names = ['2026-01-05 b.pdf', '2026-1-12 a.pdf', '2026-02-01.pdf', '2026-12-31.pdf', '2027-01-01.pdf'];
    expect([...names].reverse().sort(compareNames)).toEqual(names);
  });

  it('puts a download before its second copies, whatever the browser calls them, and keeps counting', () => {
    const names = [
      'labels/order 1.pdf',
      'labels/order 1 (1).pdf',
      'labels/order 1 (2).pdf',
      'labels/order 1 (10).pdf',
      'labels/order 1 - copy.pdf',
      'labels/order 1 copy.pdf',
      'labels/order 2.pdf',
      'labels/order 2.png',
      'labels/order 2 (1).pdf',
      'labels/order 10.pdf',
    ];
    const sorted = [...names].reverse().sort(compareNames);
    const at = (name: string): number => sorted.indexOf(`labels/${name}`);
    for (const copy of ['order 1 (1).pdf', 'order 1 (2).pdf', 'order 1 (10).pdf', 'order 1 - copy.pdf', 'order 1 copy.pdf']) {
      expect(at('order 1.pdf'), copy).toBeLessThan(at(copy));
      expect(at(copy), copy).toBeLessThan(at('order 2.pdf'));
    }
    expect(at('order 1 (1).pdf')).toBeLessThan(at('order 1 (2).pdf'));
    expect(at('order 1 (2).pdf')).toBeLessThan(at('order 1 (10).pdf'));
    expect(at('order 2.png')).toBeLessThan(at('order 2 (1).pdf'));
    expect(at('order 2 (1).pdf')).toBeLessThan(at('order 10.pdf'));
  });

  it('puts letters with accents beside those without', () => {
    const names = ['cafe 2.pdf', 'café 10.pdf', 'cage.pdf', 'zoe.pdf', 'zoë.pdf', '日本.pdf'];
    expect([...names].reverse().sort(compareNames)).toEqual(names);
  });

  it('does not depend on the order of finding, whatever the names are', () => {
    const name = fc.oneof(fc.string({ unit: 'grapheme', maxLength: 8 }), fc.stringMatching(/^[a~é_ Z0-9./-]{0,6}$/));
    fc.assert(
      fc.property(fc.uniqueArray(name, { minLength: 2, maxLength: 8 }), fc.integer(), (names, seed) => {
        const shuffled = [...names].sort((a, b) => ((a.length * 31 + seed) % 7) - ((b.length * 31 + seed) % 7));
        expect(shuffled.sort(compareNames)).toEqual([...names].reverse().sort(compareNames));
      }),
    );
  });

  it('is an order: nothing goes round in a circle', () => {
    const name = fc.stringMatching(/^[a~é_Z0-9./ -]{0,4}$/);
    fc.assert(
      fc.property(name, name, name, (a, b, c) => {
        expect(Math.sign(compareNames(a, b)) + Math.sign(compareNames(b, a))).toBe(0);
        if (compareNames(a, b) <= 0 && compareNames(b, c) <= 0) expect(compareNames(a, c)).toBeLessThanOrEqual(0);
        expect(compareNames(a, b) === 0).toBe(a === b);
      }),
      { numRuns: 2000 },
    );
  });

  it('goes by channel, then name, then content, then place', () => {
    const items = [
      item({}),
      item({ sha256: 'ab' }),
      item({ sha256: 'ab', path: '/in/b.pdf' }),
      item({ sha256: 'ab', path: '/in/b.pdf', entry: 'x' }),
      item({ shownName: 'b 2.pdf', sha256: '00' }),
      item({ shownName: 'b 10.pdf', sha256: '00' }),
      item({ channel: 1, sha256: '00' }),
    ];
    expect([...items].reverse().sort(compareWork)).toEqual(items);
  });
});
