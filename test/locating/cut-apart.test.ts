import { describe, expect, it } from 'vitest';
import { grow, type Box } from '../../src/geometry/box.js';
import type { Edge } from '../../src/locating/candidate.js';
import { cutApart } from '../../src/locating/cut-apart.js';
import { HAIR } from '../../src/locating/gather.js';
import type { RuledLine } from '../../src/reading/ruled.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { barsAt, candidate, word } from './judged.js';

const LABEL: Box = { x: 60, y: 80, width: 260, height: 190 };
const RECEIPT: Box = { x: 370, y: 84, width: 150, height: 140 };
const LINE: RuledLine = { box: { x: 345, y: 70, width: 1, height: 210 }, level: false, dashed: true };
const BOTH: Box = { x: 59, y: 69, width: 463, height: 212 };
const CODES = [barsAt({ x: 90, y: 180, width: 160, height: 50 }), barsAt({ x: 390, y: 160, width: 120, height: 30 })];
const UPRIGHT = phrasesOf([word('Ada Invented', { x: 70, y: 100, width: 80, height: 10 })]);

interface More {
  readonly line?: RuledLine;
  readonly blobs?: readonly Box[];
  readonly codes?: typeof CODES;
  readonly phrases?: typeof UPRIGHT;
  readonly edge?: Edge;
}
const parts = ({ line = LINE, blobs = [LABEL, RECEIPT, LINE.box], codes = CODES, phrases = UPRIGHT, edge = 'ink' }: More = {}) =>
  cutApart(candidate(BOTH, { edge, codes }), [line], blobs, phrases).map(({ box }) => box);

describe('cutApart', () => {
  it('gives what is on either side of a dashed line that goes beyond it at both ends', () => {
    expect(parts()).toEqual([LABEL, RECEIPT].map((box) => grow(box, HAIR)));
    expect(cutApart(candidate(BOTH, { edge: 'ink', codes: CODES }), [LINE], [LABEL, RECEIPT], UPRIGHT).map(({ codes }) => codes)).toEqual([
      [CODES[0]],
      [CODES[1]],
    ]);
  });

  it.each([
    ['the line is a rule', parts({ line: { ...LINE, dashed: false } })],
    ['the line ends with the ink', parts({ blobs: [{ ...LABEL, y: 70, height: 210 }, RECEIPT, LINE.box] })],
    ['one side has no code', parts({ codes: CODES.slice(0, 1) })],
    ['no writing says which way is up', parts({ phrases: [] })],
    ['the line runs along the writing', parts({ phrases: phrasesOf([word('Ada', { x: 70, y: 100, width: 10, height: 80 }, 90)]) })],
    ['it has a frame', parts({ edge: 'frame' })],
  ])('leaves all as it is where %s', (_, boxes) => {
    expect(boxes).toEqual([BOTH]);
  });
});
