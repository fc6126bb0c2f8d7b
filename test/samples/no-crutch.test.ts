import { describe, expect, it } from 'vitest';
import { filesUnder, textOf } from '../house/tree.js';
import { INVENTED_NAMES, SAMPLE_MARKS } from './names.js';

const files = [...filesUnder('src'), ...filesUnder('recipes')];

describe('the samples are no crutch', () => {
  it('finds the program and its recipes', () => {
    expect(files).toContain('src/cli.ts');
    expect(files).toContain('recipes/any-page.yaml');
  });

  it.each(SAMPLE_MARKS)('neither program nor recipes know the mark %s', (mark) => {
    expect(files.filter((path) => textOf(path).toLowerCase().includes(mark.toLowerCase()))).toEqual([]);
  });

  it('neither program nor recipes know an invented name', () => {
    const known = files.flatMap((path) => {
      const text = textOf(path);
      return INVENTED_NAMES.filter((name) => new RegExp(`(?<![\\p{L}])${name}(?![\\p{L}])`, 'iu').test(text)).map(
        (name) => `${path}: ${name}`,
      );
    });
    expect(known).toEqual([]);
  });
});
