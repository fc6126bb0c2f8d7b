import {
  PDFArray,
  PDFDict,
  PDFName,
  PDFRawStream,
  PDFRef,
  decodePDFRawStream,
  type PDFContext,
  type PDFObject,
  type PDFObjectCopier,
  type PDFPageLeaf,
} from '../reading/pdf-library.js';
import { inheritedEntry } from '../reading/page-tree.js';

/** A page that can't be made into a form; `message` names what is wrong with its PDF objects, never its words. */
export class UnreadablePage extends Error {}

/**
 * Makes a page of another document a form XObject of `context`: its content and resources, unchanged, in its own user
 * space. One content stream is taken as it is stored; several are joined, because a token may span two of them.
 * Neither the page's old content objects nor its annotations come along.
 * @param userBox left, bottom, right, top in the page's user space
 * @throws UnreadablePage when the content can't be decoded
 */
export function formOfPage(page: PDFPageLeaf, userBox: readonly number[], context: PDFContext, copier: PDFObjectCopier): PDFRef {
  const dict = context.obj({
    Type: 'XObject',
    Subtype: 'Form',
    FormType: 1,
    BBox: [...userBox],
  });
  const resources = inheritedEntry(page, 'Resources');
  dict.set(
    PDFName.of('Resources'),
    resources && page.context.lookup(resources) instanceof PDFDict ? copier.copy(resources) : context.obj({}),
  );
  const group = pageGroup(page, copier);
  if (group) dict.set(PDFName.of('Group'), group);
  const streams = contentStreams(page);
  const [only] = streams;
  if (only !== undefined && streams.length === 1) {
    for (const key of ['Filter', 'DecodeParms']) {
      const value = only.dict.get(PDFName.of(key));
      if (value !== undefined) dict.set(PDFName.of(key), copier.copy(value));
    }
    return context.register(PDFRawStream.of(dict, only.contents));
  }
  const joined = context.flateStream(Buffer.concat(streams.flatMap((stream) => [decode(stream), NEWLINE])));
  for (const [key, value] of joined.dict.entries()) dict.set(key, value);
  return context.register(PDFRawStream.of(dict, joined.contents));
}

const NEWLINE = Uint8Array.of(10);

/** A page's group stands alone on its paper (ISO 32000 11.6.6 by way of PDFium's reading, from memory), so the form's must. */
function pageGroup(page: PDFPageLeaf, copier: PDFObjectCopier): PDFDict | undefined {
  const group: unknown = page.lookup(PDFName.of('Group'));
  if (!(group instanceof PDFDict) || group.lookup(PDFName.of('S')) !== PDFName.of('Transparency')) return undefined;
  const copy = copier.copy(group);
  copy.set(PDFName.of('I'), page.context.obj(true));
  return copy;
}

function contentStreams(page: PDFPageLeaf): PDFRawStream[] {
  const contents: unknown = page.lookup(PDFName.of('Contents'));
  const parts: PDFObject[] = contents instanceof PDFArray ? contents.asArray() : contents instanceof PDFRawStream ? [contents] : [];
  return parts.flatMap((part) => {
    const stream: unknown = part instanceof PDFRef ? page.context.lookup(part) : part;
    return stream instanceof PDFRawStream ? [stream] : [];
  });
}

function decode(stream: PDFRawStream): Uint8Array {
  try {
    return decodePDFRawStream(stream).decode();
  } catch {
    throw new UnreadablePage("a part of its content can't be unpacked");
  }
}
