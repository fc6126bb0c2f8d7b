import { describe, expect, it } from 'vitest';
import { only, readTable, told, withCode } from './reading.js';

const joined = (header: string, ...rows: readonly string[]) =>
  readTable([`Order,${header}`, ...rows.map((row) => `A-1,${row}`)].join('\n'));

describe('an order of several rows', () => {
  it('has an item for each, in their order, and its own fields from whichever row has them', () => {
    const order = only(joined('Name,Item no.,Pieces,Ship by', 'Ada,MUG-1,1,', ',MUG-2,3,2026-11-28', ',BOWL-3,2,'));
    expect(order).toMatchObject({ buyer: 'Ada', shipBy: '2026-11-28', place: { line: 2 } });
    expect(order.items.map(({ sku, quantity }) => `${quantity} ${sku}`)).toEqual(['1 MUG-1', '3 MUG-2', '2 BOWL-3']);
    expect(told(joined('Name,Item no.', 'Ada,MUG-1', ',MUG-2'))).toEqual([]);
  });

  it('that say the same item twice in a row have it twice; the same rows again further down are told and count once', () => {
    expect(only(joined('Item', 'Mug', 'Mug')).items).toHaveLength(2);
    const again = readTable('Order,Item\nA-1,Mug\nA-2,Bowl\nA-1,Mug\nA-1,Plate\n');
    expect(again.orders[0]?.items.map(({ description }) => description)).toEqual(['Mug', 'Plate']);
    expect(told(again)).toEqual(['4:1 orders/duplicate-number']);
  });

  it('an addressee in capitals or without accents is no contradiction', () => {
    const read = joined('Name,Town', 'Odile Sämplewright,Sampleton', 'ODILE SAMPLEWRIGHT,SAMPLETON');
    expect([told(read), only(read).buyer, only(read).differsAt]).toEqual([[], 'Odile Sämplewright', undefined]);
  });

  it('that name two addressees has none, is told once for each field, and a label for it is to be held', () => {
    const read = joined('Name,ZIP', 'Ada,10115', 'Eve,20095', 'Ida,20095');
    expect(only(read)).toMatchObject({ buyer: '', postcode: '', differsAt: [{ line: 3 }, { line: 4 }] });
    expect(told(read)).toEqual(['3:5 orders/contradiction', '3:9 orders/contradiction']);
    expect(JSON.stringify(read.diagnostics)).not.toMatch(/Ada|Eve|Ida|20095/);
  });

  it('of which one is to be shipped is to be shipped, whole or not is unknown', () => {
    for (const states of [
      ['Shipped', 'Paid'],
      ['Paid', 'Cancelled'],
    ]) {
      const read = joined('Status,Item', `${states[0] ?? ''},Mug`, `${states[1] ?? ''},Bowl`);
      expect(only(read)).toMatchObject({ state: 'to-ship', incomplete: true });
      expect(told(read)).toEqual(['3:5 orders/contradiction']);
    }
  });

  it('of which one is a gift is one; of two numbers of parcels the larger counts', () => {
    expect(only(joined('Gift,Item', 'no,Mug', 'yes,Bowl')).gift).toBe(true);
    expect(only(joined('Parcels,Item', '2,Mug', '3,Bowl', '1,Plate')).parcels).toBe(3);
    expect(told(joined('Parcels,Item', '2,Mug', '3,Bowl', '1,Plate'))).toEqual(['3:5 orders/contradiction']);
  });

  it('gather tracking numbers, notes and mates, each once and never itself', () => {
    const order = only(joined('Tracking,Notes,With', 'T1 23; T4,First,"A-2, A-1"', 'T4|T5,First,A-3', ',Second,A-2'));
    expect(order).toMatchObject({ tracking: ['T123', 'T4', 'T5'], notes: 'First\nSecond', together: ['A-2', 'A-3'] });
  });
});

describe('an item', () => {
  it('without a column of quantities is one piece; without a quantity in it the order lacks something', () => {
    expect(only(joined('Item', 'Mug')).items).toMatchObject([{ quantity: 1 }]);
    const read = joined('Item,Pieces', 'Mug,', 'Bowl,2');
    expect(only(read)).toMatchObject({ incomplete: true, items: [{ description: 'Bowl' }] });
    expect(withCode(read, 'orders/bad-number')[0]?.message).toContain('an item has no quantity');
  });

  it('of none is left out and no loss; a row without any item is none', () => {
    const read = joined('Item,Pieces', 'Mug,0', 'Bowl,1', ',');
    expect(only(read).items.map(({ description }) => description)).toEqual(['Bowl']);
    expect([only(read).incomplete, read.diagnostics.map(({ severity }) => severity)]).toEqual([undefined, ['note']]);
  });

  it('of too many pieces, or of a part of one, is left out, told with the number, and the order lacks it', () => {
    for (const count of ['100000', '1.5', '-1', 'many']) {
      const read = joined('Item,Pieces', `Mug,${count}`);
      expect(only(read)).toMatchObject({ items: [], incomplete: true });
      expect(read.diagnostics[0]?.message).toContain(`\`${count}\``);
    }
  });

  it('is known by its variant alone, of several columns', () => {
    expect(only(joined('Colour,Pieces', 'ash,2')).items).toMatchObject([{ sku: '', description: '', variant: 'ash', quantity: 2 }]);
  });
});

describe('what an order ends as', () => {
  it('is a gift with a message, whatever its column of gifts says', () => {
    expect(only(joined('Gift,Card', 'no,Dear you'))).toMatchObject({ gift: true, giftMessage: 'Dear you' });
  });

  it('leaves out a postcode that lost its zero, in a country that has such', () => {
    expect(only(joined('ZIP,Country', '2003,US')).postcode).toBe('');
    expect(told(joined('ZIP,Country', '2003,US'))).toEqual(['2:5 orders/lost-zeros']);
    expect(only(joined('ZIP,Country', '2003,AU')).postcode).toBe('2003');
    expect(only(joined('ZIP', '2003')).postcode).toBe('2003');
  });

  it('takes the more final of two columns of states', () => {
    expect(only(joined('Status,Delivery', 'Paid,Fulfilled')).state).toBe('shipped');
    expect(only(joined('Status,Delivery', 'Paid,Local pickup')).state).toBe('pick-up');
    expect(only(joined('Status,Delivery', 'Cancelled,Fulfilled')).state).toBe('cancelled');
  });
});
