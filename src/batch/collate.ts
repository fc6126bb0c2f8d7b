import type { ItemResult } from '../recipe/outcome.js';
import { isLabel } from '../sheet/sheet.js';
import type { ImposePlan, StackPlan } from '../steps/step.js';
import { idOfItem } from './build-stacks.js';
import { holdParcels, inParcelOrder, readyParcels } from './parcels.js';

/** What collate needs of a document; documents come in the fixed order: channel as listed, file name, content hash. */
export interface CollateDocument {
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
  /** The parcels, each by its label's `idOfItem`, in the order in which they are packed; left out: as they come. */
  readonly sort?: (labels: readonly string[]) => readonly string[];
}

/** One page of a stack. */
export interface StackPage extends DocumentItem {
  /** Parcel's number in the run, from 1. */
  readonly number: number;
  /** What is stamped on the page; undefined: nothing. */
  readonly stamp: { readonly text: string; readonly more?: string; readonly fontSize: number } | undefined;
}

/** Pages that are printed together: those with the same plan for their sheets. */
export interface Stack {
  /** File name in print/. */
  readonly name: string;
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
  readonly plan: StackPlan;
  readonly items: readonly DocumentItem[];
}

const NO_ORDERS: CollateOrders = { slips: new Map(), goesWith: new Map() };

/**
 * Puts the proved pages of all documents into stacks: parcel by parcel, in the order of the documents and of their pages or as the orders want it,
 * the label first, its slip behind it. Only what is printed gets a number; numbers run on from one stack to the next, so that no
 * number is there twice.
 */
export function collate(documents: readonly CollateDocument[], media: string, orders: CollateOrders = NO_ORDERS): Collated {
  const items = documents.map((document) => holdParcels(document.items));
  const own = documents.flatMap(({ plan }, document): Parcel[] =>
    readyParcels(items[document] ?? []).map((each) =>
      parcelOf(
        each.map((item) => ({ document, item })),
        plan,
      ),
    ),
  );
  const parcels = sorted(together(own, orders), orders.sort);
  const groups = new Map<string, Parcel[]>();
  for (const parcel of parcels) {
    const key = JSON.stringify(parcel.plan.impose ?? null);
    const group = groups.get(key);
    if (group) group.push(parcel);
    else groups.set(key, [parcel]);
  }
  const taken = new Set<string>();
  let number = 0;
  const stacks: Stack[] = [];
  for (const group of groups.values()) {
    const impose = group[0]?.plan.impose;
    const pages: StackPage[] = [];
    for (const parcel of group) {
      number += 1;
      pages.push(...pagesOf(parcel, number, parcels.length));
    }
    stacks.push({ name: freeName(stackName(impose, media), taken), impose, parcels: group.length, pages });
  }
  return { items, parcels: parcels.length, stacks };
}

function parcelOf(items: readonly DocumentItem[], plan: StackPlan): Parcel {
  const [first] = items;
  if (!first) throw new Error('collate: a parcel without pages');
  return { id: idOfItem(first.document, first.item.id), plan, items };
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

function pagesOf({ plan, items }: Parcel, number: number, of: number): StackPage[] {
  const tail = trackingTail(items.map(({ item }) => item));
  return items.map(({ document, item }) => {
    const wanted = plan.number && (!isLabel(item) || plan.number.onLabelPage);
    const more = item.role === 'slip' && tail !== undefined ? { more: ` ·${tail}` } : {};
    const stamp = wanted && item.numberBox ? { text: `${number}/${of}`, ...more, fontSize: plan.number.fontSize } : undefined;
    return { document, item, number, stamp };
  });
}

/**
 * The end of the parcel's tracking number, as a published number scheme knows it: the longest code of a label without one may hold more than the
 * number, and would end otherwise than what people read. Undefined where there is none, or several that end otherwise.
 */
function trackingTail(items: readonly ItemResult[]): string | undefined {
  const codes = items.filter(({ role }) => role === 'label').flatMap((item) => item.codes);
  const tails = new Set(
    codes.flatMap(({ role, tracking }) => (role === 'tracking' && tracking?.trust === 'published' ? [tracking.tail] : [])),
  );
  return tails.size === 1 ? [...tails][0] : undefined;
}

function stackName(impose: ImposePlan | undefined, media: string): string {
  const name = impose ? `stack-${impose.sheet}-${impose.columns}x${impose.rows}` : `stack-${media}`;
  return name.replaceAll(/[^A-Za-z0-9._-]/g, '-');
}

function freeName(name: string, taken: Set<string>): string {
  let free = name;
  for (let n = 2; taken.has(free); n += 1) free = `${name}-${n}`;
  taken.add(free);
  return `${free}.pdf`;
}
