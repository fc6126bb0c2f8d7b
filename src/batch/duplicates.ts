import type { ItemResult, ItemState } from '../recipe/outcome.js';
import type { Reason, Role } from '../sheet/sheet.js';

/** What is looked at of each document, in the fixed order. */
export interface DuplicateDocument {
  /** The name that people see. */
  readonly name: string;
  readonly items: readonly ItemResult[];
}

/** Two labels with one tracking code and different pictures: to be shown side by side. Indexes of documents, from 0. */
export interface Pair {
  readonly document: number;
  readonly item: ItemResult;
  readonly otherDocument: number;
  readonly other: ItemResult;
}

export interface WithoutDuplicates {
  /** The items of each document; what is there twice is skipped or held now. */
  readonly items: readonly (readonly ItemResult[])[];
  readonly pairs: readonly Pair[];
}

interface Label {
  readonly document: number;
  readonly item: ItemResult;
}

const isLabelRole = (role: Role): boolean => role === 'label' || role === 'return-label';

/**
 * Finds labels that are in the run more than once. The tracking code decides: same code and same printed dots, the first is made
 * and the others skipped; same code and other dots, none is printed. Without a tracking code the dots alone decide. Only ready
 * labels count: what is held for another reason is no second print.
 */
export function withoutDuplicates(documents: readonly DuplicateDocument[]): WithoutDuplicates {
  const states = new Map<ItemResult, ItemState>();
  const pairs: Pair[] = [];
  for (const group of groupsOf(documents)) {
    const [first] = group;
    if (!first || group.length < 2) continue;
    const differing = group.find(({ item }) => item.picture !== first.item.picture);
    for (const label of group) {
      if (differing) {
        const other = label === first ? differing : first;
        states.set(label.item, { kind: 'held', ...sameCode(documents, other) });
        pairs.push({ ...label, otherDocument: other.document, other: other.item });
      } else if (label !== first) {
        states.set(label.item, { kind: 'skipped', ...madeBefore(documents, first) });
        for (const [slip, state] of slipStates(documents, label, first)) states.set(slip, state);
      }
    }
  }
  return { items: documents.map(({ items }) => items.map((item) => ({ ...item, state: states.get(item) ?? item.state }))), pairs };
}

/** Ready labels that share a tracking code, or the printed dots where they have none; each in the fixed order. */
function groupsOf(documents: readonly DuplicateDocument[]): readonly (readonly Label[])[] {
  const groups: Label[][] = [];
  const byKey = new Map<string, Label[]>();
  for (const [document, { items }] of documents.entries()) {
    for (const item of items) {
      if (!isLabelRole(item.role) || item.state.kind !== 'ready') continue;
      const keys = keysOf(item);
      const known = keys.map((key) => byKey.get(key)).find((group) => group !== undefined);
      const group = known ?? [];
      if (!known) groups.push(group);
      group.push({ document, item });
      for (const key of keys) if (!byKey.has(key)) byKey.set(key, group);
    }
  }
  return groups;
}

function keysOf({ codes, picture }: ItemResult): readonly string[] {
  const tracking = codes.filter(({ role }) => role === 'tracking').map(({ digest }) => `code ${digest}`);
  if (tracking.length > 0) return tracking;
  return picture === undefined ? [] : [`picture ${picture}`];
}

/** A slip of a label that is not made again is not made again either, unless it is another one: then somebody must look. */
function slipStates(documents: readonly DuplicateDocument[], label: Label, first: Label): readonly (readonly [ItemResult, ItemState])[] {
  const matesOf = ({ document, item }: Label): readonly ItemResult[] =>
    (documents[document]?.items ?? []).filter((each) => each !== item && each.parcel !== undefined && each.parcel === item.parcel);
  const made = new Set(matesOf(first).map(({ picture }) => picture));
  return matesOf(label)
    .filter(({ state }) => state.kind === 'ready')
    .map((slip) => [
      slip,
      slip.picture !== undefined && made.has(slip.picture)
        ? { kind: 'skipped', ...madeBefore(documents, first) }
        : { kind: 'held', ...otherSlip(documents, first) },
    ]);
}

const where = (documents: readonly DuplicateDocument[], { document, item }: Label): string =>
  `${documents[document]?.name ?? ''}, page ${item.page}`;

const madeBefore = (documents: readonly DuplicateDocument[], first: Label): Reason => ({
  code: 'batch/duplicate',
  message: `the same as ${where(documents, first)}, which is made once`,
  remedy: 'Nothing to do.',
});

const sameCode = (documents: readonly DuplicateDocument[], other: Label): Reason => ({
  code: 'batch/same-tracking-code',
  message: `its tracking code is on ${where(documents, other)}, too, which looks different`,
  remedy:
    'Look at the picture, this one on the left, that one on the right; take one of the two files out of the folder. Postage may be used only once.',
});

const otherSlip = (documents: readonly DuplicateDocument[], first: Label): Reason => ({
  code: 'batch/other-slip',
  message: `its label is the same as ${where(documents, first)}, but this packing slip is another one`,
  remedy: 'Find out which slip belongs into the parcel, and print that one.',
});
