import { grow, intersection } from '../geometry/box.js';
import { lengthToPt, ptToMm } from '../geometry/length.js';
import { held, isLabel, isPlanned, type Sheet } from '../sheet/sheet.js';
import { option } from './option.js';
import { documentStep } from './step.js';

/** Smaller than this on either side (pt) nothing printable is left: a slip of the pen in the recipe. */
const SMALLEST = 18;

/** Takes an even border off (or adds one to) each label's box, for channels whose label stands in a frame of its own. */
export const crop = documentStep({
  name: 'crop',
  summary: 'Trim an even border off each located label, or leave some paper around it.',
  options: {
    inset: option({ kind: 'length' }, 'How much to take off each side of the label; negative leaves paper around it.', {
      value: 0,
      unit: 'mm',
    }),
  },
  short: 'inset',
  notBefore: { 'locate-label': 'the border is taken off the located label, not off the page' },
  async apply(sheets, options, { document, grid }) {
    const inset = lengthToPt(options.inset, grid);
    return sheets.map((sheet): Sheet => {
      if (!isPlanned(sheet) || !isLabel(sheet)) return sheet;
      const page = document.page(sheet.page);
      const box = intersection(grow(sheet.box, -inset), { x: 0, y: 0, width: page.width, height: page.height });
      if (!box || box.width < SMALLEST || box.height < SMALLEST) {
        return held(sheet, {
          code: 'crop/nothing-left',
          message: `an inset of ${ptToMm(inset).toFixed(1)} mm leaves nothing of a label of ${ptToMm(sheet.box.width).toFixed(0)}×${ptToMm(sheet.box.height).toFixed(0)} mm`,
          remedy: 'Give crop a smaller inset.',
        });
      }
      return { ...sheet, box };
    });
  },
});
