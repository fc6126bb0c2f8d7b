import { dotsPerPt } from '../geometry/grid.js';
import { addTurns, turnedSize, type Turn } from '../geometry/placement.js';
import { uprightTurn } from '../locating/upright.js';
import type { Code } from '../reading/source.js';
import { isSlanted, straightenedWords } from '../reading/skew.js';
import { held, isLabel, isPlanned, type Reason, type Sheet } from '../sheet/sheet.js';
import { option } from './option.js';
import { documentStep, type StepContext } from './step.js';

/** Turns each label upright, then along the media where it was designed to lie across it. */
export const rotate = documentStep({
  name: 'rotate',
  summary: 'Turn each label upright by its words or its codes, or by a fixed quarter turn clockwise.',
  options: {
    to: option(
      { kind: 'choice', values: ['upright', '0', '90', '180', '270'] },
      'Upright, or a fixed clockwise turn in degrees.',
      'upright',
    ),
  },
  short: 'to',
  notBefore: { 'locate-label': 'which way up is asked of the label, not of the page' },
  async apply(sheets, options, context) {
    return Promise.all(sheets.map(async (sheet) => (isPlanned(sheet) && isLabel(sheet) ? turned(sheet, options.to, context) : sheet)));
  },
});

async function turned(sheet: Sheet, to: string, { document, media, grid }: StepContext): Promise<Sheet> {
  if (to !== 'upright') return { ...sheet, turn: Number(to) as Turn, evidence: [...sheet.evidence, `turned by ${to}° as the recipe says`] };
  const page = document.page(sheet.page);
  if (isSlanted(page)) return held(sheet, SLANTED);
  const codes = async (): Promise<readonly Code[]> => {
    const quick = await page.codes(sheet.box, 2 * dotsPerPt(grid));
    return quick.length > 0 ? quick : page.codes(sheet.box, 2 * dotsPerPt(grid), { thorough: true });
  };
  const upright = await uprightTurn(page, sheet.box, codes);
  if (upright.kind === 'doubtful') {
    return held(sheet, {
      code: 'rotate/doubtful',
      message: `which way up is not sure: ${upright.why}`,
      remedy:
        'Look at the picture and name the clockwise turn that brings it upright: `rotate: 0`, `rotate: 90`, `rotate: 180` or `rotate: 270`.',
    });
  }
  const straightened = straightenedWords(page);
  const evidence = [...sheet.evidence, upright.evidence, ...(straightened === undefined ? [] : [straightened])];
  const lies = turnedSize(sheet.box.width, sheet.box.height, upright.turn);
  const across = lies.width > lies.height && media.width < media.height && lies.width > media.width;
  if (!across) return { ...sheet, turn: upright.turn, evidence };
  return {
    ...sheet,
    turn: addTurns(upright.turn, 90),
    evidence: [...evidence, 'designed landscape: turned once more to lie along the media'],
  };
}

const SLANTED: Reason = {
  code: 'rotate/slanted',
  message: 'the page was scanned so crooked that it is not straightened',
  remedy: 'Scan it again, straighter; or download the label from the sales channel.',
};
