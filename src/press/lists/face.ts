import type { PDFDocument, PDFRef } from '../../reading/pdf-library.js';
import { textOperators } from '../draw-text.js';
import { num } from '../operators.js';
import { embedFace, LINE_HEIGHT, measureLine, missingGlyphs, settable } from '../text-face.js';

/** All that lists ask of type: another face comes in here and nowhere else. */
export interface ListFace {
  /** A text as it can be set: a question mark for each character that the face lacks. */
  shown(text: string): string;
  /** Width of a shown text, pt. */
  width(text: string, size: number): number;
  /** The operators that set a shown text; `x` and `top` of its line in pt, y down. */
  set(text: string, size: number, strong: boolean, x: number, top: number): string;
  /** Characters that became question marks so far, each once. */
  readonly missing: ReadonlySet<string>;
  readonly name: string;
  readonly ref: PDFRef;
}

/** Strokes this wide (of the size) make type strong: there is one weight of the face. */
const STROKE = 0.035;
const NAME = 'F';

/** @param pageHeight pt */
export async function listFace(document: PDFDocument, pageHeight: number): Promise<ListFace> {
  const font = await embedFace(document);
  const missing = new Set<string>();
  const ems = new Map<string, number>();
  return {
    missing,
    name: NAME,
    ref: font.ref,
    shown(text) {
      const line = settable(text);
      const lacking = new Set(missingGlyphs(line));
      if (lacking.size === 0) return line;
      for (const char of lacking) missing.add(char);
      return Array.from(line, (char) => (lacking.has(char) ? '?' : char)).join('');
    },
    width(text, size) {
      let em = ems.get(text);
      if (em === undefined) ems.set(text, (em = measureLine(text, 1)));
      return em * size;
    },
    set(text, size, strong, x, top) {
      const box = { x, y: top, width: 0, height: size * LINE_HEIGHT };
      const type = textOperators([text], size, box, pageHeight, font, NAME);
      return strong ? `q\n2 Tr ${num(STROKE * size)} w 0 G\n${type}\nQ` : type;
    },
  };
}
