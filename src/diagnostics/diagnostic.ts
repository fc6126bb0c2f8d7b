import type { DiagnosticCode } from './codes.js';

export type Severity = 'error' | 'warning' | 'note';

/** Where a diagnostic points. Lines, columns and pages count from 1. */
export type Place =
  | { readonly kind: 'config'; readonly file: string; readonly line: number; readonly col: number; readonly length?: number }
  /** A cell of an order file, or the value of a key. What stands there is a buyer's: it is never shown as an excerpt. */
  | { readonly kind: 'orders'; readonly file: string; readonly line: number; readonly col: number }
  | { readonly kind: 'document'; readonly file: string; readonly page?: number; readonly item?: string }
  | { readonly kind: 'run' };

/**
 * One message as data; text, JSON and colour are printers of it. `message` says what is wrong and names the value found;
 * `remedy` says what to do, in the imperative. Neither ever holds a buyer's name, address or a whole tracking number.
 */
export interface Diagnostic {
  readonly code: DiagnosticCode;
  readonly severity: Severity;
  readonly message: string;
  readonly place: Place;
  readonly remedy?: string;
}
