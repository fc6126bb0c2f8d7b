import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cleanParagraphs, cleanText } from '../../../src/press/type/clean.js';
import { faceFor } from '../../../src/press/type/faces.js';
import { ANY_HAN } from '../../../src/press/type/han.js';

function clean(text: string): { text: string; warnings: readonly string[] } {
  const warnings: string[] = [];
  return { text: cleanText(text, ANY_HAN, (warning) => warnings.push(warning)), warnings };
}

describe('text as it can be set', () => {
  it.each([
    ['🎉', '[party popper]'],
    ['👍🏽', '[thumbs up]'],
    ['👨‍👩‍👧', '[family man, woman, girl]'],
    ['❤️', '[red heart]'],
    ['❤', '[red heart]'],
    ['🇪🇺', '[flag European Union]'],
    ['1️⃣', '[keycap 1]'],
    ['𐎀', '[U+10380]'],
    ['\ud83d', '[U+D83D]'],
    ['\ude00x', '[U+DE00]x'],
    ['\ue000', '[U+E000]'],
    ['\uffff', '[U+FFFF]'],
  ])('names %s: %s', (given, named) => {
    const { text, warnings } = clean(given);
    expect(text).toBe(named);
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toContain(named.replace('x', ''));
  });

  it.each(['★', '♥', '№', '½', '€', '…', '™', '→', '①'])('keeps %s, which a face has', (char) => {
    expect(clean(char)).toEqual({ text: char, warnings: [] });
  });

  it('composes letters and marks, and keeps marks that no letter is made with', () => {
    expect(clean('Cafe\u0301 q\u0308').text).toBe('Café q\u0308');
  });

  it('leaves out what would run over other lines', () => {
    const { text, warnings } = clean(`a${'\u0308\u0301\u0323'.repeat(9)}b`);
    expect(text.match(/\p{M}/gu)?.length).toBeLessThanOrEqual(6);
    expect(text).toMatch(/b$/);
    expect(warnings[0]).toBe('A character carries more than 6 marks: the rest of them are left out.');
  });

  it('leaves out control characters by number, overrides and soft hyphens in silence', () => {
    expect(clean('a\u0007b')).toEqual({ text: 'ab', warnings: ['A control character (U+0007) is left out.'] });
    expect(clean('a\u202eb\u00adc\ufeff')).toEqual({ text: 'abc', warnings: [] });
  });

  it('makes one space of many, and keeps those that do not break', () => {
    expect(clean('  a \t\u3000 b\u00a0c\u202fd ').text).toBe('a b\u00a0c\u00a0d');
  });

  it('puts shadda under its vowel', () => {
    expect(clean('مُحَمَّد').text.normalize('NFD')).toBe(clean('م\u064fح\u064eم\u0651\u064eد').text.normalize('NFD'));
    expect(clean('م\u064e\u0651').text).toBe('م\u0651\u064e');
  });

  it('has line ends as paragraphs, or as spaces', () => {
    expect(cleanParagraphs('a\r\n\nb\u2028c', ANY_HAN, () => undefined)).toEqual(['a', '', 'b', 'c']);
    expect(clean('a\r\n\nb\u2028c').text).toBe('a b c');
  });

  it('is, for any text, what some face has or what has no ink; cleaning it again changes nothing', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.integer({ min: 0, max: 0x1fff }).map((code) => String.fromCharCode(code)), maxLength: 60 }),
        (given) => {
          const { text } = clean(given);
          expect(Buffer.from(text).toString()).toBe(text);
          for (const char of text) {
            expect(/[\u034f\u061c\u200b-\u200f\u2066-\u2069]/.test(char) || faceFor(char, 'regular', ANY_HAN) !== undefined, char).toBe(
              true,
            );
          }
          expect(clean(text)).toEqual({ text, warnings: [] });
        },
      ),
    );
  });
});
