import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bottom, contains, intersection, right, type Box } from '../../../src/geometry/box.js';
import { gridOf } from '../../../src/geometry/grid.js';
import type { Media } from '../../../src/geometry/media.js';
import { layOutSlip, type LaidSlip } from '../../../src/press/slip/lay-out.js';
import type { SlipContent, SlipLook } from '../../../src/sheet/slip-content.js';
import { empty, item, look, media, order, SCRIPTS } from './slips.js';

const grid = gridOf('203dpi');

/** What an input field may hold: words of every script, and what nobody would type. */
const odd = [
  '\ud83d',
  '\u0000',
  '\u202e',
  'a\u0301\u0302\u0303\u0304\u0305\u0306\u0307\u0308',
  '👨‍👩‍👧',
  '🎉',
  'W'.repeat(200),
  '\t',
  '\u200b',
  '\u2067',
  '𐎀',
  '—',
];
const words = fc
  .array(fc.constantFrom(...Object.values(SCRIPTS), ...odd, 'Paper', 'star', '12,50', '(A5)'), { maxLength: 12 })
  .map((each) => each.join(' '));
const few = fc.array(words, { maxLength: 4 });
const count = fc.oneof(fc.integer({ min: 1, max: 20 }), fc.constantFrom(0, -1, NaN, Infinity, 1e21, 0.5));
const contents: fc.Arbitrary<SlipContent> = fc.record({
  studio: words,
  contact: few,
  orderNumber: fc.oneof(fc.constantFrom('', 'LK-20417-731', 'заказ 17', '9'.repeat(90)), words),
  date: words,
  shipTo: few,
  items: fc.array(fc.record({ quantity: count, sku: words, description: words, variant: words, price: words }), { maxLength: 12 }),
  parcel: fc.record({ number: fc.integer(), of: fc.integer() }),
  giftMessage: fc.oneof(
    words,
    fc.array(words, { maxLength: 30 }).map((each) => each.join('\n')),
  ),
  notes: words,
  together: few,
});
const looks: fc.Arbitrary<SlipLook> = fc.record({
  prices: fc.boolean(),
  gift: fc.boolean(),
  code: fc.constantFrom('code128', 'qr', 'none'),
  readable: fc.constantFrom(0, 6, 8, 12, 24, 100, NaN),
  margin: fc.constantFrom(0, 6, 12, 40, NaN),
});
const medias: fc.Arbitrary<Media> = fc.constantFrom(
  media,
  { name: 'a6', width: 297.64, height: 419.53 },
  { name: 'letter', width: 612, height: 792 },
  { name: '6x4in', width: 432, height: 288 },
  { name: 'small', width: 200, height: 260 },
);

/** The boxes that lines take: from their first pen position to their last, as high as they reach. */
const lineBoxes = (page: LaidSlip['pages'][number]): readonly Box[] =>
  page.lines.map(({ line, x, baseline }) => ({ x, y: baseline - line.up, width: line.width, height: line.up + line.down }));

const overlap = (a: Box, b: Box): boolean => {
  const shared = intersection(a, b);
  return shared !== undefined && shared.width > 0.01 && shared.height > 0.01;
};

/** Everything that must hold for any slip. */
function expectLaws(laid: LaidSlip, page: Media, margin: number): void {
  const inside: Box = { x: margin, y: margin, width: page.width - 2 * margin, height: page.height - 2 * margin };
  for (const each of laid.pages) {
    const boxes = lineBoxes(each);
    for (const box of boxes) expect(contains(inside, box, 0.01)).toBe(true);
    // Strokes are moved to whole dots.
    for (const mark of each.marks) expect(contains(inside, mark, 0.4)).toBe(true);
    boxes.forEach((box, at) => {
      expect(boxes.slice(at + 1).filter((other) => overlap(box, other))).toEqual([]);
      expect(overlap(box, laid.numberBox)).toBe(false);
      expect(each.marks.filter((mark) => overlap(box, { ...mark, y: mark.y + 0.4, height: Math.max(0, mark.height - 0.8) }))).toEqual([]);
      if (laid.codeBox) expect(overlap(box, laid.codeBox)).toBe(false);
    });
    expect(each.marks.filter((mark) => overlap(mark, laid.numberBox))).toEqual([]);
  }
  expect(contains(inside, laid.numberBox, 0.01)).toBe(true);
  if (laid.codeBox) {
    expect(overlap(laid.codeBox, laid.numberBox)).toBe(false);
    expect(contains({ x: 0, y: 0, ...page }, laid.codeBox)).toBe(true);
  }
}

const marginOf = (asked: number, page: Media): number => (Number.isFinite(asked) ? Math.min(asked, page.width / 8, page.height / 8) : 0);

describe('any slip', () => {
  it('stays inside its margins, and nothing lies on anything else', async () => {
    await fc.assert(
      fc.asyncProperty(contents, looks, medias, async (content, asked, page) => {
        expectLaws(await layOutSlip(content, asked, page, grid), page, marginOf(asked.margin, page));
      }),
      { numRuns: 60 },
    );
  });

  it('has type of the readable size and never under 6 pt', async () => {
    await fc.assert(
      fc.asyncProperty(contents, looks, async (content, asked) => {
        const least = Number.isFinite(asked.readable) ? Math.max(6, Math.min(Math.floor(media.height / 20), asked.readable)) : 6;
        const { pages } = await layOutSlip(content, asked, media, grid);
        for (const { line } of pages.flatMap(({ lines }) => lines)) expect(line.style.size).toBeGreaterThanOrEqual(least);
      }),
      { numRuns: 20 },
    );
  });

  it.each([1, 8, 60])('names each of %i items once, in order, beside its quantity', async (number) => {
    const items = Array.from({ length: number }, (_, at) =>
      item(at + 2, `Item${at + 1}x ${'paper star '.repeat(at % 7)}`, at % 3 === 0 ? 'Ivory' : '', at % 2 === 0 ? `SKU-${at}` : ''),
    );
    const laid = await layOutSlip({ ...order, items }, look, media, grid);
    const lines = laid.pages.flatMap((page, at) => page.lines.map((each) => ({ ...each, page: at })));
    const found = lines.flatMap((each) => {
      const name = /Item(\d+)x/.exec(each.line.text)?.[1];
      return name === undefined ? [] : [{ ...each, name: Number(name) }];
    });
    expect(found.map(({ name }) => name)).toEqual(items.map((_, at) => at + 1));
    for (const { name, page, baseline } of found) {
      const beside = lines.filter((each) => each.page === page && Math.abs(each.baseline - baseline) < 0.01).map(({ line }) => line.text);
      expect(beside).toContain(String(name + 1));
    }
    for (const text of laid.pages.flatMap(({ lines: all }) => all.map(({ line }) => line.text))) expect(text).not.toMatch(/^\s|\s$/);
  });

  it('says on each further page that it goes on, and on each which it is', async () => {
    const laid = await layOutSlip({ ...order, items: Array.from({ length: 40 }, () => item(1, 'Paper star')) }, look, media, grid);
    expect(laid.pages.length).toBeGreaterThan(2);
    laid.pages.forEach(({ lines }, at) => {
      const texts = lines.map(({ line }) => line.text);
      expect(texts).toContain(`page ${at + 1} of ${laid.pages.length}`);
      expect(texts.includes('Order LK-20417-731, continued')).toBe(at > 0);
      expect(texts.includes('QTY')).toBe(texts.includes('Paper star'));
    });
  });

  it('has one page and no page number where that is enough', async () => {
    const laid = await layOutSlip({ ...order, giftMessage: '', notes: '', together: [] }, look, media, grid);
    expect(laid.pages).toHaveLength(1);
    expect(textOf(laid)).not.toMatch(/^page|continued/m);
  });
});

const textOf = (laid: LaidSlip): string => laid.pages.flatMap(({ lines }) => lines.map(({ line }) => line.text)).join('\n');

describe('what a slip says', () => {
  it('is everything of the order but prices', async () => {
    const text = textOf(await layOutSlip(order, look, media, grid));
    const said = [
      order.studio.split(' ')[0],
      ...order.contact,
      order.orderNumber,
      order.date,
      ...order.shipTo,
      '1 of 2',
      'Sea green / A5',
      'NB-A5-SG',
    ];
    for (const each of [...said, 'With love, Tomas', order.notes, 'Order LK-20417-733']) expect(text).toContain(each);
    for (const { price } of order.items) expect(text).not.toContain(price);
  });

  it('of an order in several parcels says above the items that they are those of the whole order', async () => {
    const textsOf = async (parcel: SlipContent['parcel'], items = order.items): Promise<readonly string[]> =>
      (await layOutSlip({ ...order, parcel, items }, look, media, grid)).pages.flatMap(({ lines }) => lines.map(({ line }) => line.text));
    const texts = await textsOf({ number: 2, of: 3 });
    const said = texts.indexOf('Parcel 2 of 3: listed are the items of the whole order.');
    expect(said).toBeGreaterThan(texts.indexOf('SHIP TO'));
    expect(said).toBeLessThan(texts.indexOf('QTY'));
    expect((await textsOf({ number: 1, of: 1 })).join()).not.toContain('whole order');
    expect((await textsOf({ number: 1, of: 2 }, [])).join()).not.toContain('whole order');
  });

  it('has prices when asked, and not as a gift', async () => {
    expect(textOf(await layOutSlip(order, { ...look, prices: true }, media, grid))).toContain('18.00');
    const gift = textOf(await layOutSlip(order, { ...look, prices: true, gift: true }, media, grid));
    expect(gift).not.toMatch(/18\.00|PRICE|NOTES|neighbour/);
    expect(gift).toContain('With love, Tomas');
  });

  it('has quantities larger than anything beside them, more than one in bold', async () => {
    const { pages } = await layOutSlip(order, look, media, grid);
    const style = (text: string) => pages.flatMap(({ lines }) => lines).find(({ line }) => line.text === text)?.line.style;
    expect(style('1')).toEqual({ size: 15, weight: 'regular' });
    expect(style('12')).toEqual({ size: 15, weight: 'bold' });
    expect(style('Gift tag')?.size).toBe(9);
  });

  it('does not cut an e-mail address where the page is wide enough for it', async () => {
    const text = textOf(await layOutSlip(order, { ...look, readable: 11 }, media, grid));
    expect(text).toMatch(/^hello@quietfold\.example$/m);
  });

  it('leaves out parts without a word, with their names', async () => {
    expect(textOf(await layOutSlip(empty, look, media, grid))).toBe('PARCEL\n1 of 1');
  });

  it('warns of an item without a quantity or a word, and prints both', async () => {
    const laid = await layOutSlip({ ...empty, items: [item(NaN, ' ')] }, look, media, grid);
    expect(textOf(laid)).toContain('?\n(no description)');
    expect(laid.warnings).toEqual(['An item has no quantity: the slip shows a question mark.']);
  });
});

describe('media that no slip fits', () => {
  it('gets one made smaller, without a code, and says so', async () => {
    const small = { name: '2.25x1.25in', width: 162, height: 90 };
    const laid = await layOutSlip(order, look, small, grid);
    expect(laid.scale).toBeCloseTo(90 / 260, 9);
    expect(laid.codeBox).toBeUndefined();
    expect(laid.warnings).toEqual(['The media is too small for a slip: it is drawn at 34 %, without a code.']);
    expect(right(laid.numberBox)).toBeLessThan(small.width);
    expect(bottom(laid.numberBox)).toBeLessThan(small.height);
  });
});

describe('type that no slip fits', () => {
  it('is set as large as there is room for, and that is said', async () => {
    const laid = await layOutSlip(order, { ...look, readable: 40 }, media, grid);
    expect(laid.warnings).toEqual(['Type of 40 pt is too large for this media: the slip is set in 21 pt.']);
    expect(new Set(laid.pages.flatMap(({ lines }) => lines.map(({ line }) => line.style.size)))).toEqual(new Set([21]));
  });
});

describe('the code', () => {
  const codeOf = async (orderNumber: string, code: SlipLook['code']) =>
    layOutSlip({ ...order, orderNumber }, { ...look, code }, media, grid);

  it('is on whole dots, on every page, in the same place', async () => {
    const laid = await layOutSlip({ ...order, items: Array.from({ length: 20 }, () => item(1, 'Paper star')) }, look, media, grid);
    const perPt = 203 / 72;
    const codes = laid.pages.map(({ marks }) => marks.filter((mark) => laid.codeBox && contains(laid.codeBox, mark, 0.001)));
    expect(codes.length).toBeGreaterThan(1);
    for (const marks of codes) {
      expect(marks).toEqual(codes[0]);
      expect(marks.length).toBeGreaterThan(30);
      for (const { x, y, width, height } of marks)
        for (const pt of [x, y, width, height]) expect(pt * perPt).toBeCloseTo(Math.round(pt * perPt), 6);
    }
  });

  it('becomes QR where Code 128 has no such characters or no room, and nothing where that is too long as well', async () => {
    const wide = (laid: LaidSlip): boolean => laid.codeBox !== undefined && laid.codeBox.width > 2 * laid.codeBox.height;
    expect(wide(await codeOf('LK-20417-731', 'code128'))).toBe(true);
    for (const number of ['заказ 17', 'LK-20417-731-'.repeat(3)]) {
      const laid = await codeOf(number, 'code128');
      expect(laid.codeBox?.width).toBeCloseTo(laid.codeBox?.height ?? 0, 6);
    }
    const none = await codeOf('9'.repeat(4000), 'code128');
    expect(none.codeBox).toBeUndefined();
    expect(none.warnings).toEqual(['The order number is too long for a code on this page: the slip has none.']);
    expect((await codeOf('LK-20417-731', 'none')).codeBox).toBeUndefined();
  });
});
