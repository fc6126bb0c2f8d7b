import type { ItemResult } from '../recipe/outcome.js';
import { isLabel } from '../sheet/sheet.js';
import type { ImposePlan, StackPlan } from '../steps/step.js';
import { holdParcels, readyParcels } from './parcels.js';

/** What collate needs of a document; documents come in the fixed order: channel as listed, file name, content hash. */
export interface CollateDocument {
  readonly plan: StackPlan;
  readonly items: readonly ItemResult[];
}

/** One page of a stack. */
export interface StackPage {
  /** Index of the document, from 0. */
  readonly document: number;
  readonly item: ItemResult;
  /** Parcel's number in the run, from 1. */
  readonly number: number;
  /** What is stamped on the page; undefined: nothing. */
  readonly stamp: { readonly text: string; readonly fontSize: number } | undefined;
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
  readonly document: number;
  readonly plan: StackPlan;
  readonly items: readonly ItemResult[];
}

/**
 * Puts the proved pages of all documents into stacks: parcel by parcel, in the order of the documents and of their pages, the
 * label first, its slip behind it. Only what is printed gets a number; numbers run on from one stack to the next, so that no
 * number is there twice.
 */
export function collate(documents: readonly CollateDocument[], media: string): Collated {
  const items = documents.map((document) => holdParcels(document.items));
  const parcels = documents.flatMap(({ plan }, document): Parcel[] =>
    readyParcels(items[document] ?? []).map((each) => ({ document, plan, items: each })),
  );
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

function pagesOf({ document, plan, items }: Parcel, number: number, of: number): StackPage[] {
  return items.map((item) => {
    const wanted = plan.number && (!isLabel(item) || plan.number.onLabelPage);
    const stamp = wanted && item.numberBox ? { text: `${number}/${of}`, fontSize: plan.number.fontSize } : undefined;
    return { document, item, number, stamp };
  });
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
