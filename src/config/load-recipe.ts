import type { Media } from '../geometry/media.js';
import { hasErrors, inReadingOrder } from '../diagnostics/collect.js';
import { STEPS } from '../steps/index.js';
import { compileRecipe } from './compile-recipe.js';
import { checkOnMedia, checkTogether } from './option-conflicts.js';
import type { Loaded } from './loaded.js';
import type { CompiledRecipe } from './recipe.js';
import { RecipeShelf } from './recipe-shelf.js';

/**
 * Loads one recipe, as `run --recipe` and `check` do.
 * @param reference a recipe's name, or a path that starts from `folder`
 * @param media what it is to be printed on; undefined: whether it can be is not looked at
 */
export function loadRecipe(reference: string, folder: string, media?: Media): Loaded<CompiledRecipe> {
  const shelf = new RecipeShelf(STEPS);
  const recipe = shelf.get(reference, folder, undefined);
  if (recipe && checkTogether(recipe) && media) checkOnMedia(recipe, media);
  const diagnostics = inReadingOrder([...shelf.diagnostics, ...shelf.inRecipes()]);
  return { value: recipe && !hasErrors(diagnostics) ? compileRecipe(recipe) : undefined, diagnostics, sources: shelf.sources() };
}
