import { describe, expect, it } from 'vitest';
import { faceFor } from '../../../src/press/type/faces.js';
import { ANY_HAN, hanOrder } from '../../../src/press/type/han.js';
import { SCRIPTS } from '../slip/slips.js';

const faceKey = (char: string, han = ANY_HAN): string => faceFor(char, 'regular', han)?.key ?? 'none';

describe('faces', () => {
  it.each(Object.entries(SCRIPTS))('have every character of %s, in both weights', (_, text) => {
    for (const char of text.normalize('NFC')) {
      expect(faceFor(char, 'regular', hanOrder(text, ANY_HAN)), char).toBeDefined();
      expect(faceFor(char, 'bold', hanOrder(text, ANY_HAN)), char).toBeDefined();
    }
  });

  it('are chosen by script', () => {
    expect(faceKey('é')).toBe('latin regular');
    expect(faceKey('я')).toBe('latin regular');
    expect(faceKey('ب')).toBe('arabic regular');
    expect(faceKey('ש')).toBe('hebrew regular');
    expect(faceKey('ก')).toBe('thai regular');
    expect(faceKey('क')).toBe('latin regular');
    expect(faceKey('한')).toMatch(/^kr \d+ regular$/);
    expect(faceKey('🎉')).toBe('none');
    expect(faceKey('\ue000')).toBe('none');
    expect(faceKey('\ud83d')).toBe('none');
  });

  it('have Han in each of the regional forms', () => {
    expect(faceKey('骨', ['jp', 'sc', 'tc', 'kr'])).toMatch(/^jp /);
    expect(faceKey('骨', ['sc', 'jp', 'tc', 'kr'])).toMatch(/^sc /);
    expect(faceKey('饰', ['jp', 'sc', 'tc', 'kr'])).toMatch(/^sc /);
  });
});
