import type { Order } from './order.js';

/** One parcel of the run as it was put into a stack: what the lists are made of. Personal data: in memory and on lists only. */
export interface PackedParcel {
  /** The parcel's number in the run, from 1: what is stamped on its slip. */
  readonly number: number;
  /** Name of the stack that holds its pages. */
  readonly stack: string;
  /** What is in it: several orders that go together, or none where no order file was given. */
  readonly orders: readonly Order[];
  /** Empty where it isn't known. */
  readonly carrier: string;
  /** The whole tracking number; empty where it isn't known. */
  readonly tracking: string;
  /** How many pages of labels it has. */
  readonly labelPages: number;
}
