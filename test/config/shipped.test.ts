import { Ajv } from 'ajv';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { schemaFiles } from '../../src/commands/schema.js';
import { loadPipeline } from '../../src/config/load-pipeline.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { formatDiagnostics } from '../../src/diagnostics/format.js';
import { STEPS } from '../../src/steps/index.js';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const text = (path: string): string => readFileSync(join(ROOT, path), 'utf8');
const yamlIn = (folder: string): readonly string[] =>
  readdirSync(join(ROOT, folder))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => (folder === '.' ? name : `${folder}/${name}`));

const recipes = yamlIn('recipes');
const pipelines = yamlIn('.').filter((name) => name.startsWith('pipeline'));

const ajv = new Ajv({ strict: true, strictTypes: false, strictTuples: false, allErrors: true });
const validate = {
  recipe: ajv.compile(JSON.parse(text('recipes/recipe.schema.json')) as object),
  pipeline: ajv.compile(JSON.parse(text('recipes/pipeline.schema.json')) as object),
};

describe('generated schemas', () => {
  it.each(Object.entries(schemaFiles()))('recipes/%s is fresh: else run `slipyard schema`', (name, fresh) => {
    expect(text(`recipes/${name}`)).toBe(fresh);
  });
});

describe('shipped YAML', () => {
  it('has recipes and the example', () => {
    expect(recipes).toContain('recipes/any-page.yaml');
    expect(pipelines).toContain('pipeline.example.yaml');
  });

  it.each([...recipes, ...pipelines])('%s names its schema in the first line', (path) => {
    const kind = path.startsWith('recipes/') ? 'recipe' : 'pipeline';
    const named = /^# yaml-language-server: \$schema=(\S+)$/.exec(text(path).split('\n')[0] ?? '')?.[1] ?? '';
    expect(join(dirname(path), named)).toBe(join('recipes', `${kind}.schema.json`));
    expect(existsSync(join(ROOT, dirname(path), named))).toBe(true);
  });

  it.each(recipes)('%s is fine for the schema and for the loader, and named by its layout', (path) => {
    expect(validate.recipe(parse(text(path))), JSON.stringify(validate.recipe.errors)).toBe(true);
    const { value, diagnostics, sources } = loadRecipe(path, ROOT);
    expect(formatDiagnostics(diagnostics, { colour: false, sources })).toBe('');
    expect(path).toBe(`recipes/${value?.name ?? ''}.yaml`);
    expect(value?.about).toMatch(/^[A-Z].*\.$/);
  });

  it.each(pipelines)('%s is fine for the schema and for the loader', (path) => {
    expect(validate.pipeline(parse(text(path))), JSON.stringify(validate.pipeline.errors)).toBe(true);
    const { diagnostics, sources } = loadPipeline(join(ROOT, path));
    expect(formatDiagnostics(diagnostics, { colour: false, sources })).toBe('');
  });
});

/** An editor must never mark what the loader takes; and of what the loader refuses, it should mark what a schema can. */
describe('schema and loader', () => {
  const HERE = 'test/config';
  const kindOf = (name: string): 'recipe' | 'pipeline' => (name.startsWith('recipe') ? 'recipe' : 'pipeline');
  const isValid = (folder: string, name: string): boolean =>
    validate[kindOf(name)](parse(text(`${HERE}/${folder}/${name}`).replace(/^\ufeff/, ''), { uniqueKeys: false }));

  it.each(readdirSync(join(ROOT, HERE, 'ok')).filter((name) => name.endsWith('.yaml')))('ok/%s is fine for the schema too', (name) => {
    expect(isValid('ok', name), JSON.stringify(validate[kindOf(name)].errors)).toBe(true);
  });

  it.each([
    'recipe-unknown-key.yaml',
    'recipe-missing-keys.yaml',
    'recipe-unknown-step.yaml',
    'recipe-unknown-option.yaml',
    'recipe-option-not-indented.yaml',
    'recipe-length-units.yaml',
    'recipe-percent.yaml',
    'recipe-choice.yaml',
    'recipe-box.yaml',
    'recipe-integer.yaml',
    'recipe-no-short-form.yaml',
    'recipe-boolean-of-yaml-1.1.yaml',
    'recipe-steps-map.yaml',
    'pipeline-unknown-key.yaml',
    'pipeline-channel-misses-keys.yaml',
    'pipeline-grid.yaml',
    'pipeline-media.yaml',
    'pipeline-jobs-none.yaml',
    'pipeline-options-wrong.yaml',
    'pipeline-name-number.yaml',
    'pipeline-outputs-keys.yaml',
    'pipeline-outputs-a-list.yaml',
  ])('err/%s is marked by the schema too', (name) => {
    expect(isValid('err', name)).toBe(false);
  });

  it('describes every step and option', () => {
    const schema = text('recipes/recipe.schema.json');
    for (const { summary, options } of STEPS) {
      expect(schema).toContain(JSON.stringify(summary));
      for (const { description } of Object.values(options)) expect(schema).toContain(JSON.stringify(description).slice(1, -1));
    }
  });
});
