import { ROLL } from '../geometry/printer.js';
import { type ItemResult, ITEM_STATES, type ItemStateKind } from '../recipe/outcome.js';
import type { Role } from '../sheet/sheet.js';

export type DocumentState = 'read' | 'failed' | 'skipped';

/** What the account needs of each document that was taken in. */
export interface AccountDocument {
  readonly state: DocumentState;
  /** The printer of its channel; left out: the roll. */
  readonly output?: string;
  readonly pageCount: number;
  readonly items: readonly ItemResult[];
}

export type StateCounts = Readonly<Record<ItemStateKind, number>>;

/** The four sums, the last of them for each printer apart. Each side comes from another hand, so that what gets lost between them shows. */
export interface Account {
  /** `taken` as intake found them; the rest by how each ended. */
  readonly documents: Readonly<Record<DocumentState | 'taken', number>>;
  /** Pages of the documents that were read, and how many of them yielded an item. */
  readonly pages: { readonly source: number; readonly withItems: number };
  /** Items as the workers gave them, and by where they ended. */
  readonly items: StateCounts & { readonly given: number; readonly byRole: Readonly<Partial<Record<Role, StateCounts>>> };
  /** Ready items, pages of slips made from orders, and the pages that the stacks were made of. */
  readonly output: OutputCounts & { readonly byOutput: Readonly<Record<string, OutputCounts>> };
}

export interface OutputCounts {
  readonly readyItems: number;
  readonly madePages: number;
  readonly stackPages: number;
}

/** Pages for one printer, by its name. */
export interface PagesFor {
  readonly output: string;
  readonly pages: number;
}

export interface AccountInput {
  readonly taken: number;
  /** Items as they came from the workers, before anything was collated. */
  readonly given: number;
  readonly documents: readonly AccountDocument[];
  /** Pages of slips made from orders, as the workers gave them; left out: none. */
  readonly madePages?: readonly PagesFor[];
  /** Pages of each stack: as planned, and once they are drawn as the press has put them into its PDF. */
  readonly stackPages: readonly PagesFor[];
}

const noItems = (): Record<ItemStateKind, number> => ({ ready: 0, held: 0, skipped: 0, failed: 0 });

export function accountOf({ taken, given, documents, madePages = [], stackPages }: AccountInput): Account {
  const byState = noItems();
  const byRole: Partial<Record<Role, Record<ItemStateKind, number>>> = {};
  const ended: Record<DocumentState, number> = { read: 0, failed: 0, skipped: 0 };
  const outputs = new Map<string, Record<keyof OutputCounts, number>>();
  const count = (output: string, what: keyof OutputCounts, pages: number): void => {
    const counts = outputs.get(output) ?? { readyItems: 0, madePages: 0, stackPages: 0 };
    counts[what] += pages;
    outputs.set(output, counts);
  };
  let source = 0;
  let withItems = 0;
  for (const document of documents) {
    ended[document.state] += 1;
    source += document.pageCount;
    withItems += new Set(document.items.map((item) => item.page).filter((page) => page >= 1 && page <= document.pageCount)).size;
    for (const { role, state, output = document.output ?? ROLL } of document.items) {
      byState[state.kind] += 1;
      (byRole[role] ??= noItems())[state.kind] += 1;
      if (state.kind === 'ready') count(output, 'readyItems', 1);
    }
  }
  for (const { output, pages } of madePages) count(output, 'madePages', pages);
  for (const { output, pages } of stackPages) count(output, 'stackPages', pages);
  const all = (what: keyof OutputCounts): number => [...outputs.values()].reduce((sum, counts) => sum + counts[what], 0);
  return {
    documents: { taken, ...ended },
    pages: { source, withItems },
    items: { given, ...byState, byRole },
    output: {
      readyItems: byState.ready,
      madePages: all('madePages'),
      stackPages: all('stackPages'),
      byOutput: Object.fromEntries(outputs),
    },
  };
}

/**
 * Which items are missing in the stacks, or in them more than once: an item twice would make up in the sums for one that is missing.
 * @param ready @param printed by `idOfItem`
 */
export function misprints(ready: readonly string[], printed: readonly string[]): readonly string[] {
  const wanted = new Set(ready);
  const seen = new Set(printed);
  const missing = ready.filter((id) => !seen.has(id)).length;
  const unwanted = [...seen].filter((id) => !wanted.has(id)).length;
  const again = printed.length - seen.size;
  return [
    ...(missing > 0 ? [`${missing} ready items are in no stack`] : []),
    ...(unwanted > 0 ? [`${unwanted} items are in a stack that are not ready`] : []),
    ...(again > 0 ? [`${again} pages are in the stacks once more than they should`] : []),
  ];
}

/** What doesn't add up, one sentence with its numbers each; none when the account is right. */
export function mismatches({ documents, pages, items, output }: Account): readonly string[] {
  const wrong: string[] = [];
  const ended = documents.read + documents.failed + documents.skipped;
  if (documents.taken !== ended) {
    wrong.push(
      `${documents.taken} documents were taken in, but ${documents.read} read + ${documents.failed} failed + ${documents.skipped} skipped are ${ended}`,
    );
  }
  if (pages.source !== pages.withItems) wrong.push(`the documents have ${pages.source} pages, but only ${pages.withItems} became items`);
  const inStates = ITEM_STATES.reduce((sum, state) => sum + items[state], 0);
  if (items.given !== inStates) wrong.push(`${items.given} items were found, but ${inStates} are in a state`);
  const outputs = Object.entries(output.byOutput);
  for (const [name, { readyItems, madePages, stackPages }] of outputs) {
    if (readyItems + madePages === stackPages) continue;
    const made = madePages === 0 ? '' : ` and ${madePages} pages were made from orders`;
    const where = outputs.length === 1 ? '' : ` for ${name}`;
    wrong.push(`${readyItems} items are ready${where}${made}, but the stacks have ${stackPages} pages${where === '' ? '' : ' there'}`);
  }
  return wrong;
}
