import type { Reason } from '../sheet/sheet.js';

/** By what a label is matched with an order, strongest first. */
export const CLUES = ['tracking', 'order-number', 'file-name', 'address'] as const;
export type Clue = (typeof CLUES)[number];

/** What one channel says about its orders. */
export interface ChannelRules {
  /** Whether order files are named for it; the labels of a channel without any are left as they are. */
  readonly hasOrders: boolean;
  /** What becomes of a label that no order is found for. */
  readonly withoutOrder: 'hold' | 'print';
  /** How many days old a label may be; undefined: any. */
  readonly maxAge: number | undefined;
  /**
   * How its files are named, without the ending: `{order}` stands for the order number, `*` for anything. Undefined: an order number
   * anywhere in the name, as a whole word.
   */
  readonly fileName: string | undefined;
}

export interface MatchOptions {
  /** By the channel's index in the pipeline. A channel that is missing has no orders. */
  readonly channels: readonly ChannelRules[];
  /** The day of the run, ISO 8601 (`2026-11-28`). */
  readonly today: string;
  /** The studio's own address, lines as on labels: never taken for a buyer's. */
  readonly ownAddress: readonly string[];
}

/** What says that a label is an order's: the clue that decided, and weaker ones that say the same. */
export interface Evidence {
  readonly by: Clue;
  readonly also: readonly Clue[];
}

/** One outbound label and the orders in its parcel. */
export interface MatchedParcel extends Evidence {
  /** Id of its label. */
  readonly label: string;
  /** Ids of its orders, by number: mostly one. */
  readonly orders: readonly string[];
  /** Which parcel of its orders it is, from 1: as its labels say where all of them do, else in their order; and of how many. */
  readonly number: number;
  readonly of: number;
  /** Ids of the return labels that go in it. */
  readonly returns: readonly string[];
}

/** Where a label ends: exactly one of these. */
export type LabelEnd =
  /** The outbound label of a parcel. */
  | ({ readonly kind: 'packed'; readonly label: string; readonly orders: readonly string[] } & Evidence)
  /** A return label of these orders; `parcel` is the outbound label that it goes with, undefined where there is none. */
  | { readonly kind: 'return'; readonly label: string; readonly orders: readonly string[]; readonly parcel: string | undefined }
  /** Printed although no order is found, for the channel says so. */
  | { readonly kind: 'without-order'; readonly label: string }
  /** Of a channel without order files. */
  | { readonly kind: 'untouched'; readonly label: string }
  /** Not printed; `orders` are those that it may be for, `reasons` has at least one. */
  | { readonly kind: 'held'; readonly label: string; readonly orders: readonly string[]; readonly reasons: readonly Reason[] };

export interface Matching {
  /** In the order of their labels. */
  readonly parcels: readonly MatchedParcel[];
  /** One for each label given, in the order given. */
  readonly labels: readonly LabelEnd[];
}
