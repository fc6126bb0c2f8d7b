import { grow, type Box } from '../geometry/box.js';
import { TURNS, type Turn } from '../geometry/placement.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { Code, SourcePage } from '../reading/source.js';
import { wordsInPicture, type Reading } from '../reading/words-in-picture.js';
import { directionOfCodes } from './direction-of-codes.js';

/** The words of a picture must be this many sure characters, and so many times those of the next turn, to be believed. */
export const READ = { least: 12, ahead: 2 };
/** Fine enough to read small print out of a picture: 150 dpi. */
const READING_PIXELS_PER_PT = 150 / 72;

const known = new WeakMap<SourcePage, Map<string, Promise<Reading>>>();

/** What can be read in a box of a page when it is turned clockwise by `turn`; codes are no writing. Each is read once. */
export function readTurned(page: SourcePage, box: Box, codes: readonly Code[], turn: Turn): Promise<Reading> {
  let read = known.get(page);
  if (!read) known.set(page, (read = new Map<string, Promise<Reading>>()));
  const key = [box.x, box.y, box.width, box.height, turn].join(' ');
  let words = read.get(key);
  if (!words) {
    const noWriting = [...codes.map((code) => grow(code.box, 3)), ...codeLikeAreas(page).map((area) => area.box)];
    read.set(key, (words = wordsInPicture(page.render(box, READING_PIXELS_PER_PT), noWriting, turn)));
  }
  return words;
}

/** What can be read in a box of a page the way its codes stand, or, where they don't tell or nothing can be read so, the way that most can be read. */
export async function readPicture(page: SourcePage, box: Box, codes: readonly Code[]): Promise<Reading> {
  const byCodes = directionOfCodes(page, box, codes);
  const [first, ...others] = byCodes.kind === 'sure' ? [byCodes.turn, ...TURNS.filter((turn) => turn !== byCodes.turn)] : TURNS;
  let best = await readTurned(page, box, codes, first ?? 0);
  if (byCodes.kind === 'sure' && best.sure >= READ.least) return best;
  for (const turn of others) {
    const reading = await readTurned(page, box, codes, turn);
    if (reading.sure > best.sure) best = reading;
  }
  return best;
}

/** Whether what was read is in a script that the reader knows, and clear enough: most of it was read surely. */
export const isLegible = ({ sure, unsure }: Reading): boolean => sure >= READ.least && sure >= LEGIBLE * (sure + unsure);
const LEGIBLE = 0.5;
