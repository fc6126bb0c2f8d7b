import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { gridOf } from '../../src/geometry/grid.js';
import { fits } from '../../src/press/place.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import type { LargePages } from '../../src/steps/step.js';
import { atTrueSize } from '../../src/steps/true-size.js';
import { mediaNamed } from './on-sample.js';

/** A printer of this media that prints nothing of the outer `margin` pt. */
function printer(name: string, margin = 0): LargePages {
  const media = mediaNamed(name);
  const reach = { x: margin, y: margin, width: media.width - 2 * margin, height: media.height - 2 * margin };
  return { name: 'office', media, grid: gridOf('300dpi'), reach };
}
const inside = (width: number, height: number, edge: number): Box => ({
  x: edge,
  y: edge,
  width: width - 2 * edge,
  height: height - 2 * edge,
});
const laid = (width: number, height: number, ink: Box, on: LargePages) => atTrueSize(pageSheet(1, width, height), ink, on);

describe('a page at true size', () => {
  it('is the whole page where it fits, as it lies', () => {
    expect(laid(612, 792, inside(612, 792, 36), printer('letter', 12))).toMatchObject({
      output: 'office',
      scale: 1,
      turn: 0,
      margin: 0,
      box: { x: 0, y: 0, width: 612, height: 792 },
      evidence: ['true size on office (letter)'],
    });
  });

  it('is turned by a quarter where it only fits that way', () => {
    expect(laid(792, 612, inside(792, 612, 36), printer('letter'))).toMatchObject({
      turn: 90,
      evidence: ['true size on office (letter)', 'turned a quarter to lie along the sheet'],
    });
  });

  it('goes without its white edge where its paper is larger, its middle on the middle of the sheet', () => {
    const made = laid(595, 842, inside(595, 842, 36), printer('letter', 5));
    expect(made).toMatchObject({ box: { x: 0, y: 25, width: 595, height: 792 }, scale: 1, turn: 0 });
    expect('refused' in made ? [] : made.evidence[1]).toMatch(/^its white edge left out: the page is 8\.26×11\.69 in$/);
  });

  it('is moved where only what is printed has room', () => {
    const ink = { x: 20, y: 10, width: 500, height: 700 };
    expect(laid(612, 1000, ink, printer('letter', 20))).toMatchObject({ box: ink, scale: 1, turn: 0 });
  });

  it('is refused with figures where the printer does not reach', () => {
    const ink = inside(612, 792, 10);
    expect(laid(612, 792, ink, printer('letter', 20))).toEqual({
      refused: 'it is 8.22×10.72 in at true size, and office prints 7.94×10.44 in of a page of letter',
    });
    expect(laid(842, 1191, inside(842, 1191, 30), printer('letter'))).toHaveProperty('refused');
  });

  it('is never shrunk, never cut, and always where the printer reaches', () => {
    const side = fc.integer({ min: 100, max: 1300 });
    const media = fc.constantFrom('letter', 'a4', 'legal', 'a5');
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 1, max: 45 }),
        media,
        fc.integer({ min: 0, max: 30 }),
        (width, height, edge, name, margin) => {
          const ink = inside(width, height, edge);
          const made = laid(width, height, ink, printer(name, margin));
          const room = mediaNamed(name);
          const [least, most] = [Math.min(ink.width, ink.height), Math.max(ink.width, ink.height)];
          const wouldFit = least <= room.width - 2 * margin && most <= room.height - 2 * margin;
          if ('refused' in made) return !wouldFit;
          return (
            made.scale === 1 &&
            made.box.x <= ink.x + 0.2 &&
            made.box.y <= ink.y + 0.2 &&
            made.box.width >= ink.width - 0.2 &&
            made.box.height >= ink.height - 0.2 &&
            fits(made, room)
          );
        },
      ),
    );
  });
});
