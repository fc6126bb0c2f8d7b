import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { freeBoxOnLabel, freeNumberBox, numberBoxInMargin, ON_LABEL_CLEAR } from '../../src/press/free-number-box.js';
import { printedDots } from '../../src/press/printed-dots.js';

const whole = { x: 0, y: 0, width: 288, height: 432 };
const size = { width: 40, height: 12 };
const perPt = 203 / 72;

/** A page with black boxes (pt). */
function page(...black: readonly Box[]): ReturnType<typeof printedDots> {
  const [width, height] = [812, 1218];
  const data = new Uint8Array(width * height).fill(255);
  for (const box of black) {
    for (let y = Math.floor(box.y * perPt); y < Math.min(height, (box.y + box.height) * perPt); y++) {
      for (let x = Math.floor(box.x * perPt); x < Math.min(width, (box.x + box.width) * perPt); x++) data[y * width + x] = 0;
    }
  }
  return printedDots({ width, height, data, pixelsPerPt: perPt, origin: { x: 0, y: 0 } });
}

const touches = (a: Box, b: Box): boolean => a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

describe('a free rectangle in the margin', () => {
  const frame = { x: 40, y: 40, width: 200, height: 340 };
  const hollow = [
    { ...frame, height: 2 },
    { ...frame, y: 378, height: 2 },
  ];

  it('is never inside what is printed, however white that is, and keeps away from the edge of the paper', () => {
    const box = numberBoxInMargin(page(...hollow), whole, [size]);
    expect(box && touches(box, frame)).toBe(false);
    expect((box?.y ?? NaN) + 12).toBeLessThan(432 - 18);
    expect((box?.x ?? NaN) + 40).toBeLessThan(288 - 18);
    expect(box?.y).toBeGreaterThan(380);
  });

  it('goes nearer to the edge before there is none, and takes the first size that has room', () => {
    const low = page({ x: 5, y: 5, width: 278, height: 405 });
    const near = numberBoxInMargin(low, whole, [size]);
    expect((near?.y ?? NaN) + 12).toBeGreaterThan(432 - 18);
    expect(numberBoxInMargin(low, { ...whole, height: 420 }, [size])).toBeUndefined();
    const small = { width: 20, height: 6 };
    expect(numberBoxInMargin(page(...hollow), whole, [{ width: 400, height: 12 }, small])).toMatchObject(small);
    expect(numberBoxInMargin(page({ x: 2, y: 2, width: 284, height: 428 }), whole, [small])).toBeUndefined();
  });

  it('is anywhere on a blank page', () => {
    expect(numberBoxInMargin(page(), whole, [size])).toMatchObject(size);
    expect(numberBoxInMargin(page(), whole, [])).toBeUndefined();
  });
});

describe('a free rectangle', () => {
  it('is in the bottom right corner of an empty page, on the page', () => {
    const box = freeNumberBox(page(), whole, size, undefined);
    expect(box?.width).toBe(40);
    expect(box?.height).toBe(12);
    expect((box?.x ?? NaN) + 40).toBeGreaterThan(280);
    expect((box?.x ?? NaN) + 40).toBeLessThan(288);
    expect((box?.y ?? NaN) + 12).toBeGreaterThan(424);
    expect((box?.y ?? NaN) + 12).toBeLessThan(432);
  });

  it('moves left, then up, to keep clear of ink', () => {
    const corner = { x: 250, y: 400, width: 38, height: 32 };
    const left = freeNumberBox(page(corner), whole, size, undefined);
    expect(left && touches(left, corner)).toBe(false);
    expect(left?.y).toBeGreaterThan(410);
    const foot = { x: 0, y: 400, width: 288, height: 32 };
    const up = freeNumberBox(page(foot), whole, size, undefined);
    expect((up?.y ?? NaN) + 12).toBeLessThan(400);
    expect((up?.y ?? NaN) + 12).toBeGreaterThan(390);
  });

  it('keeps out of a label’s box though it is white there', () => {
    const label = { x: 0, y: 0, width: 288, height: 405 };
    const box = freeNumberBox(page(), whole, size, label);
    expect(box && touches(box, label)).toBe(false);
    expect(freeNumberBox(page(), whole, size, { ...label, height: 420 })).toBeUndefined();
  });

  it('lies where the printer reaches', () => {
    const reach = { x: 10, y: 8, width: 260, height: 400 };
    const box = freeNumberBox(page(), reach, size, undefined);
    expect((box?.x ?? NaN) + 40).toBeGreaterThan(262);
    expect((box?.x ?? NaN) + 40).toBeLessThan(270);
    expect((box?.y ?? NaN) + 12).toBeGreaterThan(400);
    expect((box?.y ?? NaN) + 12).toBeLessThan(408);
    expect(freeNumberBox(page({ x: 0, y: 0, width: 288, height: 395 }), reach, size, undefined)).toBeUndefined();
  });

  it('is not there when a single dot in each place stands in the way', () => {
    const dots: Box[] = [];
    for (let y = 5; y < 432; y += 10) for (let x = 5; x < 288; x += 30) dots.push({ x, y, width: 0.3, height: 0.3 });
    expect(freeNumberBox(page(...dots), whole, size, undefined)).toBeUndefined();
  });
});

describe('a free rectangle on a label', () => {
  const label = { x: 20, y: 20, width: 240, height: 380 };
  const apart = (a: Box, b: Box): number =>
    Math.max(a.x - (b.x + b.width), b.x - (a.x + a.width), a.y - (b.y + b.height), b.y - (a.y + a.height));

  it('lies in the label, clear of its edge, of all ink and of what is kept free, by the stated distance', () => {
    const ink = { x: 150, y: 300, width: 100, height: 90 };
    const code = { x: 30, y: 200, width: 100, height: 190 };
    const box = freeBoxOnLabel(page(ink), label, size, [code]);
    if (!box) throw new Error('there is room');
    expect(apart(box, ink)).toBeGreaterThanOrEqual(ON_LABEL_CLEAR - 0.1);
    expect(apart(box, code)).toBeGreaterThanOrEqual(ON_LABEL_CLEAR - 0.1);
    expect(box.x - label.x).toBeGreaterThanOrEqual(ON_LABEL_CLEAR);
    expect(label.x + label.width - box.x - box.width).toBeGreaterThanOrEqual(ON_LABEL_CLEAR);
    expect(box.y - label.y).toBeGreaterThanOrEqual(ON_LABEL_CLEAR);
  });

  it('takes a pale tint, which the printer leaves white, for ink', () => {
    const [width, height] = [812, 1218];
    const tinted = (value: number) =>
      printedDots({ width, height, data: new Uint8Array(width * height).fill(value), pixelsPerPt: perPt, origin: { x: 0, y: 0 } });
    expect(freeBoxOnLabel(tinted(235), label, size, [])).toBeUndefined();
    expect(freeBoxOnLabel(tinted(254), label, size, [])).toBeDefined();
  });

  it('is not there where nothing is left free', () => {
    expect(freeBoxOnLabel(page(), label, size, [label])).toBeUndefined();
    expect(freeBoxOnLabel(page(), { ...label, width: 45 }, size, [])).toBeUndefined();
  });
});
