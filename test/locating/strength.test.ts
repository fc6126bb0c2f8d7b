import { describe, expect, it } from 'vitest';
import { mmToPt } from '../../src/geometry/length.js';
import type { Said } from '../../src/locating/kind-of-words.js';
import { isHollow, isTrackingLike, strengthOf } from '../../src/locating/strength.js';
import type { Code } from '../../src/reading/source.js';
import { barsAt, inches, judged, matrixAt } from './judged.js';

const nothing: Said = { names: [], labelWords: 0, characters: 0 };
const odd = inches(1, 1, 4, 4.2);
const known = inches(1, 1, 4, 6);
const bars = (long: number, high: number) => barsAt({ x: 100, y: 100, width: mmToPt(long), height: mmToPt(high) });

function code(text: string): Code {
  const box = { x: 0, y: 0, width: 100, height: 20 };
  const corner = { x: 0, y: 0 };
  const bytes = Buffer.from(text, 'latin1').toString('hex');
  return { symbology: 'Code 128', identifier: ']C0', bytes, corners: [corner, corner, corner, corner], box, turn: 0 };
}

describe('strengthOf', () => {
  it.each([
    ['nothing', odd, [matrixAt(odd)], nothing, undefined, 0],
    ['a known size', known, [matrixAt(known)], nothing, undefined, 1],
    ["a label's leading bars", odd, [bars(40, 9)], nothing, undefined, 1],
    ['bars that are too short', odd, [bars(39, 9)], nothing, undefined, 0],
    ['bars that are too low', odd, [bars(60, 8)], nothing, undefined, 0],
    ['ladder bars', odd, [bars(9.5, 60)], nothing, undefined, 1],
    ['one word of a label', odd, [matrixAt(odd)], { ...nothing, labelWords: 1 }, undefined, 0],
    ['two of them', odd, [matrixAt(odd)], { ...nothing, labelWords: 2 }, undefined, 1],
    ['two codes', odd, [matrixAt(odd), matrixAt(odd)], nothing, undefined, 1],
    ['another as small as a letter', odd, [bars(39, 9), matrixAt({ ...odd, width: 16, height: 16 })], nothing, undefined, 0],
    ['the same, read', odd, [bars(39, 9), matrixAt({ ...odd, width: 16, height: 16 })], nothing, [code('A'), code('B')], 1],
    ["a code like a parcel's number", odd, [matrixAt(odd)], nothing, [code('00340000123456789012')], 1],
    ['codes that are none', odd, [matrixAt(odd)], nothing, [code('TENOFF')], 0],
    ['all of it', known, [bars(60, 20), matrixAt(known)], { ...nothing, labelWords: 4 }, [code('1Z00000123456784')], 5],
  ] as const)('%s', (_, box, codes, said, read, points) => {
    expect(strengthOf(judged(box, 0.9, { codes }), said, read)).toBe(points);
  });

  it('a frame at nine tenths of a known size counts, ink of that size does not', () => {
    const smaller = inches(1, 1, 3.6, 5.4);
    const of = (edge: 'frame' | 'ink') => strengthOf(judged(smaller, 0.9, { edge, codes: [matrixAt(smaller)] }), nothing, undefined);
    expect(of('frame')).toBe(1);
    expect(of('ink')).toBe(0);
  });
});

describe('isTrackingLike', () => {
  it.each([
    ['00340000123456789012', true],
    ['XX123456785XX', true],
    ['1234567890', true],
    ['123456789', false],
    ['ABCDEFGH1234567', false],
    ['https://mugmonger.example/12345678', false],
    ['WWW.MUGMONGER.EXAMPLE/12345678', false],
    ['', false],
  ])('%s: %s', (text, expected) => {
    expect(isTrackingLike(code(text))).toBe(expected);
  });

  it("an article's number in GS1 data is none, the same digits by themselves and a unit's are", () => {
    const gs1 = (text: string): Code => ({ ...code(text), symbology: 'Data Matrix', identifier: ']d2' });
    expect(isTrackingLike(gs1('010950600013435210LOT17'))).toBe(false);
    expect(isTrackingLike(code('010950600013435210LOT17'))).toBe(true);
    expect(isTrackingLike(gs1('00095060001343520012'))).toBe(true);
  });
});

describe('isHollow', () => {
  const box = inches(1, 1, 4, 6);
  const rows = (...tops: readonly number[]) => tops.map((top) => inches(1.2, top, 3, 0.4));
  const frame = [box, inches(1, 1, 0.02, 6), inches(4.98, 1, 0.02, 6)];

  it('is a box with a blank stretch of nearly half its length, whatever frame is around it', () => {
    expect(isHollow(box, rows(1.2, 1.7, 6.2))).toBe(true);
    expect(isHollow(box, [...frame, ...rows(1.2, 1.7, 6.2)])).toBe(true);
    expect(isHollow(box, rows(3.5, 4, 4.5, 5, 5.5, 6))).toBe(false);
    expect(isHollow(box, rows(1.2, 1.7, 2.2, 2.7))).toBe(true);
    expect(isHollow(box, [])).toBe(true);
  });

  it('is none that is written on all along, with a wide space or two', () => {
    expect(isHollow(box, rows(1.2, 1.7, 3.9, 6.2))).toBe(false);
    expect(isHollow(box, [...rows(1.2, 6.2), inches(1.2, 2.5, 1, 3)])).toBe(false);
  });

  it('goes by the longer side, and by nothing outside the box', () => {
    const lying = inches(1, 1, 6, 4);
    const columns = [1.2, 1.8, 6.4].map((left) => inches(left, 1.2, 0.4, 3));
    expect(isHollow(lying, columns)).toBe(true);
    expect(isHollow(lying, [...columns, inches(3.5, 1.2, 1, 0.3)])).toBe(false);
    expect(isHollow(lying, [...columns, inches(3.5, 6, 1, 0.3)])).toBe(true);
  });
});
