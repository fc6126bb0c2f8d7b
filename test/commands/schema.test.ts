import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runSchema, schemaFiles } from '../../src/commands/schema.js';
import { capture } from './capture.js';

describe('schema', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'slipyard-schema-'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it('writes both schemas into a folder that it makes, and says where', async () => {
    const out = join(folder, 'a', 'b');
    const result = await capture((io) => runSchema({ out }, io));
    expect(result.exitCode).toBe(0);
    expect(readdirSync(out).sort()).toEqual(['pipeline.schema.json', 'recipe.schema.json']);
    for (const [name, text] of Object.entries(schemaFiles())) {
      expect(readFileSync(join(out, name), 'utf8')).toBe(text);
      expect(result.out).toContain(`b/${name}\n`);
    }
    expect(result.err).toContain('# yaml-language-server: $schema=');
  });

  it('replaces older ones', async () => {
    writeFileSync(join(folder, 'recipe.schema.json'), 'old');
    await capture((io) => runSchema({ out: folder }, io));
    expect(readFileSync(join(folder, 'recipe.schema.json'), 'utf8')).toBe(schemaFiles()['recipe.schema.json']);
  });

  it('ends with 3 and a reason where it can not write', async () => {
    writeFileSync(join(folder, 'file'), '');
    const { exitCode, err, out } = await capture((io) => runSchema({ out: join(folder, 'file') }, io));
    expect(exitCode).toBe(3);
    expect(err).toMatch(/^error: .*\[files\/.*\]\n {2}do: /);
    expect(out).toBe('');
  });
});
