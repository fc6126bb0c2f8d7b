import { describe, expect, it } from 'vitest';
import { said } from '../../src/locating/kind-of-words.js';
import { withTitleFirst } from '../../src/locating/titled-first.js';
import type { Phrase } from '../../src/reading/word-lines.js';
import { judged } from './judged.js';

const phrase = (text: string, x: number, y: number, fontSize = 9, turn: Phrase['turn'] = 0): Phrase => ({
  text,
  turn,
  fontSize,
  box: { x, y, width: 5 * text.length, height: fontSize },
});
const REST = [phrase('SHIP TO', 40, 70), phrase('Ada Invented, 14 Sample Lane', 120, 70), phrase('Weight 2 kg', 40, 90)];
const headings = (phrases: readonly Phrase[]): readonly (readonly [string, boolean])[] => {
  const candidate = { ...judged({ x: 30, y: 40, width: 300, height: 400 }, 0.9, { edge: 'ink' }), said: said(phrases) };
  return withTitleFirst(candidate, phrases).said.names.map(({ kind, heading }) => [kind, heading]);
};

describe('withTitleFirst', () => {
  it('takes a first line that is a name for a heading, however small', () => {
    expect(headings([phrase('Customer receipt', 40, 50), ...REST])).toEqual([['receipt', true]]);
  });

  it.each<[string, readonly Phrase[]]>([
    ['a name that comes later', [...REST, phrase('Customer receipt', 40, 110)]],
    ['a name with something beside it', [phrase('Customer receipt', 40, 50), phrase('Halvorne', 200, 50), ...REST]],
    ['writing in more than one direction', [phrase('Customer receipt', 40, 50), ...REST, phrase('Sample', 40, 200, 9, 90)]],
  ])('leaves %s as it is', (_, phrases) => {
    expect(headings(phrases).some(([, heading]) => heading)).toBe(false);
  });

  it('leaves a return label to be one', () => {
    expect(headings([phrase('Return label', 40, 50), ...REST])).toEqual(
      said([phrase('Return label', 40, 50), ...REST]).names.map(({ kind, heading }) => [kind, heading]),
    );
  });
});
