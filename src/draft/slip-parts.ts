import { contains, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { PLACES, placeOnPage } from '../steps/place-on-page.js';
import { boxText } from './locate-parts.js';
import { stepPart, type Part } from './plan.js';
import type { Sample, SamplePage } from './sample.js';
import { sameSize } from './settle-doubts.js';

/** A label's box may reach this far into the region of its slip, pt (2 mm). */
const LABEL_EDGE = mmToPt(2);

interface Shared {
  readonly page: SamplePage;
  readonly labels: readonly Box[];
  readonly slip: Box;
}

/** Ways to bring the slips behind their labels, the most stable first; `[undefined]` where the samples have no slip. */
export function slipParts(samples: readonly Sample[]): readonly (Part | undefined)[] {
  const pages = samples.flatMap((sample) => sample.pages);
  const shared = pages.flatMap((page): Shared[] => {
    if (page.seen.kind !== 'labels' || page.seen.beside.kind !== 'packing-slip' || !page.seen.beside.box) return [];
    return [{ page, labels: page.seen.labels.map(({ box }) => box), slip: page.seen.beside.box }];
  });
  const nextPage = { text: 'packing-slip: next-page', notes: [] };
  if (pages.some(({ seen }) => seen.kind === 'slip')) return [nextPage];
  if (shared.length === 0) return [undefined];
  const places = PLACES.filter((place) => shared.every((each) => isFree(placeOnPage(place, each.page), each)));
  return [
    ...places.map((place) =>
      stepPart('packing-slip', { from: 'same-page', place }, `The packing slip is on the ${place.replace('-', ' ')} of the label's page.`),
    ),
    ...freeSides(shared).map((box) =>
      stepPart(
        'packing-slip',
        { from: 'same-page', box: boxText(box) },
        "The packing slip is in this box of the label's page: all beside the label.",
      ),
    ),
  ];
}

/** Whether a region has all of a page's slip and nothing of its labels. */
const isFree = (region: Box, { labels, slip }: Shared): boolean =>
  contains(region, slip, 3) && labels.every((label) => !intersection(grow(label, -LABEL_EDGE), region));

/** All paper above, below, left or right of the labels: a longer slip must not be cut where the samples' slips end. */
function freeSides(shared: readonly Shared[]): readonly Box[] {
  const [first] = shared;
  if (!first || !shared.every(({ page }) => sameSize(page, first.page))) return [];
  const { width, height } = first.page;
  const labels = shared.flatMap((each) => each.labels);
  const [left, top] = [Math.min(...labels.map(({ x }) => x)), Math.min(...labels.map(({ y }) => y))];
  const right = Math.max(...labels.map((label) => label.x + label.width));
  const bottom = Math.max(...labels.map((label) => label.y + label.height));
  const sides: readonly Box[] = [
    { x: 0, y: bottom, width, height: height - bottom },
    { x: right, y: 0, width: width - right, height },
    { x: 0, y: 0, width: left, height },
    { x: 0, y: 0, width, height: top },
  ];
  return sides.filter((side) => side.width > 0 && side.height > 0 && shared.every((each) => isFree(side, each)));
}
