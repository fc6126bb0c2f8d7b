import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Order } from '../../../src/orders/order.js';
import { SORT_KEYS } from '../../../src/orders/sort-parcels.js';
import { mixedDay, type Day } from '../../orders/day/day.js';
import { ORDER_CHANNELS, PRINTING, WITHOUT_ORDERS, type DayLabel } from '../../orders/day/maker.js';
import { Random } from '../../orders/day/random.js';
import { documentsOf, OWN_SLIPS, type DayDocuments } from './documents.js';
import { BAD_SLIP, pipelineOf, runDay, type RanDay } from './run.js';

/** A day with what must become of it: told by the generator, never by what is tested. */
interface Truth extends DayDocuments {
  readonly day: Day;
  readonly orders: readonly Order[];
  /** Ids of labels that must be held, with the codes that each is held for. */
  readonly held: ReadonlyMap<string, readonly string[]>;
  /** Where each order must end, by id. */
  readonly places: ReadonlyMap<string, string>;
  readonly run: (orders?: readonly Order[], documents?: DayDocuments['documents']) => Promise<RanDay>;
}

function truthOf(seed: number, steps: number): Truth {
  const day = mixedDay(seed, steps);
  const random = new Random(seed + 1);
  const held = new Map<string, string[]>();
  const hold = (label: string, code: string): void => void held.set(label, [...(held.get(label) ?? []), code]);
  for (const { code, labels } of day.faults) for (const label of labels) hold(label, code);
  const places = new Map<string, string>(day.places);
  const labelsOf = (order: string): readonly string[] =>
    [...day.belongs].flatMap(([label, orders]) => (orders.includes(order) ? [label] : []));
  const touched = new Set(day.faults.flatMap(({ orders }) => orders));
  const isOutbound = (label: string): boolean => !day.labels.some(({ id, isReturn }) => id === label && isReturn);
  /** Good orders with one label, some of them with a return label. */
  const plain = [...day.belongs].filter(([label, [order = '', ...more]]) => {
    const isGood =
      !held.has(label) && more.length === 0 && labelsOf(order).filter(isOutbound).length === 1 && places.get(order) === 'packed';
    return isGood && isOutbound(label) && !touched.has(order);
  });
  const badSlips = new Set(
    plain.flatMap(([label, [order = '']]) => (channelOf(day, label) < OWN_SLIPS && random.chance(0.1) ? [order] : [])),
  );
  const breakable = new Set(plain.flatMap(([label, [order = '']]) => (badSlips.has(order) ? [] : [label])));
  // A return label in doubt holds the label whose page stands before it: the parcel comes as a whole.
  for (const { id, outbound } of day.labels) {
    if (outbound === undefined || !held.has(id)) continue;
    hold(outbound, 'batch/parcel-held');
    for (const order of day.belongs.get(outbound) ?? []) places.set(order, 'held');
  }
  const made = documentsOf(day, seed + 2, breakable);
  for (const order of badSlips) {
    places.set(order, 'held');
    for (const label of labelsOf(order).filter(isOutbound)) hold(label, 'packing-slip/order-code');
  }
  for (const [label, how] of made.broken)
    for (const order of day.belongs.get(label) ?? []) places.set(order, how === 'held' ? 'held' : 'no-label');
  const returnsOf = (order: string): readonly string[] => labelsOf(order).filter((label) => !isOutbound(label) && !held.has(label));
  for (const order of badSlips) for (const label of returnsOf(order)) hold(label, 'orders/held-with');
  // A return label beside a label that isn't printed is held with its parcel; one that names its order waits with that.
  for (const [label, how] of made.broken) {
    for (const back of (day.belongs.get(label) ?? []).flatMap(returnsOf)) {
      const isBeside = day.labels.some(({ id, outbound }) => id === back && outbound === label);
      if (isBeside) hold(back, 'batch/parcel-held');
      else if (how === 'held') hold(back, 'orders/held-with');
    }
  }
  const orders = day.orders.map((order) => (badSlips.has(order.id) ? { ...order, notes: BAD_SLIP } : order));
  const pipeline = pipelineOf(day, random.shuffled(SORT_KEYS.filter((key) => key !== 'as-downloaded')).slice(0, random.below(4)));
  const run: Truth['run'] = (given = orders, documents = made.documents) => runDay(pipeline, documents, given);
  return { ...made, documents: made.documents, labelOf: made.labelOf, broken: made.broken, day, orders, held, places, run };
}

const channelOf = ({ labels }: Day, id: string): number => labels.find((label) => label.id === id)?.channel ?? -1;

/** Each page of the stacks in words: whose parcel, what it is, what a slip says. */
function pagesOf(
  { labelOf, documents }: DayDocuments,
  { collated, slips }: RanDay,
): readonly { number: number; role: string; label: string; says: string }[] {
  return collated.stacks.flatMap(({ pages }) =>
    pages.map(({ document, item, number }) => {
      const slip = slips[document - documents.length];
      const label = labelOf.get(`${document} ${item.id}`)?.id ?? (slip ? '' : `${document}`);
      const says = slip
        ? [
            [slip.orderNumber, ...slip.together].sort().join(' '),
            `${slip.parcel.number}/${slip.parcel.of}`,
            JSON.stringify(slip.items),
          ].join(' ')
        : '';
      return { number, role: item.role, label, says };
    }),
  );
}

const anyDay = fc.tuple(fc.nat(1_000_000), fc.integer({ min: 1, max: 14 }));
/** Goes through random days; a failure names seed and steps. */
const forDays = (numRuns: number, law: (truth: Truth, random: Random) => Promise<void>): Promise<void> =>
  fc.assert(
    fc.asyncProperty(anyDay, ([seed, steps]) => law(truthOf(seed, steps), new Random(seed + 3))),
    { numRuns },
  );

describe('for any day, from what the workers give to the plan of the stacks', () => {
  it('each order is in exactly one place, the one it belongs in', () =>
    forDays(150, async ({ orders, places, run }) => {
      const { record } = await run();
      expect(record.each.map(({ place }, at) => `${orders[at]?.id} ${place}`)).toEqual(orders.map(({ id }) => `${id} ${places.get(id)}`));
      const { orders: all, ...sums } = record.sums;
      expect(Object.values(sums).reduce((sum, each) => sum + each, 0)).toBe(all);
      for (const { place, parcels } of record.each) expect(parcels.length > 0).toBe(place === 'packed');
    }));

  it('each label is in exactly one place: once in a stack, or held for the reason that was planted, or failed', () =>
    forDays(150, async (truth) => {
      const { day, held, broken, labelOf, documents } = truth;
      const ran = await truth.run();
      const printed = pagesOf(truth, ran).flatMap(({ label, role }) => (role === 'label' || role === 'return-label' ? [label] : []));
      const good = day.labels.filter(({ id }) => !held.has(id) && !broken.has(id));
      expect(printed.toSorted()).toEqual(good.map(({ id }) => id).sort());
      for (const [document, items] of ran.collated.items.entries()) {
        for (const { id, state } of items) {
          const label = labelOf.get(`${document} ${id}`);
          if (!label) continue;
          if (broken.has(label.id)) expect(state).toEqual(documents[document]?.items.find((each) => each.id === id)?.state);
          else if (held.has(label.id))
            expect(state.kind === 'held' && held.get(label.id)?.includes(state.code), `${label.id} ${JSON.stringify(state)}`).toBe(true);
          else expect(state).toEqual({ kind: 'ready' });
        }
      }
    }));

  it('all that is given is in the stacks or not printed for a reason, and the sums add up', () =>
    forDays(150, async (truth) => {
      const { collated, wrong, day } = await truth.run();
      expect(wrong).toEqual([]);
      const ends = collated.items.flat().map(({ state }) => state);
      expect(ends.length).toBe(truth.documents.reduce((sum, { items }) => sum + items.length, 0));
      for (const state of ends) expect(state.kind === 'ready' || state.message !== '').toBe(true);
      const pages = collated.stacks.flatMap((stack) => stack.pages);
      const isMade = ({ document }: { document: number }): boolean => document >= truth.documents.length;
      expect(pages.filter((page) => !isMade(page)).length).toBe(ends.filter(({ kind }) => kind === 'ready').length);
      expect(new Set(pages.map(({ document, item }) => `${document} ${item.id}`)).size).toBe(pages.length);
      expect(pages.filter(isMade).length).toBe(day.slips.reduce((sum, { items }) => sum + items.length, 0));
    }));

  it('a parcel is its label, then the slip of its own orders, then its other pages; numbers run on', () =>
    forDays(150, async (truth) => {
      const { day, orders } = truth;
      const numberOf = new Map(orders.map(({ id, number }) => [id, number]));
      const ran = await truth.run();
      const parcels = new Map<number, { role: string; label: string; says: string }[]>();
      for (const page of pagesOf(truth, ran)) parcels.set(page.number, [...(parcels.get(page.number) ?? []), page]);
      expect([...parcels.keys()]).toEqual(Array.from(parcels, (_, at) => at + 1));
      for (const pages of parcels.values()) {
        const roles = pages.map(({ role }) => role).join(' ');
        expect(roles).toMatch(/^(?:label(?: slip)*(?: customs-form)?(?: return-label)*|return-label)$/);
        const [first] = pages;
        const label = day.labels.find(({ id }) => id === first?.label) as DayLabel;
        const own = (day.belongs.get(label.id) ?? []).map((id) => numberOf.get(id) ?? '').sort();
        const wantsSlip = label.channel < OWN_SLIPS && !label.isReturn;
        const slips = pages.filter(({ role }) => role === 'slip');
        expect(slips.length > 0).toBe(!label.isReturn && label.channel <= OWN_SLIPS);
        if (wantsSlip) for (const { says } of slips) expect(says).toMatch(own.join(' '));
        // A return label lies with the order that it is for.
        for (const { label: back } of pages.filter(({ role }) => role === 'return-label'))
          expect(day.belongs.get(back)).toEqual(day.belongs.get(label.id));
      }
      expect(
        ran.packed.map(
          ({ number, orders: all }) =>
            `${number} ${all
              .map(({ id }) => id)
              .sort()
              .join(' ')}`,
        ),
      ).toEqual(
        [...parcels].flatMap(([number, [first]]) =>
          first?.role === 'label' ? [`${number} ${[...(day.belongs.get(first.label) ?? [])].sort().join(' ')}`] : [],
        ),
      );
    }));

  it('the order of the rows changes nothing in the stacks, nor in what is left over', () =>
    forDays(100, async (truth, random) => {
      const [once, again] = [await truth.run(), await truth.run(random.shuffled(truth.orders))];
      expect(pagesOf(truth, again)).toEqual(pagesOf(truth, once));
      expect(again.collated.stacks).toEqual(once.collated.stacks);
      expect(again.collated.items).toEqual(once.collated.items);
      const sorted = (all: readonly unknown[]): readonly string[] => all.map((each) => JSON.stringify(each)).sort();
      expect(sorted(again.record.each)).toEqual(sorted(once.record.each));
      expect(sorted(again.record.looseEnds)).toEqual(sorted(once.record.looseEnds));
      expect(sorted(again.packed)).toEqual(sorted(once.packed));
    }));

  it('a second run of the same makes the same', () =>
    forDays(40, async (truth) => {
      const [once, again] = [await truth.run(), await truth.run()];
      const parts = ({ day, ...rest }: RanDay): unknown => ({
        ...rest,
        items: day.items,
        matched: day.matched,
        diagnostics: day.diagnostics,
      });
      expect(parts(again)).toEqual(parts(once));
    }));

  it('taking an order out changes the pages of that order only', () =>
    forDays(150, async (truth, random) => {
      const { day, held, places } = truth;
      const touched = new Set(day.faults.flatMap(({ orders }) => orders));
      // A label with another buyer's address is known by that buyer's order: without it all else is the same no more.
      if (day.faults.some(({ code }) => code === 'orders/address-differs')) return;
      const free = truth.orders.filter(({ id, together }) => {
        const mates = [...day.belongs.values()].filter((all) => all.includes(id));
        return !touched.has(id) && together.length === 0 && mates.every((all) => all.length === 1);
      });
      if (free.length === 0) return;
      const out = random.pick(free);
      const own = new Set([...day.belongs].flatMap(([label, [order]]) => (order === out.id ? [label] : [])));
      const [once, without] = [await truth.run(), await truth.run(truth.orders.filter((order) => order !== out))];
      const others = (ran: RanDay): readonly string[] => {
        const pages = pagesOf(truth, ran);
        const numbers = new Set(pages.filter(({ label }) => own.has(label)).map(({ number }) => number));
        return pages.filter(({ number }) => !numbers.has(number)).map(({ role, label, says }) => `${role} ${label} ${says}`);
      };
      expect(others(without)).toEqual(others(once));
      expect(without.wrong).toEqual([]);
      const left = pagesOf(truth, without).filter(({ label, role }) => own.has(label) && role === 'label');
      const prints =
        out.channel === PRINTING ? [...own].filter((label) => !truth.broken.has(label) && !held.has(label) && isOutbound(day, label)) : [];
      expect(left.map(({ label }) => label).sort()).toEqual(prints.sort());
      const placed = without.record.each.map(({ number, place }) => `${number} ${place}`);
      expect(placed).toEqual(truth.orders.filter((order) => order !== out).map(({ id, number }) => `${number} ${places.get(id)}`));
    }));

  it('taking a document out leaves its orders without a label, and all else as it was', () =>
    forDays(100, async (truth, random) => {
      const { day, labelOf, documents, places } = truth;
      const touched = new Set(day.faults.flatMap(({ labels }) => labels));
      const labelsIn = (document: number): readonly DayLabel[] =>
        [...labelOf].flatMap(([id, label]) => (id.startsWith(`${document} `) ? [label] : []));
      const free = documents.flatMap((_, at) => {
        const labels = labelsIn(at);
        const all = labels.every(
          ({ id, channel }) => channel < ORDER_CHANNELS && !touched.has(id) && (day.belongs.get(id) ?? []).length === 1,
        );
        // All labels of its orders are in it.
        const orders = labels.flatMap(({ id }) => day.belongs.get(id) ?? []);
        const whole = [...day.belongs].every(([id, [order = '']]) => !orders.includes(order) || labels.some((label) => label.id === id));
        return labels.length > 0 && all && whole ? [at] : [];
      });
      if (free.length === 0) return;
      const at = random.pick(free);
      const out = new Set(labelsIn(at).flatMap(({ id }) => day.belongs.get(id) ?? []));
      const without = await truth.run(truth.orders, documents.toSpliced(at, 1));
      expect(without.wrong).toEqual([]);
      expect(without.record.each.map(({ place }) => place)).toEqual(
        truth.orders.map(({ id }) => (out.has(id) ? 'no-label' : places.get(id))),
      );
    }));

  it('days are mixed enough: all faults, all kinds of places, documents of several labels, broken ones', () => {
    const seen = new Set<string>();
    for (let seed = 0; seed < 200; seed++) {
      const truth = truthOf(seed, 10);
      for (const { code } of truth.day.faults) seen.add(code);
      for (const place of truth.places.values()) seen.add(place);
      for (const how of truth.broken.values()) seen.add(how);
      if (truth.documents.some(({ items }) => items.filter(({ role }) => role === 'label').length > 2)) seen.add('several labels');
      if (truth.day.labels.some(({ channel }) => channel === WITHOUT_ORDERS)) seen.add('without orders');
      if ([...truth.held.values()].some((codes) => codes.includes('packing-slip/order-code'))) seen.add('a bad slip');
    }
    expect([...seen].filter((each) => each.startsWith('orders/')).length).toBeGreaterThanOrEqual(20);
    expect([...seen]).toEqual(
      expect.arrayContaining(['packed', 'held', 'no-label', 'not-expected', 'failed', 'several labels', 'without orders', 'a bad slip']),
    );
  });
});

const isOutbound = ({ labels }: Day, id: string): boolean => labels.find((label) => label.id === id)?.isReturn === false;
