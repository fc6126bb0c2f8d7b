import { PDFDict, PDFName, PDFObjectCopier, type PDFContext, type PDFDocument, type PDFRef } from '../reading/pdf-library.js';
import { compose, invert, type Matrix } from '../geometry/placement.js';
import { flip } from './operators.js';
import { formOfPage, UnreadablePage } from './page-form.js';
import { visiblePage } from './visible-page.js';

/** A source page ready to be drawn on any number of output pages of one document. */
export interface PageForm {
  readonly ref: PDFRef;
  /** Visible page (pt, y down) → the form's user space. */
  readonly toUserSpace: Matrix;
}

/** A source PDF, as seen by one output document. */
export interface PdfSource {
  /** @param number from 1. @throws UnreadablePage */
  form(number: number): PageForm;
  /** /OCProperties of the source (which layers are shown), copied; undefined when it has no layers. */
  layers(): PDFDict | undefined;
}

/** Prepares a PDF for drawing its pages into `context`. What they share (fonts, pictures) is copied once; the source stays as it is. */
export function pdfSource(document: PDFDocument, context: PDFContext): PdfSource {
  const copier = PDFObjectCopier.for(document.context, context);
  const forms = new Map<number, PageForm>();
  const form = (number: number): PageForm => {
    const known = forms.get(number);
    if (known) return known;
    const leaf = unreadableUnless('its page tree is damaged', () => document.getPage(number - 1).node);
    const visible = visiblePage(leaf);
    if (!visible) throw new UnreadablePage('its CropBox lies outside its MediaBox');
    const made: PageForm = {
      ref: formOfPage(leaf, visible.userBox, context, copier),
      toUserSpace: invert(visible.fromUserSpace),
    };
    forms.set(number, made);
    return made;
  };
  const layers = (): PDFDict | undefined => {
    const properties: unknown = document.catalog.lookup(PDFName.of('OCProperties'));
    return properties instanceof PDFDict ? copier.copy(properties) : undefined;
  };
  return { form, layers };
}

/** The `cm` map that draws a form: its user space → visible page → output page → the output's user space. */
export function formMatrix(form: Pick<PageForm, 'toUserSpace'>, placement: Matrix, pageHeight: number): Matrix {
  return compose(compose(invert(form.toUserSpace), placement), flip(pageHeight));
}

function unreadableUnless<T>(what: string, read: () => T): T {
  try {
    return read();
  } catch {
    throw new UnreadablePage(what);
  }
}
