import { ITEM_FIELDS, JOINED_FIELDS, ORDER_FIELDS, type OrderField } from '../orders/order-map.js';
import { columnName, NAMES_OF_FIELDS, type ColumnName } from './header-words.js';
import { looksLike, looksLikeNumbers } from './value-looks.js';

/** A column of the file: its name as written, and what it holds, row by row. */
export interface SampleColumn {
  readonly name: string;
  readonly values: readonly string[];
}

export interface Chosen {
  readonly columns: readonly string[];
  /** Whether the name says so plainly, and the values look so. */
  readonly sure: boolean;
  /** Further columns that could be meant. */
  readonly others: readonly string[];
}

/** Fields that a bill has, too. */
const OF_SOMEBODY: readonly OrderField[] = ['buyer', 'address', 'postcode', 'country'];

/** A field whose column looks otherwise in more than this share of its rows is another one. */
const LOOKS_SO = 0.7;

interface Fit {
  readonly field: OrderField;
  readonly column: SampleColumn;
  readonly score: number;
  readonly exact: boolean;
}

/** How well a column's name fits a field: 0 not at all. A name of the list counts most, an early one more than a late one; less where it only stands among others. */
function nameScore({ plain, core, side }: ColumnName, field: OrderField): { readonly score: number; readonly exact: boolean } {
  const names = NAMES_OF_FIELDS.get(field) ?? [];
  const owned = OF_SOMEBODY.includes(field);
  if (side === 'bill' && owned) return { score: 0, exact: false };
  const rank = (word: string): number => names.indexOf(word);
  const at = rank(plain) >= 0 ? rank(plain) : owned ? rank(core) : -1;
  // The last words of a path of keys tell what it is: `shipping address city`.
  const tail =
    at >= 0
      ? -1
      : names.findIndex((name) => (name.includes(' ') ? plain.endsWith(` ${name}`) : core.endsWith(` ${name}`) && name.length >= 3));
  const bonus = owned && side === 'parcel' ? 20 : 0;
  if (at >= 0) return { score: 100 - Math.min(at, 60) + bonus, exact: true };
  return tail >= 0 ? { score: 40 - Math.min(tail, 30) * 0.5 + bonus, exact: bonus > 0 } : { score: 0, exact: false };
}

/** Keys of a JSON file below which items stand. */
const OF_ITEMS = /\b(?:items?|lines?|products?|positions?|positionen|artikel|articles?|lignes|lineas|righe|regels)\b/;

/** How well a path of keys fits: by its last key, and by what stands before it. */
function pathScore(path: string, field: OrderField): { readonly score: number; readonly exact: boolean } {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const before = columnName(keys.join(' '));
  const ofItems = OF_ITEMS.test(before.plain);
  if (ofItems !== ITEM_FIELDS.includes(field) && (ofItems || keys.length === 0)) return { score: 0, exact: false };
  const own = columnName(last);
  const named = ofItems && own.plain === 'name' ? columnName('item name') : own;
  const { score, exact } = nameScore({ ...named, side: before.side ?? own.side }, field);
  // Of two keys with one name the outer one is more likely the order's own.
  return { score: score === 0 ? 0 : Math.max(1, score - (ofItems ? 0 : keys.length)), exact };
}

function fitsOf(columns: readonly SampleColumn[], paths: boolean): readonly Fit[] {
  return columns.flatMap((column) => {
    const name = columnName(column.name);
    return ORDER_FIELDS.flatMap((field): Fit[] => {
      const { score, exact } = paths ? pathScore(column.name, field) : nameScore(name, field);
      const looks = score === 0 ? 0 : looksLike(field, column.values);
      return looks >= LOOKS_SO ? [{ field, column, score: score * looks, exact: exact && looks > 0.95 }] : [];
    });
  });
}

const sideOf = (name: string): ColumnName['side'] => columnName(name.replaceAll('.', ' ')).side;

const isFirstName = (name: string): boolean =>
  /\b(?:first|given|vorname|prenom|nombre de pila|nome di battesimo|voornaam)\b/.test(columnName(name).plain);
const isLastName = (name: string): boolean =>
  /\b(?:last|family|surname|nachname|familienname|apellido|apellidos|cognome|achternaam)\b|\bnom de famille\b/.test(columnName(name).plain);

/** First and last name in columns of their own, of the parcel rather than of the bill. */
function nameInParts(columns: readonly SampleColumn[]): readonly string[] | undefined {
  const named = columns.filter(({ name }) => sideOf(name) !== 'bill').map(({ name }) => name);
  const prefer = (names: readonly string[]): string | undefined => names.find((name) => sideOf(name) === 'parcel') ?? names[0];
  const [first, last] = [prefer(named.filter(isFirstName)), prefer(named.filter(isLastName))];
  return first === undefined || last === undefined ? undefined : [first, last];
}

/**
 * The columns of each field, as far as names and values tell. A column is taken for one field only, the one that it fits best.
 * @param paths whether names are paths of keys, as in JSON
 */
export function chooseColumns(columns: readonly SampleColumn[], paths = false): ReadonlyMap<OrderField, Chosen> {
  const chosen = new Map<OrderField, Chosen>();
  const taken = new Set<string>();
  const parts = nameInParts(columns);
  if (parts) {
    chosen.set('buyer', { columns: parts, sure: true, others: [] });
    for (const part of parts) taken.add(part);
  }
  const best = new Map<string, Fit>();
  for (const fit of fitsOf(columns, paths)) if (fit.score > (best.get(fit.column.name)?.score ?? 0)) best.set(fit.column.name, fit);
  for (const field of ORDER_FIELDS) {
    if (chosen.has(field)) continue;
    const fits = [...best.values()].filter((fit) => fit.field === field && !taken.has(fit.column.name)).sort((a, b) => b.score - a.score);
    const one = choiceOf(field, fits, columns);
    if (!one) continue;
    chosen.set(field, one);
    for (const name of one.columns) taken.add(name);
  }
  if (!chosen.has('order')) {
    const free = columns.filter(({ name }) => !taken.has(name));
    const [first] = free.map((column) => ({ column, score: looksLikeNumbers(column.values) })).sort((a, b) => b.score - a.score);
    if (first && first.score >= 0.3) chosen.set('order', { columns: [first.column.name], sure: false, others: [] });
  }
  return new Map(ORDER_FIELDS.flatMap((field) => (chosen.has(field) ? [[field, chosen.get(field) as Chosen] as const] : [])));
}

function choiceOf(field: OrderField, fits: readonly Fit[], columns: readonly SampleColumn[]): Chosen | undefined {
  const [first, ...rest] = fits;
  if (!first) return undefined;
  const names = (list: readonly Fit[]): string[] => list.map(({ column }) => column.name);
  if (!JOINED_FIELDS.includes(field) || field === 'buyer' || field === 'notes') {
    const near = rest.filter(({ exact, score }) => exact || score >= first.score * 0.8);
    return { columns: [first.column.name], sure: first.exact, others: names(near) };
  }
  // An address is that of the parcel where one says so, in the order of the file.
  const ofParcel = fits.filter(({ column }) => sideOf(column.name) === 'parcel');
  const group = field === 'address' && ofParcel.length > 0 ? ofParcel : fits;
  const position = ({ column }: Fit): number => columns.indexOf(column);
  const ordered = [...group].sort((a, b) => position(a) - position(b));
  return { columns: names(ordered), sure: ordered.every(({ exact }) => exact), others: [] };
}
