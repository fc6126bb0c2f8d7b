import { describe, expect, it } from 'vitest';
import { union, type Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { lonePart } from '../../src/locating/lone-part.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { barsAt, judged } from './judged.js';

const HEAD: Box = { x: 60, y: 60, width: 160, height: 14 };
const BLOCK = { x: 60, width: 240 };

interface More {
  readonly head?: readonly string[];
  readonly foot?: string;
  readonly turn?: 0 | 90;
  readonly inner?: number;
  readonly code?: boolean;
}

/** How much of some ink (pt) is taken away, of which a line of type stands this far (mm) above or below a block, and why. */
async function left(white: number, { head = ['Thistle & Tin'], foot = '', turn = 0, inner = 3, code = false }: More = {}) {
  const drawing = new Drawing(612, 792);
  drawing.block(HEAD.x, HEAD.y + HEAD.height, head, { size: 14 });
  const top = HEAD.y + HEAD.height + (head.length - 1) * 16.8 + mmToPt(white);
  const blocks = [top, top + 60 + mmToPt(inner), top + 120 + mmToPt(inner)];
  for (const [at, y] of blocks.entries())
    drawing.rect(BLOCK.x, y, BLOCK.width, 40).text(BLOCK.x + 20, y + 58, `Ada Invented ${String(at)}`, { size: 12 });
  if (foot !== '') drawing.text(BLOCK.x, (blocks.at(-1) ?? 0) + 58 + mmToPt(white) + 8, foot, { size: 10 });
  const page = await drawnPage(drawing, turn);
  const blobs = inkBlobs(page.ink());
  const bounds = union(blobs) ?? HEAD;
  const codes = code ? [barsAt({ ...HEAD, height: 20 })] : [];
  expect(lonePart(judged(bounds, 0.9, { edge: 'frame' }), page, blobs)).toBeUndefined();
  const part = lonePart(judged(bounds, 0.9, { edge: 'ink', codes }), page, blobs);
  return part && { why: part.why, lost: bounds.height - part.rest.height + bounds.width - part.rest.width };
}

describe('lonePart', () => {
  it('is a head clearly farther off than the other parts are from each other, whichever way the label lies', async () => {
    const { why, lost = 0 } = (await left(11)) ?? {};
    expect(why).toBe("has a head far from the rest that may be the page's");
    expect(lost).toBeGreaterThan(mmToPt(11));
    expect(lost).toBeLessThan(mmToPt(11) + 20);
    expect(await left(11, { turn: 90 })).toEqual(expect.objectContaining({ why }));
  });

  it('is none where the white is usual in a label, or as wide in the rest of it', async () => {
    expect(await left(6)).toBeUndefined();
    expect(await left(11, { inner: 10 })).toBeUndefined();
    expect(await left(16, { inner: 10 })).toBeDefined();
  });

  it('is no head with a weight, a code or an address', async () => {
    for (const weight of ['Express 2,9 kg', 'Larch Air 6.2 lb', '12 oz']) expect(await left(11, { head: [weight] })).toBeUndefined();
    expect(await left(11, { head: ['Larch Halt 25 kgs4'] })).toBeDefined();
    expect(await left(11, { code: true })).toBeUndefined();
    expect(await left(11, { head: ['Ada Invented', '14 Sample Lane', 'Larch Halt EX1 2AB'] })).toBeUndefined();
  });

  it('is a first line that counts parcels or names an order, however near', async () => {
    for (const head of [['Parcel 1 of 2'], ['Thistle & Tin - order 70464'], ['Sheet 2 of 5', 'Larch Halt']])
      expect(await left(5, { head })).toEqual(expect.objectContaining({ why: "has a line at its head that may be the page's" }));
    for (const head of [['Paket 2 kg'], ['Larch Halt', 'Parcel 1 of 2']]) expect(await left(5, { head })).toBeUndefined();
  });

  it.each([
    ['Thank you for your order!', 5.5],
    ['Postage $7.12, paid', 5.5],
    ['printed 24/11/2026 09:41', 5.5],
    ['The refund follows within fourteen days.', 7.5],
  ])('is what a page says, at any side: %s', async (foot, white) => {
    const why = "has writing at its edge that may be the page's";
    expect(await left(white, { foot, head: [] })).toEqual(expect.objectContaining({ why }));
    expect(await left(white, { foot, head: [], turn: 90 })).toEqual(expect.objectContaining({ why }));
    expect(await left(white - 2, { foot, head: [] })).toBeUndefined();
    expect(await left(white, { foot: 'Larch Halt, weight 2 kg', head: [] })).toBeUndefined();
  });

  it('is none with a sentence where both sides together have sender and receiver', async () => {
    const told = async (...foot: readonly string[]) => {
      const drawing = new Drawing(612, 792);
      drawing.block(60, 72, ['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'], { size: 12 });
      drawing.block(60, 150, foot, { size: 12 });
      const page = await drawnPage(drawing);
      const blobs = inkBlobs(page.ink());
      return lonePart(judged(union(blobs) ?? HEAD, 0.9, { edge: 'ink', codes: [] }), page, blobs)?.why;
    };
    const remark = 'The refund follows within fourteen days.';
    expect(await told(remark)).toBe("has writing at its edge that may be the page's");
    expect(await told('Bela Invented', '9 Sample Lane', 'Larch Halt EX 00188', remark)).toBeUndefined();
  });
});
