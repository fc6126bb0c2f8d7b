import { describe, expect, it } from 'vitest';
import type { OrderedParcel } from '../../src/batch/match-labels.js';
import { isGift, slipContentOf, slipLookOf } from '../../src/batch/slip-content.js';
import { gridOf } from '../../src/geometry/grid.js';
import type { Order } from '../../src/orders/order.js';
import { item, order } from '../orders/make.js';

const STUDIO = { name: 'Our Studio', contact: ['555-0142'] };
const parcel = (...orders: readonly Order[]): OrderedParcel => ({
  label: '0 p1',
  orders,
  by: 'tracking',
  also: [],
  number: 2,
  of: 3,
  returns: [],
});

describe('what a slip made from orders says', () => {
  it('the order, its parcel and its items', () => {
    const content = slipContentOf(
      parcel(order('A-1', { items: [item({ quantity: 2 }), item({ sku: 'BOWL' })], giftMessage: 'All the best' })),
      STUDIO,
    );
    expect(content).toMatchObject({
      studio: 'Our Studio',
      orderNumber: 'A-1',
      parcel: { number: 2, of: 3 },
      giftMessage: 'All the best',
      together: [],
    });
    expect(content.items.map(({ quantity, sku }) => `${quantity} ${sku}`)).toEqual(['2 MUG-1', '1 BOWL']);
  });

  it.each([
    ['DE', ['12 Example Street', 'Sampleton'], '10115', ['12 Example Street', '10115 Sampleton', 'Germany']],
    ['US', ['12 Example Street', 'Sampleton XX'], '00020', ['12 Example Street', 'Sampleton XX 00020', 'United States']],
    ['', ['12 Example Street', '00020 Sampleton'], '00020', ['12 Example Street', '00020 Sampleton']],
    ['', [], '', []],
  ])('the postcode where the country writes it: %s', (country, address, postcode, lines) => {
    const { shipTo } = slipContentOf(parcel(order('A-1', { country, address, postcode })), STUDIO);
    expect(shipTo).toEqual(['Odile Samplewright', ...lines]);
  });

  it('of several orders in one parcel the items and messages of all, each message once', () => {
    const both = parcel(
      order('A-1', { giftMessage: 'Hello' }),
      order('A-2', { giftMessage: 'Hello', gift: true, items: [item({ sku: 'BOWL' })] }),
    );
    const content = slipContentOf(both, STUDIO);
    expect([content.orderNumber, content.together, content.giftMessage]).toEqual(['A-1', ['A-2'], 'Hello']);
    expect(content.items.map(({ sku }) => sku)).toEqual(['MUG-1', 'BOWL']);
    expect([isGift(both), isGift(parcel(order('A-1')))]).toEqual([true, false]);
  });
});

describe('how a channel wants its slips', () => {
  const channel = (options: Readonly<Record<string, unknown>>) => ({
    name: 'clay',
    files: [],
    recipe: { name: 'clay', about: 'Clay.', steps: [{ name: 'packing-slip', options }] },
  });
  const grid = gridOf('203dpi');

  it('from its recipe; without prices and with a code of bars where nothing is said', () => {
    const lengths = { readable: { value: 6, unit: 'pt' }, margin: { value: 3, unit: 'mm' } };
    const look = slipLookOf(channel({ from: 'from-orders', ...lengths }), grid);
    expect(look).toMatchObject({ code: 'code128', prices: false, readable: 6 });
    expect(look?.margin).toBeCloseTo((3 / 25.4) * 72, 9);
    expect(slipLookOf(channel({ from: 'from-orders', code: 'qr', prices: true, ...lengths }), grid)).toMatchObject({
      code: 'qr',
      prices: true,
    });
  });

  it('none where slips come from the channel itself', () => {
    expect(slipLookOf(channel({ from: 'next-page' }), grid)).toBeUndefined();
  });
});
