import { foldedLine, type FoldedLine } from './fold.js';
import type { LabelFacts } from './label-facts.js';
import { nameLine, type NameLine } from './person-name.js';
import { postcodesIn } from './postcode.js';

/** What a label says, made ready for comparing. Each part is made when it is first asked for: a clear tracking number needs few. */
export class ReadLabel {
  readonly facts: LabelFacts;
  #lines: readonly FoldedLine[] | undefined;
  #names: readonly NameLine[] | undefined;
  #postcodes: readonly (readonly string[])[] | undefined;
  #anyPostcode: ReadonlySet<string> | undefined;

  constructor(facts: LabelFacts) {
    this.facts = facts;
  }

  /** Its lines, folded. */
  get lines(): readonly FoldedLine[] {
    return (this.#lines ??= this.facts.lines.map(foldedLine));
  }

  get names(): readonly NameLine[] {
    return (this.#names ??= this.lines.map(nameLine));
  }

  /** What each line may say as postcodes. */
  get postcodes(): readonly (readonly string[])[] {
    return (this.#postcodes ??= this.lines.map(postcodesIn));
  }

  /** The same of all lines. */
  get anyPostcode(): ReadonlySet<string> {
    return (this.#anyPostcode ??= new Set(this.postcodes.flat()));
  }

  /** Lets go of what was made: ten thousand labels need it only one after the other. It is made anew when it is asked for. */
  forget(): void {
    this.#lines = this.#names = this.#postcodes = this.#anyPostcode = undefined;
  }
}
