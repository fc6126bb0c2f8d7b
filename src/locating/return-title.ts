import { RETURN, RETURN_LABEL } from './return-words.js';
import { folded } from './vocabulary.js';

/**
 * Lines with a return label's words that say something else: what the carrier does with a parcel that it can't deliver, where the sender lives, that a
 * return label lies in the parcel. Folded; those that are not English, German or French are from memory.
 */
const OTHER =
  /return (?:service|postage)s? (?:requested|guaranteed)|undeliver|non-delivery|not delivered|unzustellbar|(?:an|zum) absender|expediteur|remitente|mittente|afzender|remetente|avsandare|avsender|afsender|nadawc|lahettajal|odesilatel|odosielatel|felado|expeditor|posiljatelj|enclosed|included|inside|beigelegt|liegt bei|beiliegend|im paket|inclus|ci-joint|a l'interieur|incluid|adjunt|allegat|bijgevoegd|ingesloten|medfolj|vedlagt|w paczce|dolaczon|mukana|v baliku|mellekel|policy|address|adres/;

const STRONG: ReadonlySet<string> = new Set(RETURN_LABEL);
/** The longest first, so that nothing of a longer one is left over. */
const ALL = [...RETURN_LABEL, ...RETURN].sort((a, b) => b.length - a.length);

/**
 * Whether a line that holds words of a return label calls something one. Words that nothing else has do; those that may also head a section or stand beside a box to
 * tick only alone in their line, perhaps in several languages, in capitals or larger type.
 * @param words from the vocabulary, as they stand in the line
 */
export function isReturnTitle(words: string, text: string, heading: boolean): boolean {
  const line = folded(text);
  if (OTHER.test(line)) return false;
  if (STRONG.has(words)) return true;
  const isLoud = heading || (isCapital(text) && words !== 'return' && words !== 'returns');
  if (!isLoud) return false;
  const about = new RegExp(`^${words}\\s*[:\\-\\u2013\\u2014|(]`).test(line);
  return (heading && about) || isOnlyReturn(text);
}

/** Whether a line begins with words that nothing but a return label has, and is no sentence: "Return label for your buyer". */
export function beginsAsReturn(text: string): boolean {
  const line = folded(text);
  return !OTHER.test(line) && !/[.!?]$/.test(line) && RETURN_LABEL.some((words) => line.startsWith(`${words} `));
}

/** Whether words of a return label are all that a line says. */
export function isOnlyReturn(text: string): boolean {
  const line = folded(text);
  const rest = ALL.reduce((left, each) => left.replaceAll(each, ' '), line);
  return rest !== line && !/\p{L}/u.test(rest);
}

const isCapital = (text: string): boolean => text === text.toLocaleUpperCase('en') && text !== text.toLocaleLowerCase('en');
