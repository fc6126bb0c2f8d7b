import { compileStep, conflictOf, type Overrides } from './compile-recipe.js';
import type { ConfigFile, Span } from './config-file.js';
import type { WrittenRecipe } from './recipe-file.js';
import { quote } from './words.js';

/** Where a channel's own options for a step stand. */
export interface OverridePlaces {
  readonly file: ConfigFile;
  readonly spans: ReadonlyMap<string, Span>;
}

/**
 * Reports steps whose options contradict or lack each other once defaults and a channel's own options are in: at the
 * channel's options when it has any for that step, else in the recipe. Run for a recipe alone, or for each channel.
 */
export function checkTogether(recipe: WrittenRecipe, overrides: Overrides = new Map(), places?: OverridePlaces): void {
  for (const written of recipe.steps) {
    const { step } = written;
    const conflict = conflictOf(step, compileStep(written, overrides.get(step.name)).options);
    if (!conflict) continue;
    const own = places?.spans.get(step.name);
    const file = own && places ? places.file : recipe.file;
    file.error('config/option-conflict', own ?? written.span, `${quote(step.name)}: ${conflict.message}`, conflict.remedy);
  }
}
