import { openSource } from '../../src/batch/open-source.js';
import { gridOf } from '../../src/geometry/grid.js';
import { parseMedia, type Media } from '../../src/geometry/media.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { STEPS } from '../../src/steps/index.js';
import type { Options, OptionValues } from '../../src/steps/option.js';
import type { DocumentStep, StepContext } from '../../src/steps/step.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Kind, type Layout, type QuarterTurn, type Sample } from '../samples/sample.js';

/** The declared defaults of a step, changed where a test says so. */
export function optionsOf<O extends Options>(step: { readonly options: O }, changed: Partial<OptionValues<O>> = {}): OptionValues<O> {
  const defaults = Object.fromEntries(Object.entries(step.options).map(([name, each]) => [name, each.default]));
  return { ...defaults, ...changed } as OptionValues<O>;
}

export function mediaNamed(name: string): Media {
  const media = parseMedia(name);
  if (!media) throw new Error(`no media ${name}`);
  return media;
}

export const onMedia = (document: SourceDocument, media = '4x6in'): StepContext => ({
  document,
  media: mediaNamed(media),
  grid: gridOf('203dpi'),
});

interface Opened {
  readonly sample: Sample;
  readonly document: SourceDocument;
  readonly sheets: readonly Sheet[];
}

/** A sample, opened, with the fresh sheets of its pages. */
export async function openedSample(layout: Layout, kind: Kind, turn: QuarterTurn): Promise<Opened> {
  const made = await sample(layout, kind, turn);
  const document = await openSource(made.bytes);
  if ('refused' in document) throw new Error(document.refused.message);
  const sheets = Array.from({ length: document.pageCount }, (_, index) => {
    const page = document.page(index + 1);
    return pageSheet(page.number, page.width, page.height);
  });
  return { sample: made, document, sheets };
}

/** The same by the layout's name. */
export async function opened(layout: string, kind: Kind = 'vector', turn: QuarterTurn = 0): Promise<Opened> {
  const found = LAYOUTS.find((each) => each.name === layout);
  if (!found) throw new Error(`no layout ${layout}`);
  return openedSample(found, kind, turn);
}

/** A document of blank pages, for steps that ask only for sizes. */
export function blankPages(width: number, height: number, count = 1): SourceDocument {
  const nothing = { width: 1, height: 1, data: Uint8Array.of(255), pixelsPerPt: 1, origin: { x: 0, y: 0 } };
  return {
    pageCount: count,
    notes: [],
    page: (number) => ({
      number,
      width,
      height,
      skew: 0,
      slant: { degrees: 0, sure: true },
      words: () => [],
      images: () => [],
      render: () => nothing,
      coarse: () => nothing,
      ink: () => nothing,
      pictureUnder: () => undefined,
      codes: async () => [],
    }),
    pressSource: () => {
      throw new Error('blank pages are not pressed');
    },
    close: () => undefined,
  };
}

/** A located label of a size in pt. */
export const labelOf = (width: number, height: number, more: Partial<Sheet> = {}): Sheet => ({
  ...pageSheet(1, 612, 792),
  role: 'label',
  box: { x: 10, y: 20, width, height },
  ...more,
});

/** The reason's code of a held or skipped sheet, else its state. */
export const endOf = (sheet: Sheet | undefined): string | undefined =>
  sheet && (sheet.state.kind === 'planned' ? 'planned' : `${sheet.state.kind} ${sheet.state.code}`);

/** Runs document steps by name with their defaults. */
export async function through(names: readonly string[], sheets: readonly Sheet[], context: StepContext): Promise<readonly Sheet[]> {
  let result = sheets;
  for (const name of names) {
    const step = STEPS.find((each): each is DocumentStep => each.name === name && each.scope === 'document');
    if (!step) throw new Error(`no document step ${name}`);
    result = await step.apply(result, optionsOf(step), context);
  }
  return result;
}
