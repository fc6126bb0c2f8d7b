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

/** Countries that write the postcode behind the town (common practice, no source); elsewhere it stands before it. */
const POSTCODE_LAST = new Set(['', 'AU', 'CA', 'GB', 'IE', 'IN', 'NZ', 'SG', 'US', 'ZA']);

/** Name, street and town as they are read on a parcel; for the buyer's eyes, not for a carrier. */
function shipTo({ buyer, address, postcode, country }: Order): readonly string[] {
  const [town = '', streets] = [address.at(-1), address.slice(0, -1)];
  const parts = town.includes(postcode) ? [town] : POSTCODE_LAST.has(country) ? [town, postcode] : [postcode, town];
  const name = country === '' ? '' : (countryNames.of(country) ?? country);
  return [buyer, ...streets, parts.filter((part) => part !== '').join(' '), name].filter((line) => line !== '');
}

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
    shipTo: shipTo(first),
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
