import { basename } from 'node:path';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { formatDiagnostics } from '../diagnostics/format.js';
import { parseMedia, type Media } from '../geometry/media.js';
import { draftRecipe } from '../draft/draft-recipe.js';
import { lookAtSample, type Sample, type Target } from '../draft/sample.js';
import { findWork } from '../intake/find-work.js';
import { readWork } from '../intake/read-work.js';
import type { WorkItem } from '../intake/work.js';
import type { Reason } from '../sheet/sheet.js';
import { EXIT, type CommandIo, type ExitCode } from './exit-codes.js';
import { noFiles, ofNamedFiles } from './named-files.js';
import { pipelineFrom } from './run-pipeline.js';

export interface DraftArgs {
  /** Documents, folders or patterns: one or a few samples of one channel. */
  readonly files: readonly string[];
  readonly media: string | undefined;
  readonly grid: string | undefined;
}

export interface DraftIo extends CommandIo {
  /** The current folder, absolute. */
  readonly folder: string;
}

/** More documents than this are a channel's work, not its samples. */
const MOST_SAMPLES = 40;

/** `slipyard draft`: a recipe from samples of a channel, to `out` and only when it passed on all of them; everything else to `err`. */
export async function runDraft({ files, media, grid }: DraftArgs, io: DraftIo): Promise<ExitCode> {
  const show = (...diagnostics: readonly Diagnostic[]): void => io.err(formatDiagnostics(diagnostics, { colour: io.colour }));
  const ofRun = (reason: Reason): Diagnostic => ({ ...reason, severity: 'error', place: { kind: 'run' } });

  if (files.length === 0) {
    show(ofRun(noFiles('draft inbox/mugs/order-1.pdf inbox/mugs/order-2.pdf')));
    return EXIT.usage;
  }
  // The same checks and the same search as `run --recipe` over these files.
  const asked = { config: undefined, recipe: 'any-page', out: 'out', jobs: undefined, files, media, grid };
  const { value: pipeline, diagnostics: wrong } = pipelineFrom(asked, io.folder);
  if (!pipeline) {
    show(...wrong);
    return EXIT.usage;
  }
  const { intake, diagnostics } = await findWork(pipeline);
  const found = ofNamedFiles(diagnostics, intake.work.length + intake.refused.length === 0);
  show(...found, ...intake.refused.map(({ item, state, reason }) => ofDocument(item, reason, state === 'failed' ? 'error' : 'note')));
  const failed = intake.refused.filter(({ state }) => state === 'failed').map(({ item }) => item);
  if (intake.work.length === 0) {
    // Of one mistake it is told once.
    if (diagnostics.length === 0 && failed.length === 0) show(ofRun(NOTHING));
    return failed.length > 0 ? EXIT.unfinished : EXIT.cannotGoOn;
  }
  if (intake.work.length > MOST_SAMPLES) {
    show(ofRun(tooMany(intake.work.length)));
    return EXIT.usage;
  }

  const target = { media: mediaNamed(pipeline.media), grid: pipeline.grid };
  const { samples, unread } = await openAll(intake.work, target, (item, reason) => show(ofDocument(item, reason, 'error')));
  try {
    if (samples.length === 0) {
      show(ofRun(NOTHING));
      return EXIT.unfinished;
    }
    const left = [...failed, ...unread].map(nameOf);
    const asides =
      left.length === 0 ? [] : [`${left.join(', ')} could not be read and ${left.length === 1 ? 'is' : 'are'} no part of the test.`];
    const drafted = await draftRecipe(samples, target, asides);
    if (drafted.kind === 'recipe') {
      io.out(drafted.text);
      io.err('Try it on other documents of the channel before you rely on it: slipyard run --recipe FILE --out try DOCUMENTS\n');
      return left.length === 0 ? EXIT.done : EXIT.unfinished;
    }
    show(
      ...drafted.problems.map(({ sample, page, reason }): Diagnostic => ({
        ...reason,
        severity: 'error',
        place: page === 0 ? { kind: 'document', file: sample } : { kind: 'document', file: sample, page },
      })),
      ofRun(drafted.summary),
    );
    io.err('No recipe was written; a file that you sent it to with > is empty.\n');
    return EXIT.unfinished;
  } finally {
    for (const { document } of samples) document.close();
  }
}

async function openAll(
  work: readonly WorkItem[],
  target: Target,
  onRefused: (item: WorkItem, reason: Reason) => void,
): Promise<{ readonly samples: readonly Sample[]; readonly unread: readonly WorkItem[] }> {
  const samples: Sample[] = [];
  const unread: WorkItem[] = [];
  for (const item of work) {
    const read = await readWork(item);
    const sample = read.ok ? await lookAtSample(nameOf(item), read.bytes, target) : { refused: read.reason };
    if (!('refused' in sample)) samples.push(sample);
    else {
      unread.push(item);
      onRefused(item, sample.refused);
    }
  }
  return { samples, unread };
}

const nameOf = ({ shownName }: WorkItem): string => basename(shownName);

const ofDocument = (item: WorkItem, reason: Reason, severity: 'error' | 'note'): Diagnostic => ({
  ...reason,
  severity,
  place: { kind: 'document', file: nameOf(item) },
});

function mediaNamed(name: string): Media {
  const media = parseMedia(name);
  if (!media) throw new Error(`media ${name} was checked before`);
  return media;
}

const NOTHING: Reason = {
  code: 'draft/no-samples',
  message: 'no recipe: there is no document to draft it from',
  remedy: 'Name one or a few documents of one channel: slipyard draft inbox/mugs/order-1.pdf',
};

const tooMany = (count: number): Reason => ({
  code: 'draft/too-many-samples',
  message: `these are ${count} documents; a recipe is drafted from ${MOST_SAMPLES} at most`,
  remedy: 'Name two or three documents that show what differs from order to order.',
});
