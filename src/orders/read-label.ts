import { fold, tokensOf } from './fold.js';
import type { LabelFacts } from './label-facts.js';
import { nameLine, type NameLine } from './person-name.js';
import { postcodesIn } from './postcode.js';

/** What a label says, made ready for comparing once. */
export interface ReadLabel {
  readonly facts: LabelFacts;
  /** Its lines, folded. */
  readonly lines: readonly string[];
  readonly names: readonly NameLine[];
  /** What each line may say as postcodes. */
  readonly postcodes: readonly (readonly string[])[];
  /** The same of all lines. */
  readonly anyPostcode: ReadonlySet<string>;
}

/** The parts are made when they are first asked for: a label that its tracking number settles needs few. */
export function readLabel(facts: LabelFacts): ReadLabel {
  let lines: readonly string[] | undefined;
  let names: readonly NameLine[] | undefined;
  let postcodes: readonly (readonly string[])[] | undefined;
  let anyPostcode: ReadonlySet<string> | undefined;
  const label: ReadLabel = {
    facts,
    get lines() {
      return (lines ??= facts.lines.map(fold));
    },
    get names() {
      return (names ??= label.lines.map(nameLine));
    },
    get postcodes() {
      return (postcodes ??= label.lines.map((line) => postcodesIn(line, tokensOf(line))));
    },
    get anyPostcode() {
      return (anyPostcode ??= new Set(label.postcodes.flat()));
    },
  };
  return label;
}
