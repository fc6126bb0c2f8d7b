import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Turn } from '../../src/geometry/placement.js';
import { measureText } from '../../src/press/text-face.js';
import type { Word } from '../../src/reading/source.js';
import { reflow } from '../../src/steps/reflow.js';

const room = { width: 270, height: 415 };
const line = (text: string, y: number, turn: Turn = 0): Word[] =>
  text.split(' ').map((each, index) => ({ text: each, box: { x: 40 + index * 60, y, width: 50, height: 8 }, turn, fontSize: 10 }));

describe('reflow', () => {
  it('keeps lines as they stand, from the top', () => {
    expect(reflow([...line('second line', 40), ...line('first line', 20)], 8, room)).toEqual([['first line', 'second line']]);
  });

  it('refuses mixed directions and pages without words, in words', () => {
    expect(reflow([...line('level', 20), ...line('upright', 40, 90)], 8, room)).toBe('its words run in more than one direction');
    expect(reflow([], 8, room)).toBe('the slip has no text layer');
  });

  it('refuses characters that the font lacks instead of dropping them', () => {
    expect(reflow(line('漢字', 20), 8, room)).toContain('lacks');
  });

  it.each([0, 90, 180, 270] as const)('reads words turned by %d° line by line, from their own top', (turn) => {
    // Where an upright box of a 600 × 400 page comes to when the page is turned clockwise.
    const turned = ({ x, y, width, height }: Word['box']): Word['box'] =>
      turn === 0
        ? { x, y, width, height }
        : turn === 90
          ? { x: 400 - y - height, y: x, width: height, height: width }
          : turn === 180
            ? { x: 600 - x - width, y: 400 - y - height, width, height }
            : { x: y, y: 600 - x - width, width: height, height: width };
    const words = [...line('a b c', 20), ...line('d e f', 40)].map((word): Word => ({ ...word, box: turned(word.box), turn }));
    expect(reflow(words.toReversed(), 8, room)).toEqual([['a b c', 'd e f']]);
  });

  it('keeps columns apart, and a word with a descender on its line', () => {
    const words: Word[] = [
      { text: 'Bowl,', box: { x: 40, y: 20, width: 24, height: 10 }, turn: 0, fontSize: 10 },
      { text: 'glazed', box: { x: 67, y: 20, width: 30, height: 8 }, turn: 0, fontSize: 10 },
      { text: '2', box: { x: 200, y: 20, width: 6, height: 8 }, turn: 0, fontSize: 10 },
    ];
    expect(reflow(words, 8, room)).toEqual([['Bowl, glazed   2']]);
  });

  it('cuts no word that fits on a line of its own', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[A-Za-z0-9]{1,25}$/), { minLength: 1, maxLength: 40 }), (texts) => {
        const long = texts.map((text, index): Word => ({
          text,
          box: { x: 40 + index * 90, y: 20, width: 80, height: 8 },
          turn: 0,
          fontSize: 10,
        }));
        const pages = reflow(long, 8, room);
        if (typeof pages === 'string') throw new Error(pages);
        expect(pages.flat().join(' ').split(/\s+/).filter(Boolean)).toEqual(texts);
      }),
      { numRuns: 40 },
    );
  });

  it('cuts a word that no line can hold, but no accent off its letter', () => {
    const pages = reflow(line('n\u0303'.repeat(120), 20), 8, room);
    if (typeof pages === 'string') throw new Error(pages);
    expect(pages.flat().length).toBeGreaterThan(2);
    for (const each of pages.flat()) expect(each.trim()).toMatch(/^(?:n\u0303)+$/);
  });

  it.each([
    ['too narrow', 8, { width: 10, height: 415 }],
    ['of no width', 8, { width: 0, height: 415 }],
    ['too low', 8, { width: 270, height: 9 }],
    ['too small for such type', 300, room],
  ] as const)('refuses a page that is %s, instead of wrapping for ever', (_, size, small) => {
    expect(reflow(line('some words', 20), size, small)).toContain('no room for type');
  });

  it('wraps and breaks pages without losing, repeating or overfilling', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[A-Za-z0-9,.]{1,60}$/), { minLength: 1, maxLength: 90 }), (texts) => {
        const words = texts.map((text, index): Word => ({
          text,
          box: { x: 40, y: index * 14, width: 50, height: 8 },
          turn: 0,
          fontSize: 10,
        }));
        const pages = reflow(words, 8, room);
        if (typeof pages === 'string') throw new Error(pages);
        expect(pages.flat().join('').replaceAll(/\s/g, '')).toBe(texts.join(''));
        for (const lines of pages) {
          const size = measureText(lines, 8);
          expect(size.width).toBeLessThanOrEqual(room.width + 1e-6);
          expect(size.height).toBeLessThanOrEqual(room.height + 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });
});
