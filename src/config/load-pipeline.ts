import { dirname, resolve } from 'node:path';
import { hasErrors, inReadingOrder } from '../diagnostics/collect.js';
import { STEPS } from '../steps/index.js';
import type { NamedPattern } from './channel.js';
import type { Loaded } from './loaded.js';
import type { Pipeline } from './pipeline.js';
import { readPipeline, type Given } from './pipeline-file.js';
import { readConfigText } from './read-text.js';
import { RecipeShelf } from './recipe-shelf.js';

export interface LoadedPipeline extends Loaded<Pipeline> {
  /** What its channels name under `files` and `orders`, whether or not anything else is wrong. */
  readonly patterns: readonly NamedPattern[];
}

/**
 * Loads a pipeline with all its recipes. `check` and `run` share this one loader, so they can't disagree. Reads files and
 * touches nothing.
 * @param path of the pipeline file, absolute or from the current folder
 * @param given media and grid that count more than the file's; the pipeline has them
 */
export function loadPipeline(path: string, given: Given = {}): LoadedPipeline {
  const absolute = resolve(path);
  const read = readConfigText(absolute, 'pipeline');
  if (!read.file) return { value: undefined, diagnostics: [read.diagnostic], sources: new Map(), patterns: [] };
  const { file } = read;
  const shelf = new RecipeShelf(STEPS);
  const patterns: NamedPattern[] = [];
  const pipeline = readPipeline(file, dirname(absolute), STEPS, shelf, given, patterns);
  const diagnostics = inReadingOrder([...file.diagnostics, ...shelf.diagnostics, ...shelf.inRecipes()]);
  return {
    value: hasErrors(diagnostics) ? undefined : pipeline,
    diagnostics,
    sources: new Map([[file.shown, file.text], ...shelf.sources()]),
    patterns,
  };
}
