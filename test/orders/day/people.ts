import { FAMILY, GIVEN, STREETS, TOWNS } from '../../samples/names.js';
import type { Random } from './random.js';

/** Invented buyers whose names labels write in other ways than orders do: as in the order, as on the label. */
export const WRITTEN_OTHERWISE: readonly (readonly [order: string, label: string])[] = [
  ['Zsófi Mustermöör', 'ZSOFI MUSTERMOOR'],
  ['Jörg Exempelstraße', 'EXEMPELSTRASSE JORG'],
  ['Tindra van Proberton', 'Proberton, Tindra van'],
  ['Søren Specimensen', 'Soren Specimensen'],
  ['Łucja Trialbowska', 'Lucja Trialbowska'],
  ['Одиль Образцова', 'ОДИЛЬ ОБРАЗЦОВА'],
  ['Οδυσσέας Δειγματής', 'ΟΔΥΣΣΕΑΣ ΔΕΙΓΜΑΤΗΣ'],
  ['見本 太郎', '見本太郎 様'],
  ['견본 철수', '견본철수'],
  ['أوديل عينة', 'اوديل عينه'],
  ['אוֹדיל דוגמה', 'אודיל דוגמה'],
  ['ตัวอย่าง โอดีล', 'ตัวอย่าง โอดีล'],
  ['ओडिल नमूना', 'ओडिल नमूना'],
];

export interface Person {
  readonly buyer: string;
  /** The buyer's name as a label writes it. */
  readonly onLabel: string;
  readonly address: readonly string[];
  readonly postcode: string;
  readonly country: string;
}

const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXY';
const letter = (n: number): string => LETTERS[n % LETTERS.length] ?? 'A';

/** Postcodes that no other number gets; their forms are those of several countries, their places invented. */
const POSTCODES: readonly ((n: number) => readonly [postcode: string, country: string])[] = [
  (n) => [String(20_000 + n * 7), 'DE'],
  (n) => [`${String(20_000 + n * 7 + 1)}-${String(1000 + n)}`, 'US'],
  (n) => [`${String(2000 + n)} ${letter(n)}${letter(n + 5)}`, 'NL'],
  (n) => [`${letter(n)}${n % 10}${letter(n + 3)} ${Math.floor(n / 10) % 10}${letter(n + 7)}${Math.floor(n / 100) % 10}`, 'CA'],
  (n) => [`${letter(n)}${letter(n + 2)}${(n % 9) + 1} ${Math.floor(n / 9) % 10}${letter(Math.floor(n / 90))}${letter(n + 11)}`, 'GB'],
];

/** Somebody who is nobody: each number gives another name and postcode together. */
export function person(random: Random, n: number): Person {
  const [postcode, country] = random.pick(POSTCODES)(n);
  const address = [`${1 + random.below(200)} ${random.pick(STREETS)}`, random.pick(TOWNS)];
  if (random.chance(0.15)) {
    const [buyer, onLabel] = random.pick(WRITTEN_OTHERWISE);
    return { buyer, onLabel, address, postcode, country };
  }
  const [given, family] = [random.pick(GIVEN), random.pick(FAMILY)];
  const buyer = `${given} ${family}`;
  const onLabel = random.pick([
    buyer,
    buyer.toUpperCase(),
    `${family}, ${given}`,
    `${given.charAt(0)}. ${family}`,
    `${given} ${family.slice(0, 3)}${family.slice(4)}`,
  ]);
  return { buyer, onLabel, address, postcode, country };
}
