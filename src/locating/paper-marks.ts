import { bottom, contains, right } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { RuledLine } from '../reading/ruled.js';
import type { Phrase } from '../reading/word-lines.js';
import type { SaidCandidate } from './page-facts.js';
import { RECEIPT } from './receipt-words.js';
import { folded } from './vocabulary.js';

/** Names of papers that labels have in their lines, too. */
const ON_LABELS: readonly string[] = ['beleg', 'receipt', 'kvittering'];

/** The source of an expression for what begins a word. */
const atWord = (parts: readonly string[]): string => `(?<!\\p{L})(?:${parts.join('|')})`;

/** A place to write in, drawn as type. */
const BLANK = /_{4,}/;
/** One drawn as a rule is this long at least, and begins so near behind its word, pt (15 and 6 mm; common practice, no source). */
const RULE = { long: mmToPt(15), behind: mmToPt(6) };
/** A rule to write on lies no farther from the foot of its word than this, pt. */
const ON_FOOT = 4;
/** What is written on such a rule on papers; from memory but for English, German and French, as below. */
const FILLED_IN = /^(?:name|time|driver|print name|ort|uhrzeit|nom|heure|nombre|hora|nome|ora|naam|tijd)\b\W*$/;
/** What is written in such a place on labels, too: who took a parcel, and when. */
const TAKEN =
  /\b(?:sign(?:ed|ature)?|received by|recipient|date|unterschrift|empfanger|datum|signature|destinataire|firma|fecha|destinatario|assinatura|recebedor|documento|data|handtekening|ontvanger|podpis|odbiorca|underskrift|namnteckning|allekirjoitus|alairas)\b/;

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
  'guest',
  'traveller',
  'passenger',
  'lent by',
  'lent to',
  'given out to',
  'made by',
  'sold by',
  'paid in by',
  'ordered by',
  'insured (sender)',
  'insured',
  'policyholder',
  'vendor',
  'payee',
  'member',
  'rechnung an',
  'kaufer',
  'verkaufer',
  'zahlungsempfanger',
  'zahler',
  'zahlungspflichtiger',
  'ausgeliehen an',
  'acheteur',
  'debiteur',
  'creancier',
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

/** What papers say of themselves or of what is done with them, beside their names, and a label doesn't. Folded; all but the English, German and French ones from memory. */
const REMARKS = new RegExp(
  atWord([
    // Who keeps it, and that it goes with no parcel, or into one.
    'keep (?:this|it)\\b|(?:customer|client) to keep|to keep\\.|with your (?:inspection )?papers',
    'inside the (?:parcel|package|packet|box|carton)|in(?:to)? the (?:parcel|box|carton),|not for the (?:outside of the )?(?:parcel|package)|nothing to stick|pays no postage|(?:does not|not to) travel with|sender keeps|not (?:be )?sent with|not a (?:shipping )?label|not an invoice',
    'in (?:den|das) (?:karton|paket) legen|(?:dem|im) paket bei(?:legen|zulegen)|nicht (?:auf das paket )?(?:auf)?kleben|kein versandetikett|nicht angetroffen|am gerat\\b',
    'a (?:garder|conserver)\\b|ne (?:se colle|pas coller)|exemplaire (?:du|de la|de l)\\b|dans le (?:colis|carton),|a joindre au colis|a glisser dans',
    'dentro de la caja|dentro del paquete|no pegar|ejemplar para|nella scatola|nel pacco|non incollare|da conservare|in de doos|in het pakket|niet plakken|bewaar dit',
    // What has happened to a parcel, and who says so.
    'proof of (?:purchase|age)|received in good|goods received|in good order|released by|accepted undamaged|left: ?\\p{L}|collected from|delivery confirmed|signed by \\(|leave this copy|hand (?:this|the) half|credit note',
    'ware erhalten|erhalten am|recu par|recu le|recibido por|ricevuto da|ontvangen door|legitimatie|gemist',
    'you were out|identity document|signed for by|retains? this (?:part|copy)|(?:gut |bitte )?aufbewahren|conservelo|conservez-le|do not tape it|opgehaald|stock movement',
    // What a paper is, in a line of other words; a return receipt is a service.
    '(?<!return )receipt(?!s?,? (?:requested|required))\\b|(?:loan|deposit|paying-in) slip|collection note|(?:price|season|gate|claim) ticket|ticket (?:for|office)|per cent off|seat \\d|passengers?\\b',
    // Guarantee, repair, payment.
    '(?:warranty|guarantee) (?:of|for|card|period)|garantie (?:de|von|fur)\\b|garantia de|garanzia di|(?:non-|non)?refundable|redeem|repair (?:tag|job)|your che(?:ck|que)\\b|che(?:ck|que) enclosed|on the che(?:ck|que)\\b|prepaid (?:card|voucher)|excess:|held covered|evidence of cover|no cash back',
    'gutschrift|creditnota|nota de credito|avoir n|total ttc|bollettino|versamento|zahlschein|mietschein|talon (?:a|de)\\b|comprobant|justificant|afhaalbewijs',
  ]),
  'u',
);
/** What such papers call themselves, wherever that stands, but for what labels say, too: "Beleg 4711", "Return receipt requested", "Niet thuis? Bij de buren". */
const NAMES = new RegExp(`${atWord(RECEIPT.filter((name) => !ON_LABELS.includes(name)))}(?!\\p{L}|\\?)`, 'u');
/** What a customs form has its sender say; from memory but for English, German and French. */
const DECLARED = /\bundersigned\b|\bsoussigne|\bunterzeichne|\binfrascrit|\bsottoscritt|\bondergetekende/;
/** A sum of money that is owed or left as a deposit; what postage was paid stands on labels, too. */
const SUM =
  /\b(?:totals?|totaal|totale|gesamt|summe|balance|deposit|estimate|amount due|importo|bedrag|betrag|montant|kaution|importe|restbetrag)\b[^\d]{0,8}\d[\d.,]*[.,]\d\d(?!\d| ?(?:kg|lb|oz))/;

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
    if ((BLANK.test(line) && !TAKEN.test(line)) || (declares !== true && FILLED_IN.test(line) && isBeforeRule(phrase, rules)))
      return 'a place to write in';
    const party = line.replace(/[\s:]+$/, '');
    if (OTHER_PARTIES.includes(party)) return `"${party}" above a name`;
    if (addressed.includes(phrase)) continue;
    const said = [NAMES, REMARKS, ...(declares === true ? [] : [SUM, DECLARED])].flatMap((each) => each.exec(line) ?? [])[0];
    // The words themselves and no more of their line: names may stand in it.
    if (said !== undefined) return `"${said.replace(/[^\p{L}\p{N}]+$/u, '')}"`;
  }
  return undefined;
}

/** Whether a rule to write on begins right behind a word. */
const isBeforeRule = ({ box, turn }: Phrase, rules: readonly RuledLine[]): boolean =>
  turn === 0 &&
  rules.some(({ box: rule }) => {
    const behind = rule.x - right(box);
    return behind >= -1 && behind <= RULE.behind && Math.abs(rule.y - bottom(box)) <= ON_FOOT;
  });
