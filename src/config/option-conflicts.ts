import { mediaNamed, type Media } from '../geometry/media.js';
import type { Output } from '../geometry/printer.js';
import { impose } from '../steps/impose.js';
import type { OptionConflict, Step } from '../steps/step.js';
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
 * @returns whether there is none
 */
export function checkTogether(recipe: WrittenRecipe, overrides: Overrides = new Map(), places?: OverridePlaces): boolean {
  return checkSteps(recipe, overrides, places, conflictOf);
}

/**
 * The same for steps that can't do what they say on this media, or for the printer that a channel names. Only for options that fit together. Labels
 * that are laid on a printer's sheets stay what the pipeline's own media is.
 */
export function checkOnMedia(
  recipe: WrittenRecipe,
  media: Media,
  overrides: Overrides = new Map(),
  places?: OverridePlaces,
  printer?: Output,
): boolean {
  const page = printer && !recipe.steps.some(({ step }) => step.name === impose.name) ? mediaNamed(printer.media) : media;
  return checkSteps(recipe, overrides, places, (step, options) =>
    // The values are checked against the same declaration that types them.
    step.onMedia?.(options as Parameters<NonNullable<Step['onMedia']>>[0], page, printer),
  );
}

function checkSteps(
  recipe: WrittenRecipe,
  overrides: Overrides,
  places: OverridePlaces | undefined,
  conflictIn: (step: Step, options: Readonly<Record<string, unknown>>) => OptionConflict | undefined,
): boolean {
  let fine = true;
  for (const written of recipe.steps) {
    const { step } = written;
    const conflict = conflictIn(step, compileStep(written, overrides.get(step.name)).options);
    if (!conflict) continue;
    fine = false;
    const own = places?.spans.get(step.name);
    const file = own && places ? places.file : recipe.file;
    file.error('config/option-conflict', own ?? written.span, `${quote(step.name)}: ${conflict.message}`, conflict.remedy);
  }
  return fine;
}
