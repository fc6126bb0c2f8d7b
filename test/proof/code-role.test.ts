import { describe, expect, it } from 'vitest';
import { codeRoles } from '../../src/proof/code-role.js';
import { gs1CheckDigit, s10CheckDigit } from '../../src/proof/check-digits.js';
import type { Code, Symbology } from '../../src/reading/source.js';

const code = (text: string, more: { symbology?: Symbology; identifier?: string; width?: number } = {}): Code => {
  const width = more.width ?? 100;
  const corner = { x: 0, y: 0 };
  return {
    symbology: more.symbology ?? 'Code 128',
    identifier: more.identifier ?? ']C0',
    bytes: Buffer.from(text, 'latin1').toString('hex'),
    corners: [corner, corner, corner, corner],
    box: { x: 0, y: 0, width, height: 20 },
    turn: 0,
  };
};
const gs1 = (text: string): Code => code(text, { identifier: ']C1' });
const withCheck = (digits: string): string => digits + String(gs1CheckDigit(digits) ?? '');

describe('codeRoles', () => {
  it('knows numbers of published schemes by their check digits', () => {
    const sscc = `00${withCheck('12345678901234567')}`;
    expect(codeRoles([gs1(sscc), gs1(`42000001`), gs1(`01${withCheck('1234567890123')}`), gs1('4011234567')])).toEqual([
      'tracking',
      'routing',
      'product',
      'consignment',
    ]);
    const serial = '87654321';
    expect(codeRoles([code(`EE${serial}${s10CheckDigit(serial)}XX`)])).toEqual(['tracking']);
    // 1Z999AA10123456784: handbook section 11.3, a published worked example (secondary).
    expect(codeRoles([code('1Z999AA10123456784'), code('ORDER-123456789012')])).toEqual(['tracking', 'other']);
  });

  it('finds the package number behind the postcode, with and without a separator', () => {
    const id = withCheck('942000000000000000000'.padEnd(21, '0'));
    expect(id).toHaveLength(22);
    expect(codeRoles([gs1(`42000001\x1d${id}`)])).toEqual(['tracking']);
    expect(codeRoles([gs1(`42000001\x1d${id.slice(0, -1)}${(Number(id.at(-1)) + 1) % 10}`)])).toEqual(['routing']);
  });

  it('takes the longest linear code where no scheme is known, of equal ones the largest; a matrix code never', () => {
    expect(codeRoles([code('AB123456'), code('AB1234567890'), code('AB1234567890123', { symbology: 'QR' })])).toEqual([
      'other',
      'tracking',
      'other',
    ]);
    expect(codeRoles([code('AB1234567890', { width: 50 }), code('AB1234567899', { width: 90 })])).toEqual(['other', 'tracking']);
  });

  it('takes no short number, no word and no routing number for a tracking code', () => {
    expect(codeRoles([code('N00021'), code('SAMPLE-ORDER'), gs1('42000001')])).toEqual(['other', 'other', 'routing']);
    expect(codeRoles([code(withCheck('1234567890123'), { symbology: 'ITF' })])).toEqual(['product']);
    expect(codeRoles([])).toEqual([]);
  });
});
