import { existsSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { PIPELINE_DEFAULTS } from '../config/pipeline-file.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { formatDiagnostics } from '../diagnostics/format.js';
import { errnoOf } from '../files/failure.js';
import { writeAtomically } from '../files/write-atomically.js';
import { gridOf, type GridName } from '../geometry/grid.js';
import { mediaNamed } from '../geometry/media.js';
import { hasRoom, isRulerPage, rulerPage, SMALLEST } from '../ruler/ruler-page.js';
import { rulerText } from '../ruler/words.js';
import type { Reason } from '../sheet/sheet.js';
import { EXIT, type CommandIo, type ExitCode } from './exit-codes.js';
import { valueProblems } from './run-pipeline.js';

export interface RulerArgs {
  readonly media: string | undefined;
  readonly grid: string | undefined;
  /** A file, or `-` for the standard output; default `ruler.pdf`. */
  readonly out: string | undefined;
}

export interface RulerIo extends CommandIo {
  /** The current folder, absolute. */
  readonly folder: string;
  /** Writes a file's bytes to where `out` goes. */
  bytes(data: Uint8Array): void;
}

const RULER_FILE = 'ruler.pdf';
const STANDARD_OUTPUT = '-';

/** `slipyard ruler`: a page to print once, and in words what to look for on it. Only a ruler page of ours is written over. */
export async function runRuler(args: RulerArgs, io: RulerIo): Promise<ExitCode> {
  const show = (...diagnostics: readonly Diagnostic[]): void => io.err(formatDiagnostics(diagnostics, { colour: io.colour }));
  const wrong = valueProblems({ jobs: undefined, media: args.media, grid: args.grid });
  if (wrong.length > 0) {
    show(...wrong);
    return EXIT.usage;
  }
  const media = mediaNamed(args.media ?? PIPELINE_DEFAULTS.media);
  const grid = gridOf((args.grid as GridName | undefined) ?? PIPELINE_DEFAULTS.grid);
  const name = args.out ?? RULER_FILE;
  const path = resolve(io.folder, name);
  const problem = hasRoom(media) ? (name === STANDARD_OUTPUT ? undefined : fileProblem(name, path)) : tooSmall(media.name);
  if (problem) {
    show(ofRun(problem));
    return EXIT.usage;
  }
  const page = await rulerPage(media, grid);
  const text = rulerText(media.name, grid);
  if (name === STANDARD_OUTPUT) {
    io.bytes(page);
    io.err(text);
    return EXIT.done;
  }
  const written = await writeAtomically(path, page);
  if (!written.ok) {
    show(ofRun(written.reason));
    return EXIT.cannotGoOn;
  }
  io.out(`${name}: one page of ${media.name} for ${grid.name}\n\n${text}`);
  return EXIT.done;
}

const ofRun = (reason: Reason): Diagnostic => ({ ...reason, severity: 'error', place: { kind: 'run' } });

const tooSmall = (media: string): Reason => ({
  code: 'commands/bad-usage',
  message: `a page of ${media} is too small for the ruler, which takes ${SMALLEST.width} mm across and ${SMALLEST.height} mm down`,
  remedy: 'Give --media of the largest labels that you print, upright, such as 4x6in or a6.',
});

/** Why nothing is written under this name; undefined where no file is, or a ruler page of ours. */
function fileProblem(name: string, path: string): Reason | undefined {
  if (!existsSync(path)) return undefined;
  if (isOurs(path)) return undefined;
  return {
    code: 'commands/bad-usage',
    message: `${name} is there already, and it is no ruler page`,
    remedy: 'Give another name: --out my-ruler.pdf',
  };
}

/** Whether a file can be read and is a ruler page. */
function isOurs(path: string): boolean {
  try {
    return statSync(path).isFile() && isRulerPage(readFileSync(path));
  } catch (error) {
    if (errnoOf(error) === undefined) throw error;
    return false;
  }
}
