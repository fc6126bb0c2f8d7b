import { code128, qr } from '../code-art.js';
import type { Kind } from '../foreign/kit/page.js';
import { place, type Shape } from '../foreign/kit/shapes.js';
import { barsIn } from './bands.js';
import { BESIDE, column } from './beside.js';
import type { Choices } from './choices.js';
import { Sheet } from './ink.js';
import { randomLabel } from './label.js';
import { matter, type Matter } from './words.js';

interface Without {
  readonly kind: Kind;
  readonly width: number;
  readonly height: number;
  readonly others: readonly Shape[];
}
type Paper = (pick: Choices, told: Matter, art: Sheet) => void;

const inset = (art: Sheet, margin: number, draw: (own: Sheet) => void): void => {
  const own = new Sheet(art.width - 2 * margin, art.height - 2 * margin, art.family);
  draw(own);
  art.put(own, margin, margin);
};

const several: Paper = (pick, told, art) => {
  inset(art, pick.between(24, 50), (own) => {
    own.put(column(pick, told, own.width, own.height).art, 0, 0);
  });
};

const office: Paper = (pick, told, art) => {
  const what = pick.of(['bill', 'slip'] as const);
  inset(art, pick.between(28, 56), (own) => {
    const head = new Sheet(own.width, 60);
    own.put(head, 0, 0);
    BESIDE.logo(pick, told, head);
    own.put(head, 0, 0);
    const body = new Sheet(own.width, own.height - 80, own.family);
    const used = BESIDE[what](pick, told, body);
    own.put(body, 0, 70);
    const y = 80 + used;
    if (y + 60 > own.height) return;
    if (pick.chance(0.4)) barsIn(own, code128(`INV${told.parcel.order}`), { x: 0, y, width: 200, height: 28 }, pick);
    else if (pick.chance(0.4)) own.symbol(qr(`PAY|${told.parcel.order}|EXAMPLE`), 0, y, 2, 0);
  });
};

/** Terms in columns. */
const terms: Paper = (pick, { words, parcel }, art) => {
  const columns = pick.between(1, 3);
  const width = (art.width - 72 - (columns - 1) * 14) / columns;
  art.text(36, 48, parcel.from[0] ?? '', { size: 16, bold: true });
  const size = pick.size(6, 9);
  for (let k = 0; k < columns; k++) {
    let y = 72;
    for (let n = 1; y < art.height - 90 && n < 9; n++) {
      art.text(36 + k * (width + 14), y, `§ ${k * 8 + n}`, { size, bold: true });
      y = art.paragraph(36 + k * (width + 14), y + size * 1.3, width, words.small, { size, leading: size * 1.25 }) + size;
    }
  }
};

/** A voucher as large as a label, framed or not, with a code. */
const voucher: Paper = (pick, { words, parcel }, art) => {
  const { width: w, height: h } = art;
  const framed = pick.chance(0.6);
  if (framed) art.rect(6, 6, w - 12, h - 12, { line: pick.size(0.5, 2.5), radius: pick.of([0, 8]) });
  art.text(w / 2, h * 0.16, words.advert[0], { size: 24, bold: true, anchor: 'middle', fit: w - 40 });
  art.paragraph(24, h * 0.3, w - 48, words.advert[1], { size: 11, leading: 14 });
  art.text(w / 2, h * 0.52, `${pick.between(5, 50)}.00 EUR`, { size: 30, bold: true, anchor: 'middle' });
  if (pick.chance(0.5))
    barsIn(art, code128(`GIFT${parcel.routing.slice(0, 8)}`), { x: 20, y: h * 0.62, width: w - 40, height: h * 0.16 }, pick);
  else art.symbol(qr(`https://www.example/gift/${parcel.routing}`), w / 2 - 45, h * 0.6, 90 / 25, 0);
  art.text(w / 2, h - 22, `${parcel.from[0] ?? ''} - ${words.mark}`, { size: 8, anchor: 'middle', fit: w - 30 });
};

/** An admission ticket: a stub, a code, a seat. */
const ticket: Paper = (pick, { words, parcel, day }, art) => {
  const { width: w, height: h } = art;
  art.rect(8, 8, w - 16, Math.min(h - 16, 190), { line: 1 });
  art.text(24, 46, parcel.from[0] ?? '', { size: 18, bold: true, fit: w * 0.6 }).text(24, 68, words.advert[0], { size: 12, fit: w * 0.6 });
  art.lines(24, 96, [day, `Row ${pick.between(1, 30)}  Seat ${pick.between(1, 40)}`, 'ADMIT ONE - SAMPLE'], { size: 11, leading: 16 });
  const code = qr(`TICKET-${parcel.order}-${parcel.routing}`);
  art.symbol(code, w - 40 - code.columns * 2.6, 40, 2.6, 0);
  if (pick.chance(0.5)) art.line(w * 0.62, 8, w * 0.62, 190, { line: 0.6, dash: [3, 3] });
};

/** Sheets of codes for shelves or goods. */
const inventory: Paper = (pick, { parcel }, art) => {
  const [columns, rows] = [pick.between(2, 3), pick.between(4, 9)];
  const [w, h] = [(art.width - 60) / columns, (art.height - 80) / rows];
  const ruled = pick.chance(0.5);
  for (let k = 0; k < columns * rows; k++) {
    const [x, y] = [30 + (k % columns) * w, 50 + Math.floor(k / columns) * h];
    if (ruled) art.rect(x, y, w, h, { line: 0.4 });
    const what = parcel.goods[k % parcel.goods.length]?.[1] ?? '';
    art.text(x + 10, y + 14, what, { size: 8, bold: true, fit: w - 20 });
    barsIn(art, code128(`SH${pick.digits(6)}`), { x: x + 4, y: y + 20, width: w - 8, height: Math.min(40, h - 36) }, pick);
    art.text(x + 10, y + Math.min(72, h - 5), `Bin ${k + 1}`, { size: 7 });
  }
  art.text(30, 34, 'Stock list - sample', { size: 14, bold: true });
};

/** Declares what is in a parcel; as a page, or as a card of the old size. */
const customs: Paper = (pick, { words, parcel, day }, art) => {
  const { width: w, height: h } = art;
  const [title, contents, value, sign] = words.customs;
  const [left, wide] = [20, w - 40];
  const high = Math.min(h - 40, wide * 0.9);
  art.rect(left, 20, wide, high, { line: 1 }).text(left + 8, 42, title, { size: 13, bold: true, fit: wide * 0.6 });
  if (pick.chance(0.6)) barsIn(art, code128(parcel.s10), { x: left + wide * 0.55, y: 26, width: wide * 0.44, height: 22 }, pick);
  art.line(left, 58, left + wide, 58, { line: 0.6 });
  for (const k of [0, 1, 2, 3]) art.rect(left + 8 + (k * wide) / 4, 64, 8, 8, { line: 0.7 });
  art
    .line(left, 80, left + wide, 80, { line: 0.6 })
    .text(left + 6, 92, contents, { size: 7, fit: wide * 0.5 })
    .text(left + wide - 6, 92, value, { size: 7, anchor: 'end' });
  for (const [k, [count, what, price]] of parcel.goods.entries())
    art
      .text(left + 6, 108 + k * 14, `${count} x ${what}`, { size: 8.5, fit: wide * 0.6 })
      .text(left + wide - 6, 108 + k * 14, price, { size: 8.5, anchor: 'end' });
  const y = 20 + high - 30;
  art
    .line(left, y, left + wide, y, { line: 0.6 })
    .text(left + 6, y + 12, sign, { size: 7, fit: wide * 0.5 })
    .text(left + 6, y + 24, day, { size: 8 });
  art.text(left + wide - 6, y + 24, words.mark, { size: 6.5, anchor: 'end', fit: wide * 0.5 });
};

/** A page of a manual: words, and a label as a figure, much smaller than it is. */
const manual: Paper = (pick, told, art) => {
  const { label, scale } = { label: randomLabel(pick, told, undefined), scale: pick.size(0.3, 0.6) };
  const y = art.paragraph(50, 100, art.width - 100, told.words.steps.slice(1).join(' '), { size: 10, leading: 14 });
  art.text(50, 70, told.words.steps[0], { size: 18, bold: true, fit: art.width - 100 });
  const size = label.art.bounds(0, scale);
  const x = (art.width - size.width) / 2;
  art.put(label.art, x, y + 20, 0, scale);
  art.text(art.width / 2, y + size.height + 36, 'Fig. 1: example of a label', { size: 9, anchor: 'middle' });
  art.paragraph(50, y + size.height + 64, art.width - 100, told.words.small, { size: 10, leading: 14 });
};

const PAPERS = { several, office, terms, voucher, ticket, inventory, customs, manual } as const;
const KINDS: Partial<Record<keyof typeof PAPERS, Kind>> = {
  office: 'invoice',
  voucher: 'advert',
  customs: 'customs',
  manual: 'instructions',
};

/** A page that holds no label. */
export function pageWithout(pick: Choices): Without {
  const told = matter(pick);
  const name = pick.kept('no label', { several: 3, office: 3, terms: 1, voucher: 2, ticket: 1, inventory: 1, customs: 2, manual: 2 });
  const small =
    name === 'voucher' || name === 'ticket' || name === 'customs'
      ? pick.chance(0.6)
      : pick.chance(0.1) && name !== 'manual' && name !== 'inventory';
  const papers = small
    ? ([
        [288, 432],
        [297.64, 419.53],
        [432, 288],
      ] as const)
    : ([
        [612, 792],
        [595.28, 841.89],
        [595.28, 841.89],
        [419.53, 595.28],
      ] as const);
  const [width, height] = pick.of<readonly [number, number]>(papers);
  pick.note('paper', small ? 'small' : 'large');
  const art = new Sheet(width, height, pick.weighed({ sans: 4, serif: 1 }));
  PAPERS[name](pick, told, art);
  return { kind: KINDS[name] ?? 'other', width, height, others: place(art.shapes, art, { x: 0, y: 0 }) };
}
