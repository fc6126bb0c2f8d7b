import { PDFString } from '../reading/pdf-library.js';
import type { Box } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import { textOperators } from './draw-text.js';
import { num } from './operators.js';
import { addPage, newDocument, saveDocument } from './output.js';
import { askForTrueSize } from './pdf-stream-writer.js';
import { embedFace } from './text-face.js';

/** One line of type. */
export interface TypeLine {
  readonly text: string;
  /** pt */
  readonly fontSize: number;
  /** Where its top left corner is, pt from the page's top left corner, y down. */
  readonly x: number;
  readonly y: number;
}

/** A page made of the printer's dots and of type, no sheet of any source. */
export interface DotPage {
  /** What programs show as the document's title: printable ASCII without brackets. */
  readonly title: string;
  readonly media: Media;
  readonly grid: Grid;
  /** Black, in whole dots from the page's top left corner, y down. */
  readonly marks: readonly Box[];
  readonly lines: readonly TypeLine[];
}

/** Some rasterisers paint every dot that a mark touches: an edge that rounding puts a hair outside its dot would cost a whole one (see `place`). */
const DRAWN_IN = 0.01;

/** A PDF of one page, marks as rectangles on whole dots of the grid. The same page gives the same bytes. */
export async function pressDotPage({ title, media, grid, marks, lines }: DotPage): Promise<Uint8Array> {
  const document = await newDocument();
  const { context, catalog } = document;
  const face = await embedFace(document);
  const perPt = dotsPerPt(grid);
  const rects = marks.map(({ x, y, width, height }) => {
    const low = media.height - (y + height - DRAWN_IN) / perPt;
    return `${num((x + DRAWN_IN) / perPt)} ${num(low)} ${num((width - 2 * DRAWN_IN) / perPt)} ${num((height - 2 * DRAWN_IN) / perPt)} re`;
  });
  const type = lines.map(({ text, fontSize, x, y }) =>
    textOperators([text], fontSize, { x, y, width: 0, height: 0 }, media.height, face, 'F'),
  );
  addPage(document, media, ['0 g', ...rects, ...(rects.length > 0 ? ['f'] : []), ...type].join('\n'), { Font: { F: face.ref } });
  context.trailerInfo.Info = context.register(context.obj({ Title: PDFString.of(title) }));
  askForTrueSize(catalog, context);
  return saveDocument(document);
}
