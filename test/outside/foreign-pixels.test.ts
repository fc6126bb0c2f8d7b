import { describe, expect } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { processDocument } from '../../src/batch/process-document.js';
import { contains, grow, type Box } from '../../src/geometry/box.js';
import type { CompiledRecipe } from '../../src/config/recipe.js';
import { mmToPt } from '../../src/geometry/length.js';
import { isMediaSize, parseMedia } from '../../src/geometry/media.js';
import { applyToPoint, invert, placementMatrix, type Matrix } from '../../src/geometry/placement.js';
import type { ItemResult } from '../../src/recipe/outcome.js';
import { foreignFiles, HALVES, type ForeignFile, type PageTruth } from '../samples/foreign/load.js';
import { trueBox, type Size } from '../samples/foreign/tally.js';
import { recipeNamed } from '../steps/on-pages.js';
import { rasterisedOnly, type Dots } from './rasters.js';
import { outsideCheck } from './tools.js';

const DPI = 203;
/** The box may be off by as much as a found label's edges may, pt (1 mm). */
const EDGE = mmToPt(1);
/** A cut line is no more than this thick, pt. */
const CUT_LINE = mmToPt(1);
/** Ink counts as the same within so many dots: rasterisers round strokes and the press moves pixels onto whole dots. */
const NEAR = 4;
/** Share of the ink that may differ: specks of pictures that were coded with loss. */
const SPECKS = 0.002;
/** Layouts of whose first document no label is ready: held by the proof, or as doubtful. One that comes to be ready leaves this list. */
const NONE_READY: readonly string[] = ['u07-office-all'];
/** Labels compared of each layout. */
const MOST = 4;

/** What is looked at is what was cut out, so that bars stay where the channel drew them. */
function asDrawn(): CompiledRecipe {
  const recipe = recipeNamed('any-page');
  const changes: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
    scale: { bars: 'as-drawn' },
    verify: { allow: ['decodability', 'quiet-zone'] },
  };
  return { ...recipe, steps: recipe.steps.map((step) => ({ ...step, options: { ...step.options, ...changes[step.name] } })) };
}

const media = parseMedia('4x6in');
/** Where ink stands within `NEAR` dots: 1, elsewhere 0; spread along rows, then down columns. The page with so many dots more on each side. */
function nearInk(page: Dots): { readonly data: Uint8Array; readonly width: number; readonly height: number } {
  const [width, height] = [page.width + 2 * NEAR, page.height + 2 * NEAR];
  const data = new Uint8Array(width * height).fill(255);
  for (let y = 0; y < page.height; y++) data.set(page.data.subarray(y * page.width, (y + 1) * page.width), (y + NEAR) * width + NEAR);
  const along = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0, last = -Infinity, at = y * width; x < width; x++, at++) {
      if (data[at] === 0) last = x;
      if (x - last <= NEAR) along[at] = 1;
    }
    for (let x = width - 1, last = Infinity, at = y * width + x; x >= 0; x--, at--) {
      if (data[at] === 0) last = x;
      if (last - x <= NEAR) along[at] = 1;
    }
  }
  const spread = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    for (let v = Math.max(0, y - NEAR); v <= Math.min(height - 1, y + NEAR); v++)
      for (let x = 0, to = y * width, from = v * width; x < width; x++) spread[to + x] = (spread[to + x] ?? 0) | (along[from + x] ?? 0);
  }
  return { data: spread, width, height };
}

/** Of the ink of `page` inside `box` (pt), the share that has no ink at the place on `other` where `map` puts it. */
function missing(page: Dots, box: Box, other: Dots, map: Matrix): number {
  const [k, to] = [page.dpi / 72, other.dpi / 72];
  const near = nearInk(other);
  // A dot's step along a row, and the first of each row, in dots of the other page.
  const origin = applyToPoint(map, 0, 0);
  const [right, down] = [applyToPoint(map, 1 / k, 0), applyToPoint(map, 0, 1 / k)];
  let ink = 0;
  let without = 0;
  for (let y = Math.max(0, Math.ceil(box.y * k)); y < Math.min(page.height, (box.y + box.height) * k); y++) {
    for (let x = Math.max(0, Math.ceil(box.x * k)); x < Math.min(page.width, (box.x + box.width) * k); x++) {
      if (page.data[y * page.width + x] !== 0) continue;
      ink += 1;
      const u = Math.floor((origin.x + (x + 0.5) * (right.x - origin.x) + (y + 0.5) * (down.x - origin.x)) * to) + NEAR;
      const v = Math.floor((origin.y + (x + 0.5) * (right.y - origin.y) + (y + 0.5) * (down.y - origin.y)) * to) + NEAR;
      if (u < 0 || v < 0 || u >= near.width || v >= near.height || near.data[v * near.width + u] === 0) without += 1;
    }
  }
  return ink === 0 ? 1 : without / ink;
}

/** A page as if only what is inside `box` (pt) stood on it. */
function only(page: Dots, box: Box): Dots {
  const k = page.dpi / 72;
  const data = new Uint8Array(page.data.length).fill(255);
  const [x0, x1] = [Math.max(0, Math.floor(box.x * k)), Math.min(page.width, Math.ceil((box.x + box.width) * k))];
  for (let y = Math.max(0, Math.floor(box.y * k)); y < Math.min(page.height, Math.ceil((box.y + box.height) * k)); y++)
    data.set(page.data.subarray(y * page.width + x0, y * page.width + x1), y * page.width + x0);
  return { ...page, data };
}

interface Judged {
  readonly labels: number;
  /** Of those, drawn whole and alone. */
  readonly whole: number;
  readonly alone: number;
  readonly notes: readonly string[];
}

/** What processDocument draws of a document's labels, beside the label as the source has it. */
async function judged({ file, bytes, truth }: ForeignFile): Promise<Judged> {
  const { items, pressed } = await processDocument({
    bytes,
    shownName: file,
    recipe: asDrawn(),
    media: '4x6in',
    grid: '203dpi',
  });
  const labels = items.filter(({ role, state }) => (role === 'label' || role === 'return-label') && state.kind === 'ready').slice(0, MOST);
  if (!pressed || labels.length === 0) return { labels: 0, whole: 0, alone: 0, notes: [] };
  const [drawn, given, sizes] = [
    await rasterisedOnly(
      pressed,
      DPI,
      labels.map(({ pressedPage = 0 }) => pressedPage),
    ),
    await rasterisedOnly(
      bytes,
      DPI,
      labels.map(({ page }) => page),
    ),
    await sizesOf(bytes),
  ];
  let [whole, alone] = [0, 0];
  const notes: string[] = [];
  for (const item of labels) {
    const page = truth.pages[item.page - 1];
    const [output, source, size] = [drawn.get(item.pressedPage ?? 0), given.get(item.page), sizes[item.page - 1]];
    if (!page || !output || !source || !size) throw new Error(`${file} page ${item.page} is missing`);
    const { lost, strange } = compared(item, page, size, output, source);
    if (lost <= SPECKS) whole += 1;
    if (strange <= SPECKS) alone += 1;
    if (lost > SPECKS || strange > SPECKS)
      notes.push(`page ${item.page}: ${(lost * 100).toFixed(2)} % lost, ${(strange * 100).toFixed(2)} % strange`);
  }
  return { labels: labels.length, whole, alone, notes };
}

async function sizesOf(bytes: Uint8Array): Promise<readonly Size[]> {
  const document = await openSource(bytes);
  if ('refused' in document) throw new Error(document.refused.message);
  const sizes = Array.from({ length: document.pageCount }, (_, index) => {
    const { width, height } = document.page(index + 1);
    return { width, height };
  });
  document.close();
  return sizes;
}

/** Shares of ink: of the label's that is not on the output, and of the output's that is not the label's. */
function compared(item: ItemResult, page: PageTruth, size: Size, output: Dots, given: Dots): { lost: number; strange: number } {
  const { box, turn, scale, drawnBox } = item;
  if (!box || !drawnBox) throw new Error('a ready label has a place');
  // A page that comes out at another size than its file says has so many more dots an inch.
  const source = { ...given, dpi: given.dpi * (page.width / size.width) };
  const label = labelAt(box, page, size);
  if (!label) return { lost: 1, strange: 1 };
  const toOutput = placementMatrix(box, turn, scale, drawnBox.x, drawnBox.y);
  return {
    lost: missing(source, label.ink, output, toOutput),
    strange: missing(output, { x: 0, y: 0, width: 288, height: 432 }, only(source, grow(label.box, EDGE)), invert(toOutput)),
  };
}

/**
 * The label of the truth that a drawn box lies on, and where its ink is: a cut line may be left out. Where the page is one label
 * of the media's size, the page.
 */
function labelAt(box: Box, page: PageTruth, size: Size): { readonly box: Box; readonly ink: Box } | undefined {
  const whole = { x: 0, y: 0, ...size };
  if (page.labels.length > 0 && media && isMediaSize(media, size.width, size.height)) return { box: whole, ink: whole };
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2, width: 0, height: 0 };
  const label = page.labels.find((each) => contains(trueBox(each, page, size), middle));
  if (!label) return undefined;
  const at = trueBox(label, page, size);
  return { box: at, ink: label.edge === 'cut' ? grow(at, -CUT_LINE) : at };
}

/** A crooked scan is straightened before it is drawn: crooked-scans compares those. */
const isStraight = ({ truth }: ForeignFile): boolean => truth.pages.every(({ labels }) => labels.every(({ skew }) => (skew ?? 0) === 0));

// The later parts are found by their boxes only: two parts are enough minutes.
describe.each(HALVES.filter((half) => half === 'tuning' || half === 'unseen'))(
  'labels of other producers as drawn, by their pixels, %s half',
  (half) => {
    const straight = foreignFiles(half).filter((each) => isStraight(each) && each.truth.pages.some(({ labels }) => labels.length > 0));
    const first = straight.filter((each, index) => straight.findIndex(({ truth }) => truth.layout === each.truth.layout) === index);
    for (const file of first) {
      outsideCheck(`${file.truth.layout}: all of the label and nothing else`, ['pdftoppm'], async () => {
        const { labels, whole, alone, notes } = await judged(file);
        expect(`${whole} whole, ${alone} alone`, half === 'tuning' ? notes.join('; ') : undefined).toBe(`${labels} whole, ${labels} alone`);
        expect(labels > 0, 'a label is ready').toBe(!NONE_READY.includes(file.truth.layout));
      });
    }
  },
);
