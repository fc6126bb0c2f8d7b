import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { applyToBox, TURNS } from '../../src/geometry/placement.js';
import { fits, place } from '../../src/press/place.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';

const media = { name: '4x6in', width: 288, height: 432 };
const grid = gridOf('203dpi');
const sheetOf = (box: Sheet['box'], turn: Sheet['turn'], scale: number, margin = 0): Sheet => ({
  ...pageSheet(1, 612, 792),
  box,
  turn,
  scale,
  margin,
});

describe('place', () => {
  it('centres a region on the media, whatever its turn and scale', () => {
    fc.assert(
      fc.property(
        fc.record({ x: fc.double({ min: -50, max: 400, noNaN: true }), y: fc.double({ min: -50, max: 400, noNaN: true }) }),
        fc.record({ width: fc.double({ min: 10, max: 280, noNaN: true }), height: fc.double({ min: 10, max: 280, noNaN: true }) }),
        fc.constantFrom(...TURNS),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        (at, size, turn, scale) => {
          const sheet = sheetOf({ ...at, ...size }, turn, scale);
          const { matrix, drawnBox } = place(sheet, 1, media, grid, undefined);
          expect(drawnBox.x + drawnBox.width / 2).toBeCloseTo(144, 6);
          expect(drawnBox.y + drawnBox.height / 2).toBeCloseTo(216, 6);
          const mapped = matrix && applyToBox(matrix, sheet.box);
          expect(mapped?.width).toBeCloseTo(drawnBox.width, 6);
          expect(mapped?.height).toBeCloseTo((turn % 180 === 0 ? size.height : size.width) * scale, 6);
        },
      ),
    );
  });

  it('puts pixel edges on dot edges, moving by less than a dot', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 790 }),
        fc.integer({ min: 50, max: 790 }),
        fc.constantFrom(...TURNS),
        fc.record({ x: fc.double({ min: 0, max: 200, noNaN: true }), y: fc.double({ min: 0, max: 200, noNaN: true }) }),
        (across, down, turn, origin) => {
          const pixelsPerPt = 203 / 72;
          const box = { ...origin, width: across / pixelsPerPt, height: down / pixelsPerPt };
          const { drawnBox, pixelForDot } = place(sheetOf(box, turn, 1), 1, media, grid, { pixelsPerPt, origin });
          const dots = [drawnBox.x, drawnBox.y, drawnBox.x + drawnBox.width, drawnBox.y + drawnBox.height].map((pt) => pt * pixelsPerPt);
          expect(pixelForDot).toBe(true);
          for (const dot of dots) expect(Math.abs(dot - Math.round(dot))).toBeLessThan(1e-6);
          expect(Math.abs(drawnBox.x + drawnBox.width / 2 - 144) * pixelsPerPt).toBeLessThan(1);
        },
      ),
    );
  });

  it('leaves pictures alone whose pixels are no whole dots', () => {
    const sheet = sheetOf({ x: 0, y: 0, width: 200, height: 300 }, 0, 1);
    expect(place(sheet, 1, media, grid, { pixelsPerPt: 300 / 72, origin: { x: 0, y: 0 } }).pixelForDot).toBe(false);
  });
});

describe('fits', () => {
  it('allows what rounding a page to whole points leaves, and nothing with a margin', () => {
    const wide = (width: number, margin: number): boolean => fits(sheetOf({ x: 0, y: 0, width, height: 400 }, 0, 1, margin), media);
    expect([wide(288, 0), wide(289, 0), wide(290, 0)]).toEqual([true, true, false]);
    expect([wide(268, 10), wide(269, 10)]).toEqual([true, false]);
  });

  it('looks at the region as turned and scaled', () => {
    const lying = sheetOf({ x: 0, y: 0, width: 432, height: 288 }, 0, 1);
    expect([fits(lying, media), fits({ ...lying, turn: 90 }, media), fits({ ...lying, scale: 0.6 }, media)]).toEqual([false, true, true]);
  });
});
