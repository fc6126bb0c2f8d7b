import { describe, expect, it } from 'vitest';
import { addressBlocks } from '../../src/locating/address-block.js';
import type { Phrase } from '../../src/reading/word-lines.js';

const block = (lines: readonly string[], { size = 10, x = 20, leading = 1.3 } = {}): readonly Phrase[] =>
  lines.map((text, at) => ({
    text,
    fontSize: size,
    turn: 0,
    box: { x, y: 50 + at * leading * size, width: text.length * size * 0.5, height: size },
  }));
const count = (lines: readonly string[], how = {}): number => addressBlocks(block(lines, how)).length;

describe('addressBlocks', () => {
  it.each([
    [['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187']],
    [['Sjoukje Verzonnen', 'Proeflaan 203', '0095 BX Nepveen']],
    [['Lotte van der Voorbeeld', 'Proefstraat 18 bis', '1000 Voorbeelddorp']],
    [['A. Sample', 'Flat 2', '7 Example Yard', 'Mapleton', 'EX1 2AB']],
    [['Musterfrau', 'Beispielgasse 4', '00210 Ersonnenhausen', 'Nirgendland']],
    [['Solfrid Oppdiktet', 'Prøvebakken 15', '0081 Liksomnes']],
    [['Ada Invented', 'The Old Mill', 'Larch Halt 00187']],
    [['Rufus Sampleton', '641 E Mockingboard Ave', 'Mockton, EX 00532']],
    [['Rufus Sampleton', '12041 Mockingboard Ave', 'Mockton, EX 00532']],
    [['A. Sample', '3/12 Example Street', 'Mockton EX 0053']],
    [['Mrs Ada Invented', 'Example Cottage, Specimen Lane', 'SAMPLETON WELLS', 'EX1 9ZZ']],
    [['Mr Bela Invented', 'Flat 2b, 16 Sample Terrace', 'SAMPLETON', 'EX1 9ZZ']],
    [['Ada Invented', 'Sample House', 'Sampleton', 'D02 XX00']],
    [['Beatriz Inventada', 'Travessa da Amostra 18, 3.º Esq.', '0000-000 Vila Exemplo']],
    [['Yokasta Inventada', 'C/ Ejemplo 12, Ens. Muestra', '00100 Ciudad Ejemplo']],
    [['Ane Asmatua', 'Adibide plaza 9, 2. ezk.', '00000 Adibideta']],
    [['Sjoerd Verzonnen', 'Voorbeeldlaan 208-II', '0011 AB VOORBEELD']],
    [['Thistle and Loom, Unit 3, Example Yard, SAMPLETON EX1 9ZZ']],
    [['Atelier Muster - Musterhof 7a - 00084 Musterstadt']],
    [['Frá: Smiðjan Lyng, Dæmisgata 4, 000 Dæmi, 555-0118']],
    [['見本 花子', '見本県見本市見本町1-2', '000-0001']],
  ])('finds %j', (lines) => {
    expect(count(lines)).toBe(1);
  });

  it.each([
    [['From 19:30', 'To 22:00', 'Row F  Seat 12', 'Admit one']],
    [['2 x Mug, blue', '1 x Bowl', 'Order 6337-6256']],
    [['24/11/2020 19:30', '17 Example Marsh Street', 'SHIP TO: Rufus Sampleton', 'REF 1 JS275981']],
    [['Serial no 2026 0410 7733', 'Input 230 V 50 Hz', 'Weight 41 kg']],
    [['A. Sample', 'Member since 2021', 'Member no 4400 1827 3391']],
    [['9261290100130435082878']],
    [['Larch Halt EX 00187']],
    [['Not signed for, 2 days, up to 2 kg, no claim above 50.00']],
    [['Order 4771205, 12 items, paid in cash']],
    [['Vase, Bowl, Cup and Plate', 'Sizes S, M, L', 'Seat 4, Row B']],
    [[]],
  ])('finds none in %j', (lines) => {
    expect(count(lines)).toBe(0);
  });

  it('wants the lines below each other', () => {
    expect(count(['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'], { leading: 4 })).toBe(0);
  });

  it('counts each of two', () => {
    const two = ['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'];
    expect(addressBlocks([...block(two), ...block(two, { x: 220, size: 8 })])).toHaveLength(2);
  });

  it('counts each of two below each other in one column', () => {
    const sender = ['Von', 'Holzspiel Querwald', 'Am Probemühlbach 12', '00158 Probemühle'];
    expect(count([...sender, 'An', 'Egon Scheinbar', 'Luftschlossweg 9', '00304 Luftschlossen'])).toBe(2);
    expect(count([...sender, 'Egon Scheinbar', '555-0102', 'Nirgendland'])).toBe(1);
  });

  it('finds one that is turned', () => {
    const turned = block(['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187']).map((phrase): Phrase => ({
      ...phrase,
      turn: 90,
      box: { x: 300 - phrase.box.y, y: phrase.box.x, width: phrase.box.height, height: phrase.box.width },
    }));
    expect(addressBlocks(turned)).toHaveLength(1);
  });
});
