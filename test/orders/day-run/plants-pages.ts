import { MANY, PAIRS, SHEETS, SINGLES, type Plant, type RunDay, type RunOrder } from './run-day.js';

const labelsSaying = (day: RunDay, order: RunOrder, ends: string, ...parcels: readonly string[]): void => {
  for (const parcel of parcels) day.label([order], day.content(order, { parcel }), ends);
};

/** Labels that say of how many parcels they are. */
const PARCEL_PLANTS: readonly Plant[] = [
  (day) => labelsSaying(day, day.order(SINGLES, 'packed', { parcels: 2 }), 'ready', '1 OF 2', '2 OF 2'),
  (day) => labelsSaying(day, day.order(SINGLES, 'packed', { parcels: 2 }), 'ready', '1 OF 1', '1 OF 1'),
  ...(
    [
      ['two parcels whose labels say that there are three', 2, '1 OF 3', '2 OF 3'],
      ['two parcels, one of whose labels says that there are three', 2, '1 OF 3', '2 OF 3'],
      ['one parcel whose label says that there are two', 1, '1 OF 2'],
      ['two labels that say that they are the same parcel', 2, '1 OF 2', '1 OF 2'],
    ] as const
  ).map(([what, parcels, ...says]): Plant => (day) => {
    const order = day.order(SINGLES, 'held', { parcels });
    labelsSaying(day, order, 'held orders/parcel-of', ...says);
    day.plantAt(['label', 'loose'], what, 'orders/parcel-of', order);
  }),
];

/** A return label, and a customs form, on pages of their own. */
const FORM_PLANTS: readonly Plant[] = [
  (day) => {
    // Good: with the parcel of its order.
    const order = day.pair(SINGLES, 'packed');
    day.label([order], day.returning(order), 'ready', { kind: 'return' });
  },
  (day) => {
    // Good: alone where that has none.
    const sent = day.order(SINGLES, 'not-expected', { status: 'Shipped' });
    day.label([sent], day.returning(sent), 'ready', { kind: 'return' });
  },
  (day) => {
    const cancelled = day.pair(SINGLES, 'held', 'held orders/cancelled', { status: 'Cancelled' });
    day.plant('a label for an order that is cancelled', 'label', 'orders/cancelled', cancelled);
    day.label([cancelled], day.returning(cancelled), 'held orders/held-with', { kind: 'return' });
    day.plant('its return label', 'label', 'orders/held-with', cancelled);
  },
  (day) => {
    const order = day.pair(SINGLES, 'packed');
    const from = ['Corwin Unknownsender', '7 Test Bend', 'Probeville XX 71199'];
    day.label([], day.returning(order, { order: 'none', from }), 'held orders/no-order', { kind: 'return' });
    day.plantAt(['label', 'loose'], 'a return label that nobody knows', 'orders/no-order', undefined);
  },
  (day) => {
    const [a, b] = [day.pair(SINGLES, 'packed'), day.pair(SINGLES, 'packed')];
    day.label([a, b], day.returning(a, { order: `${a.number} ${b.number}` }), 'held orders/two-orders', { kind: 'return' });
    day.plant('a return label that names two orders', 'label', 'orders/two-orders', a);
  },
  (day) => {
    // Good: its order's label is in the file before or behind, in a document of many.
    const order = day.order(SINGLES, 'packed');
    day.label([order], day.returning(order), 'ready', { kind: 'return' });
    day.label([order], day.content(order));
  },
  (day) => {
    const order = day.pair(day.any([SHEETS, MANY]), 'packed');
    day.label([], day.returning(order), 'held orders/no-order', { kind: 'return', channel: SINGLES });
    day.plantAt(['label', 'loose'], 'a return label in the folder of another channel', 'orders/no-order', undefined);
  },
  (day) => {
    // Where the recipe knows of no return labels, it is one label too many.
    const channel = day.any([SHEETS, MANY, PAIRS]);
    const order = day.pair(channel, 'held', 'held orders/two-labels');
    day.label([order], day.returning(order), 'held orders/two-labels', { kind: 'return', fileName: `return ${day.labels.length}` });
    day.plantAt(['label', 'loose'], 'a return label in a channel whose recipe knows of none', 'orders/two-labels', order);
  },
  (day) => {
    const order = day.order(PAIRS, 'held');
    const slipOf = day.content(day.pair(PAIRS, 'packed'));
    day.label([order], day.content(order), 'held orders/other-slip', { slipOf });
    day.plant('the slip of another order behind a label', 'label', 'orders/other-slip', order);
  },
  (day) => void day.pair(SINGLES, 'packed', 'ready', {}, { kind: 'with-form' }),
  (day) => {
    const held = day.pair(SINGLES, 'held', 'held orders/refunded', { status: 'Refunded' }, { kind: 'with-form' });
    day.plant('a label with its customs form for an order that is refunded', 'label', 'orders/refunded', held);
    day.plant('its customs form', 'label', 'batch/parcel-held', held);
  },
  (day) => {
    const lonely = day.order(SINGLES, 'no-label');
    day.label([lonely], day.content(lonely), 'held customs-form/no-label', { kind: 'form' });
    day.plant('a customs form without a label', 'label', 'customs-form/no-label', lonely);
    day.plant('a customs form without a label', 'loose', 'orders/no-label', lonely);
  },
];

/** Channels whose slips are made from orders, and whose exports are tables. */
const FROM_ORDERS = [SHEETS, MANY, SINGLES];

/** What no typeface has: told, and printed all the same. */
const GLYPH_PLANTS: readonly Plant[] = [
  (day) => {
    const items = [{ sku: 'MUG-1', name: 'Mug with an otter \u{1f9a6}', quantity: 1, bin: 'A1' }];
    day.plant('an emoji in an item', 'slip', 'press/substituted', day.pair(day.any(FROM_ORDERS), 'packed', 'ready', { items }));
    day.plant('an emoji in an item of the pick list', 'slip', 'press/substituted', undefined);
  },
  ...(
    [
      ['a letter that no typeface has in an address', 1, { cells: { Street: '7 Example Street \u{12000}' } }],
      ['a letter that no typeface has in a gift message', 1, { giftMessage: 'To you \u{13080} from me' }],
      ['emoji in a gift message, one of several signs', 2, { giftMessage: 'Happy day! \u{1f469}\u200d\u{1f3a8} \u{1f389}' }],
      ['a flag and a sign for private use in a gift message', 2, { giftMessage: 'Greetings \u{1f1eb}\u{1f1ee} \ue001' }],
    ] as const
  ).map(([what, signs, given]): Plant => (day) => {
    const order = day.pair(day.any(FROM_ORDERS), 'packed', 'ready', { ...given, cells: 'cells' in given ? given.cells : {} });
    for (let n = 0; n < signs; n += 1) day.plant(what, 'slip', 'press/substituted', order);
  }),
  (day) => {
    const order = day.order(day.any(FROM_ORDERS), 'packed');
    day.label([order], day.content(order));
    const known = day.change(order, { cells: { Buyer: `${order.buyer} \u{1f33f}` } });
    day.plant('an emoji in a name, which the label leaves out', 'slip', 'press/substituted', known);
  },
  // Good: every sign of it is in a typeface.
  (day) =>
    void day.pair(day.any(FROM_ORDERS), 'packed', 'ready', { giftMessage: 'Alles Gute \u2013 с днём рождения, 誕生日おめでとう, שלום!' }),
];

/** Return labels, customs forms, labels that count parcels, writing that no typeface has. */
export const PAGE_PLANTS: readonly Plant[] = [...PARCEL_PLANTS, ...FORM_PLANTS, ...GLYPH_PLANTS];
