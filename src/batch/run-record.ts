import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Box } from '../geometry/box.js';
import type { GridName } from '../geometry/grid.js';
import type { Turn } from '../geometry/placement.js';
import type { CodeSummary, ItemStateKind, WorkCounts } from '../recipe/outcome.js';
import type { Reason, Role } from '../sheet/sheet.js';
import type { Clue } from '../orders/matching.js';
import type { Place } from '../orders/order-places.js';
import type { Account, DocumentState } from './account.js';

/**
 * run.json: what became of every document, page and item. The same inputs give the same bytes, whatever the number of jobs
 * and the order of arguments: no times, no paths of the machine. Paths are relative to the output folder.
 */
export interface RunRecord {
  /** Rises when the meaning of a field changes. */
  readonly format: 1;
  readonly media: string;
  readonly grid: GridName;
  readonly account: Account;
  readonly work: WorkCounts;
  readonly stacks: readonly StackRecord[];
  readonly diagnostics: readonly Diagnostic[];
  /** What became of the orders; only where a channel has order files. */
  readonly orders?: OrdersRecord;
  /** In the fixed order: channel as listed, file name in natural order, content hash. */
  readonly documents: readonly DocumentRecord[];
}

/** One order file. */
export interface OrderFileRecord {
  readonly name: string;
  readonly channel: string;
  readonly orders: number;
}

/** The orders of the run: each in exactly one place. Orders are named by their numbers, never by their buyers. */
export interface OrdersRecord {
  readonly files: readonly OrderFileRecord[];
  readonly sums: { readonly orders: number } & Readonly<Record<Place, number>>;
  readonly each: readonly OrderRecord[];
  /** What is left over, in sentences. */
  readonly looseEnds: readonly Reason[];
  /** Paths of the lists for the bench. */
  readonly lists: readonly string[];
}

export interface OrderRecord {
  readonly number: string;
  readonly channel: string;
  readonly place: Place;
  /** Numbers of its parcels in the run, from 1; none unless it is packed. */
  readonly parcels: readonly number[];
  /** By what its labels were found. */
  readonly by?: readonly Clue[];
}

export interface StackRecord {
  readonly file: string;
  /** The same pages as PWG raster, where there is one. */
  readonly raster?: string;
  /** The printer that it is for: `roll`, or one of the pipeline's `outputs`. */
  readonly output: string;
  /** What that printer takes: the sheet, where pages are laid on sheets. */
  readonly media: string;
  /** The dots that its pages were proved on. */
  readonly grid: GridName;
  readonly parcels: number;
  /** Labels, slips and so on; several may lie on one sheet. */
  readonly pages: number;
  /** Pages of the PDF. */
  readonly sheets: number;
  readonly sha256: string;
}

export interface DocumentRecord {
  readonly name: string;
  readonly channel: string;
  readonly recipe: string;
  readonly sha256: string;
  /** Bytes. */
  readonly size: number;
  readonly state: DocumentState;
  readonly pages: number;
  readonly diagnostics: readonly Diagnostic[];
  readonly items: readonly ItemRecord[];
}

export interface ItemRecord {
  readonly id: string;
  /** From 1; 0 for a document that can't be opened. */
  readonly page: number;
  readonly role: Role;
  /** The printer that it goes to; only where one was settled. */
  readonly output?: string;
  readonly state: ItemStateKind;
  /** Why it is not ready. */
  readonly reason?: Reason;
  /** pt on the visible source page, y down. */
  readonly box?: Box;
  readonly turn: Turn;
  readonly scale: number;
  readonly parcel?: number;
  readonly evidence: readonly string[];
  readonly codes: readonly CodeSummary[];
  /** Where it is printed. */
  readonly printed?: {
    readonly stack: string;
    /** Parcel's number in the run, from 1. */
    readonly number: number;
    /** Place among the pages of the stack, from 1. */
    readonly page: number;
  };
  /** The held item's picture and its reason as data. */
  readonly held?: { readonly picture?: string; readonly reason: string };
}
