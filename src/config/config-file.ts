import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.js';

/** A stretch of a file's text: offsets in UTF-16 units from 0, `end` behind the last. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** The name of a file for people at a terminal: relative to the folder the command stands in when it lies in it, with `/`; else absolute. */
export function shownName(path: string, folder = process.cwd()): string {
  const absolute = resolve(folder, path);
  const fromHere = relative(folder, absolute);
  if (fromHere === '') return '.';
  return (fromHere.startsWith('..') || isAbsolute(fromHere) ? absolute : fromHere).replaceAll(sep, '/');
}

/** One YAML file being checked: its text, and what has been found wrong in it so far. */
export class ConfigFile {
  readonly diagnostics: Diagnostic[] = [];
  private readonly lineStarts: number[] = [0];

  /**
   * @param path absolute
   * @param text without a byte order mark
   */
  constructor(
    readonly path: string,
    readonly text: string,
  ) {
    for (const match of text.matchAll(/\r\n|\r|\n/g)) this.lineStarts.push(match.index + match[0].length);
  }

  get shown(): string {
    return shownName(this.path);
  }

  /** Line of an offset, from 1. */
  lineOf(offset: number): number {
    let low = 0;
    let high = this.lineStarts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((this.lineStarts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low + 1;
  }

  /** Column of an offset, from 1, in UTF-16 units as code editors count. */
  colOf(offset: number): number {
    return offset - (this.lineStarts[this.lineOf(offset) - 1] ?? 0) + 1;
  }

  /** Where a stretch begins, and how long it is on its first line. */
  place({ start, end }: Span): Place {
    const from = Math.max(0, Math.min(start, this.text.length));
    const line = this.lineOf(from);
    const onFirstLine = /^[^\r\n]*/.exec(this.text.slice(from, Math.max(from, end)))?.[0].trimEnd().length ?? 0;
    return { kind: 'config', file: this.shown, line, col: this.colOf(from), length: Math.max(1, onFirstLine) };
  }

  textOf({ start, end }: Span): string {
    return this.text.slice(start, end);
  }

  error(code: DiagnosticCode, span: Span, message: string, remedy: string): void {
    this.diagnostics.push({ code, severity: 'error', message, place: this.place(span), remedy });
  }
}
