import { decodePDFRawStream, PDFArray, PDFRawStream, type PDFObject } from './pdf-library.js';

/**
 * The names of fonts that a content stream sets (`/F1 9 Tf`), as they are written; undefined where it can't be told, because a stream can't be decoded or
 * writes names in numbers (`#20`). A name inside a string counts, too.
 * @param contents a stream, or an array of streams that are one (ISO 32000-1 7.8.2, from memory)
 */
export function fontsNamed(contents: PDFObject | undefined): ReadonlySet<string> | undefined {
  const streams = contents instanceof PDFArray ? Array.from({ length: contents.size() }, (_, index) => contents.lookup(index)) : [contents];
  const names = new Set<string>();
  let text = '';
  try {
    for (const stream of streams) {
      if (!(stream instanceof PDFRawStream)) return undefined;
      text += `${Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1')}\n`;
    }
  } catch {
    return undefined;
  }
  for (const [, name = ''] of text.matchAll(FONT_SET)) {
    if (name.includes('#')) return undefined;
    names.add(name);
  }
  return names;
}

const FONT_SET = /\/([^\s/()<>[\]{}%]+)\s+[-+.\d]+\s+Tf\b/g;
