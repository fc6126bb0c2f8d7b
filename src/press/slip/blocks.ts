import type { Box } from '../../geometry/box.js';
import type { SlipContent, SlipLook } from '../../sheet/slip-content.js';
import { cleanParagraphs } from '../type/clean.js';
import { hanOrder } from '../type/han.js';
import type { Block, Row } from './flow.js';
import { itemBlocks } from './item-blocks.js';
import { directionOf, setParagraph, type SetLine, type Style } from '../type/paragraph.js';
import { row, sideBySide, sideOf, strip, type Column } from './rows.js';
import { GUTTER, HEAVY, MOST_OF_WIDTH, set, widthOf, type Setting } from './setting.js';

/** White between parts, and from a message's stroke to its text; pt. */
const PART = 9;
const INDENT = 9;

/** What a long word of the contact may take of the width. */
const MOST_FOR_WORD = 0.55;

/** Texts of no more lines than this are not parted. */
const SHORT = 8;

/** All that a slip says, in its order, as blocks of rows in a text area of the setting's width. */
export function slipBlocks(content: SlipContent, look: SlipLook, setting: Setting): readonly Block[] {
  return [
    ...studioBlocks(content, setting),
    ...orderBlocks(content, setting),
    ...wholeOrderBlocks(content, setting),
    ...itemBlocks(content.items, look.prices && !look.gift, setting),
    ...messageBlocks('GIFT MESSAGE', content.giftMessage, setting.types.message, setting),
    ...(look.gift ? [] : messageBlocks('NOTES', content.notes, setting.types.body, setting)),
    ...togetherBlocks(content.together, setting),
  ];
}

/** The studio's name large, and how to reach it small at the other side. */
function studioBlocks({ studio, contact }: SlipContent, setting: Setting): readonly Block[] {
  const { types, width } = setting;
  const widest = (texts: readonly string[]): number => texts.reduce((most, text) => Math.max(most, widthOf(text, types.small, setting)), 0);
  // An e-mail address is not cut for the sake of the name.
  const word = Math.min(widest(contact.flatMap((line) => line.split(/\s+/))), width * MOST_FOR_WORD);
  const side = Math.min(widest(contact), Math.max(width * MOST_OF_WIDTH, word));
  const taken = side > 0 ? side + GUTTER : 0;
  const name = set(studio, types.studio, width - taken, setting);
  const lines = contact.flatMap((line) => set(line, types.small, side, setting, directionOf(contact.join(' '))));
  if (name.length + lines.length === 0) return [];
  const rtl = name[0]?.rtl ?? false;
  const sideColumn: Column = { x: rtl ? 0 : width - side, width: side };
  const nameColumn: Column = { x: rtl ? taken : 0, width: width - taken };
  const rows = sideBySide([
    { lines: name, column: nameColumn, side: rtl ? 'right' : 'left' },
    { lines, column: sideColumn, side: rtl ? 'left' : 'right' },
  ]);
  return [{ rows: [...rows, strip(4), strip(HEAVY, [{ x: 0, y: 0, width, height: HEAVY }])], gap: 0, whole: false }];
}

/** Order number and date, then for whom it is and which parcel of the order. */
function orderBlocks({ orderNumber, date, shipTo, parcel }: SlipContent, setting: Setting): readonly Block[] {
  const { types, width } = setting;
  const count = parcel.of > 1 ? types.order : types.strong;
  const parcelText = `${parcel.number} of ${parcel.of}`;
  const widest = [widthOf(date, types.strong, setting), widthOf(parcelText, count, setting), widthOf('PARCEL', types.label, setting)];
  const beside: Column = sideColumn(Math.min(width * MOST_OF_WIDTH, Math.max(...widest)), width);
  const main: Column = { x: 0, width: width - beside.width - GUTTER };
  const direction = directionOf(shipTo.join(' ')) ?? 'ltr';
  const address = shipTo.flatMap((line, at) => set(line, at === 0 ? types.strong : types.body, main.width, setting, direction));
  const pairs = [
    {
      labels: ['ORDER', 'DATE'],
      lines: set(orderNumber, types.order, main.width, setting),
      beside: set(date, types.strong, beside.width, setting),
      side: 'left' as const,
    },
    {
      labels: ['SHIP TO', 'PARCEL'],
      lines: address,
      beside: set(parcelText, count, beside.width, setting),
      side: direction === 'rtl' ? ('right' as const) : ('left' as const),
    },
  ];
  return pairs
    .filter((pair) => pair.lines.length + pair.beside.length > 0)
    .map((pair, at) => {
      const label = (text: string | undefined, lines: readonly SetLine[], column: Column): readonly SetLine[] =>
        text === undefined || lines.length === 0 ? [] : set(text, types.label, column.width, setting);
      return {
        rows: [
          ...sideBySide([
            { lines: label(pair.labels[0], pair.lines, main), column: main, side: 'left' },
            { lines: label(pair.labels[1], pair.beside, beside), column: beside, side: 'right' },
          ]),
          ...sideBySide(
            [
              { lines: pair.lines, column: main, side: pair.side },
              { lines: pair.beside, column: beside, side: 'right' },
            ],
            'top',
          ),
        ],
        gap: at === 0 ? 6 : 5,
        whole: true,
      };
    });
}

/** Exports don't say which items lie in which parcel: a list that is longer than the parcel must not look like a mistake. */
function wholeOrderBlocks({ parcel, items }: SlipContent, setting: Setting): readonly Block[] {
  if (parcel.of < 2 || items.length === 0) return [];
  const column: Column = { x: 0, width: setting.width };
  const text = `Parcel ${parcel.number} of ${parcel.of}: listed are the items of the whole order.`;
  const lines = set(text, setting.types.strong, setting.width, setting);
  return [{ rows: lines.map((line) => row([{ line, column, side: 'left' }])), gap: 6, whole: true }];
}

const sideColumn = (side: number, width: number): Column => ({ x: width - side, width: side });

/** Words to a person, beside a stroke. */
function messageBlocks(label: string, text: string, style: Style, setting: Setting): readonly Block[] {
  const { width, han, warn } = setting;
  const order = hanOrder(text, han);
  const direction = directionOf(text) ?? 'ltr';
  const column: Column = { x: direction === 'rtl' ? 0 : INDENT, width: width - INDENT };
  const stroke = (height: number): readonly Box[] => [{ x: direction === 'rtl' ? width - HEAVY : 0, y: 0, width: HEAVY, height }];
  const rows = cleanParagraphs(text.trim(), order, warn).flatMap((paragraph) => {
    const lines = setParagraph(paragraph, style, column.width, order, direction);
    if (lines.length === 0) return [strip(style.size / 2, stroke(style.size / 2))];
    return lines.map((line) => row([{ line, column, side: sideOf(line) }], stroke));
  });
  if (!rows.some(({ texts }) => texts.length > 0)) return [];
  return [{ rows, gap: PART, head: heading(label, setting), whole: rows.length <= SHORT }];
}

/** Numbers of other orders that lie in the same parcel. */
function togetherBlocks(together: readonly string[], setting: Setting): readonly Block[] {
  const { types, width } = setting;
  const numbers = together.filter((each) => each.trim() !== '');
  if (numbers.length === 0) return [];
  const column: Column = { x: 0, width };
  const lines = set(numbers.map((each) => `Order ${each}`).join(', '), types.strong, width, setting);
  const rows = lines.map((line) => row([{ line, column, side: sideOf(line) }]));
  return [{ rows, gap: PART, head: heading('ALSO IN THIS PARCEL', setting), whole: rows.length <= SHORT }];
}

/** The name of a part. */
function heading(text: string, setting: Setting): Row {
  const column: Column = { x: 0, width: setting.width };
  const lines = set(text, setting.types.label, setting.width, setting);
  return row(lines.slice(0, 1).map((line) => ({ line, column, side: 'left' })));
}
