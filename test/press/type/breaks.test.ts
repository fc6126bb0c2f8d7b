import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breaksOf, type Breaks } from '../../../src/press/type/breaks.js';
import { SCRIPTS } from '../slip/slips.js';

/** A text, parted wherever a line may end. */
const parts = (text: string, breaks: Breaks): readonly string[] => {
  let from = 0;
  return breaksOf(text, breaks).map((to) => {
    const part = text.slice(from, to);
    from = to;
    return part;
  });
};

describe('places where a line may end', () => {
  it('are after spaces and hyphens, or after spaces only', () => {
    expect(parts('Hand-bound book, 12–15', 'allowed')).toEqual(['Hand-', 'bound ', 'book, ', '12–', '15']);
    expect(parts('Hand-bound book, 12–15', 'words')).toEqual(['Hand-bound ', 'book, ', '12–15']);
  });

  it('are not at a space that no line may be broken at', () => {
    expect(parts('12\u00a0cm', 'words')).toEqual(['12\u00a0cm']);
    expect(parts('TEA\u200bBOWL', 'words')).toEqual(['TEA\u200b', 'BOWL']);
  });

  it('are between ideographs and Thai words, for they have no spaces', () => {
    expect(parts('手工装订', 'words')).toEqual(['手', '工', '装', '订']);
    expect(parts('ノート、紙', 'words')).toEqual(['ノー', 'ト、', '紙']);
    expect(parts('สมุดบันทึก', 'words')).toEqual(['สมุด', 'บันทึก']);
    expect(parts('공책 손으로', 'words')).toEqual(['공책 ', '손으로']);
  });

  it('rise, end with the text, and those between words are among those allowed', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...Object.values(SCRIPTS), 'AB-12/3', ' ', '12–15'), { minLength: 1, maxLength: 8 }),
        (given) => {
          const text = given.join('');
          const [allowed, words] = [breaksOf(text, 'allowed'), breaksOf(text, 'words')];
          for (const breaks of [allowed, words]) {
            expect(breaks).toEqual([...new Set(breaks)].sort((a, b) => a - b));
            expect(breaks.at(-1)).toBe(text.length);
            expect(breaks[0]).toBeGreaterThan(0);
          }
          expect(words.filter((each) => !allowed.includes(each))).toEqual([]);
        },
      ),
    );
  });
});
