import type { FoldedLine } from './fold.js';

/** Which of how many parcels a label says that it is, both from 1. */
export interface ParcelOf {
  readonly number: number;
  readonly of: number;
}

const PARCEL =
  '(?:parcels?|packages?|pkgs?|pieces?|pcs?|boxe?s?|cartons?|pakete?|packstuck|karton|colis|paquets?|bultos?|paquetes?|colli|collo|pacco|pacchi|pakket|doos|kolli|paket|paczka|balik|место|посылка|упаковка)';
const OF = '(?:of|von|de|sur|di|van|af|av|z|из)';
const BEHIND_WORD = new RegExp(
  `(?<![\\p{L}\\p{N}])${PARCEL}[ .:#]*(?:(?:no|nr)[ .:]*)?(\\d{1,2}) ?(?:${OF}|/) ?(\\d{1,2})(?![\\d.,/-])`,
  'gu',
);
/** Looked for first: few lines have it. */
const COUNTED = new RegExp(`\\d ?(?:${OF}|/) ?\\d`, 'u');
const AT_END = new RegExp(`(?:^| )(\\d{1,2}) ${OF} (\\d{1,2})$`, 'u');
/** What else is counted so on labels. */
const OTHER =
  /(?<!\p{L})(?:pages?|pg|cop(?:y|ies)|sheets?|labels?|items?|seiten?|blatt|kopie|page|feuille|pagina|hoja|foglio|blad)(?!\p{L})/u;

/**
 * Which of how many parcels a label says that it is: `parcel 1 of 2`, `Paket 1/2`, or `1 of 2` at the end of a line that counts nothing else (pages,
 * copies). Undefined without such words, where several say different things, and where the numbers can't be. Which words: common practice, no source.
 */
export function parcelOf(lines: readonly Pick<FoldedLine, 'text'>[]): ParcelOf | undefined {
  const said = new Map<string, ParcelOf>();
  for (const { text } of lines) {
    if (!COUNTED.test(text)) continue;
    const atEnd = OTHER.test(text) ? null : AT_END.exec(text);
    for (const match of [...text.matchAll(BEHIND_WORD), ...(atEnd ? [atEnd] : [])]) {
      const [number, of] = [Number(match[1]), Number(match[2])];
      if (number >= 1 && number <= of) said.set(`${number} ${of}`, { number, of });
    }
  }
  const [only, ...more] = said.values();
  return more.length === 0 ? only : undefined;
}
