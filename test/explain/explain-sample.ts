import { loadRecipe } from '../../src/config/load-recipe.js';
import { explainDocument, type ExplainedDocument } from '../../src/explain/explain-document.js';
import type { GridName } from '../../src/geometry/grid.js';
import { PLAIN_PRINTER, ROLL } from '../../src/geometry/printer.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Kind, type QuarterTurn, type Sample } from '../samples/sample.js';

export interface Options {
  readonly recipe?: string;
  readonly media?: string;
  readonly grid?: GridName;
  readonly kind?: Kind;
  readonly turn?: QuarterTurn;
  readonly pictures?: boolean;
}

/** A sample layout explained, and what is known of it. */
export async function explainSample(layout: string, options: Options = {}): Promise<{ known: Sample; explained: ExplainedDocument }> {
  const { kind = 'vector', turn = 0 } = options;
  const drawn = LAYOUTS.find(({ name }) => name === layout);
  if (!drawn) throw new Error(`the layout ${layout} is gone`);
  const known = await sample(drawn, kind, turn);
  return { known, explained: await explainBytes(known.bytes, options) };
}

export async function explainBytes(bytes: Uint8Array, options: Options = {}): Promise<ExplainedDocument> {
  const { recipe = 'any-page', media = '4x6in', grid = '203dpi', pictures = false } = options;
  const loaded = loadRecipe(recipe, '.').value;
  if (!loaded) throw new Error('the recipe must load');
  const explained = await explainDocument({
    bytes,
    shownName: 'order.pdf',
    recipe: loaded,
    output: { name: ROLL, media, grid, printer: PLAIN_PRINTER },
    pictures,
  });
  if ('refused' in explained) throw new Error(explained.refused.message);
  return explained;
}
