import { processDocument } from '../../src/batch/process-document.js';
import { recipeFromText } from '../../src/config/recipe-from-text.js';
import { draftRecipe, type Drafted } from '../../src/draft/draft-recipe.js';
import { lookAtSample, type Sample, type Target } from '../../src/draft/sample.js';
import type { ItemResult } from '../../src/recipe/outcome.js';
import type { LayoutPage } from '../samples/layout.js';
import { documentOf } from '../steps/on-pages.js';
import { mediaNamed } from '../steps/on-sample.js';

export const TARGET: Target = { media: mediaNamed('4x6in'), grid: '203dpi' };

/** Documents opened as samples, named `1.pdf`, `2.pdf`, …; `use` may not keep them. */
export async function withSamples<T>(documents: readonly Uint8Array[], use: (samples: readonly Sample[]) => T | Promise<T>): Promise<T> {
  const samples: Sample[] = [];
  try {
    for (const [index, bytes] of documents.entries()) {
      const sample = await lookAtSample(`${index + 1}.pdf`, bytes, TARGET);
      if ('refused' in sample) throw new Error(sample.refused.message);
      samples.push(sample);
    }
    return await use(samples);
  } finally {
    for (const { document } of samples) document.close();
  }
}

export const drafted = (...documents: readonly Uint8Array[]): Promise<Drafted> =>
  withSamples(documents, (samples) => draftRecipe(samples, TARGET, []));

/** The drafted recipe's text; throws where there is none. */
export async function recipeFor(...documents: readonly Uint8Array[]): Promise<string> {
  const result = await drafted(...documents);
  if (result.kind === 'none')
    throw new Error([result.summary, ...result.problems.map(({ reason }) => reason)].map((each) => each.message).join('\n'));
  return result.text;
}

/** Documents of pages. */
export const documentsOf = (...documents: readonly (readonly LayoutPage[])[]): Promise<Uint8Array[]> =>
  Promise.all(documents.map(documentOf));

/** The line of a step in a recipe, without its dash. */
export const stepOf = (text: string, name: string): string | undefined =>
  text
    .split('\n')
    .find((line) => new RegExp(`^  - ${name}\\b`).test(line))
    ?.slice(4);

/** What a run makes of a document by a recipe's text. */
export async function itemsBy(text: string, bytes: Uint8Array): Promise<readonly ItemResult[]> {
  const { value, diagnostics } = recipeFromText(text, 'drafted.yaml');
  if (!value) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return (await processDocument({ bytes, shownName: 'other.pdf', recipe: value, media: '4x6in', grid: '203dpi' })).items;
}
