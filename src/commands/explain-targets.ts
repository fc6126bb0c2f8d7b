import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { outputNamed, outputsOf } from '../batch/outputs.js';
import { shownName } from '../config/config-file.js';
import type { Loaded } from '../config/loaded.js';
import type { Channel, Pipeline } from '../config/pipeline.js';
import type { CompiledRecipe } from '../config/recipe.js';
import { PLAIN_PRINTER, ROLL, type Output } from '../geometry/printer.js';
import { findOrderFiles } from '../intake/find-orders.js';
import { findCandidates, type Searched } from '../intake/find-work.js';
import { gridTooFine, PIPELINE_FILE, pipelineFrom, type PipelineArgs } from './run-pipeline.js';

/** How a document is explained: what a run would do with it, and where to. */
export interface ExplainTarget {
  readonly recipe: CompiledRecipe;
  /** Where its labels go; where they are laid on sheets, its media is the label's. */
  readonly output: Output;
  /** The printer for pages too large for that; undefined: there is none. */
  readonly large: Output | undefined;
  /** What the printer itself takes, a media name: the sheet, where an output is named that labels are laid on. */
  readonly paper: string;
  /** The channel that takes it; undefined: none does, or there is no pipeline. */
  readonly channel: string | undefined;
  /** The pipeline's file as people should see it; undefined: there is none. */
  readonly pipeline: string | undefined;
}

export interface ExplainPlan {
  /** Where the named files are looked for: of one channel, with the pipeline's output folder left out. */
  readonly search: Searched;
  /** Order files of the pipeline: no documents. */
  readonly except: ReadonlySet<string>;
  readonly targetOf: (path: string) => ExplainTarget;
}

export type ExplainChoice = Pick<PipelineArgs, 'config' | 'recipe' | 'media' | 'grid' | 'files'>;

/**
 * By which recipe each document is explained, and for which printer: as a run of the pipeline would treat it, where there is one (`config`, or
 * `pipeline.yaml` in the folder) and one of its channels takes the document; else by `any-page`. What was typed counts more. Resolved by the
 * functions that `run` uses.
 * @param folder the current folder, absolute
 */
export async function explainPlan(choice: ExplainChoice, folder: string): Promise<Loaded<ExplainPlan>> {
  const { config, recipe, media, grid, files } = choice;
  const typed = { jobs: undefined, out: undefined, media, grid };
  const hasPipeline = config !== undefined || existsSync(resolve(folder, PIPELINE_FILE));
  const piped = hasPipeline ? pipelineFrom({ ...typed, config, recipe: undefined, files: [] }, folder) : undefined;
  if (piped && !piped.value) return { ...piped, value: undefined };
  const pipeline = piped?.value;
  const tooFine = gridTooFine(grid, pipeline?.outputs ?? []);
  if (tooFine) return { diagnostics: [tooFine], sources: new Map(), value: undefined };
  const of = { ...typed, media: media ?? pipeline?.media, grid: grid ?? pipeline?.grid };
  const named = pipelineFrom({ ...of, config: undefined, recipe: recipe ?? 'any-page', out: 'out', files }, folder);
  const told = {
    diagnostics: [...(piped?.diagnostics ?? []), ...named.diagnostics],
    sources: new Map([...(piped?.sources ?? []), ...named.sources]),
  };
  const [only] = named.value?.channels ?? [];
  if (!named.value || !only) return { ...told, value: undefined };
  if (!pipeline) {
    const target = targetIn(named.value, only);
    return { ...told, value: { search: named.value, except: new Set(), targetOf: () => target } };
  }
  const file = shownName(pipeline.file ?? PIPELINE_FILE, folder);
  const { candidates } = await findCandidates(pipeline);
  const owners = new Map(candidates.map(({ path, channel }) => [path, channel]));
  const orders = await findOrderFiles(pipeline);
  const targetOf = (path: string): ExplainTarget => {
    const channel = pipeline.channels[owners.get(path) ?? -1];
    const taken = channel ? { ...channel, ...(recipe === undefined ? {} : { recipe: only.recipe }) } : only;
    return { ...asTyped(targetIn(pipeline, taken), choice), channel: channel?.name, pipeline: file };
  };
  const search = { file: undefined, folder, out: pipeline.out, channels: named.value.channels };
  return { ...told, value: { search, except: new Set(orders.files.map(({ path }) => path)), targetOf } };
}

function targetIn(pipeline: Pipeline, { printOn, recipe }: Pick<Channel, 'printOn' | 'recipe'>): ExplainTarget {
  const { own, large } = outputsOf(pipeline, { recipe, ...(printOn === undefined ? {} : { printOn }) });
  const paper = printOn === undefined ? own.media : outputNamed(pipeline, printOn).media;
  return { recipe, output: own, large, paper, channel: undefined, pipeline: undefined };
}

/** The pipeline's own printer has them already; another one is no longer itself on other paper. */
function asTyped(target: ExplainTarget, { media, grid }: ExplainChoice): ExplainTarget {
  const { output } = target;
  if (output.name === ROLL || (media === undefined && grid === undefined)) return target;
  const gridOnly = { ...output, ...(grid === undefined ? {} : { grid: grid as Output['grid'] }) };
  if (media === undefined) return { ...target, output: gridOnly };
  return { ...target, output: { ...gridOnly, media, printer: PLAIN_PRINTER }, paper: media };
}
