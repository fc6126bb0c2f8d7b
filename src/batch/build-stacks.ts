import { createHash } from 'node:crypto';
import type { Kept, Scratch } from '../files/scratch.js';
import { mediaNamed } from '../geometry/media.js';
import { type Cell, imposeCells } from '../press/impose.js';
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
  /** Labels, slips and so on. */
  readonly pages: number;
  /** The PDF, in pieces; pages are read back from where they were put away. Once only. */
  chunks(): AsyncIterable<Uint8Array>;
  /** Known when the last piece is out. */
  record(): StackRecord;
}

/** @param pressed of each document: where its pressed pages are put away */
export function buildStack(stack: Stack, media: string, pressed: readonly (Kept | undefined)[], scratch: Scratch): BuiltStack {
  const cells = stack.impose && cellsOf(stack.impose, media, stack.pages.length);
  const plan: PressStack = {
    media: mediaNamed(media),
    pages: stack.pages.map(pressPage),
    imposed: stack.impose && cells && { sheet: mediaNamed(stack.impose.sheet), cells },
  };
  const load = (document: number): Promise<Uint8Array> => {
    const kept = pressed[document];
    if (!kept) throw new Error(`build-stacks: document ${document} has no pressed pages`);
    return scratch.get(kept);
  };
  const hash = createHash('sha256');
  async function* chunks(): AsyncGenerator<Uint8Array> {
    const { stackChunks } = await loadPress();
    for await (const chunk of stackChunks(load, plan)) {
      hash.update(chunk);
      yield chunk;
    }
  }
  const record = (): StackRecord => ({
    file: `print/${stack.name}`,
    parcels: stack.parcels,
    pages: plan.pages.length,
    sheets: cells ? Math.max(...cells.map(({ sheet }) => sheet)) : plan.pages.length,
    sha256: hash.digest('hex'),
  });
  return { name: stack.name, pages: plan.pages.length, chunks, record };
}

function cellsOf(impose: ImposePlan, media: string, count: number): readonly Cell[] {
  const cells = imposeCells(count, mediaNamed(media), mediaNamed(impose.sheet), impose);
  if ('refused' in cells) throw new Error(`build-stacks: ${cells.refused.message}`);
  return cells;
}

function pressPage({ document, item, stamp }: StackPage): PressStack['pages'][number] {
  if (item.pressedPage === undefined) throw new Error(`build-stacks: ${item.id} of document ${document} is ready but not pressed`);
  const box = item.numberBox;
  return { part: document, page: item.pressedPage, stamp: stamp && box ? { ...stamp, box } : undefined };
}
