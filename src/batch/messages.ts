import type { CompiledRecipe } from '../config/recipe.js';
import type { GridName } from '../geometry/grid.js';
import type { Output, PrinterSetup } from '../geometry/printer.js';
import type { WorkItem } from '../intake/work.js';
import type { DocumentResult } from '../recipe/outcome.js';
import type { SlipContent, SlipLook } from '../sheet/slip-content.js';

/** One document with all that is needed to process it. */
export interface DocumentJob {
  readonly bytes: Uint8Array;
  /** The name that people see. */
  readonly shownName: string;
  readonly recipe: CompiledRecipe;
  /** Media name, checked by `parseMedia`. */
  readonly media: string;
  readonly grid: GridName;
  /** Left out: the printer reaches the whole page, and takes pages as their sources draw them. */
  readonly printer?: PrinterSetup;
  /** The printer that takes pages too large for that; left out: there is none. */
  readonly large?: Output | undefined;
  /** Whether what ready labels say is wanted, for matching them with orders. */
  readonly texts?: boolean;
  /** Called when work on a source page (from 1) begins: a sign of life. A document that gives none for long is ended. */
  readonly onPage?: (page: number) => void;
}

/** To a worker: one document at a time. Plain data. */
export interface WorkOrder {
  readonly type: 'document';
  readonly item: WorkItem;
  readonly recipe: CompiledRecipe;
  readonly media: string;
  readonly grid: GridName;
  readonly printer: PrinterSetup;
  readonly large: Output | undefined;
  readonly texts: boolean;
}

/** To a worker: the packing slip of one parcel, made from its orders. Plain data. */
export interface SlipOrder {
  readonly type: 'slip';
  readonly content: SlipContent;
  readonly look: SlipLook;
  readonly media: string;
  readonly grid: GridName;
  readonly printer: PrinterSetup;
}

export type PoolOrder = WorkOrder | SlipOrder;

/** From a worker. */
export type WorkerReport =
  /** Work on a source page (from 1) begins. */
  | { readonly type: 'page'; readonly page: number }
  /**
   * The document is done. `spoiled`: a bug of ours broke it off, so the engines may be in any state: the worker is replaced.
   */
  | { readonly type: 'done'; readonly result: DocumentResult; readonly spoiled: boolean };
