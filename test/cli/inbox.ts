import { join } from 'node:path';
import { write } from '../batch/inbox.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Kind, type QuarterTurn } from '../samples/sample.js';

export type Wanted = readonly [path: string, layout: string, kind?: Kind, turn?: QuarterTurn];

/** Puts samples into a folder, as old as last night's downloads. */
export async function put(folder: string, ...wanted: readonly Wanted[]): Promise<void> {
  for (const [path, name, kind = 'vector', turn = 0] of wanted) {
    const layout = LAYOUTS.find((each) => each.name === name);
    if (!layout) throw new Error(`the layout ${name} is gone`);
    write(join(folder, path), (await sample(layout, kind, turn)).bytes);
  }
}

/** A pipeline file with one channel for each entry: its name, its files, its recipe. */
export function pipelineFile(folder: string, ...channels: readonly (readonly [name: string, files: string, recipe: string])[]): void {
  const lines = channels.map(([name, files, recipe]) => `  - name: ${name}\n    files: ${files}\n    recipe: ${recipe}\n`);
  write(join(folder, 'pipeline.yaml'), `media: 4x6in\ngrid: 203dpi\nout: out\nchannels:\n${lines.join('')}`);
}
