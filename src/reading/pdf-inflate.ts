import { inflateSync } from 'node:zlib';
import { decodePDFRawStream, PDFArray, PDFDict, PDFName, PDFRawStream, type PDFObject } from './pdf-library.js';

const MOST_INFLATED = 256_000_000;
/** Node's own 16 KB make many small pieces of a picture. */
const CHUNK = 1 << 20;
/** What a parser may have taken off the end of the data for a line end: a byte of the checksum can look like one. */
const LINE_ENDS = ['\n', '\r', '\r\n'].map((end) => Buffer.from(end, 'latin1'));

const checked = new WeakMap<PDFRawStream, boolean>();

/**
 * Whether a deflated stream gives back what was put in, by its own checksum (RFC 1950). A viewer draws a damaged one as far as it gets,
 * with words or bars left out or altered. True for data that was never deflated: it has no checksum. Each stream is looked at once.
 */
export function inflatesWhole(stream: PDFRawStream): boolean {
  let whole = checked.get(stream);
  if (whole === undefined) checked.set(stream, (whole = check(stream)));
  return whole;
}

function check(stream: PDFRawStream): boolean {
  const filters = filtersOf(stream.dict);
  const at = filters.findIndex((name) => name === '/FlateDecode' || name === '/Fl');
  if (at < 0) return true;
  try {
    const data = at === 0 ? stream.contents : decodedBy(stream, filters.slice(0, at));
    return inflates(data) || LINE_ENDS.some((end) => inflates(Buffer.concat([data, end])));
  } catch {
    return false;
  }
}

function filtersOf(dict: PDFDict): string[] {
  const filter: PDFObject | undefined = dict.lookup(PDFName.of('Filter'));
  if (filter instanceof PDFArray) return Array.from({ length: filter.size() }, (_, index) => String(filter.lookup(index)));
  return filter instanceof PDFName ? [filter.toString()] : [];
}

/** The data with the filters around the deflated data taken off: some writers put it into letters. */
function decodedBy({ dict, contents }: PDFRawStream, filters: readonly string[]): Uint8Array {
  const outer = PDFDict.withContext(dict.context);
  outer.set(PDFName.of('Filter'), dict.context.obj(filters.map((name) => name.slice(1))));
  return decodePDFRawStream(PDFRawStream.of(outer, contents)).decode();
}

/** Whether bytes begin with whole deflated data; what comes behind it doesn't matter. */
function inflates(data: Uint8Array): boolean {
  try {
    inflateSync(data, { maxOutputLength: MOST_INFLATED, chunkSize: CHUNK });
    return true;
  } catch {
    return false;
  }
}

/**
 * Whether any object stream of a file is damaged: the parser reads on in it as far as it understands, with fonts or figures altered.
 * @param bytes the file as given, not encrypted
 */
export function hasBrokenObjectStream(bytes: Uint8Array): boolean {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = file.indexOf('/ObjStm'); at >= 0; at = file.indexOf('/ObjStm', at + 1)) {
    const start = file.lastIndexOf('<<', at);
    const keyword = file.indexOf('stream', at + 7);
    if (start < 0 || keyword < 0) continue;
    // A dictionary of plain values: anything else is chance, in the bytes of a picture.
    const dict = file.toString('latin1', start, keyword);
    if (dict.length > 1000 || !/^<<[^]*\/Type\s*\/ObjStm[^]*>>\s*$/.test(dict) || !/\/Filter\s*\[?\s*\/FlateDecode\b/.test(dict)) continue;
    const data = /^(?:\r\n|\n|\r)/.exec(file.toString('latin1', keyword + 6, keyword + 8))?.[0].length;
    if (data !== undefined && !inflates(file.subarray(keyword + 6 + data))) return true;
  }
  return false;
}
