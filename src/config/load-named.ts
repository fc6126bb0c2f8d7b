import { resolve } from 'node:path';
import { findRecipe } from './find-recipe.js';
import { loadRecipe } from './load-recipe.js';
import type { Loaded } from './loaded.js';
import { readConfigText } from './read-text.js';
import type { CompiledRecipe } from './recipe.js';

export type Named =
  { readonly kind: 'pipeline'; readonly path: string } | { readonly kind: 'recipe'; readonly loaded: Loaded<CompiledRecipe> };

/** What somebody names to have it checked: a file with channels is a pipeline, everything else a recipe. */
export function loadNamed(reference: string, folder: string): Named {
  const found = findRecipe(reference, folder);
  const path = found.path ?? resolve(folder, reference);
  const read = readConfigText(path, 'recipe');
  if (read.file && /^channels\s*:/m.test(read.file.text)) return { kind: 'pipeline', path };
  return { kind: 'recipe', loaded: loadRecipe(reference, folder) };
}
