import { intersection, union, type Box } from '../geometry/box.js';
import { lengthToPt, ptToMm } from '../geometry/length.js';
import { fitFactor } from '../geometry/media.js';
import { turnedSize, type Turn } from '../geometry/placement.js';
import { inkBlobs } from '../locating/ink-groups.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage, Word } from '../reading/source.js';
import { held, isLabel, isPlanned, pageSheet, type Sheet } from '../sheet/sheet.js';
import { option, optional, type OptionValues } from './option.js';
import { boxOnPage, PLACES, placeOnPage } from './place-on-page.js';
import { reflow } from './reflow.js';
import { documentStep, type StepContext } from './step.js';

const OPTIONS = {
  from: option(
    { kind: 'choice', values: ['next-page', 'same-page'] },
    "Where a label's slip is: on the slip pages after it, or on a part of the label's own page.",
    'next-page',
  ),
  place: optional({ kind: 'choice', values: PLACES }, 'With same-page: the part of the page that is the slip.'),
  box: optional({ kind: 'box' }, 'With same-page: exactly this box of the page is the slip: left, top, width, height.'),
  layout: option(
    { kind: 'choice', values: ['auto', 'shrink', 'reflow'] },
    'Shrink the slip onto the page, set its words anew, or (auto) whichever keeps it readable.',
    'auto',
  ),
  readable: option({ kind: 'length', min: { value: 3, unit: 'pt' } }, 'Smallest size of type that people can read at the packing table.', {
    value: 6,
    unit: 'pt',
  }),
  margin: option({ kind: 'length', min: { value: 0, unit: 'mm' } }, 'Clear border around the slip.', { value: 3, unit: 'mm' }),
  'if-held': option({ kind: 'choice', values: ['hold-label', 'print-label'] }, 'What becomes of a label whose slip is held.', 'hold-label'),
} as const;

type Values = OptionValues<typeof OPTIONS>;

/** Without a text layer the type can't be measured: a slip may then be shrunk to this factor and no further. */
const FACTOR_WITHOUT_WORDS = 0.6;

/** Puts each slip behind its label as one parcel, at a size that people can read. */
export const packingSlip = documentStep({
  name: 'packing-slip',
  summary: 'Bring the packing slip of each label to the same media, readable, as the page right behind its label.',
  options: OPTIONS,
  short: 'from',
  together({ from, place, box }) {
    if (place && box) return { message: '`place` and `box` both say where the slip is', remedy: 'Keep one of them.' };
    if (from === 'same-page' && !place && !box) {
      return {
        message: '`from: same-page` does not say which part of the page is the slip',
        remedy: 'Add `place: lower-half` or the like, or a `box`.',
      };
    }
    if (from === 'next-page' && (place || box)) {
      return {
        message: '`place` and `box` say where a slip lies on the page of its label',
        remedy: 'Add `from: same-page`, or take them out.',
      };
    }
    return undefined;
  },
  notBefore: {
    'split-pages': 'split-pages says which pages are slips',
    'locate-label': 'a slip belongs to a label, which must be located first',
  },
  async apply(sheets, options, context) {
    const withSlips = options.from === 'same-page' ? sheets.flatMap((sheet) => fromSamePage(sheet, options, context)) : sheets;
    const result: Sheet[] = [];
    let parcel = 0;
    let lastLabel: number | undefined;
    for (const sheet of withSlips) {
      if (isLabel(sheet)) {
        parcel += 1;
        if (sheet.role === 'label') lastLabel = parcel;
        result.push({ ...sheet, parcel, ifSlipHeld: options['if-held'] === 'print-label' ? 'release' : 'hold' });
      } else if (sheet.role !== 'slip' || !isPlanned(sheet)) {
        result.push(sheet);
      } else if (lastLabel === undefined) {
        result.push(held(sheet, codeLikeAreas(context.document.page(sheet.page)).length > 0 ? SHARED_PAGE : NO_LABEL));
      } else {
        result.push(...readable({ ...sheet, parcel: lastLabel }, options, context));
      }
    }
    return result;
  },
});

const NO_LABEL = {
  code: 'packing-slip/no-label',
  message: 'a packing slip without a label before it',
  remedy: 'Check which pages split-pages takes for labels and slips.',
} as const;

const SHARED_PAGE = {
  code: 'packing-slip/shared-page',
  message: 'the page is a packing slip by its words and has barcodes: perhaps label and slip share it',
  remedy: "If they do, use the recipe label-and-slip, or name the slip's `place` under packing-slip with `from: same-page`.",
} as const;

function fromSamePage(sheet: Sheet, options: Values, { document, grid }: StepContext): Sheet[] {
  if (sheet.role !== 'label') return [sheet];
  const page = document.page(sheet.page);
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  const wanted = options.box
    ? boxOnPage(options.box, (length) => lengthToPt(length, grid))
    : options.place
      ? placeOnPage(options.place, page)
      : undefined;
  const box = wanted && intersection(wanted, whole);
  const fresh = pageSheet(page.number, page.width, page.height);
  const slip: Sheet = { ...fresh, id: `${sheet.id}.slip`, role: 'slip', evidence: ["a part of the label's page"] };
  return box ? [sheet, { ...slip, box }] : [sheet, held(slip, EMPTY)];
}

const EMPTY = {
  code: 'packing-slip/empty-region',
  message: 'there is nothing where the packing slip should be',
  remedy: 'Correct `place` or `box` under packing-slip.',
} as const;

/** One slip region as one page or several, or held when it can't be made readable. */
function readable(sheet: Sheet, options: Values, { document, media, grid }: StepContext): readonly Sheet[] {
  const page = document.page(sheet.page);
  const ink = inkOf(page, sheet.box);
  if (!ink) return [held(sheet, EMPTY)];
  const margin = lengthToPt(options.margin, grid);
  const least = lengthToPt(options.readable, grid);
  const room = { width: media.width - 2 * margin, height: media.height - 2 * margin };
  const words = page.words().filter((word) => intersection(word.box, ink) !== undefined);
  const slip: Sheet = { ...sheet, box: ink, margin };

  const shrunk = bestFit(slip, words, room);
  const smallest = smallestType(words);
  const shrunkIsReadable = smallest === undefined ? shrunk.scale >= FACTOR_WITHOUT_WORDS : smallest * shrunk.scale >= least;
  const asIs = {
    ...shrunk,
    evidence: [...sheet.evidence, shrunk.scale < 1 ? `shrunk to ${(shrunk.scale * 100).toFixed(0)} %` : 'true size'],
  };
  if (options.layout === 'shrink' || (options.layout === 'auto' && shrunkIsReadable)) {
    return shrunkIsReadable ? [asIs] : [held(slip, tooSmall(smallest, shrunk.scale, least, 'layout: reflow'))];
  }
  const pages = reflow(words, Math.max(least, 8), room);
  if (typeof pages === 'string') return [held(slip, tooSmall(smallest, shrunk.scale, least, pages))];
  return pages.map((lines, index) => ({
    ...slip,
    id: index === 0 ? sheet.id : `${sheet.id}.${index + 1}`,
    scale: 1,
    turn: 0,
    content: { kind: 'text' as const, lines, fontSize: Math.max(least, 8) },
    evidence: [...sheet.evidence, `its words set anew at ${Math.max(least, 8).toFixed(0)} pt`],
  }));
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

function inkOf(page: SourcePage, region: Box): Box | undefined {
  const shared = inkBlobs(page.ink())
    .map((blob) => intersection(blob, region))
    .filter((blob) => blob !== undefined);
  const box = union(shared);
  return box && intersection({ x: box.x - 2, y: box.y - 2, width: box.width + 4, height: box.height + 4 }, region);
}

function tooSmall(
  type: number | undefined,
  scale: number,
  least: number,
  why: string,
): { code: 'packing-slip/unreadable'; message: string; remedy: string } {
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
