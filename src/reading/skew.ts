import { rotationAbout, type Matrix } from '../geometry/placement.js';
import type { Slant, SourcePage } from './source.js';

/** Up to here a page is straightened, with what the measurement may be off: beyond it a reader must have meant it. */
const MOST = 3.2;
/** Less than this nobody sees, and turning costs the pixels their sharp edges. */
const LEAST = 0.15;

/** The slant of a page that is straight because programs draw so. */
export const STRAIGHT: Slant = { degrees: 0, sure: true };

/** What a page of this slant is to be straightened by, degrees; 0 to leave it as it is. */
export function correctionOf({ degrees, sure }: Slant): number {
  return sure && Math.abs(degrees) >= LEAST && Math.abs(degrees) <= MOST ? degrees : 0;
}

/** The map from the page as given to the page straightened, both pt, y down. */
export function straightening(page: Pick<SourcePage, 'width' | 'height' | 'skew'>): Matrix {
  return rotationAbout(page.width / 2, page.height / 2, -page.skew);
}

/** Whether a page that is nothing but pictures lies slanted and could not be straightened; its label would be printed so. */
export function isSlanted({ skew, slant }: Pick<SourcePage, 'skew' | 'slant'>): boolean {
  return skew === 0 && slant.sure && Math.abs(slant.degrees) > MOST;
}

/** For people: "straightened by 1.4 degrees"; undefined for a page that was straight. */
export function straightenedWords({ skew }: Pick<SourcePage, 'skew'>): string | undefined {
  return skew === 0 ? undefined : `straightened by ${Math.abs(skew).toFixed(1)} degrees`;
}
