import { area, centre, contains, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Judged } from './candidate.js';
import { LEAST } from './choose.js';
import { addsOnlyUnits } from './closed-units.js';
import { distance } from './judge.js';
import { fillsSize, isKnownSize, isWholeFrame, nearestSize } from './label-sizes.js';
import { CLEAR } from './white.js';

/** A cut line stands at most this far outside the frame of its label, pt (12 mm; common practice, no source). */
const CUT_LINE = mmToPt(12);
/** Share of the edged box that the looser one must cover to be the same answer. */
const MOSTLY = 0.8;

/**
 * Leaves away answers for which another one shows the edge: ink around a frame or a picture with the same codes, a picture that has nothing but white
 * paper around a frame, a frame that fills a picture of a known size whose own edge can be seen, a frame with nothing but white paper up to a cut line,
 * and whatever is a whole label with nothing but closed units beside it: its receipt, a coupon.
 * @param isShown whether one can see on the page where a picture ends
 */
export function withShownEdges(
  judged: readonly Judged[],
  blobs: readonly Box[],
  units: readonly Box[] = [],
  isShown: (box: Box) => boolean = () => false,
): readonly Judged[] {
  const edged = judged.filter(({ edge, score }) => (edge === 'frame' || edge === 'picture') && score >= LEAST);
  const whole = judged.filter((each) => each.score >= LEAST && isWhole(each));
  return judged.filter(
    (each) =>
      !edged.some((other) => other !== each && hasCodesOf(other, each) && showsEdgeOf(other, each, blobs, isShown)) &&
      !whole.some((other) => other !== each && isBesideUnits(each, other, blobs, units)),
  );
}

/** Whether an edged answer has the codes of a looser one, or all but matrix codes outside a whole frame, or far outside one of another size. */
function hasCodesOf(edged: Judged, loose: Judged): boolean {
  if (edged.codes.length === loose.codes.length) return true;
  const others = loose.codes.filter((code) => !contains(edged.box, code.box, 6));
  if (!others.every(({ kind }) => kind === 'matrix')) return false;
  const isFar = (): boolean => others.every(({ box }) => distance(edged.box, box) > CLEAR);
  return isWholeFrame(edged) || (edged.edge === 'frame' && edged.codes.some(({ kind }) => kind === 'linear') && isFar());
}

/** Whether an answer fills a known size by itself. */
const isWhole = ({ edge, box }: Judged): boolean =>
  edge === 'frame' ? isKnownSize(box) : edge === 'ink' && fillsSize(box.width, box.height);

/** Whether an answer is a whole label and nothing else but closed units; of two frames the outer one is drawn around both. */
const isBesideUnits = (each: Judged, label: Judged, blobs: readonly Box[], units: readonly Box[]): boolean =>
  (each.edge === 'ink' || (each.edge === 'picture' && label.edge === 'frame')) &&
  area(each.box) > area(label.box) &&
  contains(each.box, label.box, 1.5) &&
  addsOnlyUnits(each.box, label.box, blobs, units);

function showsEdgeOf(edged: Judged, loose: Judged, blobs: readonly Box[], isShown: (box: Box) => boolean): boolean {
  if (loose.edge === 'ink') return area(intersection(edged.box, loose.box) ?? NOTHING) >= MOSTLY * area(edged.box);
  if (loose.edge === 'frame' && edged.edge === 'frame') {
    const around = grow(loose.box, CUT_LINE);
    return contains(edged.box, loose.box, -1) && contains(around, edged.box) && isWhiteBetween(edged.box, loose.box, blobs);
  }
  if (loose.edge === 'frame' && edged.edge === 'picture') return isMarginAround(loose.box, edged.box) && isShown(edged.box);
  if (loose.edge !== 'picture' || edged.edge !== 'frame' || !contains(loose.box, edged.box, 1)) return false;
  return !(isMarginAround(edged.box, loose.box) && isShown(loose.box)) && isWhiteBetween(loose.box, edged.box, blobs);
}

/**
 * Whether a frame fills a picture of a known size but for a border, or stands in its middle with an even one: such a picture on paper of another
 * tint is the label, and was placed as such.
 */
function isMarginAround(frame: Box, picture: Box): boolean {
  if (!contains(picture, frame, 1) || !contains(frame, grow(picture, -BORDER))) return false;
  const { likeness } = nearestSize(picture.width, picture.height);
  const [off, down] = [centre(frame).x - centre(picture).x, centre(frame).y - centre(picture).y];
  return likeness >= PLACED || (likeness >= SCALED && Math.max(Math.abs(off), Math.abs(down)) <= CENTRED);
}

/** The widest white border of a label's picture, pt (10 mm; common practice, no source). */
const BORDER = mmToPt(10);
/** A picture placed at a known size is this like it: its pixels may not fill the size to the last. */
const PLACED = 0.97;
/** The same of one placed at 90 to 110 %, and how far (pt) the middle of a frame in its middle may be off. */
const SCALED = 0.8;
const CENTRED = 3;

/** Whether all ink inside the outer box is inside the inner one, or is the outer one's own line. */
function isWhiteBetween(outer: Box, inner: Box, blobs: readonly Box[]): boolean {
  const core = grow(inner, 1.5);
  const isLine = (blob: Box): boolean => Math.min(blob.width, blob.height) < LINE || contains(blob, core);
  return blobs.every((blob) => !contains(outer, blob, 1) || contains(core, blob) || isLine(blob));
}

/** Dashes and rules are thinner than this, pt; no line of type is. */
const LINE = 3;

const NOTHING: Box = { x: 0, y: 0, width: 0, height: 0 };
