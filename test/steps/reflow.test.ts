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
