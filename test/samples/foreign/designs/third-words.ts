import { checkDigit } from '../kit/zint.js';
import type { Parcel, Vocabulary } from './content.js';
import { Dice, s10 } from './content.js';
import { FAR } from './third-words-far.js';
import { NEAR } from './third-words-near.js';

/** One language's wording on the pages of this part, with a sender, a receiver and their places. */
export interface ThirdWords {
  readonly mark: string;
  readonly label: readonly [from: string, to: string, weight: string, service: string, reference: string];
  readonly back: string;
  readonly slip: readonly [title: string, quantity: string, item: string, order: string, thanks: string];
  readonly steps: readonly [title: string, ...steps: string[]];
  readonly fold: string;
  readonly receipt: readonly [title: string, line: string];
  readonly bill: readonly [title: string, net: string, tax: string, sum: string, terms: string];
  readonly customs: readonly [title: string, contents: string, value: string, sign: string];
  readonly reasons: readonly [title: string, ...reasons: string[]];
  readonly small: string;
  readonly advert: readonly [title: string, text: string];
  readonly shop: string;
  readonly person: string;
  readonly streets: readonly [from: string, to: string];
  readonly towns: readonly [from: string, to: string];
  readonly goods: readonly string[];
}

/** Seven languages that Windows' Latin writes, three more in Latin letters, then Hebrew and Thai. */
export const THIRD_WORDS: readonly ThirdWords[] = [...NEAR, ...FAR];
export const WESTERN = 7;
export const ALL_LATIN = 10;

/** Names of this part; nothing of them is in the others. */
export const THIRD: Vocabulary = {
  shops: THIRD_WORDS.map(({ shop }) => shop),
  people: THIRD_WORDS.map(({ person }) => person),
  streets: THIRD_WORDS.flatMap(({ streets }) => streets),
  towns: THIRD_WORDS.flatMap(({ towns }) => towns.map((town) => [town, '', ''] as const)),
  goods: THIRD_WORDS.flatMap(({ goods }) => goods),
  marks: THIRD_WORDS.map(({ mark }) => mark),
};

export interface Posted {
  readonly parcel: Parcel;
  readonly words: ThirdWords;
  /** Day of the year as the page prints it. */
  readonly day: string;
}

/** A parcel and its wording. */
export function posted(seed: number, language: number): Posted {
  const dice = new Dice(seed * 6151 + 77);
  const words = THIRD_WORDS[language % THIRD_WORDS.length];
  if (!words) throw new Error('No words');
  const body = `0${dice.digits(16)}`;
  const parcel: Parcel = {
    from: [words.shop, words.streets[0], words.towns[0], 'Tel. 555-01' + dice.digits(2)],
    to: [words.person, words.streets[1], words.towns[1]],
    postcode: `00${dice.digits(3)}`,
    town: words.towns[1],
    tracking: dice.digits(14),
    sscc: body + checkDigit(body),
    s10: s10(dice.of(['CA', 'RB', 'UD']), dice.digits(8)),
    routing: dice.digits(12),
    order: `${dice.between(1000, 9999)}-${dice.digits(4)}`,
    weight: `${dice.between(0, 24)}.${dice.digits(1)} kg`,
    depot: `${dice.digits(2)}${dice.letters(1)}`,
    mark: words.mark,
    goods: Array.from(
      { length: dice.between(2, 5) },
      () => [dice.between(1, 4), dice.of(words.goods), `${dice.between(4, 95)}.${dice.of(['00', '50', '95'])}`] as const,
    ),
  };
  return { parcel, words, day: `2020-${String(dice.between(1, 12)).padStart(2, '0')}-${String(dice.between(1, 28)).padStart(2, '0')}` };
}
