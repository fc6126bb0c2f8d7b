import { dotsPerPt, type Grid } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import { isDots, printableArea, type PrinterSetup } from '../geometry/printer.js';
import { dotsDocument } from '../press/dots-document.js';
import type { Placement } from '../press/place.js';
import { pressDocument } from '../press/press-document.js';
import { stampSize } from '../press/stamp.js';
import { proveDocument, type Proof, type ProofOptions } from '../proof/prove.js';
import type { SourceDocument } from '../reading/source.js';
import type { ItemResult, ItemState } from '../recipe/outcome.js';
import type { Sheet } from '../sheet/sheet.js';
import type { NumberPlan } from '../steps/step.js';
import { summariesOf } from './code-summary.js';
import type { StageClock } from './stage-clock.js';

/** Free paper is looked for that takes the longest number that may come … */
const LONGEST_NUMBER = '1000/1000';
const LONGEST_ON_SLIP = `${LONGEST_NUMBER} ·WWWW`;
/** On sheets for another printer the order's number, too, and the word for it; digits are narrower, so that this is room for some 27 of them. */
const LONGEST_ELSEWHERE = `${LONGEST_ON_SLIP} · ${'W'.repeat(19)}`;
/** … in the type that the recipe wants, or where there is too little in this one, which can still be read (pt). */
const SMALL_TYPE = 9;

/** How much free paper the numbers of a recipe want. */
export const numberSizes = (number: NumberPlan | undefined): ProofOptions =>
  number === undefined
    ? {}
    : {
        numberSize: stampSize(LONGEST_NUMBER, number.fontSize),
        slipNumberSize: stampSize(LONGEST_ON_SLIP, number.fontSize),
        elsewhereNumberSize: stampSize(LONGEST_ELSEWHERE, number.fontSize),
        numberOnLabel: number.onLabel,
        leastNumberSize: number.fontSize > SMALL_TYPE ? stampSize(LONGEST_NUMBER, SMALL_TYPE) : undefined,
      };

/** What became of the sheets of a document. */
export interface Made {
  readonly bytes: Uint8Array | undefined;
  /** Pages for other printers, by their names. */
  readonly elsewhere: ReadonlyMap<string, Uint8Array>;
  readonly placements: ReadonlyMap<string, Placement>;
  readonly proofs: ReadonlyMap<string, Proof>;
  readonly states: Map<string, ItemState>;
}

/** An offset of whole dots leaves what lies on dots there. */
function wholeOffset({ x, y }: PrinterSetup['offset'], grid: Grid): PrinterSetup['offset'] {
  const whole = (pt: number): number => Math.round(pt * dotsPerPt(grid)) / dotsPerPt(grid);
  return { x: whole(x), y: whole(y) };
}

/** What pages are pressed and proved for. */
export interface Target {
  readonly media: Media;
  readonly grid: Grid;
  readonly printer: PrinterSetup;
}

/**
 * Draws the planned sheets and proves what was drawn: those that name no printer for `own`, the others each for its own media and grid.
 * @param elsewhere the other printers, by name
 */
export async function pressAndProve(
  source: SourceDocument,
  sheets: readonly Sheet[],
  own: Target,
  clock: StageClock,
  options: ProofOptions,
  elsewhere: ReadonlyMap<string, Target> = new Map(),
): Promise<Made> {
  const made = await pressFor(
    source,
    sheets.filter(({ output }) => output === undefined),
    own,
    clock,
    options,
  );
  const bytes = new Map<string, Uint8Array>();
  const all = [made];
  for (const name of new Set(sheets.flatMap(({ output }) => output ?? []))) {
    const target = elsewhere.get(name);
    if (!target) throw new Error(`press-and-prove: there is no printer ${name}`);
    const there = await pressFor(
      source,
      sheets.filter(({ output }) => output === name),
      target,
      clock,
      options,
    );
    if (there.bytes) bytes.set(name, there.bytes);
    all.push(there);
  }
  return {
    bytes: made.bytes,
    elsewhere: bytes,
    placements: new Map(all.flatMap(({ placements }) => [...placements])),
    proofs: new Map(all.flatMap(({ proofs }) => [...proofs])),
    states: new Map(all.flatMap(({ states }) => [...states])),
  };
}

async function pressFor(
  source: SourceDocument,
  sheets: readonly Sheet[],
  { media, grid, printer }: Target,
  clock: StageClock,
  options: ProofOptions,
): Promise<Omit<Made, 'elsewhere'>> {
  const {
    bytes: drawn,
    placements,
    undrawn,
  } = await clock.time('press', () => pressDocument(source, sheets, media, grid, wholeOffset(printer.offset, grid)));
  const proofs = drawn
    ? await clock.time('proof', () =>
        proveDocument(source, drawn, sheets, placements, media, grid, {
          ...options,
          reach: printableArea(printer, media),
          asDots: isDots(printer),
        }),
      )
    : [];
  const states = new Map<string, ItemState>();
  for (const { sheetId, reason } of undrawn) states.set(sheetId, { kind: 'held', ...reason });
  for (const { sheetId, verdict } of proofs) states.set(sheetId, verdict === 'proved' ? { kind: 'ready' } : { kind: 'held', ...verdict });
  const dots = proofs.flatMap((proof) => proof.dots ?? []);
  // As dots, the pages are what was proved, dot for dot, and nothing of their sources.
  const bytes = dots.length > 0 ? await clock.time('dots', () => dotsDocument(dots, media, grid)) : drawn;
  return {
    bytes,
    placements: new Map(placements.map((each) => [each.sheetId, each])),
    proofs: new Map(proofs.map((each) => [each.sheetId, each])),
    states,
  };
}

/** One sheet as it ended. Throws for a planned sheet that was neither drawn nor refused (a bug). */
export function itemOf(sheet: Sheet, made: Made): ItemResult {
  const state = sheet.state.kind === 'planned' ? made.states.get(sheet.id) : sheet.state;
  if (state === undefined) throw new Error(`sheet ${sheet.id} was neither drawn nor refused`);
  const proof = made.proofs.get(sheet.id);
  const placement = state.kind === 'ready' ? made.placements.get(sheet.id) : undefined;
  return {
    id: sheet.id,
    page: sheet.page,
    role: sheet.role,
    ...(sheet.output === undefined ? {} : { output: sheet.output }),
    state,
    box: sheet.box,
    turn: sheet.turn,
    scale: sheet.scale,
    parcel: sheet.parcel,
    ifSlipHeld: sheet.ifSlipHeld,
    evidence: [...sheet.evidence, ...(proof?.notes ?? [])],
    ...(sheet.answers ? { answers: sheet.answers } : {}),
    codes: summariesOf(proof?.codes ?? []),
    picture: proof?.picture,
    pressedPage: placement?.page,
    drawnBox: placement?.drawnBox,
    numberBox: placement && proof?.numberBox,
    ...(placement && proof?.numberOnLabel === true ? { numberOnLabel: true } : {}),
  };
}
