import { describe, expect, it } from 'vitest';
import { itemRows, listsItems } from '../../src/locating/item-rows.js';
import type { Phrase } from '../../src/reading/word-lines.js';

/** A cell of 10 pt type, from the left top of its writing. */
const cell = (text: string, x: number, y: number, turn: Phrase['turn'] = 0): Phrase => ({
  text,
  box: turn === 0 || turn === 180 ? { x, y, width: 5 * text.length, height: 8 } : { x: y, y: x, width: 8, height: 5 * text.length },
  turn,
  fontSize: 10,
});
type Given = readonly [quantity: string, item: string, price?: string];
const table = (rows: readonly Given[], turn: Phrase['turn'] = 0): readonly Phrase[] =>
  rows.flatMap(([quantity, item, price], index) => [
    cell(quantity, 20, 100 + 18 * index, turn),
    cell(item, 80, 100 + 18 * index, turn),
    ...(price === undefined ? [] : [cell(price, 400, 99.5 + 18 * index, turn)]),
  ]);
const count = (phrases: readonly Phrase[]): number => itemRows(phrases)?.count ?? 0;

describe('rows of items', () => {
  it.each<[string, readonly Given[], number]>([
    [
      'numbers and names',
      [
        ['2', 'Kuchenform'],
        ['1', 'Becher'],
        ['12', 'Kerze'],
      ],
      3,
    ],
    [
      'with prices, counting up by chance',
      [
        ['1', 'Becher', '7.40'],
        ['2', 'Kerze', '1 204,00 €'],
      ],
      2,
    ],
    [
      'with a sign for times',
      [
        ['2 x', 'Becher'],
        ['x 1', 'Kerze'],
      ],
      2,
    ],
    [
      'in other letters',
      [
        ['3', 'Κούπα'],
        ['3', 'Κερί'],
      ],
      2,
    ],
    [
      'a numbered list',
      [
        ['1', 'Print this page'],
        ['2', 'Cut it out'],
        ['3', 'Stick it on'],
      ],
      0,
    ],
    [
      'counting up, and how many of each behind',
      [
        ['1', 'Becher', '1'],
        ['2', 'Kerze', '2'],
      ],
      2,
    ],
    ['one row only', [['2', 'Becher']], 0],
    [
      'numbers and numbers',
      [
        ['2', '0417'],
        ['3', '0419'],
      ],
      0,
    ],
    [
      'numbers too large to be of items',
      [
        ['1042', 'Becher'],
        ['1043', 'Kerze'],
      ],
      0,
    ],
  ])('%s', (_, rows, expected) => {
    expect(count(table(rows))).toBe(expected);
  });

  it('have a box around all of their cells', () => {
    expect(
      itemRows(
        table([
          ['2', 'Becher', '7.40'],
          ['1', 'Kerze', '3.00'],
        ]),
      )?.box,
    ).toEqual({ x: 20, y: 99.5, width: 400, height: 26.5 });
  });

  it('are seen whichever way they are turned', () => {
    const rows: readonly Given[] = [
      ['2', 'Becher'],
      ['1', 'Kerze'],
    ];
    expect(count(table(rows, 270).map((each) => ({ ...each, box: { ...each.box, y: -each.box.y - each.box.height } })))).toBe(2);
    expect(count(table(rows, 90).map((each) => ({ ...each, box: { ...each.box, x: -each.box.x } })))).toBe(2);
  });

  it('stand in columns: numbers that stand anywhere are none', () => {
    expect(count([cell('2', 20, 100), cell('Becher', 80, 100), cell('1', 33, 118), cell('Kerze', 93, 118)])).toBe(0);
    expect(count([cell('2', 20, 100), cell('Becher', 80, 100), cell('1', 20, 400), cell('Kerze', 80, 400)])).toBe(0);
  });
});

describe('items in lines', () => {
  const box = { x: 0, y: 0, width: 300, height: 300 };
  const lists = (...lines: readonly string[]): boolean =>
    listsItems(
      box,
      lines.map((line, at) => cell(line, 20, 100 + 18 * at)),
    );

  it('are two or more that begin with how many', () => {
    expect(lists('2 x Becher', '1 × Kerze')).toBe(true);
    expect(lists('x2 Becher', '12x Kerze', '3 x Teller')).toBe(true);
  });

  it('are none where there is one, or none has a name, or they stand elsewhere', () => {
    expect(lists('2 x Becher', 'Kerze')).toBe(false);
    expect(lists('2 x 14', '1 x 3 kg')).toBe(false);
    expect(listsItems({ ...box, x: 300 }, [cell('2 x Becher', 20, 100), cell('1 x Kerze', 20, 118)])).toBe(false);
  });
});
