import { SORT_KEYS, type SortKey } from '../orders/sort-parcels.js';
import type { ConfigFile } from './config-file.js';
import { readMedia } from './option-value.js';
import type { OrdersSetup, Studio } from './pipeline.js';
import { readMap, type Entry } from './read-map.js';
import { readChoice, readOneOrMore, readText, slotOf, type Slot } from './read-value.js';
import { STUDIO_KEYS } from './keys.js';

const NOBODY: Studio = { name: '', contact: [] };

/**
 * Reads what a pipeline says of the studio, of the order of the stack and of its lists; undefined when any of it is wrong, which is then in the
 * file's diagnostics.
 * @param media what lists are printed on where nothing is said
 */
export function readOrdersSetup(file: ConfigFile, entries: ReadonlyMap<string, Entry>, media: string | undefined): OrdersSetup | undefined {
  const read = <T>(key: string, reader: (entry: Entry) => T | undefined, fallback: T): T | undefined => {
    const entry = entries.get(key);
    return entry ? reader(entry) : fallback;
  };
  const studio = read('studio', (entry) => readStudio(file, entry), NOBODY);
  const stackOrder = read<readonly SortKey[]>('stack-order', (entry) => readStackOrder(slotOf(file, entry)), []);
  const lists = read('lists', (entry) => readMedia(slotOf(file, entry)), media);
  return studio && stackOrder && lists !== undefined ? { studio, stackOrder, lists } : undefined;
}

function readStudio(file: ConfigFile, entry: Entry): Studio | undefined {
  const entries = readMap(file, entry.value, entry.keySpan, { what: '`studio`', keys: STUDIO_KEYS, required: ['name'] });
  if (!entries) return undefined;
  const [nameEntry, contactEntry] = [entries.get('name'), entries.get('contact')];
  const name = nameEntry && readText(slotOf(file, nameEntry), 'is the name that stands on slips', 'name: Our Studio');
  const contact = contactEntry ? readLines(slotOf(file, contactEntry)) : [];
  return name === undefined || contact === undefined ? undefined : { name, contact };
}

const readLines = (slot: Slot): readonly string[] | undefined =>
  readOneOrMore(slot, 'is a list of lines', 'contact: [12 Our Street, hello@example.com]', (line) =>
    readText(line, 'is a line of text', 'contact: hello@example.com'),
  );

const readStackOrder = (slot: Slot): readonly SortKey[] | undefined =>
  readOneOrMore(slot, 'says by what parcels are sorted, one word or several in turn', 'stack-order: [ship-by, sku]', (word) =>
    readChoice(word, SORT_KEYS),
  ) as readonly SortKey[] | undefined;
