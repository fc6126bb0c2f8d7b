import type { Code } from './art.js';
import type { Box, Family, Shape, Turn } from './shapes.js';

export type Producer =
  | 'chromium'
  | 'weasyprint'
  | 'cairo'
  | 'ghostscript'
  | 'libreoffice'
  | 'img2pdf'
  | 'hand-written'
  | 'tiff2pdf'
  | 'groff'
  | 'scan-jpeg'
  | 'scan-g4'
  | 'scan-shade'
  | 'reportlab'
  | 'outlines'
  | 'fop'
  | 'prawn'
  | 'pdfapi2'
  | 'tcpdf'
  | 'pdftex'
  | 'pixels'
  | 'scan-colour'
  | 'itext'
  | 'pdfbox'
  | 'fpdf'
  | 'dompdf'
  | 'pdfkit'
  | 'jspdf'
  | 'libharu'
  | 'wkhtmltopdf'
  | 'scan-flat'
  | 'picture-file'
  | 'fpdf2'
  | 'qt'
  | 'mupdf'
  | 'muhammara'
  | 'react-pdf'
  | 'xetex'
  | 'r'
  | 'pillow'
  | 'scan-pillow'
  | 'itext5'
  | 'pdf-builder'
  | 'typst'
  | 'luatex'
  | 'skia'
  | 'pdf-lib'
  | 'gofpdf'
  | 'pdfmake'
  | 'rsvg'
  | 'inkscape';
export type Kind =
  'label' | 'return-label' | 'packing-slip' | 'customs' | 'instructions' | 'invoice' | 'advert' | 'blank' | 'pick-list' | 'other';
export type Edge = 'frame' | 'cut' | 'picture' | 'ink' | 'page';
export type Role = 'label' | 'return-label' | 'slip' | 'other';

/** Something on a page. `html` is used by the two HTML producers only, as the inside of a box at `x`, `y` of `width` pt. */
export interface Part {
  readonly role: Role;
  readonly shapes: readonly Shape[];
  readonly html?: { readonly x: number; readonly y: number; readonly width: number; readonly markup: string };
  readonly edge?: Edge;
  /** How far the label is turned clockwise on the page as it is drawn, before /Rotate. */
  readonly turn?: Turn;
  readonly codes?: readonly Code[];
}

export interface Page {
  readonly kind: Kind;
  readonly width: number;
  readonly height: number;
  /** /Rotate given to the page afterwards: how far a viewer turns it clockwise. */
  readonly rotate?: Turn;
  /** Degrees clockwise that a scan lies askew. */
  readonly skew?: number;
  /** PDFBox only: what a viewer shows of the page, as a seller crops it by hand; before /Rotate. */
  readonly crop?: Box;
  readonly parts: readonly Part[];
}

export interface Document {
  readonly name: string;
  readonly producer: Producer;
  readonly pages: readonly Page[];
  /** Fonts that the producer is asked for. */
  readonly fonts?: Partial<Record<Family, string>>;
  /** Dots per inch of producers that make pictures, 203 unless told; scans have their own. */
  readonly dpi?: number;
  readonly grey?: boolean;
  /** Picture files only: says nothing of its dots per inch. */
  readonly bare?: boolean;
}

export interface Layout {
  readonly name: string;
  readonly about: string;
  readonly documents: () => readonly Document[];
}

export interface LabelTruth {
  readonly box: Box;
  readonly turn: Turn;
  readonly skew?: number;
  /** Scans only: the label's box after the page was turned back about its centre. */
  readonly straight?: Box;
  readonly edge: Edge;
  /** Bounds of all ink where the edge is a picture or the page. */
  readonly ink?: Box;
  readonly role: 'label' | 'return-label';
  readonly codes: readonly Code[];
}
export interface PageTruth {
  readonly page: number;
  readonly kind: Kind;
  readonly width: number;
  readonly height: number;
  readonly labels: readonly LabelTruth[];
  readonly slip?: Box;
}
export type Half =
  'tuning' | 'unseen' | 'fresh' | 'second-sight' | 'third-sight' | 'fourth-sight' | 'fifth-sight' | 'sixth-sight' | 'seventh-sight';
export interface Truth {
  readonly producer: Producer;
  readonly layout: string;
  readonly half: Half;
  readonly pages: readonly PageTruth[];
}

export const SIZES = {
  letter: { width: 612, height: 792 },
  legal: { width: 612, height: 1008 },
  a4: { width: 595.28, height: 841.89 },
  a5: { width: 419.53, height: 595.28 },
  a6: { width: 297.64, height: 419.53 },
  '4x6': { width: 288, height: 432 },
  '6x4': { width: 432, height: 288 },
  '4x6.75': { width: 288, height: 486 },
  '4x8': { width: 288, height: 576 },
  '100x150': { width: 283.46, height: 425.2 },
} as const;
