/** A line of an address has no more digits; one with more has a number of another kind in it. */
const MOST_DIGITS = 10;
/** … and no more characters. */
const MOST_CHARACTERS = 60;

/** Scripts that write a name in one or two signs and set no blanks. */
export const CJK = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u;
/** A line with a name in it: two letters in a row, of any script. */
const NAME = new RegExp(`\\p{L}{2}|${CJK.source}`, 'u');
/** A house's number at either end of a street, or in a line of digits and ideographs. */
const STREET =
  /^\p{L}{0,2}\.?\s?\d{1,5}(?:[-/]\d{1,4})?[a-z]?[,.]?\s+(?:[NESW]\.?\s+)?\p{L}{2}|\p{L}[.,]?\s+(?:(?:n[o°º.]|№|nr|br)\.?[:.]?\s*)?[A-Z]?\d{1,4}(?:\s?[-/]\s?\d{1,4})?\s?(?:[a-z]|bis|ter|quater|-[ivx]{1,4})?[.,]?$|[\p{Script=Han}\p{Script=Hangul}].*\d/iu;
/** Three to nine digits, perhaps in two groups, more than five of them with no letters before, or letters and digits as some countries mix them; with the name of a town, or alone. */
const POSTCODE =
  /(?<![\d.,:/−-])(?:\d{3,5}|(?<!\p{L})\d{6,7}|\d{2,5}[ -]\d{2,4}|[A-Z]{1,2}\d[A-Z\d]? ?\d[A-Z]{2}|[A-Z]\d[A-Z] ?\d[A-Z]\d)(?![\d.,:/−-]*\d)/u;
/** One that nothing but a postcode is: letters and digits in turn (GB, Canada, Ireland), a country's sign before it, or its name. */
const NAMED_POSTCODE =
  /(?:^|[\s,(])(?:[A-Z]{1,2}\d[A-Z\d]? \d[A-Z]{2}|[A-Z]\d[A-Z] \d[A-Z]\d|[AC-FHKNPRTV-Y]\d[\dW] [0-9AC-FHKNPRTV-Y]{4}|[A-Z]{2}-\d{3,4}-\d{4})\)?$|(?:^|[\s,(])[A-Z]{1,3}-\d{4,5}\s+\p{L}{2}|\p{L}{2}.*[\s,][A-Z]{1,3}-\d{4,6}$|(?:^|[\s,(])(?:c\.\s?p\.?|cp|cep|pin(?: ?code)?|plz|zip(?: code)?|post ?code|postal code|c[oó]d(?:igo|\.)? postal|индекс)[\s.:-]+\d{2,3}(?:\s?[\d-]){2,6}(?![\d-])|〒\s?\d{3}-?\d{4}|(?:邮编|邮政编码|郵遞區號|우편번호)\s?[:：]?\s?\d{3,6}/iu;
/** A flat or a plot after the house's number. */
const UNIT_BEHIND = /\s+(?:#|d:)\s?[\w-]+(?:\s?-\s?\d+)?$/iu;
/** … or before the street, instead of the house's number. */
const UNIT_BEFORE = /^(?:unit|suite|studio|shop|block|building|warehouse)\s[A-Z]?\d{1,4}[A-Z]?,?\s+\p{L}{2}/iu;
/** What stands on bills, tickets and notices, but in no address: an amount, a time, a date, a share, a sentence. */
const NO_ADDRESS =
  /[€$£¥%=!?;@]|\d\d?[:.]\d\d\b|\d\d?[./]\d\d?[./]\d{2,4}|https?:|www\.|^\d+\s?[x×]\s|(?<!\p{L})(?!n[or]:)\p{L}{2,}:\s*\S|\p{L}\d{5,}|\d{5,}\p{L}/iu;

export const digitsIn = (text: string): number => text.replaceAll(/\D/g, '').length;

export const hasName = (text: string): boolean => NAME.test(text);

/** Whether a line has a house's number. */
export const isStreet = (text: string): boolean => STREET.test(text);

/** Whether a line has a house's number with something behind it: a quarter, a floor, a flat; what is counted or weighed is none. A town must follow such a line. */
export function isStreetAndMore(text: string): boolean {
  if (text.length > MOST_CHARACTERS || NO_ADDRESS.test(text)) return false;
  const plain = text.replace(UNIT_BEHIND, '');
  return [text, plain, ...plain.split(/[,،、]\s*/u)].some((part) => UNIT_BEFORE.test(part) || (STREET.test(part) && !MEASURE.test(part)));
}
/** "300 ml", "24 kg". */
const MEASURE = /^\d+\s?\p{L}{1,3}$/u;

/** Whether a postcode stands in a line. */
export const isTown = (text: string): boolean =>
  (POSTCODE.test(text) && digitsIn(text) <= MOST_DIGITS && !DATE.test(text)) || isNamedPostcode(text);
/** "14 May 2026": a year is no postcode. */
const DATE = /^\d{1,2}\.?\s(?:de\s)?\p{L}{3,10}\.?\s(?:de\s)?20\d\d$/u;

/** Whether a postcode stands in a line that can't be another number. */
export const isNamedPostcode = (text: string): boolean => text.length <= MOST_CHARACTERS && NAMED_POSTCODE.test(text);

/** Whether a line may be one of an address by how it is written, with or without numbers. */
export const isAddressLine = (text: string): boolean =>
  hasName(text) && text.length <= MOST_CHARACTERS && digitsIn(text) <= MOST_DIGITS && !NO_ADDRESS.test(text) && !NUMBERED.test(text);
/** What says that its number is another one. */
const NUMBERED = /(?<!\p{L})(?:number|nummer|num[eé]ro|n[uú]mero|locker|counter|order)(?!\p{L})/iu;

/** A whole address in one line, as China, Korea and Japan write it: the province or town, the street or quarter, and a number. */
export const isWholeAddress = (text: string): boolean => text.length <= MOST_CHARACTERS && EAST.test(text);
const EAST =
  /\p{Script=Han}{2,}[省市州][^\d]*[区區县縣市镇鎮].*\d+\s?(?:号|號|弄|栋|室|楼)|\p{Script=Han}{2,}[市縣县区區].*[路街道巷弄].*\d+\s?(?:号|號)|[都道府県].*[市区郡町村].*\d|[시도]\s.*[구군시]\s.*[로길동리]\s?\d/u;
