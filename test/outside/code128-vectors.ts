/** One row of handbook section 11.4. */
export interface Code128Vector {
  readonly name: string;
  /** Start, data, check and stop. */
  readonly values: readonly number[];
  readonly modules: number;
  readonly identifier: ']C0' | ']C1';
  /** What a reader transmits, Latin-1; FNC1 in first place is told by the identifier, in later ones by GS. */
  readonly text: string;
  readonly source: string;
  /** Data in the spelling of the independent writers: round brackets around application identifiers of GS1 data. */
  readonly write: string | undefined;
  /** Bit string as the source prints it. */
  readonly bits?: string;
}

const PACKAGE_ID = [93, 74, 89, 1, 0, 0, 0, 3, 98, 50, 39];
const computed = 'handbook section 11.4, COMPUTED';

export const VECTORS: readonly Code128Vector[] = [
  {
    name: 'AIM, set B',
    values: [104, 33, 41, 45, 45, 106],
    modules: 68,
    identifier: ']C0',
    text: 'AIM',
    source: 'ISO/IEC 15417 fig. 1 via zint tests, VERIFIED-S',
    write: 'AIM',
    bits: '11010010000101000110001100010001010111011000101110110001100011101011',
  },
  {
    name: 'AIM, set A',
    values: [103, 33, 41, 45, 44, 106],
    modules: 68,
    identifier: ']C0',
    text: 'AIM',
    source: computed,
    write: undefined,
  },
  {
    name: 'AIM1234',
    values: [104, 33, 41, 45, 99, 12, 34, 87, 106],
    modules: 101,
    identifier: ']C0',
    text: 'AIM1234',
    source: 'ISO/IEC 15417 Annex A.1, VERIFIED-S',
    write: 'AIM1234',
  },
  {
    name: 'ABCDEF, set A',
    values: [103, 33, 34, 35, 36, 37, 38, 42, 106],
    modules: 101,
    identifier: ']C0',
    text: 'ABCDEF',
    source: 'a public page on the check character [BR], VERIFIED-S',
    write: undefined,
  },
  {
    name: '345678, set C',
    values: [105, 34, 56, 78, 73, 106],
    modules: 68,
    identifier: ']C0',
    text: '345678',
    source: 'a public page on the check character [BR], VERIFIED-S',
    write: '345678',
  },
  {
    name: '(00)395123451234567895',
    values: [105, 102, 0, 39, 51, 23, 45, 12, 34, 56, 78, 95, 96, 106],
    modules: 156,
    identifier: ']C1',
    text: '00395123451234567895',
    source: 'GS1 General Specifications fig. 5.4.2-1 via zint tests, VERIFIED-S',
    write: '(00)395123451234567895',
  },
  {
    name: '(00)006141411234567890',
    values: [105, 102, 0, 0, 61, 41, 41, 12, 34, 56, 78, 90, 30, 106],
    modules: 156,
    identifier: ']C1',
    text: '00006141411234567890',
    source: computed,
    write: '(00)006141411234567890',
  },
  {
    name: '(420)45458',
    values: [105, 102, 42, 4, 54, 58, 88, 106],
    modules: 90,
    identifier: ']C1',
    text: '42045458',
    source: 'GS1 General Specifications fig. 6.6.5-3 via zint tests, VERIFIED-S',
    write: '(420)45458',
    bits: '110100111001111010111010110111000100100011001110101100011101100010111100100101100011101011',
  },
  {
    name: '(420)87109',
    values: [105, 102, 42, 8, 71, 9, 26, 106],
    modules: 90,
    identifier: ']C1',
    text: '42087109',
    source: computed,
    write: '(420)87109',
  },
  {
    name: '(420)21234 (93)74890100000003985039',
    values: [105, 102, 42, 2, 12, 34, 102, ...PACKAGE_ID, 79, 106],
    modules: 222,
    identifier: ']C1',
    text: '42021234\x1d9374890100000003985039',
    source: computed,
    write: '(420)21234(93)74890100000003985039',
  },
  {
    name: '(93)74890100000003985039',
    values: [105, 102, ...PACKAGE_ID, 14, 106],
    modules: 167,
    identifier: ']C1',
    text: '9374890100000003985039',
    source: computed,
    write: '(93)74890100000003985039',
  },
  {
    name: '(420)212345678 (93)74890100000003985039: the check value equals FNC1',
    values: [105, 102, 42, 2, 12, 34, 56, 78, 102, ...PACKAGE_ID, 102, 106],
    modules: 244,
    identifier: ']C1',
    text: '420212345678\x1d9374890100000003985039',
    source: computed,
    write: '(420)212345678(93)74890100000003985039',
  },
  {
    name: 'EE876543216CA',
    values: [104, 37, 37, 99, 87, 65, 43, 21, 100, 22, 35, 33, 5, 106],
    modules: 156,
    identifier: ']C0',
    text: 'EE876543216CA',
    source: 'UPU S10 Annex A via zint tests, VERIFIED-S',
    write: 'EE876543216CA',
  },
  {
    name: '1Z999AA10123456784, sets B, C, B',
    values: [104, 17, 58, 25, 25, 25, 33, 33, 99, 10, 12, 34, 56, 78, 100, 20, 63, 106],
    modules: 200,
    identifier: ']C0',
    text: '1Z999AA10123456784',
    source: computed,
    write: '1Z999AA10123456784',
  },
  {
    name: '9611020987654312345672 with FNC1 in front',
    values: [105, 102, 96, 11, 2, 9, 87, 65, 43, 12, 34, 56, 72, 26, 106],
    modules: 167,
    identifier: ']C1',
    text: '9611020987654312345672',
    source: computed,
    write: '(96)11020987654312345672',
  },
];
