import { describe, expect, it } from 'vitest';
import { mostFinal, stateOf, yesOrNo } from '../../src/orders/state-words.js';
import { mapFor, only, read } from './reading.js';

describe('words for the state of an order', () => {
  it.each([
    ['Paid', 'to-ship'],
    ['UNSHIPPED', 'to-ship'],
    ['Not_Shipped', 'to-ship'],
    ['Partially refunded', 'to-ship'],
    ['Canceled', 'cancelled'],
    ['Storniert', 'cancelled'],
    ['Annulée', 'cancelled'],
    ['Fully refunded', 'refunded'],
    ['Zurückerstattet', 'refunded'],
    ['Dispatched', 'shipped'],
    ['Expédiée', 'shipped'],
    ['Enviado', 'shipped'],
    ['Local pickup', 'pick-up'],
    ['Abholung', 'pick-up'],
    ['Download', 'digital'],
  ] as const)('%s: %s', (word, state) => {
    expect(stateOf(word, {})).toBe(state);
  });

  it.each(['', 'in the kiln', 'not cancelled', 'constructor', '__proto__'])('%j is not known', (word) => {
    expect(stateOf(word, {})).toBeUndefined();
  });

  it("a recipe's own words count first", () => {
    expect(stateOf('Paid!', { paid: 'shipped' })).toBe('shipped');
    expect(stateOf('In the kiln', { 'in the kiln': 'to-ship' })).toBe('to-ship');
  });

  it('status and fulfilment together: what speaks most against a label', () => {
    expect(mostFinal(['to-ship', 'digital'])).toBe('digital');
    expect(mostFinal(['shipped', 'cancelled'])).toBe('cancelled');
    expect(mostFinal([])).toBe('to-ship');
    const text = 'Order,Status,Delivery\nA-1,paid,local pickup\nA-2,refunded,shipped\nA-3,,\n';
    expect(read(text, mapFor(['Order', 'Status', 'Delivery'])).orders.map(({ state }) => state)).toEqual([
      'pick-up',
      'refunded',
      'to-ship',
    ]);
  });

  it('the same unknown word is told once', () => {
    const result = read('Order,Status\nA-1,kiln\nA-2,Kiln\nA-3,drying\n', mapFor(['Order', 'Status']));
    expect(result.diagnostics.map(({ message }) => message)).toEqual([
      expect.stringContaining('`kiln`'),
      expect.stringContaining('`drying`'),
    ]);
  });
});

describe('yes and no', () => {
  it('in several languages', () => {
    for (const word of ['yes', 'TRUE', '1', 'Ja', 'oui', 'Sí', 'x']) expect(yesOrNo(word), word).toBe(true);
    for (const word of ['no', 'False', '0', 'nein', 'Não', '']) expect(yesOrNo(word), word).toBe(false);
    expect(yesOrNo('perhaps')).toBeUndefined();
    expect(only(read('Order,Gift\nA-1,ja\n', mapFor(['Order', 'Gift']))).gift).toBe(true);
  });
});
