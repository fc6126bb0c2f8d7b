import type { Box } from '../geometry/box.js';
import type { Grid } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import type { Output } from '../geometry/printer.js';
import type { ImposeLayout } from '../press/impose.js';
import type { SourceDocument } from '../reading/source.js';
import type { Sheet } from '../sheet/sheet.js';
import type { Options, OptionValues } from './option.js';

/** The printer that takes pages too large for the channel's own. */
export interface LargePages {
  readonly name: string;
  readonly media: Media;
  readonly grid: Grid;
  /** The part of a page that it reaches, pt, y down. */
  readonly reach: Box;
}

/** What a document step may look at. It never draws, writes or prints. */
export interface StepContext {
  readonly document: SourceDocument;
  readonly media: Media;
  readonly grid: Grid;
  /** Left out: there is none. */
  readonly large?: LargePages | undefined;
}

interface Declared<O extends Options> {
  /** The word in the recipe, the file's name, the test's name and the prefix of its messages: one word. */
  readonly name: string;
  /** One sentence, in the imperative. */
  readonly summary: string;
  readonly options: O;
  /** The option that `name: value` sets when the value is no map. */
  readonly short: (keyof O & string) | undefined;
  /** Steps that may only stand before this one in a recipe, each with a sentence that says why. */
  readonly notBefore: Readonly<Record<string, string>>;
  /** What is wrong with options that are each fine by themselves; left out, or undefined, when nothing is. */
  together?(options: OptionValues<O>): OptionConflict | undefined;
  /**
   * What is wrong with options on this media, though they are fine together; left out, or undefined, when nothing is.
   * @param printer what the channel prints on, where it names a printer
   */
  onMedia?(options: OptionValues<O>, media: Media, printer?: Output): OptionConflict | undefined;
  /**
   * Options that say the same thing in other words: where a channel writes one of them and it contradicts the recipe, the recipe's others
   * give way in this order, as far as needed. Left out: none do.
   */
  readonly displaces?: Readonly<Partial<Record<keyof O & string, readonly (keyof O & string)[]>>>;
  /** Set when no recipe may do without this step: a sentence that says why. */
  readonly required?: string;
  /** Whether a recipe may name this step more than once; left out: it may not. */
  readonly repeatable?: boolean;
}

/** Options that contradict or lack each other: one sentence, and what to do. */
export interface OptionConflict {
  readonly message: string;
  readonly remedy: string;
}

/** Works on the sheets of one document, on a worker. */
export interface DocumentStep<O extends Options = Options> extends Declared<O> {
  readonly scope: 'document';
  /** Takes all sheets of a document in page order and gives all sheets: none may get lost. Reports by state, never throws for bad input. */
  apply(sheets: readonly Sheet[], options: OptionValues<O>, context: StepContext): Promise<readonly Sheet[]>;
}

/** Works on the whole run after proof; it only plans, the press stamps and imposes. */
export interface RunStep<O extends Options = Options> extends Declared<O> {
  readonly scope: 'run';
  /** Adds its part to what is to be done with the proved pages of this recipe; lengths in dots are dots of `grid`. */
  plan(plan: StackPlan, options: OptionValues<O>, grid: Grid): StackPlan;
}

/** What is done with proved pages: numbers, and how they are laid on sheets. Plain data. */
export interface StackPlan {
  readonly number: NumberPlan | undefined;
  readonly impose: ImposePlan | undefined;
}

export interface NumberPlan {
  /** Whether the label's page is numbered too, outside the label's own box. */
  readonly onLabelPage: boolean;
  /** Whether, where there is no free paper outside, it may stand on the label itself; left out: it may not. */
  readonly onLabel?: boolean | undefined;
  /** Size of the number in pt. */
  readonly fontSize: number;
}

export interface ImposePlan extends ImposeLayout {
  /** Media name of the sheet to print on. */
  readonly sheet: string;
  /** Whether thin lines outside the pages show where to cut; left out: no. */
  readonly cutMarks?: boolean | undefined;
}

export type Step = DocumentStep | RunStep;

export const documentStep = <const O extends Options>(step: Omit<DocumentStep<O>, 'scope'>): DocumentStep<O> => ({
  ...step,
  scope: 'document',
});
export const runStep = <const O extends Options>(step: Omit<RunStep<O>, 'scope'>): RunStep<O> => ({ ...step, scope: 'run' });
