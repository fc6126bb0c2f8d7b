/**
 * What becomes of an order, as far as its export says. Only `to-ship` expects a label; a status that isn't known is reported and taken
 * as `to-ship`, so that nothing is forgotten.
 */
export const ORDER_STATES = ['to-ship', 'cancelled', 'refunded', 'shipped', 'pick-up', 'digital'] as const;
export type OrderState = (typeof ORDER_STATES)[number];

/** One line of an order. */
export interface OrderItem {
  /** Empty where the export has none. */
  readonly sku: string;
  readonly description: string;
  readonly variant: string;
  /** From 1. */
  readonly quantity: number;
  /** Where it lies in the studio; empty where the export has none. */
  readonly bin: string;
  /** As written, with its currency; printed only when asked. */
  readonly price: string;
}

/** Where an order stands in its file; lines count from 1, of a JSON file the line where its object begins. */
export interface OrderPlace {
  /** Name as messages show it, relative to the pipeline's folder. */
  readonly file: string;
  readonly line: number;
}

/**
 * One order of a channel, checked; each number of a channel is there once (see `mergeOrders`). Personal data: it lives in memory, and is
 * written on slips and lists only. Dates are ISO 8601 calendar dates (`2026-11-28`); undefined is unknown or damaged, which a diagnostic
 * says. What a spreadsheet has damaged is left out and never matched on.
 */
export interface Order {
  /** Unique in the run: `0:A-1001` is order A-1001 of the first channel. */
  readonly id: string;
  /** Index of the channel in the pipeline, from 0. */
  readonly channel: number;
  /** As the buyer knows it. */
  readonly number: string;
  readonly state: OrderState;
  readonly orderedOn: string | undefined;
  readonly shipBy: string | undefined;
  readonly buyer: string;
  /** Street and town lines as they are written on the parcel, without name, postcode and country where those have columns of their own. */
  readonly address: readonly string[];
  readonly postcode: string;
  /** ISO 3166-1 alpha-2 code; empty where unknown. */
  readonly country: string;
  readonly items: readonly OrderItem[];
  readonly giftMessage: string;
  /** Whether it is a gift: its slip shows no prices and no buyer's notes. */
  readonly gift: boolean;
  readonly notes: string;
  /** Tracking numbers as the export gives them, spaces taken out. */
  readonly tracking: readonly string[];
  /** How many parcels it goes in, from 1. */
  readonly parcels: number;
  /** Other orders (their numbers) that go in the same parcel, as far as the export says. */
  readonly together: readonly string[];
  /**
   * Set where a part of it is known to be missing or contradicts itself: a row that can't be read, an item whose quantity isn't known. A slip
   * or list made from it would look whole and not be.
   */
  readonly incomplete?: true;
  /**
   * Set where its number stands elsewhere, too, and not alike: in another file, or in a row of its own file that names another addressee. Which of
   * them is right isn't known, so nothing is sent for it. At least one place.
   */
  readonly differsAt?: readonly OrderPlace[];
  readonly place: OrderPlace;
}
