import { checkDigit } from '../kit/zint.js';
import type { Parcel, Vocabulary } from './content.js';
import { Dice, s10 } from './content.js';
import { WORDS_A } from './fresh-words-a.js';
import { WORDS_B } from './fresh-words-b.js';

/** One language's wording of everything that stands on the fresh pages. Tuples: see who draws them. */
export interface Words {
  readonly marks: readonly [string, string];
  readonly label: readonly [from: string, to: string, weight: string, reference: string, service: string];
  readonly slip: readonly [title: string, order: string, quantity: string, item: string, price: string, thanks: string];
  readonly copy: readonly [title: string, keep: string];
  readonly help: readonly [title: string, a: string, b: string, c: string, d: string];
  readonly app: readonly [string, string];
  readonly voucher: readonly [title: string, text: string];
  readonly advert: readonly [title: string, text: string];
  readonly fold: string;
  readonly customs: readonly [title: string, open: string, contents: string, value: string, gift: string, sale: string, sign: string];
  readonly back: string;
  readonly bill: readonly [title: string, sum: string, pay: string];
  readonly terms: readonly [title: string, text: string];
  readonly pick: string;
  readonly letter: readonly [greeting: string, first: string, second: string];
  readonly goods: readonly string[];
}

/** English, German, French, Spanish, Italian, Dutch, Swedish, Polish. */
export const LANGUAGES: readonly Words[] = [...WORDS_A, ...WORDS_B];
export const POLISH = 7;

const SHOPS = [
  'Kettlemoth Ceramics',
  'Fuchsbau Siebdruck',
  'Atelier Brindezinc',
  'Taller Zorrobarro',
  'Bottega Lupincotta',
  'Vossenkom',
  'Rävkrukan',
  'Lisia Glina',
];
const PEOPLE = [
  'Hollis Fakenham-Rowe',
  'Gundula Probeklotz',
  'Amédée Fauxnom',
  'Ximena Supuesta',
  'Tullio Fintoni',
  'Jikke Namaaksma',
  'Åke Låtsasson',
  'Żaneta Zmyślona',
];
const STREETS = [
  '27 Example Crescent',
  'Beispielweg 8',
  '14 rue de l’Exemple',
  'Calle Muestra 21',
  'Via Campione 3',
  'Voorbeeldlaan 6',
  'Exempelvägen 11',
  'ul. Przykładowa 5',
];
const TOWNS: readonly (readonly [town: string, postcode: string])[] = [
  ['Fakeham-on-Sea', '00419'],
  ['Attrappenau', '00417'],
  ['Fauxmoutier', '00620'],
  ['Villafingida', '00881'],
  ['Borgofinto', '00042'],
  ['Namaakdijk', '0099'],
  ['Låtsasby', '00317'],
  ['Zmyślonki', '00911'],
];

/** Names of the fresh part; nothing of them is in the halves. */
export const FRESH: Vocabulary = {
  shops: SHOPS,
  people: PEOPLE,
  streets: STREETS,
  towns: TOWNS.map(([town, code]) => [town, '', code] as const),
  goods: LANGUAGES.flatMap(({ goods }) => goods),
  marks: LANGUAGES.flatMap(({ marks }) => marks),
};

const nth = <T>(list: readonly T[], index: number): T => {
  const item = list[index % list.length];
  if (item === undefined) throw new Error('An empty list');
  return item;
};
export const wordsOf = (language: number): Words => nth(LANGUAGES, language);

/** One parcel within or between two lands, its words in the language of the sender. */
export function freshParcel(seed: number, language: number): Parcel {
  const dice = new Dice(seed * 6151 + 77);
  const lang = language % LANGUAGES.length;
  const words = wordsOf(lang);
  const to = dice.next() < 0.7 || lang === POLISH ? lang : dice.between(0, POLISH - 1);
  const address = (name: string, land: number): string[] => {
    const [town, code] = nth(TOWNS, land);
    const extra = dice.next() < 0.3 ? [`${dice.letters(1)}${dice.digits(2)} / ${dice.digits(1)}`] : [];
    return [name, ...extra, nth(STREETS, land), land === 0 ? `${town} ${code}` : `${code} ${town}`];
  };
  const [town, postcode] = nth(TOWNS, to);
  const body = `0${dice.digits(16)}`;
  const goods = Array.from(
    { length: dice.between(2, 6) },
    () => [dice.between(1, 3), dice.of(words.goods), `${dice.between(4, 70)}.${dice.of(['00', '40', '75'])}`] as const,
  );
  return {
    from: address(nth(SHOPS, lang), lang),
    to: address(nth(PEOPLE, to), to),
    postcode,
    town,
    tracking: dice.digits(12),
    sscc: body + checkDigit(body),
    s10: s10(dice.of(['EB', 'VK', 'UN']), dice.digits(8)),
    routing: dice.digits(13),
    order: `${dice.digits(4)}.${dice.digits(3)}`,
    weight: `${dice.between(0, 12)},${dice.digits(1)} kg`,
    depot: `${dice.digits(1)}${dice.letters(2)}${dice.digits(1)}`,
    mark: dice.of(words.marks),
    goods,
  };
}
