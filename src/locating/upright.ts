import { contains, type Box } from '../geometry/box.js';
import { oppositeTurn, TURNS, type Turn } from '../geometry/placement.js';
import type { Code, SourcePage } from '../reading/source.js';

export type Upright =
  { readonly kind: 'sure'; readonly turn: Turn; readonly evidence: string } | { readonly kind: 'doubtful'; readonly why: string };

/** So much of the writing (by size of type) must run one way, of at least so many characters. */
const AGREED = 0.7;
const ENOUGH_CHARACTERS = 12;

/**
 * The clockwise turn that makes what is in `box` upright: by the direction of the words, else by the codes' own reading
 * direction. `codes` reads the codes only when the words don't settle it.
 */
export async function uprightTurn(page: SourcePage, box: Box, codes: () => Promise<readonly Code[]>): Promise<Upright> {
  const byWords = directionOfWords(page, box);
  if (byWords !== undefined) return { kind: 'sure', turn: oppositeTurn(byWords), evidence: `words run ${directionWords(byWords)}` };
  return directionOfCodes(await codes(), box);
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
 * code alone is believed when it runs across a label that is then taller than wide.
 */
function directionOfCodes(codes: readonly Code[], box: Box): Upright {
  const linear = codes.filter((code) => isLinear(code) && code.turn !== undefined);
  const matrix = codes.filter((code) => !isLinear(code) && code.turn !== undefined);
  const tall = (turn: Turn): boolean => (turn % 180 === 0 ? box.height >= box.width : box.width >= box.height);
  const across = linear.filter((code) => code.turn !== undefined && tall(code.turn));
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
  if (codes.length === 0) return { kind: 'doubtful', why: 'there are no words and no code could be read' };
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
