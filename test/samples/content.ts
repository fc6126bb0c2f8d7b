import { gs1CheckDigit } from './code-art.js';
import { FAMILY, GIVEN, SAMPLE_MARKS, STREETS, STUDIO, TOWNS } from './names.js';

/** Draws of a seeded generator, the same on every machine. */
export function seeded(text: string): (below: number) => number {
  let state = 2166136261;
  for (const character of text) state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 16777619) >>> 0;
  return (below) => {
    // xorshift32
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % below;
  };
}

export type MarkPlace = 'line' | 'watermark' | 'side';

/** What stands on one label. */
export interface LabelContent {
  readonly order: string;
  readonly service: string;
  readonly from: readonly string[];
  readonly to: readonly string[];
  readonly postcode: string;
  /** Digits only. */
  readonly serial: string;
  readonly sscc: string;
  readonly weight: string;
  readonly items: readonly string[];
  /** Where a layout says so: which parcel it is of how many; left out, the only one. */
  readonly parcel?: string;
  readonly mark: string;
  readonly markPlace: MarkPlace;
}

const pick = <T>(draw: (below: number) => number, list: readonly T[]): T => list[draw(list.length)] as T;
const digits = (draw: (below: number) => number, count: number): string => Array.from({ length: count }, () => String(draw(10))).join('');

const GOODS = [
  'Stoneware mug, ash glaze',
  'Linocut "Two herons", A4',
  'Ramen bowl, tenmoku',
  'Screen print "Harbour", 30x40',
  'Set of 4 espresso cups',
  'Letterpress cards, box of 8',
  'Bud vase, celadon',
  'Risograph calendar',
];

export function buyer(draw: (below: number) => number): { lines: readonly string[]; postcode: string } {
  const postcode = `000${String(10 + draw(90))}`;
  return {
    lines: [
      `${pick(draw, GIVEN)} ${pick(draw, FAMILY)}`,
      `${String(1 + draw(240))} ${pick(draw, STREETS)}`,
      ...(draw(3) === 0 ? [`Unit ${String(1 + draw(20))}`] : []),
      `${pick(draw, TOWNS)} XX ${postcode}`,
    ],
    postcode,
  };
}

/** Content that depends on `seed` alone. The company part of the SSCC is of the range for restricted circulation (02). */
export function contentFor(seed: string, mark = 0, markPlace: MarkPlace = 'line'): LabelContent {
  const draw = seeded(seed);
  const to = buyer(draw);
  const body = `302${digits(draw, 14)}`;
  return {
    order: String(1000 + draw(9000)),
    service: pick(draw, ['STANDARD', 'TWO DAY', 'ECONOMY']),
    from: [STUDIO, '7 Example Street', 'Sampleton XX 00001', '555-0142'],
    to: to.lines,
    postcode: to.postcode,
    serial: digits(draw, 18),
    sscc: body + gs1CheckDigit(body),
    weight: `${String(draw(4))}.${String(1 + draw(9))} kg`,
    items: Array.from({ length: 1 + draw(3) }, () => `${String(1 + draw(3))} x ${pick(draw, GOODS)}`),
    mark: SAMPLE_MARKS[mark % SAMPLE_MARKS.length] ?? SAMPLE_MARKS[0],
    markPlace,
  };
}
