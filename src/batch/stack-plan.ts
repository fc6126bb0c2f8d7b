import type { CompiledRecipe } from '../config/recipe.js';
import { gridOf, type GridName } from '../geometry/grid.js';
import { PLAIN_PRINTER, type PrinterSetup } from '../geometry/printer.js';
import { STEPS } from '../steps/index.js';
import type { StackPlan } from '../steps/step.js';

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

/** The printer that the pages of a plan are pressed for: what is laid on larger sheets does not come out of the label printer as it is. */
export const printerOf = ({ impose }: StackPlan, printer: PrinterSetup = PLAIN_PRINTER): PrinterSetup =>
  impose === undefined ? printer : PLAIN_PRINTER;
