import { describe, expect, it } from 'vitest';
import { littleOfLabel } from '../../src/locating/little-of-label.js';
import type { SaidCandidate } from '../../src/locating/page-facts.js';
import type { Code } from '../../src/reading/source.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { barsAt, codeSaying, inches, judged, matrixAt, nothingSaid, word } from './judged.js';

const BOX = inches(1, 1, 4, 6);
const code = (text: string): Code => codeSaying(text, BOX);
const large = barsAt({ x: 100, y: 260, width: 180, height: 60 });
const small = barsAt({ x: 100, y: 260, width: 90, height: 30 });
const matrix = matrixAt({ x: 100, y: 260, width: 90, height: 90 });
const words = (labelWords: number): SaidCandidate['said'] => ({ ...nothingSaid, labelWords, characters: 100 });
/** Ink from top to foot. */
const blobs = [0, 1, 2, 3, 4, 5].map((each) => ({ x: 80, y: 80 + each * 70, width: 200, height: 20 }));

const why = (more: Partial<SaidCandidate>, text?: string, facts = { phrases: phrasesOf([]), blobs }): string =>
  littleOfLabel(
    { ...judged(BOX, 1, { codes: [large] }), said: words(2), ...more },
    text === undefined ? undefined : [code(text)],
    facts,
    undefined,
  );

describe('what is said of something that has little of a label', () => {
  it.each<[string, string, string]>([
    [
      'a matrix code',
      why({ codes: [matrix, matrix], said: words(0) }, 'BX682434879094'),
      'one matrix code and no bars, no words of a label that Slipyard knows',
    ],
    [
      'one that nobody reads, and a word',
      why({ codes: [matrix], said: words(1) }),
      "a matrix code that can't be read and no bars, one word of a label that Slipyard knows",
    ],
    ['bars that nobody reads', why({}), "one row of bars that can't be read"],
    ['a short number', why({}, 'BOX-17'), "one row of bars, but no number as long as a parcel's"],
    ['small bars', why({ codes: [small, small] }, '1072326667'), "2 rows of bars, smaller than most labels'"],
    ['a picture', why({ said: nothingSaid }, '1072326667'), 'one row of bars, no words that can be read'],
    ['nothing like a code', why({ codes: [], edge: 'page' }), 'nothing that looks like a code'],
    ['another size', why({ box: inches(1, 1, 4, 4.4) }, '1072326667'), "one row of bars, not the size of a label's paper"],
    ['white', why({}, '1072326667', { phrases: [], blobs: blobs.slice(0, 2) }), 'one row of bars, much of it blank'],
  ])('%s', (_, said, parts) => {
    expect(said).toMatch(/^the (?:frame|page) 4\.00×\d\.\d\d in has little of a label: /);
    expect(said.replace(/^.*?: /, '')).toBe(parts);
  });

  it('names goods, and what the page calls itself', () => {
    const goods = phrasesOf([
      word('2 x Bowl', { x: 80, y: 100, width: 60, height: 10 }),
      word('1 x Mug', { x: 80, y: 116, width: 50, height: 10 }),
    ]);
    const own = { kind: 'packing-slip', words: 'packing slip', heading: true } as const;
    expect(
      littleOfLabel({ ...judged(BOX, 1, { codes: [large] }), said: words(2) }, [code('1072326667')], { phrases: goods, blobs }, own),
    ).toBe('the frame 4.00×6.00 in has little of a label: one row of bars, rows of goods on it; and the page calls itself "packing slip"');
  });
});
