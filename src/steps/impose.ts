import { mediaNamed } from '../geometry/media.js';
import { imposeCells } from '../press/impose.js';
import { option, type OptionValues } from './option.js';
import { runStep, type ImposePlan } from './step.js';

const OPTIONS = {
  sheet: option({ kind: 'media' }, 'The sheet to print on.', 'letter'),
  columns: option({ kind: 'integer', min: 1, max: 20 }, 'Positions across.', 1),
  rows: option({ kind: 'integer', min: 1, max: 40 }, 'Positions down.', 2),
  lying: option(
    { kind: 'choice', values: ['upright', 'sideways'] },
    'How a page lies in its position: upright, or turned a quarter.',
    'sideways',
  ),
  'first-free': option(
    { kind: 'integer', min: 1, max: 800 },
    'First free position of the first sheet, counted along the rows from the top left, from 1.',
    1,
  ),
} as const;

/** Plans how pages lie on a larger sheet; the press lays them there at true size. */
export const impose = runStep({
  name: 'impose',
  summary: 'Lay the pages on larger sheets at true size, two or more up, from the first free position of a used sheet.',
  options: OPTIONS,
  short: 'sheet',
  notBefore: { verify: 'only proved pages are laid on sheets', number: 'the number belongs on the page before it is laid on a sheet' },
  together({ columns, rows, 'first-free': firstFree }) {
    if (firstFree <= columns * rows) return undefined;
    return {
      message: `the first free position is ${firstFree}, but a sheet has ${columns * rows}`,
      remedy: `Name a position from 1 to ${columns * rows}.`,
    };
  },
  onMedia(options, media) {
    const plan = planOf(options);
    const cells = imposeCells(1, media, mediaNamed(plan.sheet), plan);
    return 'refused' in cells
      ? {
          message: cells.refused.message,
          remedy: 'Use fewer columns or rows, turn the pages, or use a larger sheet: pages are never shrunk.',
        }
      : undefined;
  },
  plan(plan, options) {
    return { ...plan, impose: planOf(options) };
  },
});

function planOf({ sheet, columns, rows, lying, 'first-free': firstFree }: OptionValues<typeof OPTIONS>): ImposePlan {
  return { sheet, columns, rows, turn: lying === 'sideways' ? 90 : 0, firstFree };
}
