import type { SlipLook } from '../../sheet/slip-content.js';
import type { Warn } from '../type/clean.js';
import type { Style } from '../type/paragraph.js';

/** No type is smaller, pt: at 203 dpi its lower-case letters are 9 dots high (computed; x-height of the face 0.536 em). */
export const SMALLEST_TYPE = 6;

/** The styles of a slip, from what is seen first to what is looked up. */
export interface Types {
  readonly studio: Style;
  readonly order: Style;
  readonly body: Style;
  readonly strong: Style;
  readonly small: Style;
  /** Names of what stands below or beside them. */
  readonly label: Style;
  readonly quantity: Style;
  readonly quantities: Style;
  readonly message: Style;
}

/**
 * Sizes in pt; none below what the look calls readable, as far as the page has room for it.
 * @param pageHeight pt
 */
export function typesOf(look: SlipLook, pageHeight: number, warn: Warn): Types {
  const most = Math.floor(pageHeight / LEAST_LINES);
  const asked = Number.isFinite(look.readable) ? Math.max(SMALLEST_TYPE, look.readable) : SMALLEST_TYPE;
  const least = Math.min(most, asked);
  if (asked > most) warn(`Type of ${asked} pt is too large for this media: the slip is set in ${most} pt.`);
  const style = (size: number, weight: Style['weight']): Style => ({ size: Math.max(size, least), weight });
  return {
    studio: style(15, 'bold'),
    order: style(14, 'bold'),
    body: style(9, 'regular'),
    strong: style(9, 'bold'),
    small: style(7.5, 'regular'),
    label: style(6.5, 'bold'),
    quantity: style(15, 'regular'),
    quantities: style(15, 'bold'),
    message: style(10, 'regular'),
  };
}

/** The smallest type is small enough for this many lines on a page: fewer leave no room for an item between what stands above and below. */
const LEAST_LINES = 20;
