import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { dotsPerPt, gridOf, type Grid } from '../geometry/grid.js';
import { mediaNamed, type Media } from '../geometry/media.js';
import { isDots, PLAIN_PRINTER, printableArea, type PrinterSetup } from '../geometry/printer.js';
import { dotsDocument } from '../press/dots-document.js';
import type { Placement } from '../press/place.js';
import { pressDocument } from '../press/press-document.js';
import { stampSize } from '../press/stamp.js';
import { proveDocument, type Proof, type ProofOptions } from '../proof/prove.js';
import type { Drawings } from '../proof/second-opinion.js';
import { takeCounts } from '../reading/counters.js';
import type { SourceDocument } from '../reading/source.js';
import { applyRecipe } from '../recipe/apply.js';
import type { DocumentResult, HeldPicture, ItemResult, ItemState } from '../recipe/outcome.js';
import type { Sheet } from '../sheet/sheet.js';
import { captionedPair } from './captioned.js';
import { summariesOf } from './code-summary.js';
import { failedDocument } from './failed-document.js';
import { heldPicture } from './held-picture.js';
import type { DocumentJob } from './messages.js';
import { openSource } from './open-source.js';
import { holdParcels } from './parcels.js';
import { secondOpinions } from './second-opinions.js';
import { stackPlanOf } from './stack-plan.js';
import { StageClock } from './stage-clock.js';

/** Free paper is looked for that takes the longest number that may come … */
const LONGEST_NUMBER = '1000/1000';
/** … in the type that the recipe wants, or where there is too little in this one, which can still be read (pt). */
const SMALL_TYPE = 9;

/**
 * One document from bytes to proved pages: open, apply the recipe, press, prove. Every item ends in one state; bad input ends
 * as a failed document. A throw is a bug of ours.
 */
export async function processDocument(job: DocumentJob): Promise<DocumentResult> {
  takeCounts();
  const clock = new StageClock();
  const opened = await clock.time('open', () => openSource(job.bytes));
  if ('refused' in opened) return { ...failedDocument(opened.refused), counts: takeCounts(), times: clock.times() };
  const source = withSignsOfLife(opened, job.onPage);
  try {
    const media = mediaNamed(job.media);
    const grid = gridOf(job.grid);
    const sheets = await clock.time('steps', () => applyRecipe(job.recipe, { document: source, media, grid }));
    const { number, impose } = stackPlanOf(job.recipe, job.grid);
    // What is laid on larger sheets does not come out of this printer as it is.
    const printer = impose === undefined ? (job.printer ?? PLAIN_PRINTER) : PLAIN_PRINTER;
    const numbered = number && {
      numberSize: stampSize(LONGEST_NUMBER, number.fontSize),
      leastNumberSize: number.fontSize > SMALL_TYPE ? stampSize(LONGEST_NUMBER, SMALL_TYPE) : undefined,
    };
    const made = await pressAndProve(source, sheets, { media, grid, printer }, clock, numbered ?? {});
    const differing = await clock.time('second opinion', () => secondOpinions(source, job.bytes, sheets, made.states, grid));
    // Before the pictures are made: what is held for its parcel's sake is looked at too.
    const items = holdParcels(sheets.map((sheet) => itemOf(sheet, made)));
    const pictures = await clock.time('pictures', () => picturesOf(source, items, differing));
    return {
      pageCount: source.pageCount,
      items,
      diagnostics: source.notes.map((note) => noteOf(job.shownName, note)),
      pressed: items.some((item) => item.state.kind === 'ready') ? made.bytes : undefined,
      pictures,
      times: clock.times(),
      counts: takeCounts(),
    };
  } finally {
    opened.close();
  }
}

interface Made {
  readonly bytes: Uint8Array | undefined;
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
interface Target {
  readonly media: Media;
  readonly grid: Grid;
  readonly printer: PrinterSetup;
}

async function pressAndProve(
  source: SourceDocument,
  sheets: readonly Sheet[],
  { media, grid, printer }: Target,
  clock: StageClock,
  options: ProofOptions,
): Promise<Made> {
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

const TWO_DRAWINGS = ['as it would be printed', 'as a second engine draws it'] as const;

function itemOf(sheet: Sheet, made: Made): ItemResult {
  const state = sheet.state.kind === 'planned' ? made.states.get(sheet.id) : sheet.state;
  if (state === undefined) throw new Error(`sheet ${sheet.id} was neither drawn nor refused`);
  const proof = made.proofs.get(sheet.id);
  const placement = state.kind === 'ready' ? made.placements.get(sheet.id) : undefined;
  return {
    id: sheet.id,
    page: sheet.page,
    role: sheet.role,
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
  };
}

async function picturesOf(
  source: SourceDocument,
  items: readonly ItemResult[],
  differing: ReadonlyMap<string, Drawings>,
): Promise<HeldPicture[]> {
  const pictures: HeldPicture[] = [];
  for (const item of items) {
    if (item.state.kind !== 'held' || !item.box) continue;
    const pair = differing.get(item.id);
    if (pair) {
      pictures.push({ itemId: item.id, png: await captionedPair([pair.first, pair.second], TWO_DRAWINGS) });
      continue;
    }
    const page = source.page(item.page);
    // A page without size shows nothing.
    if (page.width > 0 && page.height > 0) pictures.push({ itemId: item.id, png: await heldPicture(page, item.box, item.answers) });
  }
  return pictures;
}

const noteOf = (file: string, note: string): Diagnostic => ({
  code: 'reading/put-right',
  severity: 'note',
  message: note,
  place: { kind: 'document', file },
});

/** Tells of every page that is looked at, so that a watcher can tell long work from an endless loop. */
function withSignsOfLife(source: SourceDocument, onPage: ((page: number) => void) | undefined): SourceDocument {
  if (!onPage) return source;
  return {
    pageCount: source.pageCount,
    notes: source.notes,
    page: (number) => {
      onPage(number);
      return source.page(number);
    },
    pressSource: (page) => source.pressSource(page),
    close: () => source.close(),
  };
}
