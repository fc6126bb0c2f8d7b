import type { Media } from '../../geometry/media.js';
import { apart } from '../type/paragraph.js';
import type { List, ListColumn, ListText } from './list.js';
import { isWide } from './measures.js';
import { counted } from './pick-list.js';

/** A parcel as it is handed over, as it is printed; empty texts are not known. */
export interface HandOverLine {
  /** The parcel's number in the run, from 1. */
  readonly number: number;
  readonly tracking: string;
  readonly orders: readonly string[];
  readonly postcode: string;
  readonly country: string;
}

/** What one carrier takes. */
export interface CarrierLines {
  /** Empty where it isn't known. */
  readonly carrier: string;
  readonly parcels: readonly HandOverLine[];
}

const CAUTION = 'A list for the bench: it shows what was packed. It is no manifest of a carrier and takes the place of none.';
const UNKNOWN = '–';

type Drawn = readonly [column: ListColumn, cell: (line: HandOverLine) => readonly ListText[]];

const plain = (text: string): readonly ListText[] => [{ text: text === '' ? UNKNOWN : text, style: 'plain' }];

const TICK: Drawn = [{ head: '', align: 'left', width: 0.05 }, () => [{ tick: true }]];
const NUMBER: Drawn = [{ head: 'Parcel', align: 'right', width: 0.14 }, ({ number }) => [{ text: String(number), style: 'strong' }]];
const TRACKING: Drawn = [{ head: 'Tracking number', align: 'left', width: 'rest' }, ({ tracking }) => plain(tracking)];

const WIDE: readonly Drawn[] = [
  TICK,
  NUMBER,
  TRACKING,
  [{ head: 'Order', align: 'left', width: 'rest' }, ({ orders }) => plain(orders.join(', '))],
  [{ head: 'Postcode', align: 'left', width: 0.16 }, ({ postcode }) => plain(postcode)],
  [{ head: 'Country', align: 'left', width: 0.12 }, ({ country }) => plain(country)],
];

const NARROW: readonly Drawn[] = [
  TICK,
  NUMBER,
  [
    { head: 'Tracking number, order', align: 'left', width: 'rest' },
    ({ tracking, orders }) => [...plain(tracking), ...orders.map((text): ListText => ({ text, style: 'small' }))],
  ],
  [
    { head: 'To', align: 'left', width: 0.3 },
    ({ postcode, country }) => plain([country, postcode].filter((text) => text !== '').join(' ')),
  ],
];

/**
 * A list of what each carrier takes, with a place to sign. Each carrier begins on a page of its own, so that its driver sees and signs its own
 * parcels only.
 * @param date as it is to be printed
 */
export function handOverList(carriers: readonly CarrierLines[], { date }: { readonly date: string }, media: Media): List {
  const drawn = isWide(media) ? WIDE : NARROW;
  const all = carriers.reduce((sum, { parcels }) => sum + parcels.length, 0);
  const each = carriers.map(({ carrier, parcels }) => `${apart(nameOf(carrier))} ${parcels.length}`).join(', ');
  return {
    title: 'Hand-over list',
    date,
    intro: [all === 0 ? 'No parcels to hand over.' : `${counted(all, 'parcel')} in all: ${each}.`],
    columns: drawn.map(([column]) => column),
    sections: carriers.map(({ carrier, parcels }) => ({
      heading: nameOf(carrier),
      ownPage: true,
      rows: parcels.map((line) => ({ name: `Parcel ${line.number}`, cells: drawn.map(([, cell]) => cell(line)) })),
      closing: { of: nameOf(carrier), sum: counted(parcels.length, 'parcel') },
      sign: ['Taken over by (name)', 'Signature', 'Date and time'],
    })),
    caution: CAUTION,
  };
}

const nameOf = (carrier: string): string => (carrier === '' ? 'Carrier not known' : carrier);
