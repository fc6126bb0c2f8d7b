import { describe, expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { gridOf } from '../../src/geometry/grid.js';
import { parseMedia } from '../../src/geometry/media.js';
import { applyRecipe } from '../../src/recipe/apply.js';
import { isPlanned } from '../../src/sheet/sheet.js';
import { ROOT } from '../house/tree.js';
import { layout, other } from './layout.js';
import { sample } from './sample.js';
import { ABOUT_PARCELS } from './without-label/about-parcels.js';
import type { Paper } from './without-label/paper.js';
import { STORE_LABELS } from './without-label/store-labels.js';
import { TICKETS } from './without-label/tickets.js';

/** Before an address was asked for, 25 of these 38 were printed as labels. */
const PAPERS = [...TICKETS, ...STORE_LABELS, ...ABOUT_PARCELS];
const media = parseMedia('4x6in');
const { value: anyPage } = loadRecipe('any-page', ROOT);

async function endsOf({ name, draw }: Paper): Promise<readonly string[]> {
  const drawing = draw();
  const { width, height } = drawing;
  const made = layout({ name, about: name, traits: [], pages: () => [{ width, height, regions: [other(drawing, 0, 0)] }] });
  const document = await openSource((await sample(made, 'vector', 0)).bytes);
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
    const ends = await endsOf(paper);
    expect(ends.length).toBeGreaterThan(0);
    expect(ends.filter((end) => end.startsWith('printed'))).toEqual([]);
  });
});
