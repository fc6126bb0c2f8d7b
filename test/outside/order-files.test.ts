import { existsSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countryCode } from '../../src/orders/countries.js';
import { readDate } from '../../src/orders/dates.js';
import { orderMap } from '../../src/orders/order-map.js';
import { readOrders } from '../../src/orders/read-orders.js';
import { outsideCheck, runTool } from './tools.js';

/** Python's csv module and codecs: a writer that has nothing in common with the reader. Each table becomes a file of bytes, in base64. */
const WRITE = `
import base64, csv, io, json, sys
for table in json.load(sys.stdin):
    out = io.StringIO(newline='')
    quoting = csv.QUOTE_ALL if table['all'] else csv.QUOTE_MINIMAL
    writer = csv.writer(out, delimiter=table['delimiter'], lineterminator=table['ending'], quoting=quoting)
    writer.writerows(table['rows'])
    print(base64.b64encode(out.getvalue().encode(table['codec'])).decode())
`;

interface Table {
  readonly rows: readonly (readonly string[])[];
  readonly delimiter: string;
  readonly ending: string;
  readonly codec: string;
  readonly all: boolean;
}

const HEADER = ['Order', 'Notes', 'Card', 'Item no.'];
const MAP = orderMap({ order: ['Order'], notes: ['Notes'], 'gift-message': ['Card'], sku: ['Item no.'] });

const letters = fc.constantFrom('a', 'Z', '7', 'é', 'ß', ' ', ',', ';', '|', '\t', '"', '\n', '.');
/** A text as a field keeps it: blanks run together, none at the ends of its lines, no empty line. */
const kept = (text: string): string =>
  text
    .split('\n')
    .map((line) => line.replaceAll(/\s+/g, ' ').trim())
    .filter((line) => line !== '')
    .join('\n');
const text = fc.string({ unit: letters, maxLength: 24 }).map(kept);

const tables: fc.Arbitrary<Table> = fc.record({
  rows: fc
    .array(
      fc.tuple(
        text,
        text,
        text.map((each) => each.replaceAll('\n', ' ')),
      ),
      { minLength: 3, maxLength: 12 },
    )
    .map((rows) => [HEADER, ...rows.map((row, index) => [`A-${index}`, ...row])]),
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  ending: fc.constantFrom('\r\n', '\n'),
  codec: fc.constantFrom('utf-8', 'utf-8-sig', 'utf-16', 'utf-16-le', 'utf-16-be', 'cp1252'),
  all: fc.boolean(),
});

describe('order files by another writer', () => {
  outsideCheck("any table that Python's csv module writes, in any of its codecs, comes back", ['python3'], () => {
    const written = fc.sample(tables, 400);
    const files = runTool('python3', ['-c', WRITE], Buffer.from(JSON.stringify(written)))
      .toString()
      .trim()
      .split('\n');
    expect(files).toHaveLength(written.length);
    for (const [index, file] of files.entries()) {
      const { rows, ...how } = written[index] as Table;
      const { orders, diagnostics } = readOrders(Buffer.from(file, 'base64'), 'orders.csv', MAP, 0);
      expect(diagnostics, JSON.stringify({ how, rows })).toEqual([]);
      expect(
        orders.map(({ number, notes, giftMessage, items }) => [number, notes, giftMessage, items[0]?.sku ?? '']),
        JSON.stringify({ how, rows }),
      ).toEqual(rows.slice(1));
    }
  });

  outsideCheck('what Python writes of dates is read as the same day', ['python3'], () => {
    const script = `
import datetime, random
random.seed(7)
for n in range(300):
    day = datetime.date(2000, 1, 1) + datetime.timedelta(days=random.randrange(36000))
    print('|'.join([day.isoformat(), day.strftime('%Y%m%d'), day.strftime('%d %B %Y'), day.strftime('%b %d, %Y'), day.strftime('%A, %d %b %Y'), day.strftime('%d.%m.%Y'), day.strftime('%m/%d/%Y')]))
`;
    for (const line of runTool('python3', ['-c', script]).toString().trim().split('\n')) {
      const [iso = '', ...others] = line.split('|');
      const [basic = '', long = '', short = '', weekday = '', dayFirst = '', monthFirst = ''] = others;
      for (const written of [iso, basic, long, short, weekday]) expect(readDate(written, undefined)).toEqual({ kind: 'date', iso });
      expect(readDate(dayFirst, 'day-month-year')).toEqual({ kind: 'date', iso });
      expect(readDate(monthFirst, 'month-day-year')).toEqual({ kind: 'date', iso });
    }
  });
});

/** The table of ISO 3166-1 alpha-2 codes of the tz database (public domain), which Debian's tzdata installs. */
const TZ_TABLE = '/usr/share/zoneinfo/iso3166.tab';

describe('ISO 3166-1', () => {
  it.skipIf(!existsSync(TZ_TABLE))('every code of the tz database is known, by itself, and no other pair of letters is', () => {
    const rows = readFileSync(TZ_TABLE, 'utf8')
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('#'))
      .map((line) => line.split('\t')[0] ?? '');
    expect(rows.length).toBeGreaterThanOrEqual(249);
    const pairs = Array.from({ length: 26 * 26 }, (_, index) => String.fromCharCode(65 + Math.floor(index / 26), 65 + (index % 26)));
    // UK is no code of the standard, but what people write for GB.
    expect(pairs.filter((pair) => countryCode(pair) !== undefined && pair !== 'UK')).toEqual([...rows].sort());
    for (const code of rows) expect(countryCode(code.toLowerCase())).toBe(code);
  });

  it('every English name of CLDR leads to its code', () => {
    const names = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });
    for (const code of ['AD', 'BE', 'CD', 'CG', 'CI', 'DE', 'GB', 'KP', 'KR', 'MM', 'NE', 'NG', 'US', 'VA', 'ZW']) {
      expect(countryCode(names.of(code) ?? ''), code).toBe(code);
    }
  });
});
