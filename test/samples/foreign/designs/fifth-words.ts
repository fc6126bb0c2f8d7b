import { checkDigit } from '../kit/zint.js';
import type { Parcel, Vocabulary } from './content.js';
import { Dice, s10 } from './content.js';
import { FIFTH_A } from './fifth-words-a.js';
import { FIFTH_B } from './fifth-words-b.js';
import type { FourthWords, Sent } from './fourth-words.js';

/** Ten languages; Windows' Latin writes the first nine, Polish comes last. */
export const FIFTH_WORDS: readonly FourthWords[] = [...FIFTH_A, ...FIFTH_B];
export const LATIN = 9;
export const ALL_TEN = 10;

/** Names of this part; nothing of them is in the others. */
export const FIFTH: Vocabulary = {
  shops: FIFTH_WORDS.flatMap(({ shops }) => shops),
  people: FIFTH_WORDS.flatMap(({ people }) => people),
  streets: FIFTH_WORDS.flatMap(({ streets }) => streets),
  towns: FIFTH_WORDS.flatMap(({ towns }) => towns.map((town) => [town, '', ''] as const)),
  goods: FIFTH_WORDS.flatMap(({ goods }) => goods),
  marks: FIFTH_WORDS.map(({ mark }) => mark),
};

/** The language of the i-th page: every other one English, the rest in turn. */
export const tongue = (i: number, languages = LATIN): number => (i % 2 === 0 ? 0 : 1 + (((i - 1) / 2) % (languages - 1)));

/** A parcel and its wording. */
export function posted(seed: number, language: number): Sent {
  const dice = new Dice(seed * 9176 + 53);
  const words = FIFTH_WORDS[language % FIFTH_WORDS.length];
  if (!words) throw new Error('No words');
  const k = dice.between(0, 1);
  const town = words.towns[dice.between(2, 3)] ?? '';
  const body = `0${dice.digits(16)}`;
  const package21 = `93${dice.digits(19)}`;
  const flat = dice.next() < 0.3 ? [dice.of(['Unit B', 'Apt 12', 'Rear building'])] : [];
  const parcel: Parcel = {
    from: [words.shops[k] ?? '', words.streets[k] ?? '', words.towns[k] ?? ''],
    to: [dice.of(words.people), ...(language === 0 ? flat : []), words.streets[dice.between(2, 3)] ?? '', town],
    postcode: town.replaceAll(/\D/g, '').padStart(5, '0').slice(0, 5),
    town: town.replaceAll(/[\d,-]/g, '').trim(),
    tracking: dice.digits(12),
    sscc: body + checkDigit(body),
    s10: s10(dice.of(['CX', 'RQ', 'LW']), dice.digits(8)),
    routing: dice.digits(13),
    order: `${dice.letters(2)}${dice.digits(6)}`,
    weight: language === 0 ? `${dice.between(1, 9)} lb ${dice.between(0, 15)} oz` : `${dice.between(0, 9)},${dice.digits(2)} kg`,
    depot: `${dice.digits(2)}${dice.letters(1)}`,
    mark: words.mark,
    goods: Array.from(
      { length: dice.between(1, 4) },
      () => [dice.between(1, 4), dice.of(words.goods), `${dice.between(5, 60)}.${dice.of(['00', '40', '80', '95'])}`] as const,
    ),
  };
  const [day, month] = [String(dice.between(1, 28)).padStart(2, '0'), String(dice.between(1, 12)).padStart(2, '0')];
  const date = language === 0 ? `${month}/${day}/20` : language === 6 ? `2020-${month}-${day}` : `${day}/${month}/2020`;
  return { parcel, words, day: date, phone: `555-01${dice.digits(2)}`, package22: package21 + checkDigit(package21) };
}
