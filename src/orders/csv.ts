/** A text, or a number that a spreadsheet may add up. */
export type Cell = string | number;

/** Spreadsheets take a file without it for one in the machine's old code page. */
const BYTE_ORDER_MARK = '\uFEFF';

/**
 * Rows as comma-separated values (RFC 4180: CRLF after each row, quotes doubled), UTF-8 with a byte order mark. A text that a spreadsheet would
 * run as a formula or turn into another value gets an apostrophe in front: see `guarded`.
 */
export const csvText = (rows: readonly (readonly Cell[])[]): string =>
  BYTE_ORDER_MARK + rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');

function field(cell: Cell): string {
  if (typeof cell === 'number') return String(cell);
  const text = guarded(cell);
  // A row of one empty field would be an empty line, which readers skip.
  return text === '' || /[",;\t\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * What spreadsheets run: OWASP, "CSV Injection" (from memory): cells that begin with = + - @, a tab or a line end, and those characters at full
 * width. Blanks in front don't save anybody, so they are looked through.
 */
const FORMULA = /^[\t\r\n]|^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/;

/**
 * Texts that spreadsheets take for numbers or dates (common practice, from memory): more than eleven digits are shown as a power of ten, more
 * than fifteen lose the last ones; zeros in front are dropped; `12E5` is a power; `3-14`, `3/14` and `MAR1` are days.
 */
const MONTH = '(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*';
const DAMAGED = [
  /^\d{12,}$/,
  /^0\d+$/,
  /^\d+[eE]\d+$/,
  /^\d{1,4}([-/.])\d{1,4}(?:\1\d{1,4})?$/,
  new RegExp(`^(?:${MONTH}[-/. ]?\\d{1,4}|\\d{1,4}[-/. ]?${MONTH})$`, 'i'),
];

/** A text as a spreadsheet leaves it alone; most come back as they are. */
export const guarded = (text: string): string => (FORMULA.test(text) || DAMAGED.some((each) => each.test(text.trim())) ? `'${text}` : text);
