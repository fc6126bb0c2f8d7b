import { describe, expect, it } from 'vitest';
import { countryCode } from '../../src/orders/countries.js';

describe('a country', () => {
  it.each([
    ['US', 'US'],
    ['us', 'US'],
    [' de ', 'DE'],
    ['USA', 'US'],
    ['GBR', 'GB'],
    ['United States', 'US'],
    ['U.S.A.', 'US'],
    ['UK', 'GB'],
    ['Great Britain', 'GB'],
    ['The Netherlands', 'NL'],
    ['Deutschland', 'DE'],
    ['Österreich', 'AT'],
    ['Osterreich', 'AT'],
    ['États-Unis', 'US'],
    ['Alemania', 'DE'],
    ['Côte d’Ivoire', 'CI'],
    ['Ελλάδα', 'GR'],
    ['日本', 'JP'],
    ['Czech Republic', 'CZ'],
    ['Türkiye', 'TR'],
    ['Viet Nam', 'VN'],
  ])('%s is %s', (word, code) => {
    expect(countryCode(word)).toBe(code);
  });

  it.each(['', 'Atlantis', 'XX', 'ZZ', 'EU', 'SU', 'Europe', 'MA 01101', 'constructor'])('%j is none', (word) => {
    expect(countryCode(word)).toBeUndefined();
  });
});
