import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadPipeline } from '../../src/config/load-pipeline.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { readConfigText } from '../../src/config/read-text.js';

const GOOD = 'about: A recipe.\nsteps: [split-pages, verify]\n';

describe('files that are no recipe', () => {
  let folder: string;
  const path = (name: string): string => join(folder, name);
  const only = (name: string): { code: string; message: string; remedy: string; place: object } => {
    const { diagnostics, value } = loadRecipe(path(name), folder);
    expect(value).toBeUndefined();
    expect(diagnostics).toHaveLength(1);
    const [{ code, message, remedy, place }] = diagnostics as [(typeof diagnostics)[0]];
    return { code, message, remedy: remedy ?? '', place };
  };

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'slipyard-read-'));
    mkdirSync(path('folder'));
    mkdirSync(path('empty-folder'));
    writeFileSync(path('folder/upper.yaml'), GOOD);
    writeFileSync(path('mine.yaml'), GOOD);
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it('a missing file: the file itself is named, and the nearest one beside it', () => {
    const { code, remedy, place } = only('mien.yaml');
    expect(code).toBe('config/no-file');
    expect(remedy).toContain('mine.yaml');
    expect(place).toMatchObject({ kind: 'document' });
  });

  it('a missing file with none like it', () => {
    expect(only('something-else.yaml').remedy).toBe('Check the name and the folder of the recipe file.');
    expect(only('mine.yaml/inner.yaml').code).toBe('config/no-file');
  });

  it('a folder: a file in it is named', () => {
    expect(only('folder')).toMatchObject({ code: 'config/folder' });
    expect(only('folder').remedy).toContain('folder/upper.yaml');
    expect(only('empty-folder').remedy).toBe('Name the YAML file with the recipe.');
  });

  it('a file that is too large: not read at all', () => {
    writeFileSync(path('large.yaml'), `${GOOD}#${'x'.repeat(256 * 1024)}`);
    expect(only('large.yaml')).toMatchObject({ code: 'config/too-large', message: expect.stringContaining('257 KB') as string });
  });

  it('a file just small enough is read', () => {
    const text = `${GOOD}#`;
    writeFileSync(path('just.yaml'), text + 'x'.repeat(256 * 1024 - text.length));
    expect(loadRecipe(path('just.yaml'), folder).diagnostics).toEqual([]);
  });

  it('a device', () => {
    symlinkSync('/dev/null', path('device.yaml'));
    expect(only('device.yaml').code).toBe('config/unreadable');
  });

  it('a file that the system does not open: a link that leads to itself', () => {
    symlinkSync(path('loop.yaml'), path('loop.yaml'));
    expect(only('loop.yaml')).toMatchObject({ code: 'config/unreadable', message: expect.stringContaining('(ELOOP)') as string });
  });

  it.each([
    ['a lone byte of Latin-1', [0x61, 0x0a, 0x62, 0xe4, 0x0a], { line: 2, col: 2 }],
    ['a cut-off character at the end', [0x61, 0xe2, 0x82], { line: 1, col: 2 }],
    ['a lone byte behind wide characters', [...Buffer.from('納品: '), 0xff], { line: 1, col: 5 }],
    ['an overlong form', [0xc0, 0xaf], { line: 1, col: 1 }],
    ['UTF-16, big end first', [0xfe, 0xff, 0x00, 0x61], { line: 1, col: 1 }],
    ['a zero byte', [0x61, 0x0a, 0x00], { line: 2, col: 1 }],
  ])('bytes that are not UTF-8: %s', (_what, bytes, place) => {
    writeFileSync(path('bytes.yaml'), Uint8Array.from(bytes));
    expect(only('bytes.yaml')).toMatchObject({ code: 'config/encoding', place });
  });

  it('takes a byte order mark off', () => {
    writeFileSync(path('bom.yaml'), `\ufeff${GOOD}`);
    expect(readConfigText(path('bom.yaml'), 'recipe').file?.text).toBe(GOOD);
  });

  it('a pipeline that is missing says how to begin', () => {
    const [first] = loadPipeline(path('none/pipeline.yaml')).diagnostics;
    expect(first?.remedy).toContain('slipyard run --recipe any-page');
  });

  it('points at the line of the pipeline that names it', () => {
    writeFileSync(path('p.yaml'), 'channels:\n  - name: a\n    files: a.pdf\n    recipe: nowhere/x.yaml\n');
    expect(loadPipeline(path('p.yaml')).diagnostics).toMatchObject([{ code: 'config/no-file', place: { line: 4, col: 13, length: 14 } }]);
  });
});
