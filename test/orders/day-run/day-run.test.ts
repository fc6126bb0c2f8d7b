import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runBuilt, type Ended } from '../../built.js';
import { outsideCheck, runTool } from '../../outside/tools.js';
import { expectedEnds, expectedParcels, expectedPieces, type Parcel } from './expected.js';
import type { DayFile } from './files.js';
import { runDay } from './generate.js';
import { writeDay } from './inbox.js';
import { DAY } from './run-day.js';

interface Recorded {
  readonly stacks: readonly { readonly file: string; readonly parcels: number; readonly pages: number }[];
  readonly diagnostics: readonly {
    readonly code: string;
    readonly message: string;
    readonly place: { readonly file?: string; readonly line?: number };
  }[];
  readonly orders: {
    readonly sums: Readonly<Record<string, number>>;
    readonly each: readonly { readonly number: string; readonly place: string; readonly parcels: readonly number[] }[];
    readonly looseEnds: readonly { readonly code: string; readonly message: string }[];
  };
  readonly documents: readonly {
    readonly name: string;
    readonly items: readonly {
      readonly page: number;
      readonly role: string;
      readonly state: string;
      readonly reason?: { readonly code: string };
      readonly codes: readonly { readonly digest: string }[];
      readonly printed?: { readonly number: number; readonly page: number };
    }[];
  }[];
}

const folder = mkdtempSync(join(tmpdir(), 'slipyard-day-'));
const day = runDay(20261128);
let files: readonly DayFile[] = [];
let parcels: readonly Parcel[] = [];
let ended: Ended;
let record: Recorded;

const cellsOf = (name: string): string[][] => parse(readFileSync(join(folder, 'out', 'lists', name)), { bom: true, from_line: 2 });

beforeAll(async () => {
  files = await writeDay(folder, day);
  parcels = expectedParcels(files);
  ended = await runBuilt(['run', '--config', 'pipeline.yaml', '--no-color', '--date', DAY], folder);
  record = JSON.parse(readFileSync(join(folder, 'out', 'run.json'), 'utf8')) as Recorded;
}, 600_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a day of 300 orders in five channels, as documents through the whole run', () => {
  it('has all that it should have', () => {
    expect(day.orders.length).toBe(300);
    expect(day.planted.length).toBeGreaterThanOrEqual(40);
    expect(new Set(day.planted.map(({ code }) => code)).size).toBeGreaterThanOrEqual(25);
    expect([ended.code, ended.stderr.includes('does not add up')]).toEqual([1, false]);
  });

  it('ends each label as it should, and no other is held, failed or skipped', () => {
    const ends = record.documents.flatMap(({ name, items }) =>
      items
        .filter(({ role, reason }) => role !== 'slip' && reason?.code !== 'locate-label/remainder')
        .map(({ page, state, reason }) => [name, page, state, ...(reason ? [reason.code] : [])].join(' ')),
    );
    expect(ends.sort()).toEqual(expectedEnds(files));
  });

  it('names each fault of the order files at its row, and no other', () => {
    const told = record.diagnostics.flatMap(({ code, place: { file, line = 1 } }) => {
      if (file === undefined) return [];
      const row = readFileSync(join(folder, file), 'utf8').split(/\r?\n/)[line - 1] ?? '';
      return [`${code} ${(row.split(/[;,\t]/)[0] ?? '').toUpperCase()}`];
    });
    const planted = day.planted.filter(({ at }) => at === 'row').map(({ code, order }) => `${code} ${order}`);
    expect(told.sort()).toEqual(planted.sort());
  });

  it('warns of what no typeface has on the slip of its order, and of no other', () => {
    const told = record.diagnostics.flatMap(({ code, message, place: { file } }) =>
      file === undefined ? [`${code} ${/[A-Z]{3}-\d{5}/.exec(message)?.[0] ?? ''}`] : [],
    );
    const planted = day.planted.filter(({ at }) => at === 'slip').map(({ code, order }) => `${code} ${order}`);
    expect(told.sort()).toEqual(planted.sort());
  });

  it('names each loose end with its order, and no other', () => {
    const told = record.orders.looseEnds.map(({ code, message }) => {
      const number = code === 'orders/no-order' ? '' : (/[A-Z]{3}-\d{5}/.exec(message)?.[0] ?? '');
      return `${code} ${number}`;
    });
    const planted = day.planted
      .filter(({ at }) => at === 'loose')
      .map(({ code, order }) => `${code} ${code === 'orders/no-order' ? '' : order}`);
    expect(told.sort()).toEqual(planted.sort());
  });

  it('puts each order where it belongs', () => {
    const placed = record.orders.each.map(({ number, place }) => `${number} ${place}`);
    const there = day.orders.filter(({ place }) => place !== 'absent');
    expect(placed.sort()).toEqual(there.map(({ number, place }) => `${number} ${place}`).sort());
    const { orders, ...places } = record.orders.sums;
    expect(Object.values(places).reduce((sum, each) => sum + each, 0)).toBe(orders);
    expect(orders).toBe(there.length);
  });

  it('packs them in the order asked for, each label with the codes it was drawn with, its pages behind it', () => {
    const printed = record.documents
      .flatMap(({ items }) => items)
      .flatMap(({ role, printed: place, codes }) => (place ? [{ ...place, role, codes: codes.map(({ digest }) => digest).sort() }] : []))
      .sort((a, b) => a.page - b.page);
    const labels = printed.filter(({ role }) => role === 'label' || role === 'return-label');
    expect(labels.map(({ codes }) => codes)).toEqual(parcels.flatMap(({ codes }) => codes));
    // Slips made from orders are no items: their pages are those that are left.
    const pages = parcels.flatMap((parcel, at) => parcel.pages.map((role) => `${at + 1} ${role}`)).map((each, at) => `${at + 1}: ${each}`);
    const told = printed.map(({ role, number, page }) => `${page}: ${number} ${role}`);
    expect(told).toEqual(pages.filter((each) => !each.endsWith('slip') || told.includes(each)));
    expect(record.stacks.map(({ parcels: count, pages: all }) => [count, all])).toEqual([[parcels.length, pages.length]]);
  });

  it('lists all that is to be fetched and handed over, and nothing else', () => {
    const picked = new Map<string, number>();
    for (const [, sku = '', , , quantity = ''] of cellsOf('pick-list.csv')) picked.set(sku, (picked.get(sku) ?? 0) + Number(quantity));
    expect(Object.fromEntries(picked)).toEqual(Object.fromEntries(expectedPieces(day, parcels)));
    // A long number stands behind a sign that keeps spreadsheets from rounding it.
    const handed = cellsOf('hand-over-list.csv').map(
      ([, number = '', tracking = '', orders = '']) => `${number} ${tracking.replace(/^'/, '')} ${orders}`,
    );
    const wanted = parcels.flatMap(({ tracking, orders, pages }, at) =>
      pages[0] === 'label' ? [`${at + 1} ${tracking} ${orders.map(({ number }) => number).join(', ')}`] : [],
    );
    expect(handed.sort()).toEqual(wanted.sort());
  });

  outsideCheck('pdftotext reads the order number on the page behind each label', ['pdftotext'], () => {
    const pdf = readFileSync(join(folder, 'out', record.stacks[0]?.file ?? ''));
    const pages = runTool('pdftotext', ['-enc', 'UTF-8', '-', '-'], pdf).toString('utf8').split('\f');
    const slips = parcels.flatMap((parcel) =>
      parcel.pages.map((role) => ({ role, orders: parcel.orders.map(({ number }) => number).sort() })),
    );
    const behind = slips.map(({ role }, at) => (role === 'slip' ? [...new Set(pages[at]?.match(/[A-Z]{3}-1\d{4}/g) ?? [])].sort() : []));
    expect(behind).toEqual(slips.map(({ role, orders }) => (role === 'slip' ? orders : [])));
  });
});
