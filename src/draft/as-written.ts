import { folded } from '../locating/vocabulary.js';
import type { SourcePage } from '../reading/source.js';

const bare = (text: string): string => folded(text).replaceAll(/[^\p{L}\p{N}%' -]+/gu, '');

/**
 * A phrase of the vocabulary as it stands on the page, accents and all, in lower case: split-pages compares letter by letter.
 * Undefined where it can't be found as whole words in one run.
 */
export function wordsAsWritten(page: SourcePage, phrase: string): string | undefined {
  const words = page.words().flatMap(({ text }) => text.split(/\s+/).filter((each) => each !== ''));
  const wanted = phrase.trim();
  const count = wanted.split(' ').length;
  for (let first = 0; first + count <= words.length; first += 1) {
    const run = words.slice(first, first + count).join(' ');
    if (bare(run) === wanted) return run.replaceAll(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '').toLocaleLowerCase('en');
  }
  return undefined;
}
