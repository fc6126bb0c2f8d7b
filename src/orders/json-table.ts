import type { Node } from 'jsonc-parser';
import type { Findings, Spot } from './findings.js';
import { jsonObjects, tellNoList, treeOf, type JsonObject } from './json-list.js';
import type { OrderTable, Row } from './row.js';

interface Value {
  readonly text: string;
  /** UTF-16 units from the beginning of the object. */
  readonly offset: number;
}

/** Objects that are looked at for the names of their keys. */
const MOST_LOOKED_AT = 50;

const propertiesOf = (node: Node): readonly { readonly key: string; readonly value: Node | undefined }[] =>
  node.type === 'object'
    ? (node.children ?? []).map((each) => ({ key: String(each.children?.[0]?.value), value: each.children?.[1] }))
    : [];

/** All nodes that a path of keys leads to; lists on the way are gone through. A key may itself hold dots. */
function nodesAt(node: Node | undefined, path: string): readonly Node[] {
  if (!node) return [];
  if (node.type === 'array') return (node.children ?? []).flatMap((each) => nodesAt(each, path));
  if (path === '') return [node];
  const found: Node[] = [];
  for (const { key, value } of propertiesOf(node)) {
    if (key === path) found.push(...nodesAt(value, ''));
    else if (path.startsWith(`${key}.`)) found.push(...nodesAt(value, path.slice(key.length + 1)));
  }
  return found;
}

/** A number as it is written: the digits of a long one would not survive being taken for a number. */
function valueOf(node: Node, source: string): Value | undefined {
  if (node.type === 'object' || node.type === 'null') return undefined;
  const text = node.type === 'string' ? String(node.value) : source.slice(node.offset, node.offset + node.length);
  return { text, offset: node.offset };
}

/** The list that an item's path goes through first, and the rest of the path behind it. */
function listOn(node: Node, path: string): { readonly list: Node; readonly prefix: string } | undefined {
  for (const { key, value } of propertiesOf(node)) {
    if (!value || (key !== path && !path.startsWith(`${key}.`))) continue;
    if (value.type === 'array') return { list: value, prefix: key };
    const deeper = key === path ? undefined : listOn(value, path.slice(key.length + 1));
    if (deeper) return { list: deeper.list, prefix: `${key}.${deeper.prefix}` };
  }
  return undefined;
}

class JsonRow implements Row {
  constructor(
    private readonly object: JsonObject,
    private readonly found: readonly (readonly Value[])[],
    private readonly item: number,
  ) {}

  get start(): Spot {
    return this.object.start;
  }

  values(column: number): readonly string[] {
    return (this.found[column] ?? []).map(({ text }) => text);
  }

  spot(column: number): Spot {
    const { start, text } = this.object;
    const before = text.slice(0, this.found[column]?.[0]?.offset ?? 0).split(/\r\n|\r|\n/);
    const last = before.at(-1)?.length ?? 0;
    return before.length === 1 ? { line: start.line, col: start.col + last } : { line: start.line + before.length - 1, col: last + 1 };
  }

  get whole(): string {
    return `${this.item} ${this.object.text}`;
  }
}

/** How the objects of a file stand for orders and items. */
interface Shape {
  /** An object has a list of items. */
  lists: boolean;
  /** An object without one says something of an item. */
  flat: boolean;
}

/** The rows of one object: one for each of its items, one for an object without. */
function rowsOf(object: JsonObject, names: readonly string[], itemNames: ReadonlySet<string>, shape: Shape): readonly Row[] {
  const root = treeOf(object.text);
  if (!root) return [];
  const valuesAt = (node: Node, path: string): readonly Value[] => nodesAt(node, path).flatMap((each) => valueOf(each, object.text) ?? []);
  const items = [...itemNames].map((name) => listOn(root, name)).find((each) => each !== undefined);
  const isOfItem = (name: string, prefix: string): boolean => itemNames.has(name) && (name === prefix || name.startsWith(`${prefix}.`));
  const ofOrder = names.map((name) => (items && isOfItem(name, items.prefix) ? undefined : valuesAt(root, name)));
  const elements = items?.list.children ?? [];
  if (items) shape.lists = true;
  else shape.flat ||= names.some((name, column) => itemNames.has(name) && (ofOrder[column] ?? []).length > 0);
  if (!items || elements.length === 0)
    return [
      new JsonRow(
        object,
        ofOrder.map((each) => each ?? []),
        0,
      ),
    ];
  return elements.map((element, index) => {
    const found = names.map((name, column) => ofOrder[column] ?? valuesAt(element, name.slice(items.prefix.length + 1)));
    return new JsonRow(object, found, index);
  });
}

/** Paths to all values in an object, in its order. */
function pathsIn(node: Node | undefined, before: string, paths: Set<string>): void {
  if (!node) return;
  if (node.type === 'array') for (const each of node.children ?? []) pathsIn(each, before, paths);
  else if (node.type === 'object') {
    for (const { key, value } of propertiesOf(node)) pathsIn(value, before === '' ? key : `${before}.${key}`, paths);
  } else if (before !== '') paths.add(before);
}

/**
 * A list of orders in JSON. Undefined where there is no list. Columns are paths of keys; a path that goes through a list has several values.
 * @param list path of keys to the list, empty for the file itself
 * @param names all that are looked for
 * @param itemNames those of them that belong to an item: the first list on the way to one holds the items
 */
export function jsonTable(
  text: string,
  list: string,
  names: readonly string[],
  itemNames: ReadonlySet<string>,
  findings: Findings,
): OrderTable | undefined {
  const { objects, lists, isThere } = jsonObjects(text, list, findings);
  if (!isThere) {
    tellNoList(list, lists, findings);
    return undefined;
  }
  const shape: Shape = { lists: false, flat: false };
  const rows = objects.flatMap((object) => rowsOf(object, names, itemNames, shape));
  const paths = new Set<string>();
  for (const object of objects.slice(0, MOST_LOOKED_AT)) pathsIn(treeOf(object.text), '', paths);
  return {
    column: (name) => {
      const index = names.indexOf(name);
      return index >= 0 && (rows.length === 0 || paths.has(name) || rows.some((row) => row.values(index).length > 0)) ? index : undefined;
    },
    names: [...paths],
    header: objects[0]?.start ?? { line: 1, col: 1 },
    rows,
    // One object for each item is a table like any other: those of one order stand below each other.
    objects: shape.lists || !shape.flat,
    badCells: new Set(),
  };
}
