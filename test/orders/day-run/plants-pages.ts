import { MANY, SHEETS, SINGLES, trackingOf, type RunDay, type RunOrder } from './run-day.js';

/** Says what holds a label, and that its order waits with it. */
function heldAndLoose(day: RunDay, what: string, code: Parameters<RunDay['plant']>[2], order: RunOrder): void {
  day.plant(what, 'label', code, order);
  day.plant(what, 'loose', code, order);
}

/** Return labels, customs forms, labels that count parcels, labels in the wrong place, writing that no typeface has. */
export const PAGE_PLANTS: readonly ((day: RunDay) => void)[] = [
  (day) => {
    // Good ones: with the parcel of its order, and alone where that has none.
    const order = day.pair(SINGLES, 'packed');
    day.label([order], day.returning(order), 'ready', { kind: 'return' });
    const sent = day.order(SINGLES, 'not-expected', { status: 'Shipped' });
    day.label([sent], day.returning(sent), 'ready', { kind: 'return' });
    const cancelled = day.pair(SINGLES, 'held', 'held orders/cancelled', { status: 'Cancelled' });
    day.plant('a label for an order that is cancelled', 'label', 'orders/cancelled', cancelled);
    day.label([cancelled], day.returning(cancelled), 'held orders/held-with', { kind: 'return' });
    day.plant('its return label', 'label', 'orders/held-with', cancelled);
    const from = ['Corwin Unknownsender', '7 Test Bend', 'Probeville XX 71199'];
    day.label([], day.returning(order, { order: 'none', from }), 'held orders/no-order', { kind: 'return' });
    day.plant('a return label that nobody knows', 'label', 'orders/no-order', undefined);
    day.plant('a return label that nobody knows', 'loose', 'orders/no-order', undefined);
    const [a, b] = [day.pair(SINGLES, 'packed'), day.pair(SINGLES, 'packed')];
    day.label([a, b], day.returning(a, { order: `${a.number} ${b.number}` }), 'held orders/two-orders', { kind: 'return' });
    day.plant('a return label that names two orders', 'label', 'orders/two-orders', a);
  },
  (day) => {
    day.pair(SINGLES, 'packed', 'ready', {}, { kind: 'with-form' });
    const held = day.pair(SINGLES, 'held', 'held orders/refunded', { status: 'Refunded' }, { kind: 'with-form' });
    day.plant('a label with its customs form for an order that is refunded', 'label', 'orders/refunded', held);
    day.plant('its customs form', 'label', 'batch/parcel-held', held);
    const lonely = day.order(SINGLES, 'no-label');
    day.label([lonely], day.content(lonely), 'held customs-form/no-label', { kind: 'form' });
    day.plant('a customs form without a label', 'label', 'customs-form/no-label', lonely);
    day.plant('a customs form without a label', 'loose', 'orders/no-label', lonely);
  },
  (day) => {
    const labels = (order: RunOrder, ends: string, ...parcels: readonly string[]): void => {
      for (const parcel of parcels) day.label([order], day.content(order, { parcel }), ends);
    };
    labels(day.order(SINGLES, 'packed', { parcels: 2 }), 'ready', '1 OF 2', '2 OF 2');
    labels(day.order(SINGLES, 'packed', { parcels: 2 }), 'ready', '1 OF 1', '1 OF 1');
    const other = day.order(SINGLES, 'held', { parcels: 2 });
    labels(other, 'held orders/parcel-of', '1 OF 3', '2 OF 3');
    heldAndLoose(day, 'two parcels whose labels say that there are three', 'orders/parcel-of', other);
    const lone = day.order(SINGLES, 'held');
    labels(lone, 'held orders/parcel-of', '1 OF 2');
    heldAndLoose(day, 'one parcel whose label says that there are two', 'orders/parcel-of', lone);
    const same = day.order(SINGLES, 'held', { parcels: 2 });
    labels(same, 'held orders/parcel-of', '1 OF 2', '1 OF 2');
    heldAndLoose(day, 'two labels that say that they are the same parcel', 'orders/parcel-of', same);
  },
  (day) => {
    const stray = day.order(SHEETS, 'held');
    const content = day.content(stray, { order: 'none' });
    const known = day.change(stray, { tracking: [trackingOf(SINGLES, content)] });
    day.label([known], content, 'held orders/other-channel', { channel: SINGLES });
    day.plant('a label in the folder of another channel', 'label', 'orders/other-channel', known);
    const shared = day.content(day.order(MANY, 'held'), { order: 'none' });
    const tracking = [trackingOf(MANY, shared)];
    const first = day.change(day.orders.at(-1) as RunOrder, { tracking });
    const second = day.order(MANY, 'held', { tracking });
    day.label([first, second], shared, 'held orders/shared-tracking');
    day.plant('one tracking number of two buyers', 'label', 'orders/shared-tracking', first);
  },
  (day) => {
    const again = day.pair(SHEETS, 'packed', 'ready', {}, { spoiled: 'drawn-again' });
    day.plant('a label in two files that differ', 'label', 'batch/duplicate', again);
    const order = day.order(SINGLES, 'packed');
    day.label([order], day.content(order, { order: 'none', to: ['Parcel shop 12', '7 Example Street', 'Sampleton XX 00001'], postcode: '00001' }), 'ready', { fileName: `order ${order.number}` }); // prettier-ignore
    const [a, b] = [day.order(SINGLES, 'held'), day.order(SINGLES, 'held')];
    day.label([a, b], day.content(a), 'held orders/clues-differ', { fileName: `order ${b.number}` });
    day.plant('file name and order number contradict', 'label', 'orders/clues-differ', a);
  },
  (day) => {
    const plain = (name: string): RunOrder['items'] => [{ sku: 'MUG-1', name, quantity: 1, bin: 'A1' }];
    const slip = (what: string, given: Partial<RunOrder>): void =>
      day.plant(what, 'slip', 'press/substituted', day.pair(SHEETS, 'packed', 'ready', given));
    slip('an emoji in an item', { items: plain('Mug with an otter \u{1f9a6}') });
    day.plant('an emoji in an item of the pick list', 'slip', 'press/substituted', undefined);
    slip('a letter that no typeface has in an address', { cells: { Street: '7 Example Street \u{12000}' } });
    const order = day.order(SHEETS, 'packed');
    day.label([order], day.content(order));
    day.plant('an emoji in a name, which the label leaves out', 'slip', 'press/substituted', day.change(order, { cells: { Buyer: `${order.buyer} \u{1f33f}` } })); // prettier-ignore
  },
];
