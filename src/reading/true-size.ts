import { area, intersection } from '../geometry/box.js';
import { knownResolution } from './picture-size.js';
import type { SourcePage } from './source.js';

/** A picture is the page when it covers this share of it. */
const WHOLE = 0.98;

/** How much smaller or larger a page truly is than its file says. */
export interface TrueSize {
  readonly factor: number;
  /** One sentence for people. */
  readonly note: string;
}

/**
 * A page that is one picture put in at a program's filler resolution (a 4×6 in label of 812×1218 pixels as a page of 8.5×12.7 in)
 * has the size that its pixels have on a known medium. Undefined for every other page: what a file says is believed.
 */
export function trueSizeOf(page: SourcePage): TrueSize | undefined {
  const [image, ...others] = page.images();
  if (!image || others.length > 0 || image.turn === undefined) return undefined;
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  const shown = intersection(image.box, whole);
  if (!shown || area(shown) < WHOLE * area(whole) || page.words().length > 0) return undefined;
  const sideways = image.turn % 180 === 90;
  const [across, down] = sideways ? [image.pixelHeight, image.pixelWidth] : [image.pixelWidth, image.pixelHeight];
  const given = (across * 72) / image.box.width;
  if (Math.abs((down * 72) / image.box.height / given - 1) > 0.01) return undefined;
  const known = knownResolution(across, down, given);
  return known && { factor: given / known.dpi, note: `page ${page.number}: ${known.note}` };
}
