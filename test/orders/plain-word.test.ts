import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnKey, plainWord, shown } from '../../src/orders/plain-word.js';

describe('a plain word', () => {
  it.each([
    ['Côte d’Ivoire', 'cote d ivoire'],
    ['  Straße ', 'strasse'],
    ['SHIPPED!', 'shipped'],
    ['Отправлен', 'отправлен'],
    ['発送済み', '発送済み'],
    ['—', ''],
  ])('of %s is %s', (text, word) => {
    expect(plainWord(text)).toBe(word);
  });

  it('is its own plain word', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (text) => {
        expect(plainWord(plainWord(text))).toBe(plainWord(text));
      }),
    );
  });
});

describe('a column’s name', () => {
  it('is the same whatever its case, blanks and composition', () => {
    expect(columnKey('  Order \t No. ')).toBe('order no.');
    expect(columnKey('Cafe\u0301')).toBe(columnKey('CAFÉ'));
    expect(columnKey('Order-No')).not.toBe(columnKey('Order No'));
  });
});

describe('a word in a message', () => {
  it('is on one line, between backticks and with none inside', () => {
    expect(shown(' a\n`b`\tc ')).toBe("`a 'b' c`");
    expect(shown('')).toBe('``');
    expect(shown(`a${'\u{1F4E6}'.repeat(50)}`)).toBe(`\`a${'\u{1F4E6}'.repeat(39)}…\``);
    expect(shown('x'.repeat(41))).toBe(`\`${'x'.repeat(40)}…\``);
  });

  it('is whole characters, for any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 90 }), (text) => {
        const word = shown(text);
        expect(word).toMatch(/^`[^`\n\r]*`$/u);
        expect(Array.from(word).length).toBeLessThanOrEqual(43);
        expect(Buffer.from(word).toString()).toBe(word);
      }),
    );
  });
});
