import type { Media } from '../../geometry/media.js';
import type { Style } from '../type/paragraph.js';
import type { ListStyle } from './list.js';

/** Measures of a list on a page, pt. */
export interface Measures {
  /** Size of plain type. */
  readonly size: number;
  readonly margin: number;
  /** Between columns, and above and below a row's type. */
  readonly gap: number;
  readonly pad: number;
  /** Between the margins. */
  readonly width: number;
  readonly height: number;
}

/** From this width (pt) on a page has room for a column for each thing. */
const WIDE = 400;

export const isWide = ({ width }: Media): boolean => width >= WIDE;

/** On labels 8 pt, which 203 dots an inch still draw clearly; on larger paper what reads well at arm's length. */
export function measuresOf(media: Media): Measures {
  const size = isWide(media) ? 9.5 : Math.min(8, Math.min(media.width, media.height) / 36);
  const margin = isWide(media) ? 36 : 1.6 * size;
  return { size, margin, gap: 0.9 * size, pad: 0.4 * size, width: media.width - 2 * margin, height: media.height - 2 * margin };
}

const FACTORS: Readonly<Record<ListStyle, number>> = { plain: 1, strong: 1, big: 1.7, small: 0.86 };

export const styleOf = (style: ListStyle, { size }: Measures): Style => ({
  size: FACTORS[style] * size,
  weight: style === 'strong' || style === 'big' ? 'bold' : 'regular',
});
