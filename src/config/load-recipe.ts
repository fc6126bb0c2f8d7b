import { hasErrors, inReadingOrder } from '../diagnostics/collect.js';
import { STEPS } from '../steps/index.js';
import { compileRecipe } from './compile-recipe.js';
import { checkTogether } from './option-conflicts.js';
import type { Loaded } from './loaded.js';
import type { CompiledRecipe } from './recipe.js';
import { RecipeShelf } from './recipe-shelf.js';

/**
 * Loads one recipe, as `run --recipe` and `check` do.
 * @param reference a recipe's name, or a path that starts from `folder`
 */
export function loadRecipe(reference: string, folder: string): Loaded<CompiledRecipe> {
  const shelf = new RecipeShelf(STEPS);
  const recipe = shelf.get(reference, folder, undefined);
  if (recipe) checkTogether(recipe);
  const diagnostics = inReadingOrder([...shelf.diagnostics, ...shelf.inRecipes()]);
  return { value: recipe && !hasErrors(diagnostics) ? compileRecipe(recipe) : undefined, diagnostics, sources: shelf.sources() };
}
