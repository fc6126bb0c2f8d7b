import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import type { DocumentResult } from '../../src/recipe/outcome.js';
import { NO_LABELS } from '../faults/inputs/documents.js';
import { ROOT } from '../house/tree.js';
import { LAYOUTS } from '../samples/layouts.js';
import { FAMILY, STREETS } from '../samples/names.js';
import { sample } from '../samples/sample.js';

function processed(bytes: Uint8Array, recipe = 'any-page'): Promise<DocumentResult> {
  const { value } = loadRecipe(recipe, ROOT);
  if (!value) throw new Error(`${recipe} has mistakes`);
  return processDocument({ bytes, shownName: 'sample.pdf', recipe: value, media: '4x6in', grid: '203dpi' });
}

async function sampleOf(name: string): Promise<Uint8Array> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(`no layout ${name}`);
  return (await sample(layout, 'vector', 0)).bytes;
}

describe('processDocument', () => {
  it.each(NO_LABELS.map(([what, code, content]) => [what, code, content] as const))(
    '%s ends as one failed item: %s',
    async (_, code, content) => {
      const { items, pageCount, pressed } = await processed(content);
      expect(items.map(({ state }) => [state.kind, state.kind === 'ready' ? '' : state.code])).toEqual([['failed', code]]);
      expect([pageCount, pressed]).toEqual([0, undefined]);
    },
  );

  it('a held item has a picture of its page, at 100 dpi', async () => {
    const { items, pictures } = await processed(await sampleOf('letter-ninety-percent'));
    const held = items.filter((item) => item.state.kind === 'held');
    expect(pictures.map((picture) => picture.itemId)).toEqual(held.map((item) => item.id));
    const { format, width, height } = await sharp(pictures[0]?.png).metadata();
    expect([format, width, height]).toEqual(['png', 850, 1100]);
  });

  it('tells no name, no street and no whole number of a label', async () => {
    const { items, diagnostics } = await processed(await sampleOf('letter-upper-sideways'));
    const told = JSON.stringify([items, diagnostics]);
    for (const word of [...FAMILY, ...STREETS]) expect(told).not.toContain(word);
    expect(items[0]?.codes.length).toBeGreaterThan(0);
    for (const code of items[0]?.codes ?? []) expect(code.tail.length).toBeLessThanOrEqual(4);
  });
});
