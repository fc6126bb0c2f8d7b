import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold, isDense, tokensOf } from '../../src/orders/fold.js';

describe('folding', () => {
  it('twice is folding once', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(fold(fold(text))).toBe(fold(text));
      }),
    );
  });

  it('takes case, accents, dashes, forms and digits of other scripts away', () => {
    expect(fold('  ÅRÉ – Ｎｏ．１２  ')).toBe('are - no.12');
    expect(fold('٤٥ ۶ ०९ ๑')).toBe('45 6 09 1');
    expect(fold('Straße Łódź İzmir ΣΑΣ')).toBe('strasse lodz izmir σασ');
  });

  it('leaves the vowel signs of Devanagari and the marks of kana', () => {
    expect(fold('राम')).not.toBe(fold('रमा'));
    expect(fold('ガ')).not.toBe(fold('カ'));
  });
});

describe('words', () => {
  it('are runs of letters and digits, of scripts without spaces by themselves', () => {
    expect(tokensOf('order a-12/3').map(({ text }) => text)).toEqual(['order', 'a', '12', '3']);
    expect(tokensOf('注文番号12 번호7').map(({ text }) => text)).toEqual(['注文番号', '12', '번호7']);
  });

  it('stand where they say', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const folded = fold(text);
        for (const token of tokensOf(folded)) expect(folded.slice(token.start, token.end)).toBe(token.text);
      }),
    );
  });

  it('are dense when they are of scripts without spaces only', () => {
    expect(['見本太郎', '견본', 'a見', ''].map(isDense)).toEqual([true, true, false, false]);
  });
});
