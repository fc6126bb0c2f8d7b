import { describe, expect, it } from 'vitest';
import { plainText, textOf } from '../../src/reading/code-text.js';

describe('what a code says', () => {
  it('is its bytes, one character each', () => {
    expect(textOf({ bytes: '4c5a313233e9' })).toBe('LZ123é');
    expect(textOf({ bytes: '' })).toBe('');
  });

  it('is the same number with and without gaps', () => {
    expect(plainText('lz 123-456.7 Ñ')).toBe('LZ1234567Ñ');
  });
});
