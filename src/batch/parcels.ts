import type { ItemResult, ItemState } from '../recipe/outcome.js';
import { roleWord } from '../sheet/role-words.js';
import { isLabel, type Reason, type Role } from '../sheet/sheet.js';

const isBroken = (item: ItemResult): boolean => item.state.kind === 'held' || item.state.kind === 'failed';

/** Pages whose label may go without them where the recipe says so. */
const MAY_RELEASE: readonly Role[] = ['slip', 'customs-form'];

/** The pages of a parcel in the order that they are printed: the label, its slip, what else goes with it. */
const ROLE_ORDER: Readonly<Record<Role, number>> = { label: 0, slip: 1, 'customs-form': 2, 'return-label': 3, page: 4, remainder: 5 };

/** What one parcel of a document holds, in the order of the items. An item without a parcel number is one of its own. */
function parcelsOf(items: readonly ItemResult[]): (readonly ItemResult[])[] {
  const numbered = new Map<number, ItemResult[]>();
  const parcels: ItemResult[][] = [];
  for (const item of items) {
    const mates = item.parcel === undefined ? undefined : numbered.get(item.parcel);
    if (mates) {
      mates.push(item);
      continue;
    }
    const parcel = [item];
    parcels.push(parcel);
    if (item.parcel !== undefined) numbered.set(item.parcel, parcel);
  }
  return parcels;
}

function withoutLabel(role: Role): Reason {
  return {
    code: 'batch/no-label',
    message: `this ${roleWord(role)} belongs to no label`,
    remedy: 'Look at the pages before and after it: is the label missing, or does the recipe take it for something else?',
  };
}

function heldWith({ role, page, state }: ItemResult): Reason {
  const code = 'batch/parcel-held';
  if (state.kind === 'held' && state.forParcel !== undefined) return { code, message: state.forParcel, remedy: state.remedy };
  return {
    code,
    message: `held with the ${roleWord(role)} of the same parcel (page ${page}), which is ${state.kind}`,
    remedy: `Put right what is wrong with that ${roleWord(role)}, then run again; both come together.`,
  };
}

/**
 * Holds what can't be printed apart: a label with its held slip or form (unless that says `release`), a slip whose label is
 * held, a slip without a label. `items` are all items of one document; the result has the same items in the same order, and
 * doing it twice changes nothing more.
 */
export function holdParcels(items: readonly ItemResult[]): readonly ItemResult[] {
  const states = new Map<string, ItemState>();
  for (const parcel of parcelsOf(items)) {
    const broken = parcel.filter(isBroken);
    const cause =
      broken.find((item) => isLabel(item)) ?? broken.find((item) => !MAY_RELEASE.includes(item.role) || item.ifSlipHeld !== 'release');
    const hasLabel = parcel.some((item) => isLabel(item) && item.state.kind === 'ready');
    for (const item of parcel) {
      if (item.state.kind !== 'ready') continue;
      if (cause) states.set(item.id, { kind: 'held', ...heldWith(cause) });
      else if (!hasLabel) states.set(item.id, { kind: 'held', ...withoutLabel(item.role) });
    }
  }
  return items.map((item) => ({ ...item, state: states.get(item.id) ?? item.state }));
}

/** The ready items of one document, parcel by parcel, each parcel in the order that its pages are printed. */
export function readyParcels(items: readonly ItemResult[]): (readonly ItemResult[])[] {
  return parcelsOf(items.filter((item) => item.state.kind === 'ready')).map((parcel) => inParcelOrder(parcel, (item) => item));
}

/** The pages of one parcel in the order that they are printed; those of one role by their page. */
export const inParcelOrder = <T>(pages: readonly T[], itemOf: (page: T) => Pick<ItemResult, 'role' | 'page'>): readonly T[] =>
  pages.toSorted((a, b) => ROLE_ORDER[itemOf(a).role] - ROLE_ORDER[itemOf(b).role] || itemOf(a).page - itemOf(b).page);
