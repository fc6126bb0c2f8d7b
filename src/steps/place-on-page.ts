import type { Box } from '../geometry/box.js';
import type { Length } from '../geometry/length.js';
import type { BoxLengths } from './option.js';

/** Parts of a page by name, as it lies before a reader. */
export const PLACES = [
  'upper-half',
  'lower-half',
  'left-half',
  'right-half',
  'upper-left',
  'upper-right',
  'lower-left',
  'lower-right',
] as const;
export type PlaceName = (typeof PLACES)[number];

/** The part of a page that a name means, pt. */
export function placeOnPage(name: PlaceName, { width, height }: { readonly width: number; readonly height: number }): Box {
  const x = name.includes('right') ? width / 2 : 0;
  const y = name.includes('lower') ? height / 2 : 0;
  const wide = name === 'upper-half' || name === 'lower-half';
  const high = name === 'left-half' || name === 'right-half';
  return { x, y, width: wide ? width : width / 2, height: high ? height : height / 2 };
}

/** A `[left, top, width, height]` option as a box, pt. */
export function boxOnPage([x, y, width, height]: BoxLengths, toPt: (length: Length) => number): Box {
  return { x: toPt(x), y: toPt(y), width: toPt(width), height: toPt(height) };
}
