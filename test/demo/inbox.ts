import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { DemoFile } from './demo-file.js';
import { plantedFaults } from './planted.js';
import { goodFiles, PAGES, PAIRS, PICTURES, RETURNS, SHEETS, SHEETS_OF_TWO } from './studio.js';

/** The demo's pipeline, as a seller would write it. */
export const PIPELINE = `# yaml-language-server: $schema=../recipes/pipeline.schema.json
#
# The demo's pipeline: an invented studio with six invented channels. Change it and run
#   node dist/cli.js run --config demo/pipeline.yaml
# (npm run demo empties this folder and writes it anew.)

media: 4x6in
grid: 203dpi
out: out

channels:
  # A letter page for each order: the label sideways on its upper half, a receipt below.
  - name: ${SHEETS}
    files: inbox/${SHEETS}/*
    recipe: upper-half

  # One document with all: a label page, then its packing slip.
  - name: ${PAIRS}
    files: inbox/${PAIRS}/*
    recipe: label-then-slip

  # Two labels on an A4 page.
  - name: ${SHEETS_OF_TWO}
    files: inbox/${SHEETS_OF_TWO}/*
    recipe: two-halves

  # Pictures, some with wrong resolution data.
  - name: ${PICTURES}
    files: inbox/${PICTURES}/*
    recipe: label-pages

  # This channel hands over two kinds of pages: label and slip on one page …
  - name: ${PAGES} with slip
    files: inbox/${PAGES}/with-slip-*
    recipe: label-and-slip

  # … and anything else, some of it in a ZIP.
  - name: ${PAGES}
    files: [inbox/${PAGES}/*, "!inbox/${PAGES}/with-slip-*"]
    recipe: any-page

  # Return labels on letter pages.
  - name: ${RETURNS}
    files: inbox/${RETURNS}/*
    recipe: return-label
`;

/** Every file of the studio's day; the same bytes each time. */
export async function demoFiles(): Promise<readonly DemoFile[]> {
  const good = await goodFiles();
  return [...good, ...(await plantedFaults(good))];
}

/** Writes inbox and pipeline under `folder`, which is emptied first. */
export function writeInbox(folder: string, files: readonly DemoFile[]): void {
  rmSync(folder, { recursive: true, force: true });
  for (const { path, bytes } of files) {
    const file = join(folder, 'inbox', path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, bytes);
  }
  writeFileSync(join(folder, 'pipeline.yaml'), PIPELINE);
}
