const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * A text in lines no wider than `most`: broken between words, and inside a word only where it is wider than a line by itself. Every character
 * but the blanks at the breaks is there; an empty text has no lines.
 * @param width measures a text, in the unit of `most`
 */
export function wrapped(text: string, most: number, width: (text: string) => number): readonly string[] {
  const blank = width(' ');
  const lines: string[] = [];
  let line = '';
  let used = 0;
  for (const word of text.split(' ').filter((each) => each !== '')) {
    const wide = width(word);
    if (line !== '' && used + blank + wide <= most) {
      line += ` ${word}`;
      used += blank + wide;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = wide <= most ? [word] : broken(word, most, width);
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? '';
    used = width(line);
  }
  return line === '' ? lines : [...lines, line];
}

/** A word that is wider than a line, in parts that aren't: cut after a hyphen or the like where it has one. A part has one character at least. */
function broken(word: string, most: number, width: (text: string) => number): readonly string[] {
  const parts: string[] = [];
  let part = '';
  for (const { segment } of graphemes.segment(word)) {
    if (part !== '' && width(part + segment) > most) {
      const [kept = part] = /^.*[-/_.,:;](?=.)/su.exec(part) ?? [];
      parts.push(kept);
      part = part.slice(kept.length);
    }
    part += segment;
  }
  return [...parts, part];
}
