import type { Reason } from '../sheet/sheet.js';

/** One document to work on. `entry` names a file inside a ZIP. Plain data: it crosses threads. */
export interface WorkItem {
  /** Index into the pipeline's channels, from 0. */
  readonly channel: number;
  readonly path: string;
  readonly entry: string | undefined;
  /** The name that people see: relative to where the pipeline stands, with `/`; a ZIP's entry behind it. */
  readonly shownName: string;
  /** SHA-256 of the content, hex. */
  readonly sha256: string;
  readonly size: number;
}

/** A document that is not worked on, and why; it still is one item of the account. */
export interface RefusedItem {
  readonly item: WorkItem;
  readonly state: 'skipped' | 'failed';
  readonly reason: Reason;
}

/** Everything found, in the fixed order: channel as listed, file name in natural order, content hash. */
export interface Intake {
  readonly work: readonly WorkItem[];
  readonly refused: readonly RefusedItem[];
}
