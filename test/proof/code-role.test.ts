import { describe, expect, it } from 'vitest';
import { codeRoles, codeUses } from '../../src/proof/code-role.js';
import { gs1CheckDigit, mod11CheckDigit, s10CheckDigit } from '../../src/proof/check-digits.js';
import { NUMBER_SCHEMES } from '../../src/proof/number-schemes.js';
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
      'reference',
    ]);
    const serial = '87654321';
    expect(codeRoles([code(`EE${serial}${s10CheckDigit(serial)}XX`)])).toEqual(['tracking']);
    // 1Z999AA10123456784: handbook section 11.3, a published worked example (secondary).
    expect(codeRoles([code('1Z999AA10123456784'), code('ORDER-123456789012')])).toEqual(['tracking', 'other']);
  });

  it('names a source for each scheme, and believes a tracking number only by its check digit', () => {
    const id = withCheck('942000000000000000000');
    const numbers = [
      `EE87654321${s10CheckDigit('87654321')}XX`,
      '1Z999AA10123456784',
      `${'1'.repeat(33)}${mod11CheckDigit('1'.repeat(13))}`,
      `00${withCheck('12345678901234567')}`,
      id,
      `42000001${id}`,
    ];
    for (const { role, source, trust, numberIn } of NUMBER_SCHEMES) {
      expect(source.length, source).toBeGreaterThan(10);
      expect(trust, source).toMatch(/^(?:primary|secondary|common practice)$/);
      if (role !== 'tracking') continue;
      const known = numbers.filter((number) => numberIn(number, 'Code 128') !== undefined);
      expect(known.length, source).toBe(1);
      const at = (known[0] ?? '').search(/\d(?=[A-Z]*$)/);
      for (let digit = 0; digit < 10; digit++) {
        const other = `${known[0]?.slice(0, at)}${digit}${known[0]?.slice(at + 1)}`;
        expect(numberIn(other, 'Code 128') !== undefined, `${source}: ${other}`).toBe(other === known[0]);
      }
    }
  });

  it('gives the same number for each symbol that carries it', () => {
    const sscc = withCheck('12345678901234567');
    const id = withCheck('942000000000000000000');
    const numbers = (...codes: readonly Code[]): readonly unknown[] => codeUses(codes).map(({ number, trust }) => [number, trust]);
    expect(numbers(gs1(`00${sscc}`), code(`40112\x1d00${sscc}`, { symbology: 'Data Matrix', identifier: ']d2' }))).toEqual([
      [`00${sscc}`, 'published'],
      [`00${sscc}`, 'published'],
    ]);
    expect(numbers(gs1(`42000001\x1d${id}`), gs1(`42000001${id}`), gs1(id))).toEqual(Array(3).fill([id, 'published']));
    expect(numbers(code('AB1234567890'), code('https://track.example/AB1234567890', { symbology: 'QR', identifier: ']Q1' }))).toEqual([
      ['AB1234567890', 'likely'],
      ['AB1234567890', 'likely'],
    ]);
  });

  it('takes a postcode behind 420 for routing in whatever Code 128, and lets no date or count hide an SSCC', () => {
    expect(codeRoles([code('42000012'), code('420000121234')])).toEqual(['routing', 'routing']);
    const sscc = withCheck('12345678901234567');
    expect(codeRoles([gs1(`1726013100${sscc}`), gs1(`3712\x1d00${sscc}`)])).toEqual(['tracking', 'tracking']);
  });

  it('finds the package number behind the postcode, with and without a separator', () => {
    const id = withCheck('942000000000000000000'.padEnd(21, '0'));
    expect(id).toHaveLength(22);
    expect(codeRoles([gs1(`42000001\x1d${id}`)])).toEqual(['tracking']);
    expect(codeRoles([gs1(`42000001\x1d${id.slice(0, -1)}${(Number(id.at(-1)) + 1) % 10}`)])).toEqual(['routing']);
  });

  it('takes the longest linear code where no scheme is known, of equal ones the largest; a matrix code never', () => {
    expect(codeRoles([code('AB123456'), code('AB1234567890'), code('XY1234567890123', { symbology: 'QR' })])).toEqual([
      'unknown',
      'tracking',
      'other',
    ]);
    expect(codeRoles([code('AB1234567890', { width: 50 }), code('AB1234567899', { width: 90 })])).toEqual(['unknown', 'tracking']);
  });

  it('takes no short number, no word and no routing number for a tracking code', () => {
    expect(codeRoles([code('N00021'), code('SAMPLE-ORDER'), gs1('42000001')])).toEqual(['other', 'other', 'routing']);
    expect(codeRoles([code(withCheck('1234567890123'), { symbology: 'ITF' })])).toEqual(['product']);
    expect(codeRoles([])).toEqual([]);
  });
});
