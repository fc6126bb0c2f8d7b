import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { findRecipe, SHIPPED_RECIPES } from '../../src/config/find-recipe.js';
import { loadPipeline } from '../../src/config/load-pipeline.js';

const RECIPE = 'about: A recipe of my own.\nsteps: [split-pages, verify]\n';

describe('where a recipe is looked for', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'slipyard-find-'));
  });
  beforeEach(() => {
    rmSync(join(folder, 'recipes'), { recursive: true, force: true });
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });
  const own = (name: string): string => {
    mkdirSync(join(folder, 'recipes'), { recursive: true });
    writeFileSync(join(folder, 'recipes', name), RECIPE);
    return join(folder, 'recipes', name);
  };

  it('a name: the one that comes with the program', () => {
    expect(findRecipe('any-page', folder)).toEqual({ path: join(SHIPPED_RECIPES, 'any-page.yaml'), insteadOf: undefined });
  });

  it("a name: one's own in recipes/ comes first", () => {
    const path = own('any-page.yaml');
    expect(findRecipe('any-page', folder)).toEqual({ path, insteadOf: undefined });
  });

  it('a path: from the folder; recipes/NAME.yaml may stand for a shipped one, and that is said', () => {
    const path = own('mine.yaml');
    expect(findRecipe('recipes/mine.yaml', folder)).toEqual({ path, insteadOf: undefined });
    for (const reference of ['recipes/any-page.yaml', './recipes/any-page.yaml']) {
      expect(findRecipe(reference, folder)).toEqual({ path: join(SHIPPED_RECIPES, 'any-page.yaml'), insteadOf: reference });
    }
    expect(findRecipe('other/any-page.yaml', folder)).toEqual({ path: join(folder, 'other', 'any-page.yaml'), insteadOf: undefined });
  });

  it('neither: the nearest name, else all of them', () => {
    expect(findRecipe('anypage', folder)).toMatchObject({
      path: undefined,
      remedy: expect.stringMatching(/^Write `any-page`, or/) as string,
    });
    own('zebra.yaml');
    expect(findRecipe('quite-other', folder)).toMatchObject({ path: undefined, remedy: expect.stringContaining('`zebra`') as string });
    expect(findRecipe('recipes/nowhere.yaml', folder)).toMatchObject({
      path: undefined,
      message: 'there is no file `recipes/nowhere.yaml`',
      remedy: expect.stringMatching(/or the path of a file that is there\.$/) as unknown,
    });
    expect(findRecipe('recipes\\mine.yaml', folder)).toMatchObject({ path: undefined, remedy: 'Write `recipes/mine.yaml`.' });
  });

  it.each(['Any page', 'ANY-PAGE', 'any_page', 'AnyPage', 'any-Page'])('%s is told how the recipe is written', (said) => {
    expect(findRecipe(said, folder)).toMatchObject({
      path: undefined,
      message: `there is no recipe \`${said}\``,
      remedy: expect.stringMatching(/^Write `any-page`, or/) as string,
    });
  });

  it('a file whose name has blanks is found by it', () => {
    writeFileSync(join(folder, 'Any page'), 'steps: []');
    expect(findRecipe('Any page', folder)).toEqual({ path: join(folder, 'Any page'), insteadOf: undefined });
  });

  it('a reference that no system takes leads to a message, not to a throw', () => {
    for (const reference of ['x'.repeat(5000), 'a\0b', '\0', `${'d/'.repeat(3000)}x.yaml`, '..', '/', '~']) {
      writeFileSync(join(folder, 'p.yaml'), `channels:\n  - { name: a, files: a.pdf, recipe: ${JSON.stringify(reference)} }\n`);
      const { diagnostics } = loadPipeline(join(folder, 'p.yaml'));
      expect(diagnostics.map((each) => each.severity)).toEqual(['error']);
    }
  });

  it('the compiled recipe knows its file, and a stand-in leaves a note', () => {
    writeFileSync(join(folder, 'p.yaml'), 'channels:\n  - { name: a, files: a.pdf, recipe: recipes/any-page.yaml }\n');
    const { value, diagnostics } = loadPipeline(join(folder, 'p.yaml'));
    expect(basename(value?.channels[0]?.recipe.file ?? '')).toBe('any-page.yaml');
    expect(diagnostics).toMatchObject([{ code: 'config/shipped-recipe', severity: 'note', place: { line: 2 } }]);
  });
});
