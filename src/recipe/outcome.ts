import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';
import type { LabelCode } from '../orders/label-facts.js';
import type { CodeRole, CodeUse } from '../proof/code-role.js';
import type { Symbology } from '../reading/source.js';
import type { Reason, Role } from '../sheet/sheet.js';

/** Where an item ended. Each item is in exactly one of these. */
export type ItemState =
  | { readonly kind: 'ready' }
  | ({ readonly kind: 'held' } & Reason)
  | ({ readonly kind: 'skipped' } & Reason)
  | ({ readonly kind: 'failed' } & Reason);
export type ItemStateKind = ItemState['kind'];
export const ITEM_STATES: readonly ItemStateKind[] = ['ready', 'held', 'skipped', 'failed'];

/** A code as the account may tell it: never the whole number. */
export interface CodeSummary {
  readonly symbology: Symbology;
  readonly identifier: string;
  /** What it is for; only a `tracking` code is the parcel's own. */
  readonly role: CodeRole;
  /** Of a tracking code: SHA-256 of the number alone, hex, the same in every code that carries it; and how sure the role is. */
  readonly tracking?: {
    readonly digest: string;
    readonly trust: CodeUse['trust'];
    /** The last four characters of the number itself; left out for one of eight or fewer. */
    readonly tail?: string;
  };
  /**
   * SHA-256 of identifier and bytes, hex: the same code twice can be seen without being told, in this run and in others. No secret: who has the account
   * and guesses the number can see that it is right.
   */
  readonly digest: string;
  /** The last four printable characters; empty for a code of eight or fewer. */
  readonly tail: string;
  /** Width of a module on the output page in dots of the grid; undefined where it isn't measured. */
  readonly moduleDots: number | undefined;
  /** Dots a module where the press drew the code anew in its place, from its own modules. */
  readonly redrawn?: number;
  /** Of a row of bars: what was measured on the printer's dots. */
  readonly bars?: BarFigures;
  /** Of a matrix or stacked code: what was measured on the printer's dots. */
  readonly matrix?: MatrixFigures;
  /** Of a MaxiCode, which has one size: the same. */
  readonly maxicode?: MaxiCodeFigures;
}

/** Figures of a MaxiCode on the printer's dots, rounded. */
export interface MaxiCodeFigures {
  /** Of the symbol without its clear paper; 26.4 by its standard. */
  readonly widthMm: number;
  /** Clear paper on the worst side, in modules; 2 means 2 or more. */
  readonly quietModules: number;
}

/** Figures of a row of bars on the printer's dots, rounded. Simulated: no verifier measured anything. */
export interface BarFigures {
  readonly moduleMm: number;
  readonly moduleMil: number;
  readonly barHeightMm: number;
  /** Clear paper at the worse end, in modules; 20 means 20 or more. */
  readonly quietModules: number;
  /** Without gain, and with the stated gain off or on, whichever is worse; `onTwin`: on the grid that a driver may use instead. */
  readonly decodability: { readonly asPlanned: number; readonly atGain: number; readonly onTwin?: number };
  readonly modulation: number;
  readonly defects: number;
  /** 0 to 4. */
  readonly simulatedGrade: number;
  readonly notSimulated: readonly ['symbol contrast', 'reflectance'];
}

/** Figures of a matrix or stacked code on the printer's dots, rounded. Simulated: no verifier measured anything. */
export interface MatrixFigures {
  /** Modules across and down the page; of PDF417 modules one way and rows of bars the other. */
  readonly columns: number;
  readonly rows: number;
  readonly moduleDots: number;
  readonly moduleMm: number;
  readonly moduleMil: number;
  /** Of PDF417. */
  readonly rowHeightModules?: number;
  /** Clear paper on the worst side, in modules; 10 means 10 or more. */
  readonly quietModules: number;
  /** ISO/IEC 15415; the steps of their grades are known from memory only. The first not of PDF417. */
  readonly axialNonUniformity?: number;
  readonly gridNonUniformity: number;
  /** Of the least clear module: without gain, and with the stated gain off or on, whichever is worse. */
  readonly modulation: { readonly asPlanned: number; readonly atGain: number };
  readonly unusedErrorCorrection?: number;
  /** 0 to 4. */
  readonly simulatedGrade: number;
  readonly notSimulated: readonly ['symbol contrast', 'reflectance', 'fixed pattern damage'];
}

export interface ItemResult {
  readonly id: string;
  /** From 1; 0 for a document that can't be opened. */
  readonly page: number;
  readonly role: Role;
  /** Name of the printer that it goes to where that is not its channel's own; left out: its channel's own. */
  readonly output?: string;
  readonly state: ItemState;
  readonly box: Box | undefined;
  readonly turn: Turn;
  readonly scale: number;
  readonly parcel: number | undefined;
  /** From the sheet; left out it means `hold`: the parcel is held when this slip is. */
  readonly ifSlipHeld?: 'hold' | 'release';
  readonly evidence: readonly string[];
  /** Of a page held for more than one answer: the answers as its picture numbers them, from 1. */
  readonly answers?: readonly Box[];
  readonly codes: readonly CodeSummary[];
  /** SHA-256 of the printed dots before anything is stamped, hex; undefined for what was not drawn. */
  readonly picture?: string | undefined;
  /** Page of `DocumentResult.pressed`, or of `pressedElsewhere` where it has an output, from 1, for ready items; else undefined. */
  readonly pressedPage: number | undefined;
  /** Where on the output page the item itself lies (pt, y down): a number is stamped only outside it, unless the recipe asks for it on the label. */
  readonly drawnBox: Box | undefined;
  /** A rectangle of the output page known to be free for a number, or undefined when there is none. */
  readonly numberBox: Box | undefined;
  /** Whether that rectangle lies on the label itself, where its recipe asks for that; left out: it doesn't. */
  readonly numberOnLabel?: boolean;
}

/** The picture of a held item, as PNG. */
export interface HeldPicture {
  readonly itemId: string;
  readonly png: Uint8Array;
}

/** ms of a worker's wall clock by stage: of work and of waiting for a core. Goes to a file of its own, never into run.json. */
export type StageTimes = Readonly<Record<string, number>>;

/** What doesn't depend on the machine. */
export interface WorkCounts {
  readonly documentsOpened: number;
  readonly sourceRasters: number;
  readonly outputRasters: number;
  readonly decodes: number;
}

/** What a label says, or a channel's own slip, for matching it with its order. Personal data: in memory only, never written. */
export interface LabelText {
  readonly itemId: string;
  readonly codes: readonly LabelCode[];
  /** Lines of type, in reading order; none when it is a picture. */
  readonly lines: readonly string[];
}

/** Same shape for success and failure: a document that can't be opened has no pages and one failed item. */
export interface DocumentResult {
  readonly pageCount: number;
  readonly items: readonly ItemResult[];
  readonly diagnostics: readonly Diagnostic[];
  /** A PDF with one output page for each ready item of the channel's own printer, in the order of `items`; undefined when none is ready. */
  readonly pressed: Uint8Array | undefined;
  /** The same for items that go to another printer, by its name; left out: there are none. */
  readonly pressedElsewhere?: ReadonlyMap<string, Uint8Array>;
  readonly pictures: readonly HeldPicture[];
  /** Of each ready label, where the job asks for it. */
  readonly texts?: readonly LabelText[];
  readonly times: StageTimes;
  readonly counts: WorkCounts;
}
