import { describe, expect, it } from 'vitest';
import { moduleRange } from '../../src/explain/module-range.js';
import type { Symbology } from '../../src/reading/source.js';

const range = (symbology: Symbology, identifier: string, text: string) =>
  moduleRange({ symbology, identifier, bytes: Buffer.from(text, 'latin1').toString('hex') });

describe('the published range of a module', () => {
  it.each<[string, Symbology, string, string, number, number | undefined]>([
    ['an SSCC (handbook 2.2, VERIFIED-S)', 'Code 128', ']C1', `00${'0'.repeat(18)}`, 0.495, 0.81],
    ['other GS1-128 (handbook 2.2, VERIFIED-S)', 'Code 128', ']C1', '42100000012', 0.25, 0.81],
    ['a package number of 22 digits (handbook 3.1, VERIFIED-S)', 'Code 128', ']C1', `92${'0'.repeat(19)}1`, 0.3302, 0.5334],
    ['the same behind a postcode', 'Code 128', ']C1', `42000000\x1d94${'0'.repeat(19)}9`, 0.3302, 0.5334],
    ['a number of S10 (handbook 4.3, VERIFIED-S)', 'Code 128', ']C0', 'RX000000005XX', 0.33, 0.51],
    ['other Code 128 (handbook 2.2, VERIFIED-S)', 'Code 128', ']C0', 'AB12345', 0.25, 0.43],
    ['Code 39 (handbook 2.2, VERIFIED-S)', 'Code 39', ']A0', 'AB12345', 0.25, 0.43],
    ['ITF, for which only a least was found', 'ITF', ']I0', '00000000000000', 0.25, undefined],
  ])('of %s', (_name, symbology, identifier, text, least, most) => {
    expect(range(symbology, identifier, text)).toMatchObject({ least, most, trust: 'secondary' });
  });

  it('is not known for what is not measured', () => {
    for (const symbology of ['Data Matrix', 'QR', 'PDF417', 'Aztec', 'MaxiCode'] as const)
      expect(range(symbology, ']d1', '1')).toBeUndefined();
  });
});
