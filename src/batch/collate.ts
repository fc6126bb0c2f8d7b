import { ROLL } from '../geometry/printer.js';
import type { ItemResult } from '../recipe/outcome.js';
import { isLabel } from '../sheet/sheet.js';
import type { ImposePlan, StackPlan } from '../steps/step.js';
import { idOfItem } from './build-stacks.js';
import { holdParcels, inParcelOrder, readyParcels } from './parcels.js';

/** What collate needs of a document; documents come in the fixed order: channel as listed, file name, content hash. */
export interface CollateDocument {
  /** The printer that its channel's pages go to; left out: the roll. */
  readonly output?: string;
  readonly plan: StackPlan;
  readonly items: readonly ItemResult[];
}

/** An item of a run. */
export interface DocumentItem {
  /** Index of the document, from 0; slips made from orders are documents behind all others. */
  readonly document: number;
  readonly item: ItemResult;
}

/** What orders say of the stack; of a run without orders nothing. */
export interface CollateOrders {
  /** Pages made from orders, by the `idOfItem` of the label that they follow. */
  readonly slips: ReadonlyMap<string, readonly DocumentItem[]>;
  /** Labels that go in another label's parcel (return labels), both by `idOfItem`. */
  readonly goesWith: ReadonlyMap<string, string>;
  /** What the orders of a label's parcel are called, by `idOfItem`; for pages that leave another printer than their label. */
  readonly orderOf?: (label: string) => string | undefined;
  /** How the tracking number ends that the orders of a label's parcel know and its codes hold, by `idOfItem`. */
  readonly tailOf?: (label: string) => string | undefined;
  /** The parcels, each by its label's `idOfItem`, in the order in which they are packed; left out: as they come. */
  readonly sort?: (labels: readonly string[]) => readonly string[];
}

/** One page of a stack. */
export interface StackPage extends DocumentItem {
  /** Parcel's number in the run, from 1. */
  readonly number: number;
  /** Whether its recipe wants a number on it. */
  readonly numbered: boolean;
  /** What is stamped on the page; undefined: nothing. */
  readonly stamp: { readonly text: string; readonly more?: string; readonly fontSize: number } | undefined;
}

/** Pages that are printed together: those for the same printer with the same plan for its sheets. */
export interface Stack {
  /** File name in print/. */
  readonly name: string;
  /** The printer's name. */
  readonly output: string;
  readonly impose: ImposePlan | undefined;
  readonly parcels: number;
  readonly pages: readonly StackPage[];
}

export interface Collated {
  /** The items of each document, some of them held now for their parcel's sake. */
  readonly items: readonly (readonly ItemResult[])[];
  readonly parcels: number;
  readonly stacks: readonly Stack[];
}

interface Parcel {
  /** `idOfItem` of its first page, which is its label. */
  readonly id: string;
  readonly output: string;
  readonly plan: StackPlan;
  readonly items: readonly DocumentItem[];
}

/** A parcel with its number in the run, from 1. */
interface Numbered {
  readonly parcel: Parcel;
  readonly number: number;
}

/** Where pages go. */
interface Place {
  readonly output: string;
  readonly impose: ImposePlan | undefined;
}

const NO_ORDERS: CollateOrders = { slips: new Map(), goesWith: new Map() };

/**
 * Puts the proved pages of all documents into stacks: parcel by parcel, in the order of the documents and of their pages or as the orders want it,
 * the label first, its slip behind it. Pages for another printer than their label's go to that printer's own stack, in the same order and with the same
 * number. Only what is printed gets a number; numbers run on from one stack of labels to the next, so that no number is there twice.
 * @param mediaOf the media name of each printer
 */
export function collate(
  documents: readonly CollateDocument[],
  mediaOf: (output: string) => string,
  orders: CollateOrders = NO_ORDERS,
): Collated {
  const items = documents.map((document) => holdParcels(document.items));
  const own = documents.flatMap(({ plan, output = ROLL }, document): Parcel[] =>
    readyParcels(items[document] ?? []).map((each) =>
      parcelOf(
        each.map((item) => ({ document, item })),
        output,
        plan,
      ),
    ),
  );
  const parcels = sorted(together(own, orders), orders.sort);
  const groups = groupBy(parcels, ({ output, plan }) => keyOf({ output, impose: plan.impose }));
  const numbered = [...groups.values()].flat().map((parcel, index): Numbered => ({ parcel, number: index + 1 }));
  const placed = numbered.flatMap((each) =>
    pagesOf(each, parcels.length, orders).map((page) => ({ page, place: placeOf(page, each.parcel, documents) })),
  );
  // Stacks of labels come first, in the order of their labels.
  const labelsFirst = [...placed.filter(({ page }) => isLabel(page.item)), ...placed.filter(({ page }) => !isLabel(page.item))];
  const taken = new Set<string>();
  const stacks = [...groupBy(labelsFirst, ({ place }) => keyOf(place)).keys()].map((key): Stack => {
    const there = placed.filter(({ place }) => keyOf(place) === key);
    const { output, impose } = there[0]?.place ?? { output: ROLL, impose: undefined };
    const pages = there.map(({ page }) => page).toSorted((a, b) => a.number - b.number);
    const name = freeName(stackName(output, impose, mediaOf(output)), taken);
    return { name, output, impose, parcels: new Set(pages.map(({ number }) => number)).size, pages };
  });
  return { items, parcels: parcels.length, stacks };
}

const keyOf = ({ output, impose }: Place): string => JSON.stringify([output, impose ?? null]);

function groupBy<T>(all: readonly T[], key: (each: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const each of all) {
    const group = groups.get(key(each));
    if (group) group.push(each);
    else groups.set(key(each), [each]);
  }
  return groups;
}

/** Which printer a page was pressed for: with its label, or alone. */
function placeOf({ document, item }: DocumentItem, parcel: Parcel, documents: readonly CollateDocument[]): Place {
  // Slips made from orders are pressed for the printer of their labels.
  const ownOutput = document < documents.length ? (documents[document]?.output ?? ROLL) : parcel.output;
  const output = item.output ?? ownOutput;
  return item.output === undefined && output === parcel.output ? { output, impose: parcel.plan.impose } : { output, impose: undefined };
}

function parcelOf(items: readonly DocumentItem[], output: string, plan: StackPlan): Parcel {
  const [first] = items;
  if (!first) throw new Error('collate: a parcel without pages');
  return { id: idOfItem(first.document, first.item.id), output, plan, items };
}

/** Parcels with the pages that orders bring: slips made from them, and return labels that go in the same box. */
function together(parcels: readonly Parcel[], { slips, goesWith }: CollateOrders): readonly Parcel[] {
  const guests = new Map<string, DocumentItem[]>();
  const known = new Set(parcels.map(({ id }) => id));
  const isGuest = ({ id }: Parcel): boolean => known.has(goesWith.get(id) ?? '');
  for (const parcel of parcels.filter(isGuest)) {
    const host = goesWith.get(parcel.id) ?? '';
    guests.set(host, [...(guests.get(host) ?? []), ...parcel.items]);
  }
  return parcels
    .filter((parcel) => !isGuest(parcel))
    .map((parcel) => ({
      ...parcel,
      items: inParcelOrder([...parcel.items, ...(slips.get(parcel.id) ?? []), ...(guests.get(parcel.id) ?? [])], ({ item }) => item),
    }));
}

function sorted(parcels: readonly Parcel[], sort: CollateOrders['sort']): readonly Parcel[] {
  if (!sort) return parcels;
  const byId = new Map(parcels.map((parcel) => [parcel.id, parcel]));
  const inOrder = sort([...byId.keys()]).flatMap((id) => byId.get(id) ?? []);
  if (inOrder.length !== parcels.length) throw new Error('collate: sorting lost a parcel');
  return inOrder;
}

function pagesOf({ parcel: { id, plan, items }, number }: Numbered, of: number, { orderOf, tailOf }: CollateOrders): StackPage[] {
  const tail = tailOf?.(id) ?? trackingTail(items.map(({ item }) => item));
  const ending = tail === undefined ? '' : ` ·${tail}`;
  const order = orderOf?.(id);
  return items.map(({ document, item }) => {
    const wanted = plan.number && (!isLabel(item) || plan.number.onLabelPage);
    const elsewhere = `${ending}${order === undefined ? '' : ` · order ${order}`}`;
    const more = item.output === undefined ? (item.role === 'slip' ? ending : '') : elsewhere;
    const said = more === '' ? {} : { more };
    const stamp = wanted && item.numberBox ? { text: `${number}/${of}`, ...said, fontSize: plan.number.fontSize } : undefined;
    return { document, item, number, numbered: Boolean(wanted), stamp };
  });
}

/**
 * The end of the parcel's tracking number where its orders know none, as a published number scheme knows it: the longest code of a label without one may hold more than the
 * number, and would end otherwise than what people read. Undefined where there is none, or several that end otherwise.
 */
function trackingTail(items: readonly ItemResult[]): string | undefined {
  const codes = items.filter(({ role }) => role === 'label').flatMap((item) => item.codes);
  const tails = new Set(
    codes.flatMap(({ role, tracking }) => (role === 'tracking' && tracking?.trust === 'published' ? [tracking.tail] : [])),
  );
  return tails.size === 1 ? [...tails][0] : undefined;
}

/** Another printer's stack has its name in front: nobody sends letter sheets to the label printer. */
function stackName(output: string, impose: ImposePlan | undefined, media: string): string {
  const pages = impose ? `${impose.sheet}-${impose.columns}x${impose.rows}` : media;
  return ['stack', ...(output === ROLL ? [] : [output]), pages].join('-').replaceAll(/[^\p{L}\p{M}\p{N}._-]+/gu, '-');
}

/** Names that differ in small and large letters alone are one on some systems. */
function freeName(name: string, taken: Set<string>): string {
  let free = name;
  for (let n = 2; taken.has(free.toLowerCase()); n += 1) free = `${name}-${n}`;
  taken.add(free.toLowerCase());
  return `${free}.pdf`;
}
