import { bottom, contains, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { addressBlocks } from './address-block.js';
import { inkBlobs } from './ink-blobs.js';
import { merge } from './ink-groups.js';
import { withoutSpecks } from './specks.js';
import { isSmallPaper } from './label-sizes.js';
import { hasSteps } from './list-of-steps.js';
import { pageDividers } from './page-dividers.js';
import { folded } from './vocabulary.js';
import { pageTitles } from './page-titles.js';
import { NEXT_LINE } from './white.js';

/** `Your label` at the head of a line, by a word that is nobody's name: a label doesn't speak to its sender. All but English, German and French are from memory, as below. */
const YOUR = /^(?:[^\d:]{2,30} [-–—|:] )?(?:here is |das ist |hier ist |voici )?(?:your|ihre?|deine?|votre|jouw|twoj[ae]?|tvuj)\b/;
/** The same by words that may be names where a capital follows. */
const YOUR_OR_NAME = /^(?:vos|ton|tu|su|uw|je|(?:il )?tuo|(?:la )?tua|din|ditt?|vase?|(?:o )?seu|(?:a )?sua)(?= )/;
/** What a page calls what is on it. */
const WHAT =
  /label|eti[kqc]|etyk|stitek|naklej|lipuk|cimke|versand|paket|paquet|pakk|packet|parcel|package|colis|envoi|envio|invio|spedizion|retour|return|rucksend|sendung|sending|zending|forsend|przesyl|zasilk|shipping|postage|porto|affranch|franqueo|franker|brief/;
/** What is done with a printed page, by words that may be names where a capital follows. */
const DO =
  /^(?:please |bitte |hier |here |por favor |s'il vous plait |para |pour |zum |a )*(?:cut|trim|print|fold|tear|peel|stick|affix|attach|tape|glue|decoupe[rz]|imprime[rz]|colle[rz]|plie[rz]|detache[rz]|recort[ae]r?|corte|imprim[ae]|imprimir|pegu?e|pegar|doble|doblar|despegue|cole|colar|dobre|dobrar|destaque|ritagli[ao]|ritagliare|stamp[ai]|stampare|incoll[ai]|incollare|pieg[ah]i?|piegare|knip|plak|vouw|scheur|klipp?|skriv ut|udskriv|fast|klaeb|vik|brett|wytnij|odetnij|wydrukuj|naklej|zegnij|oderwij|vystrihnete|odstrihnete|vytisknete|nalepte|leikkaa|tulosta|liimaa|taita|vagja|nyomtassa|ragassza)(?= |$)/;
/** In German at the end of what is said. */
const DO_IN_GERMAN = /\b(?:ausschneiden|abtrennen|heraustrennen|abschneiden|aufkleben|ausdrucken)\b/;
/** `Print: 12.03.`, `Print date 12.03.` and all else that gives a number, but for `100 %`, is a field of something. */
const FIELD = /:.*\d|\d{2,}(?![\d ]*%)/;
/** A line's ink reaches this far (pt) beyond the box of its words, and the other way round. */
const AROUND = 3;
/** A title or a sentence, no paragraph (characters). */
const LONGEST = 90;

/** Whether a line speaks to the one who holds the page: a title over a label, or what to do with it. */
export function speaksToReader(text: string): boolean {
  const line = folded(text);
  if (FIELD.test(line) || line.length > LONGEST) return false;
  if (DO_IN_GERMAN.test(line) || (YOUR.test(line) && WHAT.test(line))) return true;
  const said = DO.exec(line)?.[0] ?? (WHAT.test(line) ? YOUR_OR_NAME.exec(line)?.[0] : undefined);
  return said !== undefined && /^\p{Ll}/u.test(text.trim().split(/\s+/)[said.split(' ').length] ?? '');
}

/** The steps of a list stand no farther apart, pt (8 mm at most); where a label is as near, they stand closer. */
const LIST_LINES = [mmToPt(8), mmToPt(5), NEXT_LINE];

/** What a page says to its reader, pt. */
interface Speech {
  /** Each line of it. */
  readonly lines: readonly Box[];
  /** The blocks with such a line that stand apart. */
  readonly blocks: readonly Box[];
}
const spoken = new WeakMap<SourcePage, Speech>();
const NONE: Speech = { lines: [], blocks: [] };

function speechOf(page: SourcePage): Speech {
  let known = spoken.get(page);
  if (!known) spoken.set(page, (known = find(page)));
  return known;
}

/** Whether a block of larger type stands above a hint, begins or is centred with it, and nothing is nearer to it. */
function isTitleOf(block: Box, hint: Box, all: readonly Box[]): boolean {
  const isAligned = Math.abs(block.x - hint.x) <= AROUND || Math.abs(block.x + block.width / 2 - hint.x - hint.width / 2) <= AROUND;
  const gap = hint.y - bottom(block);
  return isAligned && gap >= 0 && gap <= TITLE.off && block.height <= TITLE.high && block.y === Math.min(...all.map(({ y }) => y));
}
/** A title stands no farther above its first line, and is no higher, pt (8 mm and 10 mm; common practice, no source). */
const TITLE = { off: mmToPt(8), high: mmToPt(10) };

function find(page: SourcePage): Speech {
  if (isSmallPaper(page)) return NONE;
  const phrases = phrasesOf(page.words());
  const lines = phrases.flatMap(({ text, box }) => (speaksToReader(text) ? [box] : []));
  const hasList = hasSteps(phrases);
  const codes = codeLikeAreas(page).map(({ box }) => box);
  const isSpeech = (block: Box): boolean => {
    if (codes.some((code) => intersection(code, block))) return false;
    return addressBlocks(phrases.filter(({ box }) => contains(block, box, AROUND))).length === 0;
  };
  const blobs = withoutSpecks(inkBlobs(page.ink()));
  const dividers = pageDividers(page);
  const all = merge(blobs, NEXT_LINE, dividers);
  const alone = all.filter(isSpeech);
  const said = alone.filter((block) => lines.some((line) => contains(block, line, AROUND)));
  const titles = alone.filter((block) => said.some((hint) => hint !== block && isTitleOf(block, hint, alone)));
  const isList = (block: Box): boolean => hasSteps(phrases.filter(({ box }) => contains(block, box, AROUND)));
  const lists = hasList ? LIST_LINES.flatMap((gap) => merge(blobs, gap, dividers).filter((block) => isList(block) && isSpeech(block))) : [];
  return { lines, blocks: [...said, ...titles, ...pageTitles(all, phrases, isSpeech), ...lists] };
}

/**
 * Ink without the blocks of type in which the page speaks to its reader, apart from everything else by a line's white, without a code and without an address: they are of the page,
 * never of a label on it. All ink on paper that a label fills by itself.
 */
export function withoutSpeech(page: SourcePage, blobs: readonly Box[]): readonly Box[] {
  const { blocks } = speechOf(page);
  return blocks.length === 0 ? blobs : blobs.filter((blob) => !blocks.some((block) => contains(block, blob, 0.5)));
}

/** Ink without the lines of such blocks, and without those nearer to other ink: a hint to cut says nothing about the white around what is to be cut out. */
export function withoutHints(page: SourcePage, blobs: readonly Box[]): readonly Box[] {
  const { lines } = speechOf(page);
  return lines.length === 0 ? blobs : blobs.filter((blob) => !lines.some((line) => contains(line, blob, AROUND)));
}

/** Whether a page has such blocks. */
export const speaks = (page: SourcePage): boolean => speechOf(page).blocks.length > 0;
