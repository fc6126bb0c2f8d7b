import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { loadPipeline } from '../config/load-pipeline.js';
import { slipsFromOrders } from '../config/channel.js';
import { loadRecipe } from '../config/load-recipe.js';
import type { Loaded } from '../config/loaded.js';
import type { Pipeline } from '../config/pipeline.js';
import { MOST_JOBS, PIPELINE_DEFAULTS, type Given } from '../config/pipeline-file.js';
import { WITHOUT_PIPELINE } from '../config/read-text.js';
import { tooManyDots } from '../config/too-many-dots.js';
import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { nearest } from '../diagnostics/nearest.js';
import { GRID_NAMES, type GridName } from '../geometry/grid.js';
import { PLAIN_PRINTER } from '../geometry/printer.js';
import { isPage, MEDIA_NAMES, mediaNamed, PAGE_RANGE, parseMedia } from '../geometry/media.js';

/** What was typed behind `slipyard run`. */
export interface PipelineArgs {
  readonly config: string | undefined;
  readonly recipe: string | undefined;
  readonly out: string | undefined;
  readonly files: readonly string[];
  readonly jobs: string | undefined;
  readonly media: string | undefined;
  readonly grid: string | undefined;
}

export const PIPELINE_FILE = 'pipeline.yaml';

const usage = (message: string, remedy: string, code: DiagnosticCode = 'commands/bad-usage'): Diagnostic => ({
  code,
  severity: 'error',
  message,
  place: { kind: 'run' },
  remedy,
});

const failed = (...diagnostics: readonly Diagnostic[]): Loaded<Pipeline> => ({ value: undefined, diagnostics, sources: new Map() });

/**
 * The pipeline that the arguments mean: a file, or one recipe over named files. What was typed counts more than the file.
 * Every problem is a diagnostic; nothing is touched.
 * @param folder the current folder, absolute
 */
export function pipelineFrom(args: PipelineArgs, folder: string): Loaded<Pipeline> {
  const problems = [...combinationProblems(args, existsSync(resolve(folder, PIPELINE_FILE))), ...valueProblems(args)];
  if (problems.length > 0) return failed(...problems);
  const given = { media: args.media, grid: args.grid as GridName | undefined };
  const base = args.recipe === undefined ? fromFile(args, given, folder) : fromRecipe(args, given, args.recipe, folder);
  if (!base.value) return base;
  const pipeline: Pipeline = {
    ...base.value,
    ...(args.out === undefined ? {} : { out: resolve(folder, args.out) }),
    ...(args.jobs === undefined ? {} : { jobs: Number(args.jobs) }),
  };
  return { ...base, value: pipeline };
}

function combinationProblems({ config, recipe, out, files }: PipelineArgs, hasPipeline: boolean): Diagnostic[] {
  if (recipe === undefined) {
    if (files.length === 0) return [];
    return [usage('files are named, but no recipe', 'Add --recipe any-page --out DIR, or put the files into a channel of pipeline.yaml.')];
  }
  const problems: Diagnostic[] = [];
  if (config !== undefined) problems.push(usage('--recipe and --config exclude each other', 'Leave one of them away.'));
  if (out === undefined) problems.push(hasPipeline ? OUT_OF_ITS_OWN : usage('--recipe needs an output folder', 'Add --out one-off.'));
  if (files.length === 0) problems.push(usage('--recipe needs files', 'Name files or folders behind the options.'));
  return problems;
}

/** The pipeline's own folder is not taken for granted: what is in it may be today's stack, not printed yet. */
const OUT_OF_ITS_OWN = usage(
  `--recipe needs an output folder of its own: in \`out\` of ${PIPELINE_FILE} its stack would take the place of the pipeline's`,
  'Add --out one-off.',
);

/** What is wrong with values typed behind options, each by itself. */
export function valueProblems({ jobs, media, grid }: Pick<PipelineArgs, 'jobs' | 'media' | 'grid'>): Diagnostic[] {
  const problems: Diagnostic[] = [];
  if (jobs !== undefined && !(/^\d+$/.test(jobs) && Number(jobs) >= 1 && Number(jobs) <= MOST_JOBS)) {
    problems.push(usage(`--jobs is “${jobs}”`, `Write a whole number from 1 to ${MOST_JOBS}.`));
  }
  const page = media === undefined ? undefined : parseMedia(media);
  if (media !== undefined && !page) {
    problems.push(usage(`--media is “${media}”`, meant(media, MEDIA_NAMES, 'a size such as 4x6in or 100x150mm')));
  } else if (page && !isPage(page)) {
    problems.push(usage(`--media is “${media}”, which is not ${PAGE_RANGE}`, 'Write the size of the paper, such as 4x6in.'));
  }
  if (grid !== undefined && !(GRID_NAMES as readonly string[]).includes(grid)) {
    problems.push(usage(`--grid is “${grid}”`, meant(grid, GRID_NAMES, `one of ${GRID_NAMES.join(', ')}`)));
  }
  return problems;
}

/** What is wrong with a typed grid on one of these printers: more dots than can be proved. */
export function gridTooFine(grid: string | undefined, printers: readonly { readonly media: string }[]): Diagnostic | undefined {
  const tooMany = printers.flatMap(({ media }) => (grid === undefined ? [] : (tooManyDots(media, grid as GridName) ?? [])))[0];
  return tooMany && usage(tooMany.message, 'Give a coarser --grid or a smaller --media.', 'config/too-many-dots');
}

function meant(word: string, allowed: readonly string[], otherwise: string): string {
  const near = nearest(word, allowed);
  return near === undefined ? `Write ${otherwise}.` : `Did you mean ${near}?`;
}

function fromFile({ config }: PipelineArgs, given: Given, folder: string): Loaded<Pipeline> {
  const path = resolve(folder, config ?? PIPELINE_FILE);
  if (config !== undefined || existsSync(path)) return loadPipeline(path, given);
  return failed(usage(`there is no ${PIPELINE_FILE} in this folder`, WITHOUT_PIPELINE, 'commands/no-pipeline'));
}

function fromRecipe(args: PipelineArgs, given: Given, reference: string, folder: string): Loaded<Pipeline> {
  const media = given.media ?? PIPELINE_DEFAULTS.media;
  const grid = given.grid ?? PIPELINE_DEFAULTS.grid;
  const tooFine = gridTooFine(grid, [{ media }]);
  if (tooFine) return failed(tooFine);
  const { value: recipe, diagnostics, sources } = loadRecipe(reference, folder, mediaNamed(media));
  if (!recipe) return { value: undefined, diagnostics, sources };
  if (slipsFromOrders(recipe))
    return failed(
      usage(
        `the recipe ${recipe.name} has slips made from orders, which only a channel of a pipeline has`,
        'Name the channel with its `orders` in pipeline.yaml.',
      ),
    );
  const pipeline: Pipeline = {
    file: undefined,
    folder,
    media,
    grid,
    printer: PLAIN_PRINTER,
    outputs: [],
    day: { studio: { name: '', contact: [] }, stackOrder: [], lists: media },
    out: resolve(folder, args.out ?? PIPELINE_DEFAULTS.out),
    jobs: undefined,
    channels: [{ name: recipe.name, files: args.files, recipe }],
  };
  return { value: pipeline, diagnostics, sources };
}
