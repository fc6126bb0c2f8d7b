import { describe, expect, it } from 'vitest';
import { addressBlocks } from '../../src/locating/address-block.js';
import { hasSteps, withoutSteps } from '../../src/locating/list-of-steps.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { word } from './judged.js';

const lines = (texts: readonly string[]) =>
  phrasesOf(texts.map((text, at) => word(text, { x: 80, y: 72 + at * 12, width: text.length * 5, height: 10 })));
const STEPS = ['1. Print this page at 100 %.', '2. Fold the sheet, or cut it.', '3. Tape it to the box.'];

describe('a list of steps', () => {
  it('is numbered one after the other, three lines or more', () => {
    expect(hasSteps(lines(STEPS))).toBe(true);
    expect(hasSteps(lines(STEPS.slice(0, 2)))).toBe(false);
    expect(hasSteps(lines(['1. OG links', 'Sample Lane 3']))).toBe(false);
  });

  it('is left away by its numbered lines only', () => {
    expect(withoutSteps(lines(['Then', ...STEPS, 'bars.'])).map(({ text }) => text)).toEqual(['Then', 'bars.']);
    expect(withoutSteps(lines(STEPS.slice(0, 2)))).toHaveLength(2);
  });

  it('has its numbers in its lines or before them', () => {
    const setOut = phrasesOf(
      STEPS.flatMap((step, at) => {
        const [number, text] = [step.slice(0, 2), step.slice(3)];
        const y = 72 + at * 12;
        return [word(number, { x: 80, y, width: 8, height: 10 }), word(text, { x: 104, y, width: text.length * 5, height: 10 })];
      }),
    );
    expect(setOut).toHaveLength(6);
    expect(hasSteps(setOut)).toBe(true);
    const beside = phrasesOf([word('Sample Lane 3', { x: 160, y: 72, width: 65, height: 10 })]);
    expect(
      withoutSteps([...setOut, ...beside.map((phrase) => ({ ...phrase, box: { ...phrase.box, x: 330 } }))]).map(({ text }) => text),
    ).toEqual(['Sample Lane 3']);
  });

  it('is nobody’s address', () => {
    const list = ['1. Thistle & Tin', '2. Sample Lane 12', '3. Larch Halt EX 00187'];
    expect(addressBlocks(lines(list))).toEqual([]);
    expect(addressBlocks(lines(list.map((line) => line.slice(3))))).not.toEqual([]);
  });
});
