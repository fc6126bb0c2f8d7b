import type { Limit } from '../proof/limits.js';
import { SCHEME_LIMITS, schemeOf, type SchemeLimits } from '../proof/scheme-limits.js';
import type { Code } from '../reading/source.js';

/** The modules (narrowest bars) that are published for a number. */
export interface ModuleRange {
  /** mm. */
  readonly least: number;
  /** mm; undefined where no upper limit was found. */
  readonly most: number | undefined;
  /** For people: the standard, and what it calls the number. */
  readonly source: string;
  readonly trust: Limit['trust'];
}

/** The range for a code by its symbology and the scheme of its number; undefined for matrix and stacked codes, which are not measured. */
export function moduleRange(code: Pick<Code, 'symbology' | 'identifier' | 'bytes'>): ModuleRange | undefined {
  const scheme = schemeOf(code);
  if (scheme === undefined) return undefined;
  const { what, least, most }: SchemeLimits = SCHEME_LIMITS[scheme];
  return { least: least.value, most: most?.value, source: `${least.source} for ${what}`, trust: least.trust };
}
