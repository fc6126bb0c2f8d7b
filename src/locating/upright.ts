import { contains, type Box } from '../geometry/box.js';
import { oppositeTurn, TURNS, type Turn } from '../geometry/placement.js';
import type { Code, SourcePage } from '../reading/source.js';
import { directionOfCodes, directionWords, type Upright } from './direction-of-codes.js';
import { READ, readTurned } from './read-picture.js';

/** So much of the writing (by size of type) must run one way, of at least so many characters. */
const AGREED = 0.7;
const ENOUGH_CHARACTERS = 12;

/**
 * The clockwise turn that makes what is in `box` upright: by the direction of the words, else by the codes' own reading
 * direction, else by the words that can be read in the picture of it, which takes seconds. `codes` reads the codes only when the
 * words don't settle it.
 */
export async function uprightTurn(page: SourcePage, box: Box, codes: () => Promise<readonly Code[]>): Promise<Upright> {
  const byWords = directionOfWords(page, box);
  if (byWords !== undefined) return { kind: 'sure', turn: oppositeTurn(byWords), evidence: `words run ${directionWords(byWords)}` };
  const read = await codes();
  const byCodes = directionOfCodes(page, box, read);
  return byCodes.kind === 'sure' ? byCodes : directionOfPicture(page, box, read, byCodes.why);
}

/** Reads the picture in all four turns; `why` says what the codes left open. */
async function directionOfPicture(page: SourcePage, box: Box, codes: readonly Code[], why: string): Promise<Upright> {
  const characters: [Turn, number][] = [];
  for (const turn of TURNS) characters.push([turn, (await readTurned(page, box, codes, turn)).sure]);
  const [best, next] = characters.sort((a, b) => b[1] - a[1]);
  if (best && best[1] >= READ.least && best[1] >= READ.ahead * (next?.[1] ?? 0)) {
    return {
      kind: 'sure',
      turn: best[0],
      evidence: `${best[1]} characters could be read in its picture turned by ${best[0]}°, ${next?.[1] ?? 0} the next way`,
    };
  }
  return { kind: 'doubtful', why: `${why}, and no words could be read in its picture` };
}

function directionOfWords(page: SourcePage, box: Box): Turn | undefined {
  const weight = new Map<Turn, number>();
  let all = 0;
  let characters = 0;
  for (const word of page.words()) {
    if (!contains(box, word.box, 2)) continue;
    const w = word.text.length * word.fontSize;
    all += w;
    characters += word.text.length;
    if (word.turn !== undefined) weight.set(word.turn, (weight.get(word.turn) ?? 0) + w);
  }
  if (characters < ENOUGH_CHARACTERS) return undefined;
  return TURNS.find((turn) => (weight.get(turn) ?? 0) >= AGREED * all);
}
