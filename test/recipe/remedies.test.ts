import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { loadPipeline } from '../../src/config/load-pipeline.js';
import type { CompiledRecipe } from '../../src/config/recipe.js';
import type { ItemResult } from '../../src/recipe/outcome.js';
import { temporaryFolder } from '../files/temp-folder.js';
import { bareBox, letter, lines, sidewaysLabel } from '../locating/survey-pages.js';
import { other } from '../samples/layout.js';
import { documentOf, labelPage, labelPageWithoutCode, sharedPage } from '../steps/on-pages.js';

/** What a held page's remedy and README's table say must help when somebody does it. */
async function madeWith(recipe: string, options: string, bytes: Uint8Array): Promise<readonly ItemResult[]> {
  return (await processDocument({ bytes, shownName: 'a.pdf', recipe: channelOf(recipe, options), media: '4x6in', grid: '203dpi' })).items;
}

/** A shipped recipe as a channel bends it. */
function channelOf(recipe: string, options: string): CompiledRecipe {
  const path = join(temporaryFolder(), 'pipeline.yaml');
  writeFileSync(path, `channels:\n  - name: mugs\n    files: a.pdf\n    recipe: ${recipe}\n    options: { ${options} }\n`);
  const { value, diagnostics } = loadPipeline(path);
  expect(diagnostics).toEqual([]);
  const [channel] = value?.channels ?? [];
  if (!channel) throw new Error('no channel');
  return channel.recipe;
}

const stepOf = (recipe: CompiledRecipe, name: string): unknown => recipe.steps.find((step) => step.name === name)?.options;
const labelsOf = (items: readonly ItemResult[]): string[] =>
  items.flatMap(({ role, state }) => (role === 'remainder' ? [] : [state.kind === 'ready' ? `${role} ready` : `${role} ${state.code}`]));

describe('a remedy that is followed', () => {
  it('a doubtful page: the options that the message spells out print the answer that was chosen', async () => {
    const box = other(bareBox(260, 240, '00340000123456789012', 1, 40), 90, 460);
    const bytes = await documentOf([letter(sidewaysLabel(3, 40), other(lines(300, 50, ['Packing slip'], 22), 90, 395), box)]);
    const held = (await madeWith('any-page', '', bytes)).flatMap(({ state }) => (state.kind === 'held' ? [state] : []));
    const doubtful = held.find(({ code }) => code === 'locate-label/doubtful');
    const [, locate] = /`(locate-label: \{ box: .*? \})`/.exec(doubtful?.remedy ?? '') ?? [];
    if (locate === undefined) throw new Error('the message spells out no box');
    // A box without words does not say which end is up.
    expect(labelsOf(await madeWith('any-page', `${locate}, rotate: 0`, bytes))).toEqual(['label ready']);
  });

  it.each([
    ['any-page', 'split-pages: { by: position }, locate-label: { place: upper-half }', 'label ready'],
    ['any-page', 'locate-label: { place: upper-half }', 'label ready'],
    [
      'label-and-slip',
      'locate-label: { box: [1.2in, 0.5in, 6.1in, 4.1in] }, packing-slip: { box: [0.5in, 5.7in, 7.5in, 5in] }',
      'label ready, slip ready',
    ],
  ])('%s with %s', async (recipe, options, expected) => {
    const page = recipe === 'any-page' ? labelPage(1) : sharedPage(1);
    expect(labelsOf(await madeWith(recipe, options, await documentOf([page]))).join(', ')).toBe(expected);
  });

  it('a page that nothing was recognised on is a label where the channel says so', async () => {
    const bytes = await documentOf([labelPageWithoutCode(1)]);
    const options = 'split-pages: { by: position }, locate-label: { box: [0.3in, 0.3in, 4.1in, 6.1in] }, verify: none';
    expect(labelsOf(await madeWith('any-page', options, bytes))).toEqual(['label ready']);
  });
});

describe("a channel's own options", () => {
  it.each([
    ['upper-half', 'locate-label: { box: [1in, 1in, 4in, 6in] }', { place: undefined, by: ['frame', 'picture', 'ink'] }],
    ['any-page', 'locate-label: { box: [1in, 1in, 4in, 6in] }', { by: ['page', 'frame', 'picture', 'ink'] }],
    ['upper-half', 'locate-label: { place: lower-half }', { place: ['lower-half'], by: ['frame', 'picture', 'ink'] }],
    ['upper-half', 'locate-label: auto', { place: undefined, by: ['auto'] }],
    ['upper-half', 'locate-label: ink', { place: ['upper-half'], by: ['ink'] }],
  ])('%s with %s: what contradicts them gives way, and no more', (recipe, options, expected) => {
    const made = stepOf(channelOf(recipe, options), 'locate-label') as Record<string, unknown>;
    for (const [name, value] of Object.entries(expected)) expect(made[name], name).toEqual(value);
  });

  it('a slip from the next page needs no place any more', () => {
    expect(stepOf(channelOf('label-and-slip', 'packing-slip: next-page'), 'packing-slip')).toMatchObject({ from: 'next-page' });
    expect(stepOf(channelOf('label-and-slip', 'packing-slip: next-page'), 'packing-slip')).not.toHaveProperty('place');
  });
});
