import { bottom, contains, intersection, right, union, type Box } from '../geometry/box.js';
import { mmToPt, ptToMm } from '../geometry/length.js';
import { inkBlobs } from '../locating/ink-blobs.js';
import type { SourcePage } from '../reading/source.js';
import { held, type Sheet } from '../sheet/sheet.js';
import { boxOption } from './surveyed.js';

/** Ink that sticks out farther than this (pt, 15 mm) goes on to something else: a table, a rule across the page. */
const FARTHEST = mmToPt(15);
/** Less than this (pt, 1 mm) on either side of the edge is no more than how well ink is known. */
const LEAST = mmToPt(1);

const SIDES = ['left', 'top', 'right', 'bottom'] as const;
type Side = (typeof SIDES)[number];

/** How far (pt) a blob sticks out of a box at one of its sides; at most 0 where it doesn't. */
function outAt(side: Side, blob: Box, box: Box): number {
  if (side === 'left') return box.x - blob.x;
  if (side === 'top') return box.y - blob.y;
  return side === 'right' ? right(blob) - right(box) : bottom(blob) - bottom(box);
}

/** Whether a box's edge runs through ink of which the greater part lies inside and all of it ends soon after: a line of type, a label's own frame. */
function isCut(blob: Box, box: Box): boolean {
  const inside = intersection(blob, box);
  if (!inside || contains(blob, box)) return false;
  const out = Math.max(...SIDES.map((side) => outAt(side, blob, box)));
  if (out < LEAST || out > FARTHEST) return false;
  return inside.width >= Math.max(LEAST, blob.width / 2) && inside.height >= Math.max(LEAST, blob.height / 2);
}

/** Holds a sheet whose box, as a recipe gives it, cuts ink in two; undefined where it cuts none. */
export function heldForCutInk(sheet: Sheet, box: Box, page: SourcePage): Sheet | undefined {
  const cut = inkBlobs(page.ink()).filter((blob) => isCut(blob, box));
  const whole = union([box, ...cut]);
  if (cut.length === 0 || !whole) return undefined;
  const beyond = SIDES.flatMap((side) => {
    const out = outAt(side, whole, box);
    return out >= LEAST ? [`${ptToMm(out).toFixed(1)} mm at its ${side}`] : [];
  });
  return {
    ...held(sheet, {
      code: 'locate-label/cut-ink',
      message: `the edge of the recipe's box runs through ink, which goes on beyond it: ${beyond.join(', ')}`,
      remedy: `Look at the picture. If that ink is the label's, write \`locate-label: { box: ${boxOption(whole)} }\`, which holds all of it; if labels of this channel lie now here, now there, give their \`place\` instead of a box.`,
    }),
    answers: [box, whole],
  };
}
