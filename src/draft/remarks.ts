import { labelPagesOf, type Rung } from './locate-parts.js';
import type { Sample, SamplePage } from './sample.js';

/** What the samples could not settle about a recipe that passed on them, a sentence or two each. */
export function remarksOf(samples: readonly Sample[], rung: Rung, splitText: string): readonly string[] {
  const pages = samples.flatMap((sample) => sample.pages);
  return [
    ...tooFew(samples),
    ...unnamedPages(samples),
    ...rung.remarks,
    ...besideLabels(pages),
    ...settledByOthers(samples),
    ...byPosition(samples, splitText),
  ];
}

function tooFew(samples: readonly Sample[]): string[] {
  const labels = labelPagesOf(samples).reduce((sum, page) => sum + page.labels.length, 0);
  if (labels > 1) return [];
  return ['One label does not show what changes from order to order. Draft again with two or three documents of other orders.'];
}

/** Whether a page without codes keeps to itself what it is. */
export const isUnnamed = ({ seen }: SamplePage): boolean => seen.kind === 'other' && seen.words === undefined && !seen.blank;

function unnamedPages(samples: readonly Sample[]): string[] {
  const having = samples.filter(({ pages }) => pages.some(isUnnamed));
  const numbers = [...new Set(having.flatMap(({ pages }) => pages.filter(isUnnamed).map((page) => page.number)))].sort((a, b) => a - b);
  const [first] = numbers;
  if (first === undefined) return [];
  const which = numbers.length === 1 ? `a page ${first}` : 'pages';
  return [
    `${having.length} of ${samples.length} ${plural(samples.length, 'document has', 'documents have')} ${which} without a barcode that does not say what it is: skipped. ` +
      `If that is a packing slip, say \`slips: ${numbers.join(',')}\` under split-pages and add \`- packing-slip\` below scale.`,
  ];
}

function besideLabels(pages: readonly SamplePage[]): string[] {
  const nameless = pages.filter(({ seen }) => seen.kind === 'labels' && seen.beside.kind === undefined && seen.beside.box !== undefined);
  if (nameless.length === 0) return [];
  return [
    `${nameless.length} label ${plural(nameless.length, 'page has', 'pages have')} something beside the label that does not say what it is: not printed. ` +
      'If that is a packing slip, add `- packing-slip: { from: same-page, place: lower-half }`, or where it is, below scale.',
  ];
}

function settledByOthers(samples: readonly Sample[]): string[] {
  return samples.flatMap(({ name, pages }) =>
    pages.flatMap(({ number, seen }) =>
      seen.kind === 'labels' && seen.settledByOthers === true
        ? [`Page ${number} of ${name} by itself has more than one answer; the label was taken where the other pages have theirs.`]
        : [],
    ),
  );
}

function byPosition(samples: readonly Sample[], splitText: string): string[] {
  if (!/(?:slips|skip|returns): (?!every)/.test(splitText) || !samples.some(({ pages }) => pages.length > 1)) return [];
  const counts = [...new Set(samples.map(({ pages }) => pages.length))].sort((a, b) => a - b);
  return [
    `Pages are told apart by position, and the samples have ${counts.join(', ')} pages: whether longer or shorter documents keep that order is not known.`,
  ];
}

export const plural = (count: number, one: string, many: string): string => (count === 1 ? one : many);
