import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expectedEnds, expectedParcels } from './expected.js';
import type { DayFile } from './files.js';
import type { RunDay } from './run-day.js';

/** As much of run.json as is looked at. */
export interface Recorded {
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

/** What a run tells of a day, and what it must tell, each in its own words and sorted where the order says nothing. */
export interface Told {
  /** Pages of labels and forms, with how they end. */
  readonly ends: readonly string[];
  /** Findings in order files, with the number that stands first in their row. */
  readonly rows: readonly string[];
  /** Warnings of what no typeface has, with the order. */
  readonly glyphs: readonly string[];
  /** With the order; of a label without an order none. */
  readonly looseEnds: readonly string[];
  readonly places: readonly string[];
  /** The codes of each label in the stack, in its order. */
  readonly labels: readonly (readonly string[])[];
  /** The pages of the stack but for slips made from orders, in its order: page, parcel and what it is. */
  readonly pages: readonly string[];
  /** Parcels and pages of each stack. */
  readonly stacks: readonly (readonly number[])[];
}

const NUMBER = /[A-Z]{3}-\d{5}/;

/** @param folder where the order files are */
export function toldBy(record: Recorded, folder: string): Told {
  const items = record.documents.flatMap(({ name, items: own }) => own.map((item) => ({ ...item, name })));
  const printed = items
    .flatMap(({ role, printed: place, codes }) => (place ? [{ ...place, role, codes: codes.map(({ digest }) => digest).sort() }] : []))
    .sort((a, b) => a.page - b.page);
  const firstCell = (file: string, line: number): string =>
    (
      readFileSync(join(folder, file), 'utf8')
        .split(/\r?\n/)
        [line - 1]?.split(/[;,\t]/)[0] ?? ''
    ).toUpperCase();
  return {
    ends: items
      .filter(({ role, reason }) => role !== 'slip' && reason?.code !== 'locate-label/remainder')
      .map(({ name, page, state, reason }) => [name, page, state, ...(reason ? [reason.code] : [])].join(' '))
      .sort(),
    rows: record.diagnostics
      .flatMap(({ code, place: { file, line = 1 } }) => (file === undefined ? [] : [`${code} ${firstCell(file, line)}`]))
      .sort(),
    glyphs: record.diagnostics
      .flatMap(({ code, message, place: { file } }) => (file === undefined ? [`${code} ${NUMBER.exec(message)?.[0] ?? ''}`] : []))
      .sort(),
    looseEnds: record.orders.looseEnds
      .map(({ code, message }) => `${code} ${code === 'orders/no-order' ? '' : (NUMBER.exec(message)?.[0] ?? '')}`)
      .sort(),
    places: record.orders.each.map(({ number, place }) => `${number} ${place}`).sort(),
    labels: printed.filter(({ role }) => role === 'label' || role === 'return-label').map(({ codes }) => codes),
    pages: printed.map(({ role, number, page }) => `${page}: ${number} ${role}`),
    stacks: record.stacks.map(({ parcels, pages }) => [parcels, pages]),
  };
}

/** The same by what was planted. @param told tells which channels have slips of their own: only those are items */
export function planted(day: RunDay, files: readonly DayFile[], told: Told): Told {
  const parcels = expectedParcels(files, day.stackOrder);
  const pages = parcels.flatMap((parcel, at) => parcel.pages.map((role) => `${at + 1} ${role}`)).map((each, at) => `${at + 1}: ${each}`);
  const at = (where: string): readonly string[] =>
    day.planted
      .filter((each) => each.at === where)
      .map(({ code, order }) => `${code} ${code === 'orders/no-order' ? '' : order}`)
      .sort();
  return {
    ends: expectedEnds(files),
    ...{ rows: at('row'), glyphs: at('slip'), looseEnds: at('loose') },
    places: day.orders.flatMap(({ number, place }) => (place === 'absent' ? [] : [`${number} ${place}`])).sort(),
    labels: parcels.flatMap(({ codes }) => codes),
    pages: pages.filter((each) => !each.endsWith('slip') || told.pages.includes(each)),
    stacks: pages.length === 0 ? [] : [[parcels.length, pages.length]],
  };
}
