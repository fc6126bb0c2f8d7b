import { describe, expect, it } from 'vitest';
import { isNumberLike } from '../../src/reading/number-like.js';

const says = (text: string): { bytes: string } => ({ bytes: Buffer.from(text, 'latin1').toString('hex') });

describe('isNumberLike', () => {
  it.each(['20260417', 'QH123456', '42021234\x1d9274890100000003985031', 'EE876543216CA'])("%j may be a parcel's number", (text) => {
    expect(isNumberLike(says(text))).toBe(true);
  });

  it.each(['', '2026041', 'QHX12345', 'https://studio.example/20260417', 'WWW.STUDIO.EXAMPLE/20260417'])('%j is none', (text) => {
    expect(isNumberLike(says(text))).toBe(false);
  });

  it('can ask for more', () => {
    expect(isNumberLike(says('2026041799'), { characters: 10, digits: 8 })).toBe(true);
    expect(isNumberLike(says('202604179'), { characters: 10, digits: 8 })).toBe(false);
    expect(isNumberLike(says('QHQ2604179'), { characters: 10, digits: 8 })).toBe(false);
  });
});
