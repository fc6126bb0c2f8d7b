import { describe, expect, it } from 'vitest';
import { filesUnder, textOf } from '../house/tree.js';
import type { Layout } from './layout.js';
import { LAYOUTS } from './layouts.js';
import { INVENTED_NAMES, SAMPLE_MARKS } from './names.js';

const files = [...filesUnder('src'), ...filesUnder('recipes')];

/** The invented names that stand in a text as whole words. */
const namesIn = (text: string): readonly string[] =>
  INVENTED_NAMES.filter((name) => new RegExp(`(?<![\\p{L}])${name}(?![\\p{L}])`, 'iu').test(text));
const marksIn = (text: string): readonly string[] => SAMPLE_MARKS.filter((mark) => text.toLowerCase().includes(mark.toLowerCase()));

/** Words of the mark on each label of a layout, and whether it is a watermark. */
const marksOf = (layout: Layout): readonly { readonly words: string; readonly watermark: boolean }[] =>
  layout.pages().flatMap((page) =>
    page.regions
      .filter(({ role }) => role === 'label' || role === 'return-label')
      .map(({ drawing }) => ({
        words: drawing.mark.map((item) => (item.kind === 'text' ? item.text : '')).join(' '),
        watermark: drawing.markUnder,
      })),
  );

describe('the samples are no crutch', () => {
  it('finds the program and its recipes', () => {
    expect(files).toContain('src/cli.ts');
    expect(files).toContain('recipes/any-page.yaml');
  });

  it.each(SAMPLE_MARKS)('neither program nor recipes know the mark %s', (mark) => {
    expect(files.filter((path) => marksIn(textOf(path)).includes(mark))).toEqual([]);
  });

  it('neither program nor recipes know an invented name', () => {
    expect(files.flatMap((path) => namesIn(textOf(path)).map((name) => `${path}: ${name}`))).toEqual([]);
  });

  it('would find a mark and a name, and takes no part of a word for one', () => {
    const [mark] = SAMPLE_MARKS;
    const [name] = INVENTED_NAMES;
    expect(marksIn(`if (words.includes('${mark.toLowerCase()}'))`)).toEqual([mark]);
    expect(namesIn(`// as ${name?.toLowerCase()} prints it`)).toEqual([name]);
    expect(namesIn(`x${name}y`)).toEqual([]);
  });

  it('marks every label, and at least half of the layouts in other words, in another language or as a watermark', () => {
    const unmarked = LAYOUTS.filter((layout) => marksOf(layout).some(({ words }) => marksIn(words).length !== 1));
    expect(unmarked.map(({ name }) => name)).toEqual([]);
    const otherwise = LAYOUTS.filter((layout) => marksOf(layout).every(({ words, watermark }) => watermark || words !== SAMPLE_MARKS[0]));
    expect(otherwise.length).toBeGreaterThanOrEqual(LAYOUTS.length / 2);
    expect(LAYOUTS.filter((layout) => marksOf(layout).some(({ watermark }) => watermark)).length).toBeGreaterThan(0);
  });
});
