import { dirname, resolve } from 'node:path';
import { countInWords, hasErrors, inReadingOrder } from '../diagnostics/collect.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { formatDiagnostics } from '../diagnostics/format.js';
import { loadNamed } from '../config/load-named.js';
import { loadPipeline } from '../config/load-pipeline.js';
import { missingNames, namesInOutput } from '../intake/missing-names.js';
import { PIPELINE_FILE } from './run-pipeline.js';
import { diagnosticLine, jsonLine } from '../report/json-lines.js';
import { EXIT, type CommandIo, type ExitCode } from './exit-codes.js';

export interface CheckArgs {
  /** The pipeline file; without it and without `files`, `pipeline.yaml` in the current folder. */
  readonly config?: string | undefined;
  /** Recipe or pipeline files to check, or names of recipes. */
  readonly files: readonly string[];
  /** JSON lines instead of text. */
  readonly json?: boolean | undefined;
}

/** Checks a pipeline with its recipes, or the files named, and touches nothing. What it finds is its result: it goes to `out`. */
export async function runCheck(args: CheckArgs, io: CommandIo): Promise<ExitCode> {
  const checked = await Promise.all([
    ...(args.config !== undefined || args.files.length === 0 ? [countPipeline(args.config ?? PIPELINE_FILE)] : []),
    ...args.files.map(checkNamed),
  ]);
  const diagnostics = inReadingOrder(checked.flatMap((each) => each.diagnostics));
  const sources = new Map(checked.flatMap((each) => [...each.sources]));
  const exitCode = hasErrors(diagnostics) ? EXIT.usage : EXIT.done;
  const channels = checked.reduce((sum, each) => sum + each.channels, 0);
  const recipes = new Set(checked.flatMap((each) => each.recipes)).size;

  if (args.json === true) {
    for (const diagnostic of diagnostics) io.out(diagnosticLine(diagnostic));
    io.out(jsonLine({ type: 'checked', channels, recipes }));
    return exitCode;
  }
  io.out(formatDiagnostics(diagnostics, { colour: io.colour, sources }));
  io.out(`${summary(channels, recipes, diagnostics)}\n`);
  return exitCode;
}

interface Checked {
  readonly diagnostics: readonly Diagnostic[];
  readonly sources: ReadonlyMap<string, string>;
  readonly channels: number;
  /** Files of the recipes, absolute. */
  readonly recipes: readonly string[];
}

async function countPipeline(path: string): Promise<Checked> {
  const { value, diagnostics, sources, patterns } = loadPipeline(path);
  const channels = value?.channels ?? [];
  // A run names them too, but only when it is under way; a folder that isn't there is seen before.
  const folder = dirname(resolve(path));
  const missing = await missingNames(patterns, folder);
  const inOutput = value ? namesInOutput(patterns, folder, value.out) : [];
  return {
    diagnostics: [...diagnostics, ...missing, ...inOutput],
    sources,
    channels: channels.length,
    recipes: channels.map(({ recipe }) => recipe.file ?? recipe.name),
  };
}

async function checkNamed(name: string): Promise<Checked> {
  const named = loadNamed(name, process.cwd());
  if (named.kind === 'pipeline') return countPipeline(named.path);
  const { value, diagnostics, sources } = named.loaded;
  return { diagnostics, sources, channels: 0, recipes: value ? [value.file ?? value.name] : [] };
}

function summary(channels: number, recipes: number, diagnostics: readonly Diagnostic[]): string {
  const found = countInWords(diagnostics);
  if (hasErrors(diagnostics)) return `${found}; nothing would be started`;
  const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;
  const what = channels === 0 ? count(recipes, 'recipe') : `${count(channels, 'channel')}, ${count(recipes, 'recipe')}`;
  return `${what}: ${found === '' ? 'no problems' : found}`;
}
