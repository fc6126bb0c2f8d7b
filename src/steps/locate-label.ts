import { area, intersection, type Box } from '../geometry/box.js';
import { formatSize, lengthToPt } from '../geometry/length.js';
import { EDGES, severalAnswers, sizeOf, type Judged } from '../locating/candidate.js';
import { locate } from '../locating/locate.js';
import { held, isLabel, isPlanned, type Reason, type Sheet } from '../sheet/sheet.js';
import { remainder, sheetsOfSurvey } from './beside-label.js';
import { heldForCutInk } from './cut-ink.js';
import { option, optional, type OptionValues } from './option.js';
import { boxOnPage, PLACES, placeOnPage, type PlaceName } from './place-on-page.js';
import { documentStep, type StepContext } from './step.js';
import { heldForAnswers, surveyed } from './surveyed.js';

const OPTIONS = {
  by: option(
    { kind: 'choices', values: ['auto', ...EDGES] },
    "What may give the label its edge: the page itself when it has the media's size, a ruled or dashed frame, a placed picture, or the bounds of its ink; `auto` takes all of them and asks, too, whether it is a label and what else is on the page.",
    EDGES,
  ),
  place: optional({ kind: 'choices', values: PLACES }, 'Look for one label in each of these parts of the page only.'),
  box: optional({ kind: 'box' }, 'Exactly this box of the page is the label: left, top, width, height.'),
} as const;

/** Finds the labels on each label page: a page with two labels gives two sheets; what is left of the page is named too. */
export const locateLabel = documentStep({
  name: 'locate-label',
  summary: 'Find the label on its page, or say where it is; more than one label a page gives as many sheets.',
  options: OPTIONS,
  short: 'by',
  notBefore: { 'split-pages': 'only label pages are searched' },
  displaces: { box: ['place', 'by'], place: ['box', 'by'], by: ['box', 'place'] },
  together({ by, place, box }) {
    if (by.includes('auto') && (by.length > 1 || place || box))
      return { message: '`auto` looks at the whole page by every edge', remedy: 'Leave `auto` out, or everything beside it.' };
    if (place && box) return { message: '`place` and `box` both say where the label is', remedy: 'Keep one of them.' };
    const twice = overlapping(place ?? []);
    if (!twice) return undefined;
    return {
      message: `\`${twice.join('` and `')}\` overlap: a label in both would be printed twice`,
      remedy: 'Name parts of the page that have nothing in common.',
    };
  },
  async apply(sheets, options, context) {
    const found: Sheet[] = [];
    for (const sheet of sheets) {
      if (!isPlanned(sheet) || (sheet.role !== 'page' && !isLabel(sheet))) found.push(sheet);
      else found.push(...(options.by.includes('auto') ? await byItself(sheet, context) : located(sheet, options, context)));
    }
    return found;
  },
});

type Values = OptionValues<typeof OPTIONS>;

/** The first two of the named parts that share paper. */
function overlapping(places: readonly PlaceName[]): readonly [PlaceName, PlaceName] | undefined {
  const page = { width: 1, height: 1 };
  for (const [index, first] of places.entries()) {
    const second = places.slice(index + 1).find((each) => intersection(placeOnPage(first, page), placeOnPage(each, page)));
    if (second) return [first, second];
  }
  return undefined;
}

function located(sheet: Sheet, options: Values, context: StepContext): readonly Sheet[] {
  if (options.box) return atBox(sheet, options.box, context);
  const page = context.document.page(sheet.page);
  const places = options.place ?? ['whole-page'];
  const labels: Judged[] = [];
  for (const place of places) {
    const region = options.place ? placeOnPage(place as PlaceName, page) : sheet.box;
    const choice = locate(
      page,
      region,
      EDGES.filter((edge) => options.by.includes(edge)),
      context.media,
    );
    if (choice.rivals.length > 0) {
      const answers = [...choice.labels, ...choice.rivals];
      return [heldForAnswers(sheet, 'locate-label/doubtful', severalAnswers(answers), answers)];
    }
    const [doubt] = choice.doubts;
    if (doubt) return [heldForAnswers(sheet, 'locate-label/doubtful', doubt.why, doubt.answers)];
    if (options.place && choice.labels.length === 0) return [held(sheet, notFound(`the ${place}`, options.by))];
    if (options.place && choice.labels.length > 1)
      return [{ ...held(sheet, severalIn(place, choice.labels)), answers: choice.labels.map(({ box }) => box) }];
    labels.push(...choice.labels);
  }
  if (labels.length === 0) return [held(sheet, notFound('the page', options.by))];
  return withRemainder(
    sheet,
    labels.map((label) => ({ box: label.box, evidence: label.evidence })),
  );
}

/** What `auto` finds: labels, perhaps a slip or a form beside them, or a reason to look. */
async function byItself(sheet: Sheet, context: StepContext): Promise<readonly Sheet[]> {
  const page = context.document.page(sheet.page);
  const seen = await surveyed(page, context);
  if (seen.kind === 'doubtful') return [heldForAnswers(sheet, 'locate-label/doubtful', seen.why, seen.candidates)];
  if (seen.kind === 'labels') return sheetsOfSurvey(sheet, seen);
  if (seen.kind === 'named') return [held(sheet, noLabel(`no label found: the page calls itself "${seen.name.words}"`))];
  return [held(sheet, noLabel(`no label found: ${seen.kind === 'blank' ? 'the page is blank' : 'nothing on the page is like one'}`))];
}

function atBox(sheet: Sheet, lengths: NonNullable<Values['box']>, context: StepContext): readonly Sheet[] {
  const wanted = boxOnPage(lengths, (length) => lengthToPt(length, context.grid));
  const box = intersection(wanted, sheet.box);
  if (!box || area(box) < 0.98 * area(wanted)) {
    return [
      held(sheet, {
        code: 'locate-label/outside-page',
        message: `the box lies outside the page, which is ${formatSize(sheet.box.width, sheet.box.height)}`,
        remedy: 'Correct `box` under locate-label; it is left, top, width, height from the top-left corner of the page.',
      }),
    ];
  }
  const cut = heldForCutInk(sheet, box, context.document.page(sheet.page));
  return cut ? [cut] : withRemainder(sheet, [{ box, evidence: ['the box that the recipe names'] }]);
}

function withRemainder(sheet: Sheet, labels: readonly { box: Box; evidence: readonly string[] }[]): readonly Sheet[] {
  const [only] = labels;
  const single = labels.length === 1;
  const sheets = labels.map((label, index): Sheet => ({
    ...sheet,
    id: single ? sheet.id : `${sheet.id}.${index + 1}`,
    role: sheet.role === 'return-label' ? 'return-label' : 'label',
    box: label.box,
    evidence: [...sheet.evidence, ...label.evidence],
  }));
  if (single && only && area(only.box) > 0.9 * area(sheet.box)) return sheets;
  return [...sheets, remainder(sheet, '', labels.length)];
}

const EDGE_WORDS: Readonly<Record<string, string>> = { page: "the page's size", frame: 'a frame', picture: 'a picture', ink: 'its ink' };

const notFound = (where: string, edges: readonly string[]): Reason =>
  noLabel(`no label found on ${where} by ${edges.map((edge) => EDGE_WORDS[edge] ?? edge).join(', ')}`);

const noLabel = (message: string): Reason => ({
  code: 'locate-label/not-found',
  message,
  remedy: 'Look at the picture; if there is a label, give its `place` or its `box` under locate-label.',
});

const severalIn = (place: string, labels: readonly Judged[]): Reason => ({
  code: 'locate-label/doubtful',
  message: `${labels.length} labels on the ${place}, where one should be: ${labels.slice(0, 3).map(sizeOf).join(' and ')}`,
  remedy: 'Look at the picture; name a smaller `place` for each label under locate-label, or leave `place` out to take them all.',
});
