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
} from 'pdf-lib';

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
  return /\d+\s+\d+\s+obj\b/.test(rest.toString('latin1'));
}

/** What a page draws with, by its keys in resources: a missing one leaves something out on paper. */
const DRAWN_WITH = ['Font', 'XObject', 'ExtGState', 'ColorSpace', 'Pattern', 'Shading'].map((key) => PDFName.of(key));

/**
 * Whether anything that a page draws with is missing from the file or can't be parsed: its contents, fonts, pictures, forms.
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
      if (object instanceof PDFRawStream && object.contents.length < declaredLength(object)) return true;
      return missingInResources(object.dict.get(PDFName.of('Resources')));
    }
    if (object instanceof PDFDict) return object.values().some((value) => value instanceof PDFRef && missing(value));
    return false;
  };
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
  return missingInResources(node.Resources());
}

function declaredLength(stream: PDFRawStream): number {
  const length = stream.dict.lookup(PDFName.of('Length'));
  const value = Number(length?.toString());
  return Number.isFinite(value) ? value : 0;
}
