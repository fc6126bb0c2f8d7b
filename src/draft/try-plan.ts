import { processDocument } from '../batch/process-document.js';
import { recipeFromText } from '../config/recipe-from-text.js';
import type { CompiledRecipe } from '../config/recipe.js';
import { gridOf } from '../geometry/grid.js';
import { applyRecipe } from '../recipe/apply.js';
import { pageSheet, type Sheet } from '../sheet/sheet.js';
import type { OptionValues } from '../steps/option.js';
import { splitPages } from '../steps/split-pages.js';
import { pieceOf, problemsOf, type Piece, type Problem } from './compare.js';
import { recipeText, type Plan } from './plan.js';
import type { Sample, Target } from './sample.js';

export interface Tried {
  readonly problems: readonly Problem[];
  readonly pieces: readonly Piece[];
}

/** The checked recipe of a text that this program wrote. Throws when it has mistakes: a bug of ours. */
export function compiled(text: string): CompiledRecipe {
  const { value, diagnostics } = recipeFromText(text, 'drafted.yaml');
  if (!value) throw new Error(`draft: the recipe has mistakes: ${diagnostics.map(({ message }) => message).join('; ')}`);
  return value;
}

/** What split-pages alone makes of a sample's pages. */
export async function splitSheets(plan: Plan, { document, pages }: Sample, { media, grid }: Target): Promise<readonly Sheet[]> {
  const [split] = compiled(recipeText(plan, UNTITLED)).steps;
  const sheets = pages.map(({ number, width, height }) => pageSheet(number, width, height));
  return splitPages.apply(sheets, split?.options as OptionValues<typeof splitPages.options>, { document, media, grid: gridOf(grid) });
}

const UNTITLED = { head: [], about: 'Drafted.' };

/** What the plan's steps make of the samples, before anything is drawn: cheap, as facts of open pages are gathered once. */
export async function tryQuickly(plan: Plan, samples: readonly Sample[], target: Target, outward: number): Promise<Tried> {
  const recipe = compiled(recipeText(plan, UNTITLED));
  const tried: Tried[] = [];
  for (const sample of samples) {
    const { document } = sample;
    const sheets = await applyRecipe(recipe, { document, media: target.media, grid: gridOf(target.grid) });
    const pieces = sheets.map(pieceOf);
    tried.push({ pieces, problems: problemsOf(sample, pieces, outward) });
  }
  return all(tried);
}

/** What a run makes of the samples by this very text: drawn, proved, parcels put together. */
export async function tryWhole(text: string, samples: readonly Sample[], { media, grid }: Target, outward: number): Promise<Tried> {
  const recipe = compiled(text);
  const tried: Tried[] = [];
  for (const sample of samples) {
    const { items } = await processDocument({ bytes: sample.bytes, shownName: sample.name, recipe, media: media.name, grid });
    const pieces = items.map(pieceOf);
    const ofDocument = pieces.flatMap(({ page, reason }) => (page === 0 && reason ? [{ sample: sample.name, page, reason }] : []));
    tried.push({ pieces, problems: [...ofDocument, ...problemsOf(sample, pieces, outward)] });
  }
  return all(tried);
}

const all = (tried: readonly Tried[]): Tried => ({
  pieces: tried.flatMap(({ pieces }) => pieces),
  problems: tried.flatMap(({ problems }) => problems),
});
