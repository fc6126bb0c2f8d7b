import type { DemoDocument } from './demo-file.js';

interface Item {
  readonly role: string;
  readonly state: string;
  readonly reason?: { readonly code: string };
  readonly codes: readonly { readonly digest: string }[];
  readonly printed?: { readonly number: number; readonly page: number };
  readonly output?: string;
}

/** What the demo looks at in a run.json. */
export interface Recorded {
  readonly stacks: readonly { readonly output: string; readonly parcels: number; readonly pages: number; readonly sheets: number }[];
  readonly orders?: { readonly sums: Readonly<Record<string, number>>; readonly looseEnds: readonly { readonly code: string }[] };
  readonly documents: readonly { readonly name: string; readonly items: readonly Item[] }[];
}

/** What is printed for all forty orders: 38 labels and two return labels. */
export const EXPECTED_PARCELS = 40;

/** All but the six on sheets, with eleven slips of the channels' own behind their labels, and ten made from the orders of the channel with an order file. */
export const EXPECTED_ROLL = { parcels: 34, pages: 55, sheets: 55 };

/** The labels that came as pictures lie two a sheet, from the second position: four sheets, the first and the last half full. */
export const EXPECTED_SHEETS = { parcels: 6, pages: 6, sheets: 4 };

/** Two of them go abroad: their three declarations come out on the other printer. */
export const EXPECTED_OFFICE = { parcels: 2, pages: 3, sheets: 3 };

/** Of the twelve orders in that file one still waits for its label, one is cancelled. */
export const EXPECTED_ORDERS = { orders: 12, packed: 10, held: 0, 'no-label': 1, 'not-expected': 1 };

/** What of a run.json is not as the documents say, a line each; none when all is as expected. */
export function differences(record: Recorded, documents: readonly DemoDocument[]): string[] {
  const made = new Map(record.documents.map(({ name, items }) => [name, items.filter(({ role }) => role !== 'remainder')]));
  const wrong = documents.flatMap(({ path, ends, codes }) => {
    const name = `inbox/${path}`;
    const items = made.get(name);
    made.delete(name);
    if (!items) return [`${name}: missing`];
    return [
      ...differ(`${name}:`, items.map(endOf).sort(), ends),
      ...differ(`${name}: codes`, codesOf(items), codes),
      ...strayed(name, items),
      ...lostForms(name, items),
    ];
  });
  const stacks = record.stacks.map(({ output, ...stack }) => told(output, stack));
  return [
    ...wrong,
    ...[...made.keys()].map((name) => `${name}: not expected`),
    ...differ('orders:', [JSON.stringify(record.orders?.sums)], [JSON.stringify(EXPECTED_ORDERS)]),
    ...differ('loose ends:', record.orders?.looseEnds.map(({ code }) => code) ?? [], ['orders/no-label']),
    ...differ('stacks:', stacks, [told('roll', EXPECTED_ROLL), told('label-sheets', EXPECTED_SHEETS), told('office', EXPECTED_OFFICE)]),
  ];
}

const told = (output: string, { parcels, pages, sheets }: Omit<Recorded['stacks'][number], 'output'>): string =>
  `${output} ${parcels} parcels, ${pages} pages on ${sheets} sheets`;

const endOf = ({ role, state, reason }: Item): string => [role, state, ...(reason ? [reason.code] : [])].join(' ');

const codesOf = (items: readonly Item[]): string[] =>
  items
    .filter(({ state }) => state === 'ready')
    .flatMap(({ codes }) => codes.map(({ digest }) => digest))
    .sort();

function differ(what: string, is: readonly string[], should: readonly string[]): string[] {
  const [made, wanted] = [is.join(', '), should.join(', ')];
  return made === wanted ? [] : [`${what} ${made || 'nothing'} instead of ${wanted || 'nothing'}`];
}

/** Slips that don't come right behind the label of their own parcel. */
function strayed(name: string, items: readonly Item[]): string[] {
  return items.flatMap(({ role, printed }) => {
    if (role !== 'slip' || !printed) return [];
    const follows = items.some(
      (each) => each.role === 'label' && each.printed?.number === printed.number && each.printed.page === printed.page - 1,
    );
    return follows ? [] : [`${name}: the slip on page ${printed.page} does not follow its label`];
  });
}

/** Customs forms that are not on the other printer, or have another number than the label of their document. */
function lostForms(name: string, items: readonly Item[]): string[] {
  return items.flatMap(({ role, printed, output }) => {
    if (role !== 'customs-form' || !printed) return [];
    const itsLabel = items.some((each) => each.role === 'label' && each.printed?.number === printed.number && each.output === 'roll');
    return itsLabel && output === 'office' ? [] : [`${name}: a customs form is ${printed.number} on ${output ?? 'no printer'}`];
  });
}
