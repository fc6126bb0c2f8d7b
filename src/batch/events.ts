import type { Diagnostic } from '../diagnostics/diagnostic.js';

import type { DocumentState, StateCounts } from './account.js';

/** What a run tells while it is on. Plain data; report turns it into words. Documents come as they end, not in their order. */
export type RunEvent =
  /** The inbox was looked through. `config`: the pipeline file; undefined for a run without one. */
  | {
      readonly type: 'started';
      readonly config: string | undefined;
      readonly out: string;
      readonly documents: number;
      readonly jobs: number;
      readonly dryRun: boolean;
    }
  | { readonly type: 'diagnostic'; readonly diagnostic: Diagnostic }
  | {
      readonly type: 'document';
      readonly name: string;
      readonly channel: string;
      readonly state: DocumentState;
      readonly pages: number;
      readonly items: StateCounts;
      /** Documents ended so far, this one with them, of `of`. */
      readonly done: number;
      readonly of: number;
    }
  /** All documents are worked through; the pages are put together. */
  | { readonly type: 'stacking'; readonly pages: number }
  /** What a library printed in a worker: for the log only. */
  | { readonly type: 'talk'; readonly text: string };
