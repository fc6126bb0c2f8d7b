import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Loaded } from '../../src/config/loaded.js';
import { loadPipeline } from '../../src/config/load-pipeline.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { formatDiagnostics } from '../../src/diagnostics/format.js';

/** Golden pairs: `case.yaml` and what the loader says of it, `case.out`. `UPDATE_GOLDEN=1` writes them; review them like code. */
const HERE = dirname(fileURLToPath(import.meta.url));
const ROOT = join(HERE, '..', '..');
const UPDATE = process.env['UPDATE_GOLDEN'] === '1';

const casesIn = (folder: string): readonly string[] =>
  readdirSync(join(HERE, folder))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => name.slice(0, -'.yaml'.length));

function load(folder: string, name: string): Loaded<unknown> {
  const path = join(HERE, folder, `${name}.yaml`);
  return name.startsWith('recipe-') ? loadRecipe(path, HERE) : loadPipeline(path);
}

const withoutRoot = (text: string): string => text.replaceAll(ROOT, '<root>').replaceAll(join(ROOT, '..'), '<above>');
const said = ({ diagnostics, sources }: Loaded<unknown>): string => withoutRoot(formatDiagnostics(diagnostics, { colour: false, sources }));

function expectGolden(folder: string, name: string, actual: string): void {
  const path = join(HERE, folder, `${name}.out`);
  if (UPDATE) writeFileSync(path, actual);
  expect(existsSync(path), `${folder}/${name}.out is missing: run with UPDATE_GOLDEN=1 and review it`).toBe(true);
  expect(actual).toBe(readFileSync(path, 'utf8'));
}

describe('config/err', () => {
  const cases = casesIn('err');

  it('has a case for each kind of mistake', () => {
    expect(cases.length).toBeGreaterThanOrEqual(90);
  });

  it.each(cases)('%s', (name) => {
    const loaded = load('err', name);
    expect(loaded.value).toBeUndefined();
    expectGolden('err', name, said(loaded));
    for (const { severity, remedy } of loaded.diagnostics) if (severity === 'error') expect(remedy).toMatch(/^[A-Z].*[.?]$/s);
  });

  it('has no golden text without its case', () => {
    const texts = readdirSync(join(HERE, 'err')).filter((name) => name.endsWith('.out'));
    expect(texts.map((name) => name.replace(/out$/, 'yaml')).filter((name) => !existsSync(join(HERE, 'err', name)))).toEqual([]);
  });
});

describe('config/ok', () => {
  it.each(casesIn('ok'))('%s', (name) => {
    const loaded = load('ok', name);
    expect(
      said(loaded)
        .split('\n')
        .filter((line) => line.includes(': error:')),
    ).toEqual([]);
    expectGolden('ok', name, `${said(loaded)}${withoutRoot(JSON.stringify(loaded.value, null, 2))}\n`);
  });
});
