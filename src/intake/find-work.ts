import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { twoChannels } from './find-diagnostics.js';
import { findFiles } from './find-files.js';
import { INTAKE_LIMITS, type IntakeLimits } from './limits.js';
import { lookAt, type Looked } from './look-at.js';
import { compareWork } from './order.js';
import { duplicateOf } from './reasons.js';
import { SETTLE_WAIT, settledStates } from './settled.js';
import { shownPath } from './shown-name.js';
import type { Intake, RefusedItem, WorkItem } from './work.js';

/** Whose files are looked for; without a `file` they are those of the command line, and no channel is spoken of. */
export type Searched = Pick<Pipeline, 'file' | 'folder' | 'out' | 'channels'>;

export interface FindOptions {
  readonly limits?: IntakeLimits;
  /** How long a file that was changed just now is watched for further changes, ms. */
  readonly wait?: number;
  /** Paths that are no documents, whatever names them: order files. */
  readonly except?: ReadonlySet<string>;
}

/** Files that are read at the same time. */
const AT_ONCE = 8;

/** A path with the first channel, from 0, that names it. */
interface Candidate {
  readonly channel: number;
  readonly path: string;
}

/**
 * Everything that the channels name, in the fixed order, each document either work or refused with its reason. Looks at
 * names, content and nothing else: the same files give the same intake on every machine. Reads, never writes.
 */
export async function findWork(
  pipeline: Searched,
  { limits = INTAKE_LIMITS, wait = SETTLE_WAIT, except = new Set() }: FindOptions = {},
): Promise<{ readonly intake: Intake; readonly diagnostics: readonly Diagnostic[] }> {
  const named = await findCandidates(pipeline);
  const candidates = named.candidates.filter(({ path }) => !except.has(path));
  const paths = candidates.map(({ path }) => path);
  const states = await settledStates(paths, wait);
  const looked = await inParallel(candidates, ({ channel, path }) =>
    lookAt({ channel, path, shownName: shownPath(pipeline.folder, path) }, states.get(path) ?? 'moving', limits),
  );
  return { intake: withoutDuplicates(looked.flat()), diagnostics: named.diagnostics };
}

/** The files that the channels name, each with the first channel that names it, whatever is in them. */
export async function findCandidates({ file, folder, out, channels }: Searched): Promise<{
  candidates: readonly Candidate[];
  diagnostics: readonly Diagnostic[];
}> {
  const owners = new Map<string, number>();
  const diagnostics: Diagnostic[] = [];
  for (const [channel, { name, files }] of channels.entries()) {
    const found = await findFiles({ channel: file === undefined ? undefined : name, patterns: files, folder, out });
    diagnostics.push(...found.diagnostics);
    const shared = new Map<number, string[]>();
    for (const path of found.paths) {
      const owner = owners.get(path);
      if (owner === undefined) owners.set(path, channel);
      else shared.set(owner, [...(shared.get(owner) ?? []), shownPath(folder, path)].sort());
    }
    for (const [owner, names] of shared) diagnostics.push(twoChannels(channels[owner]?.name ?? '', name, names[0] ?? '', names.length));
  }
  return { candidates: [...owners].map(([path, channel]) => ({ path, channel })), diagnostics };
}

async function inParallel<T, R>(tasks: readonly T[], act: (task: T) => Promise<R>): Promise<R[]> {
  const results: R[] = [];
  const queue = tasks.entries();
  const lane = async (): Promise<void> => {
    for (const [index, task] of queue) results[index] = await act(task);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, lane));
  return results;
}

/** Puts everything into the fixed order; of documents that are equal byte for byte the first is work and the others are skipped. */
function withoutDuplicates(looked: readonly Looked[]): Intake {
  const ordered = [...looked].sort((a, b) => compareWork(a.item, b.item));
  const first = new Map<string, WorkItem>();
  const work: WorkItem[] = [];
  const refused: RefusedItem[] = [];
  for (const { item, refusal } of ordered) {
    const known = first.get(item.sha256);
    if (refusal) refused.push({ item, ...refusal });
    else if (known) refused.push({ item, state: 'skipped', reason: duplicateOf(known.shownName) });
    else {
      first.set(item.sha256, item);
      work.push(item);
    }
  }
  return { work, refused };
}
