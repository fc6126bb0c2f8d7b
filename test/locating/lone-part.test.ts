import { describe, expect, it } from 'vitest';
import { union, type Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { withoutLoneHead } from '../../src/locating/lone-head.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { barsAt, judged } from './judged.js';

const HEAD: Box = { x: 60, y: 60, width: 160, height: 14 };
const BLOCK = { x: 60, width: 240 };

/** How much of some ink (pt) is taken away, of which a line of type stands this far (mm) above a block. */
async function left(white: number, more: { head?: readonly string[]; turn?: 0 | 90; inner?: number; code?: boolean } = {}) {
  const { head = ['Thistle & Tin'], turn = 0, inner = 3, code = false } = more;
  const drawing = new Drawing(612, 792);
  drawing.block(HEAD.x, HEAD.y + HEAD.height, head, { size: 14 });
  const top = HEAD.y + HEAD.height + (head.length - 1) * 16.8 + mmToPt(white);
  for (const [at, y] of [top, top + 60 + mmToPt(inner), top + 120 + mmToPt(inner)].entries())
    drawing.rect(BLOCK.x, y, BLOCK.width, 40).text(BLOCK.x + 20, y + 58, `Ada Invented ${String(at)}`, { size: 12 });
  const page = await drawnPage(drawing, turn);
  const blobs = inkBlobs(page.ink());
  const bounds = union(blobs) ?? HEAD;
  const codes = code ? [barsAt({ ...HEAD, height: 20 })] : [];
  const rest = withoutLoneHead(judged(bounds, 0.9, { edge: 'ink', codes }), page, blobs);
  expect(withoutLoneHead(judged(bounds, 0.9, { edge: 'frame' }), page, blobs)).toBeUndefined();
  return rest && bounds.height - rest.height + bounds.width - rest.width;
}

describe('withoutLoneHead', () => {
  it('is a label without the line that stands clearly farther off than its parts are from each other, whichever way it lies', async () => {
    const lost = await left(11);
    expect(lost).toBeGreaterThan(mmToPt(11));
    expect(lost).toBeLessThan(mmToPt(11) + 20);
    expect(await left(11, { turn: 90 })).toBeDefined();
  });

  it('is none where the white is usual in a label, or as wide in the rest of it', async () => {
    expect(await left(7)).toBeUndefined();
    expect(await left(11, { inner: 10 })).toBeUndefined();
    expect(await left(14, { inner: 10 })).toBeDefined();
  });

  it('is none where the head has a code or an address', async () => {
    expect(await left(11, { code: true })).toBeUndefined();
    expect(await left(11, { head: ['Ada Invented', '14 Sample Lane', 'Larch Halt EX1 2AB'] })).toBeUndefined();
  });
});
