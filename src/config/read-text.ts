import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.js';
import { nearest } from '../diagnostics/nearest.js';
import { ConfigFile, shownName } from './config-file.js';
import { quote } from './words.js';

/** A pipeline or recipe larger than this (bytes) is some other file. */
const LARGEST = 256 * 1024;

export type TextRead = { readonly file: ConfigFile } | { readonly file: undefined; readonly diagnostic: Diagnostic };

/**
 * Reads a YAML file as UTF-8 text, a byte order mark taken off.
 * @param what "pipeline" or "recipe"
 * @param askedFrom where another file names this one; without it the diagnostic points at the file itself
 */
export function readConfigText(path: string, what: string, askedFrom?: Place): TextRead {
  const shown = shownName(path);
  const place: Place = askedFrom ?? { kind: 'document', file: shown };
  const refuse = (code: DiagnosticCode, message: string, remedy: string, at = place): TextRead => ({
    file: undefined,
    diagnostic: { code, severity: 'error', message, place: at, remedy },
  });

  let bytes: Buffer;
  try {
    const stat = statSync(path);
    if (stat.isDirectory()) return refuse('config/folder', `${quote(shown)} is a folder, not a ${what} file`, folderRemedy(path, what));
    if (!stat.isFile()) return refuse('config/unreadable', `${quote(shown)} is no ordinary file`, `Name a YAML file with the ${what}.`);
    if (stat.size > LARGEST) return tooLarge(stat.size);
    bytes = readFileSync(path);
    if (bytes.length > LARGEST) return tooLarge(bytes.length);
  } catch (error) {
    const cause = error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : 'unknown cause';
    if (cause === 'ENOENT' || cause === 'ENOTDIR')
      return refuse('config/no-file', `there is no file ${quote(shown)}`, missingRemedy(path, what));
    return refuse('config/unreadable', `${quote(shown)} can't be read (${cause})`, 'Check who may read the file and its folder.');
  }
  return decode(bytes);

  function tooLarge(size: number): TextRead {
    return refuse(
      'config/too-large',
      `${quote(shown)} is ${Math.ceil(size / 1024)} KB; a ${what} is a short text file of ${LARGEST / 1024} KB at most`,
      `Name the YAML file with the ${what}, not a document.`,
    );
  }

  function decode(content: Buffer): TextRead {
    const startsWith = (...head: readonly number[]): boolean => head.every((byte, index) => content[index] === byte);
    const at = (offset: number): Place => {
      const before = content.subarray(0, offset).toString('utf8');
      return new ConfigFile(path, before).place({ start: before.length, end: before.length });
    };
    const save = 'Open it in a text editor and save it as plain text in UTF-8.';
    if (startsWith(0xff, 0xfe) || startsWith(0xfe, 0xff))
      return refuse('config/encoding', 'the file is saved as UTF-16, not as UTF-8', save, at(0));
    const zero = content.indexOf(0);
    if (zero >= 0)
      return refuse('config/encoding', 'the file holds bytes that are no text', `Name the YAML file with the ${what}.`, at(zero));
    try {
      return { file: new ConfigFile(path, new TextDecoder('utf-8', { fatal: true }).decode(content)) };
    } catch {
      return refuse('config/encoding', 'a character here is not in UTF-8', save, at(firstBadByte(content)));
    }
  }
}

/** The offset of the first byte that begins no character of UTF-8. */
function firstBadByte(bytes: Uint8Array): number {
  const complete = (end: number): string =>
    new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes.subarray(0, end), { stream: true });
  let good = 0;
  let bad = bytes.length + 1;
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    try {
      complete(middle);
      good = middle;
    } catch {
      bad = middle;
    }
  }
  // A character that is begun and not ended counts as good so far, but is not in the text.
  return Buffer.byteLength(complete(good));
}

/** What to do where no pipeline file is. */
export const WITHOUT_PIPELINE =
  'Go to the folder that has one, name it with --config FILE, or do one recipe without it: slipyard run --recipe any-page --out out FILE…';

const yamlFilesIn = (folder: string): readonly string[] => {
  try {
    return readdirSync(folder)
      .filter((name) => ['.yaml', '.yml'].includes(extname(name).toLowerCase()))
      .sort();
  } catch {
    return [];
  }
};

function folderRemedy(folder: string, what: string): string {
  const example = yamlFilesIn(folder)[0];
  return example === undefined
    ? `Name the YAML file with the ${what}.`
    : `Name the file in it, for example ${quote(shownName(join(folder, example)))}.`;
}

function missingRemedy(path: string, what: string): string {
  const folder = dirname(path);
  const near = nearest(basename(path), yamlFilesIn(folder));
  if (near !== undefined) return `Did you mean ${quote(shownName(join(folder, near)))}?`;
  if (what === 'pipeline') return WITHOUT_PIPELINE;
  return `Check the name and the folder of the ${what} file.`;
}
