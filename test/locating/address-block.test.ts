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
    [['Tarn & Loom Ltd', 'Unit 6 Example Yard', 'Sampleton EX1 9ZZ']],
    [['From TARN & LOOM, Unit 6 Example Yard', 'Sampleton EX1 9ZZ']],
    [['Atelier Muster - Musterhof 7a - 00084 Musterstadt']],
    [['Frá: Smiðjan Lyng, Dæmisgata 4, 000 Dæmi, 555-0118']],
    [['見本 花子', '見本県見本市見本町1-2', '000-0001']],
    // What follows the house's number after a comma.
    [['Ada Inventada', 'Calle Ejemplo 12, 2.º B', '28000 Villaejemplo']],
    [['Ada Inventada', 'C/ Ejemplo 12, Ens. Muestra', '10100 Ciudad Ejemplo']],
    [['Ane Asmatua', 'Adibide plaza 9, 2. ezk.', '20000 Adibideta']],
    [['A. Sample', 'Unit 6, 21 Example Street', 'EXAMPLE HILLS NSW 2000']],
    [['Ayşe Uydurma', 'Örnek Mah. Deneme Sk. No:5 D:3', '34000 Örnekköy']],
    [['Иван Образцов', 'ул. Примерная, д. 12, кв. 3', '000187 Образцово']],
    [['A. Sample', 'Blk 123 Example Street 4 #08-11', 'Sampletown 000000']],
    [['A. Sample', 'Hse 14, Sample Close', 'Exampleton, GX-000-1234']],
    // No house's number, but a postcode that is nothing else.
    [['A. Sample', 'Example Cottage, Specimen Lane', 'EXAMPLE WELLS', 'LD1 9ZZ']],
    [['A. Sample', 'Specimen Hill', 'Exampletown', 'Co. Sample A65 F4E2']],
    [['Ada Inventada', 'Rancho Ejemplo', 'Muestra, C.P. 00187']],
    [['Anna Izdomāta', 'Paraugmājas', 'Paraugpils LV-0018']],
    [['Muster AG', 'Hof Beispiel', 'CH-0018 Musterdorf']],
    // In one line, without blanks.
    [['张三', '示例省样本市测试区虚构路12号']],
    [['견본 상회', '서울특별시 예시구 견본로 12']],
    [['見本 花子', '見本県見本市見本町1-2-3']],
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
    [['Your label is ready', 'Order 10-4471, paid 14 May 2026']],
    [['Your label is ready', 'Order Q-8811 - paid 4.35 USD - Nov 13, 2026']],
    [['Three parcels, three carriers - 14 May 2026']],
    [['2026\u221211\u221223', '4 LB 4 OZ', 'Ada Invented']],
    [[]],
  ])('finds none in %j', (lines) => {
    expect(count(lines)).toBe(0);
  });

  it.each([
    [['PARA:', 'Ada Inventada', 'Barrio Muestra, calle principal', 'frente al parque, casa azul', 'Ciudad Ejemplo']],
    [['Destinatario', 'Ada Inventada', 'Av. de la Muestra N34-12', 'Ciudad Ejemplo']],
    [['Empfänger', 'Musterfrau', 'Hof am Beispiel']],
    [['Recipient / Destinataire', 'Ada Invented', 'Tel. 555-0102', 'Larch Halt']],
    [['送り先', '見本 花子', '見本県見本市']],
    [['收件人：张三', '示例镇']],
    [['Deliver to: Ada Invented', 'Larch Halt']],
    [['TO', 'Ada Invented', 'Sample House 14']],
  ])('believes the caption of %j', (lines) => {
    expect(count(lines)).toBe(1);
  });

  it.each([
    [['To', 'Ada with love', 'from Rufus']],
    [['Recipient', 'Ada Invented', 'Amount: 12.00', 'Date: today']],
    [['Empfänger', 'Musterfrau', '14.11.2026']],
    [['To redeem this voucher', 'show it at the counter', 'Larch Halt']],
    [['Sender', 'Ada', 'Rufus']],
    [['Barrio Muestra, calle principal', 'frente al parque, casa azul', 'Ciudad Ejemplo']],
  ])('has no such caption, or no address below it, in %j', (lines) => {
    expect(count(lines)).toBe(0);
  });

  it('finds a caption before an address and set out above it', () => {
    const address = block(['Ada Inventada', 'Barrio Muestra', 'Ciudad Ejemplo'], { x: 60 });
    const caption = (y: number, x = 20): Phrase => ({ text: 'Para', fontSize: 8, turn: 0, box: { x, y, width: 20, height: 10 } });
    expect(addressBlocks(address)).toHaveLength(0);
    expect(addressBlocks([caption(50), ...address])).toHaveLength(1);
    expect(addressBlocks([caption(37), ...address])).toHaveLength(1);
    expect(addressBlocks([caption(10), ...address])).toHaveLength(0);
    expect(addressBlocks([caption(50, 150), ...address])).toHaveLength(0);
  });

  it('counts captioned ones below each other once each, and none twice', () => {
    const village = ['Ada Inventada', 'Barrio Muestra', 'Ciudad Ejemplo'];
    expect(count(['De:', ...village, 'Para:', ...village])).toBe(2);
    expect(count(['An', 'Ada Invented', 'Sample House', '14 Sample Lane', 'Larch Halt EX 00187'])).toBe(1);
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
    const short = ['Abs.: Holzspiel Querwald', 'Am Probemühlbach 12, 00158 Probemühle'];
    expect(count([...short, 'Egon Scheinbar', 'Luftschlossweg 9', '00304 Luftschlossen'])).toBe(2);
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
