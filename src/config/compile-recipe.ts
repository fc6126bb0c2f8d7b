import type { OptionConflict, Step } from '../steps/step.js';
import type { CompiledRecipe, CompiledStep } from './recipe.js';
import type { WrittenRecipe, WrittenStep } from './recipe-file.js';
import { optionsOf, type WrittenOptions } from './step-options.js';

/** A channel's own options by the step's name. */
export type Overrides = ReadonlyMap<string, WrittenOptions>;

/**
 * A recipe ready to run: for each option what the channel says, else what the recipe says, else the default; what contradicts
 * the channel's own gives way. Options that may be left out, and are, have no key.
 */
export function compileRecipe(recipe: WrittenRecipe, overrides: Overrides = new Map()): CompiledRecipe {
  return {
    name: recipe.name,
    about: recipe.about,
    file: recipe.file.path,
    steps: recipe.steps.map((written) => compileStep(written, overrides.get(written.step.name))),
    ...(recipe.orders ? { orders: recipe.orders } : {}),
  };
}

/** One step of it. What a channel writes displaces what the recipe says with another option of the step, where the two contradict. */
export function compileStep({ step, options }: WrittenStep, own: WrittenOptions = new Map()): CompiledStep {
  const displaces: Readonly<Record<string, readonly string[] | undefined>> = step.displaces ?? {};
  const giveWay = [...own.keys()].flatMap((name) => displaces[name] ?? []).filter((name) => options.has(name) && !own.has(name));
  const written = new Map([...options, ...own]);
  let values = completed(step, written);
  for (const name of giveWay) {
    if (conflictOf(step, values) === undefined) break;
    written.delete(name);
    values = completed(step, written);
  }
  return { name: step.name, options: values };
}

function completed(step: Step, written: WrittenOptions): Readonly<Record<string, unknown>> {
  const values = Object.entries(optionsOf(step)).map(([name, option]) => [name, written.get(name) ?? option.default] as const);
  return Object.fromEntries(values.filter(([, value]) => value !== undefined));
}

/** How the options of a step contradict or lack each other; undefined when they don't. */
export const conflictOf = (step: Step, options: Readonly<Record<string, unknown>>): OptionConflict | undefined =>
  // The values are checked against the same declaration that types them.
  step.together?.(options as Parameters<NonNullable<Step['together']>>[0]);
