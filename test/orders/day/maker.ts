import type { DiagnosticCode } from '../../../src/diagnostics/codes.js';
import type { LabelFacts } from '../../../src/orders/label-facts.js';
import type { Order } from '../../../src/orders/order.js';
import type { Place } from '../../../src/orders/order-places.js';
import { CARRIERS, CHANNELS, SAMPLE_MARKS, STUDIO } from '../../samples/names.js';
import { item, order as plainOrder } from '../make.js';
import { person, type Person } from './people.js';
import { Random } from './random.js';

/** By what a label of the day is to be found its order. */
export const WAYS = ['tracking', 'order-number', 'file-name', 'address'] as const;
export type Way = (typeof WAYS)[number];

/** A label with what is needed to draw it. */
export interface DayLabel extends LabelFacts {
  readonly carrier: string;
}

/** Something put into the day that is to be found: this reason, with these labels held, or as a loose end about these orders. */
export interface Fault {
  readonly code: DiagnosticCode;
  /** Ids of the labels that are held for it. */
  readonly labels: readonly string[];
  /** Ids of the orders that it is about. */
  readonly orders: readonly string[];
}

/** How each channel numbers its orders; two of them use the same numbers. */
const NUMBERS: readonly ((n: number) => string)[] = [
  (n) => `KLN-${10_000 + n}`,
  (n) => `302-5550199-${String(n).padStart(4, '0')}`,
  (n) => `#${3000 + n}`,
  (n) => `2026/${String(n).padStart(4, '0')}`,
  (n) => String(3000 + n),
];
export const ORDER_CHANNELS = NUMBERS.length;
/** This one prints labels without an order. */
export const PRINTING = 4;
/** This one has no order files. */
export const WITHOUT_ORDERS = 5;
export const DAY = '2026-11-28';
export const OWN_ADDRESS = [STUDIO, '1 Sample Lane', '99099 Trialford'];

const SKUS = ['MUG-1', 'MUG-2', 'MUG-10', 'BOWL-3', 'PRINT-A4', ''];
const BINS = ['A1', 'A2', 'A10', 'B3', ''];

/** Makes orders and labels that fit, and keeps what is to come of them. */
export class DayMaker {
  readonly random: Random;
  readonly orders: Order[] = [];
  readonly labels: DayLabel[] = [];
  readonly faults: Fault[] = [];
  readonly places = new Map<string, Place>();
  readonly people = new Map<string, Person>();
  /** Ids of the orders that a label is for, by its id. */
  readonly belongs = new Map<string, readonly string[]>();
  #count = 0;

  constructor(seed: number) {
    this.random = new Random(seed);
  }

  /** A new order of the channel, with a number, buyer and postcode of its own. */
  order(channel: number, place: Place, given: Partial<Order> = {}): Order {
    const { random } = this;
    const n = this.#next();
    const who = person(random, n);
    const number = given.number ?? NUMBERS[channel]?.(n) ?? String(n);
    const made = plainOrder(number, {
      channel,
      ...{ buyer: who.buyer, address: who.address, postcode: who.postcode, country: who.country },
      shipBy: random.pick(['2026-11-28', '2026-11-30', '2026-12-02', undefined]),
      items: Array.from({ length: random.pick([1, 1, 1, 2, 3]) }, () =>
        item({ sku: random.pick(SKUS), bin: random.pick(BINS), quantity: 1 + random.below(3) }),
      ),
      place: { file: `${CHANNELS[channel] ?? ''}/orders.csv`, line: this.orders.length + 2 },
      ...given,
    });
    this.orders.push(made);
    this.places.set(made.id, place);
    this.people.set(made.id, who);
    return made;
  }

  /** Changes an order that was made. */
  change(order: Order, change: Partial<Order>): Order {
    const changed = { ...order, ...change };
    this.orders[this.orders.indexOf(order)] = changed;
    return changed;
  }

  tracking(): string {
    const n = String(this.#next()).padStart(5, '0');
    const digits = String(1_000_000 + this.random.below(8_999_999));
    return this.random.pick([`TDW${n}${digits}X`, `92${n}${digits}00000001`, `${digits}${n}00`]);
  }

  /** A label of the order that says who it is for in one way; with a number in a code, too, where the order knows none. */
  label(order: Order, way: Way, given: Partial<DayLabel> = {}): DayLabel {
    const own = order.tracking[0];
    const number = way === 'tracking' && own !== undefined ? own : this.tracking();
    const text = /^92\d{20}$/.test(number) && this.random.chance(0.5) ? `42020115${number}` : number;
    const lines = way === 'file-name' ? [] : this.lines(order, way === 'order-number' || (way === 'tracking' && this.random.chance(0.5)));
    const name = way === 'file-name' ? `order ${order.number.replace(/[#/]/g, ' ').trim()}` : undefined;
    const made = this.free(order.channel, { fileName: name, codes: [{ text, tracking: number }], lines, ...given });
    this.belongs.set(made.id, [order.id]);
    return made;
  }

  /** A label that is nobody's. */
  free(channel: number, given: { readonly [K in keyof DayLabel]?: DayLabel[K] | undefined } = {}): DayLabel {
    const n = this.#next();
    const id = `l${n}`;
    const fileName = given.fileName ?? `${this.random.pick(['label', 'parcel', 'download'])} (${n}).pdf`;
    const tracking = this.tracking();
    const made: DayLabel = {
      id,
      channel,
      codes: [{ text: tracking, tracking }],
      lines: [],
      shown: `${CHANNELS[channel] ?? ''}/${n}.pdf, page 1`,
      isReturn: false,
      carrier: this.random.pick(Object.values(CARRIERS)),
      ...(given as Partial<DayLabel>),
      fileName,
    };
    this.labels.push(made);
    return made;
  }

  /** What a label of the order says, top to bottom. */
  lines(order: Order, withNumber: boolean, who = this.people.get(order.id)): readonly string[] {
    const { random } = this;
    const [street = '', town = ''] = order.address;
    return [
      random.pick(SAMPLE_MARKS),
      ...(random.chance(0.8) ? ['From:', ...OWN_ADDRESS] : []),
      ...(random.chance(0.5)
        ? [random.pick(['Ship date: 2026-11-27', 'SHIP DATE: 26NOV26', 'Datum 27.11.2026', 'Date: 11/28/2026', 'Date: 03/04/2026'])]
        : []),
      ...(withNumber ? [`${random.pick(['Order', 'Order no.', 'Bestellung', 'Ref', 'N° de commande', '注文番号'])} ${order.number}`] : []),
      'Ship to:',
      who?.onLabel ?? order.buyer,
      street,
      random.chance(0.5) ? `${order.postcode} ${town}` : `${town} ${order.postcode}`,
      'Weight 0.4 kg',
    ];
  }

  /** Says that something is to be found; the labels' orders are held with it. */
  fault(code: DiagnosticCode, labels: readonly DayLabel[], orders: readonly Order[]): void {
    this.faults.push({ code, labels: labels.map(({ id }) => id), orders: orders.map(({ id }) => id) });
  }

  /** A channel that has order files. */
  channel(): number {
    return this.random.below(ORDER_CHANNELS);
  }

  #next(): number {
    return ++this.#count;
  }
}
