import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';

/** What a sheet is. `page` is a page that no step has judged yet; `remainder` is what a located label leaves of its page. */
export const ROLES = ['page', 'label', 'return-label', 'slip', 'customs-form', 'remainder'] as const;
export type Role = (typeof ROLES)[number];

/** Why something is not printed, as data: a code, one sentence, and what the user can do. */
export interface Reason {
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly remedy: string;
  /** Limit of `verify` that a recipe may set aside for it; left out: none. */
  readonly allow?: string;
  /** What the other pages of its parcel are told, which are held with it; left out: that it is held. */
  readonly forParcel?: string;
}

/** `planned` sheets are drawn and proved; the others are not drawn at all. */
export type SheetState = { readonly kind: 'planned' } | ({ readonly kind: 'held' } & Reason) | ({ readonly kind: 'skipped' } & Reason);

/** What the press draws: a region of the source page, or lines of text set anew (a re-flowed slip). */
export type Content = { readonly kind: 'region' } | { readonly kind: 'text'; readonly lines: readonly string[]; readonly fontSize: number };

/** A row of bars that the press draws anew on whole dots, in the place of the source's. Its modules are the source's own: nothing is encoded. */
export interface RedrawnCode {
  /** The source's bars and nothing else, pt on the source page. */
  readonly box: Box;
  /** Which way the row runs on the source page: along x (`level`) or along y. */
  readonly run: 'level' | 'upright';
  /** Widths of bar, space, bar … in modules, from the left or the top of the source page. */
  readonly modules: readonly number[];
  /** Dots a module on the output page; a whole number. */
  readonly moduleDots: number;
  /** Where the middle of the new row lies along the run, pt on the source page. */
  readonly middle: number;
}

/** What is to be proved of a drawn sheet. `codes: 'none'`: the recipe says that this channel's labels carry no code. */
export interface ProofPlan {
  readonly codes: 'required' | 'none';
  /** By how much bars may print wider or narrower, dots; left out: half a dot. */
  readonly gain?: number;
  /** Limits that the recipe sets aside; left out: none. */
  readonly allow?: readonly string[];
  /** When a second engine draws the source too; left out: never. */
  readonly secondOpinion?: 'never' | 'at-risk' | 'always';
}

/**
 * The one value that everything hands on: which region of which page becomes one output page, and how. Plain data: it
 * crosses threads as it is and prints as JSON. Steps return changed copies and never draw.
 */
export interface Sheet {
  /** Unique in its document and stable from run to run: `p3` for a page, `p3.2` for the second item on it. */
  readonly id: string;
  /** Page of the source document, from 1. */
  readonly page: number;
  readonly role: Role;
  /** Name of the printer that it goes to where that is not its channel's own; left out: its channel's own. */
  readonly output?: string;
  readonly state: SheetState;
  readonly content: Content;
  /** The region of the source page, pt on the visible page, y down. */
  readonly box: Box;
  /** Clockwise turn that brings the region to how it lies on the output page. */
  readonly turn: Turn;
  /** Uniform factor; 1 is true size. */
  readonly scale: number;
  /** A point of the source page (pt) that comes to lie on an edge between dots, both ways; left out: it lies where it happens to. */
  readonly onDots?: { readonly x: number; readonly y: number };
  /** Whether the recipe leaves bars as the channel drew them, on whole dots or not; left out: they are brought there where that can be. */
  readonly barsAsDrawn?: true;
  /** Rows of bars that moving and scaling can't bring onto whole dots; left out: none. */
  readonly redrawn?: readonly RedrawnCode[];
  /** Clear border of the output page that nothing may be drawn into, pt. */
  readonly margin: number;
  /** Sheets with the same number (from 1 in a document) are one parcel: a label, then its slip and other pages. */
  readonly parcel: number | undefined;
  /** With `release`, a label goes on although its slip is held; with `hold` (the default) they are held together. */
  readonly ifSlipHeld: 'hold' | 'release';
  readonly proof: ProofPlan | undefined;
  /** What a person can check, one short phrase each: "frame 6.00×4.00 in around 2 codes". */
  readonly evidence: readonly string[];
  /** Of a page held for more than one answer: the answers, best first, to be numbered on its picture from 1. */
  readonly answers?: readonly Box[];
}

/** The sheet of a whole page that no step has judged yet. */
export function pageSheet(page: number, width: number, height: number): Sheet {
  return {
    id: `p${page}`,
    page,
    role: 'page',
    state: { kind: 'planned' },
    content: { kind: 'region' },
    box: { x: 0, y: 0, width, height },
    turn: 0,
    scale: 1,
    margin: 0,
    parcel: undefined,
    ifSlipHeld: 'hold',
    proof: undefined,
    evidence: [],
  };
}

export const held = (sheet: Sheet, reason: Reason): Sheet => ({ ...sheet, state: { kind: 'held', ...reason } });
export const skipped = (sheet: Sheet, reason: Reason): Sheet => ({ ...sheet, state: { kind: 'skipped', ...reason } });
export const isPlanned = (sheet: Sheet): boolean => sheet.state.kind === 'planned';
export const isLabel = (sheet: Pick<Sheet, 'role'>): boolean => sheet.role === 'label' || sheet.role === 'return-label';
