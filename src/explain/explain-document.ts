import { openSource } from '../batch/open-source.js';
import { processDocument } from '../batch/process-document.js';
import type { CompiledRecipe } from '../config/recipe.js';
import { gridOf, type Grid } from '../geometry/grid.js';
import { isMediaSize, MEDIA_NAMES, mediaNamed, parseMedia } from '../geometry/media.js';
import type { Output } from '../geometry/printer.js';
import type { SourceDocument, SourcePage } from '../reading/source.js';
import type { ItemResult } from '../recipe/outcome.js';
import type { Reason } from '../sheet/sheet.js';
import { asItIs } from './as-it-is.js';
import { drawPage } from './draw-page.js';
import type { ExplainedPage, FromPipeline, PageSize, WouldBe } from './explained.js';
import { lookAt } from './on-page.js';

export interface ExplainJob {
  readonly bytes: Uint8Array;
  /** The name that people see. */
  readonly shownName: string;
  readonly recipe: CompiledRecipe;
  /** Where its labels go; where they are laid on sheets, its media is the label's. Checked before. */
  readonly output: Output;
  /** The printer for pages too large for that; left out: there is none. */
  readonly large?: Output | undefined;
  /** What the printer itself takes, a media name: the sheet, where labels are laid on sheets of an output; left out: what the output's media says. */
  readonly paper?: string | undefined;
  /** Where the output and the recipe come from, and the output's name where it is worth saying; left out: they were typed. */
  readonly from?: FromPipeline | undefined;
  /** Whether each page is to be drawn with its marks. */
  readonly pictures: boolean;
}

export interface ExplainedDocument {
  readonly pages: readonly ExplainedPage[];
  /** PNG, one for each page that can be looked at, in their order; none unless asked for. */
  readonly pictures: readonly Uint8Array[];
  /** What was put right on opening, one sentence each. */
  readonly notes: readonly string[];
}

/** Explains every page of a document; `refused` says in one line why it can't be read. Writes nothing. */
export async function explainDocument(job: ExplainJob): Promise<ExplainedDocument | { readonly refused: Reason }> {
  const document = await openSource(job.bytes);
  if ('refused' in document) return document;
  try {
    const { items } = await processDocument({ ...job, ...job.output });
    const pages: ExplainedPage[] = [];
    const pictures: Uint8Array[] = [];
    for (let number = 1; number <= document.pageCount; number += 1) {
      const page = document.page(number);
      const explained = await explainPage(
        page,
        items.filter((item) => item.page === number),
        document,
        job,
      );
      pages.push(explained);
      if (job.pictures && explained.onPage) pictures.push(await drawPage(page, explained.onPage));
    }
    return { pages, pictures, notes: document.notes };
  } finally {
    document.close();
  }
}

async function explainPage(
  page: SourcePage,
  items: readonly ItemResult[],
  document: SourceDocument,
  job: ExplainJob,
): Promise<ExplainedPage> {
  const { output, large, paper = output.media, from, recipe } = job;
  const grid = gridOf(output.grid);
  const base = { document: job.shownName, page: page.number, pages: document.pageCount, size: sizeOf(page) };
  const slipyard = {
    recipe: recipe.name,
    ...from,
    items: items.map((item) => wouldBe(item, item.output === undefined || !large ? grid : gridOf(large.grid))),
  };
  if (page.unfit) return { ...base, unfit: page.unfit, slipyard };
  const context = { media: mediaNamed(output.media), grid, document };
  const looked = await lookAt(page, items, context);
  return { ...base, onPage: looked.onPage, asItIs: await asItIs(page, looked, { ...context, media: mediaNamed(paper) }), slipyard };
}

function sizeOf({ width, height }: SourcePage): PageSize {
  const name = MEDIA_NAMES.find((each) => {
    const media = parseMedia(each);
    return media !== undefined && isMediaSize(media, width, height);
  });
  return { width, height, name };
}

function wouldBe({ id, role, state, output, box, turn, scale, codes, evidence }: ItemResult, grid: Grid): WouldBe {
  const measured = codes.flatMap(({ moduleDots }) => moduleDots ?? []);
  const moduleDots = measured.length > 0 ? Math.min(...measured) : undefined;
  return {
    item: id,
    role,
    state: state.kind,
    reason: state.kind === 'ready' ? undefined : { code: state.code, message: state.message, remedy: state.remedy },
    ...(output === undefined ? {} : { output }),
    box,
    turn,
    scale,
    moduleDots,
    moduleMil: moduleDots === undefined ? undefined : (moduleDots / grid.dpi) * 1000,
    codesProved: codes.length,
    evidence,
  };
}
