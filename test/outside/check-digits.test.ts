import { describe, expect, it } from 'vitest';
import { alphanumericCheckDigit, gs1CheckDigit, mod11CheckDigit, s10CheckDigit } from '../../src/proof/check-digits.js';

const last = (number: string): number => Number(number.at(-1));
const rest = (number: string): string => number.slice(0, -1);

describe('GS1 mod 10 (handbook section 11.1)', () => {
  it.each([
    ['6291041500213', 'GS1 check digit page, VERIFIED-P'],
    ['8904000210037', 'GS1 India page, VERIFIED-P'],
    ['395123451234567895', 'GS1 General Specifications fig. 5.4.2-1 via zint, VERIFIED-S'],
    ['006141411234567890', 'fig. 6.6.5-1 via zint, VERIFIED-S'],
    ['395011015300000011', 'fig. 6.6.5-2, VERIFIED-S'],
    ['000521775138957172', 'fig. 6.6.5-5, VERIFIED-S'],
    ['395011010013000129', 'fig. 6.6.5-6, VERIFIED-S'],
    ['093123450000000012', 'fig. 6.6.5-7, VERIFIED-S'],
    ['123456789012345675', 'zint tests, VERIFIED-S'],
    ['15400141288763', 'ITF-14, BCOCA p. 55, VERIFIED-S'],
  ])('%s (%s)', (number) => {
    expect(gs1CheckDigit(rest(number))).toBe(last(number));
  });

  it.each([
    ['123456789012345678', 5],
    ['376104250021234568', 9],
    ['001234567000000015', 7],
  ])('%s is wrong: expected %i (COMPUTED)', (number, expected) => {
    expect(gs1CheckDigit(rest(number))).toBe(expected);
    expect(last(number)).not.toBe(expected);
  });
});

describe('package numbers of USPS Publication 199 (handbook section 11.2)', () => {
  it.each([
    ['9374890100000003985039', 'BCOCA p. 63, VERIFIED-S'],
    ['9400111206206406260787', 'tracking number test data [TND], VERIFIED-S'],
    ['9400111201080805483016', '[TND], VERIFIED-S'],
    ['9405803699300124287899', '[TND], VERIFIED-S'],
    ['9434611206206406227577', '[TND], VERIFIED-S'],
    ['03071790000523483741', '20 digits, [TND], VERIFIED-S'],
    ['71123456789123456787', '20 digits, [TND], VERIFIED-S'],
  ])('%s (%s)', (number) => {
    expect(gs1CheckDigit(rest(number))).toBe(last(number));
  });

  it('420 and the postcode are no part of the number: 420787459400111206206406260787', () => {
    const scanned = '420787459400111206206406260787';
    expect(gs1CheckDigit(rest(scanned.slice(8)))).toBe(last(scanned));
  });

  it.each(['9434611206206407667131', '03071790000523483742', '9171123456789123456787'])('%s is wrong', (number) => {
    expect(gs1CheckDigit(rest(number))).not.toBe(last(number));
  });
});

describe('numbers of UPS, FedEx and UPU S10 (handbook section 11.3)', () => {
  it.each([
    ['1Z999AA10123456784', 'public sample, COMPUTED'],
    ['1Z5R89390357567127', '[TND], VERIFIED-S'],
    ['1Z879E930346834440', '[TND], VERIFIED-S'],
    ['1Z410E7W0392751591', '[TND], VERIFIED-S'],
    ['1Z8V92A70367203024', '[TND], VERIFIED-S'],
    ['1ZXX3150YW44070023', '[TND], VERIFIED-S'],
  ])('%s (%s)', (number) => {
    expect(alphanumericCheckDigit(rest(number).slice(2))).toBe(last(number));
  });

  it('1Z1111111111111111 is wrong: expected 8 ([TND], VERIFIED-S)', () => {
    expect(alphanumericCheckDigit('111111111111111')).toBe(8);
  });

  it.each([
    ['012345678983', 'worked example [GA], VERIFIED-S'],
    ['123456789012', 'published forum example, low trust'],
    ['986578788855', '[TND], VERIFIED-S'],
    ['477179081230', '[TND], VERIFIED-S'],
    ['799531274483', '[TND], VERIFIED-S'],
    ['790535312317', '[TND], VERIFIED-S'],
    ['974367662710', '[TND], VERIFIED-S: sum 186, 186 mod 11 = 10 becomes 0'],
  ])('express %s (%s)', (number) => {
    expect(mod11CheckDigit(rest(number))).toBe(last(number));
  });

  it('996578788855 is wrong ([TND], VERIFIED-S)', () => {
    expect(mod11CheckDigit('99657878885')).not.toBe(5);
  });

  it('34 digits: positions 21 to 33 carry the check digit at 34 ([TND], VERIFIED-S)', () => {
    const number = '1001921334250001000300779017972697';
    expect(mod11CheckDigit(number.slice(20, 33))).toBe(last(number));
  });

  it('22 digits with 96 in front: only the 14 digits of shipper and package count ([TND], VERIFIED-S)', () => {
    const number = '9611020987654312345672';
    expect(gs1CheckDigit(number.slice(7, 21))).toBe(last(number));
    expect(gs1CheckDigit(rest(number))).toBe(3);
  });

  it.each(['041441760228964', '568283610012000', '568283610012734'])('ground %s ([TND], VERIFIED-S)', (number) => {
    expect(gs1CheckDigit(rest(number))).toBe(last(number));
  });

  it('568283610012732 is wrong ([TND], VERIFIED-S)', () => {
    expect(gs1CheckDigit('56828361001273')).not.toBe(2);
  });

  it.each([
    ['87654321', 6, 'S10 Annex A via zint, VERIFIED-S'],
    ['12345678', 5, '[TND], VERIFIED-S'],
    ['47312482', 9, '[S10W], VERIFIED-S'],
    ['47312004', 0, 'sum mod 11 = 1: 10 becomes 0, COMPUTED'],
    ['47312007', 5, 'sum mod 11 = 0: 11 becomes 5, COMPUTED'],
  ])('S10 serial %s has the check digit %i (%s)', (serial, check) => {
    expect(s10CheckDigit(serial)).toBe(check);
  });
});

describe('what is no number of the scheme has no check digit', () => {
  it('letters, gaps and wrong lengths', () => {
    expect(gs1CheckDigit('')).toBeUndefined();
    expect(gs1CheckDigit('1234x')).toBeUndefined();
    expect(gs1CheckDigit('１２３')).toBeUndefined();
    expect(alphanumericCheckDigit('999aa1012345678')).toBeUndefined();
    expect(mod11CheckDigit('123456789012')).toBeUndefined();
    expect(s10CheckDigit('1234567')).toBeUndefined();
  });
});
