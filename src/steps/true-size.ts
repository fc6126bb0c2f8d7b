import { contains, type Box } from '../geometry/box.js';
import { formatSize } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import { applyToBox, placementMatrix, turnedSize, type Turn } from '../geometry/placement.js';
import { drawnSize, fits } from '../press/place.js';
import type { Reason, Sheet } from '../sheet/sheet.js';
import type { LargePages } from './step.js';

/** As they lie, or turned by a quarter where they only fit that way: people turn a letter page themselves. */
const WAYS: readonly Turn[] = [0, 90];

/**
 * A page at true size on the printer for large pages: the whole of it, or where its paper is larger than the printer's and nothing is printed on the
 * edge, without its white edge. Never shrunk. Figures instead where neither fits.
 * @param ink what is printed in the sheet's box, pt on the source page
 */
export function atTrueSize(sheet: Sheet, ink: Box, large: LargePages): Sheet | { readonly refused: string } {
  const { name, media } = large;
  const whole: Sheet = { ...sheet, output: name, scale: 1, margin: 0 };
  // As much of the page as the sheet takes; then what is printed on it, wherever on the page that is.
  const ways = [(): Box => sheet.box, (turn: Turn): Box => middleOf(sheet.box, media, turn), (): Box => ink];
  for (const boxFor of ways) {
    const made = WAYS.map((turn): Sheet => ({ ...whole, turn, box: boxFor(turn) })).find((each) => isWithin(each, ink, large));
    if (!made) continue;
    const evidence = [
      `true size on ${name} (${media.name})`,
      ...(made.turn === 0 ? [] : ['turned a quarter to lie along the sheet']),
      ...(made.box === sheet.box ? [] : [`its white edge left out: the page is ${formatSize(sheet.box.width, sheet.box.height)}`]),
    ];
    return { ...made, evidence: [...sheet.evidence, ...evidence] };
  }
  const { width, height } = large.reach;
  return {
    refused: `it is ${formatSize(ink.width, ink.height)} at true size, and ${name} prints ${formatSize(width, height)} of a page of ${media.name}`,
  };
}

/** What is left of a page when its edges are taken off evenly until it fits the media. */
function middleOf(page: Box, media: Media, turn: Turn): Box {
  const most = turnedSize(media.width, media.height, turn);
  const [width, height] = [Math.min(page.width, most.width), Math.min(page.height, most.height)];
  return { x: page.x + (page.width - width) / 2, y: page.y + (page.height - height) / 2, width, height };
}

/** Whether the page fits the media, and all its ink where the printer reaches; the press lays a page in the middle. */
function isWithin(sheet: Sheet, ink: Box, { media, reach }: LargePages): boolean {
  if (!contains(sheet.box, ink, ROUNDING) || !fits(sheet, media)) return false;
  const { width, height } = drawnSize(sheet);
  const matrix = placementMatrix(sheet.box, sheet.turn, 1, (media.width - width) / 2, (media.height - height) / 2);
  return contains(reach, applyToBox(matrix, ink), ROUNDING);
}

/** Less than a dot of any printer, pt. */
const ROUNDING = 0.1;

export const tooLargeForAll = (what: string): Reason => ({
  code: 'customs-form/too-large',
  message: `the customs form can't be read at the size of a label, and at true size it is too large: ${what}`,
  remedy:
    'Print this page where there is larger paper and put it to its parcel, which must not leave without it; or name a printer with larger media under `large-pages`.',
});
