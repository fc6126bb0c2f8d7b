import { describe, expect, it } from 'vitest';
import { contentFaults } from '../../src/proof/code-content.js';
import { codeOf, gs1Of } from '../proof/code-of.js';

describe('right numbers of the handbook are in order in the codes that carry them', () => {
  it.each([
    ['395123451234567895', 'GS1 General Specifications fig. 5.4.2-1 via zint, VERIFIED-S'],
    ['006141411234567890', 'fig. 6.6.5-1, VERIFIED-S'],
    ['395011015300000011', 'fig. 6.6.5-2, VERIFIED-S'],
    ['000521775138957172', 'fig. 6.6.5-5, VERIFIED-S'],
    ['395011010013000129', 'fig. 6.6.5-6, VERIFIED-S'],
    ['093123450000000012', 'fig. 6.6.5-7, VERIFIED-S'],
    ['123456789012345675', 'zint tests, VERIFIED-S'],
  ])('SSCC %s (handbook section 11.1: %s)', (number) => {
    expect(contentFaults([gs1Of(`00${number}`)])).toEqual([]);
  });

  it.each([
    ['9374890100000003985039', 'BCOCA p. 63, VERIFIED-S'],
    ['9400111206206406260787', '[TND], VERIFIED-S'],
    ['9400111201080805483016', '[TND], VERIFIED-S'],
    ['9405803699300124287899', '[TND], VERIFIED-S'],
    ['9434611206206406227577', '[TND], VERIFIED-S'],
    ['42021234~9374890100000003985039', 'BCOCA p. 63 behind its postcode, VERIFIED-S'],
    ['420212345678~9374890100000003985039', 'handbook section 11.4, COMPUTED'],
    ['9611020987654312345672', '22 digits from 96: no identifier of this scheme, [TND]'],
  ])('package number %s (section 11.2: %s)', (text) => {
    expect(contentFaults([gs1Of(text)])).toEqual([]);
  });

  it('420787459400111206206406260787 without separator: right, and told to lack one where it is GS1 data', () => {
    const text = '420787459400111206206406260787';
    expect(contentFaults([codeOf(text)])).toEqual([]);
    expect(contentFaults([gs1Of(text)])).toMatchObject([{ code: 'verify/element-strings', certain: false }]);
  });

  it.each([
    '1Z999AA10123456784',
    '1Z5R89390357567127',
    '1Z879E930346834440',
    '1Z410E7W0392751591',
    '1Z8V92A70367203024',
    '1ZXX3150YW44070023',
    'EE876543216CA',
    'RB123456785GB',
    'QA473124829PS',
    '1001921334250001000300779017972697',
  ])('%s (section 11.3, VERIFIED-S)', (text) => {
    expect(contentFaults([codeOf(text)])).toEqual([]);
  });
});

describe('wrong numbers of the handbook', () => {
  it.each([
    ['123456789012345678', 5],
    ['376104250021234568', 9],
    ['001234567000000015', 7],
  ])('SSCC %s: %i is due (section 11.1, COMPUTED)', (number, due) => {
    const faults = contentFaults([gs1Of(`00${number}`)]);
    expect(faults).toMatchObject([{ code: 'verify/check-digit', certain: true }]);
    expect(faults[0]?.message).toContain(`where ${due} is due`);
  });

  it('9434611206206407667131: certain only behind a postcode (section 11.2, [TND])', () => {
    expect(contentFaults([gs1Of('9434611206206407667131')])).toMatchObject([{ code: 'verify/check-digit', certain: false }]);
    expect(contentFaults([gs1Of('42000000~9434611206206407667131')])).toMatchObject([{ code: 'verify/check-digit', certain: true }]);
  });

  it('20 digits have no clear form, and 91 in front of them is no package number (section 11.2, traps)', () => {
    expect(contentFaults([codeOf('03071790000523483742'), gs1Of('9171123456789123456787')])).toEqual([]);
  });

  it('1Z1111111111111111 (section 11.3, [TND], VERIFIED-S), an S10 number with another digit', () => {
    expect(contentFaults([codeOf('1Z1111111111111111')])).toMatchObject([{ code: 'verify/check-digit', certain: true }]);
    expect(contentFaults([codeOf('EE876543217CA')])).toMatchObject([{ code: 'verify/check-digit', certain: true }]);
  });

  it('34 digits with another last one: others use 34 digits, too (section 11.3)', () => {
    expect(contentFaults([codeOf('1001921334250001000300779017972698')])).toMatchObject([{ code: 'verify/check-digit', certain: false }]);
  });

  it('12 and 15 digits have no clear form: nothing is said (996578788855 and 568283610012732, section 11.3)', () => {
    expect(contentFaults([codeOf('996578788855'), codeOf('568283610012732')])).toEqual([]);
  });
});
