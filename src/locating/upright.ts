import { contains, grow, type Box } from '../geometry/box.js';
import { oppositeTurn, TURNS, type Turn } from '../geometry/placement.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { Code, SourcePage } from '../reading/source.js';
import { charactersByTurn } from '../reading/words-in-picture.js';
import { writingAxis } from './writing-axis.js';

export type Upright =
  { readonly kind: 'sure'; readonly turn: Turn; readonly evidence: string } | { readonly kind: 'doubtful'; readonly why: string };

/** So much of the writing (by size of type) must run one way, of at least so many characters. */
const AGREED = 0.7;
const ENOUGH_CHARACTERS = 12;

/** The words of a picture must be this many characters, and so many times those of the next turn, to be believed. */
const READ = { least: 12, ahead: 2 };
/** Fine enough to read small print out of a picture: 150 dpi. */
const READING_PIXELS_PER_PT = 150 / 72;

/**
 * The clockwise turn that makes what is in `box` upright: by the direction of the words, else by the codes' own reading
 * direction, else by the words that can be read in the picture of it, which takes seconds. `codes` reads the codes only when the
 * words don't settle it.
 */
export async function uprightTurn(page: SourcePage, box: Box, codes: () => Promise<readonly Code[]>): Promise<Upright> {
  const byWords = directionOfWords(page, box);
  if (byWords !== undefined) return { kind: 'sure', turn: oppositeTurn(byWords), evidence: `words run ${directionWords(byWords)}` };
  const read = await codes();
  const byCodes = directionOfCodes(read, box, writingAxis(page, box));
  return byCodes.kind === 'sure' ? byCodes : directionOfPicture(page, box, read, byCodes.why);
}

/** Reads the picture in all four turns; `why` says what the codes left open. */
async function directionOfPicture(page: SourcePage, box: Box, codes: readonly Code[], why: string): Promise<Upright> {
  const noWriting = [...codes.map((code) => grow(code.box, 3)), ...codeLikeAreas(page).map((area) => area.box)];
  const characters = [...(await charactersByTurn(page.render(box, READING_PIXELS_PER_PT), noWriting))].sort((a, b) => b[1] - a[1]);
  const [best, next] = characters;
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

/**
 * A matrix or stacked code stands upright on a label as the words do; so does a linear code, unless it is a ladder. A linear
 * code alone is believed when it runs the way the writing does, or, where no writing can be seen, across a label that is then taller than wide.
 */
function directionOfCodes(codes: readonly Code[], box: Box, axis: 'level' | 'upright' | undefined): Upright {
  const isAlong = (turn: Turn): boolean => axis === undefined || (axis === 'level') === (turn % 180 === 0);
  const linear = codes.filter((code) => isLinear(code) && code.turn !== undefined);
  const matrix = codes.filter((code) => !isLinear(code) && code.turn !== undefined && isAlong(code.turn));
  const tall = (turn: Turn): boolean => (turn % 180 === 0 ? box.height >= box.width : box.width >= box.height);
  const across = linear.filter(({ turn }) => turn !== undefined && (axis === undefined ? tall(turn) : isAlong(turn)));
  const votes = new Set([...across, ...matrix].map((code) => code.turn));
  const [only] = votes;
  if (votes.size === 1 && only !== undefined) {
    const names = across.length > 0 ? across : matrix;
    return { kind: 'sure', turn: oppositeTurn(only), evidence: `${names[0]?.symbology ?? 'code'} runs ${directionWords(only)}` };
  }
  const acrossVotes = new Set(across.map((code) => code.turn));
  const [agreed] = acrossVotes;
  if (acrossVotes.size === 1 && agreed !== undefined) {
    return { kind: 'sure', turn: oppositeTurn(agreed), evidence: `the linear codes run ${directionWords(agreed)}` };
  }
  if (codes.length === 0) return { kind: 'doubtful', why: 'there is no text and no code could be read' };
  if (votes.size > 1) return { kind: 'doubtful', why: 'its codes run different ways and there are no words' };
  return { kind: 'doubtful', why: "a ladder code alone doesn't say which end is up" };
}

const isLinear = (code: Code): boolean => code.symbology === 'Code 128' || code.symbology === 'ITF' || code.symbology === 'Code 39';

function directionWords(turn: Turn): string {
  switch (turn) {
    case 0:
      return 'upright';
    case 90:
      return '90° clockwise';
    case 180:
      return 'upside down';
    case 270:
      return '90° anticlockwise';
  }
}
