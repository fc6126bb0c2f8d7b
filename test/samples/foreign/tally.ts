import { openSource } from '../../../src/batch/open-source.js';
import { area, intersection, type Box } from '../../../src/geometry/box.js';
import { gridOf } from '../../../src/geometry/grid.js';
import { mmToPt } from '../../../src/geometry/length.js';
import { isMediaSize, parseMedia } from '../../../src/geometry/media.js';
import { isLabel, isPlanned, pageSheet, type Sheet } from '../../../src/sheet/sheet.js';
import { locateLabel } from '../../../src/steps/locate-label.js';
import { rotate } from '../../../src/steps/rotate.js';
import { splitPages } from '../../../src/steps/split-pages.js';
import { optionsOf } from '../../steps/on-sample.js';
import { drawnLabel } from './drawn-label.js';
import type { ForeignFile, LabelTruth, PageTruth } from './load.js';

/** What became of the labels of some pages. Every one is in exactly one of `found`, `held` and `lost`. */
export interface Tally {
  labels: number;
  /** Every edge within 1 mm and the right turn. */
  found: number;
  /** Not found, but something of its page is held. */
  held: number;
  /** Neither: nobody would look at it. */
  lost: number;
  /** Sheets that would be printed as a label and are none as it should be … */
  wrong: number;
  /** … and those among them that lie mostly on a label, but have an edge or the turn wrong. */
  off: number;
  /** Pages that have no label, and how many of them are skipped or held, slips and forms among them. */
  pagesWithout: number;
  kept: number;
  /** Return labels, slips and customs forms that are told apart as such. */
  kinds: number;
  kindsTold: number;
  /** Found labels of which the page as drawn holds not all ink, or other ink, where that was asked for. */
  drawnWrong: number;
  /** Page and what happened, for people: nothing of what stands on it. */
  readonly notes: string[];
}

export const emptyTally = (): Tally => ({
  labels: 0,
  found: 0,
  held: 0,
  lost: 0,
  wrong: 0,
  off: 0,
  pagesWithout: 0,
  kept: 0,
  kinds: 0,
  kindsTold: 0,
  drawnWrong: 0,
  notes: [],
});

export function sumOf(tallies: readonly Tally[]): Tally {
  const sum = emptyTally();
  for (const each of tallies) {
    for (const key of COUNTS) sum[key] += each[key];
    sum.notes.push(...each.notes);
  }
  return sum;
}
const COUNTS = ['labels', 'found', 'held', 'lost', 'wrong', 'off', 'pagesWithout', 'kept', 'kinds', 'kindsTold', 'drawnWrong'] as const;

const MM = mmToPt(1);
const media = parseMedia('4x6in');

/** What labels are drawn on to be judged by their pixels: larger than any of them. */
const ample = parseMedia('a4');

/**
 * Runs the steps that say what is on a page, and no others, and compares with the truth. With `draw` each found label is pressed, too, and
 * its page's pixels are compared with those inside the true box.
 */
export async function tallyOf({ file, bytes, truth }: ForeignFile, { draw = false } = {}): Promise<Tally> {
  const document = await openSource(bytes);
  if ('refused' in document) throw new Error(`${file}: ${document.refused.message}`);
  if (!media || !ample) throw new Error('no media');
  const context = { document, media, grid: gridOf('203dpi') };
  const tally = emptyTally();
  try {
    for (const page of truth.pages) {
      const { width, height } = document.page(page.page);
      const split = await splitPages.apply([pageSheet(page.page, width, height)], optionsOf(splitPages, { by: 'content' }), context);
      const located = await locateLabel.apply(split, optionsOf(locateLabel, { by: ['auto'] }), context);
      const sheets = await rotate.apply(located, optionsOf(rotate), context);
      const name = `${file} page ${page.page}`;
      count(tally, name, page, sheets, { width, height });
      for (const { sheet, label } of draw ? foundOn(page, sheets, { width, height }) : []) {
        const { missing, foreign } = await drawnLabel(document, sheet, trueBox(label, page, { width, height }), ample);
        if (missing + foreign === 0) continue;
        tally.drawnWrong += 1;
        tally.notes.push(`${name} ${boxText(sheet)}: as drawn it lacks ${missing} pixels of the label and has ${foreign} others`);
      }
    }
  } finally {
    document.close();
  }
  return tally;
}

/** Each found label with the sheet that is it. */
function foundOn(page: PageTruth, sheets: readonly Sheet[], size: Size): readonly { readonly sheet: Sheet; readonly label: LabelTruth }[] {
  return sheets
    .filter((sheet) => isLabel(sheet) && isPlanned(sheet))
    .flatMap((sheet) => {
      const label = page.labels.find((each) => isFound(sheet, each, page, size));
      return label ? [{ sheet, label }] : [];
    });
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

function count(tally: Tally, name: string, page: PageTruth, sheets: readonly Sheet[], size: Size): void {
  const printed = sheets.filter((sheet) => isLabel(sheet) && isPlanned(sheet));
  const notRight = printed.filter((sheet) => !page.labels.some((label) => isFound(sheet, label, page, size)));
  const found = page.labels.filter((label) => printed.some((sheet) => isFound(sheet, label, page, size)));
  const missed = page.labels.length - found.length;
  const isHeld = sheets.some(({ state }) => state.kind === 'held');
  tally.labels += page.labels.length;
  tally.found += found.length;
  tally[isHeld ? 'held' : 'lost'] += missed;
  tally.wrong += notRight.length;
  tally.off += notRight.filter((sheet) =>
    page.labels.some((label) => !found.includes(label) && isMostlyOn(sheet.box, trueBox(label, page, size))),
  ).length;
  if (page.labels.length === 0) {
    tally.pagesWithout += 1;
    if (printed.length === 0) tally.kept += 1;
  }
  const kinds = kindsTold(page, sheets, size);
  tally.kinds += kinds.length;
  tally.kindsTold += kinds.filter(Boolean).length;
  if (missed > 0 || notRight.length > 0 || kinds.includes(false)) {
    const ends = sheets.map(
      (each) => `${each.role} ${each.state.kind === 'planned' ? boxText(each) : `${each.state.code}: ${each.state.message}`}`,
    );
    tally.notes.push(`${name} (${page.kind}, ${page.labels.map((each) => boxText(each)).join(' and ')}): ${ends.join('; ')}`);
  }
}

const boxText = ({ box, turn }: { readonly box: Box; readonly turn: number }): string =>
  `[${[box.x, box.y, box.width, box.height].map((each) => each.toFixed(1)).join(' ')}] ${turn}°`;

/** For each return label, slip and customs form of a page: whether its sheet says so, held or not. A plain label called a return label counts too. */
function kindsTold(page: PageTruth, sheets: readonly Sheet[], size: Size): readonly boolean[] {
  const returns = page.labels.flatMap((label) => {
    const sheet = sheets.find((each) => isPlanned(each) && isFound(each, label, page, size));
    return sheet && (label.role === 'return-label' || sheet.role !== label.role) ? [sheet.role === label.role] : [];
  });
  const role = page.kind === 'customs' ? 'customs-form' : page.slip !== undefined ? 'slip' : undefined;
  return role === undefined ? returns : [...returns, sheets.some((sheet) => sheet.role === role)];
}

/** Whether a sheet is this label. A page of the media's own size is the label, whatever is drawn a little inside it. */
export function isFound(sheet: Sheet, label: LabelTruth, page: PageTruth, size: Size): boolean {
  const landscape = sheet.evidence.some((each) => each.includes('designed landscape'));
  if (sheet.turn !== (label.turn + (landscape ? 90 : 0)) % 360) return false;
  const whole = { x: 0, y: 0, ...size };
  if (media && isMediaSize(media, size.width, size.height)) return near(sheet.box, whole);
  if (isOnOwnPaper(label, page, size) && near(sheet.box, whole)) return true;
  const { edge, ink } = label;
  const isAllInk = ink !== undefined && (edge === 'page' || isOnOwnPaper(label, page, size)) && near(sheet.box, ink);
  return isAllInk || near(sheet.box, trueBox(label, page, size));
}

/** Paper of one label, too short for a stub: whether its edges or the bounds of all its ink are told, it is the same label. Where its edges are the truth, so is all ink of longer paper. */
function isOnOwnPaper({ edge }: LabelTruth, { labels }: PageTruth, { width, height }: Size): boolean {
  return (
    (edge === 'ink' || edge === 'page') &&
    labels.length === 1 &&
    Math.min(width, height) <= OWN.short &&
    Math.max(width, height) <= OWN.long
  );
}
const OWN = { short: mmToPt(110), long: mmToPt(157) };

function isMostlyOn(box: Box, label: Box): boolean {
  const shared = intersection(box, label);
  return shared !== undefined && area(shared) > 0.5 * Math.max(area(box), area(label));
}

/** The label's box on the page as it comes out: straightened, and at another size than its file says where that was put right. */
export function trueBox(label: LabelTruth, page: PageTruth, { width }: Size): Box {
  const factor = width / page.width;
  const { x, y, width: w, height: h } = label.straight ?? label.box;
  return { x: x * factor, y: y * factor, width: w * factor, height: h * factor };
}

function near(a: Box, b: Box): boolean {
  const edges = ({ x, y, width, height }: Box): readonly number[] => [x, y, x + width, y + height];
  const should = edges(b);
  return edges(a).every((edge, index) => Math.abs(edge - (should[index] ?? NaN)) <= MM);
}
