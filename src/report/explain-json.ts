import type { ExplainedPage } from '../explain/explained.js';
import { jsonLine } from './json-lines.js';

/** Shares and factors keep four decimals, lengths, dots and mils two: no figure is measured finer. */
const FINE: ReadonlySet<string> = new Set(['factor', 'factorUnturned', 'scale', 'share', 'moduleMm']);

/** A page as one JSON line: `ExplainedPage` with `type`. @param picture the file with its picture, where one was written */
export function pageLine(page: ExplainedPage, picture: string | undefined): string {
  const value = { type: 'page', ...page, ...(picture === undefined ? {} : { picture }) };
  return jsonLine(JSON.parse(JSON.stringify(value, rounded)) as object);
}

function rounded(key: string, value: unknown): unknown {
  if (typeof value !== 'number') return value;
  const places = FINE.has(key) ? 10_000 : 100;
  // A negative zero would be told apart from zero.
  return Math.round(value * places) / places + 0;
}
