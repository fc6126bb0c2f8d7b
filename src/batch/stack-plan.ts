import type { CompiledRecipe } from '../config/recipe.js';
import { gridOf, type GridName } from '../geometry/grid.js';
import { type Media, parseMedia } from '../geometry/media.js';
import { imposeCells } from '../press/impose.js';
import type { Reason } from '../sheet/sheet.js';
import { STEPS } from '../steps/index.js';
import type { ImposePlan, StackPlan } from '../steps/step.js';

/** What a recipe's run steps plan to do with its proved pages. Throws for a step that isn't there (check has refused it). */
export function stackPlanOf(recipe: CompiledRecipe, grid: GridName): StackPlan {
  let plan: StackPlan = { number: undefined, impose: undefined };
  for (const { name, options } of recipe.steps) {
    const step = STEPS.find((each) => each.name === name);
    if (!step) throw new Error(`stack-plan: no step is named ${name}`);
    if (step.scope === 'run') plan = step.plan(plan, options as never, gridOf(grid));
  }
  return plan;
}

/** A media name that the loader has checked. */
export function mediaOf(name: string): Media {
  const media = parseMedia(name);
  if (!media) throw new Error(`stack-plan: no media is named ${name}`);
  return media;
}

/** Why pages of `media` can't be laid on sheets as planned; undefined when they can. */
export function imposeRefusal(plan: ImposePlan, media: string): Reason | undefined {
  const cells = imposeCells(1, mediaOf(media), mediaOf(plan.sheet), plan);
  return 'refused' in cells ? cells.refused : undefined;
}
