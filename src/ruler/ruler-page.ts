import type { Grid } from '../geometry/grid.js';
import { ptToMm } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import { pressDotPage } from '../press/dot-page.js';
import { Chart, LINE } from './chart.js';
import { BARS_HEIGHT, CODES_HEIGHT, drawBars, drawCodes, drawPatches, PATCHES_HEIGHT } from './dot-marks.js';
import { drawEdges, drawLevelLine, drawRulers, drawUprightLine, INSIDE, RULED } from './rulers.js';
import { looks, NO_SCALING, type Look } from './words.js';

/** The smallest page that everything fits, mm: a little less than 100×150 mm and A6. */
export const SMALLEST = { width: 99.5, height: 147.5 };

/** Whether the page takes everything that a ruler shows. */
export const hasRoom = ({ width, height }: Media): boolean =>
  ptToMm(width) > SMALLEST.width - ROUNDING && ptToMm(height) > SMALLEST.height - ROUNDING;
/** What adding up lengths may leave, mm. */
const ROUNDING = 1e-6;

/** Where the upright line and the text begin, mm from the page's left edge; text is no wider than is good to read. */
const UPRIGHT_LINE_AT = { x: 16.2, y: 20 };
const TEXT_AT = 18.4;
const WIDEST_TEXT = 100;

/** Size of the title, pt, and what it takes of the page's height, mm. */
const TITLE = 9;
const TITLE_HEIGHT = 4;

/** Between two parts of the page, mm. */
const GAP = 0.7;

/** How the title of every ruler page begins. */
const TITLE_START = 'Slipyard ruler';

/**
 * The ruler page of a media and a grid: rulers in mm and inches, lines along the edges, bars, patches and codes on whole dots of the grid, and what to look for. The
 * same media and grid give the same bytes.
 * @param media with room (`hasRoom`); throws for a smaller one
 * @returns a PDF of one page
 */
export async function rulerPage(media: Media, grid: Grid): Promise<Uint8Array> {
  const { marks, lines } = rulerChart(media, grid);
  return pressDotPage({ title: `${TITLE_START}, ${media.name} at ${grid.name}`, media, grid, marks, lines });
}

/** Whether a file is a ruler page of ours, which may be written anew. */
export const isRulerPage = (bytes: Uint8Array): boolean => Buffer.from(bytes).includes(`/Title (${TITLE_START}, `, 0, 'latin1');

/** What is on the page, before it is a PDF. */
export function rulerChart(media: Media, grid: Grid): Chart {
  if (!hasRoom(media)) throw new RangeError(`ruler: no room on ${media.name}`);
  const chart = new Chart(media, grid);
  const look = looks(grid);
  const width = Math.min(WIDEST_TEXT, chart.width - INSIDE - TEXT_AT);
  const say = ({ letter, name, text }: Look, y: number): number =>
    chart.writeWrapped(`${letter}  ${name}. ${text}`, TEXT_AT, y, width) + 0.5;

  drawEdges(chart);
  drawRulers(chart);
  drawUprightLine(chart, UPRIGHT_LINE_AT.x, UPRIGHT_LINE_AT.y);

  let y = RULED.top;
  chart.write(`Ruler, ${media.name} at ${grid.name}: ${chart.columns} × ${chart.rows} dots`, TEXT_AT, y, TITLE);
  y = chart.writeWrapped(NO_SCALING, TEXT_AT, y + TITLE_HEIGHT, width) + GAP;

  y = say(look.size, y);
  drawLevelLine(chart, TEXT_AT, y + 1.4);
  y = say(look.place, y + 2.5 + GAP) + GAP;
  y = say(look.margins, y) + GAP;
  y = say(look.dots, y);
  drawBars(chart, TEXT_AT, y);
  y = say(look.darkness, y + BARS_HEIGHT + GAP);
  drawPatches(chart, TEXT_AT, y);
  y = say(look.codes, y + PATCHES_HEIGHT + GAP);
  drawCodes(chart, TEXT_AT, y);
  y += CODES_HEIGHT;
  chart.writeWrapped('offset, margins, print-width and grid go into pipeline.yaml.', TEXT_AT, y, width);
  if (y + LINE > chart.height - INSIDE) throw new RangeError(`ruler: ${media.name} is too low by ${y + LINE - chart.height + INSIDE} mm`);
  return chart;
}
