import type { Diagnostic } from '../diagnostics/diagnostic.js';

/**
 * What came of reading configuration. `value` is there exactly when no diagnostic is an error. Nothing here throws for what
 * a user wrote.
 */
export interface Loaded<T> {
  readonly value: T | undefined;
  /** Each once, in reading order. */
  readonly diagnostics: readonly Diagnostic[];
  /** The text of every file that was read, by the name that the diagnostics use: for `formatDiagnostics`. */
  readonly sources: ReadonlyMap<string, string>;
}
