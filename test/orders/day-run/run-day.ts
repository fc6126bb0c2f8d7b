import type { DiagnosticCode } from '../../../src/diagnostics/codes.js';
import type { LabelContent } from '../../samples/content.js';
import { gs1CheckDigit } from '../../samples/code-art.js';
import { FAMILY, GIVEN, SAMPLE_MARKS, STREETS, STUDIO, TOWNS } from '../../samples/names.js';
import { Random } from '../day/random.js';

/** The day of the run. */
export const DAY = '2026-11-28';
export const PREFIXES = ['KLN', 'MGM', 'INK', 'PRG', 'GLZ'] as const;
/** Each channel by its number, from 0. */
export const [SHEETS, MANY, PAIRS, PICTURES, SINGLES] = [0, 1, 2, 3, 4] as const;
export const CHANNEL_NUMBERS: readonly number[] = [SHEETS, MANY, PAIRS, PICTURES, SINGLES];
/** Those whose exports are tables, so that a line of them is a row. */
export const TABLES: readonly number[] = [SHEETS, MANY, PAIRS, SINGLES];

/** Where an order ends; `absent`: its row can't be read. */
export type Place = 'packed' | 'held' | 'no-label' | 'not-expected' | 'absent';

export interface RunItem {
  readonly sku: string;
  readonly name: string;
  readonly quantity: number;
  readonly bin: string;
}

/** An order of the day as its export is to say it. Cells that an export should show otherwise than they are stand in `cells`. */
export interface RunOrder {
  readonly channel: number;
  readonly number: string;
  readonly buyer: string;
  readonly street: string;
  readonly town: string;
  readonly postcode: string;
  readonly items: readonly RunItem[];
  readonly status: string;
  readonly shipBy: string;
  readonly tracking: readonly string[];
  readonly parcels: number;
  readonly together: string;
  readonly giftMessage: string;
  readonly cells: Readonly<Record<string, string>>;
  /** Cells of rows that its export has once more, at its end. */
  readonly again?: Readonly<Record<string, string>>;
  /** What those rows say of its items, where that is something new. */
  readonly more?: RunItem;
  /** Stands in the channel's second file instead of, or beside, the first. */
  readonly files: readonly (1 | 2)[];
  readonly place: Place;
}

/** A label to draw, and what is to become of it. */
export interface RunLabel {
  readonly channel: number;
  readonly content: LabelContent;
  /** The orders of its parcel; none for a label that isn't printed. */
  readonly orders: readonly RunOrder[];
  /** `ready`, or how it ends: `held orders/two-orders`. */
  readonly ends: string;
  readonly spoiled?: Spoiled;
  /** `return`: a return label; `with-form`: a customs form stands on the page behind it; `form`: that form alone. */
  readonly kind?: 'return' | 'with-form' | 'form';
  /** What the channel's slip behind it says, where that is another order's. */
  readonly slipOf?: LabelContent;
  /** The name of its file, without ending; left out: one that says nothing. */
  readonly fileName?: string;
  readonly serial: number;
}

/** What is wrong with the file of a label. `drawn-again`: it is there twice, in files that differ. */
type Spoiled = 'old' | 'smeared' | 'cut-off' | 'file-twice' | 'drawn-again' | 'as-picture';

/** What a label is given beside what it says. */
export type Given = Partial<Pick<RunLabel, 'channel' | 'spoiled' | 'kind' | 'fileName' | 'slipOf'>>;

/** A fault that was planted, and where it must be told: by a label's end, a diagnostic at an order's row, a warning of its slip, or a loose end. */
export interface Planted {
  readonly what: string;
  readonly at: 'label' | 'row' | 'slip' | 'loose';
  readonly code: DiagnosticCode;
  /** The order that it is about; empty for a label of nobody. */
  readonly order: string;
}

const GOODS: readonly (readonly [sku: string, name: string, bin: string])[] = [
  ['MUG-1', 'Stoneware mug', 'A1'],
  ['MUG-2', 'Stoneware mug, large', 'A2'],
  ['MUG-10', 'Espresso cups', 'A10'],
  ['BOWL-3', 'Ramen bowl', 'B3'],
  ['PRINT-A4', 'Linocut of two herons', 'C1'],
];

/** By what a day's parcels are sorted. */
export const SORTED_BY = ['ship-by', 'sku', 'bin', 'channel', 'carrier', 'order-number'] as const;
export type SortedBy = (typeof SORTED_BY)[number];

/** One item of one row, so that what is wrong with it is told once. */
export const LONE: Partial<RunOrder> = { items: [{ sku: 'MUG-1', name: 'Stoneware mug', quantity: 1, bin: 'A1' }] };

/** Puts something into a day: a fault, or orders that are good and not plain. */
export type Plant = (day: RunDay) => void;

/** Makes orders and labels that fit, and keeps what is to come of them. */
export class RunDay {
  readonly random: Random;
  readonly orders: RunOrder[] = [];
  readonly labels: RunLabel[] = [];
  readonly planted: Planted[] = [];
  #count = 0;

  /** The channels that are to have orders, by number. */
  readonly channels: readonly number[];
  readonly stackOrder: readonly SortedBy[];

  constructor(seed: number, given: Partial<Pick<RunDay, 'channels' | 'stackOrder'>> = {}) {
    this.random = new Random(seed);
    this.channels = given.channels ?? CHANNEL_NUMBERS;
    this.stackOrder = given.stackOrder ?? ['ship-by', 'order-number'];
  }

  /** One of the day's channels that is among these; the first of these where none is. */
  any(of: readonly number[] = CHANNEL_NUMBERS): number {
    const own = of.filter((each) => this.channels.includes(each));
    return this.random.pick(own.length > 0 ? own : of.slice(0, 1));
  }

  order(channel: number, place: Place, given: Partial<RunOrder> = {}): RunOrder {
    const { random } = this;
    const n = ++this.#count;
    // One channel's export has a row for each order, the others' one for each item.
    const goods = random.shuffled(GOODS).slice(0, channel === MANY ? 1 : random.pick([1, 1, 1, 2]));
    const made: RunOrder = {
      channel,
      number: `${PREFIXES[channel] ?? 'X'}-${10_000 + n}`,
      buyer: `${random.pick(GIVEN)} ${random.pick(FAMILY)}`,
      street: `${1 + random.below(200)} ${random.pick(STREETS)}`,
      town: random.pick(TOWNS),
      postcode: String(20_003 + n * 7),
      items: goods.map(([sku, name, bin]) => ({ sku, name, bin, quantity: 1 + random.below(3) })),
      status: 'Paid',
      shipBy: random.pick(['2026-11-28', '2026-11-29', '2026-11-30']),
      ...{ tracking: [], parcels: 1, together: '', giftMessage: '', cells: {}, files: [1] },
      ...given,
      place,
    };
    this.orders.push(made);
    return made;
  }

  /** What a label of this order says. `tracking` tells which number it carries. */
  content(order: RunOrder, given: Partial<LabelContent> = {}): LabelContent {
    const digits = (count: number): string => Array.from({ length: count }, () => String(this.random.below(10))).join('');
    const body = `302${digits(14)}`;
    return {
      order: order.number,
      service: 'STANDARD',
      from: [STUDIO, '7 Example Street', 'Sampleton XX 00001', '555-0142'],
      to: [order.buyer, order.street, `${order.town} XX ${order.postcode}`],
      postcode: order.postcode,
      // The last digit is none that a spreadsheet would leave, so that no number looks damaged by chance.
      serial: `4${digits(16)}7`,
      sscc: body + gs1CheckDigit(body),
      weight: '0.4 kg',
      items: order.items.map(({ quantity, name }) => `${quantity} x ${name}`),
      mark: this.random.pick(SAMPLE_MARKS.slice(0, 4)),
      markPlace: 'line',
      ...given,
    };
  }

  label(orders: readonly RunOrder[], content: LabelContent, ends = 'ready', given: Given = {}): RunLabel {
    const [order] = orders;
    const made: RunLabel = { channel: order?.channel ?? SINGLES, content, orders, ends, serial: this.labels.length + 1, ...given };
    this.labels.push(made);
    return made;
  }

  /** An order with its one label; `withTracking` puts the label's number into the export. */
  pair(channel: number, place: Place, ends = 'ready', given: Partial<RunOrder> = {}, label: Given = {}): RunOrder {
    const order = this.order(channel, place, given);
    const content = this.content(order);
    const withTracking = channel === PICTURES || channel === PAIRS || (channel === SHEETS && this.random.chance(0.5));
    const known = withTracking && order.tracking.length === 0 ? this.change(order, { tracking: [trackingOf(channel, content)] }) : order;
    this.label([known], content, ends, label);
    return known;
  }

  /** What a return label of this order says. */
  returning(order: RunOrder, given: Partial<LabelContent> = {}): LabelContent {
    const there = this.content(order);
    return { ...there, from: there.to, to: [STUDIO, '7 Example Street', 'Sampleton XX 00001'], postcode: '00001', ...given };
  }

  change(order: RunOrder, change: Partial<RunOrder>): RunOrder {
    const changed = { ...order, ...change };
    this.orders[this.orders.indexOf(order)] = changed;
    return changed;
  }

  plant(what: string, at: Planted['at'], code: DiagnosticCode, order: RunOrder | undefined): void {
    this.planted.push({ what, at, code, order: order?.number ?? '' });
  }

  /** The same at several places. */
  plantAt(places: readonly Planted['at'][], what: string, code: DiagnosticCode, order: RunOrder | undefined): void {
    for (const at of places) this.plant(what, at, code, order);
  }
}

/** The tracking number on the label of a channel, as people copy it into exports. */
export function trackingOf(channel: number, { serial }: LabelContent): string {
  switch (channel) {
    case MANY:
      return `FW${serial}`;
    case PICTURES:
      return `92${serial.slice(0, 16)}`;
    case SINGLES:
      return `K7${serial.slice(0, 16)}`;
    default:
      return `92${serial}`;
  }
}
