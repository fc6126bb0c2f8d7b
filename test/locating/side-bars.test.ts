import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
import { HAIR } from '../../src/locating/gather.js';
import { withSideBars } from '../../src/locating/side-bars.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { word } from './judged.js';

const LABEL: Box = { x: 100, y: 100, width: 250, height: 400 };
/** A bar 10 pt thick, this far (mm) left of the label, and as high as it but for so much (mm). */
const bar = (off: number, { shorter = 0, width = 10 } = {}): Box => ({
  x: LABEL.x - mmToPt(off) - width,
  y: LABEL.y - 3,
  width,
  height: LABEL.height + 6 - mmToPt(shorter),
});

describe('withSideBars', () => {
  it('takes in a solid bar along the left or the right from end to end', () => {
    const left = bar(3.5);
    const { x, y, width, height } = withSideBars(LABEL, [left], []);
    const edges = [x, y, x + width, y + height].map((edge) => edge.toFixed(3));
    expect(edges).toEqual(
      [left.x - HAIR, left.y - HAIR, LABEL.x + LABEL.width, left.y + left.height + HAIR].map((edge) => edge.toFixed(3)),
    );
    const right = { ...left, x: LABEL.x + LABEL.width + 8 };
    expect(withSideBars(LABEL, [right], []).width).toBeCloseTo(250 + 8 + 10 + HAIR);
  });

  it('takes one with writing along it, and none with writing across it', () => {
    const left = bar(3.5);
    const along = word('EXPRESS', { x: left.x + 1, y: 200, width: 8, height: 60 }, 90);
    expect(withSideBars(LABEL, [left], phrasesOf([along])).x).toBeLessThan(LABEL.x);
    expect(withSideBars(LABEL, [left], phrasesOf([word('A', { x: left.x + 1, y: 200, width: 8, height: 9 })]))).toEqual(LABEL);
  });

  it.each([
    ['stands farther off', bar(7)],
    ['ends before the label does', bar(3.5, { shorter: 14 })],
    ['is longer, as the page’s is', { ...bar(3.5), y: 60, height: 600 }],
    ['is thin, as lines to cut along are', bar(3.5, { width: 2 })],
    ['is as wide as a column', bar(3.5, { width: mmToPt(16) })],
    ['lies above the label', { x: 100, y: 80, width: 250, height: 10 }],
  ])('leaves what %s', (_, blob) => {
    expect(withSideBars(LABEL, [blob], [])).toEqual(LABEL);
  });
});
