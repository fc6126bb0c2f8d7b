import { basename, resolve } from 'node:path';
import { nearest } from '../diagnostics/nearest.js';
import { findRecipe } from './find-recipe.js';
import { PIPELINE_KEYS, RECIPE_KEYS } from './keys.js';
import { loadRecipe } from './load-recipe.js';
import type { Loaded } from './loaded.js';
import { readConfigText } from './read-text.js';
import type { CompiledRecipe } from './recipe.js';

export type Named =
  { readonly kind: 'pipeline'; readonly path: string } | { readonly kind: 'recipe'; readonly loaded: Loaded<CompiledRecipe> };

/** What somebody names to have it checked: a file that is more like a pipeline than like a recipe is one. */
export function loadNamed(reference: string, folder: string): Named {
  const found = findRecipe(reference, folder);
  const path = found.path ?? resolve(folder, reference);
  const read = readConfigText(path, 'recipe');
  return isPipeline(path, read.file?.text ?? '') ? { kind: 'pipeline', path } : { kind: 'recipe', loaded: loadRecipe(reference, folder) };
}

/** By its topmost keys, misspelt ones too; where they don't tell, by its name. */
function isPipeline(path: string, text: string): boolean {
  const keys = [...text.matchAll(TOPMOST_KEY)].map(([, key]) => key ?? '');
  const like = (allowed: readonly string[]): number => keys.filter((key) => nearest(key, allowed) !== undefined).length;
  const [pipeline, recipe] = [like(PIPELINE_KEYS), like(RECIPE_KEYS)];
  return pipeline === recipe ? basename(path) === 'pipeline.yaml' : pipeline > recipe;
}

const TOPMOST_KEY = /^(?:\{\s*)?["']?([\p{L}-]+)["']?\s*:/gmu;
