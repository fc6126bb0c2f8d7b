import type { CompiledRecipe } from '../config/recipe.js';
import { isLabel, isPlanned, held, pageSheet, type Sheet } from '../sheet/sheet.js';
import { STEPS } from '../steps/index.js';
import type { OptionValues } from '../steps/option.js';
import type { StepContext } from '../steps/step.js';

/**
 * Runs a recipe's document steps over all pages of a document, in order. Every page comes back in at least one sheet; each
 * planned sheet belongs to a parcel; a page that can't be used is held from the start. Throws for a step that doesn't exist (a bug: recipes are checked before).
 */
export async function applyRecipe(recipe: CompiledRecipe, context: StepContext): Promise<readonly Sheet[]> {
  const splits = recipe.steps.some((step) => step.name === 'split-pages');
  let sheets: readonly Sheet[] = Array.from({ length: context.document.pageCount }, (_, index) => {
    const page = context.document.page(index + 1);
    const sheet = pageSheet(page.number, page.width, page.height);
    const shown: Sheet = splits ? sheet : { ...sheet, role: 'label' };
    return page.unfit ? held(shown, page.unfit) : shown;
  });
  for (const { name, options } of recipe.steps) {
    const step = STEPS.find((each) => each.name === name);
    if (!step) throw new Error(`recipe: there is no step ${name}`);
    if (step.scope === 'document') sheets = await step.apply(sheets, options as OptionValues<typeof step.options>, context);
  }
  const slipsFollow = recipe.steps.some((step) => step.name === 'packing-slip');
  const isUnfit = ({ page }: Sheet): boolean => context.document.page(page).unfit !== undefined;
  return intoParcels(slipsFollow ? besideLabels(sheets, isUnfit) : sheets);
}

/** A page that can't be used may be the slip of the label before it, which then must not go without. */
function besideLabels(sheets: readonly Sheet[], isUnfit: (sheet: Sheet) => boolean): readonly Sheet[] {
  let last: Sheet | undefined;
  return sheets.map((sheet) => {
    if (sheet.role === 'label') last = sheet;
    const stray = sheet.state.kind === 'held' && !isLabel(sheet) && sheet.parcel === undefined && isUnfit(sheet);
    return stray && last ? { ...sheet, parcel: last.parcel, ifSlipHeld: last.ifSlipHeld } : sheet;
  });
}

/** A label without a parcel is one by itself; a slip that no step has put behind a label can't be matched and is held. */
function intoParcels(sheets: readonly Sheet[]): readonly Sheet[] {
  let last = sheets.reduce((most, sheet) => Math.max(most, sheet.parcel ?? 0), 0);
  return sheets.map((sheet) => {
    if (sheet.parcel !== undefined) return sheet;
    if (isLabel(sheet)) return { ...sheet, parcel: (last += 1) };
    if (!isPlanned(sheet)) return sheet;
    return held(sheet, {
      code: 'packing-slip/parcel',
      message: 'a page that is no label and belongs to none',
      remedy: 'Add `- packing-slip` to the recipe after locate-label, or let split-pages skip the page.',
    });
  });
}
