import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { runBuilt } from '../built.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Kind, type PlacedCode, type QuarterTurn } from '../samples/sample.js';
import { bytesOf, inTempFolder, outsideCheck, runTool } from './tools.js';
import { cut, RASTERISERS, rasterisedPages, zbarCodes } from './rasters.js';

/** Documents in the order of their names. */
const INBOX: readonly (readonly [layout: string, kind: Kind, turn: QuarterTurn])[] = [
  ['letter-upper-sideways', 'vector', 0],
  ['page-4x6', 'bilevel', 90],
  ['a4-two-labels', 'vector', 180],
  ['letter-ruled-cells', 'grey', 270],
];

interface Made {
  readonly pdf: Uint8Array;
  /** The codes of each label that zbar reads, labels in the order of the stack. */
  readonly labels: readonly (readonly string[])[];
}

const hexOf = (codes: readonly PlacedCode[]): readonly string[] =>
  codes.filter(({ symbology }) => ['Code 128', 'ITF', 'Code 39', 'QR'].includes(symbology)).map(({ bytes }) => bytes);

const made = new Map<string, Promise<Made>>();

/** One run for each recipe, however many look at what it made. */
function madeStack(recipe: string): Promise<Made> {
  const known = made.get(recipe) ?? inTempFolder((folder) => makeStack(recipe, folder));
  made.set(recipe, known);
  return known;
}

async function makeStack(recipe: string, folder: string): Promise<Made> {
  const labels: (readonly string[])[] = [];
  const files: string[] = [];
  for (const [i, [name, kind, turn]] of INBOX.entries()) {
    const layout = LAYOUTS.find((each) => each.name === name);
    if (!layout) throw new Error(`the layout ${name} is gone`);
    const { bytes, fileName, expected } = await sample(layout, kind, turn);
    files.push(`${i}-${fileName}`);
    writeFileSync(join(folder, `${i}-${fileName}`), bytes);
    // A page turned by a half has its lower label first.
    const onPages = expected.pages.flatMap((page) => [...page.labels].sort((a, b) => a.box.y - b.box.y || a.box.x - b.box.x));
    labels.push(...onPages.map(({ codes }) => hexOf(codes)));
  }
  const { code, stdout, stderr } = await runBuilt(['run', '--recipe', recipe, '--out', 'out', ...files], folder);
  expect(`${String(code)} ${stderr}${stdout}`).toMatch(/^0 /);
  const [stack, ...others] = readdirSync(join(folder, 'out', 'print'));
  expect(others).toEqual([]);
  return { pdf: bytesOf(join(folder, 'out', 'print', stack ?? '')), labels };
}

describe('a whole stack, made by the built command', () => {
  outsideCheck('one label a page, in order, each code once: pdftoppm, gs, zbar', [...RASTERISERS, 'pdfinfo', 'zbarimg'], async () => {
    const { pdf, labels } = await madeStack('any-page');
    for (const rasteriser of RASTERISERS) {
      const pages = await rasterisedPages(rasteriser, pdf, 203);
      expect(pages.map(({ width, height }) => [width, height])).toEqual(labels.map(() => [812, 1218]));
      for (const [i, page] of pages.entries()) {
        const read = (await zbarCodes(page)).map(({ bytes }) => bytes);
        for (const code of labels[i] ?? []) expect(read.filter((each) => each === code)).toEqual([code]);
      }
    }
  });

  outsideCheck('two-up on letter at true size: pdftoppm, zbar', ['pdftoppm', 'pdfinfo', 'zbarimg'], async () => {
    const { pdf, labels } = await madeStack('two-up-sheets');
    const sheets = await rasterisedPages('pdftoppm', pdf, 203);
    expect(sheets.map(({ width, height }) => [width, height])).toEqual(
      Array.from({ length: Math.ceil(labels.length / 2) }, () => [1726, 2233]),
    );
    for (const [i, codes] of labels.entries()) {
      const sheet = sheets[Math.floor(i / 2)];
      if (!sheet) throw new Error('a sheet for every two labels');
      const read = (await zbarCodes(cut(sheet, { x: 0, y: (i % 2) * 396, width: 612, height: 396 }))).map(({ bytes }) => bytes);
      for (const code of codes) expect(read.filter((each) => each === code)).toEqual([code]);
    }
  });

  outsideCheck('qpdf finds nothing wrong with a stack', ['qpdf'], () =>
    inTempFolder(async (folder) => {
      const { pdf } = await madeStack('any-page');
      writeFileSync(join(folder, 'stack.pdf'), pdf);
      expect(runTool('qpdf', ['--check', join(folder, 'stack.pdf')]).toString()).toContain('No syntax or stream encoding errors found');
    }),
  );
});
