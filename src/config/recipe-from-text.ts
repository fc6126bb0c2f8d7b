import { hasErrors, inReadingOrder } from '../diagnostics/collect.js';
import { STEPS } from '../steps/index.js';
import { compileRecipe } from './compile-recipe.js';
import { ConfigFile } from './config-file.js';
import type { Loaded } from './loaded.js';
import { checkTogether } from './option-conflicts.js';
import { readRecipe } from './recipe-file.js';
import type { CompiledRecipe } from './recipe.js';

/**
 * A recipe that is no file yet, checked and compiled as `check` and `run` would do it.
 * @param path the name that it would have; nothing is read from there
 */
export function recipeFromText(text: string, path: string): Loaded<CompiledRecipe> {
  const file = new ConfigFile(path, text);
  const recipe = readRecipe(file, STEPS);
  if (recipe) checkTogether(recipe);
  const diagnostics = inReadingOrder(file.diagnostics);
  return {
    value: recipe && !hasErrors(diagnostics) ? compileRecipe(recipe) : undefined,
    diagnostics,
    sources: new Map([[file.shown, text]]),
  };
}
