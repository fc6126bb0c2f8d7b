import type { PDFDocument } from './pdf-library.js';
import type { Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';
import type { Reason } from '../sheet/sheet.js';

/** An 8-bit grey picture, row by row from the top; 0 is black, 255 is white paper. */
export interface GreyRaster {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
  /** Pixels per pt of the source page. */
  readonly pixelsPerPt: number;
  /** Where the top-left pixel's outer corner lies on the source page, pt. */
  readonly origin: Point;
}

/** A word of the text layer. Sources without a text layer have none. */
export interface Word {
  readonly text: string;
  readonly box: Box;
  /** Clockwise turn of the writing against upright: 90 reads from top to bottom. `undefined` for slanted writing. */
  readonly turn: Turn | undefined;
  /** Size of the type in pt, as drawn on the page. */
  readonly fontSize: number;
}

/** A placed picture. `box` is where it lies on the page. */
export interface PlacedImage {
  readonly box: Box;
  readonly pixelWidth: number;
  readonly pixelHeight: number;
  /** Clockwise turn of the picture against upright; `undefined` for mirrored or slanted placement. */
  readonly turn: Turn | undefined;
}

/** The symbologies that can be told, by their names in the standards. */
export const SYMBOLOGIES = ['Code 128', 'ITF', 'Code 39', 'PDF417', 'Data Matrix', 'QR', 'Aztec', 'MaxiCode'] as const;
export type Symbology = (typeof SYMBOLOGIES)[number];

/** A barcode that was read. Corners are pt on the visible source page, in the reading order of the symbol: its own top-left, top-right, bottom-right, bottom-left. */
export interface Code {
  readonly symbology: Symbology;
  /** ISO/IEC 15424 symbology identifier, such as `]C1`. */
  readonly identifier: string;
  /** The bytes as transmitted (FNC1 in later places as GS, 29), as a lower-case hex string: data that crosses threads and compares with ===. */
  readonly bytes: string;
  readonly corners: readonly [Point, Point, Point, Point];
  readonly box: Box;
  /** Clockwise turn of the symbol's own reading direction against upright; `undefined` when slanted by more than 10°. */
  readonly turn: Turn | undefined;
  /** Of a QR, Data Matrix or Aztec code: its modules along and across its own reading direction. */
  readonly modules?: { readonly columns: number; readonly rows: number };
  /** Of a matrix or stacked code: the share of its error correction that reading did not need, 0 to 1. */
  readonly unusedCorrection?: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How far the page as given lies turned, as its ink tells. */
export interface Slant {
  /** Clockwise, in degrees; positive when lines of writing fall towards the right. */
  readonly degrees: number;
  /** Whether the ink tells it clearly. Not on a page with next to nothing on it, nor on one that shows two directions. */
  readonly sure: boolean;
}

/**
 * Facts about one page, each gathered at most once and only when asked. All boxes are pt on the visible page (after
 * CropBox, /Rotate and UserUnit), true size, origin top-left, y down. Not safe to use after `SourceDocument.close`.
 */
export interface SourcePage {
  /** From 1. */
  readonly number: number;
  /** Visible size in pt, true size. */
  readonly width: number;
  readonly height: number;
  /** Why the page can't be used although the document can; its other facts are not to be asked for then. */
  readonly unfit?: Reason | undefined;
  /**
   * How far the page as given lay turned clockwise, in degrees, and has been straightened: every other fact, and the press, take it
   * turned back by as much about its centre, its size unchanged. 0 for all but scans that were clearly a little crooked.
   */
  readonly skew: number;
  /** What was measured of the page as given; a page that draws anything but pictures is taken to be straight without a look. */
  readonly slant: Slant;
  /** Words of which anything lies on the visible page. */
  words(): readonly Word[];
  images(): readonly PlacedImage[];
  /**
   * The region drawn in grey, not turned, at `pixelsPerPt`; `own` means at the pixels of the picture that draws it, the region
   * then grows to whole pixels. With `smooth` off (default on) no edge is softened, as printers draw. Throws RangeError over
   * `MOST_PIXELS`.
   */
  render(region: Box, pixelsPerPt: number | 'own', smooth?: boolean): GreyRaster;
  /** The whole page in grey at a coarse resolution; drawn once, and again on a page that was long not used. */
  coarse(): GreyRaster;
  /** The same with the paper of scans evenly lit, so that their shadows are no ink (`evenLight`), and faint ink made darker (`fullBlack`); most pages are the same either way. */
  ink(): GreyRaster;
  /** The one picture that draws `region`, when one picture does: the press may then copy it pixel for dot. */
  pictureUnder(region: Box): PictureUnder | undefined;
  /**
   * Every code inside `region`, read once per region at the picture's own pixels or at `pixelsPerPt`, where the page's texture
   * says that codes may be; `thorough` reads the whole region with every means, several times slower.
   */
  codes(region: Box, pixelsPerPt: number, options?: { readonly thorough?: boolean }): Promise<readonly Code[]>;
}

/** The pixel grid of a picture that draws a region: how fine it is, and where the outer corner of its top-left pixel lies (pt). */
export interface PictureUnder {
  readonly pixelsPerPt: number;
  readonly origin: Point;
}

/** Resolution of `SourcePage.ink`: 108 dpi, fine enough for a frame to 0.25 mm and for the texture of 13 mil bars. */
export const INK_PIXELS_PER_PT = 1.5;

export { MOST_PIXELS } from '../geometry/grid.js';

/** What the press needs to draw from a source. A `pdf` is opened once, by reading; the press copies from it and never changes it. */
export type PressSource = { readonly kind: 'pdf'; readonly pdf: PDFDocument } | { readonly kind: 'picture'; readonly picture: Picture };

/** A decoded picture, upright (EXIF turn done), transparent parts on white. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** 1: grey, 3: RGB; 8 bits a sample, row by row from the top. */
  readonly channels: 1 | 3;
  readonly data: Uint8Array;
  /** Whether every sample is 0 or 255 and grey: the press then stores 1 bit a pixel. */
  readonly bilevel: boolean;
}

export interface SourceDocument {
  readonly pageCount: number;
  /** What was put right on opening, one sentence each: "re-built a damaged cross-reference table". */
  readonly notes: readonly string[];
  /** @param number from 1. Throws RangeError outside 1..pageCount (a bug of the caller). */
  page(number: number): SourcePage;
  /** The source as the press draws it: annotations and widgets that a person would see are part of the page. */
  pressSource(page: number): PressSource;
  close(): void;
}
