import type { GridName } from '../geometry/grid.js';
import type { Output, PrinterSetup } from '../geometry/printer.js';
import type { SortKey } from '../orders/sort-parcels.js';
import type { CompiledRecipe } from './recipe.js';

/** Who sends: what stands at the head of a slip. */
export interface Studio {
  /** Empty: nothing is said. */
  readonly name: string;
  /** Lines below the name; they are taken for the studio's own address where labels show them. */
  readonly contact: readonly string[];
}

/** What concerns orders and the whole day. */
export interface OrdersSetup {
  readonly studio: Studio;
  /** By what parcels are sorted, in turn; none: channel by channel, file by file. */
  readonly stackOrder: readonly SortKey[];
  /** Media name of the pick list and the hand-over list. */
  readonly lists: string;
}

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
  /** Other printers, each with a name of its own. */
  readonly outputs: readonly Output[];
  /** The name of the one of them that takes pages too large for labels; left out: none does. */
  readonly largePages?: string;
  readonly day: OrdersSetup;
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
  /** Who takes its parcels, as the hand-over list names it; absent: not said. */
  readonly carrier?: string;
  /** The name of the output that all its pages go to, or `ROLL`; left out: what media, grid and printer of the pipeline say. */
  readonly printOn?: string;
  readonly recipe: CompiledRecipe;
}
