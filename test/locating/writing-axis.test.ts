import { describe, expect, it } from 'vitest';
import { isWrittenAcross, writingAxis } from '../../src/locating/writing-axis.js';
import { blankPages } from '../steps/on-sample.js';

const page = (lines: readonly (readonly [x: number, y: number, width: number, height: number])[]) => {
  const [width, height] = [288, 432];
  const data = new Uint8Array(width * height).fill(255);
  for (const [x, y, w, h] of lines) for (let row = y; row < y + h; row++) data.fill(0, row * width + x, row * width + x + w);
  const raster = { width, height, data, pixelsPerPt: 1, origin: { x: 0, y: 0 } };
  return { ...blankPages(width, height).page(1), ink: () => raster };
};
const box = { x: 0, y: 0, width: 288, height: 432 };

describe('writingAxis', () => {
  it('tells which way lines of type run', () => {
    expect(
      writingAxis(
        page([
          [20, 20, 60, 8],
          [20, 40, 80, 8],
        ]),
        box,
      ),
    ).toBe('level');
    expect(
      writingAxis(
        page([
          [20, 20, 8, 60],
          [40, 20, 8, 80],
        ]),
        box,
      ),
    ).toBe('upright');
  });

  it('does not tell by rules, by little, or by as much either way', () => {
    expect(writingAxis(page([[20, 20, 200, 3]]), box)).toBeUndefined();
    expect(writingAxis(page([[20, 20, 30, 8]]), box)).toBeUndefined();
    expect(
      writingAxis(
        page([
          [20, 20, 80, 8],
          [20, 60, 8, 80],
        ]),
        box,
      ),
    ).toBeUndefined();
    expect(writingAxis(page([]), box)).toBeUndefined();
  });
});

describe('isWrittenAcross', () => {
  const wordsOf = (turns: readonly (0 | 90 | 270)[]) => ({
    ...blankPages(288, 432).page(1),
    words: () => turns.map((turn, n) => ({ text: 'word', box: { x: 20, y: 20 + 12 * n, width: 30, height: 9 }, turn, fontSize: 9 })),
  });

  it('takes many words, nearly all of them the other way than the rules', () => {
    const sideways = [90, 90, 90, 90, 270, 270, 270, 270] as const;
    expect(isWrittenAcross(wordsOf(sideways), box, 'level')).toBe(true);
    expect(isWrittenAcross(wordsOf(sideways), box, 'upright')).toBe(false);
    expect(isWrittenAcross(wordsOf([...sideways, 0, 0, 0]), box, 'level')).toBe(false);
    expect(isWrittenAcross(wordsOf(sideways.slice(1)), box, 'level')).toBe(false);
    expect(isWrittenAcross(wordsOf(sideways), { ...box, height: 60 }, 'level')).toBe(false);
    const bars = Array.from({ length: 40 }, (_, n) => [40 + 4 * n, 200, n % 3 === 0 ? 2 : 1, 60] as const);
    expect(isWrittenAcross({ ...wordsOf(sideways), ink: page(bars).ink }, box, 'level')).toBe(false);
    expect(isWrittenAcross({ ...wordsOf(sideways), ink: page(bars).ink }, { ...box, height: 190 }, 'level')).toBe(true);
  });
});
