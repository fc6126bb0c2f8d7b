import type { LabelCode } from './label-facts.js';
import type { Order } from './order.js';

/** What is shorter, or has fewer digits, is no parcel's own number (common practice, no source; the proof uses the same figures). */
const LEAST = { characters: 8, digits: 6 };
/** A number of at least this length at the end of a longer one can't be there by chance. */
const LEAST_AT_END = 12;

const bare = (text: string): string => text.toUpperCase().replace(/[^0-9A-Z]/g, '');

/**
 * A tracking number for comparing: capital letters and digits alone, an SSCC without its identifier 00 (handbook section 2.2, primary).
 * Undefined for what is too short to be one.
 */
export function trackingKey(number: string): string | undefined {
  const key = bare(number).replace(/^00(?=\d{18}$)/, '');
  return key.length >= LEAST.characters && key.replace(/\D/g, '').length >= LEAST.digits ? key : undefined;
}

/** The last four characters, in capitals: all of a tracking number that a message or a slip may show. */
export const lastOf = (number: string): string => bare(number).slice(-4);
export const tailOf = (number: string): string => `…${lastOf(number)}`;

/** Whether an order knows a tracking number; what is too short to be one doesn't count. */
export const knowsTracking = (order: Order | undefined): boolean =>
  order?.tracking.some((number) => trackingKey(number) !== undefined) === true;

/** Finds known tracking numbers in codes. */
export class TrackingIndex<T> {
  readonly #known = new Map<string, T[]>();
  readonly #lengths = new Set<number>();

  add(number: string, value: T): void {
    const key = trackingKey(number);
    if (key === undefined) return;
    const values = this.#known.get(key);
    if (!values) this.#known.set(key, [value]);
    else if (!values.includes(value)) values.push(value);
    if (key.length >= LEAST_AT_END) this.#lengths.add(key.length);
  }

  /** Whose number it is. */
  get(key: string): readonly T[] {
    return this.#known.get(key) ?? [];
  }

  /**
   * The known numbers in codes, each once: a code that is the number, holds it as a word (a web address), or ends with it behind digits
   * that route (420 and postcode, identifiers, service: handbook sections 3.1 and 4.2). A number at the end counts from 12 characters,
   * and only in a code that holds none otherwise; of a code that can be split in two ways both are given.
   */
  within(codes: readonly LabelCode[]): readonly string[] {
    const found = new Set<string>();
    for (const { text, tracking } of codes) {
      const whole = [...(tracking === undefined ? [] : [tracking]), text, ...text.split(/[^0-9A-Za-z]+/)]
        .flatMap((each) => trackingKey(each) ?? [])
        .filter((key) => this.#known.has(key));
      for (const key of whole.length > 0 ? whole : this.#atEnd(bare(text))) found.add(key);
    }
    return [...found].sort();
  }

  #atEnd(text: string): readonly string[] {
    const ends = [...this.#lengths].filter((length) => length < text.length).map((length) => text.slice(-length));
    return ends.filter((end) => this.#known.has(end) && /^\d+$/.test(text.slice(0, -end.length)));
  }
}

/** A tracking number that orders know and a label's codes hold, as the orders write it: of a number of no published scheme nothing else tells which part it is. */
export function knownNumberIn(orders: readonly Pick<Order, 'tracking'>[], codes: readonly LabelCode[]): string | undefined {
  const known = new TrackingIndex<string>();
  for (const number of orders.flatMap(({ tracking }) => tracking)) known.add(number, number);
  return known.within(codes).flatMap((key) => known.get(key))[0];
}
