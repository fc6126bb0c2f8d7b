import { describe, expect, it } from 'vitest';
import { isPagesPattern, pagesMatch } from '../../src/steps/pages.js';

describe('page patterns', () => {
  it.each([
    ['every', [1, 2, 3, 4, 5]],
    ['none', []],
    ['odd', [1, 3, 5]],
    ['even', [2, 4]],
    ['first', [1]],
    ['last', [5]],
    ['2', [2]],
    ['4-', [4, 5]],
    ['1,3-4', [1, 3, 4]],
    ['9', []],
  ])('%s means pages %j of five', (pattern, pages) => {
    expect(isPagesPattern(pattern)).toBe(true);
    expect([1, 2, 3, 4, 5].filter((page) => pagesMatch(pattern, page, 5))).toEqual(pages);
  });

  it.each(['', '0', '3-2', 'all', '1;2', '-2', '1,', 'odd,even'])('%j is none', (text) => {
    expect(isPagesPattern(text)).toBe(false);
  });
});
