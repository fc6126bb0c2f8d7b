import { parseTree, printParseErrorCode, visit, type Node, type ParseErrorCode } from 'jsonc-parser';
import type { Findings, Spot } from './findings.js';
import { shown } from './plain-word.js';

/** One object of the list of orders. Offsets are UTF-16 units in the text. */
export interface JsonObject {
  readonly start: Spot;
  readonly offset: number;
  readonly text: string;
}

export interface JsonList {
  readonly objects: readonly JsonObject[];
  /** Whether there is a list at the path, be it empty. */
  readonly isThere: boolean;
  /** Paths of keys to all lists of objects in the file, outermost first; empty text is the file itself. */
  readonly lists: readonly string[];
}

/** JSON as RFC 8259 has it; a comma behind the last value is no loss. */
const OPTIONS = { disallowComments: true, allowTrailingComma: true };

const EXPECTED: Readonly<Record<string, string>> = {
  InvalidSymbol: 'a value is not in quotation marks',
  InvalidNumberFormat: 'a number is not written as one',
  PropertyNameExpected: 'a key is expected',
  ValueExpected: 'a value is expected',
  ColonExpected: 'a colon is expected',
  CommaExpected: 'a comma is expected',
  CloseBraceExpected: 'the file ends before its last } (perhaps it was not saved completely)',
  CloseBracketExpected: 'the file ends before its last ] (perhaps it was not saved completely)',
  EndOfFileExpected: 'something stands behind the end of the list',
  InvalidCommentToken: 'JSON has no comments',
  UnexpectedEndOfString: 'a text has no closing quotation mark',
  InvalidEscapeCharacter: 'a text holds a \\ with a letter that means nothing',
};

/** Deeper nesting than this is no list of orders, and would exhaust the stack of a recursive reader. */
const DEEPEST = 100;

/** Whether brackets, those in texts apart, are nested more deeply than that. Sign by sign: a pattern over a text of twenty million signs exhausts the stack. */
function isTooDeep(text: string): boolean {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text[at];
    if (quoted) {
      if (sign === '\\') at++;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '[' || sign === '{') depth++;
    else if (sign === ']' || sign === '}') depth--;
    if (depth > DEEPEST) return true;
  }
  return false;
}

/** The objects in the list at a path of keys (`data.orders`), each with its place. What is broken is in the findings; an object with a mistake in it is left out. */
export function jsonObjects(text: string, list: string, findings: Findings): JsonList {
  if (isTooDeep(text)) {
    const message = `lists and objects are nested more than ${DEEPEST} deep: this is no list of orders`;
    findings.add({ code: 'orders/json', severity: 'error', message, remedy: 'Name the file with the orders.' }, { line: 1, col: 1 });
    return { objects: [], isThere: true, lists: [list] };
  }
  const objects: JsonObject[] = [];
  const lists = new Set<string>();
  const mistakes: number[] = [];
  const told = new Set<number | undefined>();
  let isThere = false;
  let depth = 0;
  let open: { readonly start: Spot; readonly offset: number; readonly depth: number } | undefined;
  visit(
    text,
    {
      onArrayBegin: (_offset, _length, _line, _character, path) => {
        isThere ||= !open && path().join('.') === list;
      },
      onObjectBegin: (offset, _length, line, character, path) => {
        depth++;
        if (open) return;
        const keys = path();
        const within = keys.slice(0, -1);
        if (typeof keys.at(-1) !== 'number' || within.some((key) => typeof key === 'number')) return;
        const name = within.join('.');
        lists.add(name);
        if (name === list) open = { offset, depth, start: { line: line + 1, col: character + 1 } };
      },
      onObjectEnd: (offset) => {
        if (open?.depth === depth) {
          // At the end of a file that was cut off there is none: what is left of its last object would look whole.
          if (text[offset] === '}') objects.push({ start: open.start, offset: open.offset, text: text.slice(open.offset, offset + 1) });
          open = undefined;
        }
        depth--;
      },
      onError: (error: ParseErrorCode, offset, _length, line, character) => {
        mistakes.push(offset);
        // One mistake brings others with it.
        if (told.has(open?.offset)) return;
        told.add(open?.offset);
        const message = `the JSON is broken: ${EXPECTED[printParseErrorCode(error)] ?? 'something is not as it should be'}`;
        const remedy = 'Export the orders again; what is before and behind this place is read.';
        findings.add({ code: 'orders/json', severity: 'error', message, remedy }, { line: line + 1, col: character + 1 });
      },
    },
    OPTIONS,
  );
  const whole = objects.filter(({ offset, text: own }) => !mistakes.some((at) => at >= offset && at < offset + own.length));
  return { objects: whole, isThere, lists: [...lists].sort((a, b) => a.split('.').length - b.split('.').length) };
}

/** The tree of an object's text. */
export const treeOf = (text: string): Node | undefined => parseTree(text, [], OPTIONS);

/** Says that there is no list where the recipe says; the remedy names those that there are. */
export function tellNoList(list: string, lists: readonly string[], findings: Findings): void {
  const [other] = lists.filter((each) => each !== list);
  const remedy =
    other === undefined
      ? 'Export the orders as a list of objects.'
      : other === ''
        ? 'Take `list` out of `orders:` in the recipe: the file itself is the list.'
        : `Write ${shown(`list: ${other}`)} below \`orders:\` in the recipe.`;
  const message = list === '' ? 'the file itself is no list of orders' : `there is no list of orders at ${shown(list)}`;
  findings.add({ code: 'orders/list', severity: 'error', message, remedy }, { line: 1, col: 1 });
}
