import { parse, resolve } from 'node:path';
import { stackPlanOf } from '../batch/stack-plan.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { formatDiagnostics } from '../diagnostics/format.js';
import { explainDocument, type ExplainedDocument, type ExplainJob } from '../explain/explain-document.js';
import { writeAtomically } from '../files/write-atomically.js';
import { findWork } from '../intake/find-work.js';
import { readWork } from '../intake/read-work.js';
import type { WorkItem } from '../intake/work.js';
import { pageLine } from '../report/explain-json.js';
import { explainText } from '../report/explain-text.js';
import { jsonLine } from '../report/json-lines.js';
import type { Reason } from '../sheet/sheet.js';
import { EXIT, type CommandIo, type ExitCode } from './exit-codes.js';
import { picturePath, pictureProblem } from './explain-picture.js';
import { noFiles, ofNamedFiles } from './named-files.js';
import { explainPlan, type ExplainTarget } from './explain-targets.js';

export interface ExplainArgs {
  /** Documents, folders or patterns. */
  readonly files: readonly string[];
  /** The pipeline file; left out: `pipeline.yaml` in the folder, where there is one. */
  readonly config: string | undefined;
  /** Left out: that of the document's channel, else `any-page`. */
  readonly recipe: string | undefined;
  readonly media: string | undefined;
  readonly grid: string | undefined;
  /** Where to draw the pages, a name that ends in `.png`; of several pages each gets its number before the ending. */
  readonly picture: string | undefined;
  readonly json: boolean;
}

export interface ExplainIo extends CommandIo {
  /** The current folder, absolute. */
  readonly folder: string;
}

/** `slipyard explain`: what is on each page, what comes of it as it is, and what a run would do; to `out`, talk to `err`. */
export async function runExplain(args: ExplainArgs, io: ExplainIo): Promise<ExitCode> {
  const show = (diagnostics: readonly Diagnostic[], sources?: ReadonlyMap<string, string>): void => {
    if (args.json) for (const diagnostic of diagnostics) io.out(jsonLine({ type: 'diagnostic', diagnostic }));
    else io.err(formatDiagnostics(diagnostics, { colour: io.colour, ...(sources ? { sources } : {}) }));
  };

  if (args.files.length === 0) {
    show([ofRun(noFiles(EXAMPLE))]);
    return EXIT.usage;
  }
  const loaded = await explainPlan(args, io.folder);
  const badPicture = args.picture === undefined ? undefined : pictureProblem(args.picture);
  const wrong = [...loaded.diagnostics, ...(badPicture ? [ofRun(badPicture)] : [])];
  if (!loaded.value || badPicture) {
    show(wrong, loaded.sources);
    return EXIT.usage;
  }
  show(wrong, loaded.sources);
  const { search, except, targetOf } = loaded.value;
  const { intake, diagnostics } = await findWork(search, { except });
  const nothing = intake.work.length + intake.refused.length === 0;
  show(ofNamedFiles(diagnostics, nothing));
  show(intake.refused.map(({ item, state, reason }) => ofDocument(item, reason, state === 'failed' ? 'error' : 'note')));
  let unread = intake.refused.filter(({ state }) => state === 'failed').length;
  if (intake.work.length === 0) {
    // Of one mistake it is told once.
    if (diagnostics.length === 0 && unread === 0) show([ofRun(NOTHING)]);
    return unread > 0 ? EXIT.unfinished : EXIT.cannotGoOn;
  }
  const overwritten = args.picture === undefined ? undefined : pictureOverSource(args.picture, intake.work, io.folder);
  if (overwritten) {
    show([ofRun(overwritten)]);
    return EXIT.usage;
  }

  const pictures: PictureNames = { asked: args.picture, folder: io.folder, taken: 0, single: false };
  let first = true;
  for (const [index, item] of intake.work.entries()) {
    const read = await readWork(item);
    const explained = read.ok
      ? await explainDocument({
          bytes: read.bytes,
          shownName: item.shownName,
          ...jobFor(targetOf(item.path)),
          pictures: args.picture !== undefined,
        })
      : { refused: read.reason };
    if ('refused' in explained) {
      unread += 1;
      show([ofDocument(item, explained.refused, 'error')]);
      continue;
    }
    show(explained.notes.map((note) => ofDocument(item, { code: 'reading/put-right', message: note, remedy: '' }, 'note')));
    if (index === 0) pictures.single = intake.work.length === 1 && explained.pages.length === 1;
    const failed = await tell(
      explained,
      pictures,
      (text) => {
        if (!args.json && !first) io.out('\n');
        first = false;
        io.out(text);
      },
      args.json,
      io.colour,
    );
    if (failed) {
      show([ofRun(failed)]);
      return EXIT.cannotGoOn;
    }
  }
  return unread > 0 ? EXIT.unfinished : EXIT.done;
}

interface PictureNames {
  readonly asked: string | undefined;
  readonly folder: string;
  /** Pictures written so far. */
  taken: number;
  /** Whether there is one page in all, so that its picture needs no number. */
  single: boolean;
}

/** Writes the pictures of a document and tells its pages; the reason when a picture can't be written. */
async function tell(
  { pages, pictures }: ExplainedDocument,
  names: PictureNames,
  out: (text: string) => void,
  json: boolean,
  colour: boolean,
): Promise<Reason | undefined> {
  const left = [...pictures];
  for (const page of pages) {
    const png = page.onPage ? left.shift() : undefined;
    let picture: string | undefined;
    if (names.asked !== undefined && png) {
      names.taken += 1;
      picture = picturePath(names.asked, names.single ? undefined : names.taken);
      const written = await writeAtomically(resolve(names.folder, picture), png);
      if (!written.ok) return written.reason;
    }
    out(json ? pageLine(page, picture) : explainText(page, { colour, picture }));
  }
  return undefined;
}

/** A downloaded picture is never overwritten: neither by the name that was given nor by one with a number. */
function pictureOverSource(picture: string, work: readonly WorkItem[], folder: string): Reason | undefined {
  const { dir, name } = parse(resolve(folder, picture));
  const source = work.find(({ path }) => {
    const own = parse(path);
    return (
      own.dir === dir &&
      own.ext.toLowerCase() === '.png' &&
      (own.name === name || (own.name.startsWith(`${name}-`) && /^\d+$/.test(own.name.slice(name.length + 1))))
    );
  });
  return (
    source && {
      code: 'commands/bad-usage',
      message: `--picture could overwrite ${source.shownName}, which is one of the documents`,
      remedy: 'Give it another name.',
    }
  );
}

function jobFor({
  recipe,
  output,
  large,
  paper,
  channel,
  pipeline,
}: ExplainTarget): Pick<ExplainJob, 'recipe' | 'output' | 'large' | 'paper' | 'from'> {
  const laidOnSheets = stackPlanOf(recipe, output.grid).impose !== undefined;
  const goesTo = { name: output.name, media: paper, grid: output.grid, laidOnSheets };
  return { recipe, output, large, paper, from: pipeline === undefined ? undefined : { pipeline, channel, output: goesTo } };
}

const ofRun = (reason: Reason): Diagnostic => ({ ...reason, severity: 'error', place: { kind: 'run' } });

function ofDocument({ shownName }: WorkItem, { remedy, ...reason }: Reason, severity: 'error' | 'note'): Diagnostic {
  return { ...reason, ...(remedy === '' ? {} : { remedy }), severity, place: { kind: 'document', file: shownName } };
}

const EXAMPLE = 'explain inbox/mugs/order-1.pdf';

const NOTHING: Reason = {
  code: 'explain/no-documents',
  message: 'nothing to explain: no document was found',
  remedy: `Name documents or folders: slipyard ${EXAMPLE}`,
};
