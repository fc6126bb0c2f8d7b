import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DIAGNOSTIC_CODES } from '../../src/diagnostics/codes.js';
import { packagesOf } from './check-imports.js';
import { LIBRARIES, ROOMS } from './rooms.js';
import { ROOT, sources, textOf } from './tree.js';

const manifest = JSON.parse(textOf('package.json')) as { dependencies: Record<string, string> };

describe('nothing is left over', () => {
  it('in the tables: every room and every row of a library exists', () => {
    expect(Object.keys(ROOMS).filter((room) => !existsSync(join(ROOT, 'src', room)))).toEqual([]);
    for (const [name, { may }] of Object.entries(LIBRARIES))
      expect(
        may.filter((room) => !(room in ROOMS)),
        name,
      ).toEqual([]);
  });

  it('in package.json: every runtime dependency is imported', () => {
    const used = new Set(sources().flatMap((path) => packagesOf(path, textOf(path))));
    expect(Object.keys(manifest.dependencies).filter((name) => !used.has(name))).toEqual([]);
  });

  it('in the diagnostic codes: each is given somewhere', () => {
    const text = sources()
      .filter((path) => path !== 'src/diagnostics/codes.ts')
      .map(textOf)
      .join('\n');
    expect(DIAGNOSTIC_CODES.filter((code) => !text.includes(`'${code}'`))).toEqual([]);
  });

  it('in the source: no note to do it later', () => {
    expect(sources().filter((path) => /\b(?:TODO|FIXME|XXX|not (?:yet )?implemented)\b/i.test(textOf(path)))).toEqual([]);
  });
});
