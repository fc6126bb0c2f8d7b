#!/usr/bin/env node
import { readFileSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { Command, CommanderError } from 'commander';
import { badUsageLine, exitLine } from './commands/bad-usage.js';
import { type CommandIo, EXIT, type ExitCode } from './commands/exit-codes.js';

/** What commander hands to the action of `run`. */
interface RunOptions {
  readonly config?: string;
  readonly recipe?: string;
  readonly out?: string;
  readonly jobs?: string;
  readonly media?: string;
  readonly grid?: string;
  readonly dryRun?: true;
  readonly json?: true;
  readonly quiet?: true;
  readonly date?: string;
}

/** What commander hands to the action of `explain`. */
interface ExplainOptions {
  readonly config?: string;
  readonly recipe?: string;
  readonly media?: string;
  readonly grid?: string;
  readonly picture?: string;
  readonly json?: true;
}

const dumb = process.env['TERM'] === 'dumb';
const wantsColour = !process.argv.includes('--no-color') && !process.env['NO_COLOR'] && !dumb;
const jsonLines = ['run', 'check', 'explain', 'steps'].includes(process.argv[2] ?? '') && process.argv.includes('--json');

/** The system's name for what went wrong with the standard output; a reader that has seen enough (`| head`) is no failure. */
let outFailure: string | undefined;
const noteOut = (error?: NodeJS.ErrnoException | null): void => {
  if (error && error.code !== 'EPIPE') outFailure ??= error.code ?? error.message;
};
const toOut = (data: string | Uint8Array): void => void process.stdout.write(data, noteOut);

const io: CommandIo = {
  out: toOut,
  err: (text) => void process.stderr.write(text),
  colour: wantsColour && process.stdout.isTTY && process.stderr.isTTY,
};

function leave(exitCode: ExitCode): void {
  process.exit(exitCode);
}

/** Other programs come first: labels are made in the background. Threads take over what the process has when they start. */
function stepBack(): void {
  try {
    setPriority(constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // Not every system lets a process do so; it is only a courtesy.
  }
}

let exitCode: ExitCode = EXIT.done;

function program(): Command {
  const slipyard = new Command('slipyard')
    .description('Turns shipping-label documents of every sales channel into one proved, print-ready stack.')
    .version(version(), '--version', 'Show the version.')
    .helpOption('-h, --help', 'Show help.')
    .helpCommand(false)
    .configureHelp({ showGlobalOptions: false })
    .configureOutput({ outputError: (text, write) => write(text.replace(/^error: /, 'slipyard: ')) })
    .showHelpAfterError('Try slipyard --help, or --help behind a command.')
    .exitOverride();

  slipyard
    .command('run')
    .summary('make the stacks')
    .description('Makes the stacks of pipeline.yaml, or of named files with one recipe.')
    .argument('[files...]', 'files or folders, with --recipe')
    .option('--config <file>', 'pipeline file (default: pipeline.yaml in this folder)')
    .option('--recipe <recipe>', 'one recipe over the named files, without a pipeline file')
    .option('--out <dir>', 'output folder')
    .option('--jobs <n>', 'documents worked on at a time (default: what the machine can spare)')
    .option('--media <media>', 'what is printed on, such as 4x6in or 100x150mm')
    .option('--grid <grid>', "the printer's dots, such as 203dpi or 8dpmm")
    .option('--dry-run', 'do everything but write')
    .option('--json', 'tell everything as JSON lines; the last one has the exit code')
    .option('--quiet', 'no progress')
    .option('--date <day>', 'the day of the run, such as 2026-11-28; today when left out')
    .option('--no-color', 'no colours')
    .addHelpText('after', '\nExample:\n  slipyard run --recipe any-page --out out inbox/*.pdf')
    .action(async (files: string[], options: RunOptions) => {
      stepBack();
      const { config, recipe, out, jobs, media, grid, dryRun = false, json = false, quiet = false, date } = options;
      const args = { config, recipe, out, jobs, media, grid, files, dryRun, json, quiet, date };
      const terminal = process.stderr.isTTY && !dumb ? process.stderr : undefined;
      const { runRun } = await import('./commands/run.js');
      exitCode = await runRun(args, { ...io, folder: process.cwd(), terminal, signals: process, today: localDay, leave });
    });

  slipyard
    .command('check')
    .summary('check pipeline and recipes')
    .description('Checks a pipeline and its recipes, and touches nothing.')
    .argument('[files...]', 'pipeline or recipe files, or names of recipes (default: pipeline.yaml)')
    .option('--config <file>', 'pipeline file')
    .option('--json', 'JSON lines instead of text')
    .option('--no-color', 'no colours')
    .addHelpText('after', '\nExample:\n  slipyard check pipeline.yaml')
    .action(async (files: string[], { config, json }: { config?: string; json?: true }) => {
      const { runCheck } = await import('./commands/check.js');
      exitCode = await runCheck({ config, files, json }, io);
    });

  slipyard
    .command('draft')
    .summary('draft a recipe from samples')
    .description(
      'Drafts a recipe from one or a few documents of a channel, tested on them, or how a file of orders is read; writes it to the standard output.',
    )
    .argument('[files...]', 'documents or folders')
    .option('--orders <file>', 'a file of orders (CSV or JSON): draft the `orders` lines of the recipe instead')
    .option('--media <media>', 'what is printed on, such as 4x6in or 100x150mm')
    .option('--grid <grid>', "the printer's dots, such as 203dpi or 8dpmm")
    .option('--no-color', 'no colours')
    .addHelpText('after', '\nExample:\n  slipyard draft inbox/mugs/*.pdf > recipes/mugs.yaml')
    .action(async (files: string[], { orders, media, grid }: { orders?: string; media?: string; grid?: string }, draft: Command) => {
      stepBack();
      if (orders !== undefined) {
        if (files.length > 0 || media !== undefined || grid !== undefined)
          draft.error('error: --orders takes one file of orders, and no documents or other options beside it');
        const { runDraftOrders } = await import('./commands/draft-orders.js');
        exitCode = runDraftOrders({ orders }, { ...io, folder: process.cwd() });
        return;
      }
      const { runDraft } = await import('./commands/draft.js');
      exitCode = await runDraft({ files, media, grid }, { ...io, folder: process.cwd() });
    });

  slipyard
    .command('explain')
    .summary('explain what is on pages, and what would happen to them')
    .description(
      'Says of each page what is on it, what comes of it when it is sent to the label printer as it is, and what Slipyard would do.',
    )
    .argument('[files...]', 'documents or folders')
    .option('--config <file>', 'pipeline file (default: pipeline.yaml in this folder, if there is one)')
    .option('--recipe <recipe>', "the recipe that Slipyard would use (default: that of the document's channel, else any-page)")
    .option('--media <media>', 'what is printed on, such as 4x6in or 100x150mm')
    .option('--grid <grid>', "the printer's dots, such as 203dpi or 8dpmm")
    .option('--picture <file.png>', 'draw the page with label and codes marked; of several pages FILE-1.png and so on')
    .option('--json', 'a JSON line for each page; the last line has the exit code')
    .option('--no-color', 'no colours')
    .addHelpText('after', '\nExample:\n  slipyard explain --picture page.png inbox/mugs/order-1.pdf')
    .action(async (files: string[], options: ExplainOptions) => {
      stepBack();
      const { config, recipe, media, grid, picture, json = false } = options;
      const { runExplain } = await import('./commands/explain.js');
      exitCode = await runExplain({ files, config, recipe, media, grid, picture, json }, { ...io, folder: process.cwd() });
    });

  slipyard
    .command('ruler')
    .summary('make a page that shows how true the printer is')
    .description('Makes a page to print once, with rulers, dots and codes, and says what to look for and what to write into the pipeline.')
    .option('--media <media>', 'what is printed on (default: 4x6in)')
    .option('--grid <grid>', "the printer's dots (default: 203dpi)")
    .option('--out <file>', 'where to, or - for the standard output (default: ruler.pdf)')
    .option('--no-color', 'no colours')
    .addHelpText('after', '\nExample:\n  slipyard ruler --media 100x150mm --grid 8dpmm')
    .action(async ({ media, grid, out }: { media?: string; grid?: string; out?: string }) => {
      const { runRuler } = await import('./commands/ruler.js');
      exitCode = await runRuler({ media, grid, out }, { ...io, folder: process.cwd(), bytes: toOut });
    });

  slipyard
    .command('steps')
    .summary('list the steps of recipes')
    .description('Lists the steps that recipes are made of, with their options.')
    .option('--json', 'JSON lines instead of text')
    .option('--table', 'a Markdown table')
    .option('--no-color', 'no colours')
    .addHelpText('after', '\nExample:\n  slipyard steps')
    .action(async (options: { json?: true; table?: true }) => {
      const { runSteps } = await import('./commands/steps.js');
      exitCode = await runSteps(options, io);
    });

  slipyard
    .command('schema')
    .summary('write the editor schemas')
    .description('Writes the schemas by which code editors complete and check pipelines and recipes.')
    .argument('[folder]', 'where to (default: recipes)')
    .option('--no-color', 'no colours')
    .addHelpText('after', '\nExample:\n  slipyard schema recipes')
    .action(async (out: string | undefined) => {
      const { runSchema } = await import('./commands/schema.js');
      exitCode = await runSchema({ out }, io);
    });

  return slipyard.addHelpText('after', '\nExample:\n  slipyard run');
}

function version(): string {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

/** Where no hint comes with a message, the help of the command itself. */
const withHelp = (message: string): string =>
  message.includes('\n') ? message : `${message}\n(See slipyard ${process.argv[2] ?? ''} --help.)`;

/**
 * Runs the command that the arguments name; only that one is loaded. What is thrown is a bug of ours; this is the one place that
 * catches it.
 */
async function main(): Promise<ExitCode> {
  try {
    await program().parseAsync();
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) {
      if (error.exitCode === 0) return EXIT.done;
      if (jsonLines) io.out(badUsageLine(withHelp(error.message)));
      return EXIT.usage;
    }
    const cause = error instanceof Error ? (error.stack ?? error.message) : String(error);
    io.err(`slipyard: an error in this program, please report it with these lines:\n${cause}\n`);
    return EXIT.cannotGoOn;
  }
}

// Labels count for more than talk of them: a run whose log is on a full disk, or whose terminal is gone, goes on to its end.
process.stderr.on('error', () => undefined);
process.stdout.on('error', noteOut);
const ended = await main();
if (jsonLines) io.out(exitLine(ended));
// Whatever is still on its way out goes first; a thread stuck in native code must not keep the process.
process.stdout.write('', () => {
  if (outFailure !== undefined)
    io.err(`slipyard: the standard output can't be written (${outFailure}), so what it was to hold is not whole\n`);
  process.stderr.write('', () => leave(outFailure === undefined ? ended : EXIT.cannotGoOn));
});

/** Today by the machine's clock and time zone. */
function localDay(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
