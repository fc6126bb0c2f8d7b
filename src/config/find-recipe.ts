import { readdirSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nearest } from '../diagnostics/nearest.js';
import { listWords, quote } from './words.js';

/** The recipes that come with the program; the same folder for the sources and for the built program. */
export const SHIPPED_RECIPES = fileURLToPath(new URL('../../recipes/', import.meta.url));

export type RecipeFound =
  /** `insteadOf`: the path as asked for, when that file isn't there and the shipped recipe of the same name stands in. */
  | { readonly path: string; readonly insteadOf: string | undefined }
  | { readonly path: undefined; readonly message: string; readonly remedy: string };

const NAME = /^[\p{L}\p{N}][\p{L}\p{N}_-]*$/u;

/** A name as people say it, with blanks. */
const WORDS = /^[\p{L}\p{N}][\p{L}\p{N}_ -]*$/u;
/** A name without what people write in more than one way. */
const folded = (name: string): string => name.toLocaleLowerCase('en').replaceAll(/[\s_-]+/g, '');

/** `recipes/NAME.yaml`, as somebody writes who has no recipes of their own. */
const SHIPPED_PATH = /^(?:\.\/)?recipes\/([^/\\]+)\.yaml$/;

const isThere = (path: string): boolean => statSync(path, { throwIfNoEntry: false }) !== undefined;

/** Names of the recipes in a folder, sorted; none when there is no such folder. */
export function recipesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith('.yaml'))
      .map((name) => basename(name, '.yaml'))
      .sort();
  } catch {
    return [];
  }
}

/**
 * Finds the file of a recipe. A name is looked for in `recipes/` beside the pipeline, then among the shipped ones; a path
 * starts from `folder`, and `recipes/NAME.yaml` may stand for a shipped one too.
 * @param folder absolute: the pipeline's, or the one that the command stands in
 */
export function findRecipe(reference: string, folder: string, shipped = SHIPPED_RECIPES): RecipeFound {
  const isName = NAME.test(reference);
  const path = isName ? join(folder, 'recipes', `${reference}.yaml`) : resolve(folder, reference);
  if (safely(() => isThere(path)) || reference.includes('\0')) return { path, insteadOf: undefined };

  const name = isName ? reference : SHIPPED_PATH.exec(reference)?.[1];
  const names = recipesIn(shipped);
  if (name !== undefined && names.includes(name)) return { path: join(shipped, `${name}.yaml`), insteadOf: isName ? undefined : reference };
  if (reference.includes('\\')) {
    return {
      path: undefined,
      message: `there is no recipe ${quote(reference)}`,
      remedy: `Write ${quote(reference.replaceAll('\\', '/'))}.`,
    };
  }
  // "Any page": nobody names a file so, without a folder or an ending.
  const meant = name ?? (WORDS.test(reference) ? reference : undefined);
  if (meant === undefined) return { path, insteadOf: undefined };

  const all = [...new Set([...recipesIn(join(folder, 'recipes')), ...names])].sort();
  const near = all.find((each) => folded(each) === folded(meant)) ?? nearest(meant, all);
  // Whoever writes a path knows that a file of one's own is named by it.
  const isPath = !isName && !WORDS.test(reference);
  const own = isPath ? 'or the path of a file that is there' : 'or name a file of your own by its path: `./my-recipe.yaml`';
  const remedy = near === undefined ? `Write ${listWords(all)}, ${own}.` : `Write ${quote(near)}, ${own}.`;
  return { path: undefined, message: isPath ? `there is no file ${quote(reference)}` : `there is no recipe ${quote(meant)}`, remedy };
}

/** A path that the system refuses outright (too long, a file for a folder) leads nowhere. */
function safely(look: () => boolean): boolean {
  try {
    return look();
  } catch {
    return false;
  }
}
