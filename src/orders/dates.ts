import type { DateOrder } from './order-map.js';
import { plainWord } from './plain-word.js';

/**
 * What a cell says as a date. `ambiguous`: day and month can be taken for each other and nothing says which is which. `serial`: a
 * spreadsheet's count of days, which begins at one of two days four years apart.
 */
export type DateRead =
  | { readonly kind: 'date'; readonly iso: string }
  | { readonly kind: 'ambiguous' }
  | { readonly kind: 'serial' }
  | { readonly kind: 'unreadable' };

const LANGUAGES = ['en', 'de', 'fr', 'es', 'it', 'nl', 'pt', 'pl', 'sv', 'da', 'nb', 'fi', 'cs'];

let months: ReadonlyMap<string, number> | undefined;

/** Numbers of months by their names and short names in the languages above, as CLDR has them. */
function monthNames(): ReadonlyMap<string, number> {
  if (months) return months;
  const names = new Map<string, number>();
  const clashes = new Set<string>();
  for (const language of LANGUAGES) {
    for (const form of ['long', 'short'] as const) {
      for (const day of [undefined, 'numeric'] as const) {
        const format = new Intl.DateTimeFormat(language, { month: form, ...(day === undefined ? {} : { day }), timeZone: 'UTC' });
        for (let month = 0; month < 12; month++) {
          const part = format.formatToParts(Date.UTC(2026, month, 15)).find(({ type }) => type === 'month');
          const name = plainWord(part?.value ?? '');
          if (!/^\p{L}{3,}$/u.test(name)) continue;
          if ((names.get(name) ?? month + 1) !== month + 1) clashes.add(name);
          else names.set(name, month + 1);
        }
      }
    }
  }
  for (const name of clashes) names.delete(name);
  months = names.set('sept', 9);
  return months;
}

const UNREADABLE: DateRead = { kind: 'unreadable' };

function dateOf(year: number, month: number, day: number): DateRead {
  const date = new Date(Date.UTC(year, month - 1, day));
  if (year < 1970 || year > 2199 || date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return UNREADABLE;
  return { kind: 'date', iso: date.toISOString().slice(0, 10) };
}

/** Two digits are a year of this century: orders are not older. */
const yearOf = (digits: string): number => (digits.length === 2 ? 2000 + Number(digits) : Number(digits));

function numeric(first: string, second: string, third: string, order: DateOrder | undefined): DateRead {
  const [a, b] = [Number(first), Number(second)];
  if (first.length === 4) return dateOf(a, b, Number(third));
  const isWhole = third.length === 4;
  if (!isWhole && third.length !== 2) return UNREADABLE;
  switch (order) {
    case 'year-month-day':
      return isWhole ? UNREADABLE : dateOf(yearOf(first), b, Number(third));
    case 'day-month-year':
      return dateOf(yearOf(third), b, a);
    case 'month-day-year':
      return dateOf(yearOf(third), a, b);
    case undefined: {
      if (!isWhole) return { kind: 'ambiguous' };
      const dayFirst = dateOf(Number(third), b, a);
      const monthFirst = dateOf(Number(third), a, b);
      if (dayFirst.kind !== 'date') return monthFirst;
      if (monthFirst.kind !== 'date' || monthFirst.iso === dayFirst.iso) return dayFirst;
      return { kind: 'ambiguous' };
    }
  }
}

/** `28 November 2026`, `Nov 28, 2026`, `28. nov. 2026`. */
function withName(text: string): DateRead {
  const words = plainWord(text)
    .split(' ')
    .filter((word) => !['de', 'del', 'of', 'the', 'at', 'um', 'kl'].includes(word));
  const month = words.map((word) => monthNames().get(word)).filter((each) => each !== undefined);
  const numbers = words.map((word) => word.replace(/^(\d{1,2})(?:st|nd|rd|th|er)$/, '$1')).filter((word) => /^\d+$/.test(word));
  const year = numbers.find((word) => word.length === 4);
  const day = numbers.find((word) => word.length <= 2);
  if (month.length !== 1 || numbers.length !== 2 || year === undefined || day === undefined) return UNREADABLE;
  return dateOf(Number(year), month[0] ?? 0, Number(day));
}

/** Days since the beginning of 1900 or 1904 that fall into 1954 to 2119: what spreadsheets make of a date. */
const isSerial = (text: string): boolean =>
  /^\d{5}(?:[.,]\d+)?$/.test(text) && Number(text.slice(0, 5)) >= 20_000 && Number(text.slice(0, 5)) <= 80_000;

/**
 * The calendar day that a cell names, as ISO 8601 writes it; a time behind it, and its zone, are not looked at: the day counts as it is written.
 * Read are ISO 8601 calendar dates (extended and basic), the same with other marks between, dates in figures, and names of months in
 * thirteen languages.
 */
export function readDate(cell: string, order: DateOrder | undefined): DateRead {
  const whole = cell.trim();
  if (isSerial(whole)) return { kind: 'serial' };
  const day = whole
    .replace(/(?<=\d)T\d{2}(?::?\d{2}){0,2}(?:[.,]\d+)?\s*(?:Z|[+-]\d{2}(?::?\d{2})?)?$/i, '')
    .replace(
      /[,\s]+(?:(?:at|um|à|kl\.?|a las)\s+)?\d{1,2}[:.h]\d{2}(?:[:.]\d{2})?(?:[.,]\d+)?(?:\s*[ap]\.?m\.?)?(?:\s*(?:Z|[A-Z]{2,5}|(?:UTC|GMT)?\s*[+-]\d{2}:?\d{2}))?$/i,
      '',
    );
  const basic = /^(\d{4})(\d{2})(\d{2})$/.exec(day);
  if (basic) return numeric(basic[1] ?? '', basic[2] ?? '', basic[3] ?? '', order);
  const figures = /^(\d{1,4})\s*([-/.\u2010\u2011\u2013]|\s)\s*(\d{1,2})\s*(?:\2|\s)\s*(\d{1,4})\.?$/u.exec(day);
  if (figures) return numeric(figures[1] ?? '', figures[3] ?? '', figures[4] ?? '', order);
  return /\p{L}/u.test(day) ? withName(day.replace(/^\p{L}+,\s*/u, '')) : UNREADABLE;
}
