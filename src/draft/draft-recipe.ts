import type { Reason } from '../sheet/sheet.js';
import type { Problem } from './compare.js';
import { aboutOf, headOf } from './head.js';
import { labelPagesOf, locateRungs, type Rung } from './locate-parts.js';
import { mend } from './mend.js';
import { limitsIn } from './limits-held.js';
import { part, recipeText, stepPart, type Part, type Plan } from './plan.js';
import { isUnnamed, remarksOf } from './remarks.js';
import type { Sample, Target } from './sample.js';
import { settleDoubts } from './settle-doubts.js';
import { slipParts } from './slip-parts.js';
import { isReturnPage, splitParts } from './split-parts.js';
import { splitSheets, tryQuickly, tryWhole } from './try-plan.js';

export type Drafted =
  | { readonly kind: 'recipe'; readonly text: string }
  /** No recipe passes on all samples: why, page by page, and what that comes to. */
  | { readonly kind: 'none'; readonly summary: Reason; readonly problems: readonly Problem[] };

/**
 * A recipe for documents like these: of all that pass on every sample the one that locates by the most stable evidence. `asides` are
 * further remarks for its comment.
 */
export async function draftRecipe(opened: readonly Sample[], target: Target, asides: readonly string[]): Promise<Drafted> {
  const samples = settleDoubts(opened);
  const unsettled = samples.flatMap(({ name, pages }) =>
    pages.flatMap(({ number, seen }): Problem[] =>
      seen.kind === 'unsettled' ? [{ sample: name, page: number, reason: seen.reason }] : [],
    ),
  );
  if (unsettled.length > 0) return { kind: 'none', summary: UNSETTLED, problems: unsettled };
  const none = labelPagesOf(samples).length === 0;
  const unexplained = none ? [] : samples.flatMap(unexplainedPages);
  if (unexplained.length > 0) return { kind: 'none', summary: UNSETTLED, problems: unexplained };
  if (none) return { kind: 'none', summary: NO_LABEL, problems: samples.flatMap(whatIsThere) };

  const rungs = locateRungs(samples);
  const splits = await splitsThatPass(samples, rungs, target);
  // The rung that judges each page by all it shows says what a seller can do something about.
  let problems: readonly Problem[] = [];
  let isSaid = false;
  for (const rung of rungs) {
    for (const slip of slipsFor(rung, samples)) {
      const split = splits.find(({ text }) => !rung.byItself || text.includes('by: content')) ?? BY_CONTENT;
      const found = await pass(planOf(split, rung, slip, samples), rung, { samples, target, asides });
      if (found.kind === 'recipe') return found;
      // Boxes were right: what the proof says of them no other way to locate would change.
      if (found.drawn) return { kind: 'none', summary: NO_RECIPE, problems: found.problems };
      if (!isSaid) problems = found.problems;
    }
    isSaid ||= rung.byItself;
  }
  return { kind: 'none', summary: NO_RECIPE, problems };
}

const BY_CONTENT = stepPart('split-pages', { by: 'content' }, 'Each page says by its layout and words what it is.');

function planOf(split: Part, { part: locate, byItself }: Rung, slip: Part | undefined, samples: readonly Sample[]): Plan {
  const forms = samples.some(({ pages }) =>
    pages.some(({ seen }) => seen.kind === 'customs-form' || (seen.kind === 'labels' && seen.beside.kind === 'customs-form')),
  );
  return {
    split,
    locate,
    rotate: part('rotate: upright'),
    scale: part('scale: { to: true-size, floor: 95% }'),
    slip,
    customs: forms || byItself ? part('customs-form') : undefined,
    verify: part('verify'),
  };
}

/** What `auto` finds beside a label is a slip already: it only needs to be put behind it. */
const slipsFor = ({ byItself }: Rung, samples: readonly Sample[]): readonly (Part | undefined)[] =>
  byItself ? [part('packing-slip: next-page')] : slipParts(samples);

/** The ways to split that take every page of every sample for what it is, in order. */
async function splitsThatPass(samples: readonly Sample[], rungs: readonly Rung[], target: Target): Promise<readonly Part[]> {
  const [rung] = rungs;
  const passing: Part[] = [];
  for (const split of rung ? splitParts(samples) : []) {
    const plan = rung && planOf(split, rung, undefined, samples);
    if (plan && (await Promise.all(samples.map((sample) => splitsRightly(plan, sample, target)))).every(Boolean)) passing.push(split);
  }
  return passing;
}

async function splitsRightly(plan: Plan, sample: Sample, target: Target): Promise<boolean> {
  const sheets = await splitSheets(plan, sample, target);
  return sample.pages.every((page) => {
    const sheet = sheets.find((each) => each.page === page.number);
    switch (page.seen.kind) {
      case 'labels':
        // One that stands in words on a page with other labels, too, is told by locate-label.
        return sheet?.state.kind === 'planned' && (sheet.role === 'return-label' ? isReturnPage(page) : sheet.role === 'label');
      case 'slip':
      case 'customs-form':
        return sheet?.state.kind === 'planned' && sheet.role === page.seen.kind;
      case 'other':
        return sheet?.state.kind === 'skipped';
      case 'unsettled':
        return false;
    }
  });
}

interface Trial {
  readonly samples: readonly Sample[];
  readonly target: Target;
  readonly asides: readonly string[];
}

/** Tries a plan, first without drawing, then as a run would; what one more option cures is cured. */
async function pass(
  plan: Plan,
  rung: Rung,
  trial: Trial,
  cured: readonly string[] = [],
): Promise<{ kind: 'recipe'; text: string } | { kind: 'none'; problems: readonly Problem[]; drawn: boolean }> {
  const { samples, target, asides } = trial;
  let tried = await tryQuickly(plan, samples, target, rung.outward);
  const drawn = tried.problems.length === 0;
  if (drawn) {
    const remarks = [...asides, ...remarksOf(samples, rung, plan.split.text), ...cured];
    const about = aboutOf(samples, rung.about);
    const text = recipeText(plan, { head: headOf(samples, tried.pieces, remarks, target), about });
    tried = await tryWhole(text, samples, target, rung.outward);
    if (tried.problems.length === 0) return { kind: 'recipe', text };
    // All labels are where they are: whether the carrier takes bars that break a limit no other recipe would settle.
    const limits = limitsIn(tried.problems);
    if (limits)
      return { kind: 'recipe', text: recipeText(plan, { head: headOf(samples, tried.pieces, [...remarks, limits], target), about }) };
  }
  const mended = cured.length < 3 ? mend(plan, tried, samples, target.media) : undefined;
  if (!mended) return { kind: 'none', problems: tried.problems, drawn };
  return pass(mended.plan, rung, trial, [...cured, mended.remark]);
}

/** Pages that don't say what they are in a document without a label: perhaps its label, which a recipe would then skip. */
function unexplainedPages({ name, pages }: Sample): readonly Problem[] {
  if (pages.some(({ seen }) => seen.kind === 'labels')) return [];
  return pages.filter(isUnnamed).map(({ number }) => ({ sample: name, page: number, reason: NOTHING_LIKE_ONE }));
}

const NOTHING_LIKE_ONE: Reason = {
  code: 'draft/unsettled',
  message: 'the document shows no label, and this page has no barcode and does not say what it is',
  remedy: 'Leave the document out if it has no label; if this is one without a barcode, write the recipe by hand with `verify: none`.',
};

/** What each page of a sample without labels is, as the reason why it gives no recipe. */
function whatIsThere({ name, pages }: Sample): readonly Problem[] {
  return pages.map(({ number, seen }) => {
    const words = seen.kind === 'other' || seen.kind === 'slip' || seen.kind === 'customs-form' ? seen.words : undefined;
    const blank = seen.kind === 'other' && seen.blank;
    const what = blank
      ? 'the page is blank'
      : words === undefined
        ? 'nothing on the page looks like a barcode'
        : `the page calls itself "${words}"`;
    return { sample: name, page: number, reason: { code: 'draft/no-label', message: `no label: ${what}`, remedy: NO_LABEL.remedy } };
  });
}

const NO_LABEL: Reason = {
  code: 'draft/no-label',
  message: 'no recipe: no page of these samples shows a label',
  remedy: 'Name documents of the channel that have labels; if these have, write a recipe by hand with `place` or `box` under locate-label.',
};

const UNSETTLED: Reason = {
  code: 'draft/unsettled',
  message: 'no recipe: what is on a page of these samples is not sure, so nothing could be tested',
  remedy: 'Do what is said for each page, then draft again.',
};

const NO_RECIPE: Reason = {
  code: 'draft/no-recipe',
  message: 'no recipe: none that was tried does for all of these samples',
  remedy: 'Do what is said for each page, then draft again; or sort the documents by their layout and draft a recipe for each.',
};
