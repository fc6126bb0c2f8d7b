import { intersection, union, type Box } from '../geometry/box.js';
import { ptToMm } from '../geometry/length.js';
import { fitFactor, type Media } from '../geometry/media.js';
import { turnedSize, type Turn } from '../geometry/placement.js';
import { inkBlobs } from '../locating/ink-blobs.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage, Word } from '../reading/source.js';
import { held, type Reason, type Sheet } from '../sheet/sheet.js';
import { reflow } from './reflow.js';
import type { StepContext } from './step.js';
import { atTrueSize } from './true-size.js';

/** Without a text layer the type can't be measured: a slip may then be shrunk to this factor and no further. */
const FACTOR_WITHOUT_WORDS = 0.6;

/** How a slip may come onto the media; lengths in pt. */
export interface SlipFitting {
  readonly layout: 'auto' | 'shrink' | 'reflow';
  /** Smallest size of type that people can read. */
  readonly readable: number;
  readonly margin: number;
}

/**
 * One slip region as one page or several, or held when it can't be made readable. What would be too small to read goes whole and at true size to the
 * printer for large pages, where there is one, unless its words are to be set anew and can be.
 */
export function fitSlip(sheet: Sheet, { layout, readable: least, margin }: SlipFitting, context: StepContext): readonly Sheet[] {
  const { document, media } = context;
  const page = document.page(sheet.page);
  const ink = inkOf(page, sheet.box);
  if (!ink) return [held(sheet, EMPTY_REGION)];
  const room = roomOn(media, margin);
  if (!room) return [held(sheet, noRoom(margin))];
  const words = page.words().filter((word) => intersection(word.box, ink) !== undefined);
  const slip: Sheet = { ...sheet, box: ink, margin };

  const shrunk = bestFit(slip, words, room);
  const smallest = smallestType(words);
  const shrunkIsReadable = smallest === undefined ? shrunk.scale >= FACTOR_WITHOUT_WORDS : smallest * shrunk.scale >= least;
  const asIs = {
    ...shrunk,
    evidence: [...sheet.evidence, shrunk.scale < 1 ? `shrunk to ${(shrunk.scale * 100).toFixed(0)} %` : 'true size'],
  };
  if (layout === 'shrink' || (layout === 'auto' && shrunkIsReadable)) {
    return [
      shrunkIsReadable ? asIs : (onLargePage(sheet, context) ?? held(slip, tooSmall(smallest, shrunk.scale, least, 'layout: reflow'))),
    ];
  }
  const whole = onLargePage(sheet, context);
  if (whole && layout === 'auto') return [whole];
  const pages = codesIn(page, ink) ? 'it has a code, which would be lost' : reflow(words, Math.max(least, 8), room);
  if (typeof pages === 'string') return [whole ?? held(slip, tooSmall(smallest, shrunk.scale, least, pages))];
  return pages.map((lines, index) => ({
    ...slip,
    id: index === 0 ? sheet.id : `${sheet.id}.${index + 1}`,
    scale: 1,
    turn: 0,
    content: { kind: 'text' as const, lines, fontSize: Math.max(least, 8) },
    evidence: [
      ...sheet.evidence,
      `its words set anew at ${Math.max(least, 8).toFixed(0)} pt${picturesIn(page, ink) ? ', its pictures left out' : ''}`,
    ],
  }));
}

/** As it was given, at true size on the printer for large pages; undefined where there is none, or it doesn't fit. */
export function onLargePage(sheet: Sheet, { document, large }: StepContext): Sheet | undefined {
  const ink = large && inkOf(document.page(sheet.page), sheet.box);
  const made = ink && atTrueSize(sheet, ink, large);
  return made && !('refused' in made) ? made : undefined;
}

const codesIn = (page: SourcePage, box: Box): boolean => codeLikeAreas(page).some((each) => intersection(each.box, box) !== undefined);
const picturesIn = (page: SourcePage, box: Box): boolean => page.images().some((each) => intersection(each.box, box) !== undefined);

/**
 * A form on one page of the media, upright or lying, as large as it goes but never larger than it was drawn. Undefined when the region has no ink
 * or the margin leaves no room. `smallestType` is pt at true size; undefined without a text layer.
 */
export function shrinkOnto(
  sheet: Sheet,
  words: readonly Word[],
  margin: number,
  { document, media }: StepContext,
): { readonly sheet: Sheet; readonly smallestType: number | undefined } | undefined {
  const box = inkOf(document.page(sheet.page), sheet.box);
  const room = roomOn(media, margin);
  return box && room ? { sheet: bestFit({ ...sheet, box, margin }, words, room), smallestType: smallestType(words) } : undefined;
}

function roomOn(media: Media, margin: number): { width: number; height: number } | undefined {
  const room = { width: media.width - 2 * margin, height: media.height - 2 * margin };
  return room.width > 0 && room.height > 0 ? room : undefined;
}

/** Upright, or turned a quarter when that keeps the type clearly larger. */
function bestFit(slip: Sheet, words: readonly Word[], room: { width: number; height: number }): Sheet {
  const upright = uprightOf(words);
  const fit = (turn: Turn): number => {
    const size = turnedSize(slip.box.width, slip.box.height, turn);
    return Math.min(1, fitFactor(size.width, size.height, room.width, room.height));
  };
  const across = ((upright + 90) % 360) as Turn;
  const turn = fit(across) > 1.15 * fit(upright) ? across : upright;
  return { ...slip, turn, scale: fit(turn) };
}

function uprightOf(words: readonly Word[]): Turn {
  const letters = new Map<Turn, number>();
  for (const word of words) if (word.turn !== undefined) letters.set(word.turn, (letters.get(word.turn) ?? 0) + word.text.length);
  const [main] = [...letters].sort((a, b) => b[1] - a[1]);
  return main ? (((360 - main[0]) % 360) as Turn) : 0;
}

/** The size that nearly all of the writing has or exceeds: a tenth of the letters may be smaller. */
function smallestType(words: readonly Word[]): number | undefined {
  const sizes = words.flatMap((word) => new Array<number>(word.text.length).fill(word.fontSize)).sort((a, b) => a - b);
  return sizes[Math.floor(sizes.length / 10)];
}

/** What is printed in a region, with 2 pt of paper around it; undefined where there is no ink. */
export function inkOf(page: SourcePage, region: Box): Box | undefined {
  const shared = inkBlobs(page.ink())
    .map((blob) => intersection(blob, region))
    .filter((blob) => blob !== undefined);
  const box = union(shared);
  return box && intersection({ x: box.x - 2, y: box.y - 2, width: box.width + 4, height: box.height + 4 }, region);
}

export const EMPTY_REGION: Reason = {
  code: 'packing-slip/empty-region',
  message: 'there is nothing where the packing slip should be',
  remedy: 'Correct `place` or `box` under packing-slip.',
};

const noRoom = (margin: number): Reason => ({
  code: 'packing-slip/unreadable',
  message: `a margin of ${ptToMm(margin).toFixed(1)} mm leaves no room on the page`,
  remedy: 'Give packing-slip a smaller `margin`.',
});

function tooSmall(type: number | undefined, scale: number, least: number, why: string): Reason {
  const size =
    type === undefined
      ? `at ${(scale * 100).toFixed(0)} %`
      : `in type of ${(type * scale).toFixed(1)} pt (${ptToMm(type * scale).toFixed(1)} mm)`;
  return {
    code: 'packing-slip/unreadable',
    message: `shrunk onto the label media the slip would stand ${size}, under the readable ${least.toFixed(0)} pt`,
    remedy: why.startsWith('layout')
      ? `Say \`${why}\` under packing-slip, or name a smaller region.`
      : `It can't be set anew either: ${why}. Name a smaller region, or lower \`readable\`.`,
  };
}
