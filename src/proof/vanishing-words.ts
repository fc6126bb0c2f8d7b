import { bottom, contains, intersection, right, type Box } from '../geometry/box.js';
import { applyToBox, type Matrix } from '../geometry/placement.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';
import type { Sheet } from '../sheet/sheet.js';

/** Smaller type than this (pt) can't be read in a screen of dots. */
const SMALL = 10;
/** What differs from its paper by less (grey steps) is not there for people either. */
const SEEN = 24;
/** Less of a word's box than this is a stray dot, no writing. */
const WRITTEN = 0.01;

/** Where the small words of a sheet lie on the output page, pt. */
export function smallWords(page: SourcePage, { box, scale }: Sheet, matrix: Matrix | undefined): readonly Box[] {
  if (matrix === undefined) return [];
  return page
    .words()
    .filter((word) => word.fontSize * scale < SMALL && contains(box, word.box, 1) && /\p{L}|\p{N}/u.test(word.text))
    .map((word) => applyToBox(matrix, word.box));
}

/** Whether small words are lost on a page of dots. @param grey the output page before any dot is made black or white, `bits` as it is burned */
export function hasVanishingWords(words: readonly Box[], grey: GreyRaster, bits: GreyRaster): boolean {
  return words.some((word) => {
    const { dark, light } = tonesIn(grey, word);
    if (light - dark < SEEN) return false;
    const { burned } = tonesIn(bits, word);
    return burned < WRITTEN || burned > 1 - WRITTEN;
  });
}

/** The darkest and the lightest dot in a box, and the share of black ones. */
function tonesIn(raster: GreyRaster, wanted: Box): { readonly dark: number; readonly light: number; readonly burned: number } {
  const { width, height, data, pixelsPerPt, origin } = raster;
  const box = intersection(wanted, { x: origin.x, y: origin.y, width: width / pixelsPerPt, height: height / pixelsPerPt });
  if (!box) return { dark: 255, light: 255, burned: 0 };
  const pixel = (pt: number, from: number): number => Math.round((pt - from) * pixelsPerPt);
  let [dark, light, burned, all] = [255, 0, 0, 0];
  for (let y = pixel(box.y, origin.y); y < Math.min(height, pixel(bottom(box), origin.y)); y++) {
    for (let x = pixel(box.x, origin.x); x < Math.min(width, pixel(right(box), origin.x)); x++, all++) {
      const value = data[y * width + x] as number;
      if (value < dark) dark = value;
      if (value > light) light = value;
      if (value === 0) burned += 1;
    }
  }
  return { dark, light, burned: all === 0 ? 0 : burned / all };
}
