import type { NamedPattern } from '../config/channel.js';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.js';
import { missingIn } from './find-files.js';
import { nearestName } from './nearest-name.js';

/**
 * A warning for each name that leads nowhere: a folder that is not there, a file that is not there. An empty folder is fine, it is
 * filled tomorrow. Looks at names only.
 * @param folder the one that they start from, absolute
 */
export async function missingNames(named: readonly NamedPattern[], folder: string): Promise<readonly Diagnostic[]> {
  const told = await Promise.all(named.map(({ pattern, place }) => missingName(pattern, place, folder)));
  return told.filter((each) => each !== undefined);
}

async function missingName(pattern: string, place: Place, folder: string): Promise<Diagnostic | undefined> {
  const missing = await missingIn(pattern.replace(/^!/, ''), folder);
  if (missing === undefined) return undefined;
  const near = await nearestName(missing, folder, !pattern.endsWith(missing));
  return {
    code: 'intake/no-file',
    severity: 'warning',
    message: `there is no file or folder \`${missing}\``,
    place,
    remedy: near === undefined ? 'Make the folder, or write the name of one that is there.' : `Is it \`${near}\`?`,
  };
}
