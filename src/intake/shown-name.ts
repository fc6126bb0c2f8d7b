import { basename, isAbsolute, parse, relative, sep } from 'node:path';

/** Characters that would act on a terminal or turn the direction of writing instead of being seen. */
const UNSEEN = /[\x00-\x1f\x7f-\x9f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;

/**
 * The name that people see, and the account: relative to `folder` with `/`. From where only the root of the disk is shared, the file's
 * own name: the account tells nothing of the machine.
 */
export function shownPath(folder: string, path: string): string {
  const way = relative(folder, path);
  const up = way.split(sep).filter((part) => part === '..').length;
  const depth = relative(parse(folder).root, folder).split(sep).length;
  const name = way === '' || isAbsolute(way) || up >= depth ? basename(path) : way;
  return name.split(sep).join('/').replace(UNSEEN, '?');
}

/** The name of an entry of a ZIP behind the ZIP's own. Steps upwards are left out: an entry is only ever shown inside its ZIP. */
export function shownEntry(zip: string, entry: string): string {
  const parts = entry.split('/').filter((part) => part !== '' && part !== '.' && part !== '..');
  return `${zip}/${parts.join('/').replace(UNSEEN, '?')}`;
}
