import type { ItemResult, ItemState } from '../recipe/outcome.js';
import type { Reason, Role } from '../sheet/sheet.js';
import { holdParcels } from './parcels.js';
import { sameLabels, type RunLabel } from './same-label.js';

/** What is looked at of each document, in the fixed order. */
export interface DuplicateDocument {
  /** The name that people see. */
  readonly name: string;
  readonly items: readonly ItemResult[];
}

/** Two labels with one tracking code and different pictures: to be shown side by side, this one on the left. */
export interface Pair extends RunLabel {
  readonly other: RunLabel;
}

export interface WithoutDuplicates {
  /** The items of each document; what is there twice is skipped or held now, and its parcel with it. */
  readonly items: readonly (readonly ItemResult[])[];
  readonly pairs: readonly Pair[];
}

/**
 * Finds labels that are in the run more than once. The tracking code decides: same code and same printed dots, the first is made
 * and the others skipped; same code and other dots, none is printed. Without a tracking code the dots alone decide. Only ready
 * labels count: what is held for another reason is no second print. Whole parcels at each end: doing it twice changes nothing more.
 */
export function withoutDuplicates(documents: readonly DuplicateDocument[]): WithoutDuplicates {
  // First, for a label may be held now for its parcel's sake; then its copy is the one to make.
  const { items, pairs } = holdDifferent(documents);
  return { items: skipCopies(documents.map(({ name }, index) => ({ name, items: items[index] ?? [] }))), pairs };
}

function holdDifferent(documents: readonly DuplicateDocument[]): WithoutDuplicates {
  const states = new Map<ItemResult, ItemState>();
  const pairs: Pair[] = [];
  for (const group of sameLabels(readyLabels(documents))) {
    for (const label of group) {
      const other = group.find(({ item }) => item.picture !== label.item.picture);
      if (!other) break;
      states.set(label.item, { kind: 'held', ...sameCode(documents, other) });
      pairs.push({ ...label, other });
    }
  }
  return { items: changed(documents, states), pairs };
}

function skipCopies(documents: readonly DuplicateDocument[]): readonly (readonly ItemResult[])[] {
  const states = new Map<ItemResult, ItemState>();
  const copies: { readonly label: RunLabel; readonly first: RunLabel }[] = [];
  for (const [first, ...others] of sameLabels(readyLabels(documents))) {
    if (!first) continue;
    for (const label of others) {
      states.set(label.item, { kind: 'skipped', ...madeBefore(documents, first) });
      if (takesItsParcelAlong(documents, label, first)) copies.push({ label, first });
    }
  }
  const labelsHeld = new Map<ItemResult, ItemState>();
  for (const { label, first } of copies) {
    const made = new Set(readyMates(documents, first).map(pageKey));
    for (const mate of readyMates(documents, label)) {
      if (states.has(mate)) continue;
      const isMade = mate.picture !== undefined && made.has(pageKey(mate));
      const state: ItemState = isMade
        ? { kind: 'skipped', ...madeBefore(documents, first) }
        : { kind: 'held', ...otherPage(documents, first) };
      states.set(mate, state);
      if (isLabelRole(mate.role)) labelsHeld.set(mate, state);
    }
  }
  if (labelsHeld.size === 0) return changed(documents, states);
  // A label held now may have been the first of others: who is first is settled anew without it.
  const items = changed(documents, labelsHeld);
  return skipCopies(documents.map(({ name }, index) => ({ name, items: items[index] ?? [] })));
}

/** A return label that many orders share is a copy; their labels are none for that. */
function takesItsParcelAlong(documents: readonly DuplicateDocument[], label: RunLabel, first: RunLabel): boolean {
  if (label.document === first.document && label.item.parcel === first.item.parcel) return false;
  return label.item.role === 'label' || readyMates(documents, label).every(({ role }) => role !== 'label');
}

const isLabelRole = (role: Role): boolean => role === 'label' || role === 'return-label';
const pageKey = ({ role, picture }: ItemResult): string => `${role} ${picture ?? ''}`;

const readyLabels = (documents: readonly DuplicateDocument[]): readonly RunLabel[] =>
  documents.flatMap(({ items }, document) =>
    items.filter(({ role, state }) => isLabelRole(role) && state.kind === 'ready').map((item) => ({ document, item })),
  );

/** What is ready and belongs to the label's parcel. */
const readyMates = (documents: readonly DuplicateDocument[], { document, item }: RunLabel): readonly ItemResult[] =>
  (documents[document]?.items ?? []).filter(
    (each) => each !== item && each.state.kind === 'ready' && each.parcel !== undefined && each.parcel === item.parcel,
  );

const changed = (documents: readonly DuplicateDocument[], states: ReadonlyMap<ItemResult, ItemState>): readonly (readonly ItemResult[])[] =>
  documents.map(({ items }) => holdParcels(items.map((item) => ({ ...item, state: states.get(item) ?? item.state }))));

const where = (documents: readonly DuplicateDocument[], { document, item }: RunLabel): string =>
  `${documents[document]?.name ?? ''}, page ${item.page}`;

const madeBefore = (documents: readonly DuplicateDocument[], first: RunLabel): Reason => ({
  code: 'batch/duplicate',
  message: `the same as ${where(documents, first)}, which is made once`,
  remedy: 'Nothing to do.',
});

const sameCode = (documents: readonly DuplicateDocument[], other: RunLabel): Reason => ({
  code: 'batch/same-tracking-code',
  message: `its tracking code is on ${where(documents, other)}, too, which looks different`,
  remedy:
    'Look at the picture, which shows both; take one of the two files out of the folder, then run again. Postage may be used only once.',
});

const otherPage = (documents: readonly DuplicateDocument[], first: RunLabel): Reason => ({
  code: 'batch/other-slip',
  message: `its label is made from ${where(documents, first)}, which has no such page in its parcel`,
  remedy: 'Find out which of the two belongs into the parcel, and take the other file out of the folder.',
});
