import { describe, expect, it } from 'vitest';
import { checkFile, roomOf } from './check-imports.js';
import { LIBRARIES, ROOMS } from './rooms.js';
import { sources, textOf } from './tree.js';

const manifest = JSON.parse(textOf('package.json')) as { dependencies: Record<string, string> };

describe('import direction, file by file', () => {
  it.each(sources())('%s', (path) => {
    expect(checkFile(path, textOf(path))).toEqual([]);
  });

  it('has a row for every room of src', () => {
    const rooms = new Set(sources().map(roomOf));
    expect([...rooms].filter((room) => !(room in ROOMS))).toEqual([]);
  });

  it('names in each row only rooms above it, so no two rooms can need each other', () => {
    const above: string[] = [];
    for (const [room, { may, why }] of Object.entries(ROOMS)) {
      expect(
        may.filter((each) => !above.includes(each)),
        room,
      ).toEqual([]);
      expect(why, room).toMatch(/^[A-Z].+\.$/);
      above.push(room);
    }
  });

  it('has a row for every runtime dependency, and only for those', () => {
    expect(Object.keys(LIBRARIES).sort()).toEqual(Object.keys(manifest.dependencies).sort());
  });
});

it('loads the PDF library at one place: two copies of it would not know each other', () => {
  const loads = (path: string): boolean => /from 'pdf-lib'|import\('pdf-lib'\)|resolve\('pdf-lib'\)/.test(textOf(path));
  expect(sources().filter(loads)).toEqual(['src/reading/pdf-library.ts']);
});

describe('the rule can fail', () => {
  const cases: readonly (readonly [path: string, text: string, complaint: RegExp])[] = [
    ['src/geometry/x.ts', "import { held } from '../sheet/sheet.js';", /imports sheet/],
    ['src/geometry/x.ts', "import type { Sheet } from '../sheet/sheet.js';", /imports sheet/],
    ['src/press/x.ts', "export { STEPS } from '../steps/index.js';", /imports steps/],
    ['src/press/x.ts', "let a: import('../steps/step.js').Step;", /imports steps/],
    ['src/reading/x.ts', "await import('../batch/pool.js');", /imports batch/],
    ['src/batch/x.ts', "import '../cli.js';", /imports cli\.ts/],
    ['src/batch/x.ts', 'await import(name);', /computed/],
    ['src/attic/x.ts', '', /without a row/],
    ['src/steps/x.ts', "import sample from '../../test/samples/index.js';", /outside src/],
    ['src/proof/x.ts', "import { readBarcodes } from 'zxing-wasm/reader';", /zxing-wasm/],
    ['src/steps/x.ts', "import { PDFDocument } from 'pdf-lib';", /pdf-lib/],
    ['src/steps/x.ts', "const WASM = '@embedpdf/pdfium/x.wasm'; createRequire(import.meta.url).resolve(WASM);", /pdfium/],
    ['src/press/x.ts', "import leftPad from 'left-pad';", /no row/],
    ['src/steps/x.ts', "require(require.resolve('pdf-lib').replace('cjs', 'dist'));", /pdf-lib/],
    ['src/steps/x.ts', 'require(require.resolve(name));', /computed/],
    ['src/intake/x.ts', "import { writeFile } from 'node:fs/promises';", /writeFile/],
    ['src/intake/x.ts', "import * as fs from 'node:fs';", /all of it/],
    ['src/intake/x.ts', "import fs from 'node:fs';", /all of it/],
    ['src/intake/x.ts', "import { open } from 'node:fs/promises'; open(path, 'w');", /opens a file with 'w'/],
    ['src/reading/x.ts', "void sharp(bytes).toFile('x.png');", /toFile/],
    ['src/report/x.ts', "pino.destination('log');", /pino\.destination/],
    ['src/press/x.ts', "import { Worker } from 'node:worker_threads';", /worker threads/],
    ['src/press/x.ts', "import { execFile } from 'node:child_process';", /child_process/],
    ['src/press/x.ts', "await fetch('x');", /fetch/],
    ['src/commands/x.ts', 'process.exit(1);', /only cli\.ts/],
    ['src/commands/x.ts', 'process.exitCode = 1;', /only cli\.ts/],
  ];
  it.each(cases)('%s: %s', (path, text, complaint) => {
    const [first, ...rest] = checkFile(path, text);
    expect(first).toMatch(complaint);
    expect(rest).toEqual([]);
  });

  it('and lets through what is allowed', () => {
    expect(checkFile('src/intake/x.ts', "import { open, readFile } from 'node:fs/promises'; open(path, 'r'); open(path);")).toEqual([]);
    expect(checkFile('src/batch/x.ts', "import { Worker } from 'node:worker_threads'; import { a } from '../press/stack.js';")).toEqual([]);
    expect(checkFile('src/cli.ts', "import { runRun } from './commands/run.js'; process.exitCode = 2;")).toEqual([]);
  });
});
