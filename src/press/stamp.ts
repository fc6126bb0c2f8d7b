import type { PDFFont } from '../reading/pdf-library.js';
import type { Box } from '../geometry/box.js';
import { measureText } from './text-face.js';
import { textOperators } from './draw-text.js';

/** A number such as `7/41` for one page, and where it may stand. */
export interface Stamp {
  readonly text: string;
  /** What is said beside it where the box has room: ` ·1234`; left out: nothing. */
  readonly more?: string | undefined;
  /** pt; made smaller when the text would not fit the box. */
  readonly fontSize: number;
  /** A rectangle of the page known to be free, pt, y down. */
  readonly box: Box;
}

/** Clear space around a number, pt: soft edges of its type stay inside its box. */
const CLEAR = 1;

/** The size (pt) that a number takes with clear space around it. Ask for the longest one that may come. */
export function stampSize(text: string, fontSize: number): { width: number; height: number } {
  const { width, height } = measureText([text], fontSize);
  return { width: width + 2 * CLEAR, height: height + 2 * CLEAR };
}

/** The operators that set a number at the right and at the bottom of its box, and nowhere else. */
export function stampOperators(stamp: Stamp, pageHeight: number, face: PDFFont, font: string): string {
  const { box } = stamp;
  const text = textOf(stamp);
  const wanted = stampSize(text, stamp.fontSize);
  const fit = fitOf(text, stamp);
  const at: Box = {
    x: box.x + box.width - (wanted.width - CLEAR) * fit,
    y: box.y + box.height - (wanted.height - CLEAR) * fit,
    width: (wanted.width - 2 * CLEAR) * fit,
    height: (wanted.height - 2 * CLEAR) * fit,
  };
  return `q\n${textOperators([text], stamp.fontSize * fit, at, pageHeight, face, font)}\nQ`;
}

/** The least size (pt) to which the number shrinks for the sake of what is said beside it. */
const READABLE = 7;

/** The number with what is said beside it, unless it would become too small to read for that. */
function textOf(stamp: Stamp): string {
  const { text, more = '', fontSize } = stamp;
  const [alone, both] = [fitOf(text, stamp) * fontSize, fitOf(text + more, stamp) * fontSize];
  return both >= Math.min(READABLE, alone) ? text + more : text;
}

/** The factor, 1 at most, by which a text fits its box. */
function fitOf(text: string, { fontSize, box }: Stamp): number {
  const { width, height } = stampSize(text, fontSize);
  return Math.min(1, box.width / width, box.height / height);
}
