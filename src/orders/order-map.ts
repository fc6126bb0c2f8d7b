import type { OrderState } from './order.js';

/** What a column of an order file can hold. */
export const ORDER_FIELDS = [
  'order',
  'state',
  'fulfilment',
  'ordered-on',
  'ship-by',
  'buyer',
  'address',
  'postcode',
  'country',
  'sku',
  'description',
  'variant',
  'quantity',
  'bin',
  'price',
  'gift',
  'gift-message',
  'tracking',
  'parcels',
  'together',
  'notes',
] as const;
export type OrderField = (typeof ORDER_FIELDS)[number];

/** The fields of one line of an order; all others belong to the order. */
export const ITEM_FIELDS: readonly OrderField[] = ['sku', 'description', 'variant', 'quantity', 'bin', 'price'];

/** Fields that take what all of their columns hold, in order; of the others' columns the first that isn't empty counts. */
export const JOINED_FIELDS: readonly OrderField[] = ['address', 'buyer', 'notes', 'together', 'tracking', 'variant'];

export const DATE_ORDERS = ['day-month-year', 'month-day-year', 'year-month-day'] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

export const ENCODINGS = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;
export type Encoding = (typeof ENCODINGS)[number];

/** The delimiters that are told apart by themselves. */
export const DELIMITERS = [',', ';', '\t', '|'] as const;

export const WITHOUT_ORDER = ['hold', 'print'] as const;
export type WithoutOrder = (typeof WITHOUT_ORDER)[number];

/** How the order files of a channel are read: which column holds what. Plain data, checked. */
export interface OrderMap {
  /** Names of columns by field, at least one each; of a JSON file the path of keys to the value: `shipping.address.city`. */
  readonly columns: Readonly<Partial<Record<OrderField, readonly string[]>>>;
  /** Undefined: dates that can be read in two ways are left out. */
  readonly dateOrder: DateOrder | undefined;
  /** Undefined: told by the content. */
  readonly encoding: Encoding | undefined;
  /** One character; undefined: told by the content. */
  readonly delimiter: string | undefined;
  /** Path of keys to the list of orders in a JSON file, with dots; empty: the file is the list. */
  readonly list: string;
  /** Words of the status columns, in the form that `plainWord` gives; they count before those that come with the program. */
  readonly states: Readonly<Record<string, OrderState>>;
  /** What becomes of a label that no order of the channel claims. */
  readonly labelWithoutOrder: WithoutOrder;
  /** A label that is dated more days ago is held; undefined: any age will do. */
  readonly maxAgeDays: number | undefined;
  /** How label files are named, without the ending: `{order}` stands for the order number, `*` for anything; undefined: the number as a word of the name. */
  readonly fileName: string | undefined;
}

/** A map with everything that needn't be stated. */
export const orderMap = (columns: OrderMap['columns'], stated: Partial<Omit<OrderMap, 'columns'>> = {}): OrderMap => ({
  columns,
  dateOrder: undefined,
  encoding: undefined,
  delimiter: undefined,
  list: '',
  states: {},
  labelWithoutOrder: 'hold',
  maxAgeDays: undefined,
  fileName: undefined,
  ...stated,
});
