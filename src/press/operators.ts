import type { Box } from '../geometry/box.js';
import type { Matrix } from '../geometry/placement.js';

/** A number as PDF content writes it (ISO 32000: no exponent). */
export function num(value: number): string {
  const text = value.toFixed(7).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/** The `cm` operator of a map between PDF user spaces (y up). */
export const cm = (matrix: Matrix): string => `${matrix.map(num).join(' ')} cm`;

/** The map from an output page's own pt (y down) to PDF user space (y up). */
export const flip = (pageHeight: number): Matrix => [1, 0, 0, -1, 0, pageHeight];

/** Clips to a box given in pt, y down, on a page of this height. */
export const clipTo = (box: Box, pageHeight: number): string =>
  `${num(box.x)} ${num(pageHeight - box.y - box.height)} ${num(box.width)} ${num(box.height)} re W n`;
