import type { Reason } from '../sheet/sheet.js';
import { reason } from './reasons.js';

/** Endings that browsers and copying programs give to what they have not finished. */
const PARTIAL = /\.(part|partial|crdownload|download|opdownload|filepart|tmp|temp)$/i;
/** Files that systems leave in folders for themselves. */
const SYSTEM: ReadonlySet<string> = new Set(['thumbs.db', 'ehthumbs.db', 'desktop.ini']);

/**
 * Why a file is passed over by its name alone, or undefined for one that is to be looked at. The only judgement made by a
 * name: what a file holds is told from its content.
 *
 * @param path with `/` or the system's own separator; only its last part counts, and for ZIP entries the folder `__MACOSX`.
 */
export function passedOver(path: string): Reason | undefined {
  const parts = path.split(/[\\/]/);
  const name = parts.at(-1) ?? '';
  if (name.startsWith('.') || SYSTEM.has(name.toLowerCase()) || parts.includes('__MACOSX'))
    return reason('intake/hidden-file', 'it is a hidden or system file', 'Nothing needs to be done; if it is a label, rename it.');
  if (PARTIAL.test(name) || name.startsWith('~$'))
    return reason(
      'intake/partial-download',
      'by its name it is an unfinished download or a temporary file',
      'Wait until the download has finished, then run again; if it is whole, rename it.',
    );
  return undefined;
}
