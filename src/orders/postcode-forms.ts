import { postcodeKey } from './postcode.js';

/** In front of a postcode, folded: the country's letters with a hyphen, or Japan's sign. */
const COUNTRY = '(?:[a-z]{1,3}-)?';

/** Forms that hardly anything else on a label has. Examples of most stand in test/outside/postcodes.test.ts with their sources; the rest from memory. */
const PLAIN = [
  // Great Britain, six forms.
  '[a-z]{1,2}\\d[a-z\\d]? ?\\d[a-z]{2}',
  // Canada.
  '[a-z]\\d[a-z][ -]?\\d[a-z]\\d',
  // Ireland.
  '(?:[a-z]\\d{2}|d6w) ?(?=[a-z\\d]*[a-z])[a-z\\d]{4}',
  // Poland; Portugal; Brazil; United States with four more digits.
  '\\d{2}-\\d{3}',
  '\\d{4}-\\d{3}',
  '\\d{5}-\\d{3,4}',
  '〒 ?\\d{3}-?\\d{4}',
].join('|');

/** Forms that count only beside a town: alone they may be a number of any kind. */
const BESIDE_TOWN = '\\d{5,6}';
/** Those that count only in front of one: the Netherlands; Sweden and others. */
const BEFORE_TOWN = ['\\d{4} ?[a-z]{2}', '\\d{3} \\d{2}'].join('|');
const TOWN = '\\p{L}{3}';

const AT_START = new RegExp(`^(${COUNTRY}(?:${PLAIN}))(?=$|[ ,])|^(${COUNTRY}(?:${BESIDE_TOWN}|${BEFORE_TOWN}))(?=,? ${TOWN})`, 'u');
const AT_END = new RegExp(`(?<=^|[ ,])(${COUNTRY}(?:${PLAIN}))$|(?<=${TOWN}.*[ ,])(${COUNTRY}(?:${BESIDE_TOWN}))$`, 'u');

/**
 * What a folded line of an address begins or ends with, where that has the form of some country's postcode and hardly is anything else; as `postcodeKey`
 * has it. Four digits are a year or a house number as often, three and four a telephone number: such forms are not among them.
 */
export function writtenPostcodes(line: string): readonly string[] {
  if (!/\d/.test(line)) return [];
  return [AT_START, AT_END].flatMap((pattern) => {
    const match = pattern.exec(line);
    const written = match?.[1] ?? match?.[2];
    return written === undefined ? [] : [postcodeKey(written)];
  });
}
