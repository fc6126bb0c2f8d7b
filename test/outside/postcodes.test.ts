import { describe, expect, it } from 'vitest';
import { foldedLine } from '../../src/orders/fold.js';
import { postcodeKey, postcodesIn, shapeOf } from '../../src/orders/postcode.js';

/** A published postcode, how an order file may give it, and the line of an address as it is published (or, without, as the form says). */
const PUBLISHED = [
  ['AF', '1001', '1001', 'Universal Postal Union, addressing sheet Afghanistan, seen in a copy, VERIFIED-S'],
  ['AF', '3801', '3801', 'the same sheet, VERIFIED-S'],
  ['DZ', '16000', '16000 ALGER', 'Universal Postal Union, postal addressing systems, Algeria, seen in a copy, VERIFIED-S'],
  ['AU', '5024', 'WEST BEACH SA 5024', 'Dutch post, Addressing international mail items 2013 (after the UPU), seen in a copy, VERIFIED-S'],
  ['SE', '12035', '120 35 TYRESÖ', 'Swedish example in a secondary list, VERIFIED-S'],
  ['SE', '114 55', 'SE-114 55 STOCKHOLM', 'form SE-114 55 in the same list, VERIFIED-S'],
  ['CA', 'K1A0B1', 'OTTAWA ON  K1A 0B1', 'form A1A 1A1 with a space, after Canada Post, secondary, VERIFIED-S'],
  ['US', '21234', '21234-5678', '(420)21234 and (420)212345678: BCOCA p. 63, handbook 11.4, VERIFIED-S; the hyphen: USPS ZIP+4, secondary'],
  ['US', '21234-5678', 'SAMPLETON XX 21234', 'the same'],
  ['US', '45458', '45458', '(420)45458: GS1 General Specifications fig. 6.6.5-3 via zint, VERIFIED-S'],
  ['US', '87109', '87109', '(420)87109: handbook 11.4, VERIFIED-S'],
  ['GB', 'SW1A1AA', 'LONDON SW1A 1AA', 'from memory'],
  ['NL', '2500 GG', '2500GG DEN HAAG', 'from memory'],
  ['JP', '1008994', '〒100-8994', 'from memory'],
  ['PL', '00-940', '00-940 WARSZAWA', 'from memory'],
  ['PT', '1000-260', '1000-260 LISBOA', 'from memory'],
  ['BR', '70002900', '70002-900 BRASÍLIA-DF', 'from memory'],
  ['DE', 'D-10115', '10115 Berlin', 'old form with a country letter, from memory'],
  ['CH', '3030', 'CH-3030 Bern', 'the same, from memory'],
] as const;

describe('published postcodes', () => {
  it.each(PUBLISHED)('%s: %s is in "%s" (%s)', (_, postcode, line) => {
    expect(postcodesIn(foldedLine(line))).toContain(postcodeKey(postcode));
  });

  it.each([
    ['5024', 'WEST BEACH SA 5025'],
    ['K1A0B1', 'K1A 0B2'],
    ['21234', '212345 678'],
    ['3030', '30300 3030a'],
  ])('%s is not in "%s"', (postcode, line) => {
    const found = postcodesIn(foldedLine(line));
    expect(found.length).toBeGreaterThan(1);
    expect(found).not.toContain(postcodeKey(postcode));
  });

  it('are read over a space or a hyphen wherever it stands: spacing differs between who writes it', () => {
    for (const line of ['120 35', '12035', '12 035', '120-35']) expect(postcodesIn(foldedLine(line))).toContain('12035');
    expect(postcodesIn(foldedLine('120/35, 120.35'))).not.toContain('12035');
  });

  it('of one country have one shape, of different forms different ones', () => {
    expect(shapeOf(postcodeKey('114 55'))).toBe(shapeOf(postcodeKey('12035')));
    expect(shapeOf(postcodeKey('K1A 0B1'))).toBe('a9a9a9');
    expect(new Set(['K1A 0B1', '2500 GG', 'SW1A 1AA', '1001', '16000'].map(postcodeKey).map(shapeOf)).size).toBe(5);
  });
});
