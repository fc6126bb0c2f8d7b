import { dotsPerPt, gridOf, type Grid, type GridName } from '../../src/geometry/grid.js';
import { mediaNamed, type Media } from '../../src/geometry/media.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { Code, GreyRaster, Word } from '../../src/reading/source.js';
import { readCodes } from '../../src/reading/codes.js';
import { rulerChart, rulerPage } from '../../src/ruler/ruler-page.js';
import type { Chart } from '../../src/ruler/chart.js';

/** A ruler page as PDFium draws it on its grid, black 0 and white 255. */
export interface Drawn {
  readonly media: Media;
  readonly grid: Grid;
  readonly chart: Chart;
  readonly dots: GreyRaster;
  readonly words: readonly Word[];
  readonly codes: readonly Code[];
}

export async function drawn(mediaName: string, gridName: GridName): Promise<Drawn> {
  const [media, grid] = [mediaNamed(mediaName), gridOf(gridName)];
  const pdf = await openPdf(await rulerPage(media, grid), { as: 'output' });
  if ('refused' in pdf) throw new Error(pdf.refused.message);
  try {
    const page = pdf.page(1);
    const whole = { x: 0, y: 0, width: media.width, height: media.height };
    const grey = page.render(whole, dotsPerPt(grid));
    const dots = { ...grey, data: grey.data.map((value) => (value < 128 ? 0 : 255)) };
    return { media, grid, chart: rulerChart(media, grid), dots, words: page.words(), codes: await readCodes(dots) };
  } finally {
    pdf.close();
  }
}

/** The black runs on one row (`y`) or column (`x`) of dots between two dots. */
export function blackRuns(
  dots: GreyRaster,
  at: { x: number } | { y: number },
  from = 0,
  to = Infinity,
): { from: number; length: number }[] {
  const runs: { from: number; length: number }[] = [];
  const end = Math.min(to, 'y' in at ? dots.width : dots.height);
  for (let i = from; i < end; i++) {
    const value = 'y' in at ? dots.data[at.y * dots.width + i] : dots.data[i * dots.width + at.x];
    if (value !== 0) continue;
    const last = runs.at(-1);
    if (last && last.from + last.length === i) last.length += 1;
    else runs.push({ from: i, length: 1 });
  }
  return runs;
}

/**
 * How many dots of a drawn page differ from the chart's marks; where a line of type may be, dots may be black besides.
 * @param data black 0 and white 255, the whole page
 */
export function wrongDots(chart: Chart, data: Uint8Array): number {
  const width = chart.columns;
  const wanted = new Uint8Array(data.length).fill(255);
  for (const mark of chart.marks) {
    for (let y = mark.y; y < mark.y + mark.height; y++) wanted.fill(0, y * width + mark.x, y * width + mark.x + mark.width);
  }
  const k = dotsPerPt(chart.grid);
  for (const { text, x, y, fontSize } of chart.lines) {
    const [left, right] = [Math.floor(x * k) - 1, Math.min(width, Math.ceil((x + text.length * fontSize) * k))];
    for (let row = Math.floor(y * k); row < (y + 1.3 * fontSize) * k; row++) {
      for (let at = row * width + left; at < row * width + right; at++) if (wanted[at] === 255) wanted[at] = data[at] ?? 0;
    }
  }
  return data.reduce((sum, value, at) => sum + (value === wanted[at] ? 0 : 1), 0);
}
