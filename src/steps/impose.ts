import { option } from './option.js';
import { runStep } from './step.js';

/** Plans how pages lie on a larger sheet; the press lays them there at true size. */
export const impose = runStep({
  name: 'impose',
  summary: 'Lay the pages on larger sheets at true size, two or more up, from the first free position of a used sheet.',
  options: {
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
  },
  short: 'sheet',
  notBefore: { verify: 'only proved pages are laid on sheets', number: 'the number belongs on the page before it is laid on a sheet' },
  plan(plan, options) {
    return {
      ...plan,
      impose: {
        sheet: options.sheet,
        columns: options.columns,
        rows: options.rows,
        turn: options.lying === 'sideways' ? 90 : 0,
        firstFree: options['first-free'],
      },
    };
  },
});
