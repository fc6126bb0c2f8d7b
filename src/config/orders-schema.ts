import { ORDER_STATES } from '../orders/order.js';
import { DATE_ORDERS, ENCODINGS, JOINED_FIELDS, ORDER_FIELDS, WITHOUT_ORDER, type OrderField } from '../orders/order-map.js';
import type { JsonSchema } from './json-schema.js';
import type { ORDERS_KEYS } from './keys.js';
import { wordsSchema } from './option-schema.js';

const TEXT: JsonSchema = { type: 'string', pattern: '\\S' };

const FIELDS: Readonly<Record<OrderField, string>> = {
  order: 'The number of the order, as the buyer knows it.',
  state: 'What has become of the order: paid, cancelled, shipped.',
  fulfilment: 'A second column that says so: picked up, nothing to ship, shipped.',
  'ordered-on': 'The day of the order.',
  'ship-by': 'The day by which it must be shipped.',
  buyer: 'The name on the parcel; several columns are put together.',
  address: 'Street and town, one line for each column.',
  postcode: 'The postcode of the parcel.',
  country: 'The country of the parcel, as a code or a name.',
  sku: "The item's number.",
  description: "The item's name.",
  variant: 'Colour, size and the like; several columns are put together.',
  quantity: 'How many pieces of the item.',
  bin: 'Where the item lies.',
  price: 'Its price, with the currency.',
  gift: 'Whether the order is a gift: yes or no.',
  'gift-message': 'What is written to the person who gets it.',
  tracking: 'Tracking numbers.',
  parcels: 'How many parcels the order goes in.',
  together: 'Numbers of other orders that go in the same parcel.',
  notes: "The buyer's notes.",
};

const namesSchema = (field: OrderField): JsonSchema => ({
  description: `${FIELDS[field]} ${JOINED_FIELDS.includes(field) ? 'One column or several.' : 'A column; of several the first that is not empty counts.'}`,
  anyOf: [TEXT, { type: 'array', items: TEXT, minItems: 1 }],
});

/** The editor schema of `orders` in a recipe. */
export function ordersSchema(): JsonSchema {
  const properties: Record<(typeof ORDERS_KEYS)[number], JsonSchema> = {
    columns: {
      description: 'Which column holds what; in a JSON file the path of keys to it, with dots.',
      type: 'object',
      additionalProperties: false,
      required: ['order'],
      properties: Object.fromEntries(ORDER_FIELDS.map((field) => [field, namesSchema(field)])),
    },
    'date-order': {
      description: 'What comes first in dates such as 03/04/2026. Default: not known; such dates are told and left out.',
      ...wordsSchema(DATE_ORDERS),
    },
    encoding: { description: 'How letters are stored in the file. Default: told by its content.', ...wordsSchema(ENCODINGS) },
    delimiter: {
      description: 'The sign between two cells, or `tab`. Default: told by the content.',
      anyOf: [{ type: 'string', minLength: 1, maxLength: 1 }, { const: 'tab' }],
    },
    list: {
      description: 'Of a JSON file: the path of keys to the list of orders. Default: the file is the list.',
      ...TEXT,
      examples: ['data.orders'],
    },
    states: {
      description: 'Words of the status column and what they mean, beside those that are known.',
      type: 'object',
      additionalProperties: wordsSchema(ORDER_STATES),
    },
    'label-without-order': {
      description: 'What becomes of a label that belongs to no order of the file. Default: hold.',
      ...wordsSchema(WITHOUT_ORDER),
    },
    'max-age': {
      description: 'A label that is dated earlier than this is held. Default: any age will do.',
      type: 'string',
      pattern: '^[0-9]{1,4}[dw]$',
      examples: ['14d'],
    },
    'file-name': {
      description:
        'How label files are named, without the ending: {order} stands for the order number, * for anything. Default: the number as a word of the name.',
      type: 'string',
      pattern: '\\{order\\}',
      examples: ['order-{order}*'],
    },
  };
  return {
    description: "How the channel's order files are read; `slipyard draft --orders FILE` writes it.",
    type: 'object',
    additionalProperties: false,
    required: ['columns'],
    properties,
  };
}
