import { join } from 'node:path';
import type { FileResult } from '../files/failure.js';
import { listFiles, removeLeftovers } from '../files/folder.js';
import type { Scratch } from '../files/scratch.js';
import type { FileData, Staged } from '../files/staged.js';
import type { Writer } from '../files/writer.js';
import type { Reason } from '../sheet/sheet.js';
import type { BuiltStack } from './build-stacks.js';
import { LIST_NAMES, type ListFile } from './list-files.js';
import type { DocumentRecord, ItemRecord, RunRecord, StackRecord } from './run-record.js';
import type { EndedDocument } from './work-through.js';

/** The names that a run gives its files: only such ones are removed when a run no longer has them. */
const STACK_NAME = /^stack-.*\.(?:pdf|pwg)$/;
const LIST_NAME = new RegExp(`^(?:${LIST_NAMES.join('|').replaceAll('.', '\\.')})$`);
const HELD_NAME = /^\d{3,}-.*\.(?:png|json)$/;

export interface Publication {
  /** The output folder; it exists (but for a dry run). */
  readonly out: string;
  readonly documents: readonly EndedDocument[];
  readonly stacks: readonly BuiltStack[];
  /** Lists for the bench; none in a run without orders. */
  readonly lists?: readonly ListFile[];
  /** Called once, when the stacks are drawn and nothing has its name yet; a reason instead of the record ends it there. */
  readonly record: (stacks: readonly StackRecord[]) => RunRecord | { readonly refused: Reason };
}

/** What a run that could not go on leaves in the output folder: what was there before, or files of both. */
export type Left = 'as-it-was' | 'mixed';

export type Published =
  { readonly ok: true; readonly record: RunRecord } | { readonly ok: false; readonly reason: Reason; readonly left: Left };

/**
 * Replaces the outputs of the run before by those of this one. Everything is written under temporary names first; until that
 * is done the old outputs stay as they are. Then run.json goes first and comes last: as long as it is there, it tells of
 * exactly the files in print/ and held/. A failure of the disk comes back as a reason; each file is whole then.
 */
export async function publish(
  { out, documents, stacks, lists = [], record }: Publication,
  scratch: Scratch,
  writer: Writer,
): Promise<Published> {
  const staged: Staged[] = [];
  let left: Left = 'as-it-was';
  const put = async (path: string, data: FileData): Promise<FileResult> => {
    const result = await writer.stage(join(out, path), data);
    if (result.ok) staged.push(result.staged);
    return result;
  };
  const all = async (): Promise<Published> => {
    for (const folder of ['print', 'held', ...(lists.length > 0 ? ['lists'] : [])]) await must(writer.ensureFolder(join(out, folder)));
    for (const stack of stacks) {
      await must(put(`print/${stack.name}`, stack.chunks()));
      if (stack.raster) await must(put(`print/${stack.raster.name}`, stack.raster.chunks()));
    }
    const told = record(stacks.map((stack) => stack.record()));
    if ('refused' in told) throw new CannotPublish(told.refused);
    for (const { path, data } of heldFiles(told, documents, scratch)) await must(put(path, data));
    for (const { name, data } of lists) await must(put(`lists/${name}`, data));
    await must(put('run.json', `${JSON.stringify(told, undefined, 2)}\n`));

    await must(writer.remove(join(out, 'run.json')));
    left = 'mixed';
    const account = staged.at(-1);
    for (const each of staged.slice(0, -1)) await must(each.commit());
    await removeOld(out, 'print', STACK_NAME, new Set(told.stacks.flatMap(({ file, raster = file }) => [file, raster])), writer);
    await removeOld(out, 'held', HELD_NAME, heldNames(told), writer);
    await removeOld(out, 'lists', LIST_NAME, new Set(lists.map(({ name }) => `lists/${name}`)), writer);
    if (account) await must(account.commit());
    return { ok: true, record: told };
  };
  try {
    return await all();
  } catch (error) {
    // What has its name by now has no temporary one any more, so nothing of it is removed.
    for (const each of staged) await each.discard();
    if (error instanceof CannotPublish) return { ok: false, reason: error.reason, left };
    throw error;
  }
}

/** Ends the sequence above; nobody else sees it. */
class CannotPublish extends Error {
  constructor(readonly reason: Reason) {
    super(reason.message);
  }
}

async function must<T extends object>(result: Promise<FileResult<T>>): Promise<T> {
  const settled = await result;
  if (!settled.ok) throw new CannotPublish(settled.reason);
  return settled;
}

/** Clears away what an interrupted run left under temporary names. Only for the holder of the folder's lock. */
export async function clearLeftovers(out: string): Promise<FileResult> {
  for (const folder of [out, join(out, 'print'), join(out, 'held'), join(out, 'lists')]) {
    const result = await removeLeftovers(folder);
    if (!result.ok) return result;
  }
  return { ok: true };
}

/** For each held item its picture, where there is one, and its reason as data. */
function* heldFiles(record: RunRecord, documents: readonly EndedDocument[], scratch: Scratch): Generator<{ path: string; data: FileData }> {
  for (const [index, document] of record.documents.entries()) {
    for (const item of document.items) {
      if (!item.held) continue;
      const kept = documents[index]?.pictures.get(item.id);
      if (kept && item.held.picture !== undefined) {
        const data = async function* (): AsyncGenerator<Uint8Array> {
          yield await scratch.get(kept);
        };
        yield { path: item.held.picture, data: data() };
      }
      yield { path: item.held.reason, data: reasonText(document, item) };
    }
  }
}

function reasonText({ name, channel, recipe }: DocumentRecord, { held, ...item }: ItemRecord): string {
  const picture = held?.picture?.slice('held/'.length);
  return `${JSON.stringify({ document: name, channel, recipe, ...(picture === undefined ? {} : { picture }), ...item }, undefined, 2)}\n`;
}

function heldNames(record: RunRecord): Set<string> {
  const paths = record.documents.flatMap(({ items }) => items.flatMap(({ held }) => [held?.reason, held?.picture]));
  return new Set(paths.filter((path) => path !== undefined));
}

/** @param keep paths from the output folder */
async function removeOld(out: string, folder: string, ours: RegExp, keep: ReadonlySet<string>, writer: Writer): Promise<void> {
  const { names } = await must(listFiles(join(out, folder)));
  for (const name of names) {
    if (ours.test(name) && !keep.has(`${folder}/${name}`)) await must(writer.remove(join(out, folder, name)));
  }
}
