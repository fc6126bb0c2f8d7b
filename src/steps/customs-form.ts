import { intersection } from '../geometry/box.js';
import { lengthToPt } from '../geometry/length.js';
import { held, isLabel, isPlanned, type Reason, type Sheet } from '../sheet/sheet.js';
import { shrinkOnto } from './fit-slip.js';
import { option, type OptionValues } from './option.js';
import { documentStep, type StepContext } from './step.js';
import { ownersOf } from './whose.js';

const OPTIONS = {
  readable: option({ kind: 'length', min: { value: 3, unit: 'pt' } }, 'Smallest size of type that a customs officer can read.', {
    value: 5,
    unit: 'pt',
  }),
  margin: option({ kind: 'length', min: { value: 0, unit: 'mm' } }, 'Clear border around the form.', { value: 2, unit: 'mm' }),
} as const;

type Values = OptionValues<typeof OPTIONS>;

/** Puts each customs form behind its label, never set anew: what it says stays as it was drawn. */
export const customsForm = documentStep({
  name: 'customs-form',
  summary:
    'Bring the customs form of each label onto the same media behind it where it stays readable; hold it for the office printer where not.',
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
    const formsComeFirst = firstForm < sheets.findIndex(({ role }) => role === 'label');
    return sheets.map((sheet): Sheet => {
      if (isLabel(sheet)) return { ...sheet, parcel: parcels.get(sheet) };
      if (sheet.role !== 'customs-form' || !isPlanned(sheet)) return sheet;
      const owner = owners.get(sheet);
      if (!owner) return held(sheet, NO_LABEL);
      const parcel = parcels.get(owner.label);
      if (formsComeFirst) return held({ ...sheet, parcel }, FORM_FIRST);
      return owner.doubt ? held({ ...sheet, parcel }, owner.doubt) : behind({ ...sheet, parcel }, options, context);
    });
  },
});

function behind(sheet: Sheet, { readable, margin }: Values, context: StepContext): Sheet {
  const clear = lengthToPt(margin, context.grid);
  const words = context.document
    .page(sheet.page)
    .words()
    .filter((word) => intersection(word.box, sheet.box) !== undefined);
  const shrunk = shrinkOnto(sheet, words, clear, context);
  if (shrunk === undefined) return held(sheet, EMPTY);
  const { sheet: form, smallestType } = shrunk;
  const isReadable = smallestType === undefined ? form.scale >= 1 : smallestType * form.scale >= lengthToPt(readable, context.grid);
  if (!isReadable) return held({ ...form, parcel: undefined }, forTheOffice(form.scale));
  return { ...form, evidence: [...form.evidence, form.scale < 1 ? `shrunk to ${percent(form.scale)}` : 'true size'] };
}

const percent = (factor: number): string => `${(factor * 100).toFixed(0)} %`;

const forTheOffice = (scale: number): Reason => ({
  code: 'customs-form/office-printer',
  message: `the customs form is too large for the label media: it would stand at ${percent(scale)}, too small to read`,
  remedy:
    'Print this page on the office printer and put it to its parcel; the parcel must not leave without it. The carrier says how many copies.',
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
