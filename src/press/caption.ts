import type { Media } from '../geometry/media.js';
import { textOperators } from './draw-text.js';
import { addPage, newDocument, saveDocument } from './output.js';
import { embedFace, LINE_HEIGHT, measureLine, missingGlyphs } from './text-face.js';

/** Clear space left and right of a caption, pt. */
const CLEAR = 3;

/**
 * A PDF with one page a caption, a line each. A caption that is too long loses its beginning, for the end of a path says the most;
 * characters that the press's font lacks become question marks.
 * @param page pt; captions stand in the middle of its height
 * @param fontSize pt
 */
export async function pressCaptions(captions: readonly string[], page: Media, fontSize: number): Promise<Uint8Array> {
  const document = await newDocument();
  const face = await embedFace(document);
  const height = fontSize * LINE_HEIGHT;
  const box = { x: CLEAR, y: (page.height - height) / 2, width: page.width - 2 * CLEAR, height };
  for (const caption of captions) {
    const line = shortened(withGlyphs(caption), fontSize, box.width);
    addPage(document, page, textOperators([line], fontSize, box, page.height, face, 'F'), { Font: { F: face.ref } });
  }
  return saveDocument(document);
}

function withGlyphs(text: string): string {
  const missing = new Set(missingGlyphs(text));
  return Array.from(text.normalize('NFC'), (char) => (missing.has(char) ? '?' : char)).join('');
}

function shortened(text: string, fontSize: number, width: number): string {
  const characters = Array.from(text);
  let line = text;
  while (characters.length > 0 && measureLine(line, fontSize) > width) {
    characters.shift();
    line = `…${characters.join('')}`;
  }
  return line;
}
