import { countryCode } from '../orders/countries.js';
import { damageOf, unwrapped } from '../orders/damage.js';
import { readDate } from '../orders/dates.js';
import type { OrderField } from '../orders/order-map.js';
import { wholeNumber } from '../orders/order-values.js';
import { stateOf, yesOrNo } from '../orders/state-words.js';

/** The share of values for which something holds; 0 for none. */
export const share = (values: readonly string[], holds: (value: string) => boolean): number =>
  values.length === 0 ? 0 : values.filter(holds).length / values.length;

const isTracking = (text: string): boolean => /^[A-Z0-9 ]{8,40}$/i.test(text) && (text.match(/\d/g)?.length ?? 0) >= 6;

const LOOKS: Readonly<Partial<Record<OrderField, (value: string) => boolean>>> = {
  order: (text) => text.length <= 40 && !/\n/.test(text) && /[\p{L}\p{N}]/u.test(text) && readDate(text, 'day-month-year').kind !== 'date',
  state: (text) => text.length <= 40 && !/\d{3}/.test(text),
  fulfilment: (text) => text.length <= 60,
  'ordered-on': (text) => readDate(text, 'day-month-year').kind !== 'unreadable' || readDate(text, 'month-day-year').kind !== 'unreadable',
  'ship-by': (text) => readDate(text, 'day-month-year').kind !== 'unreadable' || readDate(text, 'month-day-year').kind !== 'unreadable',
  buyer: (text) => /\p{L}/u.test(text) && text.length <= 80,
  postcode: (text) => /\d/.test(text) && /^[\dA-Z -]{3,12}$/i.test(text),
  country: (text) => countryCode(text) !== undefined,
  quantity: (text) => wholeNumber(text) !== undefined,
  price: (text) => /\d/.test(text) && text.length <= 24,
  gift: (text) => yesOrNo(text) !== undefined,
  tracking: (text) => text.split(/[,;|\n]+/).every((each) => isTracking(each.trim()) || damageOf(each.trim()) !== undefined),
  parcels: (text) => wholeNumber(text) !== undefined,
};

/** How much of a column looks as the field would, from 0 to 1; 1 where nothing can be said, as for a column that is empty or free text. */
export function looksLike(field: OrderField, values: readonly string[]): number {
  const looks = LOOKS[field];
  const filled = values.map(unwrapped).filter((text) => text !== '');
  return !looks || filled.length === 0 ? 1 : share(filled, looks);
}

/** How much of a column could be the number of its order: written everywhere, short, one word, with a digit. */
export function looksLikeNumbers(values: readonly string[]): number {
  const distinct = new Set(values).size / Math.max(1, values.length);
  const isNumber = (text: string): boolean =>
    /^[\p{L}\p{N}#_/-]{2,32}$/u.test(text) && /\d/.test(text) && looksLike('ordered-on', [text]) === 0;
  return share(values.map(unwrapped), isNumber) * distinct;
}

/** The words of a status column that nobody knows, each once; none where there are too many to be states. */
export function unknownStates(values: readonly string[]): readonly string[] {
  const words = [...new Set(values.map((text) => text.trim()).filter((text) => text !== ''))];
  return words.length > 30 ? [] : words.filter((word) => stateOf(word, {}) === undefined);
}
