import { createRequire } from 'node:module';

/** Where lines may end: wherever the script allows (UAX #14), so after a hyphen, too; or only at spaces and where a script writes none between words. */
export type Breaks = 'allowed' | 'words';

const require = createRequire(import.meta.url);
type Breaker = new (text: string) => { nextBreak(): { readonly position: number; readonly required: boolean } | null };
const LineBreaker = require('linebreak') as Breaker;
const thaiWords = new Intl.Segmenter('th', { granularity: 'word' });

/** What stands at the end of a word: a space, or a character of a script that writes none. */
const BETWEEN_WORDS = /^[\s\u200b]|[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\u3001\u3002\uff0c]/u;
const THAI = /\p{Script=Thai}+/gu;

/** Every place where a line may end (index in UTF-16 units), in order, the text's end last. */
export function breaksOf(text: string, breaks: Breaks): readonly number[] {
  const found = new Set<number>();
  const breaker = new LineBreaker(text);
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) {
    if (breaks === 'allowed' || BETWEEN_WORDS.test(text.slice(Math.max(0, next.position - 1), next.position + 1))) found.add(next.position);
  }
  for (const { 0: run, index } of text.matchAll(THAI)) {
    for (const { index: at } of thaiWords.segment(run)) if (at > 0) found.add(index + at);
  }
  found.add(text.length);
  return [...found].sort((a, b) => a - b);
}
