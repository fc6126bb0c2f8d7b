import type { Diagnostic, Place, Severity } from './diagnostic.js';

export interface FormatOptions {
  /** Whether ANSI colour is wanted. */
  readonly colour: boolean;
  /** The text of config files by the name that places use: from it come the excerpts. */
  readonly sources?: ReadonlyMap<string, string>;
}

const COLOUR: Record<Severity, string> = { error: '31', warning: '33', note: '36' };

/** An excerpt shows no more than this of a line (characters), around the place it points at. */
const WIDEST = 110;

/** Control characters would move the cursor of a terminal; a tab is one blank, so that carets stay below their text. */
const plain = (text: string): string =>
  text.replaceAll('\t', ' ').replaceAll(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '�');

/** Columns that a text takes on a terminal: two for East Asian wide characters and pictographs, none for combining marks. */
function columns(text: string): number {
  let count = 0;
  for (const char of text) {
    if (/\p{M}|\u200d|\ufe0f/u.test(char)) continue;
    count +=
      /\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Script=Hangul}|[\u3000-\u303f\uff01-\uff60]|\p{Emoji_Presentation}/u.test(
        char,
      )
        ? 2
        : 1;
  }
  return count;
}

function placeText(place: Place): string {
  switch (place.kind) {
    case 'config':
    case 'orders':
      return `${place.file}:${place.line}:${place.col}: `;
    case 'document': {
      const page = place.page === undefined ? '' : `, page ${place.page}`;
      const item = place.item === undefined ? '' : `, item ${place.item}`;
      return `${place.file}${page}${item}: `;
    }
    case 'run':
      return '';
  }
}

function excerpt(place: Place, sources: ReadonlyMap<string, string> | undefined): readonly string[] {
  if (place.kind !== 'config') return [];
  const line = sources?.get(place.file)?.split(/\r\n|\r|\n/)[place.line - 1];
  if (line === undefined) return [];
  const start = place.col - 1;
  const cutLeft = start > WIDEST / 2 && line.length > WIDEST ? start - Math.floor(WIDEST / 2) : 0;
  const shown = line.slice(cutLeft, cutLeft + WIDEST);
  const before = line.slice(cutLeft, start);
  const marked = line.slice(start, Math.min(start + (place.length ?? 1), cutLeft + WIDEST));
  const gutter = ' '.repeat(String(place.line).length);
  const lead = cutLeft > 0 ? '…' : '';
  const caret = ' '.repeat(columns(lead + plain(before))) + '^'.repeat(Math.max(1, columns(plain(marked))));
  return [`  ${place.line} | ${lead}${plain(shown)}${cutLeft + WIDEST < line.length ? '…' : ''}`.trimEnd(), `  ${gutter} | ${caret}`];
}

/**
 * One diagnostic for people: `file:line:col: severity: message [code]`, the line with a caret below what is meant where its
 * source is known, and what to do, which may be several lines. No newline at the end.
 */
export function formatDiagnostic(diagnostic: Diagnostic, options: FormatOptions): string {
  const { severity, message, code, place, remedy } = diagnostic;
  const paint = (style: string, text: string): string => (options.colour ? `\u001b[${style}m${text}\u001b[0m` : text);
  const head = `${paint('1', plain(placeText(place)))}${paint(COLOUR[severity], `${severity}:`)} ${plain(message)} ${paint('2', `[${code}]`)}`;
  const lines = [head, ...excerpt(place, options.sources)];
  const [first, ...further] = remedy?.split('\n') ?? [];
  if (first !== undefined) lines.push(`  ${paint('1', 'do:')} ${plain(first)}`, ...further.map((line) => `      ${plain(line)}`));
  return lines.join('\n');
}

/** All of them, one below the other; empty text for none, else with a newline at the end. */
export function formatDiagnostics(diagnostics: readonly Diagnostic[], options: FormatOptions): string {
  return diagnostics.map((each) => `${formatDiagnostic(each, options)}\n`).join('');
}
