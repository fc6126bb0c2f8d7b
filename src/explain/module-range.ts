import type { Code } from '../reading/source.js';
import { LEAST_MODULE, type Limit } from '../proof/limits.js';
import { isLinear } from '../proof/linear.js';

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

const GS = '\x1d';

/** Handbook section 2.2: ISO 15394:2017 Annex A through a summary of it. */
const CODE_128_39: ModuleRange = { least: 0.25, most: 0.43, source: 'ISO 15394 for Code 128 and Code 39', trust: 'secondary' };
const GS1_128: ModuleRange = { least: 0.25, most: 0.81, source: 'ISO 15394 for GS1-128', trust: 'secondary' };
/** Handbook section 2.2: the lower end is that of the GS1 General Specifications, 0.005 mm below ISO's. */
const SSCC: ModuleRange = { least: 0.495, most: 0.81, source: 'GS1 and ISO 15394 for an SSCC', trust: 'secondary' };
/** Handbook section 3.1: 13 to 21 mil. */
const USPS_PACKAGE: ModuleRange = { least: 0.3302, most: 0.5334, source: 'USPS Publication 199', trust: 'secondary' };
/** Handbook section 4.3: S10 section 8. */
const S10: ModuleRange = { least: 0.33, most: 0.51, source: 'UPU S10', trust: 'secondary' };
const ANY_LINEAR: ModuleRange = { least: LEAST_MODULE.value, most: undefined, source: 'ISO 15394 for any linear code', trust: 'secondary' };

/** The range for a code by its symbology and the scheme of its number; undefined for matrix and stacked codes, which are not measured. */
export function moduleRange(code: Pick<Code, 'symbology' | 'identifier' | 'bytes'>): ModuleRange | undefined {
  if (!isLinear(code)) return undefined;
  const text = Buffer.from(code.bytes, 'hex').toString('latin1');
  if (code.identifier === ']C1') {
    if (/^00\d{18}$/.test(text)) return SSCC;
    return isUspsPackage(text) ? USPS_PACKAGE : GS1_128;
  }
  if (code.symbology === 'ITF') return ANY_LINEAR;
  return code.symbology === 'Code 128' && /^[A-Z]{2}\d{9}[A-Z]{2}$/.test(text) ? S10 : CODE_128_39;
}

/** Handbook section 3.1: 22 or 26 digits from 92, 93, 94 or 95, alone or behind 420 and the postcode. */
function isUspsPackage(text: string): boolean {
  return new RegExp(`^(?:420(?:\\d{5}|\\d{9})${GS}?)?9[2-5](?:\\d{20}|\\d{24})$`).test(text);
}
