import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Findings } from '../../src/orders/findings.js';
import { jsonObjects, tellNoList, treeOf } from '../../src/orders/json-list.js';

function seen(text: string, list = '') {
  const findings = new Findings('orders.json');
  const found = jsonObjects(text, list, findings);
  const told = findings.list().map(({ message, place }) => `${place.kind === 'orders' ? `${place.line}:${place.col}` : ''} ${message}`);
  return { ...found, texts: found.objects.map(({ text: own }) => own), told };
}

describe('the objects of a list in JSON', () => {
  it('are found at the top or at a path of keys, each with the place where it begins', () => {
    const text = '{"data": {"orders": [\n  {"a": 1},\n  {"b": {"c": [{"d": 2}]}}\n]}}';
    const { objects, isThere, lists, told } = seen(text, 'data.orders');
    expect(objects.map(({ start, text: own }) => [start, own])).toEqual([
      [{ line: 2, col: 3 }, '{"a": 1}'],
      [{ line: 3, col: 3 }, '{"b": {"c": [{"d": 2}]}}'],
    ]);
    for (const { offset, text: own } of objects) expect(text.slice(offset, offset + own.length)).toBe(own);
    expect([isThere, lists, told]).toEqual([true, ['data.orders'], []]);
    expect(seen('[{"a":1},{"a":2}]').texts).toEqual(['{"a":1}', '{"a":2}']);
  });

  it('are none where the list is empty or elsewhere, which is not the same', () => {
    expect(seen('[]')).toMatchObject({ objects: [], isThere: true, lists: [] });
    expect(seen('{"orders": [], "more": [{"a": 1}]}', 'orders')).toMatchObject({ objects: [], isThere: true, lists: ['more'] });
    expect(seen('{"orders": [{"a": 1}]}')).toMatchObject({ objects: [], isThere: false, lists: ['orders'] });
    expect(seen('{"order": {"a": 1}}', 'order')).toMatchObject({ objects: [], isThere: false, lists: [] });
    expect(seen('"orders"')).toMatchObject({ objects: [], isThere: false });
  });

  it('leave out what in the list is no object, and lists within lists', () => {
    expect(seen('[1, "a", null, {"a": 1}, [{"b": 2}]]').texts).toEqual(['{"a": 1}']);
  });

  it('name all lists that there are, the outermost first', () => {
    const text = '{"x": {"y": {"deep": [{"a": 1}]}}, "items": [{"b": 2}], "page": {"orders": [{"c": 3}]}}';
    expect(seen(text).lists).toEqual(['items', 'page.orders', 'x.y.deep']);
  });

  it('lose one with a mistake in it, and no other; the mistake is told once, at its place', () => {
    const { texts, told } = seen('[\n{"a": 1},\n{"a": nonsense, b: 2},\n{"a": 3}\n]');
    expect(texts).toEqual(['{"a": 1}', '{"a": 3}']);
    expect(told).toEqual(['3:7 the JSON is broken: a value is not in quotation marks']);
  });

  it('lose the last of a file that was cut off anywhere in it', () => {
    const text = '[{"a": "one"}, {"a": {"b": "two"}}]';
    for (let length = 1; length < text.length - 1; length++) {
      const { texts, told } = seen(text.slice(0, length));
      expect(told.length).toBeGreaterThan(0);
      expect(['{"a": "one"}', '{"a": {"b": "two"}}'].slice(0, texts.length)).toEqual(texts);
      expect(texts.length).toBe(length < 13 ? 0 : length < 34 ? 1 : 2);
    }
    expect(seen(text.slice(0, -1)).told[0]).toContain('perhaps it was not saved completely');
  });

  it('may have a comma behind the last one, but no comments', () => {
    expect(seen('[{"a": 1,},]')).toMatchObject({ texts: ['{"a": 1,}'], told: [] });
    expect(seen('[{"a": 1} // one\n]').told[0]).toContain('JSON has no comments');
  });

  it('nested beyond all reason are none, and said so; brackets in texts are no nesting', () => {
    expect(seen('['.repeat(5000)).told).toEqual(['1:1 lists and objects are nested more than 100 deep: this is no list of orders']);
    expect(seen(`[{"a": "${'['.repeat(5000)}\\"${'{'.repeat(5000)}"}]`)).toMatchObject({ objects: [{ offset: 1 }], told: [] });
  });

  it('may hold a text of any length: a picture in a field, say', () => {
    const { objects, told } = seen(`[{"a": "${'x'.repeat(20_000_000)}"}]`);
    expect([objects.length, told]).toEqual([1, []]);
  });

  it('are, for any texts, those that JSON.parse has in the list, whole', () => {
    const order = fc.dictionary(fc.string({ unit: 'grapheme' }), fc.jsonValue({ maxDepth: 3 }), { maxKeys: 4 });
    fc.assert(
      fc.property(fc.array(order, { maxLength: 5 }), fc.constantFrom(undefined, 1, 2, '\t'), (orders, space) => {
        const { objects, told } = seen(JSON.stringify({ orders }, null, space), 'orders');
        expect(told).toEqual([]);
        expect(objects.map(({ text }) => JSON.stringify(JSON.parse(text)))).toEqual(orders.map((each) => JSON.stringify(each)));
        for (const { text } of objects) expect(treeOf(text)?.type).toBe('object');
      }),
    );
  });

  it('are, for any file at all, no reason to throw', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('{', '}', '[', ']', '"', ':', ',', '\\', 'a', '1', '\n', '\u2028')), (signs) => {
        const text = signs.join('');
        for (const { text: own, offset } of seen(text).objects) expect(text.slice(offset, offset + own.length)).toBe(own);
      }),
    );
  });
});

describe('that there is no list at the path', () => {
  const told = (list: string, lists: readonly string[]): string => {
    const findings = new Findings('orders.json');
    tellNoList(list, lists, findings);
    const [{ message, remedy } = { message: '', remedy: '' }] = findings.list();
    return `${message} | ${remedy ?? ''}`;
  };

  it('is said with the list that there is', () => {
    expect(told('', ['orders'])).toBe('the file itself is no list of orders | Write `list: orders` below `orders:` in the recipe.');
    expect(told('data', [''])).toContain('Take `list` out of `orders:` in the recipe');
    expect(told('data', [])).toBe('there is no list of orders at `data` | Export the orders as a list of objects.');
  });
});
