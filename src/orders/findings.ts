import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Diagnostic, Severity } from '../diagnostics/diagnostic.js';

/** A place in an order file; both count from 1, columns in UTF-16 units as editors count. */
export interface Spot {
  readonly line: number;
  readonly col: number;
}

export const START: Spot = { line: 1, col: 1 };

export interface Finding {
  readonly code: DiagnosticCode;
  readonly severity: Severity;
  readonly message: string;
  readonly remedy: string;
}

/** More of one kind in one column than this are counted, not listed: they have one cause. */
const MOST_LISTED = 10;

interface Kind {
  readonly first: Finding;
  count: number;
  last: Spot;
}

/** What is wrong in one order file. */
export class Findings {
  private readonly listed: Diagnostic[] = [];
  private readonly told = new Set<string>();
  private readonly kinds = new Map<string, Kind>();

  /** @param file name as messages show it */
  constructor(readonly file: string) {}

  /** @param column what it is about, so that many of the same are told as one */
  add(finding: Finding, spot: Spot, column = ''): void {
    const key = `${finding.code} ${finding.severity} ${column}`;
    const kind = this.kinds.get(key);
    if (!kind) this.kinds.set(key, { first: finding, count: 1, last: spot });
    else {
      kind.count++;
      kind.last = spot;
      if (kind.count > MOST_LISTED) return;
    }
    this.listed.push(this.diagnostic(finding, spot));
  }

  /** As `add`, but only the first time that `about` is told of. */
  once(finding: Finding, spot: Spot, about: string): void {
    const key = `${finding.code} ${about}`;
    if (this.told.has(key)) return;
    this.told.add(key);
    this.add(finding, spot);
  }

  private diagnostic({ code, severity, message, remedy }: Finding, { line, col }: Spot): Diagnostic {
    return { code, severity, message, place: { kind: 'orders', file: this.file, line, col }, remedy };
  }

  /** All of them by line and column, what was only counted last of its kind. */
  list(): readonly Diagnostic[] {
    const counted = [...this.kinds.values()].flatMap(({ first, count, last }) => {
      const more = count - MOST_LISTED;
      if (more <= 0) return [];
      const message = `${more} more of this kind up to this line; the first says: ${first.message}`;
      return [this.diagnostic({ ...first, message }, last)];
    });
    const rank = ({ place }: Diagnostic): number => (place.kind === 'orders' ? place.line * 1e6 + Math.min(place.col, 999_999) : 0);
    return [...this.listed, ...counted].sort((a, b) => rank(a) - rank(b));
  }
}
