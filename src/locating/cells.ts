import { bottom, centre, right, sameSize, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { isLabelSized } from './label-sizes.js';

/** Labels of one sheet differ in size by no more than this, pt (3 mm): a line more, a shorter name. */
const ALIKE = mmToPt(3);

/** Those of some cells that are as large as labels are, and of one size with another: the labels of a sheet. */
export const alikeCells = (cells: readonly Box[]): readonly Box[] =>
  cells.filter((cell) => isLabelSized(cell) && cells.some((other) => other !== cell && sameSize(cell, other, ALIKE)));

/**
 * The bounds of all ink in each part of a page that lines from edge to edge divide it into; none where nothing does.
 * @param dividers pt, level or upright by their longer side
 * @param blobs the page's ink but the lines' own
 */
export function inkOfCells(
  { width, height }: Pick<Box, 'width' | 'height'>,
  dividers: readonly Box[],
  blobs: readonly Box[],
): readonly Box[] {
  if (dividers.length === 0) return [];
  const ways = (level: boolean, end: number): readonly number[] => {
    const lines = dividers.filter((line) => line.width > line.height === level).map((line) => (level ? centre(line).y : centre(line).x));
    return [0, ...lines.sort((a, b) => a - b), end];
  };
  const [rows, columns] = [ways(true, height), ways(false, width)];
  return rows.slice(1).flatMap((low, row) =>
    columns.slice(1).flatMap((far, column): readonly Box[] => {
      const [top, left] = [rows[row] ?? 0, columns[column] ?? 0];
      const own = blobs.filter((blob) => blob.x >= left - 1 && right(blob) <= far + 1 && blob.y >= top - 1 && bottom(blob) <= low + 1);
      const box = union(own);
      return box ? [box] : [];
    }),
  );
}
