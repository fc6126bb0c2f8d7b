import { readdir as readFolder, realpath as realPathOf, type Dirent } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { isAbsolute, join, resolve, sep } from 'node:path';
import { glob, isDynamicPattern } from 'tinyglobby';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { nearestName } from './nearest-name.js';
import { shownPath } from './shown-name.js';
import { noSuchFile, nothingMatches, nothingNamed, onlyOutput, type Sought, unreadableFolder } from './find-diagnostics.js';

/** What a channel names: globs, files and folders; one that begins with `!` takes away what it matches. */
export interface Wanted {
  /** Undefined: the files are named on the command line. */
  readonly channel: string | undefined;
  readonly patterns: readonly string[];
  /** The folder that they start from, absolute. */
  readonly folder: string;
  /** The output folder, absolute: nothing in it is ever taken. */
  readonly out: string;
  /** What they are, for messages; left out: documents. */
  readonly what?: Sought;
}

export interface Found {
  /** Absolute, each once, in no order that matters. */
  readonly paths: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

/** A folder that begins with a dot belongs to a program. */
const NEVER_ENTERED = ['**/.*/**'];

/**
 * The files that a channel names. A name that exists is taken as it stands, so that `order (2).pdf` is a file and no pattern, and
 * `mugs (1)/*.pdf` looks into that folder; a folder gives all files in it and below. A file or folder that is named and not there is an
 * error, a pattern that matches nothing a warning. Upper and lower case of letters are the same. Hidden files are found too: it is
 * for the caller to say that they were passed over.
 */
export async function findFiles({ channel, patterns, folder, out, what = 'documents' }: Wanted): Promise<Found> {
  const paths = new Set<string>();
  const diagnostics: Diagnostic[] = [];
  const unwanted = new Set<string>();
  for (const pattern of patterns)
    if (pattern.startsWith('!')) for (const path of (await matchesOf(pattern.slice(1), folder)).found) unwanted.add(path);
  const wanted = patterns.filter((pattern) => !pattern.startsWith('!'));
  if (wanted.length === 0) diagnostics.push(nothingNamed(channel, patterns));
  for (const pattern of new Set(wanted)) {
    const { found, problems, missing } = await matchesOf(pattern, folder);
    diagnostics.push(...problems.map((each) => unreadableFolder(channel, shownPath(folder, each.path), each.errno, what)));
    const kept = await outside(found, out);
    if (found.length > 0 && kept.length === 0) diagnostics.push(onlyOutput(channel, pattern, found.length));
    if (found.length === 0 && problems.length === 0)
      diagnostics.push(
        missing === undefined
          ? nothingMatches(channel, pattern, what)
          : noSuchFile(channel, missing, await nearestName(missing, folder, missing !== pattern)),
      );
    for (const path of kept) if (!unwanted.has(path)) paths.add(path);
  }
  return { paths: [...paths], diagnostics };
}

interface Problem {
  readonly path: string;
  readonly errno: string;
}

interface Matches {
  readonly found: readonly string[];
  readonly problems: readonly Problem[];
  /** What is named without a wildcard and is not there, as written. */
  readonly missing: string | undefined;
}

async function matchesOf(pattern: string, folder: string): Promise<Matches> {
  const path = resolve(folder, pattern);
  const kind = await kindOf(path);
  if (kind === 'file') return { found: [path], problems: [], missing: undefined };
  if (kind === 'folder') return { ...(await search(path, '**/*')), missing: undefined };
  if (!isDynamicPattern(pattern)) return { found: [], problems: [], missing: pattern };
  const { base, rest } = await splitPattern(pattern, folder);
  const { found, problems } = await search(resolve(folder, base), rest.join('/'));
  return { found, problems, missing: found.length > 0 ? undefined : await missingPart(folder, base, rest) };
}

/**
 * What a pattern names before its first wildcard and is not there, as written; undefined when all of it is, and when that can't be told.
 * @param pattern without a `!` in front
 */
export async function missingIn(pattern: string, folder: string): Promise<string | undefined> {
  if ((await kindOf(resolve(folder, pattern))) !== undefined) return undefined;
  if (!isDynamicPattern(pattern)) return pattern;
  const { base, rest } = await splitPattern(pattern, folder);
  return missingPart(folder, base, rest);
}

async function kindOf(path: string): Promise<'file' | 'folder' | undefined> {
  try {
    return (await stat(path)).isDirectory() ? 'folder' : 'file';
  } catch {
    // Whatever is wrong with it, the search says so: here it only is no name of something that is there.
    return undefined;
  }
}

/** Whatever may mean something else than itself in a pattern. */
const SPECIAL = /[*?[\]{}()!+@|\\]/;
/** What nobody means to be part of a name. Brackets alone may be: `mugs (1)`. */
const WILD = /[*?{|\\]|[!+@]\(/;
const BRACKETS = /[[\](){}]/g;

/** The leading folders that are there as they are named, and the other parts, at least one. */
async function splitPattern(pattern: string, folder: string): Promise<{ base: string; rest: readonly string[] }> {
  const parts = pattern.split('/');
  let literal = 0;
  for (const part of parts.slice(0, -1)) {
    const isName = !SPECIAL.test(part) || (await kindOf(resolve(folder, parts.slice(0, literal + 1).join('/')))) === 'folder';
    if (!isName) break;
    literal += 1;
  }
  const base = parts.slice(0, literal).join('/');
  return { base: base === '' && isAbsolute(pattern) ? '/' : base, rest: parts.slice(literal) };
}

/** Of a pattern that matches nothing: what it names before its first wildcard, when that is not there. */
async function missingPart(folder: string, base: string, rest: readonly string[]): Promise<string | undefined> {
  if ((await kindOf(resolve(folder, base))) !== 'folder') return base;
  const wild = rest.findIndex((part) => WILD.test(part));
  const named = (wild < 0 ? rest : rest.slice(0, wild)).join('/');
  if (named === '') return undefined;
  const there = await glob([named, asNamed(named)], { cwd: resolve(folder, base), dot: true, onlyFiles: false, expandDirectories: false });
  return there.length > 0 ? undefined : [base, named].filter((each) => each !== '').join('/');
}

/** Below a wildcard, too, `mugs (1)` may be a name. */
const asNamed = (pattern: string): string => pattern.replaceAll(BRACKETS, '\\$&');

type ReadFolder = (path: string, options: { withFileTypes: true }, done: (error: Error | null, entries: Dirent[]) => void) => void;
type RealPath = (path: string, done: (error: Error | null, real: string) => void) => void;

/** The library passes over in silence what it can't read; here it is noted on the way. */
async function search(base: string, pattern: string): Promise<{ found: string[]; problems: Problem[] }> {
  const problems: Problem[] = [];
  const note = (path: string, error: Error | null): void => {
    const errno = error && 'code' in error ? String(error.code) : undefined;
    if (errno !== undefined && !((errno === 'ENOENT' || errno === 'ENOTDIR') && resolve(path) === base))
      problems.push({ path: resolve(path), errno });
  };
  const readdir: ReadFolder = (path, options, done) =>
    readFolder(path, options, (error, entries) => {
      note(path, error);
      done(error, entries);
    });
  const real: RealPath = (path, done) =>
    realPathOf(path, (error, resolved) => {
      note(path, error);
      done(error, resolved);
    });
  const found = await glob([...new Set([pattern, asNamed(pattern)])], {
    cwd: base,
    dot: true,
    caseSensitiveMatch: false,
    expandDirectories: false,
    ignore: NEVER_ENTERED,
    fs: { readdir: readdir as typeof readFolder, realpath: real as typeof realPathOf },
  });
  return { found: found.map((each) => join(base, each)), problems };
}

/** Those of `paths` that do not lie in `out`, whichever way links lead there. */
async function outside(paths: readonly string[], out: string): Promise<string[]> {
  const outs = [out, await realOf(out)].map((each) => each + sep);
  const kept: string[] = [];
  for (const path of paths) {
    const ways = [path, await realOf(path)];
    if (!ways.some((way) => outs.some((each) => way.startsWith(each)))) kept.push(path);
  }
  return kept;
}

async function realOf(path: string): Promise<string> {
  try {
    return await realpath(path);
  } catch {
    return path;
  }
}
