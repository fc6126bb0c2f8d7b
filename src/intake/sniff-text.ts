import type { Reason } from '../sheet/sheet.js';
import { KINDS } from './kinds.js';

/**
 * The openings of languages that label and page printers speak: a caret or tilde with two letters, a form's size or
 * clearing in words, an exclamation mark with a form's numbers, a page description.
 */
const PRINTER_OPENINGS = [
  /^[\^~][A-Z]{2}/,
  /\^XA\b|\^XA\^/,
  /^N\r?\n\s*(?:[qQADSR]\d|[AB]\d+,\d+,)/,
  /^! (?:U1|-?\d+ \d+ \d+ \d+ \d+)/,
  /^(?:SIZE \d[\d.]*|CLS\b|GAP \d)/i,
  /^%!/,
];

/** What a text is, or undefined for bytes that are no text. @param start the first bytes; a cut-off last letter does no harm. */
export function sniffText(start: Buffer): Reason | undefined {
  const text = asText(start)?.trimStart();
  if (text === undefined) return undefined;
  if (/^(?:<\?xml[^>]*>\s*|<!--[\s\S]*?-->\s*)*<(?:!doctype html|html|head|body)\b/i.test(text)) return KINDS.html;
  if (/^(?:<\?xml[^>]*>\s*|<!--[\s\S]*?-->\s*|<!doctype svg[^>]*>\s*)*<svg\b/i.test(text)) return KINDS.picture;
  if (PRINTER_OPENINGS.some((opening) => opening.test(text))) return KINDS.printerLanguage;
  if (text.startsWith('{\\rtf')) return KINDS.office;
  return isTable(text) ? KINDS.table : KINDS.text;
}

/** UTF-8, UTF-16 with a byte order mark, or any 8-bit code page. Bytes that no text has make it none. */
function asText(start: Buffer): string | undefined {
  if (start[0] === 0xff && start[1] === 0xfe) return start.toString('utf16le', 2);
  if (start[0] === 0xfe && start[1] === 0xff)
    return Buffer.from(start.subarray(2, start.length & ~1))
      .swap16()
      .toString('utf16le');
  const body = start[0] === 0xef && start[1] === 0xbb && start[2] === 0xbf ? start.subarray(3) : start;
  const isText = body.every((byte) => byte >= 0x20 || (byte >= 0x09 && byte <= 0x0d) || byte === 0x1b);
  if (!isText) return undefined;
  const text = body.toString('utf8');
  // In an 8-bit code page letters beyond ASCII are the exception; where they are the rule the bytes are no text.
  const odd = text.split('\ufffd').length - 1;
  return odd * 3 > text.length ? undefined : text;
}

/** At least two whole lines that hold the same number of the same separator outside quotes. */
function isTable(text: string): boolean {
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '');
  if (lines.length < 2) return false;
  const [first, second] = lines.map((line) => line.replace(/"[^"]*"/g, ''));
  return [';', '\t', ',', '|'].some((separator) => {
    const count = (line = ''): number => line.split(separator).length - 1;
    return count(first) > 0 && count(first) === count(second);
  });
}
