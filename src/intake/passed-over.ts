import type { Reason } from '../sheet/sheet.js';
import { reason } from './reasons.js';

/** Endings that browsers and copying programs give to what they have not finished; one browser makes it a folder. */
const UNFINISHED = /\.(part|partial|crdownload|download|opdownload|filepart)$/i;
const TEMPORARY = /\.(tmp|temp)$/i;
/** Files that systems leave in folders for themselves. */
const SYSTEM: ReadonlySet<string> = new Set(['thumbs.db', 'ehthumbs.db', 'desktop.ini']);

/** Why a file is not looked at: there may be a label in it that has not arrived, or there is none. */
export interface PassedOver {
  readonly state: 'skipped' | 'failed';
  readonly reason: Reason;
}

const HIDDEN: PassedOver = {
  state: 'skipped',
  reason: reason('intake/hidden-file', 'it is a hidden or system file', 'Nothing needs to be done; if it is a label, rename it.'),
};
const TEMPORARY_FILE: PassedOver = {
  state: 'skipped',
  reason: reason(
    'intake/temporary-file',
    "by its name it is a program's temporary file",
    'Nothing needs to be done; if it is a label, rename it.',
  ),
};
const UNFINISHED_DOWNLOAD: PassedOver = {
  state: 'failed',
  reason: reason(
    'intake/partial-download',
    'by its name it is an unfinished download',
    'Wait until the download has finished, then run again. If it was broken off, delete it and see whether you have the file; if it is whole, rename it.',
  ),
};

/**
 * Why a file is passed over by its name alone, or undefined for one that is to be looked at. The only judgement made by a
 * name: what a file holds is told from its content.
 *
 * @param path as it is shown, with `/` or the system's own separator; of the folders only `__MACOSX` and those of unfinished downloads count.
 */
export function passedOver(path: string): PassedOver | undefined {
  const parts = path.split(/[\\/]/);
  const name = parts.at(-1) ?? '';
  if (name.startsWith('.') || SYSTEM.has(name.toLowerCase()) || parts.includes('__MACOSX')) return HIDDEN;
  if (UNFINISHED.test(name) || parts.slice(0, -1).some((part) => part.endsWith('.download'))) return UNFINISHED_DOWNLOAD;
  return TEMPORARY.test(name) || name.startsWith('~$') ? TEMPORARY_FILE : undefined;
}
