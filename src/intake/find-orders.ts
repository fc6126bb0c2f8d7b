import { readFile } from 'node:fs/promises';
import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { fileFailure } from '../files/failure.js';
import { compareNames } from './order.js';
import { findFiles } from './find-files.js';
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
    const found = await findFiles({ channel: name, patterns: orders, folder, out });
    diagnostics.push(...found.diagnostics);
    const own = found.paths.map((path) => ({ channel, path, shownName: shownPath(folder, path) }));
    files.push(...own.sort((a, b) => compareNames(a.shownName, b.shownName)));
  }
  return { files, diagnostics };
}

/** The bytes of an order file; a file that can't be read is a diagnostic. */
export async function readOrderFile({
  path,
  shownName,
}: OrderFile): Promise<{ readonly bytes: Uint8Array } | { readonly diagnostic: Diagnostic }> {
  try {
    return { bytes: await readFile(path) };
  } catch (error) {
    const { reason } = fileFailure(error, 'the order file can not be read');
    return { diagnostic: { ...reason, severity: 'error', place: { kind: 'document', file: shownName } } };
  }
}
