import { area, intersection, type Box } from '../geometry/box.js';
import { formatSize, lengthToPt } from '../geometry/length.js';
import { EDGES, type Judged } from '../locating/candidate.js';
import { locate } from '../locating/locate.js';
import { held, isLabel, isPlanned, skipped, type Reason, type Sheet } from '../sheet/sheet.js';
import { option, optional, type OptionValues } from './option.js';
import { boxOnPage, PLACES, placeOnPage, type PlaceName } from './place-on-page.js';
import { documentStep, type StepContext } from './step.js';

const OPTIONS = {
  by: option(
    { kind: 'choices', values: EDGES },
    "What may give the label its edge: the page itself when it has the media's size, a ruled or dashed frame, a placed picture, or the bounds of its ink.",
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
  together({ place, box }) {
    if (place && box) return { message: '`place` and `box` both say where the label is', remedy: 'Keep one of them.' };
    const twice = overlapping(place ?? []);
    if (!twice) return undefined;
    return {
      message: `\`${twice.join('` and `')}\` overlap: a label in both would be printed twice`,
      remedy: 'Name parts of the page that have nothing in common.',
    };
  },
  async apply(sheets, options, context) {
    return sheets.flatMap((sheet) =>
      isPlanned(sheet) && (sheet.role === 'page' || isLabel(sheet)) ? located(sheet, options, context) : [sheet],
    );
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
    const choice = locate(page, region, options.by, context.media);
    if (choice.rivals.length > 0) return [held(sheet, doubtful(choice.labels, choice.rivals))];
    if (options.place && choice.labels.length === 0) return [held(sheet, notFound(`the ${place}`, options.by))];
    if (options.place && choice.labels.length > 1) return [held(sheet, severalIn(place, choice.labels))];
    labels.push(...choice.labels);
  }
  if (labels.length === 0) return [held(sheet, notFound('the page', options.by))];
  return withRemainder(
    sheet,
    labels.map((label) => ({ box: label.box, evidence: label.evidence })),
  );
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
  return withRemainder(sheet, [{ box, evidence: ['the box that the recipe names'] }]);
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
  const remainder = skipped(
    { ...sheet, id: `${sheet.id}.rest`, role: 'remainder' },
    {
      code: 'locate-label/remainder',
      message: `the rest of the page beside ${single ? 'the label' : `${labels.length} labels`}`,
      remedy: 'Nothing to do; if a packing slip is on it, name its place under packing-slip.',
    },
  );
  return [...sheets, remainder];
}

const notFound = (where: string, edges: readonly string[]): Reason => ({
  code: 'locate-label/not-found',
  message: `no label found on ${where} by ${edges.join(', ')}`,
  remedy: 'Look at the picture; if there is a label, give its `place` or its `box` under locate-label.',
});

const size = (each: Judged): string => `${each.edge} ${formatSize(each.box.width, each.box.height)}`;

const severalIn = (place: string, labels: readonly Judged[]): Reason => ({
  code: 'locate-label/doubtful',
  message: `${labels.length} labels on the ${place}, where one should be: ${labels.slice(0, 3).map(size).join(' and ')}`,
  remedy: 'Look at the picture; name a smaller `place` for each label under locate-label, or leave `place` out to take them all.',
});

function doubtful(labels: readonly Judged[], rivals: readonly Judged[]): Reason {
  return {
    code: 'locate-label/doubtful',
    message: `more than one answer: ${[...labels, ...rivals].slice(0, 3).map(size).join(' or ')}`,
    remedy: 'Look at the picture and say which: give `by` with one word, or the `place` or `box` of the label, under locate-label.',
  };
}
