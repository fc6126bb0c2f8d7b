import { code128, code39, dataMatrix, gs1Code128, itf, qr } from '../code-art.js';
import { barsWithText, sheet, type Paper } from './paper.js';

/** Labels and stickers of the store room. */
export const STORE_LABELS: readonly Paper[] = [
  {
    name: 'bin label',
    draw: () => {
      const d = sheet('mediaLying').text(216, 120, 'A-12-04', { size: 80, bold: true, align: 'center' });
      return d.bars(code128('A-12-04'), 216, 200, 2.4, 90);
    },
  },
  {
    name: 'bin label with a long number',
    draw: () => {
      const d = sheet('media').frame(6, 6, 276, 412, 2).text(144, 110, 'B 07', { size: 80, bold: true, align: 'center' });
      d.text(144, 150, 'Route 7  Bay 3', { size: 18, align: 'center' });
      return barsWithText(d, code128('10042770031'), '10042770031', 144, 260, 1.6, 110);
    },
  },
  {
    name: 'carton label with contents and weight',
    draw: () => {
      const d = sheet('media').frame(6, 6, 276, 412, 1.5).line(6, 90, 282, 90).line(6, 180, 282, 180);
      d.text(20, 34, 'PRODUCT', { size: 8 }).text(20, 62, 'Mug, blue, 300 ml', { size: 20, bold: true });
      d.text(20, 106, 'QTY', { size: 8 })
        .text(20, 136, '24', { size: 28, bold: true })
        .text(150, 106, 'WEIGHT', { size: 8 })
        .text(150, 136, '9.6 kg', { size: 28, bold: true });
      d.text(20, 196, 'BATCH', { size: 8 }).text(20, 220, 'L2026-311', { size: 18 });
      return barsWithText(d, gs1Code128(['01', '09312345678907'], ['10', 'L2026311']), '(01)09312345678907(10)L2026311', 144, 310, 1, 90);
    },
  },
  {
    name: 'transfer tag between stores',
    draw: () => {
      const d = sheet('media').frame(6, 6, 276, 412, 1.5).line(6, 110, 282, 110).line(6, 210, 282, 210);
      d.text(20, 30, 'FROM', { size: 9 }).text(20, 70, 'Store room 2', { size: 24, bold: true });
      d.text(20, 130, 'TO', { size: 9 }).text(20, 170, 'Shelf 14', { size: 24, bold: true });
      return barsWithText(d, code128('TR200411873305'), 'TR200411873305', 144, 300, 1.3, 90);
    },
  },
  {
    name: 'product label, large',
    draw: () => {
      const d = sheet('media').frame(10, 10, 268, 400, 1);
      d.text(144, 70, 'Stoneware bowl', { size: 24, bold: true, align: 'center' });
      d.block(
        30,
        110,
        ['Glazed inside, raw outside.', 'Dishwasher safe. Weight 640 g.', 'Made in our studio.', '28.00'],
        { size: 12 },
        1.6,
      );
      return barsWithText(d, itf('09312345678907'), '0 93 12345 67890 7', 144, 290, 1.3, 80);
    },
  },
  {
    name: 'stickers, twelve a page',
    draw: () => {
      const d = sheet('letter');
      for (let k = 0; k < 12; k++) {
        const [x, y] = [40 + (k % 3) * 182, 40 + Math.floor(k / 3) * 180];
        d.frame(x, y, 170, 165, 0.5)
          .text(x + 12, y + 26, 'Mug, blue', { size: 14, bold: true })
          .text(x + 12, y + 46, `Item 4410${k}`, { size: 10 });
        d.bars(code128(`44100${k}`), x + 85, y + 100, 1.1, 40);
      }
      return d;
    },
  },
  {
    name: 'list of bars to scan',
    draw: () => {
      const d = sheet('a4').text(40, 50, 'Scan when done', { size: 18, bold: true });
      ['Start', 'Packed', 'Weight taken', 'Label printed', 'Handed over', 'Undo'].forEach((word, k) => {
        d.text(40, 100 + k * 110, word, { size: 13 }).bars(code128(`CMD-${k}000${k}`), 330, 105 + k * 110, 1.4, 50);
      });
      return d;
    },
  },
  {
    name: 'three bars to set up a scanner, on label paper',
    draw: () => {
      const d = sheet('media').text(144, 30, 'Scanner set-up', { size: 16, bold: true, align: 'center' });
      ['Factory settings', 'Send a line end', 'Beep off'].forEach((word, k) => {
        d.text(144, 66 + k * 115, word, { size: 11, align: 'center' }).bars(code128(`%%SET${k}0`), 144, 110 + k * 115, 1.6, 50);
      });
      return d;
    },
  },
  {
    name: 'addresses without a code, on label paper',
    draw: () => {
      const d = sheet('media').frame(10, 10, 268, 400, 1);
      d.text(24, 40, 'From', { size: 9 }).block(
        24,
        56,
        ['Larchgate Pottery Shed', '7 Example Yard', 'Mapleton Fable EX 00121'],
        { size: 11 },
        1.4,
      );
      d.text(60, 200, 'To', { size: 10 }).block(
        60,
        222,
        ['Ada Invented', '14 Sample Lane', 'Flat 2', 'Larch Halt EX 00187'],
        { size: 16 },
        1.4,
      );
      return d;
    },
  },
  {
    name: 'address stickers, ten a page',
    draw: () => {
      const d = sheet('letter');
      for (let k = 0; k < 10; k++) {
        const [x, y] = [40 + (k % 2) * 280, 50 + Math.floor(k / 2) * 140];
        d.block(x, y, ['Ada Invented', `${k + 3} Sample Lane`, `Larch Halt EX 0018${k}`], { size: 12 }, 1.4);
        d.bars(code39(`0018${k}`), x + 90, y + 70, 1, 14);
      }
      return d;
    },
  },
  {
    name: 'device plate',
    draw: () => {
      const d = sheet('a6').frame(20, 20, 257, 200, 1);
      d.text(36, 50, 'Model KX-4', { size: 16, bold: true }).block(
        36,
        74,
        ['Serial no 2026 0410 7733', 'Input 230 V 50 Hz', 'Weight 41 kg'],
        { size: 10 },
        1.5,
      );
      return d.bars(code128('202604107733'), 148, 170, 1.3, 40).matrix(dataMatrix('202604107733'), 245, 70, 2);
    },
  },
  {
    name: 'medicine label',
    draw: () => {
      const d = sheet('media').frame(10, 10, 268, 400, 1).text(24, 44, 'Hillside pharmacy', { size: 16, bold: true });
      d.block(24, 70, ['3 Example Square', 'Mapleton Fable EX 00121', 'Tel 555-0133'], { size: 9 }, 1.4);
      d.block(24, 130, ['Ada Invented', '14 Sample Lane', 'Take one tablet twice a day', 'with water, after a meal.'], { size: 13 }, 1.5);
      return barsWithText(d, code128('700418820031'), 'Rx 700418820031', 144, 320, 1.3, 60);
    },
  },
  {
    name: 'stock count card',
    draw: () => {
      const d = sheet('a5').text(40, 50, 'Count card 118', { size: 20, bold: true });
      for (let k = 0; k < 8; k++) d.line(40, 90 + k * 24, 380, 90 + k * 24, 0.5);
      return d.bars(code128('118004417720'), 210, 400, 1.6, 70).matrix(qr('118004417720'), 210, 500, 3);
    },
  },
];
