import { area, intersection } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { MM_PER_IN } from '../geometry/length.js';
import { fitFactor, type Media } from '../geometry/media.js';
import { printedDots } from '../press/printed-dots.js';
import { leastModuleDots } from '../proof/limits.js';
import { readCodes } from '../reading/codes.js';
import type { Code, SourcePage } from '../reading/source.js';
import type { StepContext } from '../steps/step.js';
import type { AsItIs, LabelOnPage, Lying, PrintedCode, PrintedLabel, PublishedRange, Standing } from './explained.js';
import { moduleRange, type ModuleRange } from './module-range.js';
import type { Looked } from './on-page.js';
import { verdictOf } from './verdict.js';

/** What measuring may be off by, as in proof/limits. */
const MEASURED_OFF = 0.04;

/** What comes of a page that is sent as it is and fitted whole to the media: common practice, handbook section 5.5. */
export async function asItIs(page: SourcePage, { onPage, codes }: Looked, { media, grid }: StepContext): Promise<AsItIs> {
  const fit = fitWhole(page, media);
  const labels = onPage.labels.map((label): PrintedLabel => printedLabel(label, fit, media));
  const read = await readFitted(page, fit.factor, grid);
  const printed = codes.map((code, index): PrintedCode => {
    const { mark = 0, moduleMm } = onPage.codes[index] ?? {};
    const range = moduleRange(code);
    return { mark, ...printedModule(moduleMm, range, fit.factor, grid), range: range && inMil(range), readBack: isAmong(code, read) };
  });
  const partial = { media: media.name, grid: grid.name, ...fit, labels, codes: printed };
  return { ...partial, verdict: verdictOf(onPage, partial) };
}

/** How a page is fitted whole: turned by a quarter where it lies and the media stands, or the other way round. */
export function fitWhole(
  { width, height }: Pick<SourcePage, 'width' | 'height'>,
  media: Media,
): Pick<AsItIs, 'factor' | 'pageTurned' | 'factorUnturned'> {
  const given = fitFactor(width, height, media.width, media.height);
  const turned = fitFactor(height, width, media.width, media.height);
  return turned > given * 1.001
    ? { factor: turned, pageTurned: true, factorUnturned: given }
    : { factor: given, pageTurned: false, factorUnturned: undefined };
}

/**
 * A module on the print and how it stands to what is published.
 * @param moduleMm its width on the page, mm
 */
export function printedModule(
  moduleMm: number | undefined,
  range: ModuleRange | undefined,
  factor: number,
  grid: Grid,
): Pick<PrintedCode, 'moduleDots' | 'moduleMil' | 'standing'> {
  if (moduleMm === undefined) return { moduleDots: undefined, moduleMil: undefined, standing: 'not-measured' };
  const mm = moduleMm * factor;
  const moduleDots = (mm / MM_PER_IN) * grid.dpi;
  return { moduleDots, moduleMil: (mm / MM_PER_IN) * 1000, standing: standingOf(mm, moduleDots, range, grid) };
}

function standingOf(mm: number, dots: number, range: ModuleRange | undefined, grid: Grid): Standing {
  if (dots < leastModuleDots(grid)) return 'too-fine';
  if (range && mm < range.least * (1 - MEASURED_OFF)) return 'under-range';
  return range?.most !== undefined && mm > range.most * (1 + MEASURED_OFF) ? 'over-range' : 'in-range';
}

const inMil = ({ least, most, source, trust }: ModuleRange): PublishedRange => ({
  leastMil: (least / MM_PER_IN) * 1000,
  mostMil: most === undefined ? undefined : (most / MM_PER_IN) * 1000,
  source,
  trust,
});

function printedLabel(
  { mark, box, turn }: LabelOnPage,
  { factor, pageTurned }: Pick<AsItIs, 'factor' | 'pageTurned'>,
  media: Media,
): PrintedLabel {
  const [across, down] = pageTurned ? [box.height, box.width] : [box.width, box.height];
  return {
    mark,
    width: across * factor,
    height: down * factor,
    share: (area(box) * factor * factor) / (media.width * media.height),
    ...lyingOf(turn, pageTurned),
  };
}

/** Which way the dialog turns the page isn't known: by a quarter is all that can be said. */
function lyingOf(turn: LabelOnPage['turn'], pageTurned: boolean): { readonly lies: Lying; readonly turnNeeded: LabelOnPage['turn'] } {
  if (turn === undefined) return { lies: 'not-sure', turnNeeded: undefined };
  const sideways = turn % 180 === 90;
  if (pageTurned) return { lies: sideways ? 'along' : 'on-its-side', turnNeeded: undefined };
  return { lies: sideways ? 'on-its-side' : turn === 180 ? 'upside-down' : 'upright', turnNeeded: turn };
}

/** What can be read from the dots of the fitted page, burnt without a fault. Places are pt on the source page. */
async function readFitted(page: SourcePage, factor: number, grid: Grid): Promise<readonly Code[]> {
  const grey = page.render({ x: 0, y: 0, width: page.width, height: page.height }, factor * dotsPerPt(grid));
  return readCodes(printedDots(grey).raster, { thorough: true });
}

const isAmong = (code: Code, read: readonly Code[]): boolean =>
  read.some((each) => each.bytes === code.bytes && each.identifier === code.identifier && intersection(each.box, code.box) !== undefined);
