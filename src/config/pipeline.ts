import type { GridName } from '../geometry/grid.js';
import type { PrinterSetup } from '../geometry/printer.js';
import type { CompiledRecipe } from './recipe.js';

/** A checked pipeline. Paths are absolute. */
export interface Pipeline {
  /** The file it came from; undefined for `run --recipe`. */
  readonly file: string | undefined;
  /** The folder that globs and relative paths start from. */
  readonly folder: string;
  /** Media name as written, checked by `parseMedia`. */
  readonly media: string;
  readonly grid: GridName;
  readonly printer: PrinterSetup;
  readonly out: string;
  /** Workers; undefined: as many as the machine can spare. */
  readonly jobs: number | undefined;
  readonly channels: readonly Channel[];
}

export interface Channel {
  readonly name: string;
  /** Globs or files, relative to `Pipeline.folder` or absolute. */
  readonly files: readonly string[];
  /** Globs or files of the channel's orders, like `files`; absent: nothing is matched. Where they are there, so is the recipe's order map. */
  readonly orders?: readonly string[];
  readonly recipe: CompiledRecipe;
}
