import { fold } from './fold.js';

/** Words for the day that a label is for, folded. Those of the first kind win over the plain words for a date. */
const SHIPPED =
  /\b(?:ship(?:ping|ped|ment)? ?date|date (?:shipped|mailed|of shipment|of posting|d'envoi|d'expedition)|mail(?:ing|ed)?(?: date)?|shipped(?: on)?|posted(?: on)?|posting date|label date|versand(?:datum|tag)|versendet am|aufgabe(?:datum)?|expedie le|fecha (?:de )?envio|data (?:di )?spedizione|data (?:de )?envio|verzenddatum|verzonden op|afsendt|skickad|data nadania)\b|発送日|出荷日|寄件日期|дата отправки|ημερομηνια αποστολης/;
const DATE = /\b(?:date|datum|fecha|data|dato|dátum|tarih|dated)\b|дата|ημερομηνια|日付|日期|날짜/;
/** A date beside these is another day's. */
const OTHER =
  /\b(?:deliver(?:y|ed)?|due|expected|arriv\w*|expir\w*|best before|birth|valid|until|zustell\w*|liefer\w*|livraison|entrega|consegna|order(?:ed)?|bestell\w*|invoice|print(?:ed)?)\b/;

const MONTHS: readonly (readonly string[])[] = [
  'jan januar january janvier janv enero ene gennaio gen januari janeiro styczen stycznia sty',
  'feb februar february fevrier fevr febrero febbraio februari fevereiro fev luty lutego lut',
  'mar march marz mars marzo maart mrt marco marzec marca',
  'apr april avril avr abril abr aprile kwiecien kwietnia kwi',
  'may mai mayo maggio mag mei maio maj maja',
  'jun june juni juin junio giugno giu junho czerwiec czerwca cze',
  'jul july juli juillet juil julio luglio lug julho lipiec lipca lip',
  'aug august aout agosto ago augustus augusti sierpien sierpnia sie',
  'sep sept september septembre septiembre settembre set setembro wrzesien wrzesnia wrz',
  'oct october oktober okt octobre octubre ottobre ott outubro out pazdziernik pazdziernika paz',
  'nov november novembre noviembre novembro listopad listopada lis',
  'dec december dezember dez decembre diciembre dic dicembre dezembro grudzien grudnia gru',
].map((words) => words.split(' '));
const MONTH_OF: ReadonlyMap<string, number> = new Map(MONTHS.flatMap((words, at) => words.map((word) => [word, at + 1] as const)));

interface WrittenDate {
  /** Undefined when the figures leave open which day it is, or there is no such day. */
  readonly date: string | undefined;
  readonly start: number;
  readonly end: number;
}

/**
 * The day that a label is dated, ISO 8601, when it says so clearly: `2026-11-28` (also with / or .), a date with the month's name, or
 * figures whose order can't be mistaken (28/11/2026, 11/28/2026, 11/11/2026); beside a word such as ship date, mailed or date, which
 * stands before it in its line, behind it, or alone in the line above. Two digits of a year only as in 28NOV26. Words for the day of
 * shipping win over a plain `date`. Undefined without one, for two different days, and beside words for another day (delivery, due,
 * ordered). Which words: common practice, no source.
 */
export const labelDate = (lines: readonly string[]): string | undefined => foldedLabelDate(lines.map(fold));

/** The same of lines that are folded already. */
export function foldedLabelDate(lines: readonly string[]): string | undefined {
  const shipped = new Set<string>();
  const dated = new Set<string>();
  let above = '';
  for (const line of lines) {
    let behind = 0;
    for (const { date, start, end } of datesIn(line)) {
      const before = line.slice(behind, start);
      const words = /\p{L}/u.test(before) ? before : `${/\d/.test(above) ? '' : above} ${line.slice(end)}`;
      behind = end;
      if (date === undefined) continue;
      if (SHIPPED.test(words)) shipped.add(date);
      else if (DATE.test(words) && !OTHER.test(words)) dated.add(date);
    }
    above = line;
  }
  const days = shipped.size > 0 ? shipped : dated;
  return days.size === 1 ? [...days][0] : undefined;
}

const WRITTEN =
  /(?<![\d./-])(?:(?<y1>\d{4})([-/.])(?<m1>\d{1,2})\2(?<d1>\d{1,2})|(?<a>\d{1,2})([-/.])(?<b>\d{1,2})\6(?<y2>\d{4})|(?<d3>\d{1,2})(?:\.|st|nd|rd|th)?(?<gap>[ -]?)(?:de )?(?<n3>\p{L}{3,10})\.?,?(?: de)?[ -]?(?<y3>\d{4}|\d{2})|(?<n4>(?<!\p{L})\p{L}{3,10})\.? (?<d4>\d{1,2})(?:st|nd|rd|th)?,? (?<y4>\d{4}))(?![\d])(?![./-]\d)/gu;

/** Years of this century and the last one only: what else has four digits is a postcode or a number. */
function* datesIn(line: string): Generator<WrittenDate> {
  if (!/(?:19|20)\d\d|\d\d\p{L}{3}\d\d/u.test(line)) return;
  for (const match of line.matchAll(WRITTEN)) {
    const date = dateOf(match.groups ?? {});
    if (date === 'none') continue;
    yield { date, start: match.index, end: match.index + match[0].length };
  }
}

/** `none`: what looked like a month's name is another word. */
function dateOf({ y1, m1, d1, a, b, y2, d3, gap, n3, y3, n4, d4, y4 }: Readonly<Record<string, string | undefined>>): string | undefined {
  if (y1 !== undefined) return day(Number(y1), Number(m1), Number(d1));
  if (y2 !== undefined) {
    const [first, second, year] = [Number(a), Number(b), Number(y2)];
    if (first !== second && first <= 12 && second <= 12) return undefined;
    return first > 12 ? day(year, second, first) : day(year, first, second);
  }
  const month = MONTH_OF.get(n3 ?? n4 ?? '');
  if (month === undefined) return 'none';
  if (n4 !== undefined) return day(Number(y4), month, Number(d4));
  if (y3?.length === 2) return gap === '' && d3?.length === 2 ? day(2000 + Number(y3), month, Number(d3)) : undefined;
  return day(Number(y3), month, Number(d3));
}

/** Undefined for a day that no calendar has. */
function day(year: number, month: number, date: number): string | undefined {
  const time = new Date(Date.UTC(year, month - 1, date));
  if (time.getUTCFullYear() !== year || time.getUTCMonth() !== month - 1 || time.getUTCDate() !== date) return undefined;
  return time.toISOString().slice(0, 10);
}

/** Days from one ISO date to another, negative when `to` comes first. Undefined when one is none. */
export function daysBetween(from: string, to: string): number | undefined {
  const [start, end] = [Date.parse(`${from}T00:00:00Z`), Date.parse(`${to}T00:00:00Z`)];
  return Number.isNaN(start) || Number.isNaN(end) ? undefined : Math.round((end - start) / 86_400_000);
}
