import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contains } from '../../src/geometry/box.js';
import { applyRecipe } from '../../src/recipe/apply.js';
import { isLabel, isPlanned } from '../../src/sheet/sheet.js';
import { ROOT } from '../house/tree.js';
import { LAYOUTS, NO_LABEL_LAYOUTS } from '../samples/layouts.js';
import { recipeNamed } from '../steps/on-pages.js';
import { onMedia, openedSample } from '../steps/on-sample.js';

const RECIPES = readdirSync(join(ROOT, 'recipes')).flatMap((file) => (file.endsWith('.yaml') ? [file.slice(0, -'.yaml'.length)] : []));

/** What holds for every recipe on every document, be they made for each other or not. */
describe.each(RECIPES)('%s on every layout', (name) => {
  const recipe = recipeNamed(name);

  it.each([...LAYOUTS, ...NO_LABEL_LAYOUTS].map((layout) => [layout.name, layout] as const))(
    '%s: no page is lost, no sheet is named twice, all that is planned can be drawn and proved',
    async (_, layout) => {
      const { document, sheets: pages } = await openedSample(layout, layout.kinds[0] ?? 'vector', 0);
      const sheets = await applyRecipe(recipe, onMedia(document));
      document.close();
      expect([...new Set(sheets.map(({ page }) => page))]).toEqual(pages.map(({ page }) => page));
      expect(new Set(sheets.map(({ id }) => id)).size).toBe(sheets.length);
      const labels = sheets.filter(isLabel);
      expect(new Set(labels.map(({ parcel }) => parcel)).size).toBe(labels.length);
      for (const sheet of sheets.filter(isPlanned)) {
        const page = pages.find((each) => each.page === sheet.page);
        expect(page && contains(page.box, sheet.box, 0.01), sheet.id).toBe(true);
        expect(sheet.scale > 0 && sheet.scale <= 1.01, sheet.id).toBe(true);
        expect(sheet.parcel, sheet.id).toBeDefined();
        expect(sheet.proof, sheet.id).toBeDefined();
        expect(isLabel(sheet) || sheet.role === 'slip', sheet.id).toBe(true);
      }
    },
  );
});
