import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { shownName } from '../config/config-file.js';
import { hasErrors } from '../diagnostics/collect.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { formatDiagnostics } from '../diagnostics/format.js';
import { draftOrders } from '../draft/draft-orders.js';
import { EXIT, type CommandIo, type ExitCode } from './exit-codes.js';

export interface DraftOrdersIo extends CommandIo {
  /** The current folder, absolute. */
  readonly folder: string;
}

/**
 * `slipyard draft --orders FILE`: the `orders:` lines for a recipe to `out`, everything else to `err`. Ends with 1 where nothing could be
 * drafted, or the file has errors that its owner has to mend.
 */
export function runDraftOrders({ orders }: { readonly orders: string }, io: DraftOrdersIo): ExitCode {
  const path = resolve(io.folder, orders);
  const file = shownName(path, io.folder);
  const show = (diagnostics: readonly Diagnostic[]): void => {
    io.err(formatDiagnostics(diagnostics, { colour: io.colour }));
  };
  const bytes = bytesOf(path);
  if (!(bytes instanceof Uint8Array)) {
    show([{ ...bytes, severity: 'error', place: { kind: 'document', file } }]);
    return EXIT.cannotGoOn;
  }
  const { text, diagnostics } = draftOrders(bytes, file);
  show(diagnostics);
  if (text === undefined) {
    io.err('Nothing was written; a file that you sent it to with > is empty.\n');
    return EXIT.unfinished;
  }
  io.out(text);
  io.err('Read the comments, then put the lines into the recipe of the channel: `slipyard check RECIPE` says whether they are right.\n');
  return hasErrors(diagnostics) ? EXIT.unfinished : EXIT.done;
}

function bytesOf(path: string): Uint8Array | Pick<Diagnostic, 'code' | 'message' | 'remedy'> {
  try {
    if (statSync(path).isFile()) return readFileSync(path);
    return { code: 'intake/not-a-file', message: 'this is a folder or a device, not a file', remedy: 'Name one file of orders.' };
  } catch (error) {
    const cause = error instanceof Error && 'code' in error ? String(error.code) : 'unknown cause';
    return cause === 'ENOENT' || cause === 'ENOTDIR'
      ? { code: 'intake/no-file', message: 'there is no such file', remedy: 'Check the spelling and the folder that you are in.' }
      : {
          code: 'intake/unreadable',
          message: `the file can not be read (${cause})`,
          remedy: 'Check who may read the file and its folder.',
        };
  }
}
