import { openSource } from '../batch/open-source.js';
import { intersection, type Box } from '../geometry/box.js';
import { gridOf, type GridName } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import type { Edge, Judged } from '../locating/candidate.js';
import type { Survey } from '../locating/survey.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourceDocument, SourcePage } from '../reading/source.js';
import type { Reason } from '../sheet/sheet.js';
import { insideCutLine } from '../steps/inside-cut-line.js';
import { insideWhite } from '../steps/inside-white.js';
import { surveyed } from '../steps/surveyed.js';
import { wordsAsWritten } from './as-written.js';

/** What a recipe is drafted for. */
export interface Target {
  readonly media: Media;
  readonly grid: GridName;
}

/** A label on a page of a sample. `returns`: the words by which it calls itself a return label, as written. */
export interface SeenLabel {
  readonly box: Box;
  readonly edge: Edge;
  /** What its dashed cut line encloses, where it has one, else the bounds of its ink: scale may print that alone. */
  readonly inside: Box | undefined;
  readonly returns: string | undefined;
}

/** What lies beside the labels of a page: its kind, its words as written, and one rectangle with all of it (pt). */
export interface Beside {
  readonly kind: string | undefined;
  readonly words: string | undefined;
  readonly box: Box | undefined;
}

/** What a page of a sample is, by itself or by what the other samples show. */
export type Seen =
  | { readonly kind: 'labels'; readonly labels: readonly SeenLabel[]; readonly beside: Beside; readonly settledByOthers?: boolean }
  | { readonly kind: 'slip' | 'customs-form'; readonly words: string | undefined }
  /** To be skipped: blank, without codes, or something that says what it is. */
  | { readonly kind: 'other'; readonly words: string | undefined; readonly blank: boolean }
  | { readonly kind: 'unsettled'; readonly reason: Reason; readonly candidates: readonly Judged[] };

export interface SamplePage {
  /** From 1. */
  readonly number: number;
  /** pt. */
  readonly width: number;
  readonly height: number;
  /** Whether anything on it looks like a code to split-pages. */
  readonly looksCoded: boolean;
  readonly seen: Seen;
}

/** One document of a channel, open. */
export interface Sample {
  /** The file's own name, without folders. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly document: SourceDocument;
  readonly pages: readonly SamplePage[];
}

/** Opens a document and asks each page what it is. `close` its document when done with it. */
export async function lookAtSample(
  name: string,
  bytes: Uint8Array,
  { media, grid }: Target,
): Promise<Sample | { readonly refused: Reason }> {
  const document = await openSource(bytes);
  if ('refused' in document) return document;
  const pages: SamplePage[] = [];
  for (let number = 1; number <= document.pageCount; number += 1) {
    const page = document.page(number);
    const { width, height, unfit } = page;
    const seen: Seen = unfit
      ? { kind: 'unsettled', reason: unfit, candidates: [] }
      : seenOf(page, await surveyed(page, { media, grid: gridOf(grid), document }));
    pages.push({ number, width, height, looksCoded: unfit === undefined && codeLikeAreas(page).length > 0, seen });
  }
  return { name, bytes, document, pages };
}

function seenOf(page: SourcePage, survey: Survey): Seen {
  const written = (words: string | undefined): string | undefined => (words === undefined ? undefined : wordsAsWritten(page, words));
  switch (survey.kind) {
    case 'blank':
      return { kind: 'other', words: undefined, blank: true };
    case 'labels': {
      const [doubt] = survey.doubts;
      if (doubt) {
        const candidates = [...survey.labels, ...survey.doubts.flatMap(({ answers }) => answers)];
        return { kind: 'unsettled', reason: doubtful(doubt.why), candidates };
      }
      const labels = survey.labels.map(({ box, edge, returns }) => ({
        box,
        edge,
        inside: insideOf(page, box),
        returns: written(returns),
      }));
      return { kind: 'labels', labels, beside: { ...survey.rest, kind: survey.rest.name?.kind, words: written(survey.rest.name?.words) } };
    }
    case 'named': {
      const words = written(survey.name.words);
      if (survey.name.kind === 'packing-slip') return { kind: 'slip', words };
      return survey.name.kind === 'customs-form' ? { kind: 'customs-form', words } : { kind: 'other', words, blank: false };
    }
    case 'unnamed':
      if (!survey.codes) return { kind: 'other', words: undefined, blank: false };
      return { kind: 'unsettled', reason: UNKNOWN, candidates: [] };
    case 'doubtful':
      return { kind: 'unsettled', reason: doubtful(survey.why), candidates: survey.candidates };
  }
}

const UNKNOWN: Reason = {
  code: 'draft/unsettled',
  message: 'the page has codes, but nothing on it is like a label',
  remedy: 'Leave this document out, or write the recipe by hand and name the page under `skip` of split-pages or the label with `box`.',
};

const doubtful = (why: string): Reason => ({
  code: 'draft/unsettled',
  message: `what is the label is not sure: ${why}`,
  remedy: 'Add samples of the same channel that show it more clearly, or write the recipe by hand with `box` under locate-label.',
});

/** Whether every other answer for a doubtful page shares paper with `chosen`: then they are answers to one question. */
export const isOneQuestion = (chosen: Judged, candidates: readonly Judged[]): boolean =>
  candidates.every((each) => intersection(each.box, chosen.box) !== undefined);

/** What `scale` may print of a label alone, to keep its size: what its cut line encloses, else the bounds of its ink. */
export const insideOf = (page: SourcePage, box: Box): Box | undefined => insideCutLine(page, box) ?? insideWhite(page, box);
