import { intersection } from '../geometry/box.js';
import { lengthToPt } from '../geometry/length.js';
import { held, isLabel, isPlanned, type Reason, type Sheet } from '../sheet/sheet.js';
import { inkOf, shrinkOnto } from './fit-slip.js';
import { option, type OptionValues } from './option.js';
import { documentStep, type LargePages, type StepContext } from './step.js';
import { atTrueSize, tooLargeForAll } from './true-size.js';
import { ownersOf } from './whose.js';

const OPTIONS = {
  readable: option({ kind: 'length', min: { value: 3, unit: 'pt' } }, 'Smallest size of type that a customs officer can read.', {
    value: 5,
    unit: 'pt',
  }),
  margin: option({ kind: 'length', min: { value: 0, unit: 'mm' } }, 'Clear border around the form.', { value: 2, unit: 'mm' }),
  'if-held': option(
    { kind: 'choice', values: ['hold-label', 'print-label'] },
    'What becomes of a label whose form was drawn and is held.',
    'hold-label',
  ),
} as const;

type Values = OptionValues<typeof OPTIONS>;

/** Puts each customs form behind its label, never set anew: what it says stays as it was drawn. */
export const customsForm = documentStep({
  name: 'customs-form',
  summary:
    'Bring the customs form of each label onto the same media behind it where it stays readable; where not, at true size onto the printer for large pages.',
  options: OPTIONS,
  short: undefined,
  notBefore: {
    'split-pages': 'split-pages says which pages are customs forms',
    'locate-label': 'a form belongs to a label, which must be located first',
    'packing-slip': 'the slip comes right behind the label, the form after it',
  },
  async apply(sheets, options, context) {
    let most = sheets.reduce((highest, sheet) => Math.max(highest, sheet.parcel ?? 0), 0);
    const parcels = new Map(sheets.filter(isLabel).map((label) => [label, label.parcel ?? (most += 1)]));
    const owners = ownersOf(sheets, 'customs-form');
    const firstForm = sheets.findIndex(({ role }) => role === 'customs-form');
    const ifSlipHeld = options['if-held'] === 'print-label' ? 'release' : 'hold';
    const formsComeFirst = firstForm < sheets.findIndex(({ role }) => role === 'label');
    const made = sheets.map((sheet): Sheet | Unreadable => {
      if (isLabel(sheet)) return { ...sheet, parcel: parcels.get(sheet) };
      if (sheet.role !== 'customs-form' || !isPlanned(sheet)) return sheet;
      const owner = owners.get(sheet);
      if (!owner) return held(sheet, NO_LABEL);
      const form: Sheet = { ...sheet, parcel: parcels.get(owner.label), ifSlipHeld };
      if (formsComeFirst) return held(form, FORM_FIRST);
      return owner.doubt ? held(form, owner.doubt) : behind(form, options, context);
    });
    const { large } = context;
    const sizes = new Set(made.filter(isUnreadable).map(({ form }) => sizeOf(form)));
    return made.map((each, index): Sheet => {
      if (isUnreadable(each)) return elsewhere(each, context);
      // The pages of one form stay together, though the last may have little on it.
      const given = sheets[index];
      const goesAlong = large && given?.role === 'customs-form' && isPlanned(each) && sizes.has(sizeOf({ ...given, parcel: each.parcel }));
      if (!goesAlong) return each;
      const along = onLarge({ ...given, parcel: each.parcel, ifSlipHeld }, large, context);
      return isPlanned(along) ? along : each;
    });
  },
});

/** A form that would be too small to read on the label media, as it was given and at which scale. */
interface Unreadable {
  readonly form: Sheet;
  readonly scale: number;
}
const isUnreadable = (made: Sheet | Unreadable): made is Unreadable => 'form' in made;

/** Forms of one parcel and one size are pages of one form. */
const sizeOf = ({ parcel, box }: Sheet): string => `${parcel ?? ''} ${box.width.toFixed(0)} ${box.height.toFixed(0)}`;

function behind(sheet: Sheet, { readable, margin }: Values, context: StepContext): Sheet | Unreadable {
  const clear = lengthToPt(margin, context.grid);
  const words = context.document
    .page(sheet.page)
    .words()
    .filter((word) => intersection(word.box, sheet.box) !== undefined);
  const shrunk = shrinkOnto(sheet, words, clear, context);
  if (shrunk === undefined) return held(sheet, EMPTY);
  const { sheet: form, smallestType } = shrunk;
  const isReadable = smallestType === undefined ? form.scale >= 1 : smallestType * form.scale >= lengthToPt(readable, context.grid);
  if (!isReadable) return { form: sheet, scale: form.scale };
  return { ...form, evidence: [...form.evidence, form.scale < 1 ? `shrunk to ${percent(form.scale)}` : 'true size'] };
}

/** A form without a printer that can take it is held by itself: it may be printed by hand, and its label goes. */
function elsewhere({ form, scale }: Unreadable, context: StepContext): Sheet {
  if (!context.large) return held({ ...form, parcel: undefined }, forTheOffice(scale));
  const made = onLarge(form, context.large, context);
  return isPlanned(made) ? made : { ...made, parcel: undefined };
}

function onLarge(form: Sheet, large: LargePages, { document }: StepContext): Sheet {
  const ink = inkOf(document.page(form.page), form.box);
  if (!ink) return held(form, EMPTY);
  const made = atTrueSize(form, ink, large);
  return 'refused' in made ? held(form, tooLargeForAll(made.refused)) : made;
}

const percent = (factor: number): string => `${(factor * 100).toFixed(0)} %`;

const forTheOffice = (scale: number): Reason => ({
  code: 'customs-form/office-printer',
  message: `the customs form is too large for the label media: it would stand at ${percent(scale)}, too small to read`,
  remedy:
    'Print this page on the office printer and put it to its parcel; the parcel must not leave without it. The carrier says how many copies. To have such pages made ready for that printer, name it under `outputs` and `large-pages` in pipeline.yaml.',
});

const EMPTY: Reason = {
  code: 'customs-form/empty',
  message: 'there is nothing where the customs form should be, or its margin leaves no room',
  remedy: 'Look at the page, and check `margin` under customs-form.',
};

const FORM_FIRST: Reason = {
  code: 'packing-slip/whose',
  message: 'the document has a customs form before its first label: each form may belong to the label after it or before it',
  remedy:
    'Look at the pictures; a form is put with the label before it: have the channel give them in that order, or each order in a file of its own.',
};

const NO_LABEL: Reason = {
  code: 'customs-form/no-label',
  message: 'a customs form without a label before it',
  remedy: 'Find the parcel it belongs to, and print it on the office printer.',
};
