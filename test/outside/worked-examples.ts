import { alphanumericCheckDigit, gs1CheckDigit, mod11CheckDigit, s10CheckDigit } from '../../src/proof/check-digits.js';
import { code128, gs1Code128, itf, type CodeArt } from '../samples/code-art.js';

/** A published number as a carrier's code shows it. */
export interface WorkedExample {
  readonly art: CodeArt;
  /** Handbook section and how far the source was seen. */
  readonly source: string;
  /** The number of what was read back, with its check digit; undefined where it has none. */
  readonly checked: ((read: string) => { readonly digits: string; readonly expected: number | undefined }) | undefined;
}

type Checked = NonNullable<WorkedExample['checked']>;

/** Of GS1 mod 10 over `from` to the end. */
const mod10 =
  (from: number): Checked =>
  (read) => ({ digits: read.slice(from), expected: gs1CheckDigit(read.slice(from, -1)) });
const withinEnds = (digit: (text: string) => number | undefined, from: number, to: number): Checked => {
  return (read) => ({ digits: read.slice(from, to + 1), expected: digit(read.slice(from, to)) });
};

const sscc = (digits: string, source: string): WorkedExample => ({ art: gs1Code128(['00', digits]), source, checked: mod10(2) });
/** The channel's identifier belongs to the number. */
const parcel = (digits: string, source: string, postcode?: string): WorkedExample => ({
  art: gs1Code128(...(postcode === undefined ? [] : [['420', postcode] as const]), [digits.slice(0, 2), digits.slice(2)]),
  source,
  checked: mod10(postcode === undefined ? 0 : 3 + postcode.length + 1),
});
const plain = (text: string, source: string, checked?: Checked): WorkedExample => ({ art: code128(text), source, checked });
const eighteen = (text: string, source = '11.3 [TND], VERIFIED-S'): WorkedExample =>
  plain(text, source, withinEnds(alphanumericCheckDigit, 2, text.length - 1));
const twelve = (text: string, source = '11.3 [TND], VERIFIED-S'): WorkedExample => plain(text, source, withinEnds(mod11CheckDigit, 0, 11));
const international = (text: string, source: string): WorkedExample => plain(text, source, withinEnds(s10CheckDigit, 2, 10));

const TND_11_2 = '11.2 [TND], VERIFIED-S';
const FIG = (number: number): string => `11.1 GS1 General Specifications fig. 6.6.5-${number} via zint, VERIFIED-S`;

/** Worked examples of handbook section 11 that a label's rows of bars carry; Code 128 by values is in `code128-vectors.ts`. */
export const WORKED_EXAMPLES: readonly WorkedExample[] = [
  sscc('395123451234567895', '11.1 GS1 General Specifications fig. 5.4.2-1 via zint, VERIFIED-S'),
  sscc('006141411234567890', FIG(1)),
  sscc('395011015300000011', FIG(2)),
  sscc('000521775138957172', FIG(5)),
  sscc('395011010013000129', FIG(6)),
  sscc('093123450000000012', FIG(7)),
  { art: itf('15400141288763'), source: '11.1 BCOCA p. 55, VERIFIED-S', checked: mod10(0) },
  { art: gs1Code128(['420', '45458']), source: '11.4 GS1 General Specifications fig. 6.6.5-3 via zint, VERIFIED-S', checked: undefined },
  { art: gs1Code128(['420', '87109']), source: '11.4 COMPUTED', checked: undefined },
  parcel('9374890100000003985039', '11.2 BCOCA p. 63, VERIFIED-S'),
  parcel('9374890100000003985039', '11.4 COMPUTED', '21234'),
  parcel('9374890100000003985039', '11.4 COMPUTED: the check value equals FNC1', '212345678'),
  parcel('9400111206206406260787', TND_11_2),
  parcel('9400111206206406260787', TND_11_2, '78745'),
  parcel('9400111201080805483016', TND_11_2),
  parcel('9405803699300124287899', TND_11_2),
  parcel('9434611206206406227577', TND_11_2),
  plain('03071790000523483741', `${TND_11_2}, 20 digits`, mod10(0)),
  plain('71123456789123456787', `${TND_11_2}, 20 digits`, mod10(0)),
  eighteen('1Z999AA10123456784', '11.3 public sample, COMPUTED'),
  eighteen('1Z5R89390357567127'),
  eighteen('1Z879E930346834440'),
  eighteen('1Z410E7W0392751591'),
  eighteen('1Z8V92A70367203024'),
  eighteen('1ZXX3150YW44070023'),
  twelve('012345678983', '11.3 worked example [GA], VERIFIED-S'),
  twelve('123456789012', '11.3 published forum example, low trust'),
  twelve('986578788855'),
  twelve('477179081230'),
  twelve('799531274483'),
  twelve('790535312317'),
  twelve('974367662710'),
  plain('1001921334250001000300779017972697', '11.3 [TND], VERIFIED-S', withinEnds(mod11CheckDigit, 20, 33)),
  { art: gs1Code128(['96', '11020987654312345672']), source: '11.3 [TND], VERIFIED-S: check digit over 14 digits', checked: mod10(7) },
  plain('041441760228964', '11.3 [TND], VERIFIED-S', mod10(0)),
  plain('568283610012000', '11.3 [TND], VERIFIED-S', mod10(0)),
  plain('568283610012734', '11.3 [TND], VERIFIED-S', mod10(0)),
  international('EE876543216CA', '11.3 S10 Annex A via zint, VERIFIED-S'),
  international('RB123456785GB', '11.3 [TND], VERIFIED-S'),
  international('QA473124829PS', '11.3 [S10W], VERIFIED-S'),
];
