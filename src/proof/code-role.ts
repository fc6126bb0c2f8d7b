import { area } from '../geometry/box.js';
import { isNumberLike } from '../reading/number-like.js';
import type { Code } from '../reading/source.js';
import { isLinear } from './linear.js';
import { textOf } from '../reading/code-text.js';
import { knownNumber, type CodeRole } from './number-schemes.js';

export { CODE_ROLES, type CodeRole } from './number-schemes.js';

/** What one code of a label is for. */
export interface CodeUse {
  readonly role: CodeRole;
  /** Of a tracking code: its number, however the code frames it. Never to be told whole. */
  readonly number?: string;
  /** `published`: a number scheme with its check digit says so; `likely`: it is the longest linear code of its label. */
  readonly trust: 'published' | 'likely';
}

/**
 * What each code of one label is for, in their order: by published number schemes first. On a label without a published tracking
 * number the longest linear code of no scheme is taken for it, of equal ones the largest (common practice, no source). A matrix
 * code is a tracking code when it is GS1 data with a tracking number, or repeats the number of a linear one.
 */
export function codeUses(codes: readonly Code[]): readonly CodeUse[] {
  const known = codes.map(knownNumber);
  const published = known.some((each) => each?.role === 'tracking');
  const own = published ? [] : codes.filter((code, index) => !known[index] && isLinear(code) && isNumberLike(code));
  const likely = own.toSorted((a, b) => textOf(b).length - textOf(a).length || area(b.box) - area(a.box))[0];
  const linear = codes.flatMap((code, index) => {
    const number = code === likely ? textOf(code) : known[index]?.role === 'tracking' && isLinear(code) ? known[index].number : undefined;
    return number === undefined ? [] : [number];
  });
  const trust = published ? 'published' : 'likely';
  return codes.map((code, index): CodeUse => {
    const scheme = known[index];
    if (scheme) return scheme.role === 'tracking' ? { ...scheme, trust: 'published' } : { role: scheme.role, trust: 'published' };
    const number = isLinear(code) ? (code === likely ? textOf(code) : undefined) : linear.find((each) => textOf(code).includes(each));
    if (number !== undefined) return { role: 'tracking', number, trust };
    return { role: own.includes(code) ? 'unknown' : 'other', trust: 'likely' };
  });
}

/** The roles alone. */
export const codeRoles = (codes: readonly Code[]): readonly CodeRole[] => codeUses(codes).map(({ role }) => role);
