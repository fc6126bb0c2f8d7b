import {
  PDFArray,
  PDFDict,
  PDFInvalidObject,
  PDFName,
  PDFNull,
  PDFRawStream,
  PDFRef,
  PDFStream,
  type PDFDocument,
  type PDFObject,
} from './pdf-library.js';
import { inherited } from './page-tree.js';
import { inflatesWhole } from './pdf-inflate.js';

/**
 * Whether the end of a PDF is missing: after its last end-of-file mark there are more objects, or there is no such mark at
 * all (ISO 32000: the last line of the file). Junk behind the mark is no harm. A viewer shows such a file as if it were whole,
 * with the words or the picture that stood at its end left out.
 */
export function isCutOff(bytes: Uint8Array): boolean {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = text.lastIndexOf('%%EOF');
  if (end < 0) return true;
  const rest = text.subarray(end);
  // One digit is enough to begin with: with all of them a long run of digits would be looked at from each of its places.
  return /\d\s+\d+\s+obj\b/.test(rest.toString('latin1'));
}

/** What a page draws with, by its keys in resources: a missing one leaves something out on paper. */
const DRAWN_WITH = ['Font', 'XObject', 'ExtGState', 'ColorSpace', 'Pattern', 'Shading'].map((key) => PDFName.of(key));
/** Parts of a picture that are objects of their own. */
const PARTS_OF_PICTURE = ['ColorSpace', 'Mask', 'SMask'].map((key) => PDFName.of(key));
/** What nothing on paper comes from: what a font's letters mean, what is said about a part, and the way back up to pages. */
const NOT_DRAWN = ['ToUnicode', 'Metadata', 'Parent', 'StructParents'].map((key) => PDFName.of(key));

/**
 * Whether anything that a page draws with is missing from the file, damaged, or can't be parsed: its contents, fonts, pictures, forms.
 * @param number page, from 1
 */
export function lacksParts(pdf: PDFDocument, number: number): boolean {
  const { node } = pdf.getPage(number - 1);
  const seen = new Set<PDFObject>();
  const missing = (object: PDFObject | undefined): boolean => {
    if (object === undefined || object instanceof PDFInvalidObject) return true;
    if (object instanceof PDFRef) {
      if (seen.has(object)) return false;
      seen.add(object);
      return missing(pdf.context.lookup(object));
    }
    if (object instanceof PDFArray) return object.asArray().some(missing);
    if (object instanceof PDFStream) {
      if (object instanceof PDFRawStream && (!inflatesWhole(object) || (shortage(object) > LINE_END && !endsWhole(object)))) return true;
      if (PARTS_OF_PICTURE.some((key) => missingReference(object.dict.get(key)))) return true;
      return missingInResources(object.dict.get(PDFName.of('Resources')));
    }
    if (object instanceof PDFDict) return object.entries().some(([key, value]) => !NOT_DRAWN.includes(key) && missing(value));
    return false;
  };
  const missingReference = (value: PDFObject | undefined): boolean => value instanceof PDFRef && missing(value);
  const missingInResources = (reference: PDFObject | undefined): boolean => {
    const resources = reference instanceof PDFRef ? pdf.context.lookup(reference) : reference;
    if (!(resources instanceof PDFDict)) return false;
    return DRAWN_WITH.some((key) => {
      const value = resources.get(key);
      const entries = value instanceof PDFRef ? pdf.context.lookup(value) : value;
      if (value !== undefined && entries === undefined) return true;
      return entries instanceof PDFDict && entries.values().some(missing);
    });
  };
  const contents = node.get(PDFName.of('Contents'));
  if (contents !== undefined && contents !== PDFNull && missing(contents)) return true;
  const resources = inherited(node, 'Resources');
  return resources !== undefined && (!(resources instanceof PDFDict) || missingInResources(resources));
}

/** The parser takes a line end, two bytes at most, off the data of a stream whose /Length it can't follow yet. */
const LINE_END = 2;

/**
 * Whether the parser took data for a line end in any stream: a byte that belongs to a picture or a text would be missing
 * from what is copied. PDFium, which follows each /Length, then has to write the file anew first.
 */
export function lostLineEnds(pdf: PDFDocument): boolean {
  return pdf.context.enumerateIndirectObjects().some(([, object]) => {
    const short = object instanceof PDFRawStream ? shortage(object) : 0;
    return short > 0 && short <= LINE_END;
  });
}

/** By how many bytes a stream is shorter than its /Length says; 0 or less when it has them all, or when nothing is said. */
function shortage(stream: PDFRawStream): number {
  const length = Number(stream.dict.lookup(PDFName.of('Length'))?.toString());
  return Number.isFinite(length) ? length - stream.contents.length : 0;
}

/**
 * Whether a stream has its own end, by its outer filter: writers put wrong lengths into whole files. Data without a filter
 * doesn't tell.
 */
function endsWhole({ dict, contents }: PDFRawStream): boolean {
  const filter = dict.lookup(PDFName.of('Filter'));
  const outer = filter instanceof PDFArray ? (filter.size() > 0 ? filter.lookup(0) : undefined) : filter;
  const end = Buffer.from(contents.subarray(-8)).toString('latin1').trimEnd();
  switch (outer?.toString() ?? '') {
    case '/FlateDecode':
      // Its checksum has been looked at.
      return true;
    case '/DCTDecode':
      return end.endsWith('\xff\xd9');
    case '/ASCII85Decode':
      return end.endsWith('~>');
    case '/ASCIIHexDecode':
      return end.endsWith('>');
    default:
      return false;
  }
}
