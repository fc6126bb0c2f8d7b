import { describe, expect, it } from 'vitest';
import { fitFactor, parseMedia } from '../../src/geometry/media.js';

const factor = (name: string): number => {
  const media = parseMedia(name);
  if (!media) throw new Error(`${name} is unknown`);
  return fitFactor(media.width, media.height, 288, 432);
};

describe('what fitting a whole page to 4×6 in does', () => {
  it.each([
    // Handbook section 5.5, COMPUTED.
    ['letter', 0.4706],
    ['a4', 0.4838],
    ['legal', 0.4286],
    ['half-letter', 0.7059],
    ['a5', 0.6865],
    ['a6', 0.9676],
    ['100x150mm', 1.016],
    ['4x8in', 0.75],
  ])('%s: %f (handbook section 5.5)', (name, expected) => {
    expect(factor(name)).toBeCloseTo(expected, 4);
  });

  it.each([
    // Section 5.5: what modules of 13, 15, 17 and 21 mil become, COMPUTED.
    ['letter', [6.12, 7.06, 8.0, 9.88]],
    ['a4', [6.29, 7.26, 8.22, 10.16]],
    ['half-letter', [9.18, 10.59, 12.0, 14.82]],
    ['a5', [8.92, 10.3, 11.67, 14.42]],
  ])('%s shrinks modules of 13, 15, 17 and 21 mil to %j mil', (name, expected) => {
    [13, 15, 17, 21].forEach((mil, i) => expect(mil * factor(name)).toBeCloseTo(expected[i] ?? 0, 1));
  });

  it.each([
    // Section 11.6, COMPUTED: page, factor, drawn size.
    [612, 792, 0.470588, 288, 372.706],
    [595.276, 841.89, 0.48381, 288, 407.314],
    [396, 612, 0.705882, 279.529, 432],
    [419.528, 595.276, 0.686486, 288, 408.649],
    [297.638, 419.528, 0.967619, 288, 405.943],
    [283.465, 425.197, 1.016, 288, 432],
  ])('%f×%f pt: factor %f, drawn %f×%f pt (handbook section 11.6)', (width, height, expected, drawnWidth, drawnHeight) => {
    const found = fitFactor(width, height, 288, 432);
    expect(Math.abs(found - expected)).toBeLessThan(2e-6);
    expect(Math.abs(width * found - drawnWidth)).toBeLessThan(1.5e-3);
    expect(Math.abs(height * found - drawnHeight)).toBeLessThan(1.5e-3);
  });
});
