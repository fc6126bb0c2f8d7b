import { countryCode } from './countries.js';
import { readDate } from './dates.js';
import type { Finding, Findings } from './findings.js';
import type { OrderField, OrderMap } from './order-map.js';
import { plainWord, shown } from './plain-word.js';
import { linesOf, oneLine, type RowFields } from './row-fields.js';
import { stateOf, yesOrNo } from './state-words.js';

/** Fields of an order that have one value, in the order in which they are read: a postcode is looked at with its country. */
export const SINGLE_FIELDS = [
  'state',
  'fulfilment',
  'ordered-on',
  'ship-by',
  'buyer',
  'address',
  'postcode',
  'country',
  'gift',
  'gift-message',
  'parcels',
] as const satisfies readonly OrderField[];
export type SingleField = (typeof SINGLE_FIELDS)[number];

/** An order of more parcels, or an item of more pieces, than this is a number in the wrong column. */
export const MOST = 99_999;

/** A count as it may be written: `2`, `2.0`, `2,00`. Undefined for anything else. */
export function wholeNumber(text: string): number | undefined {
  const digits = /^(\d{1,6})(?:[.,]0{1,2})?$/.exec(text)?.[1];
  const value = digits === undefined ? undefined : Number(digits);
  return value === undefined || value > MOST ? undefined : value;
}

/** The value of a field of one row as it is compared and kept: an address line by line, a date in ISO 8601, yes as `yes`. Empty for unknown. */
export function singleValue(field: SingleField, fields: RowFields, map: OrderMap, findings: Findings): string {
  const tell = (finding: Finding, about?: string): '' => {
    if (about === undefined) findings.add(finding, fields.spot(field), field);
    else findings.once(finding, fields.spot(field), `${field} ${about}`);
    return '';
  };
  const all = fields.all(field);
  const [text = ''] = all;
  if (text === '') return '';
  switch (field) {
    case 'state':
    case 'fulfilment': {
      const state = stateOf(text, map.states);
      if (state) return state;
      const message = `the word ${shown(text)} says nothing that is known about the state of an order; it counts as to be shipped`;
      const remedy = `Say what it means, below \`orders: states:\` in the recipe: ${shown(`'${text.replaceAll("'", "''")}': shipped`)}.`;
      tell({ code: 'orders/unknown-state', severity: 'warning', message, remedy }, plainWord(text));
      return 'to-ship';
    }
    case 'ordered-on':
    case 'ship-by':
      return dateValue(text, field, map, tell);
    case 'buyer':
      return oneLine(all.join(' '));
    case 'address':
      return all.flatMap(linesOf).join('\n');
    case 'postcode':
      return oneLine(text);
    case 'gift-message':
      return linesOf(text).join('\n');
    case 'country': {
      const code = countryCode(text);
      if (code !== undefined) return code;
      const message = `${shown(text)} is no country that is known by this name or code`;
      const remedy = 'Write the code of ISO 3166-1 (two letters) or the name; check that the column is the one of the country.';
      return tell({ code: 'orders/unknown-country', severity: 'warning', message, remedy }, plainWord(text));
    }
    case 'gift': {
      const answer = yesOrNo(text);
      if (answer !== undefined) return answer ? 'yes' : 'no';
      const message = `a word in \`gift\` says neither yes nor no; the order counts as a gift`;
      const remedy = 'Name a column that says yes or no; a text for the buyer belongs to `gift-message`.';
      tell({ code: 'orders/unknown-word', severity: 'warning', message, remedy });
      return 'yes';
    }
    case 'parcels': {
      const count = wholeNumber(text);
      if (count !== undefined && count > 0) return String(count);
      const message = `${shown(text)} is no number of parcels; the order counts as one parcel`;
      return tell({ code: 'orders/bad-number', severity: 'warning', message, remedy: 'Write a whole number from 1.' });
    }
  }
}

function dateValue(text: string, field: OrderField, map: OrderMap, tell: (finding: Finding) => ''): string {
  const date = readDate(text, map.dateOrder);
  const stays = `\`${field}\` stays unknown`;
  switch (date.kind) {
    case 'date':
      return date.iso;
    case 'ambiguous':
      return tell({
        code: 'orders/ambiguous-date',
        severity: 'warning',
        message: `${shown(text)} can be read in two ways, with the day or with the month first; ${stays}`,
        remedy: 'State it below `orders:` in the recipe: `date-order: day-month-year` or `date-order: month-day-year`.',
      });
    case 'serial':
      return tell({
        code: 'orders/damaged',
        severity: 'warning',
        message: `a spreadsheet has turned the date into its count of days, ${shown(text)}; ${stays}`,
        remedy: 'Export the orders again and use that file without opening and saving it in a spreadsheet.',
      });
    case 'unreadable': {
      const order = map.dateOrder === undefined ? '' : ` with \`date-order: ${map.dateOrder}\``;
      return tell({
        code: 'orders/bad-date',
        severity: 'warning',
        message: `${shown(text)} is no date that can be read${order}; ${stays}`,
        remedy: 'Check that the column holds dates, such as 2026-11-28 or 28 November 2026, and that `date-order` is right.',
      });
    }
  }
}
