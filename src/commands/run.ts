import { runBatch, type RunEnd } from '../batch/run-batch.js';
import type { RunEvent } from '../batch/events.js';
import { type SignalSource, type StopSignal, watchStop } from '../batch/stop.js';
import { shownName } from '../config/config-file.js';
import type { Loaded } from '../config/loaded.js';
import type { Pipeline } from '../config/pipeline.js';
import { formatDiagnostic, formatDiagnostics } from '../diagnostics/format.js';
import { diagnosticLine, endLines, eventLine } from '../report/json-lines.js';
import { runLog } from '../report/log.js';
import { plainProgress, type Progress, silentProgress, terminalProgress } from '../report/progress.js';
import { summary } from '../report/summary.js';
import { count } from '../report/words.js';
import { type CommandIo, EXIT, type ExitCode } from './exit-codes.js';
import { type PipelineArgs, pipelineFrom } from './run-pipeline.js';

export interface RunArgs extends PipelineArgs {
  readonly dryRun: boolean;
  readonly json: boolean;
  readonly quiet: boolean;
  /** The day of the run as typed; undefined: today. */
  readonly date: string | undefined;
}

export interface RunIo extends CommandIo {
  /** The current folder, absolute. */
  readonly folder: string;
  /** Where an updating line may be shown; undefined when talk doesn't go to a terminal. */
  readonly terminal: NodeJS.WriteStream | undefined;
  readonly signals: SignalSource;
  /** Today where the machine stands, `2026-11-28`. */
  readonly today: () => string;
  /** Ends the process at once: the second request to end. */
  readonly leave: (exitCode: ExitCode) => void;
}

/** `slipyard run`: the channels' documents to print-ready stacks. */
export async function runRun(args: RunArgs, io: RunIo): Promise<ExitCode> {
  const today = args.date ?? io.today();
  const loaded = isDay(today) ? pipelineFrom(args, io.folder) : badDate(today);
  showDiagnostics(loaded, args, io);
  if (!loaded.value) return EXIT.usage;
  const pipeline = loaded.value;
  const out = shownName(pipeline.out, io.folder);
  const talk = (text: string): void => {
    if (!args.quiet) io.err(text);
  };

  const log = runLog();
  const progress = progressFor(args, io);
  const stop = watchStop(
    io.signals,
    () => {
      progress.end();
      io.err('Stopping: what is in work is finished, nothing more is begun. Once more leaves at once.\n');
    },
    (by) => io.leave(exitOf(by)),
  );
  const emit = (event: RunEvent): void => {
    log.write(event);
    progress.show(event);
    if (args.json) io.out(eventLine(event) ?? '');
    else if (event.type === 'diagnostic') io.err(formatDiagnostics([event.diagnostic], { colour: io.colour, sources: loaded.sources }));
    if (event.type === 'started') talk(startLine(event, pipeline, io.folder));
  };
  const end = await runBatch({ pipeline, dryRun: args.dryRun, today, stop: stop.signal, emit, log: () => log.text() }).finally(() => {
    progress.end();
    stop.release();
  });

  if (args.json) io.out(endLines(end));
  switch (end.kind) {
    case 'finished':
      if (!args.json) io.out(summary(end.record, { colour: io.colour, out, dryRun: args.dryRun }));
      if (args.dryRun) talk('A dry run: nothing was written.\n');
      return isClean(end) ? EXIT.done : EXIT.unfinished;
    case 'stopped':
      io.err(
        `Stopped: ${end.done} of ${count(end.of, 'document')} done, ${end.of - end.done} left. No stack was written${args.dryRun ? '' : `, and what an earlier run left in ${out} is as it was`}.\n` +
          'Run the same command again: it begins anew and misses nothing.\n',
      );
      return exitOf(stop.by() ?? 'SIGINT');
    case 'cannot-go-on': {
      const { code, message, remedy } = end.reason;
      io.err(`${formatDiagnostic({ code, severity: 'error', message, remedy, place: { kind: 'run' } }, { colour: io.colour })}\n`);
      if (end.left !== undefined) io.err(LEFT[end.left](out));
      return EXIT.cannotGoOn;
    }
  }
}

/** What lies in the output folder after a run that could not go on; somebody may take it for today's. */
const LEFT = {
  'as-it-was': (out: string) => `No stack was written; what an earlier run left in ${out} is as it was.\n`,
  mixed: (out: string) =>
    `Some stacks in ${out}/print may be of this run and others of an earlier one: print nothing from there until a run has ended well.\n`,
} as const;

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text)) && new Date(text).toISOString().startsWith(text);

const badDate = (date: string): Loaded<Pipeline> => ({
  value: undefined,
  diagnostics: [
    {
      code: 'commands/bad-usage',
      severity: 'error',
      message: `--date is “${date}”`,
      place: { kind: 'run' },
      remedy: 'Write a day such as 2026-11-28.',
    },
  ],
  sources: new Map(),
});

const exitOf = (by: StopSignal): ExitCode => (by === 'SIGINT' ? EXIT.interrupted : EXIT.terminated);

/** Whether nothing failed, nothing is held or left over, and nothing was found wrong on the way. */
function isClean({ record }: RunEnd & { kind: 'finished' }): boolean {
  const { held, failed } = record.account.items;
  const looseEnds = record.orders?.looseEnds.length ?? 0;
  return held === 0 && failed === 0 && looseEnds === 0 && record.diagnostics.every(({ severity }) => severity !== 'error');
}

function showDiagnostics({ diagnostics, sources }: Loaded<Pipeline>, { json }: RunArgs, io: RunIo): void {
  if (json) for (const diagnostic of diagnostics) io.out(diagnosticLine(diagnostic));
  else io.err(formatDiagnostics(diagnostics, { colour: io.colour, sources }));
}

function progressFor({ quiet }: RunArgs, io: RunIo): Progress {
  if (quiet) return silentProgress;
  return io.terminal ? terminalProgress(io.terminal) : plainProgress((text) => io.err(text));
}

function startLine({ documents }: RunEvent & { type: 'started' }, pipeline: Pipeline, folder: string): string {
  const what = pipeline.file === undefined ? `recipe ${pipeline.channels[0]?.recipe.name ?? ''}` : shownName(pipeline.file, folder);
  return `${what}: ${count(documents, 'document')} found.\n`;
}
