import { describe, expect, it } from 'vitest';
import { isAddressedFrame, isAddressedNumber, isApartFrom, isParcels, isParcelsMatrix } from '../../src/locating/from-to.js';
import type { SaidCandidate } from '../../src/locating/page-facts.js';
import type { Code } from '../../src/reading/source.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { barsAt, codeSaying, inches, judged, matrixAt, nothingSaid, word } from './judged.js';

const BOX = inches(1, 1, 4, 6);
const code = (text: string, symbology?: Code['symbology']): Code => codeSaying(text, BOX, symbology);
/** Lines from this place on the label, in words that nobody knows. */
const block = (y: number, lines: readonly string[]) =>
  lines.map((text, at) => word(text, { x: 80, y: 72 + y + at * 12, width: text.length * 5, height: 10 }));
const FROM = ['Officina Ficta', 'Via Ficta 3', '00730 Nusquam'];
const TO = ['Ines Exempla', 'Via Ficta 12', '00731 Nusquam'];
const BOTH = [...block(10, FROM), ...block(100, TO)];
const bars = barsAt({ x: 120, y: 300, width: 100, height: 30 });
const label = (more: Partial<SaidCandidate> = {}): SaidCandidate => ({
  ...judged(BOX, 1, { codes: [bars] }),
  said: { ...nothingSaid, characters: 150 },
  ...more,
});
const NUMBER = [code('LM35863805470450')];
const parcels = (words = BOTH, more: Partial<SaidCandidate> = {}, codes: readonly Code[] = NUMBER): boolean =>
  isParcels(label(more), codes, phrasesOf(words));

describe('a parcel by all but its words', () => {
  it('has a frame of a label, both addresses and a long number in bars that may be small', () => {
    expect(parcels()).toBe(true);
  });

  it('has a frame of any size that labels have, where a second code stands in it', () => {
    const other = { box: inches(1, 1, 4, 4.4) };
    expect(parcels(BOTH, other, [...NUMBER, code('EX 00731', 'Data Matrix')])).toBe(true);
    expect(parcels(BOTH, { ...other, edge: 'picture' }, [...NUMBER, code('EX 00731', 'Data Matrix')])).toBe(false);
  });

  it('has leading bars between rules from side to side', () => {
    const large = { codes: [barsAt({ x: 90, y: 300, width: 180, height: 50 })], edge: 'ink' } as const;
    expect(parcels(BOTH, { ...large, ruled: 'level' })).toBe(true);
    expect(parcels(BOTH, large)).toBe(false);
    expect(parcels(BOTH, { edge: 'ink', ruled: 'level' })).toBe(false);
  });

  it('has anything of a label’s size with leading bars and one of a label’s words', () => {
    const worded = { names: [], labelWords: 1, characters: 150 };
    const large = barsAt({ x: 90, y: 300, width: 180, height: 50 });
    for (const edge of ['ink', 'frame'] as const) {
      const other = { edge, box: inches(1, 1, 4, 4.4), said: worded };
      expect(parcels(BOTH, { ...other, codes: [large] })).toBe(true);
      expect(parcels(BOTH, other)).toBe(false);
      expect(parcels(BOTH, { ...other, codes: [large], said: { ...worded, labelWords: 0 } })).toBe(false);
    }
  });

  it.each<[string, boolean]>([
    ['one address', parcels(block(100, TO))],
    ['rows of goods', parcels([...BOTH, ...block(200, ['2 x Ampulla viridis', '1 x Patera magna'])])],
    [
      'a name of something else',
      parcels(BOTH, { said: { names: [{ kind: 'receipt', words: 'receipt', heading: false }], labelWords: 0, characters: 150 } }),
    ],
    ['only its ink to show where it ends', parcels(BOTH, { edge: 'ink' })],
    ["a size that is no label's", parcels(BOTH, { box: inches(1, 1, 4, 4.4) })],
    ['bars as small as on products', parcels(BOTH, { codes: [barsAt({ x: 120, y: 300, width: 70, height: 30 })] })],
    ['a number as short as orders have', parcels(BOTH, {}, [code('1072326667')])],
    ['a number in a matrix code only', parcels(BOTH, {}, [code('LM35863805470450', 'QR')])],
  ])('and is none with %s', (_, is) => {
    expect(is).toBe(false);
  });
});

describe('isAddressedNumber', () => {
  const is = (number: string, edge: 'ink' | 'frame', words = BOTH): boolean =>
    isAddressedNumber(label({ edge }), [code(number)], phrasesOf(words));

  it('takes a long number, or a shorter one inside an edge, with both addresses', () => {
    expect(is('LM35863805470450', 'ink')).toBe(true);
    expect(is('R827354186', 'frame')).toBe(true);
    expect(is('R827354186', 'ink')).toBe(false);
    expect(is('ORD-1234', 'frame')).toBe(false);
    expect(is('LM35863805470450', 'frame', block(100, TO))).toBe(false);
  });
});

describe('a matrix code without bars', () => {
  const matrix = { codes: [matrixAt({ x: 120, y: 300, width: 100, height: 100 })], said: { names: [], labelWords: 1, characters: 150 } };
  const says = [code('LM;358638054704;0053', 'QR')];
  const isMatrix = (words: typeof BOTH, more: Partial<SaidCandidate> = {}): boolean =>
    isParcelsMatrix(label({ ...matrix, edge: 'ink', ...more }), says, phrasesOf(words));
  const number = block(250, ['LM 3586 3805 4704']);

  it('is a parcel’s where its number is written below both addresses', () => {
    expect(isMatrix([...BOTH, ...number])).toBe(true);
  });

  it.each<[string, boolean]>([
    ['one address, as a code to show at a counter has', isMatrix([...block(100, TO), ...number])],
    ['no number in type', isMatrix(BOTH)],
    ["none of a label's words", isMatrix([...BOTH, ...number], { said: { ...nothingSaid, characters: 150 } })],
  ])('and is none with %s', (_, is) => {
    expect(is).toBe(false);
  });
});

describe('what stands apart on a page of another name', () => {
  const LARGE = barsAt({ x: 90, y: 300, width: 180, height: 50 });
  const SHORT = [code('EX4492148', 'Code 39')];
  const worded = { names: [], labelWords: 3, characters: 150 };
  const apart = (more: Partial<SaidCandidate> = {}, words = BOTH, codes = SHORT): boolean =>
    isApartFrom(label({ codes: [LARGE], said: worded, ...more }), codes, phrasesOf(words));

  it('is a label with leading bars, its words and both addresses, however short its number', () => {
    expect(apart()).toBe(true);
    expect(apart({ edge: 'ink', ruled: 'level' })).toBe(true);
  });

  it.each([
    ['its edge is nothing but ink', apart({ edge: 'ink' })],
    ['it has fewer words', apart({ said: { ...worded, labelWords: 2 } })],
    ['its bars are small', apart({ codes: [bars] })],
    ['it has one address', apart({}, block(10, FROM))],
    ['it says an order’s number', apart({}, BOTH, [code('EX44', 'Code 39')])],
  ])('is none where %s', (_, is) => {
    expect(is).toBe(false);
  });
});

describe('a frame with sender and receiver', () => {
  const LARGE = barsAt({ x: 90, y: 300, width: 180, height: 50 });
  const SHORT = [code('EX4492148', 'Code 39')];
  const framed = (more: Partial<SaidCandidate> = {}, { words = BOTH, codes = SHORT, onOther = false } = {}): boolean =>
    isAddressedFrame(label({ codes: [LARGE], ...more }), codes, phrasesOf(words), onOther);
  const square = { box: inches(1, 1, 4, 4.4) };

  it('is a label with leading bars, however short its number and without a word that is known', () => {
    expect(framed()).toBe(true);
    expect(framed(square)).toBe(true);
    expect(framed({}, { onOther: true })).toBe(true);
  });

  it.each([
    ['it has no edge', framed({ edge: 'ink' })],
    ['it is smaller than labels', framed({ box: inches(1, 1, 4, 1.8) })],
    ['it has no known size, and its page another name', framed(square, { onOther: true })],
    ['its bars are small', framed({ codes: [bars] })],
    ['it has one address', framed({}, { words: block(10, FROM) })],
    ['it says an order’s number', framed({}, { codes: [code('EX44', 'Code 39')] })],
    ['its number is in a matrix code', framed({}, { codes: [code('EX4492148', 'QR')] })],
    ['goods are listed on it', framed({}, { words: [...BOTH, ...block(200, ['2 x Ampulla viridis', '1 x Patera magna'])] })],
  ])('is none where %s', (_, is) => {
    expect(is).toBe(false);
  });
});
