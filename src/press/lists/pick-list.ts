import type { Media } from '../../geometry/media.js';
import type { List, ListColumn, ListText } from './list.js';
import { isWide } from './measures.js';

/** One thing to fetch, as it is printed; empty texts are not known. */
export interface PickLine {
  readonly bin: string;
  readonly sku: string;
  readonly description: string;
  readonly variant: string;
  /** Pieces, from 1. */
  readonly quantity: number;
  /** The parcels that want it, as text: `3, 7, 12–15`. */
  readonly parcels: string;
}

/** A column, and what of a line stands in it. */
type Drawn = readonly [column: ListColumn, cell: (line: PickLine) => readonly ListText[]];

const said = (text: string, style: Exclude<ListText, { tick: true }>['style'] = 'plain'): readonly ListText[] =>
  text === '' ? [] : [{ text, style }];

const TICK: Drawn = [{ head: '', align: 'left', width: 0.05 }, () => [{ tick: true }]];
const BIN: Drawn = [{ head: 'Bin', align: 'left', width: 0.13 }, ({ bin }) => said(bin === '' ? '–' : bin, 'strong')];
const PIECES: Drawn = [{ head: 'Pieces', align: 'right', width: 0.16 }, ({ quantity }) => said(String(quantity), 'big')];

/**
 * A list of things to fetch. On wide paper a column each; on labels what a thing is called stands in one. A column that would be empty is left out.
 * @param lines in the order in which they are fetched
 * @param heading `date` as it is to be printed
 */
export function pickList(
  lines: readonly PickLine[],
  { date, parcels }: { readonly date: string; readonly parcels: number },
  media: Media,
): List {
  const bins = lines.some(({ bin }) => bin !== '') ? [BIN] : [];
  const variants = lines.some(({ variant }) => variant !== '');
  const drawn = isWide(media) ? [TICK, ...bins, ...wide(variants), PIECES, PARCELS] : [TICK, ...bins, ARTICLE, PIECES];
  const pieces = lines.reduce((sum, { quantity }) => sum + quantity, 0);
  return {
    title: 'Pick list',
    date,
    intro: [
      lines.length === 0
        ? 'Nothing to fetch.'
        : `${counted(lines.length, 'article')}, ${counted(pieces, 'piece')}, for ${counted(parcels, 'parcel')}.`,
    ],
    columns: drawn.map(([column]) => column),
    sections: [
      {
        heading: '',
        ownPage: false,
        rows: lines.map((line) => ({
          name: line.sku === '' ? line.description : line.sku,
          cells: drawn.map(([, cell]) => cell(line)),
        })),
        closing: undefined,
        sign: [],
      },
    ],
    caution: '',
  };
}

const wide = (variants: boolean): readonly Drawn[] => [
  [{ head: 'SKU', align: 'left', width: 0.18 }, ({ sku }) => said(sku, 'strong')],
  [{ head: 'Description', align: 'left', width: 'rest' }, ({ description }) => said(description)],
  ...(variants ? [[{ head: 'Variant', align: 'left', width: 0.14 }, ({ variant }) => said(variant)] satisfies Drawn] : []),
];

const PARCELS: Drawn = [{ head: 'For parcels', align: 'left', width: 0.24 }, ({ parcels }) => said(parcels)];

const ARTICLE: Drawn = [
  { head: 'Article', align: 'left', width: 'rest' },
  ({ sku, description, variant, parcels }) => [
    ...said(sku, 'strong'),
    ...said(description),
    ...said(variant),
    ...said(parcels === '' ? '' : `for ${parcels}`, 'small'),
  ],
];

export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
