import { posix } from 'node:path';
import ts from 'typescript';
import { HARMLESS_BUILTINS, LIBRARIES, LOOKING, ROOMS } from './rooms.js';

/** `src/press/place.ts` is in `press`; `src/cli.ts` in `cli.ts`. */
export const roomOf = (path: string): string => path.split('/')[1] ?? '';

interface Import {
  readonly from: string;
  readonly names: readonly string[];
  /** Whether the whole module is taken under one name, so that its members can't be told. */
  readonly whole: boolean;
}

/** The text of a string, written in place or as a constant of the same file. */
function literalOf(node: ts.Node | undefined, source: ts.SourceFile): string | undefined {
  if (!node || ts.isStringLiteralLike(node)) return node?.text;
  const declared = source.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) => [...declarationList.declarations])
    .find(({ name }) => name.getText(source) === node.getText(source));
  return declared?.initializer && ts.isStringLiteralLike(declared.initializer) ? declared.initializer.text : undefined;
}

function importsOf(source: ts.SourceFile): readonly Import[] {
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      const clause = node.importClause;
      const bindings = clause?.namedBindings;
      const names = bindings && ts.isNamedImports(bindings) ? bindings.elements.map((each) => (each.propertyName ?? each.name).text) : [];
      const whole = clause?.name !== undefined || (bindings !== undefined && ts.isNamespaceImport(bindings));
      found.push({ from: node.moduleSpecifier.text, names, whole });
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
      const names =
        node.exportClause && ts.isNamedExports(node.exportClause)
          ? node.exportClause.elements.map((each) => (each.propertyName ?? each.name).text)
          : [];
      found.push({ from: node.moduleSpecifier.text, names, whole: names.length === 0 });
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal)) {
      found.push({ from: node.argument.literal.text, names: [], whole: false });
    } else if (ts.isCallExpression(node)) {
      const callee = node.expression;
      const isImport = callee.kind === ts.SyntaxKind.ImportKeyword;
      const isRequire =
        /^(?:require|createRequire\(.*\))(?:\.resolve)?$/.test(callee.getText(source)) || callee.getText(source) === 'import.meta.resolve';
      // A file beside a resolved one is of the same package, which is named inside.
      const isBesideResolved = node.arguments[0]?.getText(source).startsWith('require.resolve(') === true;
      if (isImport || (isRequire && !isBesideResolved)) {
        const literal = literalOf(node.arguments[0], source);
        found.push({ from: literal ?? '?', names: [], whole: isImport });
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const packageOf = (from: string): string =>
  from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/');

/** What is wrong with one import of a file in `room`; undefined when nothing is. */
function wrongImport(path: string, room: string, { from, names, whole }: Import): string | undefined {
  if (from === '?') return 'imports a module whose name is computed: nobody can check what it is';
  if (from.startsWith('.')) {
    const target = posix.normalize(posix.join(posix.dirname(path), from));
    if (!target.startsWith('src/'))
      return target === 'package.json' ? undefined : `imports ${target}, outside src: the tarball has no such file`;
    const other = roomOf(target).replace(/^cli\.js$/, 'cli.ts');
    const row = ROOMS[room];
    return other === room || row?.may.includes(other) ? undefined : `imports ${other}. ${row?.why ?? 'The room has no row.'}`;
  }
  if (from === 'node:worker_threads') return room === 'batch' ? undefined : 'uses worker threads: only batch has many documents';
  if (from === 'node:fs' || from === 'node:fs/promises') {
    if (room === 'files') return undefined;
    const writing = whole ? ['all of it'] : names.filter((name) => !LOOKING.includes(name));
    return writing.length === 0 ? undefined : `takes ${writing.join(', ')} from ${from}: only files writes to disk, whole or not at all`;
  }
  if (from.startsWith('node:')) {
    if (HARMLESS_BUILTINS.includes(from)) return undefined;
    return `uses ${from}: nothing here starts a process or reaches the network`;
  }
  const library = LIBRARIES[packageOf(from)];
  if (!library) return `imports ${from}, which has no row in the table of libraries`;
  return library.may.includes(room) ? undefined : `imports ${from}. ${library.why}`;
}

/** Uses that need no import: ending the process, writing a picture to disk, opening a file for more than reading, the network. */
function wrongUses(source: ts.SourceFile, room: string): readonly string[] {
  const wrong: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node)) {
      const text = node.getText(source).replaceAll('?.', '.');
      if (room !== 'cli.ts' && /^process\.(?:exit|exitCode|abort|reallyExit)$/.test(text))
        wrong.push(`uses ${text}: only cli.ts ends the process`);
      if (room !== 'files' && /\.toFile$/.test(text)) wrong.push(`calls ${text}: only files writes to disk`);
      if (room !== 'files' && /^pino\.(?:destination|transport)$/.test(text)) wrong.push(`uses ${text}: only files writes to disk`);
    }
    if (ts.isCallExpression(node)) {
      const callee = node.expression.getText(source);
      const mode = node.arguments[1];
      if (room !== 'files' && /^open(?:Sync)?$/.test(callee) && mode !== undefined && mode.getText(source) !== "'r'") {
        wrong.push(`opens a file with ${mode.getText(source)}: only files writes to disk`);
      }
      if (/^(?:globalThis\.)?fetch$/.test(callee)) wrong.push('calls fetch: nothing here reaches the network');
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return wrong;
}

/** Everything in one source file that breaks the house's rules, one sentence each. @param path `src/…` */
export function checkFile(path: string, text: string): readonly string[] {
  const room = roomOf(path);
  if (!ROOMS[room]) return [`${path} is in ${room}, a room without a row`];
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const wrong = [...importsOf(source).map((each) => wrongImport(path, room, each)), ...wrongUses(source, room)];
  return wrong.filter((each) => each !== undefined).map((each) => `${path} ${each}`);
}

/** Packages that a file imports. */
export function packagesOf(path: string, text: string): readonly string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  return importsOf(source)
    .map(({ from }) => from)
    .filter((from) => !from.startsWith('.') && !from.startsWith('node:'))
    .map(packageOf);
}
