import { wholeDots } from '../geometry/grid.js';
import { formatSize, lengthToPt, ptToMm } from '../geometry/length.js';
import { fitFactor } from '../geometry/media.js';
import { turnedSize } from '../geometry/placement.js';
import { hazardMarks, type HazardMark } from '../locating/hazard-marks.js';
import { FIT_SLACK, pixelForDotScale } from '../press/place.js';
import { held, isLabel, isPlanned, type Reason, type Sheet } from '../sheet/sheet.js';
import { insideCutLine } from './inside-cut-line.js';
import { insideWhite } from './inside-white.js';
import { option, type OptionValues } from './option.js';
import { documentStep, type StepContext } from './step.js';
import { ontoWholeDots } from './whole-dots.js';

const OPTIONS = {
  to: option(
    { kind: 'choice', values: ['true-size', 'fill'] },
    'Leave labels at true size, or also enlarge smaller ones to fill the page.',
    'true-size',
  ),
  floor: option(
    { kind: 'percent', min: 0.5, max: 1 },
    'How far a label that is too large may be shrunk to fit; a label that would need less is held.',
    0.95,
  ),
  bars: option(
    { kind: 'choice', values: ['whole-dots', 'as-drawn'] },
    "Bring bars onto the printer's whole dots, by up to 2 % of the label's size or by drawing a code anew in its place; or leave them as the channel drew them.",
    'whole-dots',
  ),
  margin: option({ kind: 'length', min: { value: 0, unit: 'mm' } }, "Clear border that the printer can't print on.", {
    value: 0,
    unit: 'mm',
  }),
} as const;

/** Sets the one uniform factor of each label: true size where it fits, down to the floor where it doesn't. */
export const scale = documentStep({
  name: 'scale',
  summary: 'Bring each label to the page at true size, shrinking only within the floor and never unevenly.',
  options: OPTIONS,
  short: 'to',
  notBefore: {
    'locate-label': "the label's size is known only after it is located",
    crop: "the label's size is settled only after crop",
    rotate: 'whether a label fits depends on how it lies',
  },
  async apply(sheets, options, context) {
    const { media, grid, document } = context;
    return Promise.all(
      sheets.map(async (sheet) => {
        if (!isPlanned(sheet) || !isLabel(sheet)) return sheet;
        const page = document.page(sheet.page);
        const [mark] = hazardMarks(page, sheet.box);
        const made = atTrueSize(sheet, options, context);
        if (mark && isPlanned(made) && made.scale < FULL_SIZE) return held(made, hazardShrunk(mark, made.scale));
        if (!isPlanned(made)) return made;
        if (options.bars === 'as-drawn') return { ...made, barsAsDrawn: true };
        return ontoWholeDots(made, page, { media, grid, floor: options.floor, fixedSize: mark !== undefined });
      }),
    );
  },
});

/** A head of 8 dots/mm prints what is meant for 203 dpi at 99.9 %: nobody's rule is finer than that. */
const FULL_SIZE = 0.998;

function hazardShrunk({ what }: HazardMark, scale: number): Reason {
  return {
    code: 'scale/hazard-mark',
    message: `it shows what may be a hazard mark (${what}), and the label would be shrunk to ${percent(scale)}; rules fix the size of such marks (handbook section 6: 49 CFR 172.315, ADR 3.4.7)`,
    remedy:
      'Print it at true size on larger media, or put the mark on the parcel by itself. What the parcel needs is told by the carrier, the local rules and trained staff.',
  };
}

/** A label that is too large only by its cut line, or by white paper around it, goes without that, at true size. */
function atTrueSize(sheet: Sheet, options: OptionValues<typeof OPTIONS>, context: StepContext): Sheet {
  const whole = scaled(sheet, options, context);
  if (options.to !== 'true-size' || (isPlanned(whole) && whole.scale >= 1)) return whole;
  const page = context.document.page(sheet.page);
  const lesser = [
    { box: insideCutLine(page, sheet.box), why: 'the cut line is left out: what it encloses has true size on the page' },
    { box: insideWhite(page, sheet.box), why: 'white paper around it is left out: all of its ink has true size on the page' },
  ];
  for (const { box, why } of lesser) {
    if (!box) continue;
    const bare = scaled({ ...sheet, box, evidence: [...sheet.evidence, why] }, options, context);
    if (isPlanned(bare) && bare.scale >= 1) return bare;
  }
  return whole;
}

function scaled(sheet: Sheet, options: OptionValues<typeof OPTIONS>, { document, media, grid }: StepContext): Sheet {
  const margin = lengthToPt(options.margin, grid);
  const room = { width: media.width - 2 * margin, height: media.height - 2 * margin };
  if (room.width <= 0 || room.height <= 0) {
    return held(sheet, {
      code: 'scale/too-large',
      message: `a margin of ${ptToMm(margin).toFixed(1)} mm leaves no room on ${formatSize(media.width, media.height)}`,
      remedy: 'Give scale a smaller `margin`.',
    });
  }
  const lies = turnedSize(sheet.box.width, sheet.box.height, sheet.turn);
  const fit = fitFactor(lies.width, lies.height, room.width, room.height);
  const overhang = Math.max(lies.width - room.width, lies.height - room.height);

  const trueSize = overhang <= (margin > 0 ? 1e-6 : FIT_SLACK);
  const wanted = options.to === 'fill' ? fit : trueSize ? 1 : fit;
  if (wanted < options.floor - 1e-9) {
    return held(sheet, {
      code: 'scale/too-large',
      message: `the label is ${formatSize(lies.width, lies.height)} and would have to be shrunk to ${percent(fit)} to fit ${formatSize(room.width, room.height)}; the floor is ${percent(options.floor)}`,
      remedy: `Check the box that was located; if the label really is that large, print it on larger media or lower the floor (bars shrink with it).`,
    });
  }
  const picture = document.page(sheet.page).pictureUnder(sheet.box);
  const exact = picture && pixelForDotScale(picture.pixelsPerPt, grid, wanted);
  const dots = (pt: number): number => wholeDots(pt, grid);
  const exactFits =
    exact !== undefined &&
    exact >= options.floor - 1e-9 &&
    dots(lies.width * exact) <= dots(room.width) + 1 &&
    dots(lies.height * exact) <= dots(room.height) + 1;
  const scale = exactFits ? exact : wanted;
  const evidence = scale === 1 ? [] : [`${scale < 1 ? 'shrunk' : 'enlarged'} to ${percent(scale)}`];
  const why = exactFits && exact !== wanted ? ["each of the picture's pixels is one dot"] : [];
  return { ...sheet, scale, margin, evidence: [...sheet.evidence, ...evidence, ...why] };
}

const percent = (factor: number): string => `${(factor * 100).toFixed(1)} %`;
