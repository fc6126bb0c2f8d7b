import type { Box } from '../../src/geometry/box.js';
import type { Dots } from './rasters.js';

/** Black dots in a box (pt) of a picture at 203 dpi. */
export const black = ({ width, data }: Dots, box: Box): number => {
  const k = 203 / 72;
  let count = 0;
  for (let y = Math.ceil(box.y * k); y < Math.floor((box.y + box.height) * k); y++) {
    for (let x = Math.ceil(box.x * k); x < Math.floor((box.x + box.width) * k); x++) if ((data[y * width + x] ?? 255) < 128) count += 1;
  }
  return count;
};

/** Black dots of one picture without any black dot of the other within two dots. */
export function alone(one: Dots, other: Dots): number {
  const { width, height } = one;
  let count = 0;
  for (let y = 2; y < height - 2; y++) {
    for (let x = 2; x < width - 2; x++) {
      if ((one.data[y * width + x] ?? 255) >= 128) continue;
      const near = [-2, -1, 0, 1, 2].some((dy) => [-2, -1, 0, 1, 2].some((dx) => (other.data[(y + dy) * width + x + dx] ?? 255) < 128));
      if (!near) count += 1;
    }
  }
  return count;
}
