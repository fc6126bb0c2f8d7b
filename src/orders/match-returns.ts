import type { Reason } from '../sheet/sheet.js';
import { cluesDiffer, heldWith, noOrder, sameNumber } from './conflicts.js';
import type { Finding } from './find-orders.js';
import { byNumber, ordersAt, type Claim } from './judge-claims.js';
import type { ChannelRules, LabelEnd } from './matching.js';
import type { OrderIndex } from './order-index.js';
import type { ReadLabel } from './read-label.js';

interface Asked {
  readonly rules: ChannelRules;
  readonly finding: Finding;
}

/**
 * Where the return labels end. One whose outbound label is known goes where that goes: in its parcel, held with it, or printed without an
 * order; it is held when it names another order than its outbound label. One without goes with the first parcel of the order that it
 * names; where that order has no parcel it is printed alone. Its date and the order's status are not asked: returns of what is shipped are
 * the rule.
 * @param ask looks for a label's orders; undefined for channels without order files
 */
export function placeReturns(
  index: OrderIndex,
  labels: readonly ReadLabel[],
  ends: ReadonlyMap<ReadLabel, LabelEnd>,
  claims: ReadonlyMap<number, readonly Claim[]>,
  ask: (label: ReadLabel) => Asked | undefined,
): ReadonlyMap<ReadLabel, LabelEnd> {
  const outbound = new Map(labels.filter(({ facts }) => !facts.isReturn).map((label) => [label.facts.id, label]));
  const claimOf = new Map([...claims.values()].flat().map((claim) => [claim.label, claim]));
  const placed = new Map<ReadLabel, LabelEnd>();
  for (const label of labels) {
    if (!label.facts.isReturn) continue;
    const { id } = label.facts;
    const asked = ask(label);
    const held = (orders: readonly number[], ...reasons: readonly Reason[]): LabelEnd => ({
      kind: 'held',
      label: id,
      orders: ordersAt(
        index,
        orders.toSorted((a, b) => a - b),
      ).map((order) => order.id),
      reasons,
    });
    const mate = label.facts.outbound === undefined ? undefined : outbound.get(label.facts.outbound);
    placed.set(label, asked ? (mate ? withMate(mate, asked) : alone(label, asked)) : { kind: 'untouched', label: id });

    function withMate(mate: ReadLabel, { finding }: Asked): LabelEnd {
      const end = ends.get(mate);
      const claim = claimOf.get(mate);
      const isSpecific = finding.kind === 'found' && (finding.by === 'order-number' || finding.by === 'tracking');
      if (claim && isSpecific && finding.bundle !== claim.finding.bundle) {
        const [own, theirs] = [ordersAt(index, finding.orders), ordersAt(index, claim.finding.orders)];
        return held([...finding.orders, ...claim.finding.orders], cluesDiffer(finding.by, own, claim.finding.by, theirs));
      }
      if (end?.kind === 'packed') return { kind: 'return', label: id, orders: end.orders, parcel: mate.facts.id };
      if (end?.kind !== 'held') return { kind: end?.kind === 'untouched' ? 'untouched' : 'without-order', label: id };
      const reason = claim ? heldWith(ordersAt(index, claim.finding.orders), mate.facts.shown) : (end.reasons[0] ?? noOrder());
      return { kind: 'held', label: id, orders: end.orders, reasons: [reason] };
    }

    function alone({ facts }: ReadLabel, { rules, finding }: Asked): LabelEnd {
      if (finding.kind === 'conflict') return held(finding.orders, finding.reason);
      if (finding.kind === 'none') return rules.withoutOrder === 'hold' ? held([], noOrder()) : { kind: 'without-order', label: facts.id };
      const inDoubt = byNumber(ordersAt(index, finding.orders).filter(({ differsAt }) => differsAt !== undefined));
      if (inDoubt.length > 0) return held(finding.orders, ...inDoubt.map(sameNumber));
      const own = (claims.get(finding.bundle) ?? []).map((claim) => claim.label);
      const packed = own.find((each) => ends.get(each)?.kind === 'packed');
      const orders = ordersAt(index, finding.orders).map((order) => order.id);
      if (!packed && own[0])
        return held(finding.orders, heldWith(ordersAt(index, finding.orders), own.map((each) => each.facts.shown).sort()[0] ?? ''));
      return { kind: 'return', label: facts.id, orders, parcel: packed?.facts.id };
    }
  }
  return placed;
}
