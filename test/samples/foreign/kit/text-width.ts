/** Widths of Helvetica's printable ASCII, thousandths of an em (Adobe's published font metrics). */
const WIDTHS = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278,
  278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722,
  667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556,
  556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];

/** About how wide a line is set, in pt; a little too wide rather than too narrow. */
export function textWidth(text: string, size: number, mono = false): number {
  if (mono) return text.length * 0.61 * size;
  let sum = 0;
  for (const each of text) sum += WIDTHS[(each.codePointAt(0) ?? 0) - 32] ?? 640;
  return (sum / 1000) * size * 1.09;
}

/** Lines of at most `width` pt, broken at blanks. */
export function wrap(text: string, width: number, size: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  return lines;
}
