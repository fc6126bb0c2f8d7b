import { PDFRawStream } from '../reading/pdf-library.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import type { GreyRaster } from '../reading/source.js';
import { toGroup4 } from './group4.js';
import { num } from './operators.js';
import { addPage, newDocument, saveDocument } from './output.js';

/** A picture's edges are drawn in by a hundredth of a dot: an edge that rounding puts a hair outside its dot would cost a whole one (see `place`). */
const DRAWN_IN = 0.01;

/**
 * A PDF of pages that are the printer's own dots: one picture a page, 1 bit a dot, each on whole dots of the grid from the page's top left corner. Nothing
 * else is in the file. The same dots give the same bytes.
 * @param pages 0 burned, 255 paper; each of floor(media × grid) dots
 */
export async function dotsDocument(pages: readonly GreyRaster[], media: Media, grid: Grid): Promise<Uint8Array> {
  const document = await newDocument();
  const { context } = document;
  const perPt = dotsPerPt(grid);
  for (const page of pages) {
    const { bytes, columns, rows } = await toGroup4(page);
    const dict = context.obj({
      Type: 'XObject',
      Subtype: 'Image',
      Width: columns,
      Height: rows,
      ColorSpace: 'DeviceGray',
      BitsPerComponent: 1,
      Interpolate: false,
      Filter: 'CCITTFaxDecode',
      DecodeParms: { K: -1, Columns: columns, Rows: rows, BlackIs1: true },
    });
    const ref = context.register(PDFRawStream.of(dict, bytes));
    const [width, height] = [(columns - 2 * DRAWN_IN) / perPt, (rows - 2 * DRAWN_IN) / perPt];
    const [left, low] = [DRAWN_IN / perPt, media.height - DRAWN_IN / perPt - height];
    addPage(document, media, `q\n${num(width)} 0 0 ${num(height)} ${num(left)} ${num(low)} cm\n/D Do\nQ`, { XObject: { D: ref } });
  }
  return saveDocument(document);
}
