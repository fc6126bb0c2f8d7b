import { num } from '../operators.js';
import { hex4, type PageFont } from './page-font.js';
import type { SetLine } from './paragraph.js';

/** Name of the slip's font in a page's resources. */
export const FONT = 'F';

/**
 * The operators that draw one line, between `BT` and `ET`.
 * @param x pt from the page's left edge
 * @param baseline pt from the page's top, y down
 */
export function lineOperators(line: SetLine, x: number, baseline: number, pageHeight: number, font: PageFont): string {
  const shown: string[] = [];
  let codes = '';
  for (const cluster of line.clusters) {
    const code = font.code(cluster);
    codes += hex4(code);
    const kern = cluster.advance - font.advance(code);
    if (kern === 0) continue;
    // Numbers in TJ move the pen back, in 1/1000 em.
    shown.push(`<${codes}>`, num(-kern));
    codes = '';
  }
  if (codes !== '') shown.push(`<${codes}>`);
  return `/${FONT} ${num(line.style.size)} Tf\n1 0 0 1 ${num(x)} ${num(pageHeight - baseline)} Tm\n[${shown.join(' ')}] TJ`;
}
