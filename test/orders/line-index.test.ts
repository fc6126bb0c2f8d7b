import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LineIndex } from '../../src/orders/line-index.js';

const text = fc
  .array(fc.constantFrom('a', 'ž', '紙', '\u{1F4E6}', '\r\n', '\n', '\r', ','), { maxLength: 40 })
  .map((parts) => parts.join(''));

describe('line and column of a byte', () => {
  it('count from 1, columns in UTF-16 units', () => {
    const bytes = Buffer.from('ab\r\nž\u{1F4E6}x\ry\n');
    const index = new LineIndex(bytes);
    expect(index.spot(0)).toEqual({ line: 1, col: 1 });
    expect(index.spot(bytes.indexOf('x'))).toEqual({ line: 2, col: 4 });
    expect(index.spot(bytes.indexOf('y'))).toEqual({ line: 3, col: 1 });
    expect(index.line(bytes.length)).toBe(4);
  });

  it('are those of the text before it, for any text and any line end', () => {
    fc.assert(
      fc.property(text, fc.nat(40), (whole, at) => {
        const characters = Array.from(whole);
        const before = characters.slice(0, at).join('');
        // Between the two halves of a line end is no place of its own.
        if (before.endsWith('\r') && characters[at] === '\n') return;
        const lines = before.split(/\r\n|\r|\n/);
        expect(new LineIndex(Buffer.from(whole)).spot(Buffer.byteLength(before))).toEqual({
          line: lines.length,
          col: (lines.at(-1)?.length ?? 0) + 1,
        });
      }),
    );
  });

  it('go on to the next line, and to the end behind the last', () => {
    fc.assert(
      fc.property(text, (whole) => {
        const bytes = Buffer.from(whole);
        const index = new LineIndex(bytes);
        const lines: string[] = [];
        for (let from = 0; from < bytes.length;) {
          const next = index.nextLine(from);
          expect(next).toBeGreaterThan(from);
          lines.push(bytes.toString('utf8', from, next));
          from = next;
        }
        expect(lines.join('')).toBe(whole);
        for (const line of lines) expect(line.replace(/(?:\r\n|\r|\n)$/, '')).not.toMatch(/[\r\n]/);
      }),
    );
  });
});
