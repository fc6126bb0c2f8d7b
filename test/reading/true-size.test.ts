import { describe, expect, it } from 'vitest';
import type { PlacedImage, SourcePage } from '../../src/reading/source.js';
import { trueSizeOf } from '../../src/reading/true-size.js';
import { blankPages } from '../steps/on-sample.js';

/** A page with one picture over all of it, at so many dots per inch. */
function pictured(
  pixelWidth: number,
  pixelHeight: number,
  dpi: number,
  more: Partial<SourcePage> = {},
  image: Partial<PlacedImage> = {},
): SourcePage {
  const [width, height] = [(pixelWidth * 72) / dpi, (pixelHeight * 72) / dpi];
  const whole: PlacedImage = { box: { x: 0, y: 0, width, height }, pixelWidth, pixelHeight, turn: 0, ...image };
  return { ...blankPages(width, height).page(1), images: () => [whole], ...more };
}

describe('trueSizeOf', () => {
  it.each([72, 96])('a 4×6 in label of 8 dots/mm at %i dpi has the size of a label', (dpi) => {
    const size = trueSizeOf(pictured(812, 1218, dpi));
    expect(((812 * 72) / dpi) * (size?.factor ?? NaN)).toBeCloseTo(288, 0);
    expect(size?.note).toMatch(new RegExp(`^page 1: its picture of ${dpi} dpi makes .* in; taken as 203.* dpi, 4.00×6.00 in$`));
  });

  it('a label that lies on its side, too', () => {
    const lying = pictured(1200, 1800, 72, {}, { turn: 90, box: { x: 0, y: 0, width: 1800, height: 1200 } });
    const page: SourcePage = { ...lying, width: 1800, height: 1200 };
    expect(trueSizeOf(page)?.factor).toBeCloseTo(72 / 300, 4);
  });

  const word = { text: 'a', box: { x: 0, y: 0, width: 5, height: 5 }, turn: 0 as const, fontSize: 5 };
  it.each<[string, SourcePage]>([
    ['at its true resolution', pictured(812, 1218, 203)],
    ['of a size that a known medium has', pictured(612, 792, 72)],
    ['at a resolution that somebody chose', pictured(812, 1218, 150)],
    ['of no known size', pictured(777, 1000, 72)],
    ['mirrored or slanted', pictured(812, 1218, 72, {}, { turn: undefined })],
    ['over a part of the page', pictured(812, 1218, 72, {}, { box: { x: 0, y: 0, width: 700, height: 1218 } })],
    ['stretched', pictured(812, 1218, 72, { width: 850 }, { box: { x: 0, y: 0, width: 850, height: 1218 } })],
    ['with words on it', pictured(812, 1218, 72, { words: () => [word] })],
  ])('a picture %s is believed', (_, page) => {
    expect(trueSizeOf(page)).toBeUndefined();
  });

  it('so is a page without a picture, or with two', () => {
    expect(trueSizeOf(blankPages(812, 1218).page(1))).toBeUndefined();
    const page = pictured(812, 1218, 72);
    expect(trueSizeOf({ ...page, images: () => [...page.images(), ...page.images()] })).toBeUndefined();
  });
});
