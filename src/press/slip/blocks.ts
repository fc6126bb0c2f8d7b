import type { SlipContent, SlipItem, SlipLook } from '../../sheet/slip-content.js';
import { cleanParagraphs, cleanText, type Warn } from './clean.js';
import { ANY_HAN, hanOrder, type Han } from './faces.js';
import type { Block, Row } from './flow.js';
import { directionOf, lineWidth, setParagraph, type Direction, type SetLine, type Style } from './paragraph.js';
import { row, sideBySide, sideOf, strip, type Column } from './rows.js';
import type { Types } from './type-sizes.js';

/** White between columns and between parts, pt. */
const GUTTER = 8;
const PART = 9;

/** The heavy stroke under the studio, and the hairline between items; pt. */
const HEAVY = 1.2;
const HAIR = 0.36;

/** No column at the side takes more of the width than this. */
const MOST_OF_WIDTH = 0.4;

/** What is known wherever text is set. */
export interface Setting {
  readonly types: Types;
  /** Width of the text area, pt. */
  readonly width: number;
  /** Regional forms of Han characters where a text itself tells nothing. */
  readonly han: readonly Han[];
  readonly warn: Warn;
}

/** The regional forms that the whole of a slip speaks for. */
export function hanOf(content: SlipContent): readonly Han[] {
  const items = content.items.flatMap(({ description, variant }) => [description, variant]);
  return hanOrder(
    [content.studio, ...content.contact, ...content.shipTo, content.giftMessage, content.notes, ...items].join('\n'),
    ANY_HAN,
  );
}

/** Sets one field as one paragraph. */
export function set(text: string, style: Style, width: number, { han, warn }: Setting, otherwise: Direction = 'ltr'): readonly SetLine[] {
  const order = hanOrder(text, han);
  return setParagraph(cleanText(text, order, warn), style, width, order, otherwise);
}

/** The width that a field takes on one line, pt. */
function widthOf(text: string, style: Style, { han, warn }: Setting): number {
  const order = hanOrder(text, han);
  return lineWidth(cleanText(text, order, warn), style, order);
}

/** All that a slip says, in its order, as blocks of rows in a text area of the setting's width. */
export function slipBlocks(content: SlipContent, look: SlipLook, setting: Setting): readonly Block[] {
  return [
    ...studioBlocks(content, setting),
    ...orderBlocks(content, setting),
    ...itemBlocks(content.items, look.prices && !look.gift, setting),
    ...messageBlocks('GIFT MESSAGE', content.giftMessage, setting.types.message, setting),
    ...(look.gift ? [] : messageBlocks('NOTES', content.notes, setting.types.body, setting)),
    ...togetherBlocks(content.together, setting),
  ];
}

/** The studio's name large, and how to reach it small at the other side. */
function studioBlocks({ studio, contact }: SlipContent, setting: Setting): readonly Block[] {
  const { types, width } = setting;
  const widest = contact.reduce((most, line) => Math.max(most, widthOf(line, types.small, setting)), 0);
  const side = Math.min(widest, width * MOST_OF_WIDTH);
  const name = set(studio, types.studio, width - (side > 0 ? side + GUTTER : 0), setting);
  const lines = contact.flatMap((line) => set(line, types.small, side, setting, directionOf(contact.join(' '))));
  if (name.length + lines.length === 0) return [];
  const rtl = name[0]?.rtl ?? false;
  const sideColumn: Column = { x: rtl ? 0 : width - side, width: side };
  const nameColumn: Column = { x: rtl ? side + GUTTER : 0, width: width - side - (side > 0 ? GUTTER : 0) };
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
  const side = Math.min(
    width * MOST_OF_WIDTH,
    Math.max(widthOf(date, types.strong, setting), widthOf(parcelText, count, setting), widthOf('PARCEL', types.label, setting)),
  );
  const right: Column = { x: width - side, width: side };
  const left: Column = { x: 0, width: width - side - GUTTER };
  const labelled = (label: string, lines: readonly SetLine[], space: number): readonly SetLine[] =>
    lines.length === 0 ? [] : [...set(label, types.label, space, setting), ...lines];
  const forWhom = directionOf(shipTo.join(' ')) ?? 'ltr';
  const address = shipTo.flatMap((line, at) => set(line, at === 0 ? types.strong : types.body, left.width, setting, forWhom));
  const pairs = [
    {
      main: labelled('ORDER', set(orderNumber, types.order, left.width, setting), left.width),
      beside: labelled('DATE', set(date, types.strong, side, setting), side),
    },
    { main: labelled('SHIP TO', address, left.width), beside: labelled('PARCEL', set(parcelText, count, side, setting), side) },
  ];
  return pairs
    .filter(({ main, beside }) => main.length + beside.length > 0)
    .map(({ main, beside }, at) => ({
      rows: sideBySide([
        { lines: main, column: left, side: 'left' },
        { lines: beside, column: right, side: 'right' },
      ]),
      gap: at === 0 ? 6 : 5,
      whole: true,
    }));
}

/** One row of quantity, text and price, with its variant and number below: an item is not parted from its quantity. */
function itemBlocks(items: readonly SlipItem[], prices: boolean, setting: Setting): readonly Block[] {
  if (items.length === 0) return [];
  const { types, width, warn } = setting;
  const quantities = items.map(({ quantity }) => {
    if (Number.isFinite(quantity)) return String(quantity);
    warn('An item has no quantity: the slip shows a question mark.');
    return '?';
  });
  const most = width * MOST_OF_WIDTH;
  const column = (texts: readonly string[], label: string, style: Style): number =>
    Math.min(
      most,
      texts.reduce((widest, text) => Math.max(widest, widthOf(text, style, setting)), widthOf(label, types.label, setting)),
    );
  const count: Column = { x: 0, width: column(quantities, 'QTY', types.quantities) };
  const priceWidth = prices
    ? column(
        items.map(({ price }) => price),
        'PRICE',
        types.body,
      )
    : 0;
  const price: Column = { x: width - priceWidth, width: priceWidth };
  const textX = count.width + GUTTER;
  const text: Column = { x: textX, width: width - textX - (prices ? priceWidth + GUTTER : 0) };
  const hair = { x: 0, y: 0, width, height: HAIR };
  const label = (words: string, where: Column, side: 'left' | 'right') =>
    set(words, types.label, where.width, setting)
      .slice(0, 1)
      .map((line) => ({ line, column: where, side }));
  const heading = row([...label('QTY', count, 'right'), ...label('ITEM', text, 'left'), ...(prices ? label('PRICE', price, 'right') : [])]);
  const head: Row = { ...heading, height: heading.height + 3, rules: [{ ...hair, y: heading.height + 1.5, height: HEAVY / 2 }] };
  return items.map((item, at) => {
    const quantity = quantities[at] ?? '';
    const style = item.quantity === 1 ? types.quantity : types.quantities;
    const [title = '', ...more] = titleOf(item);
    const titles = set(title, types.strong, text.width, setting);
    const details = more.flatMap((line, index) =>
      set(line, index === 0 && item.variant !== '' ? types.body : types.small, text.width, setting),
    );
    const amounts = prices ? set(item.price, types.body, price.width, setting) : [];
    const numbers = set(quantity, style, count.width, setting);
    const rows = sideBySide([
      { lines: numbers, column: count, side: 'right' },
      { lines: [...titles, ...details], column: text, side: [...titles, ...details].some(({ rtl }) => rtl) ? 'right' : 'left' },
      { lines: amounts, column: price, side: 'right' },
    ]);
    return { rows: [...(at === 0 ? [] : [strip(HAIR + 1, [hair])]), ...rows, strip(3)], gap: at === 0 ? 10 : 0, head, whole: true };
  });
}

/** The words for an item, the first one large: something is always said. */
function titleOf({ description, variant, sku }: SlipItem): readonly string[] {
  const said = [description, variant, sku].filter((each) => each.trim() !== '');
  return said.length === 0 ? ['(no description)'] : said;
}

/** Words to a person, beside a stroke. */
function messageBlocks(label: string, text: string, style: Style, setting: Setting): readonly Block[] {
  const { types, width, han, warn } = setting;
  const order = hanOrder(text, han);
  const indent = 9;
  const column: Column = { x: indent, width: width - indent };
  const direction = directionOf(text) ?? 'ltr';
  const stroke = (height: number) => [{ x: 0, y: 0, width: HEAVY, height }];
  const rows = cleanParagraphs(text, order, warn).flatMap((paragraph) => {
    const lines = setParagraph(paragraph, style, column.width, order, direction);
    if (lines.length === 0) return [strip(style.size / 2, stroke(style.size / 2))];
    return lines.map((line) => row([{ line, column, side: sideOf(line) }], stroke));
  });
  if (!rows.some(({ texts }) => texts.length > 0)) return [];
  const head = row(set(label, types.label, width, setting).map((line) => ({ line, column: { x: 0, width }, side: 'left' as const })));
  return [{ rows, gap: PART, head, whole: rows.length <= 8 }];
}

/** Numbers of other orders that lie in the same parcel. */
function togetherBlocks(together: readonly string[], setting: Setting): readonly Block[] {
  const { types, width } = setting;
  const numbers = together.filter((each) => each.trim() !== '');
  if (numbers.length === 0) return [];
  const column: Column = { x: 0, width };
  const head = row(set('ALSO IN THIS PARCEL', types.label, width, setting).map((line) => ({ line, column, side: 'left' as const })));
  const rows = set(numbers.map((each) => `Order ${each}`).join(', '), types.strong, width, setting).map((line) =>
    row([{ line, column, side: sideOf(line) }]),
  );
  return [{ rows, gap: PART, head, whole: true }];
}
