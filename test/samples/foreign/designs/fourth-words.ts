import { checkDigit } from '../kit/zint.js';
import type { Parcel, Vocabulary } from './content.js';
import { Dice, s10 } from './content.js';
import { FOURTH_EAST } from './fourth-words-b.js';
import { FOURTH_WEST } from './fourth-words-a.js';

/** One language's wording on the pages of this part, with two shops, receivers and their places. */
export interface FourthWords {
  readonly mark: string;
  readonly label: {
    readonly from: string;
    readonly to: string;
    readonly weight: string;
    readonly date: string;
    readonly ref: string;
    readonly tracking: string;
    readonly piece: string;
    readonly service: string;
    readonly depot: string;
    readonly back: string;
  };
  readonly how: readonly [title: string, ...steps: string[]];
  readonly fold: string;
  readonly cut: string;
  readonly receipt: readonly [title: string, posted: string, cost: string, line: string];
  readonly bill: readonly [title: string, number: string, net: string, tax: string, sum: string, terms: string];
  readonly slip: readonly [title: string, quantity: string, item: string, order: string, shipTo: string, thanks: string];
  readonly customs: readonly [title: string, contents: string, weight: string, value: string, origin: string, sign: string];
  readonly back: readonly [title: string, why: string, ...reasons: string[]];
  readonly lists: readonly [picking: string, handOver: string, shelf: string, parcels: string];
  readonly small: string;
  readonly advert: readonly [title: string, text: string];
  readonly shops: readonly [string, string];
  readonly people: readonly [string, string, string];
  readonly streets: readonly [string, string, string, string];
  readonly towns: readonly [string, string, string, string];
  readonly goods: readonly string[];
  readonly currency: string;
}

/** Seven languages that Windows' Latin writes, then Polish. */
export const FOURTH_WORDS: readonly FourthWords[] = [...FOURTH_WEST, ...FOURTH_EAST];
export const WEST = 7;
export const ALL = 8;

/** Names of this part; nothing of them is in the others. */
export const FOURTH: Vocabulary = {
  shops: FOURTH_WORDS.flatMap(({ shops }) => shops),
  people: FOURTH_WORDS.flatMap(({ people }) => people),
  streets: FOURTH_WORDS.flatMap(({ streets }) => streets),
  towns: FOURTH_WORDS.flatMap(({ towns }) => towns.map((town) => [town, '', ''] as const)),
  goods: FOURTH_WORDS.flatMap(({ goods }) => goods),
  marks: FOURTH_WORDS.map(({ mark }) => mark),
};

export interface Sent {
  readonly parcel: Parcel;
  readonly words: FourthWords;
  /** Day as the page prints it. */
  readonly day: string;
  readonly phone: string;
  /** 22 digits as a postal service's package number has: 92, 19 digits, a check digit of modulo 10. */
  readonly package22: string;
}

/** A parcel and its wording. */
export function sent(seed: number, language: number): Sent {
  const dice = new Dice(seed * 7127 + 311);
  const words = FOURTH_WORDS[language % FOURTH_WORDS.length];
  if (!words) throw new Error('No words');
  const k = dice.between(0, 1);
  const town = words.towns[dice.between(2, 3)] ?? '';
  const body = `0${dice.digits(16)}`;
  const package21 = `92${dice.digits(19)}`;
  const flat = dice.next() < 0.35 ? [dice.of(['Apt 4', '2nd fl.', 'c/o Studio 3'])] : [];
  const parcel: Parcel = {
    from: [words.shops[k] ?? '', words.streets[k] ?? '', words.towns[k] ?? ''],
    to: [dice.of(words.people), ...(language === 0 ? flat : []), words.streets[dice.between(2, 3)] ?? '', town],
    postcode: town.replaceAll(/\D/g, '').padStart(5, '0').slice(0, 5),
    town: town.replaceAll(/[\d,]/g, '').trim(),
    tracking: dice.digits(14),
    sscc: body + checkDigit(body),
    s10: s10(dice.of(['CE', 'RL', 'UX']), dice.digits(8)),
    routing: dice.digits(13),
    order: `${dice.between(100, 999)}-${dice.digits(7)}`,
    weight: `${dice.between(0, 14)}.${dice.digits(2)} kg`,
    depot: `${dice.letters(2)}-${dice.digits(3)}`,
    mark: words.mark,
    goods: Array.from(
      { length: dice.between(1, 5) },
      () => [dice.between(1, 3), dice.of(words.goods), `${dice.between(4, 85)}.${dice.of(['00', '50', '90', '95'])}`] as const,
    ),
  };
  const [day, month] = [String(dice.between(1, 28)).padStart(2, '0'), String(dice.between(1, 12)).padStart(2, '0')];
  const date = language === 0 ? `${month}/${day}/2020` : language === 3 || language === 6 ? `2020-${month}-${day}` : `${day}.${month}.2020`;
  return { parcel, words, day: date, phone: `555-01${dice.digits(2)}`, package22: package21 + checkDigit(package21) };
}
