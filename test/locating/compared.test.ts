import { describe, expect, it } from 'vitest';
import { isSeveral } from '../../src/locating/compared.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import type { Code } from '../../src/reading/source.js';
import { codeSaying, inches, judged, nothingSaid, word } from './judged.js';

const BOX = inches(1, 1, 4, 8);
const code = (text: string): Code => codeSaying(text, BOX);
const address = (at: number) =>
  ['Ada Invented', `${at + 3} Sample Lane`, 'Larch Halt EX 00187'].map((text, line) =>
    word(text, { x: 80, y: 80 + 80 * at + 12 * line, width: text.length * 5, height: 10 }),
  );
const several = (addresses: number, numbers: readonly string[], edge: 'ink' | 'frame' = 'ink', box = BOX): boolean =>
  isSeveral(
    { label: { ...judged(box, 1, { edge }), said: nothingSaid, next: undefined }, strength: 3, codes: numbers.map(code) },
    phrasesOf(Array.from({ length: addresses }, (_, at) => address(at)).flat()),
  );

describe('isSeveral', () => {
  it('two labels as one piece of ink have the addresses and the numbers of two', () => {
    expect(several(4, ['LM35863805470450', 'KS6520966986'])).toBe(true);
    expect(several(3, ['LM35863805470450', 'KS6520966986'])).toBe(true);
  });

  it('one label has two addresses, or one number, perhaps twice, or an edge', () => {
    expect(several(3, ['LM35863805470450', 'KS6520966986'], 'ink', inches(1, 1, 4, 6))).toBe(false);
    expect(several(2, ['LM35863805470450', 'KS6520966986'])).toBe(false);
    expect(several(4, ['LM35863805470450', '0LM35863805470450'])).toBe(false);
    expect(several(4, ['LM35863805470450', 'KS-12'])).toBe(false);
    expect(several(4, ['LM35863805470450', 'KS6520966986'], 'frame')).toBe(false);
  });
});
