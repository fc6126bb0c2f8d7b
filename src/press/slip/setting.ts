import type { SlipContent } from '../../sheet/slip-content.js';
import { cleanText, type Warn } from '../type/clean.js';
import { ANY_HAN, hanOrder, type Han } from '../type/han.js';
import { lineWidth, setParagraph, type Direction, type SetLine, type Style } from '../type/paragraph.js';
import type { Types } from './type-sizes.js';

/** White between columns, pt. */
export const GUTTER = 8;

/** The heavy stroke under the studio and beside a message, and the hairline between items; pt. */
export const HEAVY = 1.2;
export const HAIR = 0.36;

/** No column at the side takes more of the width than this. */
export const MOST_OF_WIDTH = 0.4;

/** What is known wherever text is set. */
export interface Setting {
  readonly types: Types;
  /** Width of the text area, pt. */
  readonly width: number;
  /** Regional forms of Han characters where a text itself tells nothing. */
  readonly han: readonly Han[];
  readonly warn: Warn;
}

/** The regional forms that the whole of a slip speaks for. */
export function hanOf(content: SlipContent): readonly Han[] {
  const items = content.items.flatMap(({ description, variant }) => [description, variant]);
  return hanOrder(
    [content.studio, ...content.contact, ...content.shipTo, content.giftMessage, content.notes, ...items].join('\n'),
    ANY_HAN,
  );
}

/** Sets one field as one paragraph. */
export function set(text: string, style: Style, width: number, { han, warn }: Setting, otherwise: Direction = 'ltr'): readonly SetLine[] {
  const order = hanOrder(text, han);
  return setParagraph(cleanText(text, order, warn), style, width, order, otherwise);
}

/** The width that a field takes on one line, pt. */
export function widthOf(text: string, style: Style, { han, warn }: Setting): number {
  const order = hanOrder(text, han);
  return lineWidth(cleanText(text, order, warn), style, order);
}
