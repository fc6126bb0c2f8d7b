import { RETURN, RETURN_LABEL } from './return-words.js';
import { folded } from './vocabulary.js';

/** `Your label` at the head of a line, by a word that is nobody's name: a label doesn't speak to its sender. All but English, German and French are from memory, as below. */
const YOUR = /^(?:[^\d:]{2,30} [-–—|:] )?(?:here is |das ist |hier ist |voici )?(?:your|ihre?|deine?|votre|jouw|twoj[ae]?|tvuj)\b/;
/** The same by words that may be names where a capital follows. */
const YOUR_OR_NAME = /^(?:vos|ton|tu|su|uw|je|(?:il )?tuo|(?:la )?tua|din|ditt?|vase?|(?:o )?seu|(?:a )?sua)(?= )/;
/** What a page calls what is on it. */
const WHAT =
  /label|eti[kqc]|etyk|stitek|naklej|lipuk|cimke|versand|paket|paquet|pakk|packet|parcel|package|colis|envoi|envio|invio|spedizion|retour|return|rucksend|sendung|sending|zending|forsend|przesyl|zasilk|shipping|postage|porto|affranch|franqueo|franker|brief/;
/** What is done with a printed page, by words that may be names where a capital follows. */
const DO =
  /^(?:[^\d:]{2,30} [-–—|] )?(?:please |bitte |hier |here |por favor |s'il vous plait |para |pour |zum |a )*(?:cut|trim|print|fold|tear|peel|stick|affix|attach|tape|glue|decoupe[rz]|imprime[rz]|colle[rz]|plie[rz]|detache[rz]|recort[ae]r?|corte|imprim[ae]|imprimir|pegu?e|pegar|doble|doblar|despegue|cole|colar|dobre|dobrar|destaque|ritagli[ao]|ritagliare|stamp[ai]|stampare|incoll[ai]|incollare|pieg[ah]i?|piegare|knip|plak|vouw|scheur|klipp?|skriv ut|udskriv|fast|klaeb|vik|brett|wytnij|odetnij|wydrukuj|naklej|zegnij|oderwij|vystrihnete|odstrihnete|vytisknete|nalepte|leikkaa|tulosta|liimaa|taita|vagja|nyomtassa|ragassza)(?= |$)/;
/** In German at the end of what is said. */
const DO_IN_GERMAN = /\b(?:ausschneiden|abtrennen|heraustrennen|abschneiden|aufkleben|ausdrucken)\b/;
/** What is done with the parcel, which a label on it doesn't say; in English, German and French. */
const WITH_PARCEL =
  /^(?:then |please |bitte |puis )?(?:(?:bring|take|drop(?: off)?|hand(?: in)?|carry|leave) (?:the|your|this) (?:parcel|package|packet|box)|(?:bringen|geben|legen|stellen) sie (?:das|ihr|dieses) (?:paket|packchen)|(?:deposez|apportez|remettez|portez) (?:le|votre|ce) colis)\b/;
/** `Print: 12.03.`, `Print date 12.03.` and all else that gives a number, but for `100 %`, is a field of something. */
const FIELD = /:.*\d|\d{2,}(?![\d ]*%)/;
/** A title or some sentences, no paragraph (characters). */
const LONGEST = 140;

/** Whether a line speaks to the one who holds the page: a title over a label, or what to do with it. */
export function speaksToReader(text: string): boolean {
  const line = folded(text);
  if (FIELD.test(line) || line.length > LONGEST) return false;
  if (DO_IN_GERMAN.test(line) || WITH_PARCEL.test(line) || (YOUR.test(line) && WHAT.test(line))) return true;
  const said = DO.exec(line)?.[0] ?? (WHAT.test(line) ? YOUR_OR_NAME.exec(line)?.[0] : undefined);
  return said !== undefined && /^[´`ˆ¨]?\p{Ll}/u.test(text.trim().split(/\s+/)[said.split(' ').length] ?? '');
}

/** What a label is called by the page around it. */
const LABEL = /\blabels?\b|etikett|etiquet|etiket|etichett|etykiet|stitek|cimke/;
/** Which order a page is for, perhaps after what it has ordered. */
const ORDER =
  /^(?:[^\d:]{2,40} [-–—|·:]+ )?(?:order|commande|bestellung|auftrag|pedido|ordine|bestelling|zamowienie|ordre|objednavka|encomenda|tilaus)\b.*\d/;
/** Which parcel or sheet of how many, from memory but for English, German and French. */
const SERIAL =
  /^(?:parcel|package|packet|carton|box|label|sheet|page|batch|paket|karton|etikett|blatt|seite|stapel|colis|feuille|lot|bulto|caja|hoja|lote|pakket|doos|blad|paczka|arkusz|strona|partia|kolli|pacco|foglio|pagina)\.?\s#?\d{1,4}(?=$|\s?(?:[-–—/:,·|]|(?:of|von|de|sur|van|z|di|av|af|fra)\b))/;

/** Whether a line counts a page's parcels or sheets, or says which order it is for, as what stands over a label does; a label may say so in itself. */
export function countsPage(text: string): boolean {
  const line = folded(text);
  return SERIAL.test(line) || ORDER.test(line);
}

/** A sentence has so many words at least (common practice, no source). */
const SENTENCE = /^\P{L}*\p{Lu}\p{Ll}*[,:;]?(?:[\s’'-]+[^\s]+){3,}[.!?]$/u;
/** Money, and the time of day behind its date, as pages are stamped when they are printed. */
const MONEY = /[€$£¥]\s?\d|\d[.,]\d\d\s?(?:[€£]|eur|usd|gbp|chf|kr)\b/;
const STAMP = /\d{2,4}[,\s]+\d{1,2}:\d{2}\b/;
/** "Thank you", for an order. */
const THANKS =
  /\b(?:thanks|thank you|merci|danke|dankt?|grazie|gracias|obrigad[oa]|bedankt|tack|tak|takk|dziekuj\w*|dekuj\w*|kiitos|koszon\w*)\b/;

/** Whether a line is a sentence; carriers' remarks on labels are some, too. */
export const isSentence = (text: string): boolean => SENTENCE.test(text.trim());

/** Whether a line is one of the page's rather than of a label on it: thanks, a sum of money, when it was printed, what to do with it. A label may have such a line, too. */
export function isPagesLine(text: string): boolean {
  const line = folded(text);
  return THANKS.test(line) || MONEY.test(line) || STAMP.test(line) || speaksToReader(text);
}

const RETURNS = [...RETURN_LABEL, ...RETURN];

/** Whether a line says what is on a page, "Thistle & Tin label", or which order it is for; a label calls itself one only as a return label. */
export function namesLabel(text: string): boolean {
  const line = folded(text);
  return ORDER.test(line) || (LABEL.test(line) && /\s/.test(line) && !RETURNS.some((words) => line.includes(words)));
}
