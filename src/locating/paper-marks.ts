import { bottom, contains, right } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { RuledLine } from '../reading/ruled.js';
import type { Phrase } from '../reading/word-lines.js';
import type { SaidCandidate } from './page-facts.js';
import { WITHOUT_LABEL } from './receipt-words.js';
import { folded } from './vocabulary.js';

/** A place to write in, drawn as type. */
const BLANK = /_{4,}/;
/** One drawn as a rule is this long at least, and begins so near behind its word, pt (15 and 6 mm; common practice, no source). */
const RULE = { long: mmToPt(15), behind: mmToPt(6) };
/** A rule to write on lies no farther from the foot of its word than this, pt. */
const ON_FOOT = 4;
/** What is written there on papers, and on labels, too: who took a parcel, and when. From memory but for English, German and French. */
const FILLED_IN = /^(?:name|time|driver|print name|ort|uhrzeit|nom|heure|nombre|hora|nome|ora|naam|tijd)\b\W*$/;
const TAKEN =
  /\b(?:sign(?:ed|ature)?|received by|recipient|date|unterschrift|empfanger|datum|signature|destinataire|firma|fecha|destinatario|assinatura|recebedor|documento|data|handtekening|ontvanger|podpis|odbiorca|underskrift|namnteckning|allekirjoitus|alairas)\b/;
/** Words that are quoted are cut to this, characters. */
const FEW = 24;

/**
 * Who stands on bills, tickets and forms, alone in a line above a name; on labels they send and receive. Folded; all but the English, German and French ones from memory.
 */
const OTHER_PARTIES: readonly string[] = [
  'sold to',
  'invoice to',
  'remit to',
  'remittance to',
  'pay to',
  'supplied by',
  'supplied to',
  'from location',
  'to location',
  'held at',
  'owner',
  'owner of the goods',
  'hirer',
  'insured',
  'policyholder',
  'vendor',
  'payee',
  'member',
  'rechnung an',
  'kaufer',
  'verkaufer',
  'zahlungsempfanger',
  'acheteur',
  'vendeur',
  'facture a',
  'tienda',
  'comprador',
  'vendedor',
  'acquirente',
  'venditore',
  'intestato a',
  'eseguito da',
  'a favore di',
  'koper',
  'verkoper',
];

/** What papers say of themselves or of what is done with them, and a label doesn't. Folded; all but the English, German and French ones from memory. */
const REMARKS = new RegExp(
  [
    // Who keeps it, and that it goes with no parcel, or into one.
    'keep (?:this|it)\\b|(?:keep|retain) for your records|for your records|(?:customer|client) to keep|to keep\\.|with your (?:inspection )?papers',
    'inside the (?:parcel|package|packet|box|carton)|in(?:to)? the (?:parcel|box|carton),|not for the (?:parcel|package)|not (?:be )?sent with|not a (?:shipping )?label|not an invoice',
    'in (?:den|das) (?:karton|paket) legen|(?:dem|im) paket bei(?:legen|zulegen)|nicht (?:auf das paket )?(?:auf)?kleben|fur ihre unterlagen|kein versandetikett',
    'a (?:garder|conserver)\\b|ne (?:se colle|pas coller)|exemplaire (?:du|de la|de l)\\b|dans le (?:colis|carton),|a joindre au colis|a glisser dans',
    'dentro de la caja|dentro del paquete|no pegar|ejemplar para|nella scatola|nel pacco|non incollare|da conservare|in de doos|in het pakket|niet plakken|bewaar dit',
    // What has happened to a parcel, and who says so.
    'proof of (?:posting|postage|delivery|shipment|purchase|age|payment)|postage receipt|received in good|goods received|in good order|released by|accepted undamaged|left: ?\\p{L}|collected from',
    'ware erhalten|erhalten am|recu par|recu le|recibido por|ricevuto da|ontvangen door|legitimatie|gemist',
    // Guarantee, repair, payment.
    '(?:warranty|guarantee) (?:of|for|card|period)|garantie (?:de|von|fur)\\b|garantia de|garanzia di|refundable|redeem|repair (?:ticket|tag|order|job)|your che(?:ck|que)\\b|che(?:ck|que) enclosed|on the che(?:ck|que)\\b|prepaid card|excess:',
    'gutschrift|creditnota|nota de credito|avoir n|total ttc|ricevuta di|bollettino|versamento',
  ]
    .map((each) => `(?:${each})`)
    .join('|'),
  'u',
);
/** What such papers call themselves, wherever that stands. */
const NAMES = new RegExp(`(?<!\\p{L})(?:${WITHOUT_LABEL.join('|')})(?!\\p{L})`, 'u');
/** A sum of money that is owed or left as a deposit; what postage was paid stands on labels, too. */
const SUM =
  /\b(?:totals?|totaal|totale|gesamt|summe|balance|deposit|estimate|amount due|importo|bedrag|betrag)\b[^\d]{0,8}\d[\d.,]*[.,]\d\d(?!\d| ?(?:kg|lb|oz))/;

/**
 * What stands on a candidate that papers have and labels don't: a place to write in, whose bill or ticket it is, what is done with it, a sum. In words for people; undefined where nothing does. A customs
 * declaration that is a part of the label has boxes and sums of its own.
 * @param phrases those on the candidate
 * @param addressed those of them that are lines of an address: whoever sends parcels may be called anything
 * @param lines all ruled lines of the page, pt
 */
export function paperMark(
  { declares, box }: Pick<SaidCandidate, 'declares' | 'box'>,
  phrases: readonly Phrase[],
  lines: readonly RuledLine[],
  addressed: readonly Phrase[] = [],
): string | undefined {
  const rules = lines.filter(({ level, dashed, box: rule }) => level && !dashed && rule.width >= RULE.long && contains(box, rule, 2));
  for (const phrase of phrases) {
    const line = folded(phrase.text);
    const isAddress = addressed.includes(phrase);
    if ((BLANK.test(line) && !TAKEN.test(line)) || (declares !== true && FILLED_IN.test(line) && isBeforeRule(phrase, rules)))
      return `a place to write in, "${shortened(phrase.text)}"`;
    if (OTHER_PARTIES.includes(line.replace(/[\s:]+$/, ''))) return `"${phrase.text.trim()}" above a name`;
    if (!isAddress && (NAMES.test(line) || REMARKS.test(line) || (declares !== true && SUM.test(line))))
      return `"${shortened(phrase.text)}"`;
  }
  return undefined;
}

const shortened = (text: string): string => (text.length > FEW ? `${text.slice(0, FEW).trim()}…` : text.trim());

/** Whether a rule to write on begins right behind a word. */
const isBeforeRule = ({ box, turn }: Phrase, rules: readonly RuledLine[]): boolean =>
  turn === 0 &&
  rules.some(({ box: rule }) => {
    const behind = rule.x - right(box);
    return behind >= -1 && behind <= RULE.behind && Math.abs(rule.y - bottom(box)) <= ON_FOOT;
  });
