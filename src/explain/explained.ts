import type { Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';
import type { Symbology } from '../reading/source.js';
import type { ItemState } from '../recipe/outcome.js';
import type { Reason, Role } from '../sheet/sheet.js';

/**
 * What `slipyard explain` says of a page. Plain data, and the shape that `--json` gives: keys are added, never changed. Boxes are pt on
 * the visible page, origin top left, y down; turns are clockwise degrees; what can't be measured is left out. Nothing in it is a name,
 * an address or a whole number.
 */
export interface ExplainedPage {
  readonly document: string;
  /** From 1. */
  readonly page: number;
  readonly pages: number;
  readonly size: PageSize;
  /** Why the page can't be looked at; `onPage` and `asItIs` are left out then. */
  readonly unfit?: Reason;
  readonly onPage?: OnPage;
  readonly asItIs?: AsItIs;
  readonly slipyard: Partial<FromPipeline> & { readonly recipe: string; readonly items: readonly WouldBe[] };
}

/** What a pipeline says of the page. */
export interface FromPipeline {
  /** The pipeline's file as people see it. */
  readonly pipeline: string;
  /** The channel that takes the document; left out: none does. */
  readonly channel?: string | undefined;
  /** The output that its labels go to, with what that printer takes: the sheet, where labels are laid on sheets. */
  readonly output: { readonly name: string; readonly media: string; readonly grid: string; readonly laidOnSheets: boolean };
}

export interface PageSize {
  /** pt, true size. */
  readonly width: number;
  readonly height: number;
  /** The known size it is, such as `letter`; undefined for an odd one. */
  readonly name: string | undefined;
}

/** What a page is, and what says so. */
export const PAGE_KINDS = ['label', 'return-label', 'doubtful', 'named', 'unnamed', 'no-codes', 'blank'] as const;
export type PageKind = (typeof PAGE_KINDS)[number];

export interface OnPage {
  readonly kind: PageKind;
  /** One phrase for people that says more: what it calls itself, why it is doubtful. */
  readonly about: string | undefined;
  readonly labels: readonly LabelOnPage[];
  /** Where what is the label isn't sure: the answers, best first. */
  readonly candidates: readonly { readonly mark: number; readonly box: Box }[];
  readonly codes: readonly CodeOnPage[];
  /** Rows of bars in which nothing could be read. */
  readonly unreadRows: number;
  readonly frames: number;
  readonly pictures: number;
  /** Words of the text layer; 0 where there is none. */
  readonly words: number;
  /** Degrees by which the page as given lies crooked (clockwise); 0 for a straight one. Everything else here is of the page straightened. */
  readonly crooked: number;
}

/** `mark` is the number on the picture, from 1 on each page. */
export interface LabelOnPage {
  readonly mark: number;
  readonly role: 'label' | 'return-label';
  readonly box: Box;
  /** The turn that makes it lie on the media as it should; left out when that isn't sure. */
  readonly turn: Turn | undefined;
  readonly evidence: readonly string[];
}

export interface CodeOnPage {
  readonly mark: number;
  readonly symbology: Symbology;
  /** The last four printable characters. */
  readonly tail: string;
  readonly box: Box;
  /** The mark of the label that it is on; left out for one beside the labels. */
  readonly label: number | undefined;
  /** Width of a module on the page, mm; left out for matrix and stacked codes and where bars can't be measured. */
  readonly moduleMm: number | undefined;
}

/** What comes of a page that is sent to the printer as it is, fitted to the media. */
export interface AsItIs {
  /** The media's name and the printer's grid. */
  readonly media: string;
  readonly grid: string;
  /** How large the page is printed; 1 is true size. */
  readonly factor: number;
  /** Whether the page is fitted turned by a quarter, as print dialogs do with a page that lies while the media stands. */
  readonly pageTurned: boolean;
  /** The factor where the dialog doesn't turn it; left out when the page isn't turned. */
  readonly factorUnturned: number | undefined;
  readonly labels: readonly PrintedLabel[];
  readonly codes: readonly PrintedCode[];
  readonly verdict: Verdict;
}

export const LYINGS = ['upright', 'on-its-side', 'upside-down', 'along', 'not-sure'] as const;
export type Lying = (typeof LYINGS)[number];

export interface PrintedLabel {
  readonly mark: number;
  /** Size on the print, pt. */
  readonly width: number;
  readonly height: number;
  /** Share of the print's area that the label takes, 0 to 1. */
  readonly share: number;
  /** `along`: upright or upside down, as the dialog turns the page. */
  readonly lies: Lying;
  /** The turn that the print would need; left out when it isn't sure. */
  readonly turnNeeded: Turn | undefined;
}

/** `too-fine`: below what any linear code may have. `under-range`: below what is published for its number. */
export const STANDINGS = ['too-fine', 'under-range', 'in-range', 'over-range', 'not-measured'] as const;
export type Standing = (typeof STANDINGS)[number];

export interface PrintedCode {
  readonly mark: number;
  readonly standing: Standing;
  /** Width of a module on the print in dots of the grid and in mil (1/1000 in); left out when not measured. */
  readonly moduleDots: number | undefined;
  readonly moduleMil: number | undefined;
  readonly range: PublishedRange | undefined;
  /** Whether it still can be read from the printer's dots when they are burnt without a fault: a lenient judge. */
  readonly readBack: boolean;
}

export interface PublishedRange {
  readonly leastMil: number;
  /** Left out where no upper limit was found. */
  readonly mostMil: number | undefined;
  readonly source: string;
  readonly trust: 'primary' | 'secondary' | 'computed' | 'from memory';
}

export const VERDICTS = ['fit', 'turned', 'not-true-size', 'not-read', 'under-range', 'too-fine', 'not-measured', 'no-label'] as const;

export interface Verdict {
  readonly kind: (typeof VERDICTS)[number];
  /** One sentence. */
  readonly sentence: string;
}

/** What a run would make of an item of the page. */
export interface WouldBe {
  /** As in run.json: `p1`, `p1.2`. */
  readonly item: string;
  readonly role: Role;
  readonly state: ItemState['kind'];
  /** Why it isn't printed; left out when ready. */
  readonly reason: Reason | undefined;
  /** The other output that it goes to, as a form too large for labels does; left out: where labels go. */
  readonly output?: string;
  readonly box: Box | undefined;
  readonly turn: Turn;
  readonly scale: number;
  /** The narrowest bars among its proved codes, on the print; left out when none is measured. */
  readonly moduleDots: number | undefined;
  readonly moduleMil: number | undefined;
  /** Codes read back from the print and equal to the source's. */
  readonly codesProved: number;
  readonly evidence: readonly string[];
}
