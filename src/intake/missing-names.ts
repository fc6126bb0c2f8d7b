import type { NamedPattern } from '../config/channel.js';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.js';
import { resolve, sep } from 'node:path';
import { missingIn } from './find-files.js';
import { nearestName } from './nearest-name.js';
import { shownPath } from './shown-name.js';

/**
 * A warning for each name that leads nowhere: a folder that is not there, a file that is not there. An empty folder is fine, it is
 * filled tomorrow. Looks at names only.
 * @param folder the one that they start from, absolute
 */
export async function missingNames(named: readonly NamedPattern[], folder: string): Promise<readonly Diagnostic[]> {
  const told = await Promise.all(named.map(({ pattern, place }) => missingName(pattern, place, folder)));
  return told.filter((each) => each !== undefined);
}

/**
 * A warning for each name below the output folder, where nothing is ever read. Looks at the words alone.
 * @param folder the one that they start from, absolute
 * @param out the output folder, absolute
 */
export function namesInOutput(named: readonly NamedPattern[], folder: string, out: string): readonly Diagnostic[] {
  return named.flatMap(({ pattern, place }) => {
    if (pattern.startsWith('!')) return [];
    const [literal = ''] = /^[^*?[\]{}()!+@|]*/.exec(pattern) ?? [];
    const lies = resolve(folder, literal === pattern ? pattern : literal.slice(0, literal.lastIndexOf('/') + 1));
    if (lies !== out && !lies.startsWith(out + sep)) return [];
    const diagnostic: Diagnostic = {
      code: 'intake/only-output',
      severity: 'warning',
      message: `\`${pattern}\` lies in the output folder \`${shownPath(folder, out)}\`, where nothing is ever read`,
      place,
      remedy: 'Name an output folder that holds no documents to read: `out: out`.',
    };
    return [diagnostic];
  });
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
