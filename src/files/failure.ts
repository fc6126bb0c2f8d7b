import type { DiagnosticCode } from '../diagnostics/codes.js';

/** Why something could not be done with a file, as data. The same shape as a reason, so that it can be handed on as one. */
export interface FileFailure {
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly remedy: string;
}

export type FileResult<T extends object = object> = ({ readonly ok: true } & T) | { readonly ok: false; readonly reason: FileFailure };

interface Known {
  readonly code: DiagnosticCode;
  readonly what: string;
  readonly remedy: string;
}

const NO_SPACE: Known = { code: 'files/no-space', what: 'the disk is full', remedy: 'Free some space, then run again.' };
const NO_PERMISSION: Known = {
  code: 'files/no-permission',
  what: 'permission is denied',
  remedy: 'Give your user the right to it, or close the program that has it open, then run again.',
};
const READ_ONLY: Known = {
  code: 'files/read-only',
  what: 'the disk is read-only',
  remedy: 'Choose an output folder on a disk that can be written to.',
};
const MISSING_FOLDER: Known = {
  code: 'files/missing-folder',
  what: 'the file or one of its folders does not exist',
  remedy: 'Check the path, and that the disk or network folder is connected.',
};
const TOO_MANY_OPEN: Known = {
  code: 'files/too-many-open',
  what: 'too many files are open',
  remedy: 'Close other programs or use fewer jobs, then run again.',
};

/** Errors of the operating system that a person can do something about, by their POSIX names. */
const KNOWN: Readonly<Record<string, Known>> = {
  ENOSPC: NO_SPACE,
  EDQUOT: { ...NO_SPACE, what: 'your share of the disk is used up' },
  EFBIG: { ...NO_SPACE, what: 'the file is larger than this disk allows' },
  EACCES: NO_PERMISSION,
  EPERM: NO_PERMISSION,
  EBUSY: { ...NO_PERMISSION, what: 'another program is using it' },
  EROFS: READ_ONLY,
  ENOENT: MISSING_FOLDER,
  ENOTDIR: MISSING_FOLDER,
  EISDIR: { code: 'files/is-folder', what: 'a folder has this name', remedy: 'Rename or move the folder, then run again.' },
  ENAMETOOLONG: { code: 'files/name-too-long', what: 'the name is too long for this disk', remedy: 'Shorten the name, then run again.' },
  EMFILE: TOO_MANY_OPEN,
  ENFILE: TOO_MANY_OPEN,
};

/** The error's POSIX name such as `ENOENT`; undefined when the operating system did not report it. */
export function errnoOf(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('code' in error) || !('syscall' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}

/**
 * An error of the operating system as data. `doing` says what was tried, with the path: "cannot write out/print/labels.pdf".
 * Anything else is our bug and is thrown again.
 */
export function fileFailure(error: unknown, doing: string): { readonly ok: false; readonly reason: FileFailure } {
  const errno = errnoOf(error);
  if (errno === undefined) throw error;
  const known = KNOWN[errno];
  const code = known?.code ?? 'files/failed';
  const remedy = known?.remedy ?? 'Check the disk and the connection to it, then run again.';
  return { ok: false, reason: { code, message: `${doing}: ${known?.what ?? `the system reports ${errno}`}`, remedy } };
}
