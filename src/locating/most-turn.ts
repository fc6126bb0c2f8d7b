import type { Turn } from '../geometry/placement.js';
import type { Phrase } from '../reading/word-lines.js';

/** How most characters of some writing are turned, clockwise; undefined where there are none. */
export function mostTurn(phrases: readonly Phrase[]): Turn | undefined {
  const count = new Map<Turn, number>();
  for (const { text, turn } of phrases) count.set(turn, (count.get(turn) ?? 0) + text.length);
  return [...count].sort(([, a], [, b]) => b - a)[0]?.[0];
}
