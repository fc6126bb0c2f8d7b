import { describe, expect, it } from 'vitest';
import { moduleWidth } from '../../src/proof/module-width.js';
import type { Code, GreyRaster } from '../../src/reading/source.js';

/**
 * Bars and spaces of a Code 128 symbol in modules: `AIM` in set B, ISO/IEC 15417 fig. 1 (secondary, by way of handbook
 * section 11.4).
 */
const AIM = '11010010000101000110001100010001010111011000101110110001100011101011';
const ELEMENTS = (AIM.match(/1+|0+/g) ?? []).map((run) => run.length);

const LEFT = 20.3;
const TOP = 10;
const BARS = 60;

/** The symbol with soft edges, as an area-weighing rasteriser draws it; bars grown by `growth` pixels in all. */
function drawn(module: number, growth: number, ladder: boolean): { raster: GreyRaster; code: Code } {
  const length = ELEMENTS.reduce((sum, each) => sum + each, 0) * module;
  const long = Math.ceil(LEFT * 2 + length);
  const short = BARS + 2 * TOP;
  const ink = new Float64Array(long);
  let at = LEFT;
  ELEMENTS.forEach((modules, index) => {
    const [from, to] = [at - growth / 2, at + modules * module + growth / 2];
    at += modules * module;
    if (index % 2 === 1) return;
    for (let x = Math.floor(from); x < to; x++) ink[x] = (ink[x] ?? 0) + Math.min(x + 1, to) - Math.max(x, from);
  });
  const [width, height] = ladder ? [short, long] : [long, short];
  const data = new Uint8Array(width * height).fill(255);
  for (let along = 0; along < long; along++) {
    for (let across = TOP; across < TOP + BARS; across++) {
      data[ladder ? along * width + across : across * width + along] = Math.round(255 * (1 - Math.min(1, ink[along] ?? 0)));
    }
  }
  const corner = (u: number, v: number): { x: number; y: number } => (ladder ? { x: width - v, y: u } : { x: u, y: v });
  const [x0, x1, y0, y1] = [LEFT, LEFT + length, TOP, TOP + BARS];
  const code: Code = {
    symbology: 'Code 128',
    identifier: ']C0',
    bytes: '41494d',
    corners: [corner(x0, y0), corner(x1, y0), corner(x1, y1), corner(x0, y1)],
    box: { x: 0, y: 0, width, height },
    turn: ladder ? 90 : 0,
  };
  return { raster: { width, height, data, pixelsPerPt: 1, origin: { x: 0, y: 0 } }, code };
}

describe('the width of a module', () => {
  const cases = [1.41, 2, 2.5, 3, 4, 6].flatMap((module) => [false, true].map((ladder) => [module, ladder] as const));
  it.each(cases)('%s pixels, ladder %s, is measured to a twentieth', (module, ladder) => {
    const { raster, code } = drawn(module, 0, ladder);
    expect(Math.abs((moduleWidth(raster, code) ?? NaN) - module)).toBeLessThan(0.05 * module);
  });

  it('is not misled by bars that grew in printing', () => {
    const { raster, code } = drawn(4, 0.8, false);
    expect(moduleWidth(raster, code)).toBeCloseTo(4, 1);
  });

  it.each([2, 3, 4])('is exact in one bit for %s whole dots', (module) => {
    const { raster, code } = drawn(module, 0, false);
    const bits = { ...raster, data: raster.data.map((value) => (value < 128 ? 0 : 255)) };
    expect(moduleWidth(bits, code)).toBeCloseTo(module, 6);
  });

  it('is the broken bars’ own in one bit, never rounded up', () => {
    const { raster, code } = drawn(1.41, 0, false);
    const bits = { ...raster, data: raster.data.map((value) => (value < 128 ? 0 : 255)) };
    const width = moduleWidth(bits, code) ?? NaN;
    expect(width).toBeGreaterThanOrEqual(1);
    expect(width).toBeLessThan(1.6);
  });

  it('is unknown for a matrix code and where there are no bars', () => {
    const { raster, code } = drawn(3, 0, false);
    expect(moduleWidth(raster, { ...code, symbology: 'QR' })).toBeUndefined();
    expect(moduleWidth({ ...raster, data: raster.data.map(() => 255) }, code)).toBeUndefined();
  });
});
