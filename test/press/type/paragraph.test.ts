import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cluster } from '../../../src/press/type/face.js';
import { faceFor } from '../../../src/press/type/faces.js';
import { ANY_HAN } from '../../../src/press/type/han.js';
import { apart, directionOf, lineWidth, setParagraph, type SetLine, type Style } from '../../../src/press/type/paragraph.js';
import { SCRIPTS } from '../slip/slips.js';

const style: Style = { size: 10, weight: 'regular' };
const set = (text: string, width: number): readonly SetLine[] => setParagraph(text, style, width, ANY_HAN);
const texts = (text: string, width: number): readonly string[] => set(text, width).map((line) => line.text);
/** What is seen from left to right. */
const seen = (line: SetLine | undefined): string => line?.clusters.map(({ text }) => text).join('') ?? '';

describe('lines of a paragraph', () => {
  it('are no wider than asked, and say all of it in order, in any script', () => {
    const words = fc.array(fc.constantFrom(...Object.values(SCRIPTS).flatMap((text) => text.split(' ')), 'W'.repeat(80), '—', '12,50'), {
      maxLength: 20,
    });
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 300 }), (given, width) => {
        const text = given.join(' ');
        const lines = set(text, width);
        for (const line of lines) expect(line.width).toBeLessThanOrEqual(width + 0.001);
        expect(
          lines
            .map((line) => line.text)
            .join('')
            .replaceAll(' ', ''),
        ).toBe(text.replaceAll(' ', ''));
        for (const line of lines) {
          const drawn = Array.from(seen(line)).sort().join('');
          // A bracket is drawn as its mirror image; there is none here.
          expect(drawn).toBe(Array.from(line.text).sort().join(''));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('end at spaces and hyphens', () => {
    expect(texts('Hand-bound notebook, linen cover', 60)).toEqual(['Hand-bound', 'notebook,', 'linen cover']);
    expect(texts('Hand-bound', 40)).toEqual(['Hand-', 'bound']);
  });

  it('end between Thai words, not inside one', () => {
    const words = new Intl.Segmenter('th', { granularity: 'word' });
    const text = SCRIPTS['Thai'] ?? '';
    const ends = new Set([...words.segment(text)].map(({ index }) => index));
    const lines = texts(text, 40);
    expect(lines.length).toBeGreaterThan(2);
    let at = 0;
    for (const line of lines.slice(0, -1)) expect(ends.has((at += line.length))).toBe(true);
  });

  it('end between ideographs, but not before a comma or a small kana', () => {
    for (let width = 45; width < 120; width += 7) {
      for (const line of texts('手作りノート、リネンの表紙、ちょっと。', width)) expect(line).not.toMatch(/^[、。ーょっ]/);
    }
  });

  it('cut a word that is wider than a line between characters as people see them', () => {
    const lines = texts('e\u0323\u0301'.repeat(40), 60);
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) expect(line.length % 3).toBe(0);
    expect(texts('W', 1)).toEqual(['W']);
  });

  it('reach over marks that stand higher than letters do', () => {
    const [plain] = set('a', 100);
    const [marked] = set('A\u030a\u0301\u0301\u0301', 100);
    expect(marked?.up).toBeGreaterThan(plain?.up ?? Infinity);
    expect((plain?.up ?? 0) + (plain?.down ?? 0)).toBeCloseTo(12.2, 6);
  });

  it('are none where there is no ink', () => {
    for (const text of ['', '  ', '\u200b', '\u2067\u2069']) expect(set(text, 100)).toEqual([]);
  });
});

describe('direction', () => {
  it('is that of the first letter', () => {
    expect([directionOf('12 שלום A'), directionOf('A שלום'), directionOf('12,50')]).toEqual(['rtl', 'ltr', undefined]);
    expect(set('12 שלום', 100)[0]?.rtl).toBe(true);
    expect(setParagraph('12,50', style, 100, ANY_HAN, 'rtl')[0]?.rtl).toBe(true);
  });

  // Expected by hand from UAX #9: what is written from right to left is seen reversed, numbers and Latin are not.
  it.each([
    ['שלום 12 A5', 'A5 12 םולש'],
    ['A שלום עולם B', 'A םלוע םולש B'],
    ['שלום (A5)', '(A5) םולש'],
    ['שלום (עולם)', '(םלוע) םולש'],
    ['שלום, Maren!', '!Maren ,םולש'],
  ])('shows %s as %s', (text, shown) => {
    expect(seen(set(text, 300)[0])).toBe(shown);
  });

  it('of a name that is kept apart leaves the sentence as it is', () => {
    expect(seen(set(`${apart('בריד כחול')} 3, Kite 4`, 300)[0])).toBe('לוחכ דירב 3, Kite 4');
    expect(seen(set('בריד כחול 3, Kite 4', 300)[0])).not.toBe('לוחכ דירב 3, Kite 4');
    expect(set(`${apart('בריד כחול')}: 3`, 300)[0]?.rtl).toBe(false);
    expect(apart('Kite Post')).toBe('Kite Post');
  });

  it('is kept on every line of a mixed paragraph', () => {
    const lines = set('שלום Maren, תודה על ההזמנה Paper star', 70);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line.rtl).toBe(true);
  });
});

describe('a word that is wider than a line', () => {
  const cut = (text: string, width: number): readonly string[] =>
    setParagraph(text, style, width, ANY_HAN, 'ltr', 'words').map((line) => line.text);

  it('is cut after a sign that parts it, where it has one', () => {
    expect(cut('BOX-SMALL-0012', 70)).toEqual(['BOX-SMALL-', '0012']);
    expect(cut('https://quietfold.example/a', 90)).toEqual(['https://quietfold.', 'example/a']);
  });

  it('is whole where it fits a line of its own', () => {
    expect(cut('Set BOX-SMALL', 60)).toEqual(['Set', 'BOX-SMALL']);
  });
});

describe('digits', () => {
  it('are set one by one as they are together, in every face that has them', () => {
    for (const weight of ['regular', 'bold'] as const) {
      const face = faceFor('1', weight, ANY_HAN);
      const one = (text: string): readonly Cluster[] => face?.shape(text, false) ?? [];
      for (let pair = 0; pair < 100; pair++) {
        const text = String(pair).padStart(2, '0');
        expect(one(text).map(({ key, advance }) => [key, advance])).toEqual(
          Array.from(text).flatMap((digit) => one(digit).map(({ key, advance }) => [key, advance])),
        );
      }
    }
  });
});

describe('the width of a line', () => {
  it('is that of the line that is set', () => {
    for (const text of Object.values(SCRIPTS)) {
      const width = lineWidth(text, style, ANY_HAN);
      expect(set(text, width)).toHaveLength(1);
      expect(set(text, width)[0]?.width).toBeCloseTo(width, 9);
    }
  });
});
