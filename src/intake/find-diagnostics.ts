import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Diagnostic, Severity } from '../diagnostics/diagnostic.js';

/** What a channel's patterns name. */
export type Sought = 'documents' | 'order files';

/** Whose files they are, in front of a message. @param channel undefined: they were named on the command line */
const of = (channel: string | undefined): string => (channel === undefined ? '' : `channel ${channel}: `);

const ofRun = (code: DiagnosticCode, severity: Severity, message: string, remedy: string): Diagnostic => ({
  code,
  severity,
  message,
  place: { kind: 'run' },
  remedy,
});

/** @param what is looked for */
export const nothingMatches = (channel: string | undefined, pattern: string, what: Sought): Diagnostic =>
  what === 'documents'
    ? ofRun(
        'intake/no-match',
        'warning',
        `${of(channel)}nothing matches ${pattern}`,
        'If there should be documents, check the folder and the spelling of the pattern.',
      )
    : ofRun(
        'intake/no-match',
        'warning',
        `${of(channel)}no order file matches ${pattern}, so no order of it is known`,
        'Export its orders into that folder, or check the spelling of the pattern.',
      );

/** @param near what is there and may be meant */
export const noSuchFile = (channel: string | undefined, name: string, near: string | undefined): Diagnostic =>
  ofRun(
    'intake/no-file',
    'error',
    `${of(channel)}there is no file or folder ${name}`,
    near === undefined ? 'Check the spelling and the folder that you are in.' : `Is it ${near}?`,
  );

export const nothingNamed = (channel: string | undefined, patterns: readonly string[]): Diagnostic =>
  ofRun(
    'intake/nothing-named',
    'error',
    `${of(channel)}no files are named; ${patterns.join(' and ')} only ${patterns.length > 1 ? 'take' : 'takes'} away`,
    'Name the files that are to be taken before it, for example inbox/*.pdf.',
  );

export const onlyOutput = (channel: string | undefined, pattern: string, count: number): Diagnostic =>
  ofRun(
    'intake/only-output',
    'error',
    `${of(channel)}all ${count} files of ${pattern} lie in the output folder, which is never read`,
    'Name an output folder that holds no documents to read.',
  );

export const unreadableFolder = (channel: string | undefined, path: string, errno: string, what: Sought): Diagnostic =>
  errno === 'ENOENT' || errno === 'ELOOP'
    ? ofRun('intake/unreadable', 'warning', `${of(channel)}the link ${path} leads nowhere`, 'Remove the link or mend it.')
    : ofRun(
        'intake/unreadable-folder',
        'error',
        `${of(channel)}the folder ${path} can not be read (${errno === 'EACCES' ? 'permission is denied' : `the system reports ${errno}`}); ${what} in it are missing`,
        'Give your user the right to read it, or check the disk, then run again.',
      );

export const twoChannels = (first: string, second: string, example: string, count: number): Diagnostic =>
  ofRun(
    'intake/two-channels',
    'error',
    `channels ${first} and ${second} both name ${example}${count > 1 ? ` and ${count - 1} more` : ''}; taken for ${first} only`,
    'Narrow the `files` of one of the two, so that each document belongs to one channel.',
  );
