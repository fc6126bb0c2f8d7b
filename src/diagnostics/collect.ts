import type { Diagnostic } from './diagnostic.js';

export const hasErrors = (diagnostics: readonly Diagnostic[]): boolean => diagnostics.some((each) => each.severity === 'error');

/** Two diagnostics with the same key say the same of the same place. */
const keyOf = ({ code, severity, message, place }: Diagnostic): string => JSON.stringify([code, severity, message, place]);

/**
 * Each diagnostic once, in reading order: by file in the order in which the files first appear, then by line and column
 * or page. What points nowhere comes last.
 */
export function inReadingOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const files = new Map<string, number>();
  const once = new Map<string, Diagnostic>();
  for (const each of diagnostics) {
    if (each.place.kind !== 'run' && !files.has(each.place.file)) files.set(each.place.file, files.size);
    if (!once.has(keyOf(each))) once.set(keyOf(each), each);
  }
  const rank = ({ place }: Diagnostic): readonly [number, number, number] => {
    switch (place.kind) {
      case 'config':
      case 'orders':
        return [files.get(place.file) ?? 0, place.line, place.col];
      case 'document':
        return [files.get(place.file) ?? 0, place.page ?? 0, 0];
      case 'run':
        return [files.size, 0, 0];
    }
  };
  return [...once.values()]
    .map((diagnostic) => ({ diagnostic, rank: rank(diagnostic) }))
    .sort((a, b) => a.rank[0] - b.rank[0] || a.rank[1] - b.rank[1] || a.rank[2] - b.rank[2])
    .map(({ diagnostic }) => diagnostic);
}

/** `2 errors, 1 warning`; empty text for none. Notes are not counted. */
export function countInWords(diagnostics: readonly Diagnostic[]): string {
  const words = (severity: 'error' | 'warning'): string => {
    const count = diagnostics.filter((each) => each.severity === severity).length;
    return count === 0 ? '' : `${count} ${severity}${count === 1 ? '' : 's'}`;
  };
  return [words('error'), words('warning')].filter((text) => text !== '').join(', ');
}
