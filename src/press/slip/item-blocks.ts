import type { SlipItem } from '../../sheet/slip-content.js';
import type { Block, Row } from './flow.js';
import type { SetLine, Style } from '../type/paragraph.js';
import { row, sideBySide, sideOf, strip, type Cell, type Column, type Side } from './rows.js';
import { GUTTER, HAIR, HEAVY, MOST_OF_WIDTH, set, widthOf, type Setting } from './setting.js';

/** White above the first item, and below each; pt. */
const ABOVE = 10;
const BELOW = 3;

/** An item's block holds its quantity, large, its words, and its price where prices are asked for: an item is not parted from its quantity. */
export function itemBlocks(items: readonly SlipItem[], prices: boolean, setting: Setting): readonly Block[] {
  const { types, width } = setting;
  const quantities = items.map(({ quantity }) => quantityText(quantity, setting));
  const columns = columnsOf(quantities, prices ? items.map(({ price }) => price) : undefined, setting);
  const hair = { x: 0, y: 0, width, height: HAIR };
  const head = headOf(columns, setting);
  return items.map((item, at) => {
    const words = wordsOf(item, columns.words.width, setting);
    const number = set(quantities[at] ?? '', item.quantity === 1 ? types.quantity : types.quantities, columns.quantity.width, setting);
    const { price } = columns;
    const rows = sideBySide([
      { lines: number, column: columns.quantity, side: 'right' },
      { lines: words, column: columns.words, side: words.map(sideOf).includes('right') ? 'right' : 'left' },
      ...(price ? [{ lines: set(item.price, types.body, price.width, setting), column: price, side: 'right' as const }] : []),
    ]);
    return {
      rows: [...(at === 0 ? [] : [{ ...strip(HAIR + 1, [hair]), between: true }]), ...rows, strip(BELOW)],
      gap: at === 0 ? ABOVE : 0,
      head,
      whole: true,
    };
  });
}

function quantityText(quantity: number, { warn }: Setting): string {
  if (Number.isFinite(quantity)) return String(quantity);
  warn('An item has no quantity: the slip shows a question mark.');
  return '?';
}

interface Columns {
  readonly quantity: Column;
  readonly words: Column;
  readonly price?: Column;
}

function columnsOf(quantities: readonly string[], prices: readonly string[] | undefined, setting: Setting): Columns {
  const { types, width } = setting;
  const widest = (texts: readonly string[], label: string, style: Style): number =>
    Math.min(
      width * MOST_OF_WIDTH,
      texts.reduce((most, text) => Math.max(most, widthOf(text, style, setting)), widthOf(label, types.label, setting)),
    );
  const quantity: Column = { x: 0, width: widest(quantities, 'QTY', types.quantities) };
  const from = quantity.width + GUTTER;
  if (!prices) return { quantity, words: { x: from, width: width - from } };
  // Three columns share what two of them may take.
  const price = Math.min(widest(prices, 'PRICE', types.body), width * (2 * MOST_OF_WIDTH) - quantity.width - 2 * GUTTER);
  return {
    quantity,
    words: { x: from, width: width - from - price - GUTTER },
    price: { x: width - price, width: price },
  };
}

function headOf({ quantity, words, price }: Columns, setting: Setting): Row {
  const label = (text: string, column: Column, side: Side): readonly Cell[] =>
    set(text, setting.types.label, column.width, setting)
      .slice(0, 1)
      .map((line) => ({ line, column, side }));
  const labels = row([
    ...label('QTY', quantity, 'right'),
    ...label('ITEM', words, 'left'),
    ...(price ? label('PRICE', price, 'right') : []),
  ]);
  const stroke = { x: 0, y: labels.height + 1.5, width: setting.width, height: HEAVY / 2 };
  return { ...labels, height: labels.height + 3, rules: [stroke] };
}

/** The words for an item, the first ones strong: something is always said. */
function wordsOf({ description, variant, sku }: SlipItem, width: number, setting: Setting): readonly SetLine[] {
  const { types } = setting;
  const said = [
    { text: description, style: types.body },
    { text: variant, style: types.body },
    { text: sku, style: types.small },
  ].filter(({ text }) => text.trim() !== '');
  const words = said.flatMap(({ text, style }, at) => set(text, at === 0 ? types.strong : style, width, setting));
  return words.length > 0 ? words : set('(no description)', types.body, width, setting);
}
