import type { Reason } from '../sheet/sheet.js';
import type { AddressCheck } from './compare-address.js';
import {
  addressDiffers,
  incomplete,
  labelTwice,
  notToShip,
  otherParcels,
  otherSlip,
  sameNumber,
  sameParcel,
  tooOld,
  twoLabels,
  wrongCount,
} from './conflicts.js';
import type { Finding } from './find-orders.js';
import { foldedLine } from './fold.js';
import { daysBetween, foldedLabelDate } from './label-date.js';
import type { ChannelRules } from './matching.js';
import type { Order } from './order.js';
import type { OrderIndex } from './order-index.js';
import { compareNatural } from './natural.js';
import type { ParcelOf } from './parcel-of.js';
import type { ReadLabel } from './read-label.js';

/** An outbound label that was found to be of a bundle. */
export interface Claim {
  readonly label: ReadLabel;
  readonly finding: Finding & { readonly kind: 'found' };
  /** Which of how many parcels it says that it is. */
  readonly says: ParcelOf | undefined;
}

/** What is against the label itself, its orders known: number, status, address. */
export function againstLabel(index: OrderIndex, { label, finding }: Claim, addresses: AddressCheck): readonly Reason[] {
  const reasons: Reason[] = [];
  const bundle = index.bundles[finding.bundle]?.orders ?? [];
  for (const order of byNumber(ordersAt(index, finding.orders))) {
    if (order.differsAt !== undefined) reasons.push(sameNumber(order));
    if (order.state !== 'to-ship') reasons.push(notToShip(order, order.state));
    else if (order.incomplete === true) reasons.push(incomplete(order));
  }
  // An address that found the order is the order's.
  if (finding.by !== 'address' && addresses.differs(label, finding.orders, bundle))
    reasons.push(addressDiffers(ordersAt(index, finding.orders)));
  return reasons;
}

/**
 * What is against the channel's own slip behind a label: it names orders, by number or tracking number, and none of those in this parcel. One that names no
 * order at all says nothing.
 */
export function againstSlip(index: OrderIndex, { label, finding }: Claim): readonly Reason[] {
  const { channel, slip = [] } = label.facts;
  const numbers = index.numbers.get(channel);
  const named = slip.map(({ codes, lines }) => [
    ...(numbers?.inLines(lines.map(foldedLine)) ?? []),
    ...(numbers?.inCodes(codes) ?? []),
    ...index.tracking.within(codes).flatMap((key) => index.tracking.get(key)),
  ]);
  const all = new Set(named.flat());
  const bundle = index.bundles[finding.bundle]?.orders ?? [];
  const page = slip[named.findIndex((orders) => orders.length > 0)];
  if (!page || bundle.some((order) => all.has(order))) return [];
  return [
    otherSlip(
      ordersAt(index, finding.orders),
      ordersAt(
        index,
        [...all].sort((a, b) => a - b),
      ),
      page.shown,
    ),
  ];
}

/** What is against the age of a label; a date that it doesn't clearly say is none. */
export function againstAge({ lines }: ReadLabel, { maxAge }: ChannelRules, today: string): readonly Reason[] {
  if (maxAge === undefined) return [];
  const date = foldedLabelDate(lines.map(({ text }) => text));
  const days = date === undefined ? undefined : daysBetween(date, today);
  return date !== undefined && days !== undefined && days > maxAge ? [tooOld(date, days, maxAge)] : [];
}

/**
 * What is against the labels of one bundle together, in the order of `claims`: a tracking number on two of them; more or fewer labels than
 * parcels, or, where those are right, labels that say `parcel 1 of 3` of other parcels. Labels with one tracking number count once.
 */
export function againstCount(index: OrderIndex, bundle: number, claims: readonly Claim[]): readonly (readonly Reason[])[] {
  const byTracking = new Map<string, Claim[]>();
  for (const claim of claims) {
    const { tracking } = claim.finding;
    if (tracking !== undefined) byTracking.set(tracking, [...(byTracking.get(tracking) ?? []), claim]);
  }
  const twice = [...byTracking].filter(([, same]) => same.length > 1);
  const labels = claims.length - twice.reduce((sum, [, same]) => sum + same.length - 1, 0);
  const { parcels = 1, orders = [] } = index.bundles[bundle] ?? {};
  const bundled = ordersAt(index, orders);
  const count = labels === parcels ? [] : [parcels === 1 ? twoLabels(bundled, labels) : wrongCount(bundled, labels, parcels)];
  return claims.map((claim) => {
    const same = twice.find(([tracking]) => tracking === claim.finding.tracking);
    if (!same) return count.length > 0 ? count : againstWords(claim, claims, bundled, parcels);
    const others = same[1].filter((other) => other !== claim).map(({ label }) => label.facts.shown);
    return [labelTwice(same[0], others.sort()), ...count];
  });
}

/** A label that is bought by itself says `1 of 1` whatever goes with it; only of several parcels a label knows. */
function againstWords({ says }: Claim, claims: readonly Claim[], orders: readonly Order[], parcels: number): readonly Reason[] {
  if (says === undefined || says.of === 1) return [];
  if (says.of !== parcels) return [otherParcels(orders, says.of, parcels)];
  const alike = claims.filter((other) => other.says?.number === says.number && other.says.of === says.of);
  return alike.length > 1 ? [sameParcel(orders, says.number, says.of)] : [];
}

/** By number, so that the order of the files changes nothing. */
export const byNumber = (orders: readonly Order[]): readonly Order[] =>
  orders.toSorted((a, b) => compareNatural(a.number, b.number) || compareNatural(a.id, b.id));

export const ordersAt = (index: OrderIndex, indexes: readonly number[]): readonly Order[] =>
  indexes.flatMap((each) => index.orders[each] ?? []);
