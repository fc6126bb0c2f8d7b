import { isMediaSize, type Media } from '../geometry/media.js';
import { locate } from '../locating/locate.js';
import { said } from '../locating/kind-of-words.js';
import type { Survey } from '../locating/survey.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { held, isPlanned, pageSheet, skipped, type Reason, type Sheet } from '../sheet/sheet.js';
import { continued } from './continued-form.js';
import { option, type OptionValues } from './option.js';
import { pagesMatch } from './pages.js';
import { documentStep, type StepContext } from './step.js';
import { heldForAnswers, surveyed } from './surveyed.js';

const OPTIONS = {
  by: option(
    { kind: 'choice', values: ['position', 'content'] },
    'What says which page is what: its position in the document, or the page itself by its layout and words.',
    'position',
  ),
  labels: option({ kind: 'pages' }, 'Pages that are labels.', 'every'),
  slips: option({ kind: 'pages' }, 'Pages that are packing slips; they are taken out of the labels.', 'none'),
  returns: option({ kind: 'pages' }, 'Pages that are return labels: parcels of their own, never between a label and its slip.', 'none'),
  skip: option({ kind: 'pages' }, 'Pages that are neither; each is named in the account.', 'none'),
  'label-words': option({ kind: 'phrases' }, 'A page with one of these phrases is a label, whatever its position.', []),
  'slip-words': option({ kind: 'phrases' }, 'A page with one of these phrases is a packing slip, whatever its position.', []),
  'return-words': option({ kind: 'phrases' }, 'A page with one of these phrases is a return label, whatever its position.', []),
  'skip-words': option({ kind: 'phrases' }, 'A page with one of these phrases is skipped, whatever its position.', []),
  'without-code': option(
    { kind: 'choice', values: ['label', 'skip', 'hold'] },
    'What becomes of a label page on which nothing looks like a barcode: still a label, skipped, or held for a look.',
    'label',
  ),
} as const;

type Values = OptionValues<typeof OPTIONS>;

/** Decides for each page of the document whether it is a label, a slip, or to be skipped: by position, words, or what is on it. */
export const splitPages = documentStep({
  name: 'split-pages',
  summary: 'Take the document apart into pages: labels, packing slips, and pages to skip.',
  options: OPTIONS,
  short: 'labels',
  required: 'it says which pages are labels',
  notBefore: {},
  together(options) {
    const idle = (['labels', 'slips', 'returns', 'without-code'] as const).find((name) => options[name] !== OPTIONS[name].default);
    if (options.by === 'position' || idle === undefined) return undefined;
    return { message: `\`${idle}\` has no effect with \`by: content\`, where each page says what it is`, remedy: 'Keep one of them.' };
  },
  async apply(sheets, options, context) {
    const judged: Sheet[] = [];
    // The last page of the customs form that the pages just before belong to.
    let form: SourcePage | undefined;
    for (const sheet of sheets) {
      if (sheet.role !== 'page') judged.push(sheet);
      else if (!isPlanned(sheet)) judged.push(unseen(sheet, options, context.document.pageCount));
      else {
        const page = context.document.page(sheet.page);
        const made = await judge(sheet, options, context);
        const settled = form ? continued(made, page, form) : made;
        if (settled.role !== 'customs-form') form = undefined;
        else if (isPlanned(settled)) form = page;
        judged.push(settled);
      }
    }
    return judged;
  },
});

async function judge(sheet: Sheet, options: Values, context: StepContext): Promise<Sheet> {
  const { document, media } = context;
  const page = document.page(sheet.page);
  const says = (phrases: readonly string[]): string | undefined => phrases.find((phrase) => pageText(page).includes(fold(phrase)));
  const fresh: Sheet = { ...pageSheet(page.number, page.width, page.height), ...sheet };

  const skipWord = says(options['skip-words']);
  if (skipWord !== undefined) return skip(fresh, `the page says "${skipWord}"`);
  const slipWord = says(options['slip-words']);
  if (slipWord !== undefined) {
    return holdsLabel(page, media)
      ? held(fresh, sharedPage(slipWord))
      : { ...fresh, role: 'slip', evidence: [`the page says "${slipWord}"`] };
  }
  const returnWord = says(options['return-words']);
  if (returnWord !== undefined) return { ...fresh, role: 'return-label', evidence: [`the page says "${returnWord}"`] };
  const labelWord = says(options['label-words']);
  if (labelWord !== undefined) return { ...fresh, role: 'label', evidence: [`the page says "${labelWord}"`] };

  if (options.by === 'content') {
    return pagesMatch(options.skip, sheet.page, document.pageCount)
      ? skip(fresh, `page ${sheet.page} is to be skipped`)
      : byContent(fresh, await surveyed(page, context));
  }
  const placed = byPosition(fresh, options, document.pageCount);
  if (!isPlanned(placed)) return placed;
  if (placed.role === 'slip') return (await isLabelPage(page, context)) ? held(placed, ownLabel(page.number)) : placed;
  if (placed.role !== 'label') return placed;
  if (options['without-code'] !== 'label' && codeLikeAreas(page).length === 0) return withoutCode(fresh, options['without-code']);
  return placed;
}

/** Whether a page that was taken for a slip by its position is one of labels by itself: its number would be printed small, behind another's label. */
const isLabelPage = async (page: SourcePage, context: StepContext): Promise<boolean> =>
  codeLikeAreas(page).length > 0 && (await surveyed(page, context)).kind === 'labels';

/** @param number of the page, from 1 */
const ownLabel = (number: number): Reason => ({
  code: 'split-pages/own-label',
  message: `page ${number} has a label of its own: is this recipe right for this channel?`,
  forParcel: `page ${number}, which the recipe takes for its packing slip, has a label of its own`,
  remedy:
    'If its pages are labels, or differ, write `recipe: any-page`, which finds labels, slips and forms by itself. If this page is a slip all the same, name a phrase that stands on such pages: `split-pages: { slip-words: [packing slip] }`.',
});

/** What the page is by itself. One that holds labels stays whole: locate-label takes it apart. */
function byContent(sheet: Sheet, seen: Survey): Sheet {
  switch (seen.kind) {
    case 'labels':
      return { ...sheet, role: 'label' };
    case 'doubtful':
      return heldForAnswers(sheet, 'split-pages/doubtful', seen.why, seen.candidates);
    case 'named': {
      const says = `the page calls itself "${seen.name.words}"`;
      if (seen.name.kind === 'packing-slip') return { ...sheet, role: 'slip', evidence: [says] };
      if (seen.name.kind === 'customs-form') return { ...sheet, role: 'customs-form', evidence: [says] };
      return skip(sheet, says, WORDS_SAY);
    }
    case 'blank':
      return skip(
        sheet,
        'the page is blank',
        'Nothing to do; if you see a label on it, open it in a viewer, print it to a new PDF there, and use that one.',
      );
    case 'unnamed':
      return seen.codes ? held(sheet, UNKNOWN) : skipped(sheet, { ...NO_CODE, remedy: BY_POSITION });
  }
}

const UNKNOWN: Reason = {
  code: 'split-pages/unknown',
  message: 'the page has codes, but nothing on it is like a label',
  remedy:
    'Look at the picture; if there is a label, give such pages a channel of their own with the options `split-pages: { by: position }` and `locate-label: { place: upper-half }` or its `box`; if not, name a phrase of the page under skip-words.',
};

function byPosition(sheet: Sheet, options: Values, pageCount: number): Sheet {
  const at = (pattern: string): boolean => pagesMatch(pattern, sheet.page, pageCount);
  const by = `page ${sheet.page}`;
  if (at(options.skip)) return skip(sheet, `${by} is to be skipped`);
  if (at(options.slips)) return { ...sheet, role: 'slip', evidence: [`${by} is a slip by its position`] };
  if (at(options.returns)) return { ...sheet, role: 'return-label', evidence: [`${by} is a return label by its position`] };
  if (!at(options.labels)) return skip(sheet, `${by} is not among the label pages`);
  return { ...sheet, role: 'label' };
}

/** A held page shows nothing to judge by: where words or content decide it stays undecided, else its position tells. */
function unseen(sheet: Sheet, options: Values, pageCount: number): Sheet {
  const wordsDecide = (['skip-words', 'slip-words', 'return-words', 'label-words'] as const).some((name) => options[name].length > 0);
  return wordsDecide || options.by === 'content' ? sheet : byPosition(sheet, options, pageCount);
}

/** Whether a page shows a label of its own, beside whatever its words say. */
function holdsLabel(page: SourcePage, media: Media): boolean {
  if (!codeLikeAreas(page).some(({ kind }) => kind === 'linear')) return false;
  // A slip of the media's size may carry its order number in bars; one that reads like a label is one.
  if (isMediaSize(media, page.width, page.height)) return said(phrasesOf(page.words())).labelWords >= 2;
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  return locate(page, whole, ['frame', 'picture', 'ink'], media).labels.length > 0;
}

const sharedPage = (word: string): Reason => ({
  code: 'split-pages/shared-page',
  message: `the page says "${word}", but has a label on it, too`,
  remedy:
    "If label and slip share the page, use the recipe label-and-slip, or name the slip's `place` under packing-slip with `from: same-page`.",
});

const WORDS_SAY =
  'Nothing to do; if such pages are labels or slips, name a phrase of them: `split-pages: { label-words: [a phrase] }` or `slip-words`.';
const OPTIONS_SAY = 'Change the options of split-pages if this page is a label or a slip.';

const skip = (sheet: Sheet, why: string, remedy: string = OPTIONS_SAY): Sheet =>
  skipped(sheet, { code: 'split-pages/skipped', message: why, remedy });

const NO_CODE: Reason = {
  code: 'split-pages/no-code',
  message: 'no label: nothing on the page looks like a barcode',
  remedy: 'If it is a label without a code: `split-pages: { without-code: label }` and `verify: none`.',
};
const BY_POSITION =
  'If it is a label without a code, give such pages a channel of their own with `split-pages: { by: position }`, its `box` under locate-label, and `verify: none`.';

const withoutCode = (sheet: Sheet, what: 'skip' | 'hold'): Sheet => (what === 'skip' ? skipped(sheet, NO_CODE) : held(sheet, NO_CODE));

const fold = (text: string): string => text.toLocaleLowerCase('en').replaceAll(/\s+/g, ' ').trim();

function pageText(page: SourcePage): string {
  return fold(
    page
      .words()
      .map((word) => word.text)
      .join(' '),
  );
}
