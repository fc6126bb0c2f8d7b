import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { isCellOfLabel, withBothAddresses } from '../../src/locating/both-addresses.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { barsAt, judged, word } from './judged.js';

const block = (y: number, lines: readonly string[]) =>
  lines.map((text, at) => word(text, { x: 80, y: y + at * 12, width: text.length * 5, height: 10 }));
const FROM = block(80, ['Thistle & Tin', '3 Example Street', 'Sampleton EX 00730']);
const TO = block(200, ['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187']);
const BOTH = phrasesOf([...FROM, ...TO]);
const BARS = barsAt({ x: 100, y: 380, width: 200, height: 60 });
const WHOLE: Box = { x: 70, y: 70, width: 270, height: 400 };
const LOWER: Box = { ...WHOLE, y: 190, height: 280 };
const ink = (box: Box, score = 0.8) => judged(box, score, { edge: 'ink', codes: [BARS] });

describe('withBothAddresses', () => {
  const left = (phrases = BOTH, wholes: readonly Box[] = [WHOLE], isOther = (): boolean => false, whole = ink(WHOLE)) =>
    withBothAddresses([ink(LOWER), whole], { phrases, wholes, isOther }).length;

  it('leaves away what lacks the sender, where all ink there is has both', () => {
    expect(withBothAddresses([ink(LOWER), ink(WHOLE)], { phrases: BOTH, wholes: [WHOLE], isOther: () => false })).toEqual([ink(WHOLE)]);
  });

  it.each([
    ['neither has both', left(phrasesOf(TO))],
    ['more ink is there', left(BOTH, [{ ...WHOLE, height: 600 }])],
    ['the whole calls itself something else', left(BOTH, [WHOLE], () => true)],
    ['the whole is no likely one', left(BOTH, [WHOLE], () => false, ink(WHOLE, 0.5))],
  ])('leaves all where %s', (_, count) => {
    expect(count).toBe(2);
  });

  it('leaves frames', () => {
    const frame = judged(LOWER, 0.8, { codes: [BARS] });
    expect(withBothAddresses([frame, ink(WHOLE)], { phrases: BOTH, wholes: [WHOLE], isOther: () => false })).toHaveLength(2);
  });
});

describe('isCellOfLabel', () => {
  it('has sender, receiver and bars, which no ink in it has together', () => {
    expect(isCellOfLabel(WHOLE, [ink(LOWER)], [BARS], BOTH)).toBe(true);
    expect(isCellOfLabel(WHOLE, [ink(WHOLE)], [BARS], BOTH)).toBe(false);
    expect(isCellOfLabel(WHOLE, [ink(LOWER)], [], BOTH)).toBe(false);
    expect(isCellOfLabel(WHOLE, [ink(LOWER)], [BARS], phrasesOf(TO))).toBe(false);
    expect(isCellOfLabel({ ...WHOLE, height: 700 }, [ink(LOWER)], [BARS], BOTH)).toBe(false);
  });
});
