import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { formatDiagnostic, formatDiagnostics } from '../../src/diagnostics/format.js';

const at = (line: number, col: number, length: number): Diagnostic => ({
  code: 'config/unknown-key',
  severity: 'error',
  message: 'a channel has no `recepi`',
  remedy: 'Write `recipe`.',
  place: { kind: 'config', file: 'pipeline.yaml', line, col, length },
});
const show = (diagnostic: Diagnostic, source: string): readonly string[] =>
  formatDiagnostic(diagnostic, { colour: false, sources: new Map([['pipeline.yaml', source]]) }).split('\n');

describe('formatDiagnostic', () => {
  it('shows place, severity, message, code, the line, a caret below the word and the remedy', () => {
    expect(show(at(2, 5, 6), 'channels:\n  - recepi: any-page\n')).toEqual([
      'pipeline.yaml:2:5: error: a channel has no `recepi` [config/unknown-key]',
      '  2 |   - recepi: any-page',
      '    |     ^^^^^^',
      '  do: Write `recipe`.',
    ]);
  });

  it('keeps the lines of a remedy below each other, and nothing else that would move the cursor', () => {
    const lines = show({ ...at(9, 1, 1), message: 'a\nb', remedy: 'Write:\n  a: 1\r\u001b' }, 'one line');
    expect(lines.slice(1)).toEqual(['  do: Write:', '        a: 1��']);
    expect(lines[0]).toContain('a�b');
  });

  it('goes without an excerpt where the source is not known or has no such line', () => {
    expect(formatDiagnostic(at(2, 5, 6), { colour: false }).split('\n')).toHaveLength(2);
    expect(show(at(9, 1, 1), 'one line')).toHaveLength(2);
  });

  it('keeps the caret below its word behind tabs, wide characters, combining marks and pictographs', () => {
    for (const before of ['\t\t', '配送: ', 'e\u0301e\u0301: ', '📦: ']) {
      const [, line, caret] = show(at(1, before.length + 1, 4), `${before}oops`);
      expect(columnOf(line ?? '', 'oops')).toBe((caret ?? '').indexOf('^'));
      expect(caret).toMatch(/\^{4}$/);
    }
  });

  it('cuts a long line around the place and keeps the caret below it', () => {
    const [, line, caret] = show(at(1, 401, 4), `${'x'.repeat(400)}oops${'y'.repeat(400)}`);
    expect(line?.length).toBeLessThan(130);
    expect(line?.indexOf('oops')).toBe(caret?.indexOf('^'));
  });

  it('never lets a file move the cursor of the terminal', () => {
    const evil = { ...at(1, 1, 3), message: 'found \u001b[2J\u202e here' };
    const text = show(evil, 'a\u001b[31mred\u0007').join('\n');
    expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  });

  it('names line and column of an order file, and never shows what stands there', () => {
    const orders = { ...at(1, 1, 1), place: { kind: 'orders', file: 'orders.csv', line: 7, col: 3 } } as const;
    const text = formatDiagnostic(orders, { colour: false, sources: new Map([['orders.csv', 'a\n'.repeat(9)]]) });
    expect(text).toMatch(/^orders\.csv:7:3: /);
    expect(text).not.toContain(' | ');
  });

  it('names page and item of a document, and no place for the run', () => {
    const document: Diagnostic = {
      code: 'verify/nothing-to-prove',
      severity: 'warning',
      message: 'm',
      place: { kind: 'document', file: 'a.pdf', page: 3, item: 'p3.2' },
    };
    expect(formatDiagnostic(document, { colour: false })).toBe('a.pdf, page 3, item p3.2: warning: m [verify/nothing-to-prove]');
    expect(formatDiagnostic({ ...document, place: { kind: 'run' } }, { colour: false })).toBe('warning: m [verify/nothing-to-prove]');
  });

  it('colours only when asked, and says the same', () => {
    const coloured = formatDiagnostic(at(1, 1, 1), { colour: true });
    expect(coloured).toContain('\u001b[31merror:');
    expect(coloured.replaceAll(/\u001b\[\d+m/g, '')).toBe(formatDiagnostic(at(1, 1, 1), { colour: false }));
  });

  it('ends a list with a newline, and is empty for none', () => {
    expect(formatDiagnostics([], { colour: false })).toBe('');
    expect(formatDiagnostics([at(1, 1, 1), at(2, 1, 1)], { colour: false })).toMatch(/recipe`\.\npipeline.*\n$/s);
  });
});

/** Column of `word` on a terminal, for the few kinds of characters used above. */
function columnOf(line: string, word: string): number {
  const before = line.slice(0, line.indexOf(word)).replaceAll(/\p{M}/gu, '');
  return Array.from(before).reduce((sum, char) => sum + (/[\p{Script=Han}📦]/u.test(char) ? 2 : 1), 0);
}
