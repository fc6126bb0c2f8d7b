/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import { isAlias, isScalar, isSeq, type Node, type Scalar } from 'yaml';
import type { ConfigFile, Span } from './config-file.js';
import { spanOf } from './parse-yaml.js';
import { presence, wrongKind, type Entry } from './read-map.js';
import { listWords, quote, useOneOf } from './words.js';

/** A value to be read: where it stands and what messages call it (`margin`, without backticks). */
export interface Slot {
  readonly file: ConfigFile;
  readonly name: string;
  readonly node: Node | undefined;
  /** Stands in for the place when there is no node. */
  readonly at: Span;
}

export const slotOf = (file: ConfigFile, entry: Entry): Slot => ({ file, name: entry.key, node: entry.value, at: entry.keySpan });

/** Says that a value is wrong; the answer is the `undefined` that every reader gives then. `wants` completes "`margin` ". */
export function wrongValue(
  slot: Slot,
  wants: string,
  remedy: string,
  code: 'config/bad-value' | 'config/bad-unit' = 'config/bad-value',
): undefined {
  const { file, name, node, at } = slot;
  if (node && isAlias(node)) return undefined;
  if (!node) file.error('config/missing-value', at, `${quote(name)} has nothing behind its colon`, remedy);
  else if (isScalar(node)) file.error(code, spanOf(node), `${quote(name)} ${wants}, not ${quote(sourceOf(file, node))}`, remedy);
  else wrongKind(file, node, at, `${quote(name)} ${wants}`, remedy);
  return undefined;
}

/** The scalar of a slot; undefined, and not yet reported, for anything else. */
export const scalarOf = ({ node }: Slot): Scalar | undefined => (node && isScalar(node) && node.value !== null ? node : undefined);

const sourceOf = (file: ConfigFile, node: Scalar): string =>
  typeof node.value === 'string' ? node.value : (node.source ?? file.textOf(spanOf(node)));

/** The word that stands there, whatever YAML takes it for: `90`, `true` and `upright` alike. */
export function wordOf(slot: Slot): string | undefined {
  const scalar = scalarOf(slot);
  return scalar && sourceOf(slot.file, scalar).trim();
}

export function readText(slot: Slot, wants: string, example: string): string | undefined {
  const scalar = scalarOf(slot);
  if (!scalar) return wrongValue(slot, wants, `Write it as ${quote(example)}.`);
  if (typeof scalar.value !== 'string') {
    return wrongValue(slot, 'is a text', `Put it into quotes if it is meant as a text: ${quote(`'${sourceOf(slot.file, scalar)}'`)}.`);
  }
  const text = scalar.value.trim();
  return text === '' ? wrongValue(slot, 'can not be empty', `Write it as ${quote(example)}.`) : text;
}

export function readBoolean(slot: Slot): boolean | undefined {
  const value = scalarOf(slot)?.value;
  if (typeof value === 'boolean') return value;
  const word = wordOf(slot)?.toLowerCase() ?? '';
  if (['yes', 'on', 'y', '1', 'true'].includes(word)) return wrongValue(slot, 'is `true` or `false`', 'Write `true`, without quotes.');
  if (['no', 'off', 'n', '0', 'false'].includes(word)) return wrongValue(slot, 'is `true` or `false`', 'Write `false`, without quotes.');
  return wrongValue(slot, 'is `true` or `false`', 'Write `true` or `false`.');
}

export function readInteger(slot: Slot, min: number, max: number): number | undefined {
  const wants = `is a whole number from ${min} to ${max}`;
  const word = wordOf(slot);
  const scalar = scalarOf(slot);
  if (word === undefined || scalar === undefined) return wrongValue(slot, wants, `Write a number, for example ${quote(String(min))}.`);
  if (!/^-?\d{1,9}$/.test(word)) return wrongValue(slot, wants, `Write digits only, for example ${quote(String(min))}.`);
  const value = Number(word);
  if (typeof scalar.value === 'string')
    return wrongValue(slot, `${wants}, without quotes`, `Write ${quote(String(value))} without quotes.`);
  return value < min || value > max ? wrongValue(slot, wants, `Write a number from ${min} to ${max}.`) : value;
}

export function readChoice(slot: Slot, values: readonly string[]): string | undefined {
  const word = wordOf(slot);
  if (word !== undefined && values.includes(word)) return word;
  const wants = values.length > 5 ? `is one of ${values.length} words` : `is ${listWords(values)}`;
  return wrongValue(slot, wants, word === undefined ? `Write ${listWords(values)}.` : useOneOf(word, values));
}

/** A list; one value alone counts as a list of one. Undefined when it is neither or empty, or when one of its values is wrong. */
export function readOneOrMore<T>(
  slot: Slot,
  wants: string,
  example: string,
  read: (item: Slot) => T | undefined,
): readonly T[] | undefined {
  const { file, node } = slot;
  if (!node || !isSeq(node)) {
    if (!scalarOf(slot)) return wrongValue(slot, wants, `Write it as ${quote(example)}.`);
    const value = read(slot);
    return value === undefined ? undefined : [value];
  }
  if (node.items.length === 0) {
    file.error('config/bad-value', spanOf(node), `${quote(slot.name)} is an empty list`, `Write it as ${quote(example)}.`);
    return undefined;
  }
  const values = node.items.map((item) => read({ file, name: slot.name, node: presence(item), at: spanOf(node) }));
  return values.every((value) => value !== undefined) ? values : undefined;
}
