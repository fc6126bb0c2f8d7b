import type { Box } from '../../src/geometry/box.js';
import { inToPt, mmToPt } from '../../src/geometry/length.js';
import type { Candidate, Judged } from '../../src/locating/candidate.js';
import type { Said } from '../../src/locating/kind-of-words.js';
import type { CodeLikeArea } from '../../src/reading/code-like.js';
import type { Code, Word } from '../../src/reading/source.js';

/** What a region without words says. */
export const nothingSaid: Said = { names: [], labelWords: 0, characters: 0 };

/** A box in inches: left, top, width, height. */
export const inches = (x: number, y: number, width: number, height: number): Box => ({
  x: inToPt(x),
  y: inToPt(y),
  width: inToPt(width),
  height: inToPt(height),
});

export const barsAt = (box: Box): CodeLikeArea => ({ box, kind: 'linear', run: 'level' });
export const matrixAt = (box: Box): CodeLikeArea => ({ box, kind: 'matrix', run: undefined });

/** A row of bars in the middle of a box. */
export const barsIn = ({ x, y, width, height }: Box): CodeLikeArea =>
  barsAt({ x: x + width / 4, y: y + height / 2, width: width / 2, height: mmToPt(15) });

export const candidate = (box: Box, more: Partial<Candidate> = {}): Candidate => ({ box, edge: 'frame', codes: [barsIn(box)], ...more });
export const judged = (box: Box, score: number, more: Partial<Judged> = {}): Judged => ({
  ...candidate(box),
  evidence: [],
  score,
  ...more,
});

export const word = (text: string, box: Box, turn: Word['turn'] = 0): Word => ({ text, box, turn, fontSize: 10 });

const NOWHERE = { x: 0, y: 0 };
/** A code that says this, read somewhere in a box. */
export const codeSaying = (text: string, box: Box, symbology: Code['symbology'] = 'Code 128'): Code => ({
  symbology,
  identifier: ']C0',
  bytes: Buffer.from(text, 'latin1').toString('hex'),
  corners: [NOWHERE, NOWHERE, NOWHERE, NOWHERE],
  box,
  turn: 0,
});
