import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { paperMark } from '../../src/locating/paper-marks.js';
import type { RuledLine } from '../../src/reading/ruled.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { inches, word } from './judged.js';

const BOX = inches(1, 1, 4, 6);
const AT: Box = { x: 90, y: 300, width: 60, height: 10 };
const rule = (more: Partial<Box> = {}): RuledLine => ({
  box: { x: 156, y: 310, width: 120, height: 1, ...more },
  level: true,
  dashed: false,
});
const mark = (text: string, { declares = false, lines = [] as readonly RuledLine[] } = {}) =>
  paperMark({ box: BOX, declares }, phrasesOf([word(text, AT)]), lines);

describe('paperMark', () => {
  it.each([
    ['Gr. 39 gegen Gr. ____', 'a place to write in'],
    ['Hirer', '"hirer" above a name'],
    ['Acheteur :', '"acheteur" above a name'],
    ['Débiteur', '"debiteur" above a name'],
    ['Keep for your records: Ada', '"keep for your records"'],
    ['Put this inside the parcel', '"inside the parcel"'],
    ['Bitte mit in den Karton legen', '"in den karton legen"'],
    ['À garder par l’expéditeur', '"a garder"'],
    ['Inclúyala dentro de la caja', '"dentro de la caja"'],
    ['Repair ticket, shelf 4', '"repair ticket"'],
    ['Garantie de deux ans, pièces et main-d’oeuvre', '"garantie de"'],
    ['STOCK TRANSFER ST-8821', '"stock transfer"'],
    ['Totaal - 260,76', '"totaal - 260,76"'],
    ['Kaution 80,00 EUR', '"kaution 80,00"'],
    ['Deposit 120.00, back by Monday', '"deposit 120.00"'],
    ['Wir haben Sie leider nicht angetroffen.', '"nicht angetroffen"'],
    ['Delivery confirmed as above', '"delivery confirmed"'],
    ['Larch Halt membership card 2027', '"membership card"'],
    ['The undersigned certifies that', '"undersigned"'],
    ['Einlieferungsbeleg. Bitte gut aufbewahren', '"einlieferungsbeleg"'],
    ['Key receipt, show it when you bring the key', '"receipt"'],
    ['Signed by (print)', '"signed by"'],
    ['Lent to', '"lent to" above a name'],
  ])('is heard in "%s"', (text, told) => {
    expect(mark(text)).toBe(told);
  });

  it.each([
    'Larch Halt EX 00187',
    'Signature on delivery: ______',
    'RECEIVED BY',
    'Postage paid $ 4.47',
    'Fee paid €6.95',
    'Total 1.46 kg gross 1.80 kg',
    'Keep dry - this side up',
    'Paul Exemplaire',
    'Not for carriage by air',
    'Customer',
    'Leave inside porch',
    'GUARANTEED NEXT DAY',
    'RETURN RECEIPT REQUESTED',
    'Beleg 633984',
    'Niet thuis? Afleveren bij de buren',
    'Sender pays [x]',
    '[x] Sale of goods [ ] Gift',
    '4,10 €',
    'Warranty return',
    'Contents: watch repair kit',
  ])('is not in "%s", which labels say', (text) => {
    expect(mark(text)).toBeUndefined();
  });

  it('is not in the lines of an address', () => {
    const phrases = phrasesOf([word('Stock transfer Ltd', AT)]);
    expect(paperMark({ box: BOX }, phrases, [])).toBe('"stock transfer"');
    expect(paperMark({ box: BOX }, phrases, [], phrases)).toBeUndefined();
  });

  it('is a rule to write on right behind its word', () => {
    expect(mark('Name', { lines: [rule()] })).toBe('a place to write in');
    expect(mark('Zone', { lines: [rule()] })).toBeUndefined();
    expect(mark('Name', { lines: [rule({ x: 190 })] })).toBeUndefined();
    expect(mark('Name', { lines: [rule({ y: 330 })] })).toBeUndefined();
    expect(mark('Name', { lines: [rule({ width: 30 })] })).toBeUndefined();
    expect(mark('Name', { lines: [{ ...rule(), dashed: true }] })).toBeUndefined();
  });

  it("leaves a customs declaration's sums and rules on the label that holds it", () => {
    for (const text of ['Total 38.50', 'I, the undersigned, certify']) expect(mark(text, { declares: true })).toBeUndefined();
    expect(mark('Total 38.50')).toBe('"total 38.50"');
    expect(mark('Name', { declares: true, lines: [rule()] })).toBeUndefined();
  });
});
