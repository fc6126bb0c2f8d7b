import { measureText, missingGlyphs } from '../press/text-face.js';
import type { Word } from '../reading/source.js';
import { COLUMN_GAP, gapBefore, wordLines } from '../reading/word-lines.js';

/**
 * Sets the words of a slip anew: line by line as they stand, wrapped to the room, on as many pages as it takes; a line is
 * never cut in two by a page. Returns a sentence when it can't be done without losing something.
 * @param room width and height in pt
 */
export function reflow(
  words: readonly Word[],
  fontSize: number,
  room: { width: number; height: number },
): readonly (readonly string[])[] | string {
  if (words.length === 0) return 'the slip has no text layer';
  const turn = words[0]?.turn;
  if (turn === undefined || words.some((word) => word.turn !== turn)) return 'its words run in more than one direction';
  const asTheyStand = textLines(words);
  if (missingGlyphs(asTheyStand.join('')).length > 0) return 'it has characters that the font at hand lacks';
  if (!hasRoom(asTheyStand, fontSize, room)) return `the page has no room for type of ${fontSize.toFixed(0)} pt`;
  const lines = asTheyStand.flatMap((line) => wrap(line, fontSize, room.width));
  const pages: string[][] = [];
  let page: string[] = [];
  for (const line of lines) {
    if (page.length > 0 && measureText([...page, line], fontSize).height > room.height) {
      pages.push(page);
      page = [];
    }
    page.push(line);
  }
  if (page.length > 0) pages.push(page);
  return pages;
}

/** Words in lines as a reader sees them, from the top; wide gaps kept as such. */
const textLines = (words: readonly Word[]): string[] =>
  wordLines(words).map(({ words: line, turn }) =>
    line
      .map((word, index) => {
        const before = line[index - 1];
        return before ? `${gapBefore(word, before, turn) > COLUMN_GAP ? '   ' : ' '}${word.text}` : word.text;
      })
      .join(''),
  );

/** What a wrapped line begins with, so that it shows as one. */
const INDENT = '   ';

/** Whether a line fits, and in it the widest character behind the indent: wrapping would never end otherwise. */
function hasRoom(lines: readonly string[], fontSize: number, room: { width: number; height: number }): boolean {
  if (measureText([''], fontSize).height > room.height) return false;
  return charactersOf(lines.join('')).every((each) => measureText([INDENT + each], fontSize).width <= room.width);
}

/** The different characters of a text, marks with what they stand on. */
const charactersOf = (text: string): readonly string[] => [...new Set(text.normalize('NFC').match(/\P{M}\p{M}*/gu) ?? [])];

/** A mark or the second half of a character stays with what stands before it. */
const belongsToBefore = (text: string, at: number): boolean => /^[\p{M}\p{Cs}]/u.test(text.slice(at, at + 2));

function wrap(line: string, fontSize: number, width: number): string[] {
  const fits = (text: string): boolean => measureText([text], fontSize).width <= width;
  if (fits(line)) return [line];
  const lines: string[] = [];
  let open = '';
  for (const part of line.split(/(?<=\s)(?=\S)/)) {
    if (open !== '' && !fits((open + part).trimEnd())) {
      lines.push(open.trimEnd());
      open = INDENT;
    }
    open += part;
    while (!fits(open.trimEnd())) {
      let cut = open.length - 1;
      while (cut > 1 && (!fits(open.slice(0, cut)) || belongsToBefore(open, cut))) cut -= 1;
      lines.push(open.slice(0, cut));
      open = INDENT + open.slice(cut);
    }
  }
  if (open.trim() !== '') lines.push(open.trimEnd());
  return lines;
}
