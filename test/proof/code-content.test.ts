import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gs1CheckDigit, s10CheckDigit } from '../../src/proof/check-digits.js';
import { contentFaults } from '../../src/proof/code-content.js';
import { codeOf, gs1Of } from './code-of.js';

const withCheck = (digits: string): string => digits + String(gs1CheckDigit(digits) ?? '');
/** The same with a check digit that is off by one. */
const spoilt = (digits: string): string => digits.slice(0, -1) + String((Number(digits.slice(-1)) + 1) % 10);

const SSCC = withCheck('12345678901234567');
const PACKAGE = withCheck('920000000000000000001');
const LONG_PACKAGE = withCheck('9200000000000000000000001');

const told = (...codes: Parameters<typeof contentFaults>[0]): readonly (readonly [string, boolean])[] =>
  contentFaults(codes).map(({ code, certain }) => [code, certain] as const);

describe('element strings', () => {
  it.each([
    [`00${SSCC}`],
    [`01${withCheck('1234567890123')}`],
    [`410${withCheck('123456789012')}`],
    ['420ABC 1D'.replace(' ', '')],
    ['42012345~9212345678901'],
    ['4019X-/.'],
    ['42108012345'],
    ['90anything~91else'],
    ['8008200102'],
    [`42000000~${PACKAGE}`],
    [`420000001234~${LONG_PACKAGE}`],
  ])('%s is in order', (text) => {
    expect(contentFaults([gs1Of(text)])).toEqual([]);
  });

  it.each([
    ['an SSCC of 17 digits', `00${SSCC.slice(1)}`, true],
    ['a letter in an SSCC', `00A${SSCC.slice(1)}`, true],
    ['a postcode of 21 characters', '420123456789012345678901', true],
    ['a country of two letters', '421DE12345', true],
    ['more than 30 characters of a reference', `401${'A'.repeat(31)}`, true],
    ['an empty value', '420~9112', true],
    ['letters in place of an identifier', '42012345~AB12', true],
    ['an identifier that the list does not have', '42012345~0512', false],
    ['more than 48 characters', `90${'A'.repeat(30)}~91${'B'.repeat(14)}`, true],
    ['no separator behind the postcode', `42000000${PACKAGE}`, false],
  ])('%s', (_, text, certain) => {
    expect(told(gs1Of(text))).toEqual([['verify/element-strings', certain]]);
  });

  it('a separator in front counts for nothing, and 48 characters are allowed', () => {
    expect(contentFaults([gs1Of(`~90${'A'.repeat(30)}~91${'B'.repeat(13)}`)])).toEqual([]);
  });

  it('companions may stand on another code of the label, and are never certain', () => {
    const routing = gs1Of('403ROUTE1');
    expect(told(routing)).toEqual([['verify/element-strings', false]]);
    expect(told(routing, gs1Of(`00${SSCC}`))).toEqual([]);
    expect(told(gs1Of('42012345'), gs1Of('42108012345'))).toEqual([['verify/element-strings', false]]);
    expect(told(gs1Of(`02${withCheck('1234567890123')}3712`)).length).toBe(1);
  });
});

describe('check digits', () => {
  it.each([
    ['SSCC', gs1Of(`00${spoilt(SSCC)}`), true],
    ['GTIN', gs1Of(`01${spoilt(withCheck('1234567890123'))}`), true],
    ['location number', gs1Of(`410${spoilt(withCheck('123456789012'))}`), true],
    ['shipment number', gs1Of(`402${spoilt(withCheck('1234567890123456'))}`), true],
    ['package number behind a postcode', gs1Of(`42000000~${spoilt(PACKAGE)}`), true],
    ['package number alone: others may use these identifiers for themselves', gs1Of(spoilt(PACKAGE)), false],
    ['package number right behind the postcode', gs1Of(`42000000${spoilt(PACKAGE)}`), false],
    ['the same in a Code 128 without the mark of GS1 data', codeOf(`42000000${spoilt(PACKAGE)}`), false],
    ['GS1 data in a Data Matrix', codeOf(`00${spoilt(SSCC)}`, ']d2', 'Data Matrix'), true],
  ])('%s', (_, code, certain) => {
    expect(told(code)).toEqual([['verify/check-digit', certain]]);
  });

  it('34 digits behind 420 that split in two ways: taken where one number is right, told where both or none are', () => {
    const nine = `420000001234${PACKAGE}`;
    expect(told(codeOf(nine))).toEqual([]);
    const five = `42000000${LONG_PACKAGE}`;
    expect(told(codeOf(five))).toEqual([]);
    expect(told(codeOf(spoilt(five)))).toEqual([['verify/check-digit', false]]);
    // 9201 in front adds 30 to the weighted sum: both tails begin with 92 and end right.
    const both = `420000009201${PACKAGE}`;
    expect(told(codeOf(both))).toEqual([['verify/ambiguous-number', false]]);
    expect(told(gs1Of(both))).toEqual([['verify/ambiguous-number', false]]);
  });

  it('what has no clear form is left alone', () => {
    // 20 digits, 12 digits, ITF of 14: several carriers use these, each with a check digit of its own or none.
    expect(
      contentFaults([codeOf('03071790000523483742'), codeOf('996578788855'), codeOf('12345678901230', ']I0', 'ITF'), codeOf('ORDER-1')]),
    ).toEqual([]);
    expect(contentFaults([codeOf(`00${spoilt(SSCC)}`, ']Q1', 'QR')])).toEqual([]);
  });
});

describe('messages', () => {
  it('never hold the number, any long part of it, or a postcode', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^\d{17}$/),
        fc.stringMatching(/^[A-Z]{2}\d{9}[A-Z]{2}$/),
        fc.stringMatching(/^\d{5}$/),
        (sscc, s10, zip) => {
          const faults = contentFaults([gs1Of(`00${spoilt(withCheck(sscc))}`), codeOf(s10), gs1Of(`420${zip}~${spoilt(PACKAGE)}`)]);
          for (const { message, remedy } of faults) expect(`${message} ${remedy}`).not.toMatch(/\d{4}/);
          expect(faults.length).toBeGreaterThanOrEqual(2);
        },
      ),
    );
  });

  it('come once for each kind of code', () => {
    const wrong = codeOf('EE000000001XX');
    expect(contentFaults([wrong, wrong])).toHaveLength(1);
  });
});

it('any one wrong digit of an SSCC or an S10 number is told', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^\d{17}$/), fc.nat(17), fc.integer({ min: 1, max: 9 }), (digits, at, by) => {
      const right = withCheck(digits);
      const wrong = right.slice(0, at) + String((Number(right[at]) + by) % 10) + right.slice(at + 1);
      expect(told(gs1Of(`00${right}`))).toEqual([]);
      expect(told(gs1Of(`00${wrong}`))).toEqual([['verify/check-digit', true]]);
    }),
  );
  fc.assert(
    fc.property(fc.stringMatching(/^\d{8}$/), (serial) => {
      const check = s10CheckDigit(serial) ?? 0;
      expect(told(codeOf(`RX${serial}${check}XX`))).toEqual([]);
      expect(told(codeOf(`RX${serial}${(check + 3) % 10}XX`))).toEqual([['verify/check-digit', true]]);
    }),
  );
});
