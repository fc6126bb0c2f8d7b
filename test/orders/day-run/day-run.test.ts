import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runBuilt, type Ended } from '../../built.js';
import { outsideCheck, runTool } from '../../outside/tools.js';
import { expectedParcels, expectedPieces, type Parcel } from './expected.js';
import type { DayFile } from './files.js';
import { runDay } from './generate.js';
import { writeDay } from './inbox.js';
import { DAY } from './run-day.js';
import { planted, toldBy, type Recorded, type Told } from './told.js';

const folder = mkdtempSync(join(tmpdir(), 'slipyard-day-'));
const day = runDay(20261128);
let files: readonly DayFile[] = [];
let parcels: readonly Parcel[] = [];
let ended: Ended;
let record: Recorded;
let told: Told;
let wanted: Told;

const cellsOf = (name: string): string[][] => parse(readFileSync(join(folder, 'out', 'lists', name)), { bom: true, from_line: 2 });

beforeAll(async () => {
  files = await writeDay(folder, day);
  parcels = expectedParcels(files, day.stackOrder);
  ended = await runBuilt(['run', '--config', 'pipeline.yaml', '--no-color', '--date', DAY], folder);
  record = JSON.parse(readFileSync(join(folder, 'out', 'run.json'), 'utf8')) as Recorded;
  told = toldBy(record, folder);
  wanted = planted(day, files, told);
}, 600_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a day of 300 orders in five channels, as documents through the whole run', () => {
  it('has all that it should have', () => {
    expect(day.orders.length).toBe(300);
    expect(day.planted.length).toBeGreaterThanOrEqual(40);
    expect(new Set(day.planted.map(({ code }) => code)).size).toBeGreaterThanOrEqual(25);
    expect([ended.code, ended.stderr.includes('does not add up')]).toEqual([1, false]);
  });

  it('ends each label as it should, and no other is held, failed or skipped', () => expect(told.ends).toEqual(wanted.ends));
  it('names each fault of the order files at its row, and no other', () => expect(told.rows).toEqual(wanted.rows));
  it('warns of what no typeface has on the slip of its order, and of no other', () => expect(told.glyphs).toEqual(wanted.glyphs));
  it('names each loose end with its order, and no other', () => expect(told.looseEnds).toEqual(wanted.looseEnds));

  it('puts each order where it belongs', () => {
    expect(told.places).toEqual(wanted.places);
    const { orders, ...places } = record.orders.sums;
    expect(Object.values(places).reduce((sum, each) => sum + each, 0)).toBe(orders);
    expect(orders).toBe(wanted.places.length);
  });

  it('packs them in the order asked for, each label with the codes it was drawn with, its pages behind it', () => {
    expect(told.labels).toEqual(wanted.labels);
    expect(told.pages).toEqual(wanted.pages);
    expect(told.stacks).toEqual(wanted.stacks);
  });

  it('lists all that is to be fetched and handed over, and nothing else', () => {
    const picked = new Map<string, number>();
    for (const [, sku = '', , , quantity = ''] of cellsOf('pick-list.csv')) picked.set(sku, (picked.get(sku) ?? 0) + Number(quantity));
    expect(Object.fromEntries(picked)).toEqual(Object.fromEntries(expectedPieces(day, parcels)));
    // A long number stands behind a sign that keeps spreadsheets from rounding it.
    const handed = cellsOf('hand-over-list.csv').map(
      ([, number = '', tracking = '', orders = '']) => `${number} ${tracking.replace(/^'/, '')} ${orders}`,
    );
    const parts = parcels.flatMap(({ tracking, orders, pages }, at) =>
      pages[0] === 'label' ? [`${at + 1} ${tracking} ${orders.map(({ number }) => number).join(', ')}`] : [],
    );
    expect(handed.sort()).toEqual(parts.sort());
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
