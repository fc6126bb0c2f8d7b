import { expect, it } from 'vitest';
import { inToPt } from '../../src/geometry/length.js';
import { withoutStub } from '../../src/locating/without-stub.js';
import { barsIn, candidate, inches, matrixAt } from './judged.js';

const page = { width: inToPt(4), height: inToPt(8) };
const picture = candidate(inches(0, 0, 4, 8), { edge: 'picture', codes: [barsIn(inches(0.2, 2, 3.6, 3))] });
const line = inches(0.1, 6.05, 3.8, 0.01);
const label = inches(0.1, 0.15, 3.8, 5.7);
const blobs = [label, line, inches(0.1, 6.3, 2, 0.2)];

it('a picture that is its paper ends where a stub is torn off, by its ink', () => {
  const { box, edge } = withoutStub(picture, page, [line], blobs);
  expect(edge).toBe('ink');
  expect(box.y + box.height).toBeCloseTo(label.y + label.height, -1);
});

it('also where the stub comes first, or lies beside it', () => {
  const below = [inches(0.1, 0.2, 2, 0.2), inches(0.1, 2.15, 3.8, 5.7)];
  const codes = [barsIn(inches(0.2, 3, 3.6, 3))];
  expect(withoutStub({ ...picture, codes }, page, [inches(0.1, 2, 3.8, 0.01)], below).box.y).toBeCloseTo(inToPt(2.15), -1);
  const lying = candidate(inches(0, 0, 8, 4), { edge: 'picture', codes: [barsIn(inches(1, 0.5, 3, 3))] });
  const beside = [inches(0.15, 0.1, 5.7, 3.8), inches(6.3, 0.1, 0.2, 2)];
  expect(withoutStub(lying, { width: page.height, height: page.width }, [inches(6.05, 0.1, 0.01, 3.8)], beside).edge).toBe('ink');
});

it.each([
  ['no line', picture, [], blobs],
  ['a line through its middle', picture, [inches(0.1, 4, 3.8, 0.01)], blobs],
  ['codes on both sides', { ...picture, codes: [...picture.codes, matrixAt(inches(1, 6.5, 1, 1))] }, [line], blobs],
  ['too little on the paper for a whole label', picture, [line], [inches(0.1, 2, 3.8, 3), line]],
  ['an edge of its own', { ...picture, box: inches(0.2, 0.2, 3.6, 7) }, [line], blobs],
  ['a frame', { ...picture, edge: 'frame' as const }, [line], blobs],
])('but not with %s', (_, whole, lines, ink) => {
  expect(withoutStub(whole, page, lines, ink)).toBe(whole);
});
