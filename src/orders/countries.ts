import { iso31661 } from 'iso-3166';
import { plainWord } from './plain-word.js';

/** ISO 3166-1 alpha-2 by alpha-2 and alpha-3. Source: the package iso-3166, which takes them from the standard's online browsing platform. */
const CODES = new Map(iso31661.flatMap(({ alpha2, alpha3 }) => [[alpha2, alpha2] as const, [alpha3, alpha2] as const]));

const LANGUAGES = ['en', 'de', 'fr', 'es', 'it', 'nl', 'pt', 'pl', 'sv', 'da', 'nb', 'fi', 'cs', 'sk', 'hu', 'ro', 'el', 'ja'];

/** What people write and no list has. */
const ALSO: Readonly<Record<string, string>> = {
  uk: 'GB',
  'u k': 'GB',
  'great britain': 'GB',
  england: 'GB',
  scotland: 'GB',
  wales: 'GB',
  'northern ireland': 'GB',
  'u s': 'US',
  'u s a': 'US',
  'united states of america': 'US',
  'the united states': 'US',
  'the netherlands': 'NL',
  holland: 'NL',
  'republic of ireland': 'IE',
  'south korea': 'KR',
  'korea republic of': 'KR',
  'russian federation': 'RU',
  'viet nam': 'VN',
  'czech republic': 'CZ',
};

let names: ReadonlyMap<string, string> | undefined;

/** Codes by the names of countries in the languages above, as CLDR has them; a name that two languages give to two countries tells none. */
function countryNames(): ReadonlyMap<string, string> {
  if (names) return names;
  const found = new Map<string, string>();
  const clashes = new Set<string>();
  const english = new Set<string>();
  for (const language of LANGUAGES) {
    const display = new Intl.DisplayNames([language], { type: 'region', fallback: 'none' });
    for (const { alpha2, name } of iso31661) {
      for (const each of language === 'en' ? [display.of(alpha2), name] : [display.of(alpha2)]) {
        const word = plainWord(each ?? '');
        if (/^[a-z]{0,2}$/.test(word) || english.has(word)) continue;
        if ((found.get(word) ?? alpha2) !== alpha2) clashes.add(word);
        else found.set(word, alpha2);
      }
    }
    if (language === 'en') for (const word of found.keys()) english.add(word);
  }
  for (const word of clashes) found.delete(word);
  for (const [word, code] of Object.entries(ALSO)) found.set(word, code);
  names = found;
  return found;
}

/** The ISO 3166-1 alpha-2 code for a code or name of a country; undefined for a word that is none. */
export function countryCode(text: string): string | undefined {
  const word = text.trim();
  return CODES.get(word.toUpperCase()) ?? countryNames().get(plainWord(word));
}
