import { tidewick } from '../labels/tidewick.js';
import { contentFor } from '../content.js';
import { code128, gs1Code128, qr } from '../code-art.js';
import type { Drawing } from '../drawing.js';
import { barsWithText, sheet, type Paper } from './paper.js';

const NUMBER = '9261290100130435082878';
const tracking = (): ReturnType<typeof code128> => code128(NUMBER);

/** A drawing small on another, as a figure. */
function figure(on: Drawing, of: Drawing, x: number, y: number, scale: number): Drawing {
  for (const item of [...of.items, ...of.mark]) {
    switch (item.kind) {
      case 'text':
        on.items.push({
          ...item,
          x: x + item.x * scale,
          y: y + item.y * scale,
          size: item.size * scale,
          maxWidth: item.maxWidth && item.maxWidth * scale,
        });
        break;
      case 'rect':
      case 'frame':
        on.items.push({
          ...item,
          box: { x: x + item.box.x * scale, y: y + item.box.y * scale, width: item.box.width * scale, height: item.box.height * scale },
        });
        break;
      case 'line':
        on.items.push({
          ...item,
          x0: x + item.x0 * scale,
          y0: y + item.y0 * scale,
          x1: x + item.x1 * scale,
          y1: y + item.y1 * scale,
          thickness: item.thickness * scale,
        });
        break;
      case 'code':
        on.items.push({
          ...item,
          x: x + item.x * scale,
          y: y + item.y * scale,
          module: item.module * scale,
          rowHeight: item.rowHeight * scale,
        });
        break;
      case 'polygon':
      case 'disc':
        break;
    }
  }
  return on;
}
const example = (): Drawing => tidewick(contentFor('without label', 1, 'line'));

/** Papers that speak of a parcel and are not its label. */
export const ABOUT_PARCELS: readonly Paper[] = [
  {
    name: 'locker slip to show at the counter',
    draw: () => {
      const d = sheet('media')
        .text(144, 50, 'Show this code', { size: 24, bold: true, align: 'center' })
        .text(144, 74, 'at the counter', { size: 16, align: 'center' });
      return d.matrix(qr('PICKUP 44018827339105'), 144, 210, 6).text(144, 340, '4401 8827', { size: 28, bold: true, align: 'center' });
    },
  },
  {
    name: 'locker slip with tracking number in bars',
    draw: () => {
      const d = sheet('media').frame(8, 8, 272, 404, 1).text(144, 46, 'Your parcel is waiting', { size: 18, bold: true, align: 'center' });
      d.block(
        30,
        80,
        ['Recipient: A. Invented', 'Parcel number 9261 2901', 'Locker 14, Example Square', 'Open to 22:00'],
        { size: 11 },
        1.5,
      );
      return d.matrix(qr('PICKUP 44018827339105'), 144, 220, 4).bars(tracking(), 144, 340, 0.9, 50);
    },
  },
  {
    name: 'code for a printer-less return',
    draw: () => {
      const d = sheet('a4').text(60, 80, 'No printer needed', { size: 26, bold: true });
      d.block(
        60,
        120,
        ['1. Pack the parcel.', '2. Take it to a shop near you.', '3. Have this code scanned: the label is printed there.'],
        { size: 12 },
        1.6,
      );
      return d
        .matrix(qr('https://back.tidewick.example/c/9261290100130435'), 300, 380, 6)
        .text(300, 520, '9261 2901 0013 0435', { size: 14, align: 'center' });
    },
  },
  {
    name: 'drop-off receipt on label paper',
    draw: () => {
      const d = sheet('media').text(144, 40, 'Handed in', { size: 20, bold: true, align: 'center' });
      d.block(
        30,
        76,
        [
          '28 November 2026 16:12',
          'Counter 4, Mapleton Fable',
          'Parcel number',
          NUMBER,
          'Weight 1.2 kg',
          'Service: by day',
          'Postage 7.35',
        ],
        { size: 11 },
        1.5,
      );
      return d.bars(tracking(), 144, 280, 0.9, 60).text(144, 340, 'Thank you', { size: 12, align: 'center' });
    },
  },
  {
    name: 'list of parcels handed in, with bars',
    draw: () => {
      const d = sheet('a4').text(40, 50, 'Parcels of the day', { size: 18, bold: true });
      for (let k = 0; k < 6; k++) {
        d.text(40, 100 + k * 100, `Parcel no 926129010013043508287${k}`, { size: 10 }).text(40, 116 + k * 100, 'Weight 1.2 kg', {
          size: 10,
        });
        d.bars(code128(`926129010013043508287${k}`), 400, 105 + k * 100, 0.9, 45);
      }
      return d;
    },
  },
  {
    name: 'mail about a shipment',
    draw: () => mail(sheet('letter')),
  },
  {
    name: 'mail about a shipment, the number in a box',
    draw: () => {
      const d = mail(sheet('a4'));
      return d.frame(60, 330, 420, 260, 1).text(80, 364, 'Tracking number', { size: 12, bold: true }).text(80, 384, NUMBER, { size: 12 });
    },
  },
  {
    name: 'how to stick a label on, with a small figure',
    draw: () => {
      const d = sheet('a4').text(50, 60, 'Where the label goes', { size: 22, bold: true });
      d.block(50, 96, ['Stick it on the largest side.', 'No tape over the bars.', 'It looks like this example:'], { size: 12 }, 1.6);
      return figure(d, example(), 60, 170, 0.55).text(300, 200, 'Example', { size: 11 });
    },
  },
  {
    name: 'how to print, with a figure almost as large',
    draw: () => {
      const d = sheet('letter').text(50, 50, 'Instructions', { size: 22, bold: true });
      d.text(50, 80, 'This is an example of a label, not one to send with:', { size: 12 });
      return figure(d, example(), 150, 110, 0.8).text(150, 500, 'Figure 1: example', { size: 10 });
    },
  },
  {
    name: 'card that nobody was at home',
    draw: () => {
      const d = sheet('media').frame(8, 8, 272, 404, 1).text(144, 50, 'Sorry we missed you', { size: 20, bold: true, align: 'center' });
      for (const [k, word] of ['With a neighbour', 'At the depot', 'In the porch', 'We call again'].entries())
        d.frame(30, 80 + k * 30, 14, 14, 1).text(54, 92 + k * 30, word, { size: 12 });
      return barsWithText(d, tracking(), NUMBER, 144, 300, 0.9, 60);
    },
  },
  {
    name: 'claim for a lost parcel',
    draw: () => {
      const d = sheet('a4').text(50, 60, 'Enquiry about a parcel', { size: 20, bold: true });
      ['Sender', 'Addressee', 'Contents', 'Value', 'Weight', 'Date of posting'].forEach((word, k) =>
        d.frame(50, 90 + k * 60, 490, 50, 0.5).text(56, 102 + k * 60, word, { size: 8 }),
      );
      return d.bars(tracking(), 300, 520, 1, 50);
    },
  },
  {
    name: 'order sheet with bars for the packing table',
    draw: () => {
      const d = sheet('media').text(20, 40, 'Order 6337-6256', { size: 20, bold: true });
      d.block(20, 76, ['2 x Mug, blue', '1 x Bowl', '3 x Egg cup', 'Gift wrap: yes'], { size: 13 }, 1.6);
      return d.bars(code128('63376256'), 144, 300, 1.8, 60);
    },
  },
  {
    name: 'postage refund form with a tracking code',
    draw: () => {
      const d = sheet('media').frame(8, 8, 272, 404, 1).text(24, 40, 'Refund of postage', { size: 18, bold: true });
      d.block(
        24,
        80,
        ['Sender: Larchgate Pottery Shed', 'Shipment number: see below', 'Reason: not used', 'Postage 7.35'],
        { size: 11 },
        1.6,
      );
      return d.bars(gs1Code128(['420', '00121'], ['92', '61290100130435082878']), 144, 300, 0.8, 60);
    },
  },
];

function mail(d: Drawing): Drawing {
  d.block(
    60,
    60,
    ['From: Tidewick news', 'To: studio@larchgate.example', 'Subject: your parcel is on its way', 'Date: 28 Nov 2026'],
    { size: 10 },
    1.4,
  );
  d.block(
    60,
    150,
    ['Good news: your parcel is with us.', 'It goes to', 'Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'],
    { size: 12 },
    1.5,
  );
  return d.bars(tracking(), 250, 480, 0.9, 60);
}
