import { isPlanned } from '../sheet/sheet.js';
import { option } from './option.js';
import { documentStep } from './step.js';

/** Plans the proof of every label and slip; the proof itself looks at what the press drew. */
export const verify = documentStep({
  name: 'verify',
  summary: "Read every code back from the printer's own dots and compare it with the source; only proved pages are printed.",
  options: {
    codes: option(
      { kind: 'choice', values: ['required', 'none'] },
      'Whether a label must carry a readable code; `none` for channels whose labels have none.',
      'required',
    ),
  },
  short: 'codes',
  required: 'only proved pages are printed',
  notBefore: {
    'split-pages': 'verify proves finished pages',
    'locate-label': 'verify proves finished pages',
    crop: 'verify proves finished pages',
    rotate: 'verify proves finished pages',
    scale: 'verify proves finished pages',
    'packing-slip': 'verify proves finished pages',
  },
  async apply(sheets, options) {
    return sheets.map((sheet) => (isPlanned(sheet) ? { ...sheet, proof: { codes: options.codes } } : sheet));
  },
});
