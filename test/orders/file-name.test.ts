import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { namedByFile, stemOf } from '../../src/orders/file-name.js';
import { OrderNumbers } from '../../src/orders/order-numbers.js';

const numbers = new OrderNumbers<string>();
for (const number of ['A-1001', 'A-1002', 'B/77-20']) numbers.add(number, number);
const named = (fileName: string, pattern?: string): readonly string[] => [...namedByFile(numbers, fileName, pattern)];

describe('a file’s name', () => {
  it.each([
    ['A-1001.pdf', 'A-1001'],
    ['A-1001 (1).pdf', 'A-1001'],
    ['A-1001 (1234).pdf', 'A-1001 (1234)'],
    ['A.1001', 'A'],
    ['order 5.12.2026', 'order 5.12'],
    ['no ending', 'no ending'],
    ['.pdf', ''],
    ['', ''],
  ])('%s without its ending is %s', (name, stem) => {
    expect(stemOf(name)).toBe(stem);
  });

  it('names an order anywhere in it where no pattern is given', () => {
    expect(named('label_A-1002_final.pdf')).toEqual(['A-1002']);
    expect(named('A-10020.pdf')).toEqual([]);
  });

  it('names what stands where the pattern says, and nothing else', () => {
    expect(named('label-A-1001-A-1002.pdf', 'label-{order}-*')).toEqual(['A-1001']);
    expect(named('LABEL a-1001.PDF', 'label {order}')).toEqual(['A-1001']);
    expect(named('A-1001.pdf', 'label-{order}')).toEqual([]);
    expect(named('x A-1001.pdf', '{order}')).toEqual([]);
    expect(named('A-1001.pdf', 'A-1001')).toEqual([]);
  });

  it('takes what is written beside the number as it is, be it a letter, and no part of a word for `*`', () => {
    const more = new OrderNumbers<string>();
    for (const number of ['#20417', '30418']) more.add(number, number);
    const of = (fileName: string, pattern: string): readonly string[] => [...namedByFile(more, fileName, pattern)];
    expect(of('label #20417.pdf', 'label {order}')).toEqual(['#20417']);
    expect(of('order30418.pdf', 'order{order}')).toEqual(['30418']);
    expect(of('注文30418.pdf', '注文{order}')).toEqual(['30418']);
    expect(of('order-30418_x.pdf', 'order-{order}*')).toEqual(['30418']);
    expect(of('order-30418.pdf', 'order-{order}*')).toEqual(['30418']);
    expect(of('order-304189.pdf', 'order-{order}*')).toEqual([]);
    expect(of('x130418.pdf', '*{order}')).toEqual([]);
  });

  it('names all that may stand there where `*` leaves it open, for nothing is guessed', () => {
    const more = new OrderNumbers<string>();
    for (const number of ['A-1001', 'A-1001-2', 'B-2002']) more.add(number, number);
    const open = (fileName: string, pattern: string): readonly string[] => [...namedByFile(more, fileName, pattern)].sort();
    expect(open('label-A-1001-2-x.pdf', 'label-{order}-*')).toEqual(['A-1001', 'A-1001-2']);
    expect(open('label-A-1001-2.pdf', 'label-{order}')).toEqual(['A-1001-2']);
    expect(open('x_B-2002_A-1001.pdf', '*_{order}_*')).toEqual(['B-2002']);
    expect(open('x_B-2002_y_z.pdf', '*_{order}_*')).toEqual(['B-2002']);
  });

  it('takes signs of a pattern as they are written', () => {
    expect(named('[a+b] A-1001.pdf', '[a+b] {order}')).toEqual(['A-1001']);
    expect(named('aab A-1001.pdf', '[a+b] {order}')).toEqual([]);
    expect(named('A-1001.$1 {order}.pdf', '{order}.$1 {order}')).toEqual(['A-1001']);
  });

  it('throws for no name and no pattern, and never names what is not there', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 40 }),
        fc.option(fc.string({ maxLength: 20 }), { nil: undefined }),
        (name, pattern) => {
          for (const each of named(name, pattern)) expect(['A-1001', 'A-1002', 'B/77-20']).toContain(each);
        },
      ),
    );
  });

  it('with a pattern of text around the number gives the number back', () => {
    const word = fc.stringMatching(/^[a-z_]{0,6}$/);
    fc.assert(
      fc.property(word, word, (before, behind) => {
        expect(named(`${before} A-1001 ${behind}.pdf`, `${before} {order} ${behind}`)).toEqual(['A-1001']);
      }),
    );
  });
});
