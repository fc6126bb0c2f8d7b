import { contains, grow, type Box } from '../geometry/box.js';
import { dotsPerPt } from '../geometry/grid.js';
import { ptToMm } from '../geometry/length.js';
import type { Turn } from '../geometry/placement.js';
import type { Survey } from '../locating/survey.js';
import { uprightTurn } from '../locating/upright.js';
import { moduleWidth } from '../proof/module-width.js';
import { unreadRows } from '../proof/unread-rows.js';
import { codeLikeAreas } from '../reading/code-like.js';
import { framesOf } from '../reading/frames.js';
import type { Code, SourcePage } from '../reading/source.js';
import type { ItemResult } from '../recipe/outcome.js';
import type { StepContext } from '../steps/step.js';
import { surveyed } from '../steps/surveyed.js';
import type { CodeOnPage, LabelOnPage, OnPage, PageKind } from './explained.js';

/** What is on a page, with the codes as read (whole numbers: they go no further than this room). */
export interface Looked {
  readonly onPage: OnPage;
  /** In the order of `onPage.codes`. */
  readonly codes: readonly Code[];
}

/** Bars are measured at 576 dpi: 13 mil are 7 pixels there. */
const MEASURED_AT = 8;
/** Beyond a code's corners its quiet zone is drawn, too, pt. */
const AROUND = 4;
/** A code may stick out of its label by this much (pt): a reader's corners are no finer. */
const EDGE = 2;
/** A held item is turned already when it is these steps, or later ones, that hold it. */
const AFTER_TURNING = /^(?:scale|packing-slip|customs-form|press|verify|batch)\//;

/**
 * Looks at a page that is fit to be used.
 * @param items what the recipe made of this page: where it knows the label, it is believed
 */
export async function lookAt(page: SourcePage, items: readonly ItemResult[], context: StepContext): Promise<Looked> {
  const survey = await surveyed(page, context);
  const codes = await codesOf(page, context);
  const located = await labelsOf(page, items, survey, context);
  const candidates = answersOf(items, survey, located.length > 0);
  const labels = located.map((label, index): LabelOnPage => ({ mark: index + 1, ...label }));
  return {
    codes,
    onPage: {
      ...kindOf(survey, labels),
      labels,
      candidates: candidates.map((box, index) => ({ mark: labels.length + index + 1, box })),
      codes: codes.map((code, index): CodeOnPage => ({
        mark: labels.length + candidates.length + index + 1,
        symbology: code.symbology,
        tail: tailOf(code),
        box: code.box,
        label: labels.find(({ box }) => contains(box, code.box, EDGE))?.mark,
        moduleMm: moduleMm(page, code),
      })),
      unreadRows: unreadRows(page, wholeOf(page), codes).length,
      frames: framesOf(page).length,
      pictures: page.images().length,
      words: page.words().length,
      crooked: page.skew !== 0 ? page.skew : page.slant.sure ? page.slant.degrees : 0,
    },
  };
}

const wholeOf = ({ width, height }: SourcePage): Box => ({ x: 0, y: 0, width, height });

/** Read as a run reads them; with every means where something looks like a code and none was read. */
async function codesOf(page: SourcePage, { grid }: StepContext): Promise<readonly Code[]> {
  const quick = await page.codes(wholeOf(page), 2 * dotsPerPt(grid));
  if (quick.length > 0 || codeLikeAreas(page).length === 0) return quick;
  return page.codes(wholeOf(page), 2 * dotsPerPt(grid), { thorough: true });
}

type Located = Omit<LabelOnPage, 'mark'>;

/** The labels by the recipe where it found them, else by the page itself. */
async function labelsOf(page: SourcePage, items: readonly ItemResult[], survey: Survey, context: StepContext): Promise<Located[]> {
  const byRecipe: Located[] = [];
  for (const { role, box, state, turn, evidence } of items) {
    if ((role !== 'label' && role !== 'return-label') || !box) continue;
    const isKnown =
      state.kind === 'ready' || (state.kind === 'held' && (AFTER_TURNING.test(state.code) || state.code.startsWith('rotate/')));
    if (!isKnown) continue;
    const isTurned = state.kind === 'ready' || AFTER_TURNING.test(state.code);
    byRecipe.push({ role, box, turn: isTurned ? turn : undefined, evidence });
  }
  if (byRecipe.length > 0) return byRecipe;
  if (survey.kind !== 'labels') return [];
  return Promise.all(
    survey.labels.map(async ({ box, returns, evidence }): Promise<Located> => ({
      role: returns === undefined ? 'label' : 'return-label',
      box,
      turn: await turnOf(page, box, context),
      evidence,
    })),
  );
}

async function turnOf(page: SourcePage, box: Box, { grid }: StepContext): Promise<Turn | undefined> {
  const upright = await uprightTurn(page, box, () => page.codes(box, 2 * dotsPerPt(grid)));
  return upright.kind === 'sure' ? upright.turn : undefined;
}

/** The answers as the pictures of held pages show them; what the page itself says only where the recipe leaves it open. */
function answersOf(items: readonly ItemResult[], survey: Survey, isLocated: boolean): readonly Box[] {
  const answers = items.flatMap((item) => item.answers ?? []);
  if (answers.length > 0 || isLocated) return answers;
  return survey.kind === 'doubtful' ? survey.candidates.map(({ box }) => box).slice(0, 4) : [];
}

function kindOf(survey: Survey, labels: readonly LabelOnPage[]): { readonly kind: PageKind; readonly about: string | undefined } {
  if (labels.length > 0) {
    const beside = survey.kind === 'labels' ? survey.rest.name?.kind : undefined;
    return {
      kind: labels.every(({ role }) => role === 'return-label') ? 'return-label' : 'label',
      about: beside === undefined ? undefined : `beside it: ${beside.replace('-', ' ')}`,
    };
  }
  switch (survey.kind) {
    case 'blank':
      return { kind: 'blank', about: undefined };
    case 'doubtful':
      return { kind: 'doubtful', about: survey.why };
    case 'named':
      return { kind: 'named', about: survey.name.kind.replace('-', ' ') };
    case 'unnamed':
      return { kind: survey.codes ? 'unnamed' : 'no-codes', about: undefined };
    case 'labels':
      return { kind: 'label', about: undefined };
  }
}

function tailOf({ bytes }: Code): string {
  return Buffer.from(bytes, 'hex')
    .toString('latin1')
    .replaceAll(/[^\x21-\x7e]/g, '')
    .slice(-4);
}

/** Measured where the code stands, drawn fine; undefined for matrix codes and where no line shows bars. */
function moduleMm(page: SourcePage, code: Code): number | undefined {
  const pixels = moduleWidth(page.render(grow(code.box, AROUND), MEASURED_AT), code);
  return pixels === undefined ? undefined : ptToMm(pixels / MEASURED_AT);
}
