import { contains, type Box } from '../geometry/box.js';
import type { Code } from './source.js';

/**
 * Remembers what was read where on one page, so that locating and proving a label read it once. A region inside one that
 * was read at the same resolution or finer is answered from it: the codes that lie in it whole.
 */
export class CodesMemo {
  readonly #read: { region: Box; pixelsPerPt: number; codes: Promise<readonly Code[]> }[] = [];

  async get(region: Box, pixelsPerPt: number, read: () => Promise<readonly Code[]>): Promise<readonly Code[]> {
    const known = this.#read.find((each) => contains(each.region, region, 0.01) && each.pixelsPerPt >= pixelsPerPt - 1e-9);
    if (known) return (await known.codes).filter((code) => contains(region, code.box, 0.5));
    const codes = read();
    this.#read.push({ region, pixelsPerPt, codes });
    return codes;
  }
}
