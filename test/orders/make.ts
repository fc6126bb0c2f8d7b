import type { LabelFacts } from '../../src/orders/label-facts.js';
import { matchOrders } from '../../src/orders/match.js';
import type { ChannelRules, LabelEnd, Matching, MatchOptions } from '../../src/orders/matching.js';
import type { Order, OrderItem } from '../../src/orders/order.js';

export const TODAY = '2026-11-28';

export const item = (item: Partial<OrderItem> = {}): OrderItem => ({
  sku: 'MUG-1',
  description: 'Mug',
  variant: '',
  quantity: 1,
  bin: '',
  price: '',
  ...item,
});

/** An order of the invented studio that expects one label. Its id follows from its channel and number. */
export function order(number: string, order: Partial<Order> = {}): Order {
  const channel = order.channel ?? 0;
  return {
    id: `${channel}:${number}`,
    channel,
    number,
    state: 'to-ship',
    orderedOn: '2026-11-25',
    shipBy: '2026-11-30',
    buyer: 'Odile Samplewright',
    address: ['12 Example Street', 'Sampleton'],
    postcode: '10115',
    country: 'DE',
    items: [item()],
    giftMessage: '',
    gift: false,
    notes: '',
    tracking: [],
    parcels: 1,
    together: [],
    place: { file: 'orders.csv', line: 2 },
    ...order,
  };
}

export interface LabelWords extends Partial<LabelFacts> {
  /** A code with this tracking number. */
  readonly tracking?: string;
}

/** A label that says nothing but what is given. */
export function label(id: string, { tracking, ...facts }: LabelWords = {}): LabelFacts {
  return {
    id,
    channel: 0,
    fileName: `${id}.pdf`,
    codes: tracking === undefined ? [] : [{ text: tracking, tracking }],
    lines: [],
    shown: `inbox/${id}.pdf, page 1`,
    isReturn: false,
    ...facts,
  };
}

export const RULES: ChannelRules = { hasOrders: true, withoutOrder: 'hold', maxAge: 14, fileName: undefined };
export const rules = (...channels: readonly Partial<ChannelRules>[]): MatchOptions => ({
  channels: (channels.length === 0 ? [{}, {}] : channels).map((each) => ({ ...RULES, ...each })),
  today: TODAY,
  ownAddress: ['Wobblethorn Studio', '1 Sample Lane', '99999 Trialford'],
});

export const match = (orders: readonly Order[], labels: readonly LabelFacts[], options = rules()): Matching =>
  matchOrders(orders, labels, options);

/** A label's end in a few words: `packed 0:A-1001 by tracking`, `held 0:A-1001: orders/too-old`. */
export function endOf(matching: Matching, id: string): string {
  const end = matching.labels.find(({ label }) => label === id);
  if (!end) throw new Error(`no end for ${id}`);
  return wordsOf(end);
}

function wordsOf(end: LabelEnd): string {
  switch (end.kind) {
    case 'packed':
      return `packed ${end.orders.join(' ')} by ${[end.by, ...end.also].join(', ')}`;
    case 'return':
      return `return ${end.orders.join(' ')} with ${end.parcel ?? 'none'}`;
    case 'held':
      return `held ${end.orders.join(' ')}: ${end.reasons.map(({ code }) => code).join(' ')}`;
    case 'without-order':
    case 'untouched':
      return end.kind;
  }
}

/** Name and address of the order as a label has them, with the sender's above. */
export const addressed = ({ buyer, address, postcode }: Pick<Order, 'buyer' | 'address' | 'postcode'>): readonly string[] => [
  'SAMPLE - NOT VALID FOR CARRIAGE',
  'From: Wobblethorn Studio',
  '1 Sample Lane',
  '99999 Trialford',
  'Ship to:',
  buyer,
  ...address.slice(0, -1),
  `${postcode} ${address.at(-1) ?? ''}`,
];
