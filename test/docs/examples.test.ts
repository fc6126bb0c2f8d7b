import { describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { recipeFromText } from '../../src/config/recipe-from-text.js';
import { textOf } from '../house/tree.js';
import { contentFor } from '../samples/content.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { label, LETTER, slip } from '../samples/layout.js';
import { packingSlip } from '../samples/other-pages.js';
import { documentOf } from '../steps/on-pages.js';
import { fencesOf } from './markdown.js';

describe("README's own recipe", () => {
  it('makes label and slip of the page that it is for', async () => {
    const example = fencesOf(textOf('README.md')).find(({ text }) => text.startsWith('# my-recipes/'));
    const { value: recipe, diagnostics } = recipeFromText(example?.text ?? '', 'mugs.yaml');
    expect(diagnostics).toEqual([]);
    if (!recipe) throw new Error('no recipe');
    const content = contentFor('readme', 1, 'line');
    const bytes = await documentOf([
      { ...LETTER, regions: [label(tidewick(content), 36, 36), slip(packingSlip(235, 600, content), 335, 40)] },
    ]);
    const { items } = await processDocument({ bytes, shownName: 'order.pdf', recipe, media: '4x6in', grid: '203dpi' });
    expect(items.map(({ role, state }) => [role, state.kind === 'ready' ? 'ready' : state.code])).toEqual([
      ['label', 'ready'],
      ['slip', 'ready'],
      ['remainder', 'locate-label/remainder'],
    ]);
  });
});
