import { mean, sum } from '../geometry/sum.js';
import type { Symbology } from '../reading/source.js';
import type { BarModules } from './bar-modules.js';
import { modulesOf, similarEdges, valueOf } from './code128.js';

/**
 * Decodability of one scan, 0 to 1: how far the widths that decide stay from where they would be read otherwise, as a share of the most that they could.
 * Undefined when the scan does not decode. Print growth of the same amount on all bars (`gain`: change of a bar's whole width) is applied to the widths.
 * @param widths bar, space, bar … along the scan in its reading direction, any unit
 */
export function decodability(widths: readonly number[], { modules }: BarModules, symbology: Symbology, gain = 0): number | undefined {
  const grown: number[] = [];
  for (let index = 0; index < widths.length; index++) {
    const width = (widths[index] as number) + (index % 2 === 0 ? gain : -gain);
    if (width <= 0) return undefined;
    grown.push(width);
  }
  return symbology === 'Code 128' ? code128(grown, modules) : twoWidths(grown, modules, symbology);
}

/**
 * ISO/IEC 15417 for Code 128 (from memory; the half module of edge tolerance that it rests on: handbook section 5.4): in each character of length S,
 * V1 = smallest |e − reference threshold| / (S/22), thresholds at (n + 0.5)·S/11, and V2 = (1.75 − |bars·11/S − modules of the bars|) / 1.75; the least of all.
 */
function code128(widths: readonly number[], modules: readonly number[]): number | undefined {
  let least = 1;
  for (let first = 0; first + 7 <= widths.length; first += 6) {
    const character = widths.slice(first, first + 6);
    const whole = sum(character);
    const value = valueOf(character);
    const meant = modules.slice(first, first + 6);
    if (value === undefined || meant.some((each, index) => modulesOf(value)[index] !== each)) return undefined;
    for (const edge of similarEdges(character)) {
      const elevenths = (edge * 11) / whole;
      least = Math.min(least, 2 * Math.abs(Math.abs(elevenths - Math.floor(elevenths)) - 0.5));
    }
    const bars = (((character[0] ?? 0) + (character[2] ?? 0) + (character[4] ?? 0)) * 11) / whole;
    const planned = (meant[0] ?? 0) + (meant[2] ?? 0) + (meant[4] ?? 0);
    least = Math.min(least, (1.75 - Math.abs(bars - planned)) / 1.75);
  }
  return Math.max(0, least);
}

/**
 * ITF and Code 39 (two-width symbologies; ISO/IEC 16390 and 16388, from memory): in each character, the reference threshold lies half way between narrow and
 * wide; V = smallest distance of an element from it against half the difference of narrow and wide.
 */
function twoWidths(widths: readonly number[], modules: readonly number[], symbology: Symbology): number | undefined {
  const wide = Math.max(...modules);
  const [long, skip] = symbology === 'ITF' ? [10, 4] : [10, 0];
  let least = 1;
  for (let first = skip; first + (symbology === 'ITF' ? 10 : 9) <= widths.length; first += long) {
    const of = symbology === 'ITF' ? 10 : 9;
    // The bars and the spaces of a pair of interleaved digits are two characters.
    const parts = symbology === 'ITF' ? [0, 1].map((odd) => range(first, of).filter((at) => (at - first) % 2 === odd)) : [range(first, of)];
    for (const part of parts) {
      const narrow = part.filter((at) => (modules[at] ?? 0) < wide).map((at) => widths[at] ?? 0);
      const broad = part.filter((at) => (modules[at] ?? 0) >= wide).map((at) => widths[at] ?? 0);
      if (narrow.length === 0 || broad.length === 0) continue;
      const [n, w] = [mean(narrow), mean(broad)];
      const threshold = (n + w) / 2;
      if (w <= n) return undefined;
      for (const each of narrow) least = Math.min(least, (threshold - each) / ((w - n) / 2));
      for (const each of broad) least = Math.min(least, (each - threshold) / ((w - n) / 2));
    }
  }
  return least <= 0 ? undefined : least;
}

const range = (from: number, count: number): number[] => Array.from({ length: count }, (_, index) => from + index);
