import { contains, grow, intersection, union, type Box } from '../geometry/box.js';
import { formatSize, mmToPt, ptToMm } from '../geometry/length.js';
import { PLACES, placeOnPage, type PlaceName } from '../steps/place-on-page.js';
import { stepPart, type Part } from './plan.js';
import type { Sample, SamplePage, SeenLabel } from './sample.js';
import { sameBox, sameSize } from './settle-doubts.js';

/** One way to locate, as a rung of the ladder from the most stable evidence to the least. */
export interface Rung {
  readonly part: Part;
  /** For the recipe's sentence: "the label is the frame on the upper half". */
  readonly about: string;
  /** How far the located box may reach beyond what the page shows, pt. */
  readonly outward: number;
  /** What the samples can't settle about it. */
  readonly remarks: readonly string[];
  /** Whether only `by: content` of split-pages goes with it. */
  readonly byItself: boolean;
}

export interface LabelPage {
  readonly page: SamplePage;
  readonly labels: readonly SeenLabel[];
}

export const labelPagesOf = (samples: readonly Sample[]): readonly LabelPage[] =>
  samples.flatMap(({ pages }) => pages.flatMap((page) => (page.seen.kind === 'labels' ? [{ page, labels: page.seen.labels }] : [])));

/** A fixed box goes this far beyond the ink that the samples show, pt (3 mm): another order may say more. */
const AROUND_INK = mmToPt(3);
/** Ink of labels that differ lies within this of each other, pt (3 mm), where their box is the same. */
const INK_VARIES = mmToPt(3);

const rung = (about: string, part: Part, more: Partial<Rung> = {}): Rung => ({
  part,
  about,
  outward: 0,
  remarks: [],
  byItself: false,
  ...more,
});

/** Ways to find the labels of the samples, the most stable first. Which of them do is for trying to tell. */
export function locateRungs(samples: readonly Sample[]): readonly Rung[] {
  const pages = labelPagesOf(samples);
  const places = placesOf(pages);
  const size = commonSize(pages);
  const named = (text: string): string => `${text}${size === undefined ? '' : ` of ${size}`}`;
  const where = (list: readonly PlaceName[]): string => `on the ${list.map((each) => each.replace('-', ' ')).join(' and the ')}`;
  const several = pages.some(({ labels }) => labels.length > 1);
  const inPlaces = (by: string, what: string): Rung[] =>
    places.map((list) =>
      rung(
        several ? `each label is ${what}, one ${where(list)}` : `the label is ${what} ${where(list)}`,
        stepPart(
          'locate-label',
          { place: list.length === 1 ? list[0] : `[${list.join(', ')}]`, by },
          several ? `Each label is ${named(what)}, one ${where(list)}.` : `The label is ${named(what)} ${where(list)}.`,
          'A label elsewhere on the page would not be printed.',
        ),
      ),
    );
  const anywhere = (by: string, what: string): Rung =>
    rung(`${several ? 'each' : 'the'} label is ${what}`, {
      text: `locate-label: ${by}`,
      notes: [`${several ? 'Each' : 'The'} label is ${named(what)}, wherever on the page.`],
    });
  const edge = (by: string, what: string): Rung[] =>
    several || places.length === 0 ? [anywhere(by, what), ...inPlaces(by, what)] : [...inPlaces(by, what), anywhere(by, what)];

  return [
    rung('the page itself is the label', {
      text: 'locate-label: page',
      notes: ['The page has the size of the media: it is the label.'],
    }),
    ...edge('frame', 'a frame'),
    ...edge('picture', 'a placed picture'),
    ...inPlaces('[frame, picture, ink]', 'what a frame, a picture or ink bounds'),
    ...fixedBox(pages),
    rung(
      'labels are told by what they show',
      {
        text: 'locate-label: auto',
        notes: [
          'No single kind of edge was enough on all samples: each page is judged by all it shows, as the recipe any-page does, and held where that is not sure.',
        ],
      },
      { byItself: true },
    ),
    rung(
      'the label shows by any edge',
      stepPart(
        'locate-label',
        { by: '[page, frame, picture, ink]' },
        'The label shows by the page itself, a frame, a picture or its ink, wherever on the page: the weakest evidence that was enough. Nothing is held that may be a part of a label only.',
      ),
    ),
  ];
}

/** Lists of places that hold the labels of every page, one each; halves come before quarters. */
function placesOf(pages: readonly LabelPage[]): readonly (readonly PlaceName[])[] {
  const count = pages[0]?.labels.length ?? 0;
  if (count === 0 || pages.some(({ labels }) => labels.length !== count)) return [];
  if (count === 1) return PLACES.filter((place) => pages.every((each) => each.labels.every(isIn(place, each.page)))).map((each) => [each]);
  const halves: readonly (readonly PlaceName[])[] = [
    ['upper-half', 'lower-half'],
    ['left-half', 'right-half'],
    ['upper-left', 'upper-right', 'lower-left', 'lower-right'],
  ];
  return halves.filter(
    (list) =>
      list.length === count && pages.every(({ page, labels }) => list.every((place) => labels.filter(isIn(place, page)).length === 1)),
  );
}

const isIn =
  (place: PlaceName, page: SamplePage) =>
  ({ box, edge }: SeenLabel): boolean => {
    if (edge !== 'ink') return contains(placeOnPage(place, page), box, 3);
    const roomy = intersection(grow(box, INK_VARIES), { x: 0, y: 0, width: page.width, height: page.height });
    return roomy !== undefined && contains(placeOnPage(place, page), roomy);
  };

/** The size of every label in words, where they are alike within 2 mm. */
function commonSize(pages: readonly LabelPage[]): string | undefined {
  const sizes = pages.flatMap(({ labels }) => labels.map(({ box }) => [box.width, box.height] as const));
  const [first] = sizes;
  if (!first || !sizes.every(([w, h]) => Math.abs(w - first[0]) < mmToPt(2) && Math.abs(h - first[1]) < mmToPt(2))) return undefined;
  return formatSize(first[0], first[1]);
}

/** One box for all, where pages and labels lie alike; a single label's ink says too little of where the next label's ends. */
function fixedBox(pages: readonly LabelPage[]): Rung[] {
  const boxes = pages.flatMap(({ labels }) => labels.map(({ box }) => box));
  const [first] = pages;
  const [model] = boxes;
  if (!first || !model || boxes.length !== pages.length || !pages.every(({ page }) => sameSize(page, first.page))) return [];
  const hard = pages.every(({ labels }) => labels.every(({ edge }) => edge !== 'ink'));
  if (!boxes.every((each) => sameBox(each, model, hard ? mmToPt(1) : INK_VARIES))) return [];
  if (!hard && boxes.length < 2) return [];
  const whole = { x: 0, y: 0, width: first.page.width, height: first.page.height };
  const drawn = union(boxes);
  const box = drawn && intersection(grow(drawn, hard ? 0 : AROUND_INK), whole);
  if (!box) return [];
  const text = boxText(box);
  return [
    rung(
      'the label is in a fixed box',
      stepPart('locate-label', { box: text }, 'Exactly this box of the page: left, top, width, height.'),
      {
        outward: hard ? 0 : AROUND_INK + INK_VARIES,
        remarks: [
          'The box of the label is fixed, because nothing around the label marks it: if the channel moves its label, the box cuts it. Look at the first pages after any change of its layout.',
        ],
      },
    ),
  ];
}

/** A box as the option has it: tenths of a millimetre. */
export const boxText = ({ x, y, width, height }: Box): string =>
  `[${[x, y, width, height].map((each) => `${ptToMm(each).toFixed(1)}mm`).join(', ')}]`;
