/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import { isMap } from 'yaml';
import { nearest } from '../diagnostics/nearest.js';
import { ORDER_STATES, type OrderState } from '../orders/order.js';
import {
  DATE_ORDERS,
  ENCODINGS,
  ORDER_FIELDS,
  orderMap,
  WITHOUT_ORDER,
  type DateOrder,
  type Encoding,
  type OrderField,
  type OrderMap,
  type WithoutOrder,
} from '../orders/order-map.js';
import { plainWord } from '../orders/plain-word.js';
import type { ConfigFile } from './config-file.js';
import { isKey, ORDERS_KEYS, RECIPE_KEYS } from './keys.js';
import { spanOf } from './parse-yaml.js';
import { presence, readMap, wrongKind, type Entry } from './read-map.js';
import { readChoice, readOneOrMore, readText, scalarOf, slotOf, wordOf, wrongValue, type Slot } from './read-value.js';
import { listWords, quote } from './words.js';

const COLUMNS_REMEDY = 'Name the column of each field, the order number at least: `columns: { order: Order number }`.';

/** Reads `orders:` of a recipe; undefined when anything is wrong with it, which is then in `file.diagnostics`. */
export function readOrderMap(file: ConfigFile, { value, keySpan }: Entry): OrderMap | undefined {
  if (!value) {
    file.error('config/missing-value', keySpan, '`orders` has nothing behind its colon', COLUMNS_REMEDY);
    return undefined;
  }
  const before = file.diagnostics.length;
  const entries = readMap(file, value, keySpan, {
    what: '`orders` of a recipe',
    keys: ORDERS_KEYS,
    required: ['columns'],
    elsewhere: ordersKeyElsewhere,
  });
  if (!entries) return undefined;
  const read = <T>(key: (typeof ORDERS_KEYS)[number], reader: (slot: Slot) => T | undefined): T | undefined => {
    const entry = entries.get(key);
    return entry && reader(slotOf(file, entry));
  };
  const columnsEntry = entries.get('columns');
  const columns = columnsEntry && readColumns(file, columnsEntry);
  const statesEntry = entries.get('states');
  const map = orderMap(columns ?? {}, {
    dateOrder: read('date-order', (slot) => readChoice(slot, DATE_ORDERS)) as DateOrder | undefined,
    encoding: read('encoding', readEncoding),
    delimiter: read('delimiter', readDelimiter),
    list: read('list', (slot) => readText(slot, 'is the path of keys to the list of orders', 'list: data.orders')) ?? '',
    states: statesEntry ? readStates(file, statesEntry) : {},
    labelWithoutOrder: (read('label-without-order', (slot) => readChoice(slot, WITHOUT_ORDER)) as WithoutOrder | undefined) ?? 'hold',
    maxAgeDays: read('max-age', readDays),
    fileName: read('file-name', readFileName),
  });
  return file.diagnostics.length > before ? undefined : map;
}

function ordersKeyElsewhere(key: string): string | undefined {
  if (isKey(ORDER_FIELDS, key)) return 'It is a field: write it one level down, below `columns:`.';
  if (isKey(RECIPE_KEYS, key)) return 'It belongs to the recipe itself: write it one level up, with no spaces before it.';
  return undefined;
}

function readColumns(file: ConfigFile, { value, keySpan }: Entry): OrderMap['columns'] | undefined {
  if (!value) {
    file.error('config/missing-value', keySpan, '`columns` has nothing behind its colon', COLUMNS_REMEDY);
    return undefined;
  }
  const entries = readMap(file, value, keySpan, {
    what: '`columns` of `orders`',
    keys: ORDER_FIELDS,
    required: ['order'],
    elsewhere: (key) =>
      isKey(ORDERS_KEYS, key) && nearest(key, ORDER_FIELDS) !== key
        ? 'It belongs to `orders` itself: write it one level up, beside `columns:`.'
        : undefined,
  });
  const columns: Partial<Record<OrderField, readonly string[]>> = {};
  for (const field of ORDER_FIELDS) {
    const entry = entries?.get(field);
    const wants = 'is the name of a column, or a list of them';
    const names =
      entry &&
      readOneOrMore(slotOf(file, entry), wants, `${field}: Name of column`, (item) => readText(item, wants, `${field}: Name of column`));
    if (names) columns[field] = names;
  }
  return columns;
}

function readFileName(slot: Slot): string | undefined {
  const wants = 'says how label files are named, with `{order}` for the order number';
  const pattern = readText(slot, wants, 'file-name: "order-{order}*"');
  return pattern === undefined || pattern.includes('{order}')
    ? pattern
    : wrongValue(slot, wants, 'Write `{order}` where the number stands, `*` for anything else: `file-name: "order-{order}*"`.');
}

/** What people call an encoding. */
const ENCODING_NAMES: Readonly<Record<string, Encoding>> = {
  utf8: 'utf-8',
  'utf-16': 'utf-16le',
  utf16: 'utf-16le',
  ansi: 'windows-1252',
  cp1252: 'windows-1252',
  latin1: 'windows-1252',
  'iso-8859-1': 'windows-1252',
};

function readEncoding(slot: Slot): Encoding | undefined {
  const word = wordOf(slot)?.toLowerCase() ?? '';
  const meant = Object.hasOwn(ENCODING_NAMES, word) ? ENCODING_NAMES[word] : undefined;
  return meant
    ? wrongValue(slot, `is ${listWords(ENCODINGS)}`, `Write ${quote(meant)}.`)
    : (readChoice(slot, ENCODINGS) as Encoding | undefined);
}

/** Any sign that no word is made of. */
function readDelimiter(slot: Slot): string | undefined {
  const value = scalarOf(slot)?.value;
  if (value === 'tab') return '\t';
  if (typeof value === 'string' && /^[^\p{L}\p{N}\p{C}\s"'.]$|^\t$/u.test(value)) return value;
  return wrongValue(
    slot,
    'is the sign between two cells',
    "Write `','`, `';'`, `'|'` or `tab`, or take the line out: it is found by itself.",
  );
}

const MOST_DAYS = 3660;

function readDays(slot: Slot): number | undefined {
  const word = wordOf(slot);
  const wants = `is a time in days or weeks, up to ${MOST_DAYS}d`;
  const match = /^(\d{1,4})([dw])$/.exec(word ?? '');
  const days = match ? Number(match[1]) * (match[2] === 'w' ? 7 : 1) : 0;
  if (days > 0 && days <= MOST_DAYS) return days;
  const number = /^(\d{1,4})\s*(?:d|days?)?$/i.exec(word ?? '')?.[1];
  const remedy =
    number !== undefined && Number(number) > 0 && Number(number) <= MOST_DAYS
      ? `Write ${quote(`${+number}d`)}.`
      : 'Write it as `14d` or `2w`.';
  return wrongValue(slot, wants, remedy, number === undefined ? 'config/bad-value' : 'config/bad-unit');
}

/** Words of the status column with what they mean. The keys are the seller's own, so any word will do. */
function readStates(file: ConfigFile, { value, keySpan }: Entry): Readonly<Record<string, OrderState>> {
  if (!value || !isMap(value)) {
    wrongKind(file, value, keySpan, '`states` is a map of words and what they mean', 'Write `states: { In the post: shipped }`.');
    return {};
  }
  const keys = value.items.flatMap(({ key }) => wordOf({ file, name: 'states', node: presence(key), at: spanOf(value) }) ?? []);
  const entries = readMap(file, value, keySpan, { what: '`states` of `orders`', keys });
  const states = new Map<string, OrderState>();
  for (const entry of entries?.values() ?? []) {
    const state = readChoice(slotOf(file, entry), ORDER_STATES) as OrderState | undefined;
    const word = plainWord(entry.key);
    if (states.has(word)) {
      file.error(
        'config/duplicate-key',
        entry.keySpan,
        `${quote(entry.key)} stands twice in \`states\`: case and signs do not count`,
        'Keep one of them.',
      );
    } else if (state) states.set(word, state);
  }
  return Object.fromEntries(states);
}
