import type { Diagnostic, Place } from '../diagnostics/diagnostic.js';
import type { Step } from '../steps/step.js';
import { shownName, type ConfigFile } from './config-file.js';
import { findRecipe, SHIPPED_RECIPES } from './find-recipe.js';
import { readRecipe, type WrittenRecipe } from './recipe-file.js';
import { readConfigText } from './read-text.js';
import { quote } from './words.js';

/** The recipes of one pipeline: each file is read once, however many channels name it. */
export class RecipeShelf {
  readonly files: ConfigFile[] = [];
  /** What points at no recipe's text: a recipe that is missing, or one that stands in for another. */
  readonly diagnostics: Diagnostic[] = [];
  private readonly recipes = new Map<string, WrittenRecipe | undefined>();

  constructor(
    private readonly steps: readonly Step[],
    private readonly shipped = SHIPPED_RECIPES,
  ) {}

  /**
   * The recipe that `reference` names; undefined when it is missing or wrong, which is then told.
   * @param askedFrom the place that names it; undefined for the command line
   */
  get(reference: string, folder: string, askedFrom: Place | undefined): WrittenRecipe | undefined {
    const found = findRecipe(reference, folder, this.shipped);
    const place: Place = askedFrom ?? { kind: 'run' };
    if (found.path === undefined) {
      this.diagnostics.push({ code: 'config/unknown-recipe', severity: 'error', message: found.message, place, remedy: found.remedy });
      return undefined;
    }
    if (found.insteadOf !== undefined) {
      this.diagnostics.push({
        code: 'config/shipped-recipe',
        severity: 'note',
        message: `there is no file ${quote(found.insteadOf)} here; the recipe of that name that comes with the program is used`,
        place,
      });
    }
    if (this.recipes.has(found.path)) return this.recipes.get(found.path);
    const read = readConfigText(found.path, 'recipe', askedFrom);
    if (!read.file) {
      this.diagnostics.push(read.diagnostic);
      return undefined;
    }
    this.files.push(read.file);
    const recipe = readRecipe(read.file, this.steps);
    this.recipes.set(found.path, recipe);
    return recipe;
  }

  /** Everything wrong with the recipes themselves. */
  inRecipes(): readonly Diagnostic[] {
    return this.files.flatMap((file) => file.diagnostics);
  }

  sources(): ReadonlyMap<string, string> {
    return new Map(this.files.map((file) => [shownName(file.path), file.text]));
  }
}
