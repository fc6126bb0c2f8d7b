import { isAlias, isCollection, isMap, isNode, isScalar, parseDocument, type Document, type Node, type YAMLError } from 'yaml';
import type { ConfigFile, Span } from './config-file.js';
import { quote } from './words.js';
import { INDENT, yamlErrorInWords } from './yaml-errors.js';

/** Deeper nesting than this is no pipeline and no recipe, and would exhaust the stack of a recursive reader. */
const DEEPEST = 40;

export function spanOf(node: Node): Span {
  const [start, end] = node.range ?? [0, 0];
  return { start, end };
}

/**
 * The positioned tree of a file, or undefined when it can't be read at all; what is wrong is in `file.diagnostics`. Refused
 * are anchors, aliases, merge keys, tags and directives: a recipe says what it means where it says it. Where an alias stands
 * the tree keeps it, already reported.
 */
export function parseYaml(file: ConfigFile, what: string): Node | undefined {
  let document: Document.Parsed;
  try {
    document = parseDocument(file.text, {
      prettyErrors: false,
      uniqueKeys: false,
      merge: false,
      resolveKnownTags: false,
      logLevel: 'error',
    });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    tooDeep(file, { start: 0, end: 1 });
    return undefined;
  }
  const broken = reportSyntax(file, document);
  const sound = reportRefused(file, document);
  if (broken || !sound) return undefined;
  const root: unknown = document.contents;
  if (!isNode(root) || (isScalar(root) && root.value === null)) {
    file.error(
      'config/empty',
      { start: 0, end: 1 },
      `the ${what} is empty`,
      what === 'recipe' ? 'Write at least `about` and `steps`.' : SHORTEST_PIPELINE,
    );
    return undefined;
  }
  return root;
}

/** What a pipeline needs at the least, to be copied. */
const SHORTEST_PIPELINE = `Write at least one channel, for example:
channels:
  - name: mugs
    files: inbox/mugs/*
    recipe: any-page
What is not sure is held.`;

const tooDeep = (file: ConfigFile, span: Span): void =>
  file.error('config/too-deep', span, 'lists or maps are nested too deeply', 'A pipeline or recipe needs no more than six levels.');

/** One broken spot often breaks what follows too: the first error of each line is told. True when there is any. */
function reportSyntax(file: ConfigFile, document: Document.Parsed): boolean {
  if (document.directives.yaml.explicit === true) {
    const start = file.text.search(/^%/m);
    const words = 'lines that start with `%` are not used here';
    file.error('config/directive', { start, end: start + 1 }, words, 'Take the line out.');
  }
  const told = new Set<number>();
  const acrossLines = new Set(document.errors.flatMap(({ code, pos }) => (code === 'MULTILINE_IMPLICIT_KEY' ? [pos[0]] : [])));
  let shifted = false;
  for (const error of document.errors) {
    if (error.code === 'TAG_RESOLVE_FAILED' || error.code === 'BAD_COLLECTION_TYPE') continue;
    const isKey = error.code === 'BLOCK_AS_IMPLICIT_KEY' || error.code === 'MULTILINE_IMPLICIT_KEY';
    // Where one line stands in the wrong column, the right ones below it are wrong for the parser, too.
    if (shifted && isKey) continue;
    // A value that goes on in the next line, and there with a key: that line is too far in, or the one above is too far out.
    const isShifted = isKey && acrossLines.has(error.pos[0]);
    const words = isShifted ? INDENT : yamlErrorInWords(error);
    const span = isShifted ? nextLine(file.text, error.pos[0]) : spanOfError(file, document, error);
    const line = file.lineOf(span.start);
    if (told.has(line)) continue;
    told.add(line);
    shifted ||= words === INDENT || words.code === 'config/tab';
    file.error(words.code, span, words.message, words.remedy);
  }
  return told.size > 0 || document.directives.yaml.explicit === true;
}

/** The text of the line below the one that `offset` is in, without its indentation. */
function nextLine(text: string, offset: number): Span {
  const from = text.indexOf('\n', offset) + 1;
  const [line = ''] = /^.*/.exec(text.slice(from)) ?? [];
  const start = from + line.search(/\S|$/);
  return { start, end: from + line.trimEnd().length };
}

function spanOfError(file: ConfigFile, document: Document.Parsed, error: YAMLError): Span {
  const [start, end] = error.pos;
  const unclosed = /^Missing closing|^Flow (sequence|map)|^Expected flow|must be sufficiently indented and end with/.test(error.message);
  if (unclosed) {
    const opener = openerBefore(document.contents, start);
    if (opener !== undefined) return { start: opener, end: opener + 1 };
  }
  return { start: Math.min(start, Math.max(0, file.text.trimEnd().length - 1)), end };
}

/** Where the innermost quoted text or `[`, `{` begins that is still open at `offset`. */
function openerBefore(root: unknown, offset: number): number | undefined {
  let found: number | undefined;
  walk(root, (node) => {
    const start = node.range?.[0] ?? 0;
    const opens = (isScalar(node) && node.type?.startsWith('QUOTE') === true) || (isCollection(node) && node.flow === true);
    if (opens && start < offset && (node.range?.[2] ?? 0) >= offset - 1) found = Math.max(found ?? 0, start);
  });
  return found;
}

/** Calls `visit` for every node, without recursion. `depth` of the root is 0. */
function walk(root: unknown, visit: (node: Node, depth: number) => void): void {
  const open: { node: unknown; depth: number }[] = [{ node: root, depth: 0 }];
  for (let next = open.pop(); next; next = open.pop()) {
    const { node, depth } = next;
    if (!isNode(node)) continue;
    visit(node, depth);
    if (isMap(node)) for (const pair of node.items) open.push({ node: pair.value, depth: depth + 1 }, { node: pair.key, depth: depth + 1 });
    else if (isCollection(node)) for (const item of node.items) open.push({ node: item, depth: depth + 1 });
  }
}

/** False when the tree is too deep to go on. */
function reportRefused(file: ConfigFile, document: Document.Parsed): boolean {
  let deepest: Node | undefined;
  walk(document.contents, (node, depth) => {
    if (depth > DEEPEST) deepest ??= node;
    if (isAlias(node)) reportAlias(file, spanOf(node), node.source);
    else if (node.anchor !== undefined) {
      const name = `&${node.anchor}`;
      const at = file.text.lastIndexOf(name, spanOf(node).start);
      const message = `${quote(name)} names a part to be repeated elsewhere; that is not used here`;
      file.error(
        'config/anchor',
        { start: at, end: at + name.length },
        message,
        'Take it out and write the part again where it is needed.',
      );
    }
    if (node.tag !== undefined && !isAlias(node)) {
      const before = /(![^\s,[\]{}]*)\s*(?:&\S+\s*)?$/.exec(file.text.slice(0, spanOf(node).start));
      const span = before ? { start: before.index, end: before.index + (before[1] ?? '').length } : spanOf(node);
      const message = `${quote(before?.[1] ?? node.tag)} says what type a value has; that is not used here`;
      file.error('config/tag', span, message, 'Take it out; put the value into quotes if it has to be a text.');
    }
    if (isMap(node))
      for (const { key } of node.items) if (isScalar(key) && key.value === '<<' && key.type === 'PLAIN') reportMerge(file, spanOf(key));
  });
  if (deepest) tooDeep(file, spanOf(deepest));
  return deepest === undefined;
}

function reportAlias(file: ConfigFile, span: Span, source: string): void {
  const isGlob = /^[./*]|\.[a-z]+$/i.test(source);
  if (isGlob) {
    const message = `a text that starts with ${quote('*')} has to be in quotes`;
    file.error('config/needs-quotes', span, message, `Write ${quote(`'*${source}'`)}.`);
  } else {
    const message = `${quote(`*${source}`)} repeats a part from elsewhere; that is not used here`;
    file.error('config/anchor', span, message, 'Write the part out; or put the text into quotes if it is no repetition.');
  }
}

const reportMerge = (file: ConfigFile, span: Span): void =>
  file.error('config/merge-key', span, '`<<` merges a part from elsewhere into this map; that is not used here', 'Write the keys out.');
