import { hostname } from 'node:os';
import { textOf } from '../house/tree.js';
import { filesIn } from '../batch/inbox.js';
import { runBuilt } from '../built.js';

export interface Transcript {
  readonly text: string;
  readonly code: number | null;
  readonly stdout: string;
}

const { version } = JSON.parse(textOf('package.json')) as { version: string };

/** What differs from machine to machine and from day to day, by a name. */
function settled(text: string, folder: string): string {
  return text
    .replaceAll(folder, '<folder>')
    .replaceAll(hostname(), '<host>')
    .replace(/process \d+ on/g, 'process <id> on')
    .replace(/\d{4}-\d\d-\d\dT[\d:.]+Z/g, '<time>')
    .replace(/\b[0-9a-f]{64}\b/g, '<sha256>')
    .replace(new RegExp(`^${version.replaceAll('.', '\\.')}$`, 'gm'), '<version>');
}

/** Runs the built command in `folder` and writes down what was typed, what it said, how it ended and what lies there afterwards. */
export async function transcript(args: readonly string[], folder: string): Promise<Transcript> {
  const { code, stdout, stderr } = await runBuilt(args, folder);
  const typed = args.map((each) => (/^[\w./-]+$/.test(each) ? each : `'${each}'`)).join(' ');
  const part = (name: string, text: string): string => (text === '' ? '' : `--- ${name}\n${text.replace(/\n?$/, '\n')}`);
  const files = [...filesIn(folder).keys()].map((name) => `${name}\n`).join('');
  const parts = [part('stdout', stdout), part('stderr', stderr), `--- exit code ${String(code)}\n`, part('files', files)];
  return { text: settled(`$ slipyard${typed === '' ? '' : ` ${typed}`}\n${parts.join('')}`, folder), code, stdout };
}
