import { contains, type Box } from '../geometry/box.js';
import { gridOf, type Grid } from '../geometry/grid.js';
import { lengthToPt, type Length } from '../geometry/length.js';
import { isMediaSize, mediaNamed } from '../geometry/media.js';
import { printableArea, type Output } from '../geometry/printer.js';
import { noSuchPosition, positionBoxes } from '../press/impose.js';
import { option, optional, type OptionValues } from './option.js';
import { runStep, type ImposePlan, type OptionConflict } from './step.js';

const NOTHING = { value: 0, unit: 'mm' } as const;

/** A length on the sheet; left out, the press finds its own. */
const onSheet = (description: string) => optional({ kind: 'length', min: NOTHING }, description);

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
  'pitch-across': onSheet('From the left edge of a label to the left edge of the next; left out, columns are spread evenly.'),
  'pitch-down': onSheet('From the top edge of a label to the top edge of the next; left out, rows are spread evenly.'),
  'margin-left': onSheet("From the sheet's left edge to the first label; left out, the labels lie in the middle."),
  'margin-top': onSheet("From the sheet's top edge to the first label; left out, the labels lie in the middle."),
  'printer-margin': onSheet(
    'What the printer of the sheets cannot print at each edge: pages that would reach into it are refused; left out, it prints to the edge.',
  ),
  'cut-marks': option({ kind: 'boolean' }, 'Print thin lines beside the pages to cut along.', false),
  pairs: option({ kind: 'boolean' }, 'Lay the label and the slip of a parcel side by side, each parcel whole on a sheet.', false),
} as const;

type Values = OptionValues<typeof OPTIONS>;

/** Plans how pages lie on a larger sheet; the press lays them there at true size. */
export const impose = runStep({
  name: 'impose',
  summary: 'Lay the pages on larger sheets at true size, two or more up, from the first free position of a used sheet.',
  options: OPTIONS,
  short: 'sheet',
  notBefore: { verify: 'only proved pages are laid on sheets', number: 'the number belongs on the page before it is laid on a sheet' },
  together(options) {
    const { columns, rows, 'first-free': firstFree } = options;
    if (firstFree > columns * rows) return conflictOf(noSuchPosition(firstFree, columns * rows));
    return inDots(options) ?? (options.pairs ? withoutPairs(columns, rows) : undefined);
  },
  onMedia(options, media, printer) {
    // No length is in dots here: `together` has refused it.
    const plan = planOf(options, gridOf('203dpi'));
    const sheet = mediaNamed(plan.sheet);
    const boxes = positionBoxes(media, sheet, plan);
    if ('refused' in boxes) return conflictOf(boxes.refused);
    return printer && notFor(printer, plan, boxes);
  },
  plan(plan, options, grid) {
    return { ...plan, impose: planOf(options, grid) };
  },
});

/** Why a printer can't take the sheets; undefined when it can. */
function notFor({ name, media, printer }: Output, { sheet: sheetName }: ImposePlan, boxes: readonly Box[]): OptionConflict | undefined {
  const sheet = mediaNamed(sheetName);
  if (!isMediaSize(mediaNamed(media), sheet.width, sheet.height)) {
    return {
      message: `the labels are laid on \`${sheetName}\`, but \`${name}\`, which the channel prints on, takes \`${media}\``,
      remedy: `Write \`impose: { sheet: ${media} }\` below \`options:\` of the channel, or name another output under its \`print-on\`.`,
    };
  }
  const area = printableArea(printer, sheet);
  const { offset } = printer;
  const within = (by: typeof offset): boolean =>
    area !== undefined && boxes.every((box) => contains(area, { ...box, x: box.x + by.x, y: box.y + by.y }, ROUNDING));
  if (within(offset)) return undefined;
  if (within({ x: 0, y: 0 })) {
    return {
      message: `moved by the \`offset\` of \`${name}\`, which the channel prints on, labels are laid where it prints nothing`,
      remedy: 'Use other margins or fewer columns or rows, or set the printer itself right.',
    };
  }
  return {
    message: `labels are laid where \`${name}\`, which the channel prints on, prints nothing: its \`margins\` or \`print-width\``,
    remedy: 'Use fewer columns or rows or other margins, or name another output under `print-on`.',
  };
}

/** What adding up lengths may leave, pt. */
const ROUNDING = 0.1;

const conflictOf = ({ message, remedy }: { readonly message: string; readonly remedy: string }): OptionConflict => ({
  message,
  remedy: `${remedy.charAt(0).toUpperCase()}${remedy.slice(1)}.`,
});

const LENGTHS = ['pitch-across', 'pitch-down', 'margin-left', 'margin-top', 'printer-margin'] as const;

function inDots(options: Values): OptionConflict | undefined {
  const name = LENGTHS.find((each) => options[each]?.unit === 'dots');
  return (
    name && {
      message: `\`${name}\` is measured on the sheet, but dots are those of the label printer`,
      remedy: `Write it in mm, in or pt: \`${name}: 10mm\`.`,
    }
  );
}

function withoutPairs(columns: number, rows: number): OptionConflict | undefined {
  if (columns % 2 === 0 || (columns === 1 && rows % 2 === 0)) return undefined;
  return {
    message: `with \`pairs\` a label and its slip lie beside each other, but ${columns} across and ${rows} down leave a label without a neighbour`,
    remedy: 'Use an even number of columns, or one column with an even number of rows; or leave `pairs` out.',
  };
}

function planOf(options: Values, grid: Grid): ImposePlan {
  const pt = (length: Length | undefined): number | undefined => length && lengthToPt(length, grid);
  const { sheet, columns, rows, lying, 'first-free': firstFree } = options;
  return {
    sheet,
    columns,
    rows,
    turn: lying === 'sideways' ? 90 : 0,
    firstFree,
    pitchAcross: pt(options['pitch-across']),
    pitchDown: pt(options['pitch-down']),
    marginLeft: pt(options['margin-left']),
    marginTop: pt(options['margin-top']),
    printerMargin: pt(options['printer-margin']),
    cutMarks: options['cut-marks'] || undefined,
    pairs: options.pairs || undefined,
  };
}
