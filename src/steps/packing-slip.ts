import { grow, intersection } from '../geometry/box.js';
import { lengthToPt, mmToPt } from '../geometry/length.js';
import { codeLikeAreas } from '../reading/code-like.js';
import { held, isLabel, isPlanned, pageSheet, skipped, type Reason, type Sheet } from '../sheet/sheet.js';
import { EMPTY_REGION, fitSlip, onLargePage, type SlipFitting } from './fit-slip.js';
import { option, optional, type OptionValues } from './option.js';
import { boxOnPage, PLACES, placeOnPage } from './place-on-page.js';
import { documentStep, type StepContext } from './step.js';
import { ownersOf } from './whose.js';

const OPTIONS = {
  from: option(
    { kind: 'choice', values: ['next-page', 'same-page', 'from-orders'] },
    "Where a label's slip is: on the slip pages after it, on a part of the label's own page, or nowhere, so that it is made from the channel's orders.",
    'next-page',
  ),
  place: optional({ kind: 'choice', values: PLACES }, 'With same-page: the part of the page that is the slip.'),
  box: optional({ kind: 'box' }, 'With same-page: exactly this box of the page is the slip: left, top, width, height.'),
  layout: option(
    { kind: 'choice', values: ['auto', 'shrink', 'reflow'] },
    'Shrink the slip onto the page, set its words anew, or (auto) whichever keeps it readable; with `large-pages` auto sends it there rather than set it anew.',
    'auto',
  ),
  readable: option({ kind: 'length', min: { value: 3, unit: 'pt' } }, 'Smallest size of type that people can read at the packing table.', {
    value: 6,
    unit: 'pt',
  }),
  margin: option({ kind: 'length', min: { value: 0, unit: 'mm' } }, 'Clear border around the slip.', { value: 3, unit: 'mm' }),
  code: optional(
    { kind: 'choice', values: ['code128', 'qr', 'none'] },
    'With from-orders: the code of the order number on the slip, for the scanner at the bench; code128 where nothing is said.',
  ),
  prices: optional({ kind: 'boolean' }, 'With from-orders: whether prices are printed; not where nothing is said, and never on a gift.'),
  'if-held': option({ kind: 'choice', values: ['hold-label', 'print-label'] }, 'What becomes of a label whose slip is held.', 'hold-label'),
} as const;

type Values = OptionValues<typeof OPTIONS>;

/** Puts each slip behind its label as one parcel, at a size that people can read. */
export const packingSlip = documentStep({
  name: 'packing-slip',
  summary:
    'Bring the packing slip of each label to the same media, readable, as the page right behind its label; where it would be too small, at true size onto the printer for large pages.',
  options: OPTIONS,
  short: 'from',
  displaces: { box: ['place', 'from'], place: ['box', 'from'], from: ['box', 'place'] },
  together({ from, place, box, code, prices }) {
    if (place && box) return { message: '`place` and `box` both say where the slip is', remedy: 'Keep one of them.' };
    if (from === 'same-page' && !place && !box) {
      return {
        message: '`from: same-page` does not say which part of the page is the slip',
        remedy: 'Add `place: lower-half` or the like, or a `box`.',
      };
    }
    if (from !== 'from-orders' && (code !== undefined || prices !== undefined)) {
      return {
        message: '`code` and `prices` say how a slip looks that is made from an order',
        remedy: 'Add `from: from-orders`, or take them out.',
      };
    }
    if (from !== 'same-page' && (place || box)) {
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
    if (options.from === 'from-orders') return forOrders(sheets);
    const withSlips =
      options.from === 'same-page' ? withoutFound(sheets).flatMap((sheet) => fromSamePage(sheet, sheets, options, context)) : sheets;
    const ifSlipHeld = options['if-held'] === 'print-label' ? 'release' : 'hold';
    const numbers = new Map(withSlips.filter(isLabel).map((label, index) => [label, index + 1]));
    const labelPages = new Set(withSlips.filter(({ role }) => role === 'label').map(({ page }) => page));
    // A slip beside its label is nobody else's, whatever comes first.
    const isApart = ({ role, page }: Sheet): boolean => role === 'slip' && !labelPages.has(page);
    const firstSlip = withSlips.findIndex(isApart);
    const slipsComeFirst = withSlips.findIndex(({ role }) => role === 'label') > firstSlip;
    const owners = ownersOf(withSlips, 'slip');
    const fitted = withSlips.map((sheet, index): readonly Sheet[] => {
      if (isLabel(sheet)) return [{ ...sheet, parcel: numbers.get(sheet), ifSlipHeld }];
      if (sheet.role !== 'slip') return [sheet];
      const owner = owners.get(sheet);
      const isFirst = slipsComeFirst && isApart(sheet);
      const next = isFirst ? withSlips.slice(index).find(({ role }) => role === 'label') : undefined;
      const label = next ?? owner?.label;
      const slip: Sheet = label ? { ...sheet, parcel: numbers.get(label), ifSlipHeld } : sheet;
      if (!isPlanned(slip)) return [slip];
      if (!label) return [held(sheet, codeLikeAreas(context.document.page(sheet.page)).length > 0 ? SHARED_PAGE : NO_LABEL)];
      if (isFirst) return [held(slip, SLIP_FIRST)];
      return owner?.doubt ? [held(slip, owner.doubt)] : fitSlip(slip, fitting(options, context), context);
    });
    return togetherOnLarge(withSlips, fitted, context).flat();
  },
});

/** The pages of one slip stay together, though the last may have little on it: when one goes to the printer for large pages, so do those like it. */
function togetherOnLarge(
  given: readonly Sheet[],
  fitted: readonly (readonly Sheet[])[],
  context: StepContext,
): readonly (readonly Sheet[])[] {
  const slipOf = (index: number): string | undefined => {
    const [made] = fitted[index] ?? [];
    const box = given[index]?.box;
    return made?.role === 'slip' && isPlanned(made) && box
      ? `${made.parcel ?? ''} ${box.width.toFixed(0)} ${box.height.toFixed(0)}`
      : undefined;
  };
  const away = new Set(fitted.flatMap(([made], index) => (made?.output === undefined ? [] : slipOf(index))));
  return fitted.map((pages, index) => {
    const [made] = pages;
    const slip = slipOf(index);
    const sheet = given[index];
    if (!made || !sheet || made.output !== undefined || slip === undefined || !away.has(slip)) return pages;
    const along = onLargePage({ ...sheet, parcel: made.parcel, ifSlipHeld: made.ifSlipHeld }, context);
    return along ? [along] : pages;
  });
}

/** Labels as parcels of their own: their slips are made when they are matched with their orders. Slips of the channel's own are left out. */
function forOrders(sheets: readonly Sheet[]): readonly Sheet[] {
  const numbers = new Map(sheets.filter(isLabel).map((label, index) => [label, index + 1]));
  return sheets.map((sheet) => {
    if (isLabel(sheet)) return { ...sheet, parcel: numbers.get(sheet) };
    return sheet.role === 'slip' && isPlanned(sheet) ? skipped(sheet, MADE_FROM_ORDER) : sheet;
  });
}

const MADE_FROM_ORDER: Reason = {
  code: 'packing-slip/from-orders',
  message: "the channel's own slip is left out: the recipe has slips made from the orders",
  remedy: 'To print it instead: `packing-slip: next-page`.',
};

const SLIP_FIRST: Reason = {
  code: 'packing-slip/whose',
  message: 'the document has a packing slip before its first label: each slip may belong to the label after it or before it',
  remedy:
    'Look at the pictures; a slip is put with the label before it: have the channel give them in that order, or each order in a file of its own.',
};

const NO_LABEL = {
  code: 'packing-slip/no-label',
  message: 'a packing slip without a label before it',
  remedy:
    'Look at the picture. If its label is in another file, print the slip by hand and put it to its parcel, or fetch both in one document. If it is no slip, name a phrase of it: `split-pages: { skip-words: [a phrase of such pages] }`.',
} as const;

const SHARED_PAGE = {
  code: 'packing-slip/shared-page',
  message: 'the page is a packing slip by its words and has barcodes: perhaps label and slip share it',
  remedy:
    "If they do, give such pages a channel of their own with the recipe label-and-slip, or name the slip's `place` under packing-slip with `from: same-page`. If it is a slip alone, fetch it and its label in one document.",
} as const;

/** Without the slips that were found beside labels: the recipe names their place itself. */
function withoutFound(sheets: readonly Sheet[]): readonly Sheet[] {
  const beside = new Set(sheets.filter(isLabel).map(({ id }) => `${id}.slip`));
  return sheets.filter(({ role, id }) => role !== 'slip' || !beside.has(id));
}

function fromSamePage(sheet: Sheet, all: readonly Sheet[], options: Values, { document, grid }: StepContext): Sheet[] {
  if (sheet.role !== 'label' || !isPlanned(sheet)) return [sheet];
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
  if (!box) return [sheet, held(slip, EMPTY_REGION)];
  const there = { ...slip, box };
  if (all.some((other) => other !== sheet && other.role === 'label' && other.page === sheet.page))
    return [sheet, held(there, ONE_FOR_MANY)];
  if (intersection(grow(sheet.box, -LABEL_EDGE), box)) return [sheet, held(there, OVERLAPS_LABEL)];
  return [sheet, there];
}

/** A label's box may reach this far into the slip's region, pt (2 mm): only white paper is there. */
const LABEL_EDGE = mmToPt(2);

const ONE_FOR_MANY: Reason = {
  code: 'packing-slip/whose',
  message: 'the page has more than one label and one region for a slip',
  remedy: 'Print the slips of such pages apart, or skip them: packing-slip takes one slip a page.',
};

const OVERLAPS_LABEL: Reason = {
  code: 'packing-slip/overlaps-label',
  message: "the slip's region lies over the label: a part of the label would be printed twice",
  remedy: 'Correct `place` or `box` under packing-slip.',
};

const fitting = ({ layout, readable, margin }: Values, { grid }: StepContext): SlipFitting => ({
  layout,
  readable: lengthToPt(readable, grid),
  margin: lengthToPt(margin, grid),
});
