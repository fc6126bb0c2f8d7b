import { describe, expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { gridOf } from '../../src/geometry/grid.js';
import { parseMedia } from '../../src/geometry/media.js';
import { applyRecipe } from '../../src/recipe/apply.js';
import { isPlanned } from '../../src/sheet/sheet.js';
import { ROOT } from '../house/tree.js';
import { layout, other } from './layout.js';
import { pictureFile } from './picture-file.js';
import { rasterise } from './raster.js';
import { sample } from './sample.js';
import { ABOUT_PARCELS } from './without-label/about-parcels.js';
import type { Paper } from './without-label/paper.js';
import { STORE_LABELS } from './without-label/store-labels.js';
import { TICKETS } from './without-label/tickets.js';

/** Before an address was asked for, 25 of these 38 were printed as labels. */
const PAPERS = [...TICKETS, ...STORE_LABELS, ...ABOUT_PARCELS];
const media = parseMedia('4x6in');
const { value: anyPage } = loadRecipe('any-page', ROOT);

async function vector({ name, draw }: Paper): Promise<Uint8Array> {
  const drawing = draw();
  const { width, height } = drawing;
  const made = layout({ name, about: name, traits: [], pages: () => [{ width, height, regions: [other(drawing, 0, 0)] }] });
  return (await sample(made, 'vector', 0)).bytes;
}

/** At the printer's dots, as a shop's server or a screen shot makes it. */
const picture = async ({ draw }: Paper): Promise<Uint8Array> => (await pictureFile(await rasterise(draw(), 203, true, true), 0)).bytes;

async function endsOf(name: string, bytes: Uint8Array): Promise<readonly string[]> {
  const document = await openSource(bytes);
  if ('refused' in document || !media || !anyPage) throw new Error(name);
  try {
    const sheets = await applyRecipe(anyPage, { document, media, grid: gridOf('203dpi') });
    return sheets.map((sheet) => (isPlanned(sheet) ? `printed as ${sheet.role}` : sheet.state.kind));
  } finally {
    document.close();
  }
}

describe('papers that are no label', () => {
  it.each(PAPERS)('are not printed by any-page: $name', { timeout: 60_000 }, async (paper) => {
    const ends = await endsOf(paper.name, await vector(paper));
    expect(ends.length).toBeGreaterThan(0);
    expect(ends.filter((end) => end.startsWith('printed'))).toEqual([]);
  });

  // Before words were read out of pictures, 23 of these were printed.
  it.each(PAPERS)('are not printed as a picture without a text layer, either: $name', { timeout: 60_000 }, async (paper) => {
    const ends = await endsOf(paper.name, await picture(paper));
    expect(ends.length).toBeGreaterThan(0);
    expect(ends.filter((end) => end.startsWith('printed'))).toEqual([]);
  });
});
