import { dotsPerPt } from '../geometry/grid.js';
import { lengthToPt } from '../geometry/length.js';
import { DEFAULT_GAIN } from '../proof/judge-codes.js';
import { SECOND_OPINION_MODES } from '../proof/second-opinion.js';
import { OVERRULED } from '../proof/verdict.js';
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
    allow: option(
      { kind: 'choices', values: OVERRULED },
      'Published limits set aside for a channel whose labels are read all the same: one, or a list.',
      [],
    ),
    gain: option(
      { kind: 'length', min: { value: 0, unit: 'dots' } },
      'By how much the printer may make bars wider or narrower; verdicts hold for it too.',
      { value: DEFAULT_GAIN, unit: 'dots' },
    ),
    'second-opinion': option(
      { kind: 'choice', values: SECOND_OPINION_MODES },
      'Whether a second engine draws the source of a label too, and the label is held where the two differ: never, where engines are known to, or always.',
      'at-risk',
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
  async apply(sheets, options, { grid, large }) {
    const { codes, allow } = options;
    return sheets.map((sheet) => {
      if (!isPlanned(sheet)) return sheet;
      const own = sheet.output !== undefined && sheet.output === large?.name ? large.grid : grid;
      const gain = lengthToPt(options.gain, own) * dotsPerPt(own);
      return { ...sheet, proof: { codes, gain, allow, secondOpinion: options['second-opinion'] } };
    });
  },
});
