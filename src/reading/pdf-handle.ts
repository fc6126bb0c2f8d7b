import { allocate, free, withMemory, type Pdfium } from './pdfium.js';

const ERROR_PASSWORD = 4;
const ERROR_SECURITY = 5;
/** FPDF_REMOVE_SECURITY of fpdf_save.h. */
const WITHOUT_SECURITY = 3;
/** Annotation subtypes that draw nothing on paper by themselves (fpdf_annot.h): Link and Popup. */
const LINK = 2;
const POPUP = 16;
/** FPDF_ANNOT_FLAG_HIDDEN of fpdf_annot.h: neither shown nor printed. */
const HIDDEN = 2;
const FLATTENED = 1;

/** An open PDFium document and the memory that it lives in. */
export class PdfHandle {
  readonly engine: Pdfium;
  readonly pageCount: number;
  readonly #document: number;
  readonly #memory: number;

  private constructor(engine: Pdfium, document: number, memory: number) {
    this.engine = engine;
    this.#document = document;
    this.#memory = memory;
    this.pageCount = engine.FPDF_GetPageCount(document);
  }

  /** Tries an empty user password. */
  static open(engine: Pdfium, bytes: Uint8Array): PdfHandle | 'needs-password' | 'unknown-encryption' | 'damaged' {
    const memory = allocate(engine, bytes.length);
    engine.pdfium.HEAPU8.set(bytes, memory);
    const document = engine.FPDF_LoadMemDocument(memory, bytes.length, '');
    if (document !== 0) return new PdfHandle(engine, document, memory);
    const error = engine.FPDF_GetLastError();
    free(engine, memory);
    if (error === ERROR_SECURITY) return 'unknown-encryption';
    return error === ERROR_PASSWORD ? 'needs-password' : 'damaged';
  }

  /** @param number from 1. 0 for a page that can't be loaded; the engine's functions take it for one that has nothing. */
  loadPage(number: number): number {
    return this.engine.FPDF_LoadPage(this.#document, number - 1);
  }

  /** Makes what annotations and form widgets show part of the pages; returns on how many pages it did. */
  flatten(): number {
    const { engine } = this;
    let pages = 0;
    let form: { info: number; handle: number } | undefined;
    for (let number = 1; number <= this.pageCount; number++) {
      const page = this.loadPage(number);
      if (page === 0) continue;
      if (this.#hasVisibleAnnotations(page)) {
        // Widgets without an appearance get theirs only while a form environment is open.
        form ??= this.#openForm();
        if (engine.FPDFPage_Flatten(page, 0) === FLATTENED) pages += 1;
      }
      engine.FPDF_ClosePage(page);
    }
    if (form) {
      engine.PDFiumExt_ExitFormFillEnvironment(form.handle);
      engine.PDFiumExt_CloseFormFillInfo(form.info);
    }
    return pages;
  }

  #openForm(): { info: number; handle: number } {
    const info = this.engine.PDFiumExt_OpenFormFillInfo();
    return { info, handle: this.engine.PDFiumExt_InitFormFillEnvironment(this.#document, info) };
  }

  #hasVisibleAnnotations(page: number): boolean {
    const { engine } = this;
    const count = engine.FPDFPage_GetAnnotCount(page);
    for (let index = 0; index < count; index++) {
      const annotation = engine.FPDFPage_GetAnnot(page, index);
      const subtype = engine.FPDFAnnot_GetSubtype(annotation);
      const hidden = (engine.FPDFAnnot_GetFlags(annotation) & HIDDEN) !== 0;
      engine.FPDFPage_CloseAnnot(annotation);
      if (!hidden && subtype !== LINK && subtype !== POPUP) return true;
    }
    return false;
  }

  /** The document as PDFium holds it now, written anew without encryption. */
  saveCopy(): Uint8Array {
    const { engine } = this;
    const writer = engine.PDFiumExt_OpenFileWriter();
    try {
      engine.FPDF_SaveAsCopy(this.#document, writer, WITHOUT_SECURITY);
      const size = engine.PDFiumExt_GetFileWriterSize(writer);
      return withMemory(engine, size, (pointer) => {
        engine.PDFiumExt_GetFileWriterData(writer, pointer, size);
        return engine.pdfium.HEAPU8.slice(pointer, pointer + size);
      });
    } finally {
      engine.PDFiumExt_CloseFileWriter(writer);
    }
  }

  close(): void {
    this.engine.FPDF_CloseDocument(this.#document);
    free(this.engine, this.#memory);
  }
}
