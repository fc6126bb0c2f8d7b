import type { Reason } from '../sheet/sheet.js';
import type { Clue } from './matching.js';
import { compareNatural } from './natural.js';
import type { Order, OrderState } from './order.js';
import { listed, orderWord, ordersWord, placesWords, placeWord, STATE_WORDS } from './order-text.js';
import { tailOf } from './tracking.js';

const CLUE_WORDS: Readonly<Record<Clue, string>> = {
  tracking: 'tracking number',
  'order-number': 'order number on it',
  'file-name': 'file name',
  address: 'name and postcode',
};

export const twoOrders = (by: Clue, orders: readonly Order[]): Reason => ({
  code: 'orders/two-orders',
  message: `by its ${CLUE_WORDS[by]} it may be for each of the ${ordersWord(orders)}`,
  remedy: 'Find out whose label it is. If the orders go in one parcel, say so in the order file (together), then run again.',
});

export const cluesDiffer = (by: Clue, orders: readonly Order[], against: Clue, others: readonly Order[]): Reason => ({
  code: 'orders/clues-differ',
  message: `by its ${CLUE_WORDS[by]} it is for ${ordersWord(orders)}, by its ${CLUE_WORDS[against]} for ${ordersWord(others)}`,
  remedy: 'Open the label and both orders, and put right the one that is wrong: the order file, or the name of the file.',
});

export const sharedTracking = (tracking: string, orders: readonly Order[]): Reason => ({
  code: 'orders/shared-tracking',
  message: `its tracking number (${tailOf(tracking)}) stands at ${ordersWord(orders)}, which differ in buyer or address`,
  remedy: 'Correct the tracking number in the order file; if the orders go in one parcel, say so there (together).',
});

export const otherChannel = (orders: readonly Order[]): Reason => ({
  code: 'orders/other-channel',
  message: `its tracking number is that of ${ordersWord(orders)} of another channel`,
  remedy: 'Move the file into the folder of that channel, or take the tracking number out of the wrong order.',
});

/** Of an order whose number stands elsewhere, too. */
export const sameNumber = (order: Order): Reason => ({
  code: 'orders/same-number',
  message: `order ${orderWord(order)} is there more than once, and not alike (${listed(placesWords(order))})`,
  remedy: 'Leave the valid one in the order file and take the others out, then run again.',
});

const STATE_CODES = {
  cancelled: 'orders/cancelled',
  refunded: 'orders/refunded',
  shipped: 'orders/already-shipped',
  'pick-up': 'orders/pick-up',
  digital: 'orders/digital',
} as const;

export const notToShip = (order: Order, state: Exclude<OrderState, 'to-ship'>): Reason => ({
  code: STATE_CODES[state],
  message: `${ordersWord([order])} ${STATE_WORDS[state]}, and yet there is a label`,
  remedy: 'Void the label where it was bought; if it is to be sent, correct the status in the order file and run again.',
});

export const incomplete = (order: Order): Reason => ({
  code: 'orders/incomplete',
  message: `order ${orderWord(order)} (${placeWord(order)}) could not be read whole, so its slip might lack something`,
  remedy: 'Look at what is said of this order in the order file, correct it or export it anew, and run again.',
});

export const addressDiffers = (orders: readonly Order[]): Reason => ({
  code: 'orders/address-differs',
  message: `name and postcode on it are not those of ${ordersWord(orders)}`,
  remedy: 'Compare the label with the order. Buy a new label, or correct the address in the order file.',
});

export const otherSlip = (orders: readonly Order[], others: readonly Order[], slip: string): Reason => ({
  code: 'orders/other-slip',
  message: `the packing slip behind it (${slip}) names ${ordersWord(others)}, not ${ordersWord(orders)}`,
  remedy:
    'Look whether a page of the document is missing or too many. Have the channel give label and slip of this order again, in a file of its own.',
});

export const tooOld = (date: string, days: number, maxAge: number): Reason => ({
  code: 'orders/too-old',
  message: `it is dated ${date}, ${days} days ago; this channel takes labels up to ${maxAge} ${maxAge === 1 ? 'day' : 'days'} old`,
  remedy: 'Find out whether it was used before. Buy a new label, or raise max-age of the channel.',
});

export const labelTwice = (tracking: string, others: readonly string[]): Reason => ({
  code: 'orders/label-twice',
  message: `its tracking number (${tailOf(tracking)}) is on ${listed(others)}, too`,
  remedy: 'Take one of the two files out of the folder. Postage may be used only once.',
});

export const twoLabels = (orders: readonly Order[], labels: number): Reason => ({
  code: 'orders/two-labels',
  message: `${labels} labels for ${ordersWord(orders)}, which ${orders.length === 1 ? 'goes' : 'go'} in one parcel`,
  remedy: 'Take out the label that is too much, or state the number of parcels in the order file.',
});

export const wrongCount = (orders: readonly Order[], labels: number, parcels: number): Reason => ({
  code: labels < parcels ? 'orders/fewer-labels' : 'orders/more-labels',
  message: `${labels} ${labels === 1 ? 'label' : 'labels'} for ${ordersWord(orders)}, which ${orders.length === 1 ? 'states' : 'state'} ${parcels} parcels`,
  remedy:
    labels < parcels
      ? 'Fetch the missing labels, or correct the number of parcels in the order file.'
      : 'Take out the labels that are too much, or correct the number of parcels in the order file.',
});

export const otherParcels = (orders: readonly Order[], said: number, parcels: number): Reason => ({
  code: 'orders/parcel-of',
  message: `it says that it is one of ${said} parcels, but ${ordersWord(orders)} ${orders.length === 1 ? 'goes' : 'go'} in ${parcels === 1 ? 'one' : parcels}`,
  remedy: 'Fetch the missing labels and state the number of parcels in the order file; or find out whose label it is.',
});

export const sameParcel = (orders: readonly Order[], number: number, of: number): Reason => ({
  code: 'orders/parcel-of',
  message: `it says that it is parcel ${number} of ${of}, and so does another label for ${ordersWord(orders)}`,
  remedy: 'Look at both labels: one may be there twice, and another missing.',
});

export const noOrder = (): Reason => ({
  code: 'orders/no-order',
  message: 'no order is found for this label',
  remedy: 'Fetch a new order file of the channel. To print such labels all the same: `label-without-order: print`.',
});

export const heldWith = (orders: readonly Order[], cause: string): Reason => ({
  code: 'orders/held-with',
  message: `held with ${cause}, which is for the same ${orders.length === 1 ? 'order' : 'orders'} (${listed(orders.map(orderWord).sort(compareNatural))})`,
  remedy: 'Put right what is wrong with that label, then run again; all come together.',
});
