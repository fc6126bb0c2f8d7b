import { Art } from '../kit/art.js';
import { checkDigit } from '../kit/zint.js';
import type { Parcel, Vocabulary } from './content.js';
import { ascii, Dice } from './content.js';
import type { Spot } from './beside.js';

const start = ({ width, height, family }: Spot): Art => new Art(width, height, family);
const LEGALESE =
  'Goods remain ours until they are paid in full. Risk passes when the parcel is handed over. Complaints about visible damage are made within three days in writing. ' +
  'No shop is liable for delay by weather, strike or a closed road. Places of performance and law are those of the seller. Should one of these terms be void, the others stay.';

/** A bill: head, both addresses, lines, sum, how to pay. */
export function invoice(parcel: Parcel, words: Vocabulary, spot: Spot, qr: boolean): Art {
  const { width: w, height: h } = spot;
  const page = start(spot).text(w, 22, `No. ${parcel.routing.slice(0, 8)}`, { size: 11, anchor: 'end' });
  page.text(w, 38, `Order ${parcel.order}`, { size: 9, anchor: 'end' });
  page.text(0, 22, 'INVOICE', { size: 22, bold: true }).lines(0, 42, parcel.from, { size: 8 });
  page.text(0, 112, 'Bill to', { size: 8, bold: true }).lines(0, 126, parcel.to, { size: 11 });
  let y = 210;
  page.rect(0, y - 14, w, 20, { line: 1 });
  for (const [x, head] of [
    [6, 'Pos'],
    [40, 'Article'],
    [w * 0.65, 'Qty'],
    [w * 0.8, 'Each'],
  ] as const)
    page.text(x, y, head, { size: 9, bold: true });
  for (const [index, [quantity, what, price]] of parcel.goods.entries()) {
    y += 20;
    page
      .text(6, y, String(index + 1), { size: 9 })
      .text(40, y, what, { size: 9 })
      .text(w * 0.65, y, String(quantity), { size: 9 })
      .text(w * 0.8, y, price, { size: 9 });
  }
  const sum = parcel.goods.reduce((total, [quantity, , price]) => total + quantity * Number(price), 0).toFixed(2);
  page.line(w * 0.6, y + 12, w, y + 12).text(w, y + 30, `Total ${sum}`, { size: 13, bold: true, anchor: 'end' });
  page.paragraph(
    0,
    y + 70,
    w * 0.6,
    `Please pay within 14 days. This is an example bill (${parcel.mark}); no goods were sold by ${words.shops[0] ?? ''}.`,
    { size: 9 },
  );
  if (qr) page.code('qr', `PAY|${parcel.routing}|${sum}|EXAMPLE`, w - 110, y + 60, 100, 100);
  page
    .line(0, h - 30, w, h - 30, { line: 0.5 })
    .text(w / 2, h - 14, 'Account 0000 0000 0000, Example Savings Bank, phone 555-0142', { size: 7.5, anchor: 'middle' });
  return page;
}

/** A page full of terms, in one or two columns. */
export function terms(parcel: Parcel, spot: Spot, columns: 1 | 2): Art {
  const { width: w, height: h } = spot;
  const art = start(spot).text(0, 20, 'General terms of sale', { size: 16, bold: true }).text(0, 36, parcel.mark, { size: 8 });
  const gap = 20;
  const width = (w - gap * (columns - 1)) / columns;
  for (let column = 0; column < columns; column++) {
    let y = 60;
    for (let section = 1; y < h - 80; section++) {
      art.text(
        column * (width + gap),
        y,
        `${section + column * 9}. ${['Scope', 'Price', 'Delivery', 'Defects', 'Data', 'Law', 'Returns', 'Gifts'][(section + column) % 8] ?? ''}`,
        { size: 9, bold: true },
      );
      y = art.paragraph(column * (width + gap), y + 12, width, LEGALESE, { size: 7.5, leading: 9.5 }) + 8;
    }
  }
  return art;
}

/** What to take from which shelf. */
export function pickList(parcels: readonly Parcel[], spot: Spot, barcodes: boolean): Art {
  const { width: w } = spot;
  const art = start(spot)
    .text(0, 20, 'PICK LIST', { size: 18, bold: true })
    .text(w, 20, `wave 7, ${parcels[0]?.mark ?? ''}`, { size: 8, anchor: 'end', fit: w * 0.5 });
  let y = 50;
  for (const { order, goods, depot, town } of parcels) {
    art
      .rect(0, y - 12, w, 36, { line: 0.7 })
      .text(6, y + 2, order, { size: 10, bold: true })
      .text(6, y + 16, town, { size: 8 });
    art
      .text(110, y + 2, goods.map(([quantity, what]) => `${quantity} ${what}`).join('; '), { size: 9, fit: w - 270 })
      .text(110, y + 16, `shelf ${depot}`, { size: 8 });
    if (barcodes) art.code('code128', order, w - 130, y - 8, 110, 28);
    y += 40;
  }
  return art;
}

/** A letter about money sent, with a slip to tear off. */
export function remittance(parcel: Parcel, spot: Spot, barcode: boolean): Art {
  const { width: w } = spot;
  const art = start(spot);
  art.lines(0, 20, parcel.from, { size: 9 });
  art.lines(0, 100, parcel.to, { size: 11 });
  art.text(0, 190, 'Advice of payment', { size: 14, bold: true });
  let y = art.paragraph(
    0,
    212,
    w,
    `We have sent you the sum of the invoices below by bank transfer. Please tell us within ten days if a line is wrong. ${parcel.mark}.`,
    { size: 10, leading: 14 },
  );
  for (const [quantity, , price] of parcel.goods) {
    y += 18;
    art
      .text(20, y, `Invoice ${parcel.routing.slice(quantity, quantity + 7)}`, { size: 10 })
      .text(w * 0.6, y, price, { size: 10, anchor: 'end' });
  }
  art.text(0, y + 60, 'Yours faithfully', { size: 10 }).text(0, y + 100, 'Accounts', { size: 10 });
  if (barcode)
    art
      .line(0, y + 150, w, y + 150, { dash: [5, 4] })
      .code('itf', `${parcel.routing}8`, 20, y + 170, 220, 40)
      .text(20, y + 224, `${parcel.routing}8`, { size: 9 });
  return art;
}

/** Labels for a shelf: many product codes in cells. */
export function shelfLabels(seed: number, words: Vocabulary, spot: Spot, columns: number, rows: number): Art {
  const { width: w, height: h } = spot;
  const dice = new Dice(seed);
  const art = start(spot);
  const [cw, ch] = [w / columns, h / rows];
  for (let k = 0; k < columns * rows; k++) {
    const [x, y] = [(k % columns) * cw, Math.floor(k / columns) * ch];
    const number = `20${dice.digits(10)}`;
    art.rect(x + 4, y + 4, cw - 8, ch - 8, { line: 0.6 }).text(x + 10, y + 18, dice.of(words.goods), { size: 9, bold: true, fit: cw - 20 });
    art
      .code('ean13', number, x + cw * 0.18, y + 24, cw * 0.64, ch - 52)
      .text(x + cw / 2, y + ch - 14, number + checkDigit(number), { size: 8, anchor: 'middle' });
  }
  art.text(4, h + 8, words.marks[0] ?? '', { size: 7 });
  return art;
}

/** What the counter of a parcel shop gives back. */
export function shopReceipt(parcel: Parcel, spot: Spot): Art {
  const { width: w } = spot;
  const art = start(spot).text(w / 2, 20, 'PARCEL SHOP 014', { size: 13, bold: true, anchor: 'middle', family: 'mono' });
  const lines = [
    'Handed in: 1 parcel',
    `To: ${parcel.town}`,
    `Weight: ${parcel.weight}`,
    `No. ${parcel.tracking}`,
    'Paid: 0.00',
    '',
    ascii(parcel.mark),
  ];
  const y = art.lines(8, 44, lines, { size: 9, family: 'mono', fit: w - 16 });
  art
    .code('code128', parcel.tracking, 16, y + 4, w - 32, 40)
    .text(w / 2, y + 58, 'Keep this receipt', { size: 9, anchor: 'middle', family: 'mono' });
  return art;
}
