import { PDFDict, PDFDocument, PDFName, PDFNumber } from './pdf-library.js';
import type { Reason } from '../sheet/sheet.js';
import { count } from './counters.js';
import { KeptInks } from './kept-inks.js';
import { PdfHandle } from './pdf-handle.js';
import { PdfPage } from './pdf-page.js';
import { isCutOff, lacksParts, lostLineEnds } from './pdf-wholeness.js';
import { hasBrokenObjectStream } from './pdf-inflate.js';
import { pdfium } from './pdfium.js';
import type { PressSource, SourceDocument, SourcePage } from './source.js';
import { trueSizeOf, type TrueSize } from './true-size.js';
import { DAMAGED_PAGE } from './unfit-page.js';

export interface OpenPdfOptions {
  /** `output`: the press's own pages, opened to be proved; counted apart. */
  readonly as?: 'source' | 'output';
}

/**
 * Opens a PDF from any producer: encrypted with an empty password, damaged cross-reference table, annotations and form
 * widgets (made part of the page). Never throws for bad bytes: `refused` says what is wrong and what to do. A page that can't
 * be used among others that can is no reason to refuse: it says so itself (`SourcePage.unfit`).
 */
export async function openPdf(bytes: Uint8Array, options: OpenPdfOptions = {}): Promise<SourceDocument | { readonly refused: Reason }> {
  const engine = await pdfium();
  const notes: string[] = [];
  const isSource = options.as !== 'output';
  if (isSource) count('documentsOpened');
  if (isSource && isCutOff(bytes)) return { refused: CUT_OFF };

  let handle = PdfHandle.open(engine, bytes);
  if (handle === 'needs-password') return { refused: NEEDS_PASSWORD };
  if (handle === 'unknown-encryption') return { refused: UNKNOWN_ENCRYPTION };
  if (handle === 'damaged') {
    const mended = await mend(bytes);
    if (!mended) return { refused: DAMAGED };
    handle = PdfHandle.open(engine, mended);
    if (typeof handle === 'string') return { refused: DAMAGED };
    notes.push('the cross-reference table was damaged and has been rebuilt');
  }
  // Its memory is the engine's, which outlives every document.
  let document: SourceDocument | { readonly refused: Reason } | undefined;
  try {
    document = isSource ? await sourceOf(handle, bytes, notes) : new OpenPdf(handle, undefined, notes);
    return document;
  } finally {
    if (!document || 'refused' in document) handle.close();
  }
}

/** The document that a handle gives, or why it can't be used; the handle is the caller's to close then. */
async function sourceOf(handle: PdfHandle, bytes: Uint8Array, notes: string[]): Promise<SourceDocument | { readonly refused: Reason }> {
  if (handle.pageCount === 0) return { refused: NO_PAGES };
  // Looked at before PDFium writes the file anew: its copy has lengths that fit, whatever is missing.
  const asGiven = await load(bytes);
  if (asGiven && hasBrokenObjectStream(bytes)) return { refused: DAMAGED };
  const flattened = handle.flatten();
  if (flattened > 0) notes.push(`annotations or form fields on ${flattened} page${flattened === 1 ? '' : 's'} were made part of the page`);
  const copied = flattened > 0 || !asGiven || lostLineEnds(asGiven);
  const pdf = copied ? await load(handle.saveCopy()) : asGiven;
  if (!pdf || [pdf, asGiven ?? pdf].some((each) => pagesOf(each) !== handle.pageCount)) return { refused: DAMAGED };
  const document = new OpenPdf(handle, pdf, notes, damagedPages(asGiven ?? pdf, pdf));
  const first = document.page(1).unfit;
  if (!first || everyPage(document).some((page) => !page.unfit)) return document;
  document.closePages();
  return { refused: first };
}

/** Undefined for a page tree that can't be walked: one that holds itself, or something else than pages. */
function pagesOf(pdf: PDFDocument): number | undefined {
  try {
    return pdf.getPageCount();
  } catch {
    return undefined;
  }
}

const everyPage = (document: SourceDocument): readonly SourcePage[] =>
  Array.from({ length: document.pageCount }, (_, index) => document.page(index + 1));

function damagedPages(...pdfs: readonly PDFDocument[]): ReadonlySet<number> {
  const damaged = new Set<number>();
  for (const pdf of new Set(pdfs)) {
    for (let number = 1; number <= pdf.getPageCount(); number++) if (lacksParts(pdf, number)) damaged.add(number);
  }
  return damaged;
}

class OpenPdf implements SourceDocument {
  readonly #handle: PdfHandle;
  readonly #pdf: PDFDocument | undefined;
  readonly #pages = new Map<number, PdfPage>();
  readonly #damaged: ReadonlySet<number>;
  readonly #inks = new KeptInks();
  readonly notes: string[];

  /** @param pdf the source as the press draws it; left out for the press's own pages. @param damaged pages, from 1 */
  constructor(handle: PdfHandle, pdf: PDFDocument | undefined, notes: string[], damaged: ReadonlySet<number> = new Set()) {
    this.#handle = handle;
    this.#pdf = pdf;
    this.notes = notes;
    this.#damaged = damaged;
  }

  get pageCount(): number {
    return this.#handle.pageCount;
  }

  page(number: number): SourcePage {
    if (number < 1 || number > this.pageCount) throw new RangeError(`no page ${number} of ${this.pageCount}`);
    let page = this.#pages.get(number);
    if (!page) {
      const counted = this.#pdf ? 'sourceRasters' : 'outputRasters';
      const damage = this.#damaged.has(number) ? DAMAGED_PAGE : undefined;
      const draw = (unit: number): PdfPage =>
        new PdfPage(this.#handle.engine, this.#handle.loadPage(number), number, unit, counted, damage);
      page = draw(this.#userUnit(number));
      const truly = this.#pdf && !page.unfit ? trueSizeOf(page) : undefined;
      if (truly) {
        page.close();
        page = draw(this.#resize(number, truly));
      }
      if (this.#pdf && !page.unfit) page = page.straightened();
      this.#pages.set(number, page);
    }
    this.#inks.used(page);
    return page;
  }

  pressSource(): PressSource {
    if (!this.#pdf) throw new Error('an output page is never pressed again');
    return { kind: 'pdf', pdf: this.#pdf };
  }

  closePages(): void {
    for (const page of this.#pages.values()) page.close();
    this.#pages.clear();
  }

  close(): void {
    this.closePages();
    this.#handle.close();
  }

  /** The page's own UserUnit carries its true size, so that the press draws it as it was read. */
  #resize(number: number, { factor, note }: TrueSize): number {
    const unit = factor * this.#userUnit(number);
    this.#pdf?.getPage(number - 1).node.set(PDFName.of('UserUnit'), PDFNumber.of(unit));
    this.notes.push(note);
    return unit;
  }

  /** PDFium does not tell it (libraries differ); it is not inheritable (ISO 32000). */
  #userUnit(number: number): number {
    const value = this.#pdf?.getPage(number - 1).node.lookup(PDFName.of('UserUnit'));
    const unit = value instanceof PDFNumber ? value.asNumber() : 1;
    return unit > 0 ? unit : 1;
  }
}

async function load(bytes: Uint8Array): Promise<PDFDocument | undefined> {
  try {
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false, throwOnInvalidObject: false });
    return pdf.catalog instanceof PDFDict ? pdf : undefined;
  } catch {
    return undefined;
  }
}

async function mend(bytes: Uint8Array): Promise<Uint8Array | undefined> {
  const pdf = await load(bytes);
  try {
    return pdf && pdf.getPageCount() > 0 ? await pdf.save({ useObjectStreams: false, updateFieldAppearances: false }) : undefined;
  } catch {
    return undefined;
  }
}

const DAMAGED: Reason = {
  code: 'reading/damaged',
  message: 'the PDF is cut off or damaged and could not be repaired',
  remedy: 'Download it again from the sales channel; if it opens in a viewer, print it to a new PDF there.',
};

const CUT_OFF: Reason = {
  code: 'reading/cut-off',
  message: 'the end of the PDF is missing, and with it perhaps a part of the label',
  remedy: 'Download it again from the sales channel.',
};

const NEEDS_PASSWORD: Reason = {
  code: 'reading/needs-password',
  message: 'the PDF needs a password to be opened',
  remedy: 'Save a copy without password and put that copy into the folder.',
};

const UNKNOWN_ENCRYPTION: Reason = {
  code: 'reading/unknown-encryption',
  message: 'the PDF is encrypted in a way that is not known here',
  remedy: 'Open it in a viewer, print it to a new PDF there, and put that into the folder.',
};

const NO_PAGES: Reason = {
  code: 'reading/no-pages',
  message: 'the PDF has no pages',
  remedy: 'Download it again from the sales channel.',
};
