import type { OrderField } from '../orders/order-map.js';
import type { Chosen } from './choose-columns.js';
import type { DateOrderTold } from './date-order.js';
import { wrapped, yamlList, yamlText } from './plan.js';

/** What is proposed for a file of orders. */
export interface Proposal {
  /** The file's name, as shown. */
  readonly file: string;
  /** Path of keys to the list of a JSON file; empty for a table, and where the file is the list. */
  readonly list: string;
  readonly columns: ReadonlyMap<OrderField, Chosen>;
  readonly dateOrder: DateOrderTold;
  /** Words of the status columns that nobody knows. */
  readonly unknownStates: readonly string[];
  /** Names of columns that no field takes. */
  readonly unused: readonly string[];
}

const listed = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(', ');

function columnLines(field: OrderField, { columns, sure, others }: Chosen): readonly string[] {
  const [only = ''] = columns;
  const value = columns.length === 1 ? yamlText(only) : (yamlList(columns) ?? '');
  const remarks = [
    ...(sure ? [] : ['Not sure: check this one.']),
    ...(others.length > 0 ? [`${others.length === 1 ? 'This could be meant, too' : 'These could be meant, too'}: ${listed(others)}.`] : []),
  ];
  return [...(remarks.length > 0 ? wrapped(remarks.join(' '), '    # ', '    # ') : []), `    ${field}: ${value}`];
}

function dateLines(told: DateOrderTold): readonly string[] {
  const comment = (text: string): readonly string[] => wrapped(text, '  # ', '  # ');
  switch (told.kind) {
    case 'needless':
      return [];
    case 'told':
      return [...comment(`Told by dates such as ${told.example}, which can be read in one way only.`), `  date-order: ${told.order}`];
    case 'unknown':
      return [
        ...comment(
          `Dates such as ${told.example} can be read in two ways, and nothing in the file tells which. Take the # off the right line:`,
        ),
        '  # date-order: day-month-year',
        '  # date-order: month-day-year',
      ];
    case 'mixed':
      return comment('The dates of this file contradict each other: in some the day comes first, in others the month.');
  }
}

function stateLines(words: readonly string[]): readonly string[] {
  if (words.length === 0) return [];
  const remark =
    'It is not known what these words mean; an order with one of them counts as to be shipped. Write to-ship, cancelled, refunded, shipped, ' +
    'pick-up or digital behind those that mean something else, and take the # off their lines and off the first one.';
  return [
    ...wrapped(remark, '  # ', '  # '),
    '  # states:',
    ...words.map((word) => `  #   ${yamlText(word.replaceAll(/\s+/g, ' '))}: to-ship`),
  ];
}

/** The lines for a recipe. `remarks`: sentences that stand above it. */
export function ordersBlock({ file, list, columns, dateOrder, unknownStates, unused }: Proposal, remarks: readonly string[]): string {
  const head = [
    `Drafted from ${file}. Put it into the channel's recipe, beside \`about\` and \`steps\`; behind each field stands the column that holds it.`,
    ...remarks,
    ...(unused.length > 0 ? [`Columns that are not used: ${listed(unused)}.`] : []),
  ];
  return [
    ...head.flatMap((line) => wrapped(line, '# ', '#   ')),
    'orders:',
    ...(list === '' ? [] : [`  list: ${yamlText(list)}`]),
    '  columns:',
    ...[...columns].flatMap(([field, chosen]) => columnLines(field, chosen)),
    ...dateLines(dateOrder),
    ...stateLines(unknownStates),
    '',
  ].join('\n');
}
