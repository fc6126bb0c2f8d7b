import { checkDigit } from '../kit/zint.js';
import type { Parcel, Vocabulary } from './content.js';
import { Dice, s10 } from './content.js';

/** One language's wording on the pages of this part. */
export interface SecondWords {
  readonly mark: string;
  readonly label: readonly [from: string, to: string, weight: string, service: string];
  readonly back: string;
  readonly slip: readonly [title: string, quantity: string, item: string];
  readonly steps: readonly [title: string, ...steps: string[]];
  readonly cut: string;
  readonly advert: readonly [title: string, text: string];
  readonly receipt: string;
  readonly bill: readonly [title: string, sum: string];
  readonly customs: readonly [title: string, contents: string, value: string];
}

/** English, Portuguese, Finnish, Danish in Latin 1; then Czech, Greek and Ukrainian; then Japanese. */
export const SECOND_WORDS: readonly SecondWords[] = [
  {
    mark: 'SPECIMEN ONLY, NO POSTAGE, NOT FOR CARRIAGE',
    label: ['Sender', 'Deliver to', 'Weight', 'PARCEL TRACKED'],
    back: 'RETURN LABEL',
    slip: ['Packing list', 'Qty', 'Article'],
    steps: [
      'Before you post',
      'Print at actual size.',
      'Fold along the line.',
      'Stick the label flat on the largest side.',
      'Keep the receipt.',
    ],
    cut: 'cut here',
    advert: ['10 % off your next visit', 'Show this code at the stall. One per household, until the autumn fair.'],
    receipt: 'Receipt, keep this part',
    bill: ['Invoice', 'Total due'],
    customs: ['Customs declaration (specimen)', 'Contents', 'Value'],
  },
  {
    mark: 'AMOSTRA SEM VALOR, NÃO ENVIAR',
    label: ['Remetente', 'Destinatário', 'Peso', 'ENCOMENDA'],
    back: 'ETIQUETA DE DEVOLUÇÃO',
    slip: ['Lista de conteúdo', 'Qtd.', 'Artigo'],
    steps: ['Antes de enviar', 'Imprima em tamanho real.', 'Dobre pela linha.', 'Cole a etiqueta na face maior.', 'Guarde o recibo.'],
    cut: 'cortar aqui',
    advert: ['Oferta da semana', 'Apresente este código na banca. Um por família, até à feira.'],
    receipt: 'Recibo do remetente',
    bill: ['Fatura', 'Total a pagar'],
    customs: ['Declaração aduaneira (amostra)', 'Conteúdo', 'Valor'],
  },
  {
    mark: 'MALLI, EI KELPAA LÄHETYKSEEN',
    label: ['Lähettäjä', 'Vastaanottaja', 'Paino', 'PAKETTI'],
    back: 'PALAUTUSLAPPU',
    slip: ['Pakkausluettelo', 'Kpl', 'Tuote'],
    steps: [
      'Ennen lähettämistä',
      'Tulosta todellisessa koossa.',
      'Taita viivaa pitkin.',
      'Kiinnitä lappu suurimmalle sivulle.',
      'Säilytä kuitti.',
    ],
    cut: 'leikkaa tästä',
    advert: ['Syysmarkkinat', 'Näytä koodi kojulla. Yksi taloutta kohti.'],
    receipt: 'Lähettäjän kuitti',
    bill: ['Lasku', 'Yhteensä'],
    customs: ['Tulliselvitys (malli)', 'Sisältö', 'Arvo'],
  },
  {
    mark: 'PRØVE, GÆLDER IKKE SOM FRAGT',
    label: ['Afsender', 'Modtager', 'Vægt', 'PAKKE'],
    back: 'RETURLABEL',
    slip: ['Følgeseddel', 'Antal', 'Vare'],
    steps: ['Før du sender', 'Udskriv i fuld størrelse.', 'Fold langs linjen.', 'Klæb mærkaten på den største side.', 'Gem kvitteringen.'],
    cut: 'klip her',
    advert: ['Efterårsmarked', 'Vis koden i boden. En pr. husstand.'],
    receipt: 'Afsenderens kvittering',
    bill: ['Faktura', 'I alt'],
    customs: ['Tolddeklaration (prøve)', 'Indhold', 'Værdi'],
  },
  {
    mark: 'VZOREK, NEPLATÍ PRO PŘEPRAVU',
    label: ['Odesílatel', 'Příjemce', 'Hmotnost', 'ZÁSILKA'],
    back: 'ŠTÍTEK PRO VRÁCENÍ',
    slip: ['Dodací list', 'Ks', 'Zboží'],
    steps: [
      'Než zásilku podáte',
      'Tiskněte ve skutečné velikosti.',
      'Přehněte podél čáry.',
      'Štítek nalepte na největší stranu.',
      'Uschovejte stvrzenku.',
    ],
    cut: 'zde odstřihnout',
    advert: ['Podzimní trh', 'Ukažte kód u stánku. Jeden na domácnost.'],
    receipt: 'Stvrzenka odesílatele',
    bill: ['Účet', 'Celkem'],
    customs: ['Celní prohlášení (vzorek)', 'Obsah', 'Hodnota'],
  },
  {
    mark: 'ΔΕΙΓΜΑ, ΔΕΝ ΙΣΧΥΕΙ ΓΙΑ ΑΠΟΣΤΟΛΗ',
    label: ['Αποστολέας', 'Παραλήπτης', 'Βάρος', 'ΔΕΜΑ'],
    back: 'ΕΤΙΚΕΤΑ ΕΠΙΣΤΡΟΦΗΣ',
    slip: ['Λίστα συσκευασίας', 'Τεμ.', 'Είδος'],
    steps: [
      'Πριν την αποστολή',
      'Εκτυπώστε σε πραγματικό μέγεθος.',
      'Διπλώστε στη γραμμή.',
      'Κολλήστε την ετικέτα στη μεγάλη πλευρά.',
      'Κρατήστε την απόδειξη.',
    ],
    cut: 'κόψτε εδώ',
    advert: ['Φθινοπωρινή αγορά', 'Δείξτε τον κωδικό στον πάγκο.'],
    receipt: 'Απόδειξη αποστολέα',
    bill: ['Τιμολόγιο', 'Σύνολο'],
    customs: ['Τελωνειακή δήλωση (δείγμα)', 'Περιεχόμενο', 'Αξία'],
  },
  {
    mark: 'ЗРАЗОК, НЕ ДІЙСНИЙ ДЛЯ ПЕРЕВЕЗЕННЯ',
    label: ['Відправник', 'Одержувач', 'Вага', 'ПОСИЛКА'],
    back: 'ЕТИКЕТКА ПОВЕРНЕННЯ',
    slip: ['Пакувальний лист', 'К-сть', 'Товар'],
    steps: [
      'Перед відправленням',
      'Друкуйте у справжньому розмірі.',
      'Зігніть по лінії.',
      'Наклейте етикетку на найбільший бік.',
      'Збережіть квитанцію.',
    ],
    cut: 'різати тут',
    advert: ['Осінній ярмарок', 'Покажіть код біля прилавка.'],
    receipt: 'Квитанція відправника',
    bill: ['Рахунок', 'Разом'],
    customs: ['Митна декларація (зразок)', 'Вміст', 'Вартість'],
  },
  {
    mark: '見本 配送には使えません SAMPLE',
    label: ['ご依頼主', 'お届け先', '重量', '宅配便'],
    back: '返品ラベル',
    slip: ['納品書', '数量', '品名'],
    steps: ['発送の前に', '実際のサイズで印刷します。', '線に沿って折ります。', '一番大きい面に貼ります。', '控えを保管してください。'],
    cut: '切り取り線',
    advert: ['秋の市', 'この番号を店頭でお見せください。'],
    receipt: 'ご依頼主控え',
    bill: ['請求書', '合計'],
    customs: ['税関告知書（見本）', '内容品', '価格'],
  },
];
/** How many languages, from the first, PostScript's Latin 1 and ReportLab's fonts can write. */
export const LATIN = 4;
export const WITHOUT_KANJI = 7;

const SHOPS = [
  'Hazelnook Bindery',
  'Oficina Andorinhal',
  'Kanervapaja',
  'Tangklokken',
  'Dílna Sojkovice',
  'Εργαστήρι Πλασματίνα',
  'Майстерня Вигадівка',
  'みほん工房',
];
const PEOPLE = [
  'Perpetua Nosuch',
  'Baltasar Figurado',
  'Aino Keksitty',
  'Troels Opdigtet',
  'Radka Smyšlená',
  'Φανή Ανύπαρκτου',
  'Ганна Вигадана',
  '見本 花子',
];
const STREETS = [
  '81 Nowhere Parade',
  'Rua do Exemplo 12',
  'Esimerkkikuja 4',
  'Eksempelstien 19',
  'Vzorová 7',
  'Οδός Παράδειγμα 3',
  'вул. Прикладна 16',
  '例町 2-4-6',
];
const TOWNS = [
  'Lower Fibbing 00512',
  '0030 Vilaficta',
  '00071 Keksilä',
  '0017 Påfundby',
  '000 44 Smyšlenec',
  '000 81 Φαντασίδα',
  '00056 Вигадів',
  '000-0042 見本市',
];
const GOODS = ['Bound notebook', 'Wool throw', 'Ash spoon', 'Tile 10x10', 'Ink, walnut', 'Clay bird', 'Tea tin', 'Print A5'];

/** Names of this part; nothing of them is in the others. */
export const SECOND: Vocabulary = {
  shops: SHOPS,
  people: PEOPLE,
  streets: STREETS,
  towns: TOWNS.map((town) => [town, '', ''] as const),
  goods: GOODS,
  marks: SECOND_WORDS.map(({ mark }) => mark),
};

const nth = <T>(list: readonly T[], index: number): T => {
  const item = list[index % list.length];
  if (item === undefined) throw new Error('An empty list');
  return item;
};

export interface Sent {
  readonly parcel: Parcel;
  readonly words: SecondWords;
}

/** A parcel and its wording; sender and receiver share a land. */
export function sent(seed: number, language: number): Sent {
  const dice = new Dice(seed * 4547 + 31);
  const words = nth(SECOND_WORDS, language);
  const address = (name: string): string[] => [name, nth(STREETS, language), nth(TOWNS, language)];
  const body = `0${dice.digits(16)}`;
  const parcel: Parcel = {
    from: address(nth(SHOPS, language)),
    to: address(nth(PEOPLE, language)),
    postcode: `00${dice.digits(3)}`,
    town: nth(TOWNS, language),
    tracking: dice.digits(12),
    sscc: body + checkDigit(body),
    s10: s10(dice.of(['CX', 'RJ', 'LP']), dice.digits(8)),
    routing: dice.digits(14),
    order: `${dice.letters(3)}${dice.digits(5)}`,
    weight: `${dice.between(0, 19)}.${dice.digits(2)} kg`,
    depot: `${dice.letters(2)}-${dice.digits(2)}`,
    mark: words.mark,
    goods: Array.from({ length: dice.between(2, 6) }, () => [dice.between(1, 3), dice.of(GOODS), `${dice.between(5, 80)}.00`] as const),
  };
  return { parcel, words };
}
