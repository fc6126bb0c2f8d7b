import bwipjs from 'bwip-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { decodability } from '../../src/proof/decodability.js';
import { measureCode, type CodeMeasure } from '../../src/proof/measure-code.js';
import { gradeOf } from '../../src/proof/simulated-grade.js';
import type { Code, GreyRaster } from '../../src/reading/source.js';

const grid = gridOf('203dpi');
const PER_PT = 203 / 72;
const [{ sbs: raw }] = bwipjs.raw({ bcid: 'code128', text: 'SAMPLE-0042-7788' } as never) as unknown as [{ sbs: number[] }];
const MODULES = raw.length % 2 === 0 ? raw.slice(0, -1) : raw;
const TOTAL = MODULES.reduce((sum, each) => sum + each, 0);

/** A page of 1000 × 300 dots with the code's bars from y 80 to 200, each edge rounded to a dot by itself. */
function page(
  module: number,
  start = 60,
  change: (dots: Uint8Array) => void = () => undefined,
  turned = false,
): { dots: GreyRaster; code: Code } {
  const [width, height] = [1000, 300];
  const data = new Uint8Array(width * height).fill(255);
  let at = start;
  MODULES.forEach((each, index) => {
    const [from, to] = [Math.round(at), Math.round(at + each * module)];
    if (index % 2 === 0) for (let y = 80; y < 200; y++) data.fill(0, y * width + from, y * width + to);
    at += each * module;
  });
  change(data);
  const pt = (dots: number): number => dots / PER_PT;
  const [x, y, w, h] = [pt(start), pt(80), pt(at - start), pt(120)];
  const box = turned ? { x: y, y: x, width: h, height: w } : { x, y, width: w, height: h };
  const corner = (px: number, py: number): { x: number; y: number } => ({ x: px, y: py });
  const corners = [
    corner(box.x, box.y),
    corner(box.x + box.width, box.y),
    corner(box.x + box.width, box.y + box.height),
    corner(box.x, box.y + box.height),
  ] as const;
  const code: Code = { symbology: 'Code 128', identifier: ']C0', bytes: '', corners, box, turn: turned ? 90 : 0 };
  const raster: GreyRaster = { width, height, data, pixelsPerPt: PER_PT, origin: { x: 0, y: 0 } };
  return { code, dots: turned ? transposed(raster) : raster };
}

function transposed({ width, height, data, ...raster }: GreyRaster): GreyRaster {
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) out[x * height + y] = data[y * width + x] ?? 255;
  return { ...raster, width: height, height: width, data: out };
}

const measured = (...args: Parameters<typeof page>): CodeMeasure | undefined => {
  const { dots, code } = page(...args);
  return measureCode(dots, code, grid, 0.5);
};

describe('measureCode', () => {
  it('of a code on whole dots: every figure as planned', () => {
    for (const turned of [false, true]) {
      const measure = measured(3, 60, undefined, turned);
      expect(measure?.moduleDots).toBe(3);
      expect(measure?.moduleMm).toBeCloseTo(0.3754, 4);
      expect(measure?.moduleMil).toBeCloseTo(14.78, 2);
      expect(measure?.barHeightMm).toBeCloseTo((120 / 203) * 25.4, 3);
      expect(measure?.quiet).toEqual({ before: 20, after: 20 });
      expect(measure).toMatchObject({ farthestOff: 0, decodability: { mean: 1, worst: 1 }, defects: 0, grade: 4 });
      expect(measure?.modules).toEqual(MODULES);
    }
  });

  it('of paper beside the bars: what scans cross (ISO/IEC 15416: the inner 80 % of the height), not specks at the corners', () => {
    const specks = (...rows: readonly number[]): CodeMeasure['quiet'] | undefined =>
      measured(3, 60, (dots) => {
        for (const y of rows) dots[y * 1000 + 56] = 0;
      })?.quiet;
    expect(specks(80, 199)).toEqual({ before: 20, after: 20 });
    expect(specks(91, 188)).toEqual({ before: 20, after: 20 });
    expect(specks(93)).toEqual({ before: 1, after: 20 });
    expect(specks(140)).toEqual({ before: 1, after: 20 });
  });

  it('of 15 mil at 203 dpi, each edge rounded by itself: some elements a dot off, a third of a module (handbook section 5.4, computed)', () => {
    const measure = measured(3.048);
    expect(measure?.farthestOff).toBeGreaterThan(0.85);
    expect(measure?.decodability.worst).toBeLessThan(0.5);
    expect(measure?.decodability.worst).toBeGreaterThan(0.25);
  });

  it('at 0.94 of 3 dots the bars are uneven and under the limit', () => {
    const measure = measured(2.82);
    expect(measure?.decodability.mean).toBeLessThan(0.5);
  });

  it('a single column forced white is seen wherever it alters a bar, and only there', () => {
    for (let x = 55; x < 60 + 3 * TOTAL + 10; x++) {
      let altered = false;
      const measure = measured(3, 60, (dots) => {
        for (let y = 80; y < 200; y++) {
          altered ||= dots[y * 1000 + x] === 0;
          dots[y * 1000 + x] = 255;
        }
      });
      const untouched = measure?.farthestOff === 0 && measure.decodability.worst === 1 && measure.moduleDots === 3;
      expect(untouched, `column ${x}`).toBe(!altered);
    }
  });

  it('a deleted column, where neighbours move up, is seen in every position inside the bars', () => {
    for (let gone = 61; gone < 60 + 3 * TOTAL - 1; gone += 7) {
      const measure = measured(3, 60, (dots) => {
        for (let y = 0; y < 300; y++) dots.copyWithin(y * 1000 + gone, y * 1000 + gone + 1, (y + 1) * 1000);
      });
      expect((measure?.farthestOff ?? 1) >= 0.9 || (measure?.decodability.worst ?? 0) < 0.5, `column ${gone}`).toBe(true);
    }
  });

  it('ink in the quiet zone shortens it', () => {
    const stamped = (x: number) => (dots: Uint8Array) => {
      for (let y = 150; y < 156; y++) dots.fill(0, y * 1000 + x, y * 1000 + x + 4);
    };
    expect(measured(3, 60, stamped(60 - 4 - 15))?.quiet.before).toBeCloseTo(5, 6);
    expect(measured(3, 60, stamped(60 + 3 * TOTAL + 12))?.quiet.after).toBeCloseTo(4, 6);
    // Above the bars it is no matter.
    expect(measured(3, 60, (dots) => dots.fill(0, 60 * 1000 + 40, 60 * 1000 + 55))?.quiet).toEqual({ before: 20, after: 20 });
    // Beyond the page's edge there is no paper.
    expect(measured(3, 12)?.quiet.before).toBeCloseTo(4, 6);
  });

  it('a void inside a bar and a speck inside a space are defects', () => {
    const wide = MODULES.findIndex((each, index) => index % 2 === 0 && each >= 3);
    const at = 60 + 3 * MODULES.slice(0, wide).reduce((sum, each) => sum + each, 0);
    const measure = measured(3, 60, (dots) => {
      for (let y = 130; y < 150; y++) dots.fill(255, y * 1000 + at + 3, y * 1000 + at + 5);
    });
    expect(measure?.defects).toBeGreaterThan(0.3);
    expect(measure?.grade).toBeLessThan(4);
  });

  it('measures no other codes', () => {
    const { dots, code } = page(3);
    expect(measureCode(dots, { ...code, symbology: 'QR' }, grid, 0)).toBeUndefined();
    expect(measureCode(dots, { ...code, turn: undefined }, grid, 0)).toBeUndefined();
    expect(measureCode({ ...dots, data: new Uint8Array(1000 * 300).fill(255) }, code, grid, 0)).toBeUndefined();
  });

  it('whole dots give the full decodability at any place, and gain up to half a dot leaves a good label good', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 4 }),
        fc.integer({ min: 30, max: 90 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (module, start, gain) => {
          const { dots, code } = page(module, start);
          const measure = measureCode(dots, code, grid, gain);
          expect(measure?.decodability.mean).toBe(1);
          expect(measure?.decodability.atGain).toBeGreaterThanOrEqual(0.37);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('decodability', () => {
  const meant = { modules: MODULES, module: 1 };
  const off = (index: number, by: number): number[] =>
    MODULES.map((each, at) => (at === index ? each + by : at === index + 1 ? each - by : each));

  it('leaves a third where an edge is a third of a module off (handbook section 5.4, computed)', () => {
    expect(decodability(MODULES, meant, 'Code 128')).toBe(1);
    expect(decodability(off(7, 1 / 3), meant, 'Code 128')).toBeCloseTo(1 / 3, 6);
    expect(decodability(off(7, 0.25), meant, 'Code 128')).toBeCloseTo(0.5, 6);
    expect(decodability(off(7, 0.6), meant, 'Code 128')).toBeUndefined();
  });

  it('is moved by even growth only through the bars: (1.75 − growth of three bars) / 1.75', () => {
    expect(decodability(MODULES, meant, 'Code 128', 0.2)).toBeCloseTo((1.75 - 0.6) / 1.75, 6);
    expect(decodability(MODULES, meant, 'Code 128', -0.2)).toBeCloseTo((1.75 - 0.6) / 1.75, 6);
  });

  it('is half for a two-width element half way to the threshold', () => {
    const [{ sbs }] = bwipjs.raw({ bcid: 'interleaved2of5', text: '15400141288763' } as never) as unknown as [{ sbs: number[] }];
    const itf = sbs.length % 2 === 0 ? sbs.slice(0, -1) : sbs;
    expect(decodability(itf, { modules: itf, module: 1 }, 'ITF')).toBe(1);
    const wide = Math.max(...itf);
    const one = itf.map((each, at) => (at === itf.indexOf(wide, 5) ? each - (wide - 1) * 0.3 : each));
    expect(decodability(one, { modules: itf, module: 1 }, 'ITF')).toBeLessThan(0.75);
  });
});

describe('gradeOf (ISO/IEC 15416, handbook section 5.1, secondary)', () => {
  it('gives the table its whole grades, and decimals between them', () => {
    expect([0.62, 0.5, 0.37, 0.25].map((value) => gradeOf('decodability', value))).toEqual([4, 3, 2, 1]);
    expect([0.7, 0.6, 0.5, 0.4].map((value) => gradeOf('modulation', value))).toEqual([4, 3, 2, 1]);
    expect([0.15, 0.2, 0.25, 0.3].map((value) => gradeOf('defects', value))).toEqual([4, 3, 2, 1]);
    expect(gradeOf('decodability', 0.56)).toBe(3.5);
    expect([gradeOf('decodability', 1), gradeOf('decodability', 0), gradeOf('defects', 0), gradeOf('defects', 1)]).toEqual([4, 0, 4, 0]);
  });
});
