import { describe, expect, it } from 'vitest';
import { countInWords, hasErrors, inReadingOrder } from '../../src/diagnostics/collect.js';
import type { Diagnostic, Place, Severity } from '../../src/diagnostics/diagnostic.js';

const make = (message: string, place: Place, severity: Severity = 'error'): Diagnostic => ({
  code: 'config/bad-value',
  severity,
  message,
  place,
});
const config = (file: string, line: number, col: number): Place => ({ kind: 'config', file, line, col });

describe('inReadingOrder', () => {
  it('sorts by first appearance of the file, then line and column, the run last, and keeps one of equals', () => {
    const list = [
      make('run', { kind: 'run' }),
      make('b2', config('b', 2, 1)),
      make('a9', config('a', 9, 1)),
      make('b1.7', config('b', 1, 7)),
      make('b1.3', config('b', 1, 3)),
      make('b2', config('b', 2, 1)),
    ];
    expect(inReadingOrder(list).map((each) => each.message)).toEqual(['b1.3', 'b1.7', 'b2', 'a9', 'run']);
  });

  it('sorts places of order files by line and column, too', () => {
    const at = (line: number, col: number): Diagnostic => make(`${line}:${col}`, { kind: 'orders', file: 'a.csv', line, col });
    expect(inReadingOrder([at(2, 1), at(1, 9), at(1, 2)]).map((each) => each.message)).toEqual(['1:2', '1:9', '2:1']);
  });

  it('keeps two messages at one place in the order given', () => {
    expect(inReadingOrder([make('x', config('a', 1, 1)), make('w', config('a', 1, 1))]).map((each) => each.message)).toEqual(['x', 'w']);
  });
});

describe('counting', () => {
  it('knows errors from warnings and notes', () => {
    const list = [make('w', { kind: 'run' }, 'warning'), make('n', { kind: 'run' }, 'note')];
    expect(hasErrors(list)).toBe(false);
    expect(hasErrors([...list, make('e', { kind: 'run' })])).toBe(true);
    expect(countInWords([...list, make('e', { kind: 'run' }), make('f', { kind: 'run' })])).toBe('2 errors, 1 warning');
    expect(countInWords([])).toBe('');
  });
});
