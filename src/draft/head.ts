import { formatSize } from '../geometry/length.js';
import { isMediaSize, MEDIA_NAMES, parseMedia } from '../geometry/media.js';
import { isLabel } from '../sheet/sheet.js';
import type { Piece } from './compare.js';
import { labelPagesOf } from './locate-parts.js';
import { plural } from './remarks.js';
import type { Sample, SamplePage, Target } from './sample.js';

/** Samples that a recipe names one by one. */
const MOST_NAMED = 8;

/** The comment at the head of a recipe: what it was tested on, with what result, and what is left open. */
export function headOf(
  samples: readonly Sample[],
  pieces: readonly Piece[],
  remarks: readonly string[],
  { media, grid }: Target,
): readonly string[] {
  const pages = samples.flatMap((sample) => sample.pages);
  const printed = pieces.filter(({ end }) => end === 'printed');
  const count = (wanted: (piece: Piece) => boolean): number => printed.filter(wanted).length;
  const labels = count(({ role }) => isLabel({ role }));
  const results = [
    `${labels} ${plural(labels, 'label', 'labels')}`,
    ...[count(({ role }) => role === 'slip')].flatMap((slips) =>
      slips > 0 ? [`${slips} packing-slip ${plural(slips, 'page', 'pages')}`] : [],
    ),
    ...[count(({ role }) => role === 'customs-form')].flatMap((forms) =>
      forms > 0 ? [`${forms} ${plural(forms, 'customs form', 'customs forms')}`] : [],
    ),
  ];
  const held = pieces.filter(({ end }) => end === 'held').length;
  const skipped = pages.filter(({ seen }) => seen.kind === 'other').length;
  const of = `${samples.length} ${plural(samples.length, 'document', 'documents')}, ${pages.length} ${plural(pages.length, 'page', 'pages')}`;
  return [
    `Drafted from samples and tested on them for ${media.name} at ${grid}: ${of}. Result: ${results.join(' and ')} ready, ` +
      `${skipped === 0 ? 'no page' : `${skipped} ${plural(skipped, 'page', 'pages')}`} skipped, ${held === 0 ? 'nothing' : `${held} ${plural(held, 'item', 'items')}`} held.`,
    ...samples.slice(0, MOST_NAMED).map((sample) => `- ${sample.name}: ${pagesInWords(sample)}`),
    ...(samples.length > MOST_NAMED ? [`- and ${samples.length - MOST_NAMED} more`] : []),
    ...(remarks.length > 0 ? ['', 'Not settled by these samples:', ...remarks.map((each) => `- ${each}`)] : []),
  ];
}

function pagesInWords({ pages }: Sample): string {
  const sizes = [...new Set(pages.map(sizeName))];
  return `${pages.length} ${plural(pages.length, 'page', 'pages')}, ${sizes.join(' and ')}`;
}

/** A page's size as sellers call it: "letter", else its sides. */
export function sizeName({ width, height }: SamplePage): string {
  const name = MEDIA_NAMES.find((each) => {
    const media = parseMedia(each);
    return media && isMediaSize(media, width, height);
  });
  if (name === undefined) return formatSize(width, height);
  return /^a\d$/.test(name) ? name.toUpperCase() : name.replace(/(?<=\d)x(?=\d)/, '×');
}

/** The sentence that `about` is. */
export function aboutOf(samples: readonly Sample[], label: string): string {
  const pages = labelPagesOf(samples).map(({ page }) => page);
  const sizes = [...new Set(pages.map(sizeName))].join(' and ');
  const all = samples.flatMap((sample) => sample.pages);
  const slip = all.some(({ seen }) => seen.kind === 'slip')
    ? '; its packing slip is on a page of its own'
    : pages.some(({ seen }) => seen.kind === 'labels' && seen.beside.kind === 'packing-slip')
      ? '; its packing slip is on the same page'
      : '';
  return `Drafted for ${sizes} pages, where ${label}${slip}.`;
}
