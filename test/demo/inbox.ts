import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import {
  faults,
  labelsAndSlips,
  letterSheets,
  mixedPages,
  PAGES,
  PAIRS,
  pictures,
  PICTURES,
  returnLabels,
  RETURNS,
  SHEETS,
  SHEETS_OF_TWO,
  twoOnAPage,
  type DemoFile,
} from './studio.js';

/** The demo's pipeline, as a seller would write it. */
export const PIPELINE = `# The demo's pipeline: an invented studio with six invented channels. Change it and run
#   node dist/cli.js run --config demo/pipeline.yaml
media: 4x6in
grid: 203dpi
out: out
channels:
  - name: ${SHEETS}
    files: inbox/${SHEETS}/*
    recipe: upper-half
  - name: ${PAIRS}
    files: inbox/${PAIRS}/*
    recipe: label-then-slip
  - name: ${SHEETS_OF_TWO}
    files: inbox/${SHEETS_OF_TWO}/*
    recipe: two-halves
  - name: ${PICTURES}
    files: inbox/${PICTURES}/*
    recipe: label-pages
  - name: ${PAGES} with slip
    files: inbox/${PAGES}/with-slip-*
    recipe: label-and-slip
  - name: ${PAGES}
    files: [inbox/${PAGES}/*, "!inbox/${PAGES}/with-slip-*"]
    recipe: any-page
  - name: ${RETURNS}
    files: inbox/${RETURNS}/*
    recipe: return-label
`;

/** Every document of the studio's day; the same bytes each time. */
export async function demoFiles(): Promise<readonly DemoFile[]> {
  const good = [
    await letterSheets(),
    await labelsAndSlips(),
    await twoOnAPage(),
    await pictures(),
    await mixedPages(),
    await returnLabels(),
  ].flat();
  return [...good, ...(await faults(good))];
}

/** Writes inbox and pipeline under `folder`, which is emptied first. */
export async function writeInbox(folder: string): Promise<void> {
  rmSync(folder, { recursive: true, force: true });
  for (const { path, bytes } of await demoFiles()) {
    const file = join(folder, 'inbox', path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, bytes);
  }
  writeFileSync(join(folder, 'pipeline.yaml'), PIPELINE);
}
