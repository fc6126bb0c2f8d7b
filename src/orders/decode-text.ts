import type { Encoding } from './order-map.js';
import { START, type Finding, type Findings } from './findings.js';
import { LineIndex } from './line-index.js';

/** An order file larger than this (bytes) is some other file; 10,000 orders are about 3 MB. */
export const LARGEST = 64 * 1024 * 1024;

/** What Windows-1252 has at 0x80 to 0x9F. Source: WHATWG Encoding Standard, index windows-1252; the five unused ones stay controls. */
const UPPER =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

/** The byte of a character in Windows-1252, or in Latin-1 where that has a control; -1 for one that has none. */
export const windows1252Byte = (char: string): number => {
  const code = char.charCodeAt(0);
  const upper = UPPER.indexOf(char);
  return upper >= 0 ? 0x80 + upper : code <= 0xff ? code : -1;
};

const fromWindows1252 = (bytes: Buffer): string =>
  bytes.toString('latin1').replaceAll(/[\u0080-\u009f]/g, (char) => UPPER.charAt(char.charCodeAt(0) - 0x80));

const MARKS: readonly { readonly encoding: Encoding; readonly bytes: readonly number[] }[] = [
  { encoding: 'utf-8', bytes: [0xef, 0xbb, 0xbf] },
  { encoding: 'utf-16le', bytes: [0xff, 0xfe] },
  { encoding: 'utf-16be', bytes: [0xfe, 0xff] },
];

const beginsWith = (bytes: Buffer, head: readonly number[]): boolean => head.every((byte, index) => bytes[index] === byte);

/** Files that people name where an order file is meant, by how they begin. */
const BINARY: readonly { readonly head: readonly number[]; readonly what: string }[] = [
  { head: [0x50, 0x4b, 0x03, 0x04], what: 'a workbook or an archive' },
  { head: [0xd0, 0xcf, 0x11, 0xe0], what: 'a workbook of an old kind' },
  { head: [0x25, 0x50, 0x44, 0x46], what: 'a PDF' },
  { head: [0x89, 0x50, 0x4e, 0x47], what: 'a picture' },
  { head: [0xff, 0xd8, 0xff], what: 'a picture' },
  { head: [0x1f, 0x8b], what: 'compressed' },
];

/** UTF-16 without a mark: nearly every second byte of a table is zero, and only on one side. */
function unmarkedUtf16(bytes: Buffer): Encoding | undefined {
  const length = Math.min(bytes.length, 4096) & ~1;
  const zeros = [0, 0];
  for (let at = 0; at < length; at++) if (bytes[at] === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  if (length < 4 || bytes.length % 2 === 1) return undefined;
  if (odd * 2 > length * 0.4 && even * 2 < length * 0.05) return 'utf-16le';
  return even * 2 > length * 0.4 && odd * 2 < length * 0.05 ? 'utf-16be' : undefined;
}

function isUtf8(bytes: Buffer): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function decodeAs(bytes: Buffer, encoding: Encoding): string {
  const mark = MARKS.find((each) => each.encoding === encoding && beginsWith(bytes, each.bytes));
  const body = bytes.subarray(mark?.bytes.length ?? 0);
  switch (encoding) {
    case 'utf-8':
      return body.toString('utf8');
    case 'utf-16le':
      return body.toString('utf16le');
    case 'utf-16be': {
      const even = body.subarray(0, body.length & ~1);
      return Buffer.from(even).swap16().toString('utf16le');
    }
    case 'windows-1252':
      return fromWindows1252(body);
  }
}

type Refusal = Omit<Finding, 'severity'>;

const EXPORT_AS_CSV = 'Export the orders as CSV or JSON and name that file.';

/** Why bytes can't be an order file at all. */
function refusalOfBytes(bytes: Buffer): Refusal | undefined {
  if (bytes.length > LARGEST) {
    const message = `the file has ${Math.ceil(bytes.length / 1024 / 1024)} MB; an order file has ${LARGEST / 1024 / 1024} MB at most`;
    return { code: 'orders/too-large', message, remedy: 'Export fewer days at a time.' };
  }
  const binary = BINARY.find(({ head }) => beginsWith(bytes, head));
  return binary && { code: 'orders/binary', message: `the file is ${binary.what}, not CSV or JSON`, remedy: EXPORT_AS_CSV };
}

const WEB_PAGE = /^\ufeff?\s*(?:<\?xml[^>]*>\s*|<!--[\s\S]*?-->\s*)*<(?:!doctype html|html|head|body)\b/i;

/** Why decoded text can't be an order file. */
function refusalOfText(text: string, stated: Encoding | undefined): Refusal | undefined {
  if (text.includes('\u0000')) {
    return stated === undefined
      ? { code: 'orders/binary', message: 'the file holds bytes that are no text', remedy: EXPORT_AS_CSV }
      : { code: 'orders/encoding', message: `the file is not in ${stated}`, remedy: 'Take `encoding` out of the recipe.' };
  }
  if (WEB_PAGE.test(text))
    return {
      code: 'orders/web-page',
      message: 'the file is a web page, often the sign-in page that came instead of the export',
      remedy: 'Sign in to the sales channel and export the orders again.',
    };
  if (text.trim() !== '') return undefined;
  return { code: 'orders/empty', message: 'the file is empty', remedy: 'Export the orders again, or take the file away.' };
}

/**
 * The text of an order file without its byte order mark. The stated encoding wins; else a mark, the zeros of UTF-16, UTF-8 where all of it
 * is, and Windows-1252. Undefined where it is no text, which is then in the findings.
 */
export function decodeText(bytes: Buffer, stated: Encoding | undefined, findings: Findings): string | undefined {
  const told = stated ?? MARKS.find((mark) => beginsWith(bytes, mark.bytes))?.encoding ?? unmarkedUtf16(bytes);
  const refused = refusalOfBytes(bytes);
  const text = refused ? '' : decodeAs(bytes, told ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252'));
  const refusal = refused ?? refusalOfText(text, stated);
  if (refusal) {
    findings.add({ severity: 'error', ...refusal }, START);
    return undefined;
  }
  const lost = text.indexOf('\ufffd');
  // The mark may stand in a file for a character that was lost long before.
  if (lost >= 0 && told !== undefined && !(told === 'utf-8' && isUtf8(bytes))) {
    const upTo = Buffer.from(text.slice(0, lost));
    const message = `a character here is not in ${told}`;
    const remedy =
      stated === undefined ? 'Export the orders again as UTF-8, or state `encoding: windows-1252`.' : 'Take `encoding` out of the recipe.';
    findings.add({ code: 'orders/encoding', severity: 'warning', message, remedy }, new LineIndex(upTo).spot(upTo.length));
  }
  return text;
}
