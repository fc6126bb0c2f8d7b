import { createRequire } from 'node:module';
import type * as Library from 'pdf-lib';

const require = createRequire(import.meta.url);

/**
 * The PDF library, from the one file of its own distribution: its many modules take 0.3 s to load one by one, this one half of it, and every worker loads
 * it before its first document.
 */
const library = require(require.resolve('pdf-lib').replace(/cjs(.)index\.js$/, 'dist$1pdf-lib.min.js')) as typeof Library;

export const {
  decodePDFRawStream,
  ParseSpeeds,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFInvalidObject,
  PDFName,
  PDFNull,
  PDFNumber,
  PDFObjectCopier,
  PDFPageLeaf,
  PDFRawStream,
  PDFRef,
  PDFStream,
  PDFString,
} = library;

export type PDFArray = Library.PDFArray;
export type PDFContext = Library.PDFContext;
export type PDFDict = Library.PDFDict;
export type PDFDocument = Library.PDFDocument;
export type PDFFont = Library.PDFFont;
export type PDFName = Library.PDFName;
export type PDFNumber = Library.PDFNumber;
export type PDFObject = Library.PDFObject;
export type PDFObjectCopier = Library.PDFObjectCopier;
export type PDFPageLeaf = Library.PDFPageLeaf;
export type PDFRawStream = Library.PDFRawStream;
export type PDFRef = Library.PDFRef;
export type PDFStream = Library.PDFStream;
export type PDFString = Library.PDFString;
