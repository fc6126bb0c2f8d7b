import { bottom, contains, intersection, right, type Box } from '../geometry/box.js';
import { applyToBox, type Matrix } from '../geometry/placement.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';
import type { Sheet } from '../sheet/sheet.js';

/** Words that differ from their paper by less than this (grey steps) are not set in black dots, and a screen of dots makes smaller type than this (pt) unreadable. */
const FAINT = 72;
const SMALL = 10;
/** What differs from its paper by less is not there for people either. */
const SEEN = 24;

/** Whether small pale words of a sheet would be lost on a page of dots. @param grey the output page before any dot is made black or white */
export function hasVanishingWords(page: SourcePage, { box, scale }: Sheet, matrix: Matrix, grey: GreyRaster): boolean {
  return page
    .words()
    .filter((word) => word.fontSize * scale < SMALL && contains(box, word.box, 1) && /\p{L}|\p{N}/u.test(word.text))
    .some((word) => {
      const contrast = contrastIn(grey, applyToBox(matrix, word.box));
      return contrast >= SEEN && contrast < FAINT;
    });
}

function contrastIn({ width, height, data, pixelsPerPt, origin }: GreyRaster, wanted: Box): number {
  const box = intersection(wanted, { x: origin.x, y: origin.y, width: width / pixelsPerPt, height: height / pixelsPerPt });
  if (!box) return 0;
  const pixel = (pt: number, from: number): number => Math.round((pt - from) * pixelsPerPt);
  let [dark, light] = [255, 0];
  for (let y = pixel(box.y, origin.y); y < Math.min(height, pixel(bottom(box), origin.y)); y++) {
    for (let x = pixel(box.x, origin.x); x < Math.min(width, pixel(right(box), origin.x)); x++) {
      const value = data[y * width + x] as number;
      [dark, light] = [Math.min(dark, value), Math.max(light, value)];
    }
  }
  return Math.max(0, light - dark);
}
