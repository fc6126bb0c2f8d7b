import type { Box } from '../geometry/box.js';
import type { Matrix, Turn } from '../geometry/placement.js';
import { visibleBox } from './pdf-geometry.js';
import { allocate, direct, doubles, floats, free, type Pdfium } from './pdfium.js';
import { wordsOf, type Letter, type Piece } from './pieces-of-words.js';
import type { Word } from './source.js';

/** What PDFium gives for a hyphen at the end of a line, so that viewers can join the halves of a word. On paper it is a hyphen. */
const LINE_END_HYPHEN = 2;
const HYPHEN = 0x2d;

/** Writing within this many degrees of a quarter turn runs that way. */
export const LEVEL = 2;

/**
 * The words of a page's text layer, in the order of the content; a word ends at white space, at a turn or at a change of size.
 * @param slack how far writing may be off a quarter turn, degrees
 */
export function readWords(engine: Pdfium, page: number, toVisible: Matrix, slack = LEVEL): readonly Word[] {
  const text = engine.FPDFText_LoadPage(page);
  if (text === 0) return [];
  const scratch = allocate(engine, 80);
  const calls = direct(engine);
  try {
    const pieces: Piece[] = [];
    let open: Letter[] = [];
    // White space that PDFium adds itself is a guess: where letters meet, there is none.
    let isGuess = false;
    const close = (guess: boolean): void => {
      if (open.length > 0) pieces.push({ letters: open, isGuess });
      if (open.length > 0 || !guess) isGuess = guess;
      open = [];
    };
    const count = engine.FPDFText_CountChars(text);
    for (let index = 0; index < count; index++) {
      const given = calls.FPDFText_GetUnicode(text, index);
      const code = given === LINE_END_HYPHEN ? HYPHEN : given;
      if (code <= 32 || code === 160 || calls.FPDFText_GetCharBox(text, index, scratch, scratch + 8, scratch + 16, scratch + 24) === 0) {
        close(code <= 32 && engine.FPDFText_IsGenerated(text, index) === 1);
        continue;
      }
      const [left = 0, right = 0, bottom = 0, top = 0] = doubles(engine, scratch, 4);
      const box = visibleBox(toVisible, left, bottom, right, top);
      const { turn, fontSize } = writing(engine, text, index, toVisible, scratch + 32, slack);
      const [last] = open;
      if (last && (last.turn !== turn || Math.abs(last.fontSize - fontSize) > 0.1 * fontSize)) close(false);
      open.push({
        text: String.fromCodePoint(code),
        box,
        advance: advanceOf(engine, text, index, toVisible, scratch + 64) ?? box,
        turn,
        fontSize,
      });
      // No line end follows it.
      if (given === LINE_END_HYPHEN) close(false);
    }
    close(false);
    return wordsOf(pieces);
  } finally {
    free(engine, scratch);
    engine.FPDFText_ClosePage(text);
  }
}

/** Where a letter stands with the white at its sides, by which letters of one word meet. */
function advanceOf(engine: Pdfium, text: number, index: number, toVisible: Matrix, scratch: number): Box | undefined {
  if (direct(engine).FPDFText_GetLooseCharBox(text, index, scratch) === 0) return undefined;
  const [left = 0, top = 0, right = 0, bottom = 0] = floats(engine, scratch, 4);
  return visibleBox(toVisible, left, bottom, right, top);
}

function writing(
  engine: Pdfium,
  text: number,
  index: number,
  toVisible: Matrix,
  scratch: number,
  slack: number,
): { turn: Turn | undefined; fontSize: number } {
  const size = direct(engine).FPDFText_GetFontSize(text, index);
  if (direct(engine).FPDFText_GetMatrix(text, index, scratch) === 0) return { turn: undefined, fontSize: size };
  const [a = 1, b = 0, c = 0, d = 1] = floats(engine, scratch, 4);
  const dx = a * toVisible[0] + b * toVisible[2];
  const dy = a * toVisible[1] + b * toVisible[3];
  const upX = c * toVisible[0] + d * toVisible[2];
  const upY = c * toVisible[1] + d * toVisible[3];
  const degrees = ((Math.atan2(dy, dx) * 180) / Math.PI + 360) % 360;
  const quarter = Math.round(degrees / 90) * 90;
  return { turn: Math.abs(degrees - quarter) < slack ? ((quarter % 360) as Turn) : undefined, fontSize: size * Math.hypot(upX, upY) };
}
