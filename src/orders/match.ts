import type { Reason } from '../sheet/sheet.js';
import { AddressCheck } from './compare-address.js';
import { heldWith, noOrder } from './conflicts.js';
import { findOrders, type Finding } from './find-orders.js';
import { againstAge, againstCount, againstLabel, againstSlip, ordersAt, type Claim } from './judge-claims.js';
import type { LabelFacts } from './label-facts.js';
import { placeReturns } from './match-returns.js';
import type { ChannelRules, LabelEnd, MatchedParcel, Matching, MatchOptions } from './matching.js';
import type { Order } from './order.js';
import { indexOrders, type OrderIndex } from './order-index.js';
import { parcelOf } from './parcel-of.js';
import { compareNatural } from './natural.js';
import { ReadLabel } from './read-label.js';

/**
 * Says which label is whose. Pure: the same orders and labels give the same answer, whatever order they are given in (only the numbers of
 * parcels follow the order of the labels).
 *
 * A label is found an order by its strongest clue (see `findOrders`: tracking number, order number, file name, postcode with name) among
 * the orders of its own channel. Then it is held, with a reason each, when
 * - its clues contradict each other, or one of them names several orders;
 * - its order is there twice and not alike (see `mergeOrders`), or expects no label (cancelled, refunded, shipped, picked up, digital);
 * - name and postcode on it are another's (see `AddressCheck.differs`), or the channel's own slip behind it names another order;
 * - its order has more or fewer labels than parcels, or it says that it is one of more or fewer, or its tracking number is on another label;
 * - it says that it is older than the channel takes;
 * - no order is found, and the channel holds such labels.
 * With a held label all labels of the same orders are held. Labels of a channel without order files are left untouched.
 *
 * A return label goes with the outbound label of its parcel, or with the order that it names, and counts as no parcel.
 * Bad input never throws: what can't be compared is no clue.
 */
export function matchOrders(orders: readonly Order[], labels: readonly LabelFacts[], options: MatchOptions): Matching {
  const index = indexOrders(orders);
  const read = labels.map((facts) => new ReadLabel(facts));
  const addresses = new AddressCheck(index, read, options.ownAddress);
  const rulesOf = (label: ReadLabel): ChannelRules | undefined => {
    const rules = options.channels[label.facts.channel];
    return rules?.hasOrders === true ? rules : undefined;
  };
  const inFile = labelsByFile(read);
  const find = (label: ReadLabel, rules: ChannelRules): Finding => findOrders(index, label, rules, inFile.get(fileOf(label)) ?? 1);

  const ends = new Map<ReadLabel, LabelEnd>();
  const claims = new Map<number, Claim[]>();
  const hold = (label: ReadLabel, indexes: readonly number[], reasons: readonly Reason[]): void =>
    void ends.set(label, { kind: 'held', label: label.facts.id, orders: idsOf(index, indexes), reasons });

  const reasonsOf = new Map<ReadLabel, readonly Reason[]>();
  for (const label of read) {
    if (label.facts.isReturn) continue;
    const rules = rulesOf(label);
    if (!rules) {
      ends.set(label, { kind: 'untouched', label: label.facts.id });
      continue;
    }
    const age = againstAge(label, rules, options.today);
    const finding = find(label, rules);
    if (finding.kind === 'found') {
      const claim: Claim = { label, finding, says: parcelOf(label.lines) };
      const known = claims.get(finding.bundle);
      if (known) known.push(claim);
      else claims.set(finding.bundle, [claim]);
      reasonsOf.set(label, [...againstLabel(index, claim, addresses), ...againstSlip(index, claim), ...age]);
    } else if (finding.kind === 'conflict') hold(label, finding.orders, [finding.reason, ...age]);
    else if (rules.withoutOrder === 'hold') hold(label, [], [noOrder(), ...age]);
    else if (age.length > 0) hold(label, [], age);
    else ends.set(label, { kind: 'without-order', label: label.facts.id });
    label.forget();
  }

  const parcels = new Map<ReadLabel, MatchedParcel>();
  for (const [bundle, own] of claims) {
    const counted = againstCount(index, bundle, own);
    const reasons = own.map(({ label }, at) => [...(reasonsOf.get(label) ?? []), ...(counted[at] ?? [])]);
    const cause = own
      .filter((_, at) => (reasons[at] ?? []).length > 0)
      .map(({ label }) => label.facts.shown)
      .sort()[0];
    const asSaid = own.every(({ says }) => says?.of === own.length);
    for (const [at, { label, finding, says }] of own.entries()) {
      const found = reasons[at] ?? [];
      if (cause !== undefined) hold(label, finding.orders, found.length > 0 ? found : [heldWith(ordersAt(index, finding.orders), cause)]);
      else {
        const { by, also } = finding;
        const packed = { label: label.facts.id, orders: idsOf(index, ordersOfParcel(index, own, finding)), by, also };
        ends.set(label, { kind: 'packed', ...packed });
        parcels.set(label, { ...packed, number: asSaid && says ? says.number : at + 1, of: own.length, returns: [] });
      }
    }
  }
  const returns = placeReturns(index, read, ends, claims, (label) => {
    const rules = rulesOf(label);
    return rules && { rules, finding: find(label, rules) };
  });
  const goWith = new Map<string, string[]>();
  for (const end of returns.values())
    if (end.kind === 'return' && end.parcel !== undefined) goWith.set(end.parcel, [...(goWith.get(end.parcel) ?? []), end.label]);

  return {
    parcels: read.flatMap((label) => parcels.get(label) ?? []).map((parcel) => ({ ...parcel, returns: goWith.get(parcel.label) ?? [] })),
    labels: read.map((label) => returns.get(label) ?? ends.get(label) ?? { kind: 'untouched', label: label.facts.id }),
  };
}

const fileOf = ({ facts }: ReadLabel): string => `${facts.channel} ${facts.fileName}`;

function labelsByFile(labels: readonly ReadLabel[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const label of labels) if (!label.facts.isReturn) counts.set(fileOf(label), (counts.get(fileOf(label)) ?? 0) + 1);
  return counts;
}

/** By number, so that the order of an export's rows changes nothing. */
const idsOf = (index: OrderIndex, indexes: readonly number[]): readonly string[] =>
  ordersAt(index, indexes)
    .toSorted((a, b) => compareNatural(a.number, b.number) || compareNatural(a.id, b.id))
    .map(({ id }) => id);

/** When the parcels together would leave an order of the bundle in none of them, it may be in each: all slips go in all. */
function ordersOfParcel(index: OrderIndex, claims: readonly Claim[], finding: Claim['finding']): readonly number[] {
  const all = index.bundles[finding.bundle]?.orders ?? [];
  const covered = new Set(claims.flatMap((claim) => claim.finding.orders));
  return all.every((order) => covered.has(order)) ? finding.orders : all;
}
