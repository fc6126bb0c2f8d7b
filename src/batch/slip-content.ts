import type { Channel, Studio } from '../config/pipeline.js';
import { lengthToPt, type Length } from '../geometry/length.js';
import type { Grid } from '../geometry/grid.js';
import type { Order } from '../orders/order.js';
import type { SlipContent, SlipLook } from '../sheet/slip-content.js';
import type { OrderedParcel } from './match-labels.js';

/** How the recipe of a channel has slips made from orders; undefined when it doesn't. */
export function slipLookOf({ recipe }: Channel, grid: Grid): Omit<SlipLook, 'gift'> | undefined {
  const step = recipe.steps.find(({ name }) => name === 'packing-slip');
  if (step?.options['from'] !== 'from-orders') return undefined;
  const { code, prices, readable, margin } = step.options;
  return {
    code: (code as SlipLook['code'] | undefined) ?? 'code128',
    prices: prices === true,
    readable: lengthToPt(readable as Length, grid),
    margin: lengthToPt(margin as Length, grid),
  };
}

const countryNames = new Intl.DisplayNames('en', { type: 'region', fallback: 'code' });

/** What the slip of a parcel says: of several orders in one parcel the items of all, under the first one's number. */
export function slipContentOf({ orders, number, of }: OrderedParcel, studio: Studio): SlipContent {
  const [first] = orders;
  if (!first) throw new Error('slip-content: a parcel without an order');
  const all = (text: (order: Order) => string): string => [...new Set(orders.map(text))].filter((each) => each !== '').join('\n\n');
  return {
    studio: studio.name,
    contact: studio.contact,
    orderNumber: first.number,
    date: first.orderedOn ?? '',
    shipTo: [
      first.buyer,
      ...first.address,
      first.postcode,
      first.country === '' ? '' : (countryNames.of(first.country) ?? first.country),
    ].filter((line) => line !== ''),
    items: orders.flatMap(({ items }) =>
      items.map(({ quantity, sku, description, variant, price }) => ({ quantity, sku, description, variant, price })),
    ),
    parcel: { number, of },
    giftMessage: all((order) => order.giftMessage),
    notes: all((order) => order.notes),
    together: orders.slice(1).map((order) => order.number),
  };
}

export const isGift = ({ orders }: OrderedParcel): boolean => orders.some(({ gift }) => gift);
