import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Reason } from '../sheet/sheet.js';

export const reason = (code: DiagnosticCode, message: string, remedy: string): Reason => ({ code, message, remedy });

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1_000_000)} MB`;

export const STILL_WRITTEN = reason(
  'intake/still-written',
  'the file is still being written',
  'Wait until its download or copy has finished, then run again.',
);

export const STILL_WRITTEN_ORDERS = reason(
  'intake/still-written',
  'the order file is still being written, so its orders are left out',
  STILL_WRITTEN.remedy,
);

export const NOT_A_FILE = reason('intake/not-a-file', 'it is a device or a pipe, not a file', 'Name a file.');

export const UNSPELLABLE = reason(
  'intake/unreadable',
  'the file can not be read: its name holds letters that are not in Unicode (UTF-8)',
  'Rename the file, then run again.',
);

export const tooLarge = (size: number, limit: number): Reason =>
  reason('intake/too-large', `the file has ${megabytes(size)}, more than the ${megabytes(limit)} that one document may have`, SPLIT);

const SPLIT = 'Download the labels in several smaller files.';

export const duplicateOf = (name: string): Reason =>
  reason(
    'intake/duplicate',
    `it is a duplicate of ${name}, byte for byte`,
    'Nothing to do: it is printed once. One of the two files may be deleted.',
  );

export const zipTooLarge = (what: string): Reason => reason('intake/zip-too-large', `the ZIP ${what}`, SPLIT);

export const ZIP_DAMAGED = reason('intake/zip-damaged', 'the ZIP is cut off or damaged', 'Download it again from the sales channel.');
export const ENTRY_DAMAGED = reason(
  'intake/zip-damaged',
  'the file is damaged inside its ZIP',
  'Download the ZIP again from the sales channel.',
);
export const ZIP_EMPTY = reason('intake/zip-empty', 'the ZIP holds no files', 'Download it again from the sales channel.');
export const ZIP_ENCRYPTED = reason(
  'intake/zip-encrypted',
  'the ZIP is locked with a password',
  'Unpack it with its password and put the files into the folder.',
);
export const ZIP_IN_ZIP = reason('intake/zip-in-zip', 'a ZIP inside a ZIP is not opened', 'Unpack it and put its files into the folder.');
export const ZIP_METHOD = reason(
  'intake/zip-method',
  'the file is packed by a method that is not read',
  'Unpack the ZIP and put its files into the folder.',
);
export const ZIP_SAME_NAME = reason(
  'intake/zip-same-name',
  'the ZIP holds several files of this name',
  'Unpack it, give each file a name of its own and put them into the folder.',
);
