import { describe, expect, it } from 'vitest';
import { namedByFile } from '../../src/orders/file-name.js';
import { foldedLine } from '../../src/orders/fold.js';
import { OrderNumbers } from '../../src/orders/order-numbers.js';

function numbers(...all: readonly string[]): OrderNumbers<string> {
  const made = new OrderNumbers<string>();
  for (const number of all) made.add(number, number);
  return made;
}
const inLines = (known: OrderNumbers<string>, ...lines: readonly string[]): readonly string[] => [...known.inLines(lines.map(foldedLine))];
const inCode = (known: OrderNumbers<string>, text: string): readonly string[] => [...known.inCodes([{ text, tracking: undefined }])];

describe('an order number on a label', () => {
  const known = numbers('A-1001', '12', '1001', '2026/77', '302-5550199-01', '#K7001', '123456789');

  it.each([
    ['alone', 'A-1001', 'A-1001'],
    ['in a line', 'Kilnrow A-1001 Sampleton', 'A-1001'],
    ['in small letters, with another dash', 'a–1001', 'A-1001'],
    ['with # in front', '#A-1001', 'A-1001'],
    ['of three parts', 'Nr: 302-5550199-01.', '302-5550199-01'],
    ['with a slash, its own', 'Auftrag 2026/77', '2026/77'],
    ['a known one that begins with #', 'K7001', '#K7001'],
    ['nine digits', 'x 123456789 y', '123456789'],
  ])('%s', (_, line, number) => expect(inLines(known, line)).toEqual([number]));

  it.each([
    'Order 12',
    'order no. 12',
    'Order #12',
    'ORDER: 12',
    'Ref 12',
    'Bestellung Nr. 12',
    'Bestell-Nr. 12',
    'N° de commande 12',
    'Pedido nº 12',
    'Ordine n. 12',
    'Zamówienie nr 12',
    'заказ № 12',
    '注文番号12',
    '주문번호 12',
    'رقم الطلب 12',
  ])('a short one behind its word: %s', (line) => {
    expect(inLines(known, line)).toEqual(['12']);
  });

  it('a short one below its word', () => {
    expect(inLines(known, 'Order no.', '1001')).toEqual(['1001']);
    expect(inLines(known, 'Your parcel from the studio, order', '1001')).toEqual([]);
  });

  it.each([
    ['a house number', '12 Example Street'],
    ['another word', 'Suite 1001'],
    ['a flat', 'Apt #12'],
    ['a part of a longer number', 'Order 12345'],
    ['a part of a number with dashes', 'Order 12-55'],
    ['behind a joined number', 'B-A-1001'],
    ['in front of one', 'A-1001-2'],
    ['letters behind it', 'A-1001B'],
    ['a decimal', 'Order 3.12'],
    ['a share of it', 'A 1001'],
    ['the short end of a longer one', 'order X-12'],
    ['digits that are grouped', '1234 5678 9'],
  ])('but not %s', (_, line) => expect(inLines(known, line)).toEqual([]));

  it('the longest of those within each other', () => {
    const nested = numbers('A-1001', 'A-1001-2', '1001');
    expect(inLines(nested, 'Order A-1001-2')).toEqual(['A-1001-2']);
    expect(inLines(nested, 'Order A-1001')).toEqual(['A-1001']);
  });
});

describe('an order number in a code', () => {
  const known = numbers('A-1001', 'B12', 'B-12', '123', '10115', '200345');

  it.each([
    ['A-1001', ['A-1001']],
    ['order=A-1001;n=1', ['A-1001']],
    ['https://kilnrow.example/o/A-1001', ['A-1001']],
    ['ORDER:123', ['123']],
    ['REF\x1d10115', ['10115']],
    ['200345', ['200345']],
    ['#200345', ['200345']],
    ['B12', []],
    ['123', []],
    ['10115', []],
    ['x200345', []],
    ['9400200345', []],
    ['', []],
  ])('%j: %j', (text, expected) => expect(inCode(known, text)).toEqual(expected));
});

describe('an order number in the name of a file', () => {
  const known = numbers('A-1001', '1001', '12', '2026', '20261128', 'K/77', '555123');
  const named = (name: string, pattern?: string): readonly string[] => [...namedByFile(known, name, pattern)];

  it.each([
    ['A-1001.pdf', ['A-1001']],
    ['a_1001 (2).PDF', ['A-1001']],
    ['label-A-1001-return.pdf', ['A-1001']],
    ['1001.pdf', ['1001']],
    ['label_1001.pdf', ['1001']],
    ['label-1001.pdf', ['1001']],
    ['order-12.pdf', ['12']],
    ['order 2026.pdf', ['2026']],
    ['K-77.pdf', []],
    ['order K-77.pdf', ['K/77']],
    ['A-1001 and 555123.pdf', ['A-1001', '555123']],
    ['12.pdf', []],
    ['label (12).pdf', []],
    ['labels-2026.pdf', []],
    ['20261128.pdf', []],
    ['KR-1001.pdf', []],
    ['1001-2.pdf', []],
    ['11001.pdf', []],
    ['.pdf', []],
  ])('%s: %j', (name, expected) => expect(named(name)).toEqual(expected));

  it('as a pattern says, and nothing else', () => {
    expect(named('12 label.pdf', '{order} label')).toEqual(['12']);
    expect(named('Label No 12 of 20261128.pdf', 'label no {order} of *')).toEqual(['12']);
    expect(named('KR-1001.pdf', '*-{order}')).toEqual(['1001']);
    expect(named('A-1001.pdf', 'label {order}')).toEqual([]);
    expect(named('A-1001.pdf', 'A-1001')).toEqual([]);
    expect(named('x(1001)+.pdf', 'x({order})+')).toEqual(['1001']);
  });
});
