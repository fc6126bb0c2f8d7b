import { isAlias, isMap, isNode, isScalar, isSeq, type Node } from 'yaml';
import { nearest } from '../diagnostics/nearest.js';
import type { ConfigFile, Span } from './config-file.js';
import { spanOf } from './parse-yaml.js';
import { listWords, quote, useOneOf } from './words.js';

/** One `key: value` of a map. `value` is undefined when nothing stands behind the colon. */
export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Node | undefined;
}

export interface MapShape {
  /** For messages: "a channel". */
  readonly what: string;
  readonly keys: readonly string[];
  readonly required?: readonly string[];
  /** Where else a key that is not allowed here belongs: a remedy, or undefined when it is known nowhere. */
  elsewhere?(key: string): string | undefined;
}

/** What a node is, for messages. */
export function kindOf(node: Node | undefined): string {
  if (node === undefined) return 'nothing';
  if (isMap(node)) return 'a map of keys and values';
  if (isSeq(node)) return 'a list';
  if (!isScalar(node)) return 'something else';
  if (typeof node.value === 'string') return `the text ${quote(node.value)}`;
  return node.value === null || node.value === undefined ? 'nothing' : quote(node.source ?? '');
}

/** Undefined for what isn't there: YAML knows several ways to write nothing. */
export const presence = (node: unknown): Node | undefined => (isNode(node) && !(isScalar(node) && node.value === null) ? node : undefined);

/** A value of the wrong kind. An alias is reported already. */
export function wrongKind(file: ConfigFile, node: Node | undefined, at: Span, what: string, remedy: string): void {
  if (node && isAlias(node)) return;
  file.error('config/wrong-type', node ? spanOf(node) : at, node ? `${what}, not ${kindOf(node)}` : `${what}; nothing stands here`, remedy);
}

/**
 * The entries of a map by key, in order; only allowed keys. Undefined when the node is no map. A span stands in where the node
 * is missing.
 */
export function readMap(file: ConfigFile, node: Node | undefined, at: Span, shape: MapShape): ReadonlyMap<string, Entry> | undefined {
  if (!node || !isMap(node)) {
    wrongKind(
      file,
      node,
      at,
      `${shape.what} is a map of keys and values`,
      `Write its keys one below the other: ${listWords(shape.keys, 'and')}.`,
    );
    return undefined;
  }
  const entries = new Map<string, Entry>();
  const seen = new Map<string, Span>();
  for (const { key: keyNode, value } of node.items) {
    const entry = readEntry(file, keyNode, value);
    if (!entry) continue;
    const first = seen.get(entry.key);
    if (first) {
      const message = `${quote(entry.key)} stands twice in ${shape.what}; the first is in line ${file.lineOf(first.start)}`;
      file.error('config/duplicate-key', entry.keySpan, message, 'Keep one of them.');
      continue;
    }
    seen.set(entry.key, entry.keySpan);
    if (shape.keys.includes(entry.key)) entries.set(entry.key, entry);
    else unknownKey(file, entry, shape);
  }
  const missing = (shape.required ?? []).filter(
    (key) => !seen.has(key) && ![...seen.keys()].some((other) => nearest(other, shape.keys) === key),
  );
  if (missing.length > 0) {
    const start = spanOf(node).start;
    file.error(
      'config/missing-key',
      { start, end: start + 1 },
      `${shape.what} needs ${listWords(missing, 'and')}`,
      `Add ${missing.map((key) => quote(`${key}:`)).join(' and ')}.`,
    );
  }
  return entries;
}

function readEntry(file: ConfigFile, keyNode: unknown, value: unknown): Entry | undefined {
  if (isScalar(keyNode)) {
    const key = typeof keyNode.value === 'string' ? keyNode.value : (keyNode.source ?? '');
    if (key === '<<') return undefined;
    const valueNode = presence(value);
    return { key, keySpan: spanOf(keyNode), value: valueNode };
  }
  if (isNode(keyNode) && !isAlias(keyNode)) {
    file.error('config/wrong-type', spanOf(keyNode), 'a key is one word, not a list or map', 'Write `key: value`.');
  }
  return undefined;
}

function unknownKey(file: ConfigFile, { key, keySpan }: Entry, shape: MapShape): void {
  const elsewhere = shape.elsewhere?.(key);
  if (elsewhere !== undefined) {
    file.error('config/misplaced-key', keySpan, `${quote(key)} does not belong here, in ${shape.what}`, elsewhere);
    return;
  }
  file.error(
    'config/unknown-key',
    keySpan,
    `${shape.what} has no ${quote(key)}`,
    shape.keys.length === 0 ? 'Take it out.' : useOneOf(key, shape.keys),
  );
}
