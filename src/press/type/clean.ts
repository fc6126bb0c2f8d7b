import { createRequire } from 'node:module';
import { faceFor } from './faces.js';
import type { Han } from './han.js';

/** More marks than this on one character are no writing: they would run over the lines above and below. */
const MOST_MARKS = 6;

/** Takes a warning; the same words twice are one warning. */
export type Warn = (text: string) => void;

const require = createRequire(import.meta.url);
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Printed as it stands in the Latin face, whatever stands beside it: no need to look at it character by character. */
const PLAIN = /^[\x20-\x7e\u00a0-\u00ac\u00ae-\u017f\u2013\u2014\u2018-\u201e\u2026\u20ac]*$/;

/** Told apart by nobody who reads it: they order text, join letters or allow a break, and have no ink. */
export const WITHOUT_INK = /^[\u034f\u061c\u200b-\u200f\u2060-\u2069\ufeff\ufe00-\ufe0f\u{e0100}-\u{e01ef}]$/u;

/**
 * The paragraphs of a text as they can be set: composed (NFC), without control characters, and with what no typeface has named in brackets.
 * @returns at least one paragraph; empty ones are kept, as they part what stands around them
 */
export function cleanParagraphs(text: string, han: readonly Han[], warn: Warn): readonly string[] {
  return text.split(/\r\n|[\n\r\v\f\u0085\u2028\u2029]/).map((paragraph) => cleanLine(paragraph, han, warn));
}

/** As `cleanParagraphs`, for what is printed as one paragraph: line ends become spaces. */
export const cleanText = (text: string, han: readonly Han[], warn: Warn): string =>
  cleanParagraphs(text, han, warn)
    .filter((each) => each !== '')
    .join(' ');

function cleanLine(text: string, han: readonly Han[], warn: Warn): string {
  const composed = spaced(text.normalize('NFC'));
  if (PLAIN.test(composed)) return composed;
  let clean = '';
  for (const { segment } of graphemes.segment(composed)) clean += PLAIN.test(segment) ? segment : cleanCluster(segment, han, warn);
  // What is left out may have kept apart what is one now.
  return marksInOrder(spaced(clean.normalize('NFC')));
}

/** One space for any number of them; those that no line may be broken at stay what they are. */
const spaced = (text: string): string =>
  text
    .replaceAll('\u202f', '\u00a0')
    .replace(/[\t\u1680\u2000-\u200a\u205f\u3000 ]+/g, ' ')
    .trim();

function cleanCluster(cluster: string, han: readonly Han[], warn: Warn): string {
  const picture = pictureName(cluster);
  if (picture !== undefined) {
    warn(`No typeface here has ${named(picture)}: its name is printed in brackets.`);
    return named(picture);
  }
  let clean = '';
  let marks = 0;
  for (const char of cluster) {
    if (/\p{M}/u.test(char)) marks += 1;
    if (/[\p{Cc}\u00ad\ufeff\ufe00-\ufe0f\u202a-\u202e\u{e0100}-\u{e01ef}]/u.test(char)) {
      // An override can turn a whole line round; soft hyphens and variants of form change nothing that is printed here.
      if (/\p{Cc}/u.test(char)) warn(`A control character (${codePointOf(char)}) is left out.`);
    } else if (WITHOUT_INK.test(char)) clean += char;
    else if (marks > MOST_MARKS && /\p{M}/u.test(char))
      warn(`A character carries more than ${MOST_MARKS} marks: the rest of them are left out.`);
    else if (faceFor(char, 'regular', han)) clean += char;
    else {
      const name = named(codePointOf(char));
      warn(`No typeface here has ${name}: its number is printed in brackets.`);
      clean += name;
    }
  }
  return clean;
}

/**
 * Shadda stands nearest to its letter, under its vowel. NFC puts it behind (canonical class 33 after 27 to 32); UTR 53 and the Arabic shaper want it before (from
 * memory; compared with HarfBuzz's drawing).
 */
const marksInOrder = (text: string): string => text.replace(/([\u064b-\u0650\u08f0-\u08f2]+)\u0651/g, '\u0651$1');

const named = (name: string): string => `[${name}]`;

/** A lone half of a pair has a code point too. */
const codePointOf = (char: string): string => `U+${(char.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;

let pictures: Readonly<Record<string, { readonly name: string }>> | undefined;

const SKIN_TONES = /[\u{1f3fb}-\u{1f3ff}]/gu;
/** Asks for the coloured picture where a character has a plain form too. */
const AS_PICTURE = '\ufe0f';

/** The name of an emoji, however many characters it is made of; undefined for other text, and for what a face has as plain black. */
function pictureName(cluster: string): string | undefined {
  if (!/[\p{Extended_Pictographic}\p{Regional_Indicator}\u20e3]/u.test(cluster)) return undefined;
  const [char = ''] = cluster;
  const alone = cluster === char || cluster === char + AS_PICTURE;
  if (alone && faceFor(char, 'regular', ['kr', 'jp', 'sc', 'tc'])) return undefined;
  // Most slips have none of them.
  pictures ??= require('unicode-emoji-json/data-by-emoji.json') as Record<string, { readonly name: string }>;
  const bare = cluster.replace(SKIN_TONES, '');
  const plain = bare.replaceAll(AS_PICTURE, '');
  return [bare, plain, plain + AS_PICTURE, bare.replace(/^(.)/u, `$1${AS_PICTURE}`)]
    .map((each) => pictures?.[each]?.name)
    .find((name) => name);
}
