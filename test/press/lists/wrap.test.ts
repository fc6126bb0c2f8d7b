import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrapped } from '../../../src/press/lists/wrap.js';

const width = (text: string): number => text.length;

describe('lines of a text', () => {
  it('break between words, and after a hyphen where a word is too long', () => {
    expect(wrapped('a walnut tray', 8, width)).toEqual(['a walnut', 'tray']);
    expect(wrapped('BOX-SMALL-0012', 11, width)).toEqual(['BOX-SMALL-', '0012']);
    expect(wrapped('1234567890 x', 4, width)).toEqual(['1234', '5678', '90 x']);
    expect(wrapped('  ', 4, width)).toEqual([]);
  });

  it('are no wider than they may be and lose nothing but blanks', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-c -]{0,40}$/), fc.integer({ min: 1, max: 12 }), (text, most) => {
        const lines = wrapped(text, most, width);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(most);
        expect(lines).not.toContain('');
      }),
    );
  });

  it('has a character in each part, though none fits', () => {
    expect(wrapped('abc', 0.5, width)).toEqual(['a', 'b', 'c']);
  });
});
