import { relative, sep } from 'node:path';

/** Characters that would act on a terminal or turn the direction of writing instead of being seen. */
const UNSEEN = /[\x00-\x1f\x7f-\x9f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;

/** The name that people see: relative to `folder` with `/`; outside it the whole path. */
export function shownPath(folder: string, path: string): string {
  const inside = relative(folder, path);
  const name = inside === '' || inside.startsWith('..') ? path : inside;
  return name.split(sep).join('/').replace(UNSEEN, '?');
}

/** The name of an entry of a ZIP behind the ZIP's own. Steps upwards are left out: an entry is only ever shown inside its ZIP. */
export function shownEntry(zip: string, entry: string): string {
  const parts = entry.split('/').filter((part) => part !== '' && part !== '.' && part !== '..');
  return `${zip}/${parts.join('/').replace(UNSEEN, '?')}`;
}
