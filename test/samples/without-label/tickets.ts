import { aztec, code128, itf, pdf417, qr } from '../code-art.js';
import type { Drawing } from '../drawing.js';
import { barsWithText, sheet, type Paper } from './paper.js';

const concert = (): Drawing => {
  const d = sheet('mediaLying').frame(10, 10, 412, 262, 1.5);
  d.text(24, 44, 'LANTERN HALL', { size: 22, bold: true }).text(24, 66, 'An evening of slow music', { size: 13 });
  d.block(24, 96, ['From 19:30', 'To 22:00', 'Row F  Seat 12', 'Admit one'], { size: 12 }, 1.4);
  return barsWithText(d, code128('482600917735'), '4826 0091 7735', 216, 205, 1.4, 60);
};

export const TICKETS: readonly Paper[] = [
  {
    name: 'gift voucher with bars, from and to',
    draw: () => {
      const d = sheet('media').frame(8, 8, 272, 404, 2);
      d.text(144, 60, 'GIFT VOUCHER', { size: 28, bold: true, align: 'center' }).text(144, 92, 'for fifty', { size: 16, align: 'center' });
      d.text(30, 140, 'To').line(60, 142, 250, 142).text(30, 170, 'From').line(60, 172, 250, 172);
      return barsWithText(d, code128('6039210045518827'), '6039 2100 4551 8827', 144, 300, 1.2, 70);
    },
  },
  {
    name: 'gift voucher that says something else of itself',
    draw: () => {
      const d = sheet('media').frame(8, 8, 272, 404, 2);
      d.text(144, 60, 'A present for you', { size: 26, bold: true, align: 'center' }).text(144, 92, 'worth fifty', {
        size: 16,
        align: 'center',
      });
      d.text(30, 140, 'To').line(60, 142, 250, 142).text(30, 170, 'From').line(60, 172, 250, 172);
      d.text(30, 200, 'Redeem within three years at any of our stalls.', { size: 9 });
      return barsWithText(d, code128('6039210045518827'), '6039 2100 4551 8827', 144, 300, 1.2, 70);
    },
  },
  {
    name: 'gift card on letter paper',
    draw: () => {
      const d = sheet('letter').frame(90, 120, 432, 288, 1.5);
      d.text(306, 180, 'Thank you', { size: 30, bold: true, align: 'center' });
      d.block(120, 220, ['To: a friend', 'From: all of us', 'Worth 25'], { size: 13 }, 1.5);
      return barsWithText(d, code128('8800154402117709'), '8800 1544 0211 7709', 306, 330, 1.3, 60);
    },
  },
  { name: 'concert ticket', draw: concert },
  {
    name: 'train ticket, upright, a stacked code',
    draw: () => {
      const d = sheet('a6').frame(12, 12, 273, 385, 1);
      d.text(26, 44, 'Single journey', { size: 18, bold: true });
      d.block(
        26,
        76,
        ['From  Mapleton Fable', 'To  Larch Halt', 'Service 0742', 'Coach 3  Seat 18', 'Valid 28 NOV 2026'],
        { size: 12 },
        1.5,
      );
      return d
        .matrix(pdf417('TRAIN TICKET 0042771890 MAPLETON LARCH HALT COACH 3 SEAT 18', 6), 148, 280, 1)
        .text(26, 390, '0042 7718 90', { size: 10 });
    },
  },
  {
    name: 'pass to board a ferry',
    draw: () => {
      const d = sheet('mediaLying').line(310, 0, 310, 288, 1, 4);
      d.text(20, 36, 'BOARDING PASS', { size: 20, bold: true })
        .text(20, 70, 'Name', { size: 8 })
        .text(20, 86, 'A. Sample', { size: 14, bold: true });
      d.text(20, 112, 'From', { size: 8 })
        .text(20, 132, 'Gull Pier', { size: 16 })
        .text(160, 112, 'To', { size: 8 })
        .text(160, 132, 'Far Isle', { size: 16 });
      d.block(20, 160, ['Deck C', 'Boarding 09:40'], { size: 12 }, 1.4);
      d.matrix(pdf417('M1SAMPLE/A GULLPIER FARISLE 0042 332Y018C0042 100', 5), 150, 220, 1.1);
      d.block(324, 40, ['A. Sample', 'Gull Pier', 'Far Isle', 'Deck C'], { size: 10 }, 1.5);
      return d;
    },
  },
  {
    name: 'ferry pass with an Aztec code',
    draw: () => {
      const d = sheet('media');
      d.text(20, 40, 'Gull Pier to Far Isle', { size: 18, bold: true }).block(
        20,
        66,
        ['Weight of baggage 12 kg', 'Service 12', 'Seat 14A'],
        { size: 12 },
        1.5,
      );
      return d.matrix(aztec('M1SAMPLE/A GULLPIER FARISLE 0042 332Y018C0042 100'), 144, 260, 4);
    },
  },
  {
    name: 'parking permit',
    draw: () => {
      const d = sheet('media').frame(14, 14, 260, 400, 3);
      d.text(144, 70, 'PARKING', { size: 40, bold: true, align: 'center' }).text(144, 110, 'Permit zone 4', { size: 20, align: 'center' });
      d.text(144, 160, 'EX 26 ABC', { size: 34, bold: true, align: 'center' }).text(144, 200, 'Valid to 31.12.2026', {
        size: 14,
        align: 'center',
      });
      return barsWithText(d, code128('2026004417380'), '2026 0044 17380', 144, 310, 1.4, 80);
    },
  },
  {
    name: 'four tickets a page',
    draw: () => {
      const d = sheet('a4');
      for (const k of [0, 1, 2, 3]) {
        const y = 30 + k * 195;
        d.frame(60, y, 420, 180, 1)
          .text(80, y + 36, 'Village fair', { size: 18, bold: true })
          .text(80, y + 60, 'Admit one, 10:00 to 18:00', { size: 11 });
        barsWithText(d, code128(`55120048810${k}`), `5512 0048 810${k}`, 270, y + 115, 1.4, 50);
      }
      return d;
    },
  },
  {
    name: 'membership card with bars',
    draw: () => {
      const d = sheet('letter').frame(60, 60, 300, 190, 1);
      d.text(80, 96, 'Potters’ circle', { size: 18, bold: true }).block(
        80,
        120,
        ['A. Sample', 'Member since 2021', 'Member no 4400 1827 3391'],
        { size: 10 },
        1.4,
      );
      return d.bars(code128('440018273391'), 210, 205, 1.3, 45);
    },
  },
  {
    name: 'prize draw ticket, interleaved bars',
    draw: () => {
      const d = sheet('media').frame(8, 8, 272, 400, 1);
      d.text(144, 60, 'Prize draw', { size: 28, bold: true, align: 'center' }).text(144, 100, 'No. 00482177', {
        size: 20,
        align: 'center',
      });
      d.block(
        30,
        140,
        ['First prize: a kiln', 'Second prize: a wheel', 'Third prize: clay for a year', 'Draw on 24 December at the hall'],
        { size: 11 },
        1.6,
      );
      return d.bars(itf('00482177003911'), 144, 300, 1.5, 70);
    },
  },
  {
    name: 'museum ticket with a square code',
    draw: () => {
      const d = sheet('a5').text(40, 60, 'Museum of Small Things', { size: 22, bold: true });
      d.block(40, 100, ['Timed entry 11:15', 'Adult x 2', 'Order 88120-3', 'Show this code at the door.'], { size: 13 }, 1.6);
      return d.matrix(qr('88120344719926'), 210, 330, 6);
    },
  },
];
