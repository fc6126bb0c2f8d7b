import type { Reason } from '../sheet/sheet.js';
import { accountOf, mismatches, misprints, type Account, type PagesFor } from './account.js';
import { idOfItem, type BuiltStack } from './build-stacks.js';
import type { Collated } from './collate.js';
import type { Day } from './day.js';
import type { ChannelOutputs } from './outputs.js';
import type { StackRecord } from './run-record.js';
import type { EndedDocument } from './work-through.js';

export interface ReckoningInput {
  /** Documents as intake found them. */
  readonly taken: number;
  readonly documents: readonly EndedDocument[];
  /** Of each channel. */
  readonly outputs: readonly ChannelOutputs[];
  readonly day: Day;
  readonly collated: Collated;
  readonly stacks: readonly BuiltStack[];
}

/** Adds a run up, twice: as it is planned, before anything is drawn, and by what the press has put into the stacks. */
export class Reckoning {
  readonly planned: Account;
  /** What doesn't add up as planned; none when all is right. */
  readonly wrong: readonly string[];
  readonly #input: ReckoningInput;
  readonly #ready: readonly string[];
  readonly #made: readonly { readonly id: string; readonly output: string }[];

  constructor(input: ReckoningInput) {
    this.#input = input;
    this.#ready = readyIds(input.collated);
    this.#made = madePages(input, new Set(this.#ready));
    this.planned = this.#account(input.stacks);
    this.wrong = [...mismatches(this.planned), ...input.day.matched.mismatches];
  }

  /** The account by the stacks that were written, and what doesn't add up then. For stacks whose last piece is out. */
  printed(written: readonly StackRecord[]): { readonly account: Account; readonly wrong: readonly string[] } {
    const account = this.#account(written);
    const ids = this.#input.stacks.flatMap((stack) => stack.printed());
    return { account, wrong: [...mismatches(account), ...misprints([...this.#ready, ...this.#made.map(({ id }) => id)], ids)] };
  }

  #account(stackPages: readonly PagesFor[]): Account {
    const { taken, documents, outputs, collated } = this.#input;
    return accountOf({
      taken,
      given: documents.reduce((sum, { items }) => sum + items.length, 0),
      documents: documents.map(({ work, state, pageCount }, index) => ({
        state,
        pageCount,
        ...nameOf(outputs[work.channel]),
        items: collated.items[index] ?? [],
      })),
      madePages: this.#made.map(({ output }) => ({ output, pages: 1 })),
      stackPages,
    });
  }
}

const nameOf = (outputs: ChannelOutputs | undefined): { readonly output?: string } => (outputs ? { output: outputs.own.name } : {});

/** Pages made from orders that must be in the stacks, by `idOfItem`: those of the slips whose labels are ready. */
function madePages(
  { day, documents, outputs }: ReckoningInput,
  ready: ReadonlySet<string>,
): readonly { readonly id: string; readonly output: string }[] {
  return day.slips.flatMap(({ label, items }, index) => {
    const { work } = documents[Number(label.slice(0, label.indexOf(' ')))] ?? {};
    const own = work && outputs[work.channel]?.own;
    if (!own) throw new Error('reckoning: a slip without its label');
    return ready.has(label) ? items.map(({ id }) => ({ id: idOfItem(documents.length + index, id), output: own.name })) : [];
  });
}

const readyIds = ({ items }: Collated): string[] =>
  items.flatMap((each, document) => each.filter(({ state }) => state.kind === 'ready').map(({ id }) => idOfItem(document, id)));

export function doesNotAddUp(wrong: readonly string[]): Reason {
  return {
    code: 'batch/account',
    message: `the account does not add up, so nothing was written: ${wrong.join('; ')}`,
    remedy: 'This is an error in this program: please report it with this line.',
  };
}
