import { describe, expect, it } from 'vitest';
import { summariesOf } from '../../src/batch/code-summary.js';
import type { CodeSummary } from '../../src/recipe/outcome.js';
import { codeOf } from '../proof/code-of.js';

const summaryOf = (text: string): CodeSummary | undefined => summariesOf([{ code: codeOf(text), moduleDots: 3 }])[0];
const numberOf = (text: string): string | undefined => summaryOf(text)?.tracking?.digest;

describe('what the account tells of a code', () => {
  it('is its last characters and a digest, never what it says', () => {
    const summary = summaryOf('TRK88197727111503');
    expect(summary).toMatchObject({ role: 'tracking', tail: '1503', tracking: { trust: 'likely', tail: '1503' } });
    expect(JSON.stringify(summary)).not.toContain('881977');
    expect(summaryOf('ABC12')?.tail).toBe('');
  });

  it('a number is the same without the letters before it, as receipts repeat it; others are others', () => {
    expect(numberOf('88197727111503')).toBe(numberOf('TRK88197727111503'));
    expect(numberOf('88197727111504')).not.toBe(numberOf('TRK88197727111503'));
    // Too few digits to be a number alone.
    expect(numberOf('AB123456789')).not.toBe(numberOf('CD123456789'));
    // S10 (UPU, from memory): the letters belong to the number.
    expect(numberOf('RR473124829ZZ')).not.toBe(numberOf('CP473124829ZZ'));
  });
});
