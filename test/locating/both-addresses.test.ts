import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
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
    withBothAddresses([ink(LOWER), whole], { phrases, blobs: [], wholes, isOther }).length;

  it('leaves away what lacks the sender, where all ink there is has both', () => {
    expect(withBothAddresses([ink(LOWER), ink(WHOLE)], { phrases: BOTH, blobs: [], wholes: [WHOLE], isOther: () => false })).toEqual([
      ink(WHOLE),
    ]);
  });

  it.each([
    ['neither has both', left(phrasesOf(TO))],
    ['more ink is there', left(BOTH, [{ ...WHOLE, height: 600 }])],
    ['the whole calls itself something else', left(BOTH, [WHOLE], () => true)],
    ['the whole is no likely one', left(BOTH, [WHOLE], () => false, ink(WHOLE, 0.5))],
  ])('leaves all where %s', (_, count) => {
    expect(count).toBe(2);
  });

  describe('of what goes on below sender, receiver and bars', () => {
    const more: Box = { ...WHOLE, x: 60, width: 290, height: 520 };
    const parts = [
      { ...WHOLE, height: 130 },
      { ...WHOLE, y: 210, height: 260 },
    ];
    const goingOn = (clear: number, whole = ink(more), { phrases = BOTH, blobs = parts } = {}) =>
      withBothAddresses([{ ...ink(WHOLE), clear }, whole], { phrases, blobs, wholes: [], isOther: () => false }).includes(whole);

    it('leaves away the whole, where the white between is wider than parts of a label have', () => {
      expect(goingOn(mmToPt(17))).toBe(false);
      expect(goingOn(mmToPt(14))).toBe(true);
    });

    it.each([
      ['there is as much white before it', goingOn(mmToPt(17), ink(more), { blobs: [{ ...WHOLE, height: 130 }, { ...WHOLE, y: 240, height: 230 }] })], // prettier-ignore
      ['a third address follows', goingOn(mmToPt(17), ink(more), { phrases: phrasesOf([...FROM, ...TO, ...block(490, ['Bea Invented', '9 Sample Lane', 'Larch Halt EX 00188'])]) })], // prettier-ignore
      ['what follows keeps to its column', goingOn(mmToPt(17), ink({ ...WHOLE, height: 520 }))],
      ['a code follows', goingOn(mmToPt(17), { ...ink(more), codes: [BARS, BARS] })],
      ['all of it is as large as a label mostly is', goingOn(mmToPt(17), ink({ ...WHOLE, width: 275, height: 410 }))],
      ['rules divide it', goingOn(mmToPt(17), { ...ink(more), ruled: 'level' })],
    ])('leaves it where %s', (_, is) => {
      expect(is).toBe(true);
    });
  });

  it('leaves frames', () => {
    const frame = judged(LOWER, 0.8, { codes: [BARS] });
    expect(withBothAddresses([frame, ink(WHOLE)], { phrases: BOTH, blobs: [], wholes: [WHOLE], isOther: () => false })).toHaveLength(2);
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
