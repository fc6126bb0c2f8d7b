import { expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { alikeCells, inkOfCells } from '../../src/locating/cells.js';

const A4 = { width: 595, height: 842 };
const LEVEL: Box = { x: 0, y: 420, width: 595, height: 1 };
const UPRIGHT: Box = { x: 297, y: 0, width: 1, height: 842 };
const at = (x: number, y: number): Box => ({ x, y, width: 100, height: 50 });

it('is all ink of each part that lines divide a page into, and of no part without ink', () => {
  const blobs = [at(20, 30), at(60, 300), at(320, 40), at(20, 500)];
  expect(inkOfCells(A4, [UPRIGHT, LEVEL], blobs)).toEqual([{ x: 20, y: 30, width: 140, height: 320 }, at(320, 40), at(20, 500)]);
});

it('leaves out ink that stands over a line', () => {
  expect(inkOfCells(A4, [LEVEL], [at(20, 30), at(20, 400)])).toEqual([at(20, 30)]);
});

it('is nothing on a page that no line divides', () => {
  expect(inkOfCells(A4, [], [at(20, 30)])).toEqual([]);
});

it('are labels of a sheet where two are of one size, as large as labels are', () => {
  const label = (x: number, width = 250): Box => ({ x, y: 30, width, height: 350 });
  expect(alikeCells([label(20), label(320, 252), label(20, 200), at(20, 500), at(320, 500)])).toEqual([label(20), label(320, 252)]);
});
