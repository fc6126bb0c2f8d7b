import { describe, expect, it } from 'vitest';
import { said, saidIn } from '../../src/locating/kind-of-words.js';
import { folded, KINDS, PHRASES } from '../../src/locating/vocabulary.js';
import type { Phrase } from '../../src/reading/word-lines.js';

const phrase = (text: string, fontSize = 10, y = 0): Phrase => ({
  text,
  fontSize,
  turn: 0,
  box: { x: 10, y, width: text.length * fontSize * 0.5, height: fontSize },
});
const BODY = phrase('All that this parcel holds was packed by hand in the morning.');

describe('said', () => {
  it('is a name in larger type than the rest, whatever its case and accents', () => {
    expect(said([phrase('DÉCLARATION  EN DOUANE', 18), BODY]).names).toEqual([
      { kind: 'customs-form', words: 'declaration en douane', heading: true },
    ]);
    expect(said([phrase('Bon de livraison n° 4711', 14), BODY]).names).toMatchObject([{ kind: 'packing-slip', heading: true }]);
  });

  it('is a name in a line of its own although its type is no larger, but no heading then', () => {
    expect(said([phrase('Packing slip'), BODY]).names).toEqual([{ kind: 'packing-slip', words: 'packing slip', heading: false }]);
  });

  it('is no name inside a sentence of the same type, nor inside another word', () => {
    expect(said([phrase('You will find the packing slip under the lid of the box.'), BODY]).names).toEqual([]);
    expect(said([phrase('Together Forewarned', 18), BODY])).toMatchObject({ names: [], labelWords: 0 });
  });

  it('is instructions where steps are numbered from one', () => {
    const steps = (...lines: readonly string[]) => said(lines.map((line, at) => phrase(line, 10, at * 24))).names;
    expect(steps('1. Print on plain paper.', '2. Cut, or fold twice.', '3. Tape it on.')).toMatchObject([
      { kind: 'instructions', heading: false },
    ]);
    expect(steps('1. Print on plain paper.', '2. Cut, or fold twice.')).toEqual([]);
    expect(steps('1/3', '2 kg', '3 Sample Lane')).toEqual([]);
  });

  it('is nothing that it says it does without', () => {
    expect(said([phrase('Manifest not required / Manifeste non requis', 14), BODY]).names).toEqual([]);
    expect(said([phrase('Rechnung nicht erforderlich', 14), BODY]).names).toEqual([]);
    expect(said([phrase('Manifest', 14), BODY]).names).toMatchObject([{ kind: 'list' }]);
  });

  it('is no packing slip where the words are a field that says how to deliver', () => {
    expect(said([phrase('Delivery note: leave with neighbour'), BODY]).names).toEqual([]);
    expect(said([phrase('Delivery note: 20-5512'), BODY]).names).toMatchObject([{ kind: 'packing-slip' }]);
    expect(said([phrase('Delivery note: spring order', 18), BODY]).names).toMatchObject([{ kind: 'packing-slip', heading: true }]);
  });

  it('counts senders and receivers cut short, and a weight by itself, among the words of a label', () => {
    expect(said([phrase('Empf.'), phrase('Abs.: Wachswerk, Beispielgasse 19')]).labelWords).toBe(2);
    expect(said([phrase('Abs plastic, grey'), phrase('Exp 04')]).labelWords).toBe(0);
    expect(said([phrase('0,74 kg')]).labelWords).toBe(1);
    expect(said([phrase('1 / 1   0.7 kg')]).labelWords).toBe(1);
    expect(said([phrase('Clay, white, 0.7 kg in a bag'), phrase('12 kg')]).labelWords).toBe(0);
  });

  it.each([
    'Pakkseddel',
    'Lieferschein',
    'Bon de livraison',
    'Albarán',
    'Documento di trasporto',
    'Pakbon',
    'Följesedel',
    'Plukkseddel',
    'Lähete',
    'Dodací list',
    'Szállítólevél',
    'Aviz de însoțire',
    'List pakunkowy',
    'Guia de remessa',
    'Sevk irsaliyesi',
    'Δελτίο αποστολής',
    'Пакувальний лист',
    'Otpremnica',
    'Dobavnica',
    'Saateleht',
    'Važtaraštis',
    'תעודת משלוח',
    'قائمة التعبئة',
    '納品書',
    '送货单',
    '포장 명세서',
    'ใบส่งของ',
    'Phiếu giao hàng',
  ])('is a packing slip in many languages: %s', (title) => {
    expect(said([phrase(title, 18), BODY]).names[0]?.kind).toBe('packing-slip');
  });

  it('is no return label by a line about what the carrier does, or a box to tick', () => {
    const label = [phrase('Return Service Requested'), phrase('Retour'), phrase('Rücksendung'), BODY];
    expect(said(label).names).toEqual([]);
    expect(said([phrase('RETOURE'), BODY]).names).toMatchObject([{ kind: 'return-label' }]);
  });

  it('puts the most prominent name first', () => {
    const { names } = said([phrase('Receipt'), phrase('Packing slip', 24), BODY]);
    expect(names.map(({ kind }) => kind)).toEqual(['packing-slip', 'receipt']);
  });

  it("counts a label's words once each: alone, at a line's start, or of two words", () => {
    expect(said([phrase('To'), phrase('TO:'), phrase('From the shop on the hill')]).labelWords).toBe(2);
    expect(said([phrase('Weight 2 kg'), phrase('Tracking no')]).labelWords).toBe(3);
    expect(said([phrase('Give it to the neighbour on the left')]).labelWords).toBe(0);
  });

  it.each([
    ['Von', 'Sendungsnr. XX 9059 9617'],
    ['De :', 'N° de suivi 3397 0021'],
    ['Remite', 'Nº de envío PS 7426 8975'],
    ['Da', 'Numero di spedizione 88 120 331'],
    ['Van', 'Zendingsnummer 3SEX 0112'],
    ['De', 'Código de rastreio PX 123 004'],
    ['Adresat', 'Nr przesyłki TB 3897 0834'],
    ['Od:', 'Číslo zásilky 4400 1283'],
    ['Från', 'Kolli-ID 3733 2107'],
    ['Til', 'Sporingsnummer 70 7200 114'],
    ['Lähettäjä', 'Lähetystunnus JJEX 3300'],
    ['Saatja', 'Kaal 2,1 kg'],
    ['Sūtītājs', 'Svars 2,1 kg'],
    ['Siuntėjas', 'Siuntos numeris 0081 3321'],
    ['Feladó', 'Csomagszám: 7731 0028'],
    ['Expeditor', 'Greutate: 2,1 kg'],
    ['Pošiljatelj', 'Teža 2,1 kg'],
    ['Από', 'Αριθμός αποστολής EX 991'],
    ['Від кого', 'Відправник', 'Номер посилки 2045 0001'],
    ['Кому', 'Номер отправления 2045 0001'],
    ['Подател', 'Тегло 2,1 кг'],
    ['Kimden', 'Takip no 2031 7781'],
    ['נמען', 'משקל 2.1'],
    ['المستلم', 'الوزن 2.1'],
    ['ผู้รับ', 'น้ำหนัก 2.1'],
    ['Người nhận', 'Mã vận đơn 88120'],
    ['ご依頼主', '追跡番号 4400-1283'],
    ['收件', '运单号 88120331'],
    ['받는 분', '운송장번호 4400-1283'],
  ])("knows a label's words in many languages: %s, %s", (...lines) => {
    expect(said([...lines.map((line) => phrase(line)), BODY]).labelWords).toBeGreaterThanOrEqual(2);
  });

  it('takes the commonest words for from and to only where they stand alone', () => {
    expect(said([phrase('Von:'), phrase('AN'), BODY]).labelWords).toBe(2);
    expect(said([phrase('An apple a day'), phrase('Von Hand gemacht'), phrase('Do it'), phrase('De luxe')]).labelWords).toBe(0);
  });

  it.each(['Potwierdzenie dla nadawcy', 'Absenderbeleg', 'Avsändarens kopia', 'Lähettäjän kappale', 'Feladóvevény', 'Расписка', '寄件联'])(
    'is a receipt in many languages: %s',
    (title) => {
      expect(said([phrase(title, 14), BODY]).names[0]?.kind).toBe('receipt');
    },
  );

  it('counts the characters of what is written', () => {
    expect(said([])).toEqual({ names: [], labelWords: 0, characters: 0 });
    expect(said([phrase('abc'), phrase('de')]).characters).toBe(5);
  });

  it('looks only at what lies inside a box', () => {
    const box = { x: 0, y: 0, width: 400, height: 50 };
    const phrases = [phrase('Packing slip', 18, 10), phrase('Invoice', 18, 100), phrase('Voucher', 18, 45)];
    expect(saidIn(phrases, box).names.map(({ kind }) => kind)).toEqual(['packing-slip']);
  });
});

describe('the vocabulary', () => {
  it.each(KINDS)('of %s is folded already, and each phrase is found when it stands alone', (kind) => {
    expect(PHRASES[kind].filter((words) => folded(words) !== words.trim())).toEqual([]);
    const missed = PHRASES[kind].filter((words) => {
      const { names, labelWords } = said([phrase(words.trim().toLocaleUpperCase('en'), 20), BODY]);
      return kind === 'label' ? labelWords === 0 : !names.some((name) => name.kind === kind);
    });
    expect(missed).toEqual([]);
  });

  it('folds case, accents, ligatures of spelling and white space', () => {
    expect(folded('  Große\u00a0 ÉTIQUETTE\tÆrø Łódź ')).toBe('grosse etiquette æro lodz');
  });
});
