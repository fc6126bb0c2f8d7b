import { describe, expect, it } from 'vitest';
import { SCHEME_LIMITS, schemeOf, type SchemeLimits } from '../../src/proof/scheme-limits.js';
import { codeOf, gs1Of } from './code-of.js';

/** 92, 93 … and a check digit over all of it, weights 3 and 1 from the right (handbook section 3.1), computed here. */
function withCheck(digits: string): string {
  const sum = Array.from(digits)
    .reverse()
    .reduce((total, digit, index) => total + Number(digit) * (index % 2 === 0 ? 3 : 1), 0);
  return digits + String((10 - (sum % 10)) % 10);
}
const ID = withCheck('920012345678901234567');
const LONG_ID = withCheck('9400123456789012345678901');

describe('the scheme of a linear code', () => {
  it.each([
    ['sscc', gs1Of('00006141411234567890')],
    ['package', gs1Of(ID)],
    ['package', gs1Of(LONG_ID)],
    ['package', gs1Of(`42000012~${ID}`)],
    ['package', gs1Of(`420000121234~${ID}`)],
    ['package', gs1Of(`42000012${ID}`)],
    // EE 876 543 216 CA: handbook section 4.3.
    ['s10', codeOf('EE876543216CA')],
    ['alphanumeric', codeOf('1Z999AA10123456784')],
    ['gs1', gs1Of('42000012')],
    ['gs1', gs1Of('0000614141123456789042000012')],
    ['plain', codeOf('SAMPLE-0042-7788')],
    ['plain', codeOf('SAMPLE-0042', ']A0', 'Code 39')],
    ['itf', codeOf('15400141288763', ']I0', 'ITF')],
  ] as const)('%s', (scheme, code) => {
    expect(schemeOf(code)).toBe(scheme);
  });

  it('is that of a number only with its check digit, and in its symbology', () => {
    const wrong = (text: string): string => text.slice(0, -1) + String((Number(text.at(-1)) + 1) % 10);
    expect(schemeOf(gs1Of(wrong(ID)))).toBe('gs1');
    expect(schemeOf(codeOf('EE876543217CA'))).toBe('plain');
    expect(schemeOf(codeOf('EE876543216CA', ']A0', 'Code 39'))).toBe('plain');
    expect(schemeOf(codeOf(ID))).toBe('plain');
  });

  it('is not known of matrix and stacked codes', () => {
    for (const symbology of ['Data Matrix', 'QR', 'PDF417', 'Aztec', 'MaxiCode'] as const)
      expect(schemeOf(codeOf('00006141411234567890', ']d2', symbology))).toBeUndefined();
  });
});

describe('the table of sizes by scheme', () => {
  const rows = Object.entries(SCHEME_LIMITS).map(([name, row]) => [name, row as SchemeLimits] as const);

  it.each(rows)('%s: every figure has a unit, a source and how far that is trusted', (_, { least, most, height, heightShare }) => {
    for (const limit of [least, most, height, heightShare].filter((each) => each !== undefined)) {
      expect(limit.source.length).toBeGreaterThan(6);
      expect(limit.trust).toMatch(/^(?:primary|secondary|from memory)$/);
      expect(limit.unit).toBe(limit === heightShare ? 'share' : 'mm');
      expect(limit.value).toBeGreaterThan(0);
    }
    expect(most?.value ?? Infinity).toBeGreaterThan(least.value);
  });

  // Handbook sections 2.2 (S), 3.1 (S) and 4.3 (S), 4.1 (from memory), typed in again.
  it.each([
    ['sscc', 0.495, 0.81, 12.7, 'secondary'],
    ['package', 13 * 0.0254, 21 * 0.0254, 0.75 * 25.4, 'secondary'],
    ['s10', 0.33, 0.51, 12.5, 'secondary'],
    ['gs1', 0.25, 0.81, 12.7, 'secondary'],
    ['alphanumeric', 0.25, 0.43, 25.4, 'from memory'],
    ['plain', 0.25, 0.43, 12.7, 'secondary'],
    ['itf', 0.25, undefined, 12.7, 'secondary'],
  ] as const)('%s as the handbook has it', (name, least, most, height, trust) => {
    const row: SchemeLimits = SCHEME_LIMITS[name];
    const rounded = [row.least, row.most, row.height].map((limit) => limit && Number(limit.value.toFixed(6)));
    expect(rounded).toEqual([least, most, height].map((value) => value && Number(value.toFixed(6))));
    expect(row.height?.trust).toBe(trust);
  });
});
