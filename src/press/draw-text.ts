import type { PDFFont } from '../reading/pdf-library.js';
import type { Box } from '../geometry/box.js';
import { num } from './operators.js';
import { BASELINE, LINE_HEIGHT, settable } from './text-face.js';

/**
 * The operators that set lines of text in black, the first line's top at the top of `box`.
 * @param box pt on the output page, y down
 * @param font name of `face` in the page's resources
 */
export function textOperators(
  lines: readonly string[],
  fontSize: number,
  box: Box,
  pageHeight: number,
  face: PDFFont,
  font: string,
): string {
  const shown = lines.map((line, index) => {
    const y = pageHeight - box.y - (index * LINE_HEIGHT + BASELINE) * fontSize;
    return line.trim() === '' ? '' : `1 0 0 1 ${num(box.x)} ${num(y)} Tm ${face.encodeText(settable(line)).toString()} Tj`;
  });
  return ['BT', `/${font} ${num(fontSize)} Tf 0 g`, ...shown.filter((line) => line !== ''), 'ET'].join('\n');
}
