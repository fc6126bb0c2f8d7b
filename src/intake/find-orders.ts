import { readFile } from 'node:fs/promises';
import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { fileFailure } from '../files/failure.js';
import type { Reason } from '../sheet/sheet.js';
import { compareNames } from './order.js';
import { findFiles } from './find-files.js';
import { INTAKE_LIMITS } from './limits.js';
import { passedOver, type PassedOver } from './passed-over.js';
import { NOT_A_FILE, STILL_WRITTEN_ORDERS, tooLarge } from './reasons.js';
import { fileState, hasUnfinishedTwin, sameState, SETTLE_WAIT, settledStates } from './settled.js';
import { shownPath } from './shown-name.js';

/** One order file of a channel. */
export interface OrderFile {
  /** Index of the channel in the pipeline, from 0. */
  readonly channel: number;
  readonly path: string;
  /** The name that people see. */
  readonly shownName: string;
}

/** The order files that the channels name, in the order of channels and names. Looks at names only. */
export async function findOrderFiles({ folder, out, channels }: Pick<Pipeline, 'folder' | 'out' | 'channels'>): Promise<{
  readonly files: readonly OrderFile[];
  readonly diagnostics: readonly Diagnostic[];
}> {
  const files: OrderFile[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const [channel, { name, orders }] of channels.entries()) {
    if (!orders) continue;
    const found = await findFiles({ channel: name, patterns: orders, folder, out, what: 'order files' });
    diagnostics.push(...found.diagnostics);
    const own: OrderFile[] = [];
    for (const path of found.paths) {
      const file = { channel, path, shownName: shownPath(folder, path) };
      const over = passedOver(file.shownName);
      if (over) diagnostics.push(notRead(file, over));
      else own.push(file);
    }
    files.push(...own.sort((a, b) => compareNames(a.shownName, b.shownName)));
  }
  return { files, diagnostics };
}

/** Orders in an unfinished download are missing; a hidden file that a pattern takes along holds none. */
const notRead = ({ shownName }: OrderFile, { state, reason }: PassedOver): Diagnostic => ({
  ...reason,
  message: `${reason.message}, so no orders are read from it`,
  severity: state === 'failed' ? 'error' : 'note',
  place: { kind: 'document', file: shownName },
});

/** How the order files stand; one that changed just now is watched, since an export that is half there lacks orders without a sign. */
export const settledOrders = (files: readonly OrderFile[], wait = SETTLE_WAIT): Promise<OrderStates> =>
  settledStates(
    files.map(({ path }) => path),
    wait,
  );

export type OrderStates = Awaited<ReturnType<typeof settledStates>>;

/** The bytes of an order file; a file that can't be read, or not yet, is a diagnostic. */
export async function readOrderFile(
  { path, shownName }: OrderFile,
  states: OrderStates,
): Promise<{ readonly bytes: Uint8Array } | { readonly diagnostic: Diagnostic }> {
  const refused = ({ code, message, remedy }: Reason): { readonly diagnostic: Diagnostic } => ({
    diagnostic: { code, message, remedy, severity: 'error', place: { kind: 'document', file: shownName } },
  });
  const state = states.get(path) ?? 'moving';
  if (state === 'moving') return refused(STILL_WRITTEN_ORDERS);
  if ('error' in state) return refused(fileFailure(state.error, UNREADABLE).reason);
  if (!state.isFile) return refused(NOT_A_FILE);
  if (state.size === 0 && (await hasUnfinishedTwin(path))) return refused(STILL_WRITTEN_ORDERS);
  if (state.size > INTAKE_LIMITS.documentBytes) return refused(tooLarge(state.size, INTAKE_LIMITS.documentBytes));
  try {
    const bytes = await readFile(path);
    const after = await fileState(path);
    return 'error' in after || !sameState(state, after) ? refused(STILL_WRITTEN_ORDERS) : { bytes };
  } catch (error) {
    return refused(fileFailure(error, UNREADABLE).reason);
  }
}

const UNREADABLE = 'the order file can not be read';
