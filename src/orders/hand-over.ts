import { compareNatural } from './natural.js';
import type { PackedParcel } from './packed-parcel.js';

/** A parcel as it is handed over. Where from and to: postcode and country only, no name and no street. */
export interface HandOverRow {
  /** The parcel's number in the run, from 1. */
  readonly number: number;
  /** Whole; empty where it isn't known. */
  readonly tracking: string;
  /** Order numbers as buyers know them; empty where there is no order. */
  readonly orders: readonly string[];
  /** Empty where it isn't known. Of orders that go together and differ: each, with a slash between. */
  readonly postcode: string;
  /** ISO 3166-1 alpha-2 code, as the postcode. */
  readonly country: string;
}

/** What one carrier takes. */
export interface HandOver {
  /** Empty for parcels whose carrier isn't known. */
  readonly carrier: string;
  /** By number, ascending. */
  readonly parcels: readonly HandOverRow[];
}

/** The parcels by carrier: carriers as a person sorts them, those without one last. Each parcel is there once. */
export function handOvers(parcels: readonly PackedParcel[]): readonly HandOver[] {
  const carriers = new Map<string, HandOverRow[]>();
  for (const parcel of [...parcels].sort((a, b) => a.number - b.number)) {
    const rows = carriers.get(parcel.carrier);
    if (rows) rows.push(rowOf(parcel));
    else carriers.set(parcel.carrier, [rowOf(parcel)]);
  }
  return [...carriers]
    .map(([carrier, rows]) => ({ carrier, parcels: rows }))
    .sort((a, b) => Number(a.carrier === '') - Number(b.carrier === '') || compareNatural(a.carrier, b.carrier));
}

const rowOf = ({ number, tracking, orders }: PackedParcel): HandOverRow => ({
  number,
  tracking,
  orders: distinct(orders.map((order) => order.number)),
  postcode: distinct(orders.map(({ postcode }) => postcode)).join(' / '),
  country: distinct(orders.map(({ country }) => country)).join(' / '),
});

const distinct = (texts: readonly string[]): readonly string[] => [...new Set(texts.filter((text) => text !== ''))];

/** The rows as a table of cells, heads first; for `csvText`. */
export const handOverTable = (handed: readonly HandOver[]): readonly (readonly (string | number)[])[] => [
  ['carrier', 'parcel', 'tracking number', 'orders', 'postcode', 'country'],
  ...handed.flatMap(({ carrier, parcels }) =>
    parcels.map(({ number, tracking, orders, postcode, country }) => [carrier, number, tracking, orders.join(', '), postcode, country]),
  ),
];
