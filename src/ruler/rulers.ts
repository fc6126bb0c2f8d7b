import { MM_PER_IN } from '../geometry/length.js';
import type { Chart } from './chart.js';

/** Lines along each edge, 1 mm apart, the first on the edge itself. */
export const EDGE_LINES = 5;

/** Where ruling and everything else begins inside the edge's lines, mm. */
export const INSIDE = EDGE_LINES;

/** Ticks begin here, mm from the page's edge: before, the rulers would cross. */
const FIRST_TICK = 15;

/** The line that mm and inches hang on, mm from the page's edge: across, and down the page. */
const BASE = { across: 9.2, down: 10.4 };

/** Room that a number takes behind its tick, mm: across, and down the page. */
const LABEL = { width: 5, height: 3 };

/** What rulers take of the page, mm from its top and from its left edge. */
export const RULED = { top: 14.2, left: 14.6 };

/** Lines that frame the page, by which margins that can't be printed are counted. */
export function drawEdges(chart: Chart): void {
  const { width, height } = chart;
  for (let inside = 0; inside < EDGE_LINES; inside++) {
    for (const x of [inside, width - inside]) chart.upright(x, inside, height - inside);
    for (const y of [inside, height - inside]) chart.level(y, inside, width - inside);
  }
}

interface Tick {
  /** mm from the page's edge. */
  readonly at: number;
  /** mm */
  readonly length: number;
  readonly label: string | undefined;
}

/** Ticks at every mm from `FIRST_TICK` to `end` (mm); those with a number are `long`. */
function millimetres(end: number, long: number): readonly Tick[] {
  return counted(FIRST_TICK, Math.floor(end)).map((at) => ({
    at,
    length: at % 10 === 0 ? long : at % 5 === 0 ? 2.2 : 1.5,
    label: at % 10 === 0 ? String(at) : undefined,
  }));
}

/** Ticks at every sixteenth of an inch. */
function inches(end: number, long: number): readonly Tick[] {
  return counted(Math.ceil((FIRST_TICK * 16) / MM_PER_IN), Math.floor((end * 16) / MM_PER_IN)).map((at) => ({
    at: (at * MM_PER_IN) / 16,
    length: at % 16 === 0 ? long : at % 8 === 0 ? 2.4 : at % 2 === 0 ? 1.6 : 1,
    label: at % 16 === 0 ? String(at / 16) : undefined,
  }));
}

const counted = (from: number, to: number): readonly number[] => Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** Rulers in mm and inches across and down the page, both counted from the page's edge. */
export function drawRulers(chart: Chart): void {
  const [right, low] = [chart.width - INSIDE, chart.height - INSIDE];
  const { across, down } = BASE;
  chart.level(across, FIRST_TICK, right);
  for (const { at, length, label } of millimetres(right, 4)) {
    chart.upright(at, across - length, across);
    if (label !== undefined && at + LABEL.width < right) chart.write(label, at + 0.4, across - 4.6);
  }
  for (const { at, length, label } of inches(right, 4)) {
    chart.upright(at, across, across + length);
    if (label !== undefined && at + LABEL.width < right) chart.write(label, at + 0.4, across + 1.7);
  }
  chart.write('mm', FIRST_TICK - 5.2, across - 4.6);
  chart.write('in', FIRST_TICK + 0.4, across + 1.7);
  chart.upright(down, FIRST_TICK, low);
  chart.write('mm', down - 5.7, FIRST_TICK - 3);
  chart.write('in', down + 2, FIRST_TICK - 3);
  for (const { at, length, label } of millimetres(low, 5.7)) {
    chart.level(at, down - length, down);
    if (label !== undefined && at + LABEL.height < low) chart.write(label, down - 5.7, at);
  }
  for (const { at, length, label } of inches(low, 4)) {
    chart.level(at, down, down + length);
    if (label !== undefined && at + LABEL.height < low) chart.write(label, down + 2, at);
  }
}

/** Length of the upright line that tells the scale, mm: what it measures is the scale in per cent. */
export const UPRIGHT_LINE = 100;
/** Length of the one across, mm: 3 in. */
export const LEVEL_LINE = 3 * MM_PER_IN;
/** Half the length of the strokes at their ends, mm. */
const END = 1;

/** The upright line, `UPRIGHT_LINE` long between the middles of its end strokes. */
export function drawUprightLine(chart: Chart, x: number, y: number): void {
  // The length is rounded once, not at both ends: it is what is measured.
  const [from, length] = [chart.dots(y), chart.dots(UPRIGHT_LINE)];
  const [middle, left, stroke] = [chart.dots(x), chart.dots(x - END), chart.dots(2 * END)];
  chart.mark(middle, from, chart.hair, length);
  for (const at of [from, from + length]) chart.mark(left, at, stroke, chart.hair);
}

/** The line across, `LEVEL_LINE` long between the middles of its end strokes. */
export function drawLevelLine(chart: Chart, x: number, y: number): void {
  const [from, length] = [chart.dots(x), chart.dots(LEVEL_LINE)];
  const [middle, top, stroke] = [chart.dots(y), chart.dots(y - END), chart.dots(2 * END)];
  chart.mark(from, middle, length, chart.hair);
  for (const at of [from, from + length]) chart.mark(at, top, chart.hair, stroke);
}
