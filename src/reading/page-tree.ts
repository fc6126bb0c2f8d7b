import { PDFDict, PDFName, PDFNull, type PDFObject, type PDFPageLeaf } from './pdf-library.js';

/** No page tree is deeper; one that names itself as its own parent must hang nobody. */
const DEEPEST = 64;

/**
 * A page's own entry or that of the nearest node above it which has one (ISO 32000, inheritable page attributes), as it is written:
 * perhaps a reference. Never throws, whatever stands where a dictionary should.
 */
export function inheritedEntry(page: PDFPageLeaf, key: string): PDFObject | undefined {
  const name = PDFName.of(key);
  let node: PDFDict | undefined = page;
  for (let depth = 0; node !== undefined && depth < DEEPEST; depth++) {
    const value: PDFObject | undefined = node.lookup(name);
    if (value !== undefined && value !== PDFNull) return node.get(name);
    const parent: PDFObject | undefined = node.lookup(PDFName.of('Parent'));
    node = parent instanceof PDFDict ? parent : undefined;
  }
  return undefined;
}

/** The same with its reference followed. */
export function inherited(page: PDFPageLeaf, key: string): PDFObject | undefined {
  const entry = inheritedEntry(page, key);
  return entry && page.context.lookup(entry);
}
