import { contains, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { LINEAR } from '../reading/codes.js';
import type { Code, SourcePage } from '../reading/source.js';
import type { Judged } from './candidate.js';
import { inkBlobs } from './ink-blobs.js';
import { isWholeLabel } from './label-sizes.js';
import { isTrackingLike } from './strength.js';

/**
 * Bars that go over this share of a label's short side, and are so high (pt, 20 mm), are a carrier's: those of vouchers, tickets, receipts and forms are smaller. Of 110 labels as
 * pictures (`test/samples/foreign`) 95 have such, of 38 papers without label (`test/samples/without-label`) four (common practice, no source).
 */
const CARRIERS_BARS = { share: 0.65, high: mmToPt(20) };
/** Words and pieces of lines on a label: two addresses, a service, what stands below its bars. Those four papers have up to twelve. */
const LEAST_PIECES = 13;
/** Type by its ink: so high (pt), and wider than a letter or two. */
const TYPE = { least: 4, most: 26, wide: 12 };

/**
 * Whether a picture without words is a label by its looks: of a known size, with bars as large as only carriers draw them that say a number, and as much type as a label
 * has. With a second code it need not be read …
 */
export const isUnmistakable = (label: Judged, codes: readonly Code[], page: SourcePage): boolean =>
  new Set(codes.map(({ bytes }) => bytes)).size >= 2 && looksLikeLabel(label, codes, page);

/** … and without one it is believed where nobody can read it. */
export function looksLikeLabel(label: Judged, codes: readonly Code[], page: SourcePage): boolean {
  const { box, codes: areas } = label;
  const hasNumber = codes.some((code) => LINEAR.includes(code.symbology) && isTrackingLike(code));
  if (!isWholeLabel(label) || !hasNumber || !hasCarriersBars(label)) return false;
  return (
    piecesOfType(
      box,
      areas.map((area) => area.box),
      page,
    ) >= LEAST_PIECES
  );
}

/** Whether bars on a candidate are as large as only carriers draw them. */
export const hasCarriersBars = ({ box, codes }: Judged): boolean =>
  codes.some(({ kind, box: { width, height } }) => {
    const [high, long] = [Math.min(width, height), Math.max(width, height)];
    return kind === 'linear' && long >= CARRIERS_BARS.share * Math.min(box.width, box.height) && high >= CARRIERS_BARS.high;
  });

function piecesOfType(box: Box, codes: readonly Box[], page: SourcePage): number {
  return inkBlobs(page.ink()).filter((blob) => {
    const [short, long] = [Math.min(blob.width, blob.height), Math.max(blob.width, blob.height)];
    return (
      short >= TYPE.least &&
      short <= TYPE.most &&
      long > TYPE.wide &&
      contains(box, blob, 1) &&
      !codes.some((code) => contains(code, blob, 8))
    );
  }).length;
}
