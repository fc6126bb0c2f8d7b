import { code128, qr } from '../code-art.js';
import type { Choices } from './choices.js';
import { boundsOf, Sheet } from './ink.js';
import { barsIn } from './bands.js';
import type { Matter } from './words.js';
import { wrap } from '../foreign/kit/text-width.js';

/** Something that stands on a page beside a label; `height` is how much of its room it took. */
export interface Beside {
  readonly art: Sheet;
  readonly height: number;
}
type Draw = (pick: Choices, told: Matter, art: Sheet) => number;

const TINTS = ['#eef3e6', '#e8eef7', '#f7efe2', '#dddddd', 'none'] as const;
const rowsThatFit = (pick: Choices, room: number, each: number, most: number): number =>
  Math.max(1, Math.min(pick.between(2, most), Math.floor(room / each)));

/** What to do with the page: numbered, with bullets, or as paragraphs; perhaps in a frame. */
const steps: Draw = (pick, { words }, art) => {
  const { width: w, height: h } = art;
  const [title, ...all] = words.steps;
  const framed = pick.chance(0.2);
  const x = framed ? 10 : 0;
  const size = pick.size(7.5, 10.5);
  const style = pick.weighed({ numbers: 3, discs: 1, bullets: 2, plain: 2 });
  let y = (framed ? 14 : 4) + size + 2;
  art.text(x, y, title, { size: size + pick.size(1, 5), bold: true, fit: w - 2 * x });
  y += size * 2;
  for (const [k, step] of all.entries()) {
    const left = style === 'plain' ? x : x + 16;
    const high = wrap(step, w - left - x - 6, size).length * size * 1.25;
    if (y + high > h - 6) break;
    if (style === 'numbers') art.text(x, y, `${k + 1}.`, { size });
    if (style === 'discs')
      art.disc(x + 6, y - size * 0.35, size * 0.68).text(x + 6, y, String(k + 1), { size: size * 0.85, fill: '#ffffff', anchor: 'middle' });
    if (style === 'bullets') art.rect(x + 2, y - size * 0.5, 3, 3, { fill: '#000000' });
    y = art.paragraph(left, y, w - left - x - 6, step, { size, leading: size * 1.25 }) + size * 0.4;
  }
  if (framed) art.rect(0.5, 0.5, w - 1, Math.min(h, y + 4) - 1, { line: pick.of([0.5, 1]), stroke: pick.of(['#000000', '#888888']) });
  return Math.min(h, y + 4);
};

/** Goods in rows, ruled in one way or another; with prices it is a bill. */
function goods(pick: Choices, told: Matter, art: Sheet, title: string, prices: boolean): number {
  const { width: w, height: h } = art;
  const { parcel, words, day } = told;
  const [, quantity, item, order] = words.slip;
  const size = pick.size(7.5, 10);
  const row = size * pick.size(1.5, 2);
  art.text(0, 16, title, { size: pick.size(12, 18), bold: true, fit: w * 0.55 });
  art.lines(w, 10, [`${order} ${parcel.order}`, day], { size, leading: size * 1.3, anchor: 'end', fit: w * 0.42 });
  let y = 36;
  if (h > 200 && pick.chance(0.6)) y = art.lines(0, y, parcel.to, { size, leading: size * 1.25, fit: w }) + 6;
  const look = pick.weighed({ lines: 3, grid: 2, zebra: 2, none: 1 });
  if (look === 'zebra' || look === 'grid') art.rect(0, y, w, row, { fill: '#dddddd' });
  const count = rowsThatFit(pick, h - y - row - 50, row, 6);
  const boxes = !prices && pick.chance(0.2);
  const cell = (k: number, quantityText: string, name: string, end: string, bold: boolean): void => {
    const base = y + row * k + row * 0.68;
    if (look === 'zebra' && k % 2 === 0 && k > 0) art.rect(0, y + row * k, w, row, { fill: '#f0f0f0' });
    if (boxes && !bold) art.rect(4, base - 7, 8, 8, { line: 0.7 });
    else art.text(4, base, quantityText, { size, bold });
    art.text(w * 0.14 + 10, base, name, { size, bold, fit: w * 0.6 }).text(w - 4, base, end, { size, bold, anchor: 'end', fit: w * 0.2 });
    if (look === 'lines' || look === 'grid')
      art.line(0, y + row * (k + 1), w, y + row * (k + 1), { line: 0.5, stroke: look === 'grid' ? '#000000' : '#888888' });
  };
  cell(0, quantity, item, prices ? 'EUR' : 'SKU', true);
  for (let k = 1; k <= count; k++) {
    const [many, what, price] = parcel.goods[k % parcel.goods.length] ?? [1, 'Bowl', '9.00'];
    cell(k, String(many), what, prices ? price : `K-${k}0${many}`, false);
  }
  if (look === 'grid') {
    art.rect(0, y, w, row * (count + 1), { line: 0.75 });
    for (const at of [w * 0.14, w * 0.78]) art.line(at, y, at, y + row * (count + 1), { line: 0.5 });
  }
  y += row * (count + 1) + size + 6;
  if (prices) {
    for (const [k, name] of words.bill.slice(1, 4).entries())
      art
        .text(w - 80, y + k * size * 1.4, name, { size, anchor: 'end', bold: k === 2, fit: w * 0.4 })
        .text(w - 4, y + k * size * 1.4, `${parcel.goods.length * (k + 7)}.50`, { size, anchor: 'end' });
    y += size * 4.4;
  }
  art.text(0, y, pick.chance(0.6) ? words.slip[4] : words.mark, { size: size * 0.9, fit: w });
  return Math.min(h, y + 4);
}
const slip: Draw = (pick, told, art) => goods(pick, told, art, told.words.slip[0], false);
const bill: Draw = (pick, told, art) => goods(pick, told, art, `${told.words.bill[0]} ${told.parcel.order}`, true);

/** The sender's part: the same addresses, perhaps the same number as bars. */
const receipt: Draw = (pick, told, art) => {
  const { width: w, height: h } = art;
  const { parcel, words, day } = told;
  const framed = pick.chance(0.35);
  const x = framed ? 8 : 0;
  const size = pick.size(7, 9);
  art.text(x, 16, words.receipt[0], { size: size + 4, bold: true, fit: w - 2 * x }).text(x, 28, words.receipt[1], { size, fit: w - 2 * x });
  const rows: readonly (readonly [string, string])[] = [
    [words.label[1], parcel.to.join(', ')],
    [words.label[0], parcel.from.slice(0, 2).join(', ')],
    [words.label[2], parcel.weight],
    [words.label[3], day],
    [words.label[4], told.number],
  ];
  let y = 44;
  for (const [name, value] of rows) {
    if (y > h - 8) break;
    art.text(x, y, name, { size, bold: true, fit: w * 0.28 }).text(x + w * 0.3, y, value, { size, fit: w * 0.7 - 2 * x });
    y += size * 1.7;
  }
  const withCode = pick.kept('receipt code', { same: 1, none: 1 }) === 'same' && y + 46 < h;
  if (withCode && barsIn(art, told.tracking, { x, y, width: w - 2 * x, height: pick.between(22, 34) }, pick)) y += 44;
  art.text(x, Math.min(h - 3, y + 2), words.mark, { size: 6.5, fit: w - 2 * x });
  if (framed) art.rect(0.5, 0.5, w - 1, Math.min(h, y + 8) - 1, { line: 0.75 });
  return Math.min(h, y + 8);
};

const coupon: Draw = (pick, { words, parcel }, art) => {
  const { width: w } = art;
  const h = Math.min(art.height, pick.between(96, 170));
  const code = pick.chance(0.65) ? qr(`https://www.example/${parcel.order}`) : code128(`SPEC-${parcel.order}`);
  const border = pick.weighed({ solid: 2, dashed: 2, none: 1 });
  const fill = pick.of(TINTS);
  const style =
    border === 'none'
      ? { line: 0 }
      : { line: pick.size(0.5, 1.5), radius: pick.of([0, 0, 6]), ...(border === 'dashed' ? { dash: [4, 3] } : {}) };
  art.rect(1, 1, w - 2, h - 2, { ...style, ...(fill === 'none' ? {} : { fill }) });
  art.text(12, 26, words.advert[0], { size: 15, bold: true, fit: w - 24 });
  const square = code.rows > 1;
  art.paragraph(12, 42, square ? w - 110 : w - 24, words.advert[1].slice(0, Math.floor(w * 0.6)), { size: 8, leading: 10.5 });
  if (square) {
    const module = Math.min(1.8, Math.min(80, h - 34) / code.columns);
    const size = code.columns * module;
    art.rect(w - size - 20, h - size - 20, size + 12, size + 12, { fill: '#ffffff' }).symbol(code, w - size - 14, h - size - 14, module, 0);
  } else {
    const module = Math.min(1.06, (w - 60) / code.columns);
    art.rect(12, h - 50, code.columns * module + 24, 34, { fill: '#ffffff' }).symbol(code, 24, h - 46, module, 26);
  }
  art.text(12, h - 6, words.mark, { size: 6, fit: w * 0.5 });
  return h;
};

/** A framed or filled area with large type. */
const advert: Draw = (pick, { words, parcel, carrier }, art) => {
  const { width: w } = art;
  const h = Math.min(art.height, w * pick.size(0.4, 1.4));
  const filled = pick.chance(0.3);
  art.rect(1, 1, w - 2, h - 2, filled ? { fill: pick.of(['#3b4a5a', '#7a2f3a', '#222222']) } : { line: pick.size(0.7, 3) });
  const fill = filled ? '#ffffff' : '#000000';
  if (h > 120) art.disc(w / 2, h * 0.32, Math.min(w, h) * 0.2, pick.of(['#8fa3b5', '#c9a27a', '#999999']));
  art.text(w / 2, h > 120 ? h * 0.66 : h * 0.45, words.advert[0], { size: 18, bold: true, anchor: 'middle', fit: w - 30, fill });
  art.text(w / 2, h > 120 ? h * 0.76 : h * 0.7, words.advert[1].split('. ')[0] ?? '', { size: 10, anchor: 'middle', fit: w - 30, fill });
  art.text(w / 2, h - 12, `${parcel.from[0] ?? carrier} - www.shop.example`, { size: 8, anchor: 'middle', fit: w - 30, fill });
  return h;
};

const logo: Draw = (pick, { parcel }, art) => {
  const tall = Math.min(art.height, pick.between(28, 44));
  const colour = pick.of(['#5b6b7a', '#000000', '#a8643c']);
  if (pick.chance(0.5)) art.disc(tall / 2, tall / 2, tall / 2, colour).disc(tall / 2, tall / 2, tall / 4, '#ffffff');
  else art.rect(0, 0, tall, tall, { fill: colour, radius: 4 });
  art.text(tall + 10, tall * 0.5, parcel.from[0] ?? '', { size: 15, bold: true, fit: art.width - tall - 14 });
  art.text(tall + 10, tall * 0.85, parcel.from.slice(1).join(', '), { size: 7.5, fit: art.width - tall - 14 });
  return tall;
};

const smallPrint: Draw = (pick, { words }, art) => {
  const size = pick.size(5.5, 8);
  let y = size + 2;
  for (let k = 0; k < 6 && y < art.height - 60; k++) y = art.paragraph(0, y, art.width, words.small, { size, leading: size * 1.25 }) + size;
  return Math.min(art.height, y);
};

/** Goods that come back: reasons to tick. */
const reasons: Draw = (pick, { words, parcel }, art) => {
  const [title, ...all] = words.reasons;
  const size = pick.size(8, 10);
  art
    .text(0, 16, title, { size: size + 3, bold: true, fit: art.width })
    .text(0, 30, `${words.slip[3]} ${parcel.order}`, { size, fit: art.width });
  let y = 50;
  for (const reason of all) {
    if (y > art.height - 6) break;
    art.rect(0.5, y - 8, 9, 9, { line: 0.8 }).text(16, y, reason, { size, fit: art.width - 20 });
    y += size * 2;
  }
  return Math.min(art.height, y);
};

export const BESIDE = { steps, slip, bill, receipt, coupon, advert, logo, smallPrint, reasons } as const satisfies Record<string, Draw>;
export type BesideName = keyof typeof BESIDE;
const WEIGHTS: Readonly<Record<BesideName, number>> = {
  steps: 5,
  slip: 4,
  bill: 2,
  receipt: 3,
  coupon: 2,
  advert: 2,
  logo: 2,
  smallPrint: 1,
  reasons: 1,
};

/** Fills a column of the page from its top with one thing or several. */
export function column(
  pick: Choices,
  told: Matter,
  width: number,
  height: number,
): { readonly art: Sheet; readonly names: readonly BesideName[] } {
  const art = new Sheet(width, height);
  const names: BesideName[] = [];
  let y = 0;
  const most = pick.between(1, 3);
  while (names.length < most && height - y > 70) {
    const name = pick.weighed(WEIGHTS);
    if (names.includes(name)) continue;
    const own = new Sheet(Math.min(width, pick.chance(0.25) ? width * 0.7 : width), height - y, pick.weighed({ sans: 6, serif: 2 }));
    const used = BESIDE[name](pick, told, own);
    // What is too high for its room is left away, as is what nothing was drawn of.
    if (own.shapes.length === 0 || boundsOf(own.shapes).y + boundsOf(own.shapes).height > own.height) break;
    art.put(own, 0, y);
    names.push(name);
    y += used + pick.between(14, 34);
  }
  return { art, names };
}
