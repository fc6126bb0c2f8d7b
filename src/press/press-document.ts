import { PDFDocument, PDFName, type PDFContext, type PDFDict, type PDFFont, type PDFRef } from '../reading/pdf-library.js';
import type { Box } from '../geometry/box.js';
import type { Grid } from '../geometry/grid.js';
import { formatSize } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import { boundsOf, compose, invert } from '../geometry/placement.js';
import { straightening } from '../reading/skew.js';
import type { PressSource, SourceDocument } from '../reading/source.js';
import { isPlanned, type Reason, type Sheet } from '../sheet/sheet.js';
import { drawPicture } from './draw-picture.js';
import { formMatrix, pdfSource, type PdfSource } from './draw-pdf.js';
import { textOperators } from './draw-text.js';
import { joinLayers } from './layers.js';
import { addPage, newDocument, saveDocument } from './output.js';
import { clipTo, cm } from './operators.js';
import { redrawOperators } from './redraw.js';
import { UnreadablePage } from './page-form.js';
import { drawnSize, fits, fitsSize, place, type Offset, type Placement } from './place.js';
import { embedFace, measureText, missingGlyphs } from './text-face.js';

/** A sheet that the press could not draw, and why. */
export interface Undrawn {
  readonly sheetId: string;
  readonly reason: Reason;
}

/** What the press made of one source document. */
export interface Pressed {
  /** A PDF with one page for each placement, in their order; undefined when there is none. */
  readonly bytes: Uint8Array | undefined;
  /** One for each planned sheet that was drawn, in the order of the sheets. */
  readonly placements: readonly Placement[];
  readonly undrawn: readonly Undrawn[];
}

/**
 * Draws each planned sheet of a document once, straight from its source, on a page of the media: vector stays vector,
 * pixels stay pixels. Everything lies moved by the printer's `offset`. The same source and sheets give the same bytes. A sheet that can't be drawn comes back in `undrawn`.
 */
export async function pressDocument(
  source: SourceDocument,
  sheets: readonly Sheet[],
  media: Media,
  grid: Grid,
  offset?: Offset,
): Promise<Pressed> {
  const document = await newDocument();
  const press = new Press(source, document, media, grid, offset);
  const placements: Placement[] = [];
  const undrawn: Undrawn[] = [];
  for (const sheet of sheets.filter(isPlanned)) {
    const result = await press.draw(sheet, placements.length + 1);
    if ('reason' in result) undrawn.push(result);
    else placements.push(result);
  }
  if (placements.length === 0) return { bytes: undefined, placements, undrawn };
  press.finish();
  return { bytes: await saveDocument(document), placements, undrawn };
}

class Press {
  private readonly context: PDFContext;
  private readonly opened = new Map<PDFDocument, PdfSource>();
  private readonly layers: PDFDict[] = [];
  private face: Promise<PDFFont> | undefined;

  constructor(
    private readonly source: SourceDocument,
    private readonly document: PDFDocument,
    private readonly media: Media,
    private readonly grid: Grid,
    private readonly offset: Offset = { x: 0, y: 0 },
  ) {
    this.context = document.context;
  }

  async draw(sheet: Sheet, page: number): Promise<Placement | Undrawn> {
    if (sheet.content.kind === 'text') return this.drawText(sheet, sheet.content.lines, sheet.content.fontSize, page);
    if (!fits(sheet, this.media)) return { sheetId: sheet.id, reason: tooLarge(drawnSize(sheet), sheet.margin, this.media) };
    const placement = place(sheet, page, this.media, this.grid, this.source.page(sheet.page).pictureUnder(sheet.box), this.offset);
    const pressSource = this.source.pressSource(sheet.page);
    try {
      this.drawRegion(sheet, placement, pressSource);
    } catch (error) {
      if (error instanceof UnreadablePage) return { sheetId: sheet.id, reason: unreadable(error.message) };
      throw error;
    }
    return placement;
  }

  finish(): void {
    const layers = joinLayers(this.layers, this.context);
    if (layers) this.document.catalog.set(PDFName.of('OCProperties'), layers);
  }

  private drawRegion(sheet: Sheet, placement: Placement, source: PressSource): void {
    const { matrix, drawnBox } = placement;
    if (matrix === undefined) throw new Error('press: a region has no place');
    // The source is drawn as given; the sheet speaks of the page straightened.
    const redrawn = redrawOperators(sheet.redrawn ?? [], matrix, this.grid, this.media.height);
    const page = this.source.page(sheet.page);
    const straight = straightening(page);
    const given = page.skew === 0 ? matrix : compose(straight, matrix);
    if (source.kind === 'pdf') {
      const form = this.open(source.pdf).form(sheet.page);
      this.addDrawing(drawnBox, form.ref, cm(formMatrix(form, given, this.media.height)), redrawn);
      return;
    }
    const box = page.skew === 0 ? sheet.box : boundsOf(invert(straight), sheet.box);
    const part = drawPicture(this.context, source.picture, page, box, given, this.media.height);
    if (part === undefined) throw new UnreadablePage('the region holds no pixel of the picture');
    this.addDrawing(drawnBox, part.ref, cm(part.matrix), redrawn);
  }

  private addDrawing(drawnBox: Box, ref: PDFRef, map: string, redrawn: string): void {
    const operators = `q\n${clipTo(drawnBox, this.media.height)}\n${map}\n/S Do\nQ${redrawn === '' ? '' : `\n${redrawn}`}`;
    addPage(this.document, this.media, operators, { XObject: { S: ref } });
  }

  private async drawText(sheet: Sheet, lines: readonly string[], fontSize: number, page: number): Promise<Placement | Undrawn> {
    const size = measureText(lines, fontSize);
    if (!fitsSize(size.width, size.height, sheet.margin, this.media)) {
      return { sheetId: sheet.id, reason: tooLarge(size, sheet.margin, this.media) };
    }
    const missing = missingGlyphs(lines.join('')).length;
    if (missing > 0) return { sheetId: sheet.id, reason: noGlyphs(missing) };
    const drawnBox = { x: sheet.margin + this.offset.x, y: sheet.margin + this.offset.y, ...size };
    const face = await (this.face ??= embedFace(this.document));
    const operators = textOperators(lines, fontSize, drawnBox, this.media.height, face, 'F');
    addPage(this.document, this.media, operators, { Font: { F: face.ref } });
    return { sheetId: sheet.id, page, matrix: undefined, drawnBox, pixelForDot: false };
  }

  private open(pdf: PDFDocument): PdfSource {
    const known = this.opened.get(pdf);
    if (known) return known;
    const source = pdfSource(pdf, this.context);
    const layers = source.layers();
    if (layers) this.layers.push(layers);
    this.opened.set(pdf, source);
    return source;
  }
}

function tooLarge(size: { width: number; height: number }, margin: number, media: Media): Reason {
  const room = formatSize(media.width - 2 * margin, media.height - 2 * margin);
  return {
    code: 'press/too-large',
    message: `the region is ${formatSize(size.width, size.height)} as drawn and the media has room for ${room}`,
    remedy: 'Let the recipe scale it to fit, give it a smaller box, or print on larger media.',
  };
}

const unreadable = (what: string): Reason => ({
  code: 'press/unreadable-source',
  message: `the page can't be drawn: ${what}`,
  remedy: 'Open the document in a viewer, save or print it to a new PDF, and use that one.',
});

const noGlyphs = (count: number): Reason => ({
  code: 'press/missing-glyphs',
  message: `${count} ${count === 1 ? 'character' : 'characters'} of the text can't be set in the font at hand`,
  remedy: 'Let the recipe shrink the region instead of setting its text anew.',
});
