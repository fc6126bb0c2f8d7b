import { isPlanned, type Reason, type Role, type Sheet } from '../sheet/sheet.js';

/** Which label a page behind labels belongs to. */
export interface Owner {
  readonly label: Sheet;
  /** Why it may be another label's: the page is held then, and its label with it. */
  readonly doubt: Reason | undefined;
}

/**
 * For each sheet of `role` (slips, forms) the label before it. Several labels in a row followed by several such pages leave open
 * which belongs to which: all are in doubt, each with a label of its own as far as there are any. A page before that may be a
 * label nobody recognised leaves it open, too. Sheets before the first label have no owner.
 */
export function ownersOf(sheets: readonly Sheet[], role: Role): ReadonlyMap<Sheet, Owner> {
  const owners = new Map<Sheet, Owner>();
  let labels: Sheet[] = [];
  let pages: Sheet[] = [];
  let unknown: Sheet | undefined;
  const settle = (): void => {
    const open = labels.length > 1 && pages.length > 1;
    for (const [index, page] of pages.entries()) {
      const label = open ? labels[Math.min(index, labels.length - 1)] : labels.at(-1);
      if (label) owners.set(page, { label, doubt: open ? severalInARow(labels.length, pages.length) : owners.get(page)?.doubt });
    }
  };
  for (const sheet of sheets) {
    if (sheet.role === 'label') {
      if (pages.length > 0) {
        settle();
        [labels, pages] = [[], []];
      }
      labels.push(sheet);
      unknown = undefined;
    } else if (sheet.role === role) {
      const last = labels.at(-1);
      if (last) owners.set(sheet, { label: last, doubt: unknown === undefined ? undefined : afterUnknown(unknown) });
      pages.push(sheet);
    } else if (mayBeLabel(sheet)) {
      unknown ??= sheet;
    }
  }
  settle();
  return owners;
}

/** A page of which no step could say what it is; what the recipe names to be skipped is none. */
const mayBeLabel = (sheet: Sheet): boolean =>
  sheet.role === 'page' && !isPlanned(sheet) && (sheet.state.kind === 'held' || isWithoutCode(sheet));

const isWithoutCode = ({ state }: Sheet): boolean => state.kind === 'skipped' && state.code === 'split-pages/no-code';

const afterUnknown = ({ page, state }: Sheet): Reason => ({
  code: 'packing-slip/whose',
  message: `page ${page}, before this one, may be a label that was not recognised: this may be that label's`,
  remedy:
    state.kind === 'held' && state.code === 'locate-label/doubtful'
      ? `Put right what is held of page ${page}, then run again.`
      : `Look at page ${page}; if it is no label, name it under skip or skip-words of split-pages.`,
});

const severalInARow = (labels: number, pages: number): Reason => ({
  code: 'packing-slip/whose',
  message: `${labels} labels in a row and then ${pages} slips or forms: which belongs to which is not sure`,
  remedy:
    'Put them together by the names on them; have the channel give each label with its slip behind it, or each order in a file of its own.',
});
