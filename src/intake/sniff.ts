import type { Reason } from '../sheet/sheet.js';
import { KINDS } from './kinds.js';
import { sniffText } from './sniff-text.js';

/** How many of a document's first bytes `sniff` wants to see. */
export const SNIFF_BYTES = 4096;

/** What a document is, told from its first bytes and never from its name. */
export type Sniffed =
  | { readonly kind: 'pdf' | 'zip' }
  | { readonly kind: 'picture'; readonly format: 'png' | 'jpeg' | 'gif' | 'webp' | 'tiff' }
  | { readonly kind: 'refused'; readonly reason: Reason };

/** A PDF's header may stand anywhere in the first 1024 bytes (ISO 32000, implementation notes; from memory). */
const PDF_HEADER_WITHIN = 1024;

type Format = (Sniffed & { kind: 'picture' })['format'];

/** File signatures as their formats' specifications give them: hex of the first bytes, `..` for any byte. */
const PICTURES: readonly (readonly [string, Format])[] = [
  ['89504e470d0a1a0a', 'png'],
  ['ffd8ff', 'jpeg'],
  ['474946383761', 'gif'],
  ['474946383961', 'gif'],
  ['52494646........57454250', 'webp'],
  ['49492a00', 'tiff'],
  ['4d4d002a', 'tiff'],
  ['49492b00', 'tiff'],
  ['4d4d002b', 'tiff'],
];
const ZIP = ['504b0304', '504b0506'];
const OTHER_PICTURES = [
  '424d........00000000',
  '........66747970686569',
  '........667479706d6966',
  '........6674797061766966',
  '38425053',
  '0000000c6a502020',
];
const OTHER_ARCHIVES = ['1f8b08', '526172211a07', '377abcaf271c', '425a68', 'fd377a585a00'];
const OLE2 = ['d0cf11e0a1b11ae1'];
/** Escape sequences that open a job in page-printer languages. */
const PRINTER_JOB = ['1b45', '1b252d3132333435'];

/** @param head the first `SNIFF_BYTES` bytes, or all there are. */
export function sniff(head: Uint8Array): Sniffed {
  if (head.length === 0) return { kind: 'refused', reason: KINDS.empty };
  const start = Buffer.from(head.buffer, head.byteOffset, head.length);
  const begins = (signature: string): boolean => matches(start, signature);
  const picture = PICTURES.find(([signature]) => begins(signature));
  if (picture) return { kind: 'picture', format: picture[1] };
  if (ZIP.some(begins)) return { kind: 'zip' };
  if (PRINTER_JOB.some(begins)) return { kind: 'refused', reason: KINDS.printerLanguage };
  const text = sniffText(start);
  // A web page may quote a PDF's header; a PDF may have mail headers or stray lines before its own.
  if (text === KINDS.html) return { kind: 'refused', reason: text };
  if (start.subarray(0, PDF_HEADER_WITHIN).includes('%PDF-')) return { kind: 'pdf' };
  if (OTHER_PICTURES.some(begins)) return { kind: 'refused', reason: KINDS.picture };
  if (OTHER_ARCHIVES.some(begins) || start.toString('latin1', 257, 262) === 'ustar') return { kind: 'refused', reason: KINDS.archive };
  if (OLE2.some(begins)) return { kind: 'refused', reason: KINDS.office };
  return { kind: 'refused', reason: text ?? KINDS.unknown };
}

function matches(start: Buffer, signature: string): boolean {
  if (start.length < signature.length / 2) return false;
  for (let i = 0; i < signature.length / 2; i++) {
    const byte = signature.slice(i * 2, i * 2 + 2);
    if (byte !== '..' && start[i] !== parseInt(byte, 16)) return false;
  }
  return true;
}
