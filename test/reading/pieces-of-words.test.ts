import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Turn } from '../../src/geometry/placement.js';
import { wordsOf, type Letter, type Piece } from '../../src/reading/pieces-of-words.js';
import type { Box } from '../../src/geometry/box.js';

const TURNS = [0, 90, 180, 270] as const;
/** Letters of 10 pt, each 5 pt wide by its advance, from a place along their line; the writing runs as `turn` says. */
function letters(text: string, from: number, turn: Turn = 0, more: Partial<Letter> = {}): Letter[] {
  return Array.from(text).map((each, index) => {
    const along = from + 5 * index;
    const place = (inset: number): Box => {
      const [start, length, high] = [along + inset, 5 - 2 * inset, 10 - 2 * inset];
      if (turn === 0) return { x: start, y: 100 + inset, width: length, height: high };
      if (turn === 180) return { x: -start - length, y: 100 + inset, width: length, height: high };
      return turn === 90
        ? { x: 100 + inset, y: start, width: high, height: length }
        : { x: 100 + inset, y: -start - length, width: high, height: length };
    };
    return { text: each, box: place(0.5), advance: place(0), turn, fontSize: 10, ...more };
  });
}
const piece = (given: readonly Letter[], isGuess = false): Piece => ({ letters: given, isGuess });
const texts = (...pieces: readonly Piece[]): readonly string[] => wordsOf(pieces).map(({ text }) => text);

describe('words of pieces', () => {
  it.each(TURNS)('letters placed one by one are one word again, turned by %i', (turn) => {
    const each = letters('PARCEL', 20, turn).map((letter, index) => piece([letter], index > 0));
    expect(texts(...each)).toEqual(['PARCEL']);
  });

  it('a break that the content makes stays, even where the letters meet', () => {
    expect(texts(piece(letters('AB', 0)), piece(letters('12', 10)))).toEqual(['AB', '12']);
  });

  it.each([
    ['a blank apart', letters('12', 12.5)],
    ['on another line', letters('12', 10, 0).map((each) => ({ ...each, advance: { ...each.advance, y: 112 } }))],
    ['raised', letters('12', 10, 0).map((each) => ({ ...each, advance: { ...each.advance, y: 97 } }))],
    ['in other type', letters('12', 10, 0, { fontSize: 7 })],
    ['turned another way', letters('12', 10, 90)],
    ['slanted', letters('12', 10, 0, { turn: undefined })],
    ['drawn over it once more', letters('AB', 0.3)],
  ])('a guessed break stays a break before what stands %s', (_, second) => {
    expect(texts(piece(letters('AB', 0)), piece(second, true))).toHaveLength(2);
  });

  it('letters that come from the end of their line stand in the order that they are read, words too', () => {
    const backwards = [...letters('FORTH', 40, 180)].reverse();
    expect(texts(piece(backwards.slice(0, 2)), piece(backwards.slice(2), true))).toEqual(['FORTH']);
  });

  it('Hebrew and Arabic stay as the content gives them, in reading order', () => {
    expect(texts(piece([...letters('\u05e9\u05dc\u05d5\u05dd', 0)].reverse()))).toEqual(['\u05dd\u05d5\u05dc\u05e9']);
  });

  it('wherever guesses break a line of words, the words are the same', () => {
    const word = fc.stringMatching(/^[A-Za-z0-9]{1,8}$/);
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 5 }),
        fc.constantFrom(...TURNS),
        fc.infiniteStream(fc.boolean()),
        (line, turn, breaks) => {
          let at = 0;
          const pieces = line.flatMap((text) => {
            const placed = letters(text, at, turn);
            at += 5 * text.length + 2.5;
            const parts: Letter[][] = [];
            for (const letter of placed) {
              const open = parts.at(-1);
              if (open && !breaks.next().value) open.push(letter);
              else parts.push([letter]);
            }
            return parts.map((part) => piece(part, true));
          });
          expect(texts(...pieces)).toEqual(line);
        },
      ),
    );
  });
});
