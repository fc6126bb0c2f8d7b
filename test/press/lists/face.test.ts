import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ListFace } from '../../../src/press/lists/face.js';
import type { SetLine, Style } from '../../../src/press/type/paragraph.js';
import { SCRIPTS } from '../slip/slips.js';

const style: Style = { size: 8, weight: 'regular' };
const texts = (lines: readonly SetLine[]): readonly string[] => lines.map(({ text }) => text.replace(/[\u2068\u2069]/g, ''));
const someText = fc
  .array(fc.constantFrom(...Object.values(SCRIPTS), 'BOX-SMALL-0012', '12–15', 'a', '–', '(A5)', '9400110000'), { maxLength: 12 })
  .map((words) => words.join(' '));

describe('the type of lists', () => {
  it('breaks between words, not at a hyphen or a dash', () => {
    const face = new ListFace();
    expect(texts(face.lines('SET-A 3, 12–15', style, 40))).toEqual(['SET-A 3,', '12–15']);
    expect(texts(face.lines('BOX-SMALL-0012', style, 55))).toEqual(['BOX-SMALL-', '0012']);
    expect(face.lines(' \n ', style, 40)).toEqual([]);
  });

  it('names what no typeface has, each once, and nothing around it', () => {
    const face = new ListFace();
    expect(texts(face.lines('Pin \u{1F426} for Robin', style, 400))).toEqual(['Pin [bird] for Robin']);
    face.lines('Another \u{1F426}', style, 400);
    expect(face.warnings).toEqual(['No typeface here has [bird]: its name is printed in brackets.']);
  });

  it('sets lines that are no wider than asked and hold all of the text', () => {
    const face = new ListFace();
    fc.assert(
      fc.property(someText, fc.integer({ min: 20, max: 300 }), (text, width) => {
        const lines = face.lines(text, style, width);
        for (const line of lines) expect(line.width).toBeLessThanOrEqual(width + 0.001);
        expect(texts(lines).join('').replaceAll(' ', '')).toBe(text.normalize('NFC').replaceAll(' ', ''));
        if (text !== '' && face.width(text, style) <= width) expect(lines).toHaveLength(1);
      }),
      { numRuns: 60 },
    );
  });

  it('cuts what is too long for its lines, says so, and keeps its end', () => {
    const face = new ListFace();
    const long = 'Kite Post '.repeat(400);
    const lines = face.linesAtMost(3, long, ' (continued)', style, 100);
    expect(lines).toHaveLength(3);
    expect(texts(lines).join(' ')).toMatch(/^Kite Post Kite Post .*… \(continued\)$/);
    expect(texts(face.linesAtMost(3, 'Kite Post', ' (continued)', style, 100))).toEqual(['Kite Post (continued)']);
  });

  it('begins at the left, whatever the direction of the name', () => {
    const [line] = new ListFace().linesAtMost(3, 'בריד כחול', ': 3 parcels', style, 200);
    expect(line?.rtl).toBe(false);
    expect(line?.clusters.map(({ text }) => text).join('')).toBe('לוחכ דירב: 3 parcels');
  });

  it('cuts nothing that fits, and never takes more lines than it may', () => {
    const face = new ListFace();
    fc.assert(
      fc.property(someText, fc.integer({ min: 1, max: 4 }), (text, most) => {
        const [whole, cut] = [face.lines(`${text}: 3`, style, 120), face.linesAtMost(most, text, ': 3', style, 120)];
        expect(cut.length).toBeLessThanOrEqual(most);
        if (whole.length <= most) expect(texts(cut)).toEqual(texts(whole));
        else expect(texts(cut).join('')).toContain('…');
        expect(texts(cut).join('').replaceAll(' ', '')).toMatch(/:3$/);
      }),
      { numRuns: 60 },
    );
  });
});
