import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { gridOf } from '../geometry/grid.js';
import { mediaNamed } from '../geometry/media.js';
import { printableArea, type Output } from '../geometry/printer.js';
import type { Drawings } from '../proof/second-opinion.js';
import { takeCounts } from '../reading/counters.js';
import type { SourceDocument } from '../reading/source.js';
import { applyRecipe } from '../recipe/apply.js';
import type { DocumentResult, HeldPicture, ItemResult, LabelText } from '../recipe/outcome.js';
import { isLabel, type Sheet } from '../sheet/sheet.js';
import { captionedPair } from './captioned.js';
import { failedDocument } from './failed-document.js';
import { heldPicture } from './held-picture.js';
import { labelText } from './label-texts.js';
import type { DocumentJob } from './messages.js';
import { openSource } from './open-source.js';
import { holdParcels } from './parcels.js';
import type { LargePages } from '../steps/step.js';
import { itemOf, numberSizes, pressAndProve, type Made, type Target } from './press-and-prove.js';
import { secondOpinions } from './second-opinions.js';
import { printerOf, stackPlanOf } from './stack-plan.js';
import { StageClock } from './stage-clock.js';

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
    const large = job.large && largePagesOf(job.large);
    const sheets = await clock.time('steps', () => applyRecipe(job.recipe, { document: source, media, grid, large }));
    const plan = stackPlanOf(job.recipe, job.grid);
    const printer = printerOf(plan, job.printer);
    const elsewhere = new Map(job.large ? [[job.large.name, targetOf(job.large)]] : []);
    const made = await pressAndProve(source, sheets, { media, grid, printer }, clock, numberSizes(plan.number), elsewhere);
    const differing = await clock.time('second opinion', () => secondOpinions(source, job.bytes, sheets, made.states, grid));
    // Before the pictures are made: what is held for its parcel's sake is looked at too.
    const items = holdParcels(sheets.map((sheet) => itemOf(sheet, made)));
    const pictures = await clock.time('pictures', () => picturesOf(source, items, differing));
    return {
      pageCount: source.pageCount,
      items,
      diagnostics: source.notes.map((note) => noteOf(job.shownName, note)),
      pressed: items.some(({ state, output }) => state.kind === 'ready' && output === undefined) ? made.bytes : undefined,
      ...pressedElsewhere(items, made),
      pictures,
      ...(job.texts === true ? { texts: textsOf(source, sheets, items, made) } : {}),
      times: clock.times(),
      counts: takeCounts(),
    };
  } finally {
    opened.close();
  }
}

const targetOf = ({ media, grid, printer }: Output): Target => ({ media: mediaNamed(media), grid: gridOf(grid), printer });

/** What steps may know of the printer for large pages. */
function largePagesOf({ name, media: mediaName, grid, printer }: Output): LargePages {
  const media = mediaNamed(mediaName);
  const area = printableArea(printer, media);
  if (!area) throw new Error(`process-document: ${name} prints nothing of ${mediaName}`);
  // Steps lay pages in the middle; the press moves them.
  const reach = { ...area, x: area.x - printer.offset.x, y: area.y - printer.offset.y };
  return { name, media, grid: gridOf(grid), reach };
}

function pressedElsewhere(items: readonly ItemResult[], { elsewhere }: Made): Pick<DocumentResult, 'pressedElsewhere'> {
  const wanted = [...elsewhere].filter(([name]) => items.some(({ state, output }) => state.kind === 'ready' && output === name));
  return wanted.length > 0 ? { pressedElsewhere: new Map(wanted) } : {};
}

function textsOf(source: SourceDocument, sheets: readonly Sheet[], items: readonly ItemResult[], { proofs }: Made): LabelText[] {
  return sheets.flatMap((sheet, index) =>
    (isLabel(sheet) || sheet.role === 'slip') && isLeft(items[index])
      ? [labelText(sheet, source.page(sheet.page), proofs.get(sheet.id)?.codes ?? [])]
      : [],
  );
}

/** What a held label says tells which order waits for it. */
const isLeft = (item: ItemResult | undefined): boolean => item?.state.kind === 'ready' || item?.state.kind === 'held';

const TWO_DRAWINGS = ['as it would be printed', 'as a second engine draws it'] as const;

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
