import { readdir } from 'node:fs/promises';
import { isAbsolute, resolve } from 'node:path';
import { nearest } from '../diagnostics/nearest.js';

/**
 * The name of what is there and was most likely meant, part by part from the left; undefined when any part is near to nothing. Letters may differ, and
 * upper and lower case; digits may not, as another number is another order.
 * @param missing a path with `/`, from `folder` or from the root of the disk
 * @param folder absolute
 * @param isFolder whether only a folder can be meant
 */
export async function nearestName(missing: string, folder: string, isFolder: boolean): Promise<string | undefined> {
  const parts = missing.split('/').filter((part) => part !== '');
  const root = isAbsolute(missing) ? '/' : '';
  const found: string[] = [];
  for (const [index, part] of parts.entries()) {
    const there = await namesIn(resolve(folder, `${root}${found.join('/')}`), isFolder || index < parts.length - 1);
    const near = part === '.' || part === '..' || there.includes(part) ? part : nearest(part, there.filter(sameDigitsAs(part)));
    if (near === undefined) return undefined;
    found.push(near);
  }
  const name = `${root}${found.join('/')}`;
  return found.length === 0 || found.join('/') === parts.join('/') ? undefined : name;
}

const sameDigitsAs = (part: string): ((name: string) => boolean) => {
  const digits = (name: string): string => name.replaceAll(/\P{Nd}/gu, '');
  return (name) => digits(name) === digits(part);
};

/** What is visible in a folder, sorted; nothing where it can't be read. */
async function namesIn(folder: string, foldersOnly: boolean): Promise<readonly string[]> {
  try {
    const entries = await readdir(folder, { withFileTypes: true });
    const wanted = entries.filter((each) => !each.name.startsWith('.') && (!foldersOnly || !each.isFile()));
    return wanted.map(({ name }) => name).sort();
  } catch {
    return [];
  }
}
