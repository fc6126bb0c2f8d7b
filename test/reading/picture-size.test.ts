import { describe, expect, it } from 'vitest';
import { pictureSize } from '../../src/reading/picture-size.js';

/** Pixels, what the file says (dpi), what it is taken for (dpi), and whether that is said. */
type Row = [string, number, number, number | undefined, number, boolean];

// Dots of media at 8 dots/mm and 300 dpi: handbook section 1.1 (computed).
const BELIEVED: Row[] = [
  ['4×6 in at 203 dpi', 812, 1218, 203, 203, false],
  ['4×6 in at 300 dpi', 1200, 1800, 300, 300, false],
  ['4×6 in sideways', 1800, 1200, 300, 300, false],
  ['letter at 200 dpi', 1700, 2200, 200, 200, false],
  ['A4 at 300 dpi', 2480, 3508, 300, 300, false],
  ['letter at 96 dpi, a filler that makes a page', 816, 1056, 96, 96, false],
  ['4×6 in at 72 dpi, coarse but whole', 288, 432, 72, 72, false],
  ['a label of no standard size at 203 dpi', 700, 1000, 203, 203, false],
  ['100×150 mm at 8 dots/mm, which the file rounds to 203', 800, 1200, 203, 203.2, false],
  ['4×6 in at 12 dots/mm, which the file rounds to 305', 1219, 1829, 305, 304.8, false],
];

const PUT_RIGHT: Row[] = [
  ['4×6 in at 300 dpi, said to be 72', 1200, 1800, 72, 300, true],
  ['4×6 in at 300 dpi, said to be 96', 1200, 1800, 96, 300, true],
  ['4×6 in at 300 dpi, nothing said', 1200, 1800, undefined, 300, true],
  ['4×6 in at 203 dpi, said to be 96', 812, 1218, 96, 203, true],
  ['4×6 in at 8 dots/mm, said to be 72', 813, 1219, 72, 203.2, true],
  ['100×150 mm at 8 dots/mm, said to be 72', 800, 1200, 72, 203.2, true],
  ['A6 at 8 dots/mm, nothing said', 840, 1184, undefined, 203.2, true],
  ['4×8 in at 203 dpi, said to be 72', 812, 1624, 72, 203, true],
  ['letter at 300 dpi, said to be 72', 2550, 3300, 72, 300, true],
  ['A4 at 600 dpi, said to be 1', 4961, 7016, 1, 600, true],
  ['4×6 in on a screen of twice 96 dpi', 768, 1152, 72, 192, true],
];

const UNKNOWN: Row[] = [
  ['no size that is known, at a filler that makes a page', 700, 1000, 72, 72, true],
  ['no size that is known, nothing said', 700, 1000, undefined, 203, true],
  ['far too large at what is said and not known', 3000, 7000, 72, 600, true],
  ['a strip that is no page at any resolution', 20_000, 90, undefined, 203, true],
  ['a single pixel', 1, 1, undefined, 203, true],
];

describe('picture-size', () => {
  it.each([...BELIEVED, ...PUT_RIGHT, ...UNKNOWN])('%s', (_name, width, height, given, dpi, noted) => {
    const size = pictureSize(width, height, given);
    expect(size.dpi).toBe(dpi);
    expect(size.note !== undefined).toBe(noted);
  });

  it('says what the file said, and what it is taken for', () => {
    expect(pictureSize(1200, 1800, 72).note).toBe('the file says 72 dpi, which makes 16.67×25.00 in; taken as 300 dpi, 4.00×6.00 in');
    expect(pictureSize(812, 1218, undefined).note).toBe('the file names no resolution; taken as 203 dpi, 4.00×6.00 in');
    expect(pictureSize(700, 1000, undefined).note).toBe('the file names no resolution; 203 dpi assumed, 3.45×4.93 in, which may be wrong');
  });
});
