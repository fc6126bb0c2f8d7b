import { createHash } from 'node:crypto';
import type { Kept, Scratch } from '../files/scratch.js';
import { grow, type Box } from '../geometry/box.js';
import { gridOf, type GridName } from '../geometry/grid.js';
import { mediaNamed } from '../geometry/media.js';
import { compose } from '../geometry/placement.js';
import type { OutputKind, PrinterSetup } from '../geometry/printer.js';
import { cutMarks } from '../press/cut-marks.js';
import { type Cell, imposeCells, positionBoxes } from '../press/impose.js';
import type { Stack as PressStack } from '../press/stack.js';
import type { ImposePlan } from '../steps/step.js';
import type { Stack, StackPage } from './collate.js';
import type { StackRecord } from './run-record.js';

let press: Promise<typeof import('../press/stack.js')> | undefined;

/** The press for stacks. Takes half a second to load: call it while workers have the documents. */
export const loadPress = (): Promise<typeof import('../press/stack.js')> => (press ??= import('../press/stack.js'));

/** A stack that is about to be written. */
export interface BuiltStack {
  readonly name: string;
  /** Labels, slips and so on, as planned. */
  readonly pages: number;
  /** The PDF, in pieces; pages are read back from where they were put away. Once only. */
  chunks(): AsyncIterable<Uint8Array>;
  /** The same pages as PWG raster, where the pipeline wants that too; in pieces, once only. */
  readonly raster: { readonly name: string; chunks(): AsyncIterable<Uint8Array> } | undefined;
  /** Known when the last piece is out. */
  record(): StackRecord;
  /** The printer that it is for. */
  readonly output: string;
  /** The items whose pages the press has put into the PDF, as `idOfItem` names them; known when the last piece is out. */
  printed(): readonly string[];
}

/** An item of a run: the document's index, from 0, and the item's id in it. */
export const idOfItem = (document: number, itemId: string): string => `${document} ${itemId}`;

type Offset = PrinterSetup['offset'];

/** What a stack is made for. */
export interface StackTarget {
  /** Media name. */
  readonly media: string;
  readonly grid: GridName;
  readonly output: OutputKind;
  /** By how much what is laid on sheets is moved to the right and down, pt; left out: not at all. */
  readonly offset?: Offset;
}

/** @param pressed where a document's pages for a printer are put away; without a name those for its channel's own */
export function buildStack(
  stack: Stack,
  { media, grid: gridName, output, offset = { x: 0, y: 0 } }: StackTarget,
  pressed: (document: number, output: string | undefined) => Kept | undefined,
  scratch: Scratch,
): BuiltStack {
  // What is laid on larger sheets is printed by another printer.
  const kind = stack.impose ? 'vector' : output;
  const grid = gridOf(gridName);
  const cells = stack.impose && moved(cellsOf(stack.impose, media, pagesByParcel(stack.pages)), offset);
  const parts = new Parts(pressed);
  const plan: PressStack = {
    media: mediaNamed(media),
    dots: kind === 'vector' ? undefined : grid,
    pages: stack.pages.map((page) => pressPage(page, parts)),
    imposed: stack.impose && cells && { sheet: mediaNamed(stack.impose.sheet), cells, marks: marksOf(stack.impose, media, offset) },
  };
  const load = (part: number): Promise<Uint8Array> => scratch.get(parts.keptOf(part));
  const hash = createHash('sha256');
  const placed: number[] = [];
  async function* chunks(): AsyncGenerator<Uint8Array> {
    const { stackChunks } = await loadPress();
    for await (const chunk of stackChunks(load, plan, (index) => placed.push(index))) {
      hash.update(chunk);
      yield chunk;
    }
  }
  const rasterName = stack.name.replace(/\.pdf$/, '.pwg');
  async function* rasterChunks(): AsyncGenerator<Uint8Array> {
    const { stackRaster } = await import('../press/stack-raster.js');
    yield* stackRaster(load, plan, grid);
  }
  const raster = kind === 'pwg-raster' ? { name: rasterName, chunks: rasterChunks } : undefined;
  const record = (): StackRecord => ({
    file: `print/${stack.name}`,
    ...(raster ? { raster: `print/${rasterName}` } : {}),
    output: stack.output,
    media: stack.impose?.sheet ?? media,
    grid: gridName,
    parcels: stack.parcels,
    pages: placed.length,
    sheets: new Set(placed.map((index) => cells?.[index]?.sheet ?? index)).size,
    sha256: hash.digest('hex'),
  });
  const printed = (): readonly string[] =>
    placed.map((index) => {
      const page = stack.pages[index];
      if (!page) throw new Error(`build-stacks: ${stack.name} has no page ${index + 1}`);
      return idOfItem(page.document, page.item.id);
    });
  return { name: stack.name, output: stack.output, pages: plan.pages.length, chunks, raster, record, printed };
}

/** How many pages each parcel of a stack has, in its order. */
function pagesByParcel(pages: readonly StackPage[]): readonly number[] {
  const counts = new Map<number, number>();
  for (const { number } of pages) counts.set(number, (counts.get(number) ?? 0) + 1);
  return [...counts.values()];
}

function cellsOf(impose: ImposePlan, media: string, parcels: readonly number[]): readonly Cell[] {
  const cells = imposeCells(parcels, mediaNamed(media), mediaNamed(impose.sheet), impose);
  if ('refused' in cells) throw new Error(`build-stacks: ${cells.refused.message}`);
  return cells;
}

/** Pages moved on their sheet, as its printer puts them too far to the other side. */
const moved = (cells: readonly Cell[], { x, y }: Offset): readonly Cell[] =>
  cells.map((cell) => ({ ...cell, matrix: compose(cell.matrix, [1, 0, 0, 1, x, y]), box: movedBox(cell.box, { x, y }) }));

const movedBox = (box: Box, { x, y }: Offset): Box => ({ ...box, x: box.x + x, y: box.y + y });

function marksOf(impose: ImposePlan, media: string, offset: Offset): ((pages: readonly Cell[]) => readonly Box[]) | undefined {
  if (impose.cutMarks !== true) return undefined;
  const sheet = mediaNamed(impose.sheet);
  const positions = positionBoxes(mediaNamed(media), sheet, impose);
  if ('refused' in positions) throw new Error(`build-stacks: ${positions.refused.message}`);
  const reach = grow({ x: 0, y: 0, width: sheet.width, height: sheet.height }, -(impose.printerMargin ?? 0));
  return (pages) =>
    cutMarks(
      pages.map(({ box }) => box),
      positions.map((box) => movedBox(box, offset)),
      reach,
    );
}

/** The pressed documents that a stack is made of, numbered from 0 as it first needs them. */
class Parts {
  readonly #kept: Kept[] = [];
  readonly #numbers = new Map<Kept, number>();

  constructor(readonly pressed: (document: number, output: string | undefined) => Kept | undefined) {}

  numberOf(document: number, output: string | undefined): number {
    const kept = this.pressed(document, output);
    if (!kept) throw new Error(`build-stacks: document ${document} has no pressed pages`);
    const number = this.#numbers.get(kept) ?? this.#kept.push(kept) - 1;
    this.#numbers.set(kept, number);
    return number;
  }

  keptOf(part: number): Kept {
    const kept = this.#kept[part];
    if (!kept) throw new Error(`build-stacks: there is no part ${part}`);
    return kept;
  }
}

function pressPage({ document, item, stamp }: StackPage, parts: Parts): PressStack['pages'][number] {
  if (item.pressedPage === undefined) throw new Error(`build-stacks: ${item.id} of document ${document} is ready but not pressed`);
  const box = item.numberBox;
  return { part: parts.numberOf(document, item.output), page: item.pressedPage, stamp: stamp && box ? { ...stamp, box } : undefined };
}
