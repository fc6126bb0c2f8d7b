import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRID_NAMES, gridOf, wholeDots } from '../../src/geometry/grid.js';
import { inToPt, lengthToPt, mmToPt, parseLength, ptToIn, ptToMm, UNITS } from '../../src/geometry/length.js';
import { fitFactor, parseMedia } from '../../src/geometry/media.js';

const grid = fc.constantFrom(...GRID_NAMES).map(gridOf);
const positive = fc.double({ min: 0.01, max: 2000, noNaN: true });
/** A number as people write it: whole, or with up to three places. */
const written = fc.integer({ min: -99_999, max: 99_999 }).map((thousandths) => String(thousandths / 1000));

describe('lengths', () => {
  it('are read back as written, with or without a space before the unit', () => {
    fc.assert(
      fc.property(written, fc.constantFrom(...UNITS), fc.constantFrom('', ' '), (value, unit, gap) => {
        expect(parseLength(`${value}${gap}${unit}`)).toEqual({ value: Number(value), unit });
      }),
    );
  });

  it('need a unit, one that exists, and nothing else', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const length = parseLength(text);
        if (length === undefined) return;
        expect(text.trim()).toMatch(/^-?[\d.]+\s*(?:mm|in|pt|dots)$/);
        expect(Number.isFinite(length.value)).toBe(true);
      }),
    );
    for (const text of ['10', '10cm', 'mm', '1e3mm', '10 mm wide', '1,5mm', '٣mm', '']) expect(parseLength(text), text).toBeUndefined();
  });

  it('come back through other units', () => {
    fc.assert(
      fc.property(positive, (value) => {
        expect(ptToMm(mmToPt(value))).toBeCloseTo(value, 9);
        expect(ptToIn(inToPt(value))).toBeCloseTo(value, 9);
        expect(mmToPt(25.4 * value)).toBeCloseTo(inToPt(value), 6);
      }),
    );
  });

  it('in dots come back as the same number of whole dots', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4000 }), grid, (dots, on) => {
        expect(wholeDots(lengthToPt({ value: dots, unit: 'dots' }, on), on)).toBe(dots);
      }),
    );
  });
});

describe('media', () => {
  it('of any size are read by their measures', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 1, max: 4000 }), fc.constantFrom('in', 'mm'), (w, h, unit) => {
        const toPt = unit === 'in' ? inToPt : mmToPt;
        const media = parseMedia(`${w / 10}x${h / 10}${unit}`);
        expect(media?.width).toBeCloseTo(toPt(w / 10), 9);
        expect(media?.height).toBeCloseTo(toPt(h / 10), 9);
        expect(parseMedia(`custom_any-name_${w / 10}x${h / 10}${unit}`)).toMatchObject({ width: media?.width, height: media?.height });
      }),
    );
  });

  it('are never made of other words, and never have an empty side', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const media = parseMedia(text);
        if (media) expect(Math.min(media.width, media.height)).toBeGreaterThan(0);
      }),
    );
    for (const text of ['0x6in', '4x6', '4 x 6 in', '4x6cm', 'x6in', '-4x6in', 'toString', 'constructor', '__proto__']) {
      expect(parseMedia(text), text).toBeUndefined();
    }
  });

  it('a fitted page touches one pair of sides and stays inside', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, (w, h, toW, toH) => {
        const factor = fitFactor(w, h, toW, toH);
        expect(w * factor).toBeLessThanOrEqual(toW * (1 + 1e-9));
        expect(h * factor).toBeLessThanOrEqual(toH * (1 + 1e-9));
        expect(Math.min(Math.abs(w * factor - toW) / toW, Math.abs(h * factor - toH) / toH)).toBeLessThan(1e-9);
      }),
    );
  });
});
