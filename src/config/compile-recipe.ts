import type { CompiledRecipe, CompiledStep } from './recipe.js';
import type { WrittenRecipe, WrittenStep } from './recipe-file.js';
import { optionsOf, type WrittenOptions } from './step-options.js';

/** A channel's own options by the step's name. */
export type Overrides = ReadonlyMap<string, WrittenOptions>;

/**
 * A recipe ready to run: for each option what the channel says, else what the recipe says, else the default. Options that
 * may be left out, and are, have no key.
 */
export function compileRecipe(recipe: WrittenRecipe, overrides: Overrides = new Map()): CompiledRecipe {
  return {
    name: recipe.name,
    about: recipe.about,
    file: recipe.file.path,
    steps: recipe.steps.map((written) => compileStep(written, overrides.get(written.step.name))),
  };
}

export function compileStep({ step, options }: WrittenStep, own: WrittenOptions | undefined): CompiledStep {
  const values = Object.entries(optionsOf(step)).map(
    ([name, option]) => [name, own?.get(name) ?? options.get(name) ?? option.default] as const,
  );
  return { name: step.name, options: Object.fromEntries(values.filter(([, value]) => value !== undefined)) };
}
