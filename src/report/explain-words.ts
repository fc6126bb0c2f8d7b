import type { Turn } from '../geometry/placement.js';

/** Clockwise turns as people say them. */
export const TURN_WORDS: Readonly<Record<Turn, string>> = {
  0: '0°',
  90: '90° clockwise',
  180: '180°',
  270: '90° anticlockwise',
};
