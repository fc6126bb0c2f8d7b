import { contains, intersection, type Box } from '../geometry/box.js';
import type { Phrase } from '../reading/word-lines.js';
import { closedUnits } from './closed-units.js';
import { saidIn } from './kind-of-words.js';
import type { PageFacts } from './page-facts.js';

/**
 * The phrases of a page without those in frames and blocks beside its labels that call themselves adverts: a coupon says what it is itself, not what its page is. All of them where nothing
 * may be a label.
 */
export function withoutCoupons(labels: readonly { readonly box: Box }[], { page, blobs, phrases }: PageFacts): readonly Phrase[] {
  if (labels.length === 0) return phrases;
  const coupons = closedUnits(page, blobs).filter(
    (unit) =>
      labels.every(({ box }) => intersection(box, unit) === undefined) && saidIn(phrases, unit).names.some(({ kind }) => kind === 'advert'),
  );
  return coupons.length === 0 ? phrases : phrases.filter(({ box }) => !coupons.some((coupon) => contains(coupon, box, 2)));
}
