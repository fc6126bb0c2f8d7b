import { errnoOf, fileFailure } from '../files/failure.js';
import { fingerprintFile } from '../files/fingerprint.js';
import type { Reason } from '../sheet/sheet.js';
import { KINDS } from './kinds.js';
import type { IntakeLimits } from './limits.js';
import { passedOver } from './passed-over.js';
import { NOT_A_FILE, STILL_WRITTEN, UNSPELLABLE, ZIP_IN_ZIP, reason, tooLarge } from './reasons.js';
import { fileState, hasUnfinishedTwin, sameState, type FileState } from './settled.js';
import { shownEntry } from './shown-name.js';
import { sniff, SNIFF_BYTES } from './sniff.js';
import type { WorkItem } from './work.js';
import { listZip } from './zip.js';

/** A document that was found: work, or refused. */
export interface Looked {
  readonly item: WorkItem;
  readonly refusal: { readonly state: 'skipped' | 'failed'; readonly reason: Reason } | undefined;
}

type Place = Pick<WorkItem, 'channel' | 'path' | 'shownName'>;

/**
 * A file as the documents that it yields: one, or for a ZIP one for each file in it. Its content is read once; what is in a ZIP once more, out
 * of it.
 */
export async function lookAt(
  place: Place,
  state: FileState | 'moving' | { readonly error: Error },
  limits: IntakeLimits,
): Promise<readonly Looked[]> {
  const bare: WorkItem = { ...place, entry: undefined, sha256: '', size: 0 };
  const over = passedOver(place.shownName);
  if (over) return [{ item: { ...bare, size: sizeOf(state) }, refusal: over }];
  if (state === 'moving') return [failedItem(bare, STILL_WRITTEN)];
  if ('error' in state) return [failedItem(bare, unreadable(state.error, place.path))];
  if (!state.isFile) return [failedItem(bare, NOT_A_FILE)];
  if (state.size === 0) return [failedItem(bare, (await hasUnfinishedTwin(place.path)) ? STILL_WRITTEN : KINDS.empty)];
  if (state.size > limits.documentBytes) return [failedItem({ ...bare, size: state.size }, tooLarge(state.size, limits.documentBytes))];

  const print = await fingerprintFile(place.path, SNIFF_BYTES);
  if (!print.ok) return [failedItem(bare, { ...print.reason, code: 'intake/unreadable' })];
  const after = await fileState(place.path);
  if ('error' in after || !sameState(state, after)) return [failedItem(bare, STILL_WRITTEN)];
  const item: WorkItem = { ...bare, sha256: print.sha256, size: print.size };
  const sniffed = sniff(print.head);
  if (sniffed.kind === 'refused') return [failedItem(item, sniffed.reason)];
  return sniffed.kind === 'zip' ? lookIntoZip(item, limits) : [{ item, refusal: undefined }];
}

async function lookIntoZip(zip: WorkItem, limits: IntakeLimits): Promise<readonly Looked[]> {
  const listing = await listZip(zip.path, limits);
  if (!listing.ok) return [failedItem(zip, listing.reason)];
  return listing.entries.map((entry) => {
    const shownName = shownEntry(zip.shownName, entry.name);
    const bare: WorkItem = { ...zip, entry: entry.name, shownName, sha256: '', size: 0 };
    const over = passedOver(entry.name);
    if (over) return { item: bare, refusal: over };
    if (!entry.ok) return failedItem(bare, entry.reason);
    const item = { ...bare, sha256: entry.fingerprint.sha256, size: entry.fingerprint.size };
    const sniffed = sniff(entry.fingerprint.head);
    if (sniffed.kind === 'zip') return failedItem(item, ZIP_IN_ZIP);
    return sniffed.kind === 'refused' ? failedItem(item, sniffed.reason) : { item, refusal: undefined };
  });
}

const failedItem = (item: WorkItem, why: Reason): Looked => ({ item, refusal: { state: 'failed', reason: why } });
const sizeOf = (state: FileState | 'moving' | { readonly error: Error }): number =>
  state === 'moving' || 'error' in state ? 0 : state.size;

function unreadable(error: Error, path: string): Reason {
  // Names that are no Unicode can't be spelt to the system: it answers that there is no such file.
  if (errnoOf(error) === 'ENOENT' && path.includes('\ufffd')) return UNSPELLABLE;
  const { message, remedy } = fileFailure(error, 'the file can not be read').reason;
  return reason('intake/unreadable', message, remedy);
}
