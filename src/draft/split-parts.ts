import { pagesMatch } from '../steps/pages.js';
import { part, stepPart, yamlList, type Part } from './plan.js';
import type { Sample, SamplePage } from './sample.js';

const PATTERNS = ['odd', 'even', 'first', '2', '2-', '3', '3-', 'last'] as const;

export const isReturnPage = ({ seen }: SamplePage): boolean =>
  seen.kind === 'labels' && seen.labels.length > 0 && seen.labels.every(({ returns }) => returns !== undefined);

/** Each once, sorted. */
const distinct = (texts: readonly (string | undefined)[]): readonly string[] =>
  [...new Set(texts.filter((each) => each !== undefined))].sort();

const says = (words: readonly string[]): string => words.map((each) => `"${each}"`).join(' or ');

/** Ways to take the samples apart into pages, the most stable first: words that pages say, then positions, then each page by itself. */
export function splitParts(samples: readonly Sample[]): readonly Part[] {
  const pages = samples.flatMap((sample) => sample.pages);
  const slips = pages.filter(({ seen }) => seen.kind === 'slip');
  const others = pages.filter(({ seen }) => seen.kind === 'other');
  const returns = pages.filter(isReturnPage);
  const byContent = stepPart('split-pages', { by: 'content' }, 'Each page says by its layout and words what it is.');
  if (pages.some(({ seen }) => seen.kind === 'customs-form' || (seen.kind === 'labels' && seen.beside.kind === 'customs-form'))) {
    return [byContent];
  }
  if (slips.length + others.length + returns.length === 0) return [part('split-pages'), byContent];
  return [...byWords(slips, others, returns), ...byPosition(samples, { slips, others, returns }), byContent];
}

function byWords(slips: readonly SamplePage[], others: readonly SamplePage[], returns: readonly SamplePage[]): Part[] {
  const wordsOf = ({ seen }: SamplePage): string | undefined =>
    seen.kind === 'slip' || seen.kind === 'other' ? seen.words : seen.kind === 'labels' ? seen.labels[0]?.returns : undefined;
  const nameless = [...slips, ...returns].some((page) => wordsOf(page) === undefined);
  if (nameless) return [];
  const slipWords = distinct(slips.map(wordsOf));
  const returnWords = distinct(returns.map(wordsOf));
  const part = (skipped: readonly SamplePage[]): Part => {
    const skipWords = distinct(skipped.map(wordsOf));
    const codeless = others.some((page) => !page.looksCoded);
    const notes = [
      ...(slipWords.length > 0 ? [`A page that says ${says(slipWords)} is a packing slip.`] : []),
      ...(returnWords.length > 0 ? [`One that says ${says(returnWords)} is a return label.`] : []),
      ...(skipWords.length > 0 ? [`One that says ${says(skipWords)} is not printed.`] : []),
      ...(codeless ? ['Nor is a page without a barcode.'] : []),
    ];
    const options = {
      'slip-words': yamlList(slipWords),
      'return-words': yamlList(returnWords),
      'skip-words': yamlList(skipWords),
      'without-code': codeless ? 'skip' : undefined,
    };
    if (skipWords.length === 0 && codeless) notes.splice(-1, 1, 'A page without a barcode is not printed.');
    return stepPart('split-pages', options, ...notes);
  };
  // A page without a code needs no words; one with a code that says what it is does.
  return [part(others.filter(({ looksCoded }) => looksCoded)), part(others)];
}

interface Kinds {
  readonly slips: readonly SamplePage[];
  readonly others: readonly SamplePage[];
  readonly returns: readonly SamplePage[];
}

/** By position, where one pattern of each kind holds for every sample. */
function byPosition(samples: readonly Sample[], { slips, others, returns }: Kinds): Part[] {
  const patternOf = (wanted: readonly SamplePage[]): string | undefined => {
    if (wanted.length === 0) return 'none';
    if (wanted.length === samples.reduce((sum, { pages }) => sum + pages.length, 0)) return 'every';
    return PATTERNS.find((pattern) =>
      samples.every(({ pages }) => pages.every((page) => pagesMatch(pattern, page.number, pages.length) === wanted.includes(page))),
    );
  };
  const patterns = { slips: patternOf(slips), returns: patternOf(returns), skip: patternOf(others) };
  if (Object.values(patterns).some((each) => each === undefined)) return [];
  const given = (pattern: string | undefined): string | undefined => (pattern === 'none' ? undefined : pattern);
  const labels = patterns.slips === 'even' ? 'odd' : undefined;
  const options = { labels, slips: given(patterns.slips), returns: given(patterns.returns), skip: given(patterns.skip) };
  const note = patterns.returns === 'every' ? 'Every page is a return label.' : 'What a page is goes by its position in the document.';
  return [stepPart('split-pages', options, note)];
}
