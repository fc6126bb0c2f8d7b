import type { Box } from '../geometry/box.js';
import { oppositeTurn, type Turn } from '../geometry/placement.js';
import type { Code, SourcePage } from '../reading/source.js';
import { writingAxis } from './writing-axis.js';

export type Upright =
  { readonly kind: 'sure'; readonly turn: Turn; readonly evidence: string } | { readonly kind: 'doubtful'; readonly why: string };

/**
 * The clockwise turn that makes a box upright by how its codes stand. A matrix or stacked code stands upright on a label as the words do; so does a linear code, unless it is a ladder. A linear
 * code alone is believed when it runs the way the writing does, or, where no writing can be seen, across a label that is then taller than wide.
 */
export function directionOfCodes(page: SourcePage, box: Box, codes: readonly Code[]): Upright {
  const axis = writingAxis(page, box);
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

/** For people, how writing or a code of this clockwise turn runs. */
export function directionWords(turn: Turn): string {
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
