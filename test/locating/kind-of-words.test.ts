import { describe, expect, it } from 'vitest';
import { said, saidIn } from '../../src/locating/kind-of-words.js';
import { folded, KINDS, PHRASES } from '../../src/locating/vocabulary.js';
import type { Phrase } from '../../src/reading/word-lines.js';

const phrase = (text: string, fontSize = 10, y = 0): Phrase => ({
  text,
  fontSize,
  turn: 0,
  box: { x: 10, y, width: text.length * fontSize * 0.5, height: fontSize },
});
const BODY = phrase('All that this parcel holds was packed by hand in the morning.');

describe('said', () => {
  it('is a name in larger type than the rest, whatever its case and accents', () => {
    expect(said([phrase('DÉCLARATION  EN DOUANE', 18), BODY]).names).toEqual([
      { kind: 'customs-form', words: 'declaration en douane', heading: true },
    ]);
    expect(said([phrase('Bon de livraison n° 4711', 14), BODY]).names).toMatchObject([{ kind: 'packing-slip', heading: true }]);
  });

  it('is a name in a line of its own although its type is no larger, but no heading then', () => {
    expect(said([phrase('Packing slip'), BODY]).names).toEqual([{ kind: 'packing-slip', words: 'packing slip', heading: false }]);
  });

  it('is no name inside a sentence of the same type, nor inside another word', () => {
    expect(said([phrase('You will find the packing slip under the lid of the box.'), BODY]).names).toEqual([]);
    expect(said([phrase('Together Forewarned', 18), BODY])).toMatchObject({ names: [], labelWords: 0 });
  });

  it.each([
    'Pakkseddel',
    'Lieferschein',
    'Bon de livraison',
    'Albarán',
    'Documento di trasporto',
    'Pakbon',
    'Följesedel',
    'Plukkseddel',
    'Lähete',
    'Dodací list',
    'Szállítólevél',
    'Aviz de însoțire',
    'List pakunkowy',
    'Guia de remessa',
    'Sevk irsaliyesi',
    'Δελτίο αποστολής',
    'Пакувальний лист',
    'Otpremnica',
    'Dobavnica',
    'Saateleht',
    'Važtaraštis',
    'תעודת משלוח',
    'قائمة التعبئة',
    '納品書',
    '送货单',
    '포장 명세서',
    'ใบส่งของ',
    'Phiếu giao hàng',
  ])('is a packing slip in many languages: %s', (title) => {
    expect(said([phrase(title, 18), BODY]).names[0]?.kind).toBe('packing-slip');
  });

  it('is no return label by a line about what the carrier does, or a box to tick', () => {
    const label = [phrase('Return Service Requested'), phrase('Retour'), phrase('Rücksendung'), BODY];
    expect(said(label).names).toEqual([]);
    expect(said([phrase('RETOURE'), BODY]).names).toMatchObject([{ kind: 'return-label' }]);
  });

  it('puts the most prominent name first', () => {
    const { names } = said([phrase('Receipt'), phrase('Packing slip', 24), BODY]);
    expect(names.map(({ kind }) => kind)).toEqual(['packing-slip', 'receipt']);
  });

  it("counts a label's words once each: alone, at a line's start, or of two words", () => {
    expect(said([phrase('To'), phrase('TO:'), phrase('From the shop on the hill')]).labelWords).toBe(2);
    expect(said([phrase('Weight 2 kg'), phrase('Tracking no')]).labelWords).toBe(3);
    expect(said([phrase('Give it to the neighbour on the left')]).labelWords).toBe(0);
  });

  it('counts the characters of what is written', () => {
    expect(said([])).toEqual({ names: [], labelWords: 0, characters: 0 });
    expect(said([phrase('abc'), phrase('de')]).characters).toBe(5);
  });

  it('looks only at what lies inside a box', () => {
    const box = { x: 0, y: 0, width: 400, height: 50 };
    const phrases = [phrase('Packing slip', 18, 10), phrase('Invoice', 18, 100), phrase('Voucher', 18, 45)];
    expect(saidIn(phrases, box).names.map(({ kind }) => kind)).toEqual(['packing-slip']);
  });
});

describe('the vocabulary', () => {
  it.each(KINDS)('of %s is folded already, and each phrase is found when it stands alone', (kind) => {
    expect(PHRASES[kind].filter((words) => folded(words) !== words.trim())).toEqual([]);
    const missed = PHRASES[kind].filter((words) => {
      const { names, labelWords } = said([phrase(words.trim().toLocaleUpperCase('en'), 20), BODY]);
      return kind === 'label' ? labelWords === 0 : !names.some((name) => name.kind === kind);
    });
    expect(missed).toEqual([]);
  });

  it('folds case, accents, ligatures of spelling and white space', () => {
    expect(folded('  Große\u00a0 ÉTIQUETTE\tÆrø Łódź ')).toBe('grosse etiquette æro lodz');
  });
});
