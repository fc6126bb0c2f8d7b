import { checkDigit } from '../kit/zint.js';

/** Numbers that look random and are the same every time. */
export class Dice {
  constructor(private state: number) {}
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }
  between(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }
  of<T>(list: readonly T[]): T {
    const chosen = list[this.between(0, list.length - 1)];
    if (chosen === undefined) throw new Error('Nothing to choose from');
    return chosen;
  }
  digits(count: number): string {
    return Array.from({ length: count }, () => this.between(0, 9)).join('');
  }
  letters(count: number): string {
    return Array.from({ length: count }, () => 'ABCDEFGHJKLMNPRSTUVWXYZ'.charAt(this.between(0, 22))).join('');
  }
}

/** Names of one half; nothing of them is in the other. */
export interface Vocabulary {
  readonly shops: readonly string[];
  readonly people: readonly string[];
  readonly streets: readonly string[];
  readonly towns: readonly (readonly [town: string, region: string, postcode: string])[];
  readonly goods: readonly string[];
  readonly marks: readonly string[];
}

export const TUNING: Vocabulary = {
  shops: ['Pondermill Goods', 'Tansyhook Crafts', 'Crumblewick Prints', 'Owlbarrow Supply', 'Mossthimble'],
  people: [
    'Edda Trialsson',
    'Wilmot Q. Demoworth',
    'Anneliese Beispielmann-Probst',
    'Jun Mockley',
    'Bartholomew Dummerton III',
    'Ines Ejemplar',
    'T. Fauxley',
  ],
  streets: [
    '12 Fictive Way',
    '4488 Imaginary Blvd Apt 7C',
    'Musterweg 3',
    '901 N Pretend Ave Ste 210',
    '77 Mockup Close',
    '5 rue du Modèle',
  ],
  towns: [
    ['Inventville', 'OR', '97009'],
    ['Mockbury', 'TX', '73344'],
    ['Probstadt', 'DE', '00731'],
    ['Lake Pretend', 'MN', '55001'],
    ['Nowhere Junction', 'OH', '44999'],
    ['Fauxbourg', 'VT', '05000'],
  ],
  goods: [
    'Glazed mug, oat',
    'Enamel pin set of 4',
    'Linen print 30x40',
    'Beeswax candle',
    'Felt coaster, moss',
    'Notebook A6 dotted',
    'Brass hook',
    'Postcard bundle',
  ],
  marks: [
    'SAMPLE LABEL, NOT VALID FOR CARRIAGE',
    'For trial only: void for shipping',
    'MUSTER, NICHT FÜR DEN VERSAND',
    'Spécimen sans valeur',
    'DEMO / DO NOT SHIP',
  ],
};

export const UNSEEN: Vocabulary = {
  shops: ['Gullfeather Yarns', 'Bramley & Oddment', 'Saltglass Works', 'Periwhim Paper', 'Thornlet Studio'],
  people: [
    'Marguerite Placeholder',
    'O. Testerberg',
    'Kwabena Sampleford',
    'Lotte van der Voorbeeld',
    'Sir Hugo Templeton-Blank',
    'Mia Esempio',
    'R. Nullmann',
  ],
  streets: ['300 Sandbox Terrace', 'Proefstraat 18 bis', '2 Blank Row, Unit 14', '6100 Sketch Pkwy', 'Via Esempio 40', 'Testgränd 9'],
  towns: [
    ['Draftham', 'WA', '98000'],
    ['Voorbeelddorp', 'NL', '1000 XX'],
    ['Template Springs', 'CO', '80999'],
    ['Esempiano', 'IT', '00199'],
    ['Port Sketch', 'ME', '03999'],
    ['Testerud', 'SE', '100 05'],
  ],
  goods: [
    'Merino skein, fog',
    'Letterpress card',
    'Bud vase, sea green',
    'Wool darning kit',
    'Gift wrap roll',
    'Ceramic spoon rest',
    'Sticker sheet',
    'Oak frame A4',
  ],
  marks: [
    'VOID - SPECIMEN FOR TESTS',
    'No postage paid: example only',
    'VOORBEELD, NIET VERZENDEN',
    'ESEMPIO NON VALIDO',
    'Provexempel, gäller ej',
  ],
};

export interface Parcel {
  readonly from: readonly string[];
  readonly to: readonly string[];
  readonly postcode: string;
  readonly town: string;
  readonly tracking: string;
  readonly sscc: string;
  readonly s10: string;
  readonly routing: string;
  readonly order: string;
  readonly weight: string;
  readonly depot: string;
  readonly mark: string;
  readonly goods: readonly (readonly [quantity: number, what: string, price: string])[];
}

/** UPU S10 item number; ZZ is no country. */
export function s10(prefix: string, serial: string): string {
  const weights = [8, 6, 4, 2, 3, 5, 9, 7];
  const sum = weights.reduce((total, weight, index) => total + weight * Number(serial[index]), 0);
  const rest = 11 - (sum % 11);
  const check = rest === 10 ? 0 : rest === 11 ? 5 : rest;
  return `${prefix}${serial}${check}ZZ`;
}

const address = (dice: Dice, words: Vocabulary, name: string, town: readonly [string, string, string], long: boolean): string[] => {
  const extra = long ? [dice.of(['c/o Front desk', 'Floor 3, rear entrance', 'Attn: Goods in', 'Building B / 2nd stair'])] : [];
  return [name, ...extra, dice.of(words.streets), `${town[0]} ${town[1]} ${town[2]}`];
};

/** One parcel's words and numbers. */
export function parcel(seed: number, words: Vocabulary): Parcel {
  const dice = new Dice(seed * 7919 + words.shops.length + (words === TUNING ? 0 : 5000));
  const town = dice.of(words.towns);
  const body = `0${dice.digits(16)}`;
  const goods = Array.from(
    { length: dice.between(1, 6) },
    () => [dice.between(1, 4), dice.of(words.goods), `${dice.between(3, 60)}.${dice.of(['00', '50', '90'])}`] as const,
  );
  return {
    from: address(dice, words, dice.of(words.shops), dice.of(words.towns), dice.next() < 0.3),
    to: address(dice, words, dice.of(words.people), town, dice.next() < 0.4),
    postcode: town[2],
    town: town[0],
    tracking: dice.digits(12),
    sscc: body + checkDigit(body),
    s10: s10(dice.of(['RX', 'LZ', 'CQ']), dice.digits(8)),
    routing: dice.digits(13),
    order: `${dice.letters(2)}-${dice.digits(6)}`,
    weight: `${dice.between(0, 9)}.${dice.digits(2)} kg`,
    depot: `${dice.letters(2)}${dice.digits(2)}`,
    mark: dice.of(words.marks),
    goods,
  };
}

/** 0123 4567 89 */
export const spaced = (text: string, every = 4): string => (text.match(new RegExp(`.{1,${every}}`, 'g')) ?? []).join(' ');
export const ascii = (text: string): string => text.normalize('NFD').replaceAll(/[^\x20-\x7e]/g, '');

/** Carriers of all parts, invented like every other name here. */
export const CARRIERS = [
  ...['Larkmoss', 'Dunwhit', 'Vellapost', 'Orrinway', 'Tamsilk', 'Brackenjet'],
  ...['Siltwing', 'Marrowgate', 'Ulvepost', 'Thistledray', 'Nubelina', 'Zephrook'],
  ...['Pellwyck', 'Harrowtern', 'Skimmerdal', 'Ostrelane', 'Moldwerf', 'Ribbelac', 'Voxhollow'],
  ...['Quillmarsh', 'Borrelunde', 'Tindervane', 'Wexmallow', 'Nordhavel', 'Cobblefinch'],
  ...['Fennbrook', 'Tollivane', 'Gravelund', 'Pinderhaus', 'Oskarvik', 'Mellowick', 'Kestrelby', 'Zumbray'],
  ...['Brindlewick', 'Tamberline', 'Dornwald', 'Colisandre', 'Veltbode', 'Ostervang', 'Trevolto', 'Correvaz', 'Przesylnik', 'Halvorne'],
  ...['Marlowend', 'Postalba', 'Rijnkoerel', 'Skarvline'],
  ...['Hollowpost', 'Vantreck', 'Kestrelo', 'Nordvik', 'Rapidelle', 'Zwaluw Express', 'Correluz', 'Svalpost', 'Poltrasa', 'Meridian Loop'],
  ...['Quickquill', 'Postella', 'Ottermile', 'Gullhaven', 'Tarn & Tide', 'Fellbrook'],
  ...['Albarela', 'Kurenne', 'Fernhaul', 'Bramblebox', 'Osprelle', 'Wrenmarket', 'Dovecart'],
] as const;
