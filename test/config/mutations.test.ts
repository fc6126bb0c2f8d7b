import fc from 'fast-check';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Loaded } from '../../src/config/loaded.js';
import { loadPipeline } from '../../src/config/load-pipeline.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { formatDiagnostics } from '../../src/diagnostics/format.js';

const OK = join(dirname(fileURLToPath(import.meta.url)), 'ok');
const text = (name: string): string => readFileSync(join(OK, name), 'utf8');

/** What people and editors do to a file, besides what nobody would think of. */
const SCRAPS = [
  ...[
    '\t',
    '\r',
    '\0',
    ' ',
    '\n',
    '\n\n  ',
    '- ',
    ': ',
    ':',
    '#',
    '"',
    "'",
    '[',
    ']',
    '{',
    '}',
    ',',
    '*',
    '&a ',
    '!x ',
    '<<: ',
    '%',
    '@',
    '`',
  ],
  ...[
    '---\n',
    '...\n',
    '? ',
    '|\n',
    '>-\n',
    '~',
    'null',
    'true',
    '0x1f',
    '1e9',
    '.inf',
    '-',
    '\\',
    '\u2028',
    '\ufeff',
    '📦',
    'é',
    '\ud800',
  ],
  ...[
    'steps:',
    'channels:',
    'verify',
    '- verify\n',
    'options: {}',
    '4in',
    '10',
    '95%',
    '__proto__: 1\n',
    'constructor: x\n',
    'toString: x\n',
  ],
];

const edits = fc.array(
  fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    remove: fc.integer({ min: 0, max: 25 }),
    insert: fc.oneof(fc.constantFrom(...SCRAPS), fc.string({ maxLength: 4, unit: 'binary' }), fc.constant('')),
    /** Copies a stretch from elsewhere, as a slip with cut and paste does. */
    copyFrom: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
  }),
  { minLength: 1, maxLength: 4 },
);

function mutate(source: string, list: typeof edits extends fc.Arbitrary<infer T> ? T : never): string {
  return list.reduce((current, { at, remove, insert, copyFrom }) => {
    const start = Math.floor(at * current.length);
    const from = copyFrom === null ? 0 : Math.floor(copyFrom * current.length);
    const copied = copyFrom === null ? '' : current.slice(from, from + 30);
    return current.slice(0, start) + insert + copied + current.slice(start + remove);
  }, source);
}

describe('any mutation of a good file', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'slipyard-mutations-'));
    for (const name of ['recipe-shortest.yaml', 'recipe-all-kinds.yaml']) writeFileSync(join(folder, name), text(name));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  /** A value or an error, never both and never neither; every place within the text it points into; every error with a remedy. */
  function expectSound({ value, diagnostics, sources }: Loaded<unknown>): void {
    const errors = diagnostics.filter((each) => each.severity === 'error');
    expect(value === undefined).toBe(errors.length > 0);
    for (const { place, message, remedy } of errors) {
      expect(message).not.toMatch(/undefined|\[object|NaN/);
      expect(remedy).toBeTruthy();
      if (place.kind !== 'config') continue;
      const source = sources.get(place.file);
      if (source === undefined) continue;
      const lines = source.split(/\r\n|\r|\n/);
      const line = lines[place.line - 1];
      expect(line, `line ${place.line} of ${lines.length}`).toBeDefined();
      expect(place.col).toBeGreaterThanOrEqual(1);
      expect(place.col).toBeLessThanOrEqual((line ?? '').length + 1);
      expect(place.col - 1 + (place.length ?? 1)).toBeLessThanOrEqual(Math.max((line ?? '').length, place.col));
    }
    expect(() => formatDiagnostics(diagnostics, { colour: true, sources })).not.toThrow();
    expect(structuredClone(value)).toEqual(value);
  }

  it('of a pipeline gives a checked value, or errors at places within the file', () => {
    const path = join(folder, 'pipeline.yaml');
    let refused = 0;
    fc.assert(
      fc.property(edits, (list) => {
        writeFileSync(path, mutate(text('pipeline-full.yaml'), list));
        const loaded = loadPipeline(path);
        if (loaded.value === undefined) refused++;
        expectSound(loaded);
      }),
      { numRuns: 600 },
    );
    expect(refused).toBeGreaterThan(100);
  });

  it('of a recipe gives a checked value, or errors at places within the file', () => {
    const path = join(folder, 'recipe.yaml');
    let refused = 0;
    fc.assert(
      fc.property(edits, (list) => {
        writeFileSync(path, mutate(text('recipe-all-kinds.yaml'), list));
        const loaded = loadRecipe(path, folder);
        if (loaded.value === undefined) refused++;
        expectSound(loaded);
      }),
      { numRuns: 600 },
    );
    expect(refused).toBeGreaterThan(100);
  });

  it('bytes of any kind, and nesting of any depth, are refused in words', () => {
    const path = join(folder, 'bytes.yaml');
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        writeFileSync(path, bytes);
        const loaded = loadRecipe(path, folder);
        expect(loaded.value).toBeUndefined();
        expectSound(loaded);
      }),
      { numRuns: 200 },
    );
    for (const deep of [
      '['.repeat(100_000),
      '- '.repeat(100_000),
      '{a: '.repeat(50_000),
      `${'['.repeat(5000)}${']'.repeat(5000)}`,
      '? '.repeat(50_000),
    ]) {
      writeFileSync(path, `about: ${deep}`);
      const loaded = loadRecipe(path, folder);
      expect(loaded.value).toBeUndefined();
      expectSound(loaded);
    }
  });
});
