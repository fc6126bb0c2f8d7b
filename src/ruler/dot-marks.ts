import { MM_PER_IN } from '../geometry/length.js';
import { code128Modules, QUIET_MODULES } from '../press/code128.js';
import { LINE, type Chart } from './chart.js';

/** Widths of bars, dots. */
const BARS = [1, 2, 3, 4, 5, 6] as const;

/** Sizes of the row of bars and fine patches, mm. */
const PAIR = { pitch: 3.2, length: 12, levelPitch: 2.6 };
const COMB = { width: 15.5, height: 12 };

/** What the row of bars and fine patches takes of the page's height, mm. */
export const BARS_HEIGHT = 6 * PAIR.levelPitch;

/**
 * From left to right: pairs of bars of 1 to 6 dots, upright, and as far apart as they are wide; the same level; a patch of lines one dot on, one off, upright; the
 * same level.
 */
export function drawBars(chart: Chart, x: number, y: number): void {
  const [left, top, length] = [chart.dots(x), chart.dots(y), chart.dots(PAIR.length)];
  const levelLeft = chart.dots(x + 6 * PAIR.pitch + 1.8);
  BARS.forEach((bar, index) => {
    const across = left + index * chart.dots(PAIR.pitch);
    const down = top + index * chart.dots(PAIR.levelPitch);
    for (const at of [0, 2 * bar]) {
      chart.mark(across + at, top, bar, length);
      chart.mark(levelLeft, down + at, length, bar);
    }
    chart.write(String(bar), x + index * PAIR.pitch, y + PAIR.length + 0.2);
    chart.write(String(bar), x + 6 * PAIR.pitch + 1.8 + PAIR.length + 0.8, y + index * PAIR.levelPitch - 0.7);
  });
  const combs = x + 6 * PAIR.pitch + PAIR.length + 6.5;
  drawCombs(chart, combs, y);
}

function drawCombs(chart: Chart, x: number, y: number): void {
  const [width, height] = [chart.dots(COMB.width), chart.dots(COMB.height)];
  const second = x + COMB.width + 2.5;
  const [left, next, top] = [chart.dots(x), chart.dots(second), chart.dots(y)];
  for (let at = 0; at < width; at += 2) chart.mark(left + at, top, 1, height);
  for (let at = 0; at < height; at += 2) chart.mark(next, top + at, width, 1);
  chart.write('1 on, 1 off', x, y + COMB.height + 0.2);
  chart.write('1 on, 1 off', second, y + COMB.height + 0.2);
}

const PATCH = { width: 13, height: 9, pitch: 15.4 };
export const PATCHES_HEIGHT = PATCH.height + LINE;

/** Whether a dot of a patch is black, by its column and row; a quarter, half and three quarters of them are. */
const PATTERNS: readonly (readonly [name: string, black: (column: number, row: number) => boolean])[] = [
  ['25 %', (column, row) => column % 2 === 0 && row % 2 === 0],
  ['50 %', (column, row) => (column + row) % 2 === 0],
  ['75 %', (column, row) => column % 2 === 0 || row % 2 === 0],
];

/** Patches that are a quarter, half and three quarters black, and black ones with white lines of 1, 2 and 3 dots, upright and level. */
export function drawPatches(chart: Chart, x: number, y: number): void {
  // On a fine grid single dots are no test of heat: patches are as coarse as they are at 203 dpi.
  const unit = chart.hair;
  const place = (index: number): [number, number] => [chart.dots(x + index * PATCH.pitch), chart.dots(y)];
  const [width, height] = [chart.dots(PATCH.width), chart.dots(PATCH.height)];
  PATTERNS.forEach(([name, black], index) => {
    const [left, top] = place(index);
    for (let row = 0; (row + 1) * unit <= height; row++) {
      runs(Math.floor(width / unit), (column) => black(column, row)).forEach(({ from, length }) => {
        chart.mark(left + from * unit, top + row * unit, length * unit, unit);
      });
    }
    chart.write(name, x + index * PATCH.pitch, y + PATCH.height);
  });
  const [[upright, top], [level]] = [place(3), place(4)];
  for (const { from, length } of runs(width, (at) => !isWhite(at, chart))) chart.mark(upright + from, top, length, height);
  for (const { from, length } of runs(height, (at) => !isWhite(at, chart))) chart.mark(level, top + from, width, length);
  for (const index of [3, 4]) chart.write('white 1, 2, 3', x + index * PATCH.pitch, y + PATCH.height);
}

/** White lines of 1, 2, 3, 1, 2, 3 … dots, each a mm and a half behind the one before. */
function isWhite(at: number, chart: Chart): boolean {
  const pitch = Math.round((1.5 / MM_PER_IN) * chart.grid.dpi);
  const number = Math.floor(at / pitch) - 1;
  return number >= 0 && at % pitch < (number % 3) + 1;
}

function runs(count: number, black: (at: number) => boolean): readonly { from: number; length: number }[] {
  const found: { from: number; length: number }[] = [];
  for (let at = 0; at < count; at++) {
    const last = found.at(-1);
    if (!black(at)) continue;
    if (last && last.from + last.length === at) last.length += 1;
    else found.push({ from: at, length: 1 });
  }
  return found;
}

const CODE = { height: 5, pitch: 6.2, caption: 2.6 };

/** Module widths in dots, row by row: as few rows as the narrowest page on the coarsest grid takes. */
const CODE_ROWS: readonly (readonly number[])[] = [[6], [5], [4], [3, 2]];
export const CODES_HEIGHT = CODE_ROWS.length * CODE.pitch;

/** What a reader says to a code with modules of so many dots. */
export const codeText = (dots: number): string => `DOT${dots}`;

/** A Code 128 for each module width, with its quiet zones, and the width in front of it. */
export function drawCodes(chart: Chart, x: number, y: number): void {
  CODE_ROWS.forEach((row, index) => {
    const top = y + index * CODE.pitch;
    let at = chart.dots(x);
    for (const dots of row) {
      chart.write(String(dots), (at * MM_PER_IN) / chart.grid.dpi, top + 1.2);
      at += chart.dots(CODE.caption) + QUIET_MODULES * dots;
      for (const [order, modules] of (code128Modules(codeText(dots)) ?? []).entries()) {
        if (order % 2 === 0) chart.mark(at, chart.dots(top), modules * dots, chart.dots(CODE.height));
        at += modules * dots;
      }
      at += QUIET_MODULES * dots;
    }
  });
}
