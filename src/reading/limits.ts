import { MOST_PIXELS } from './source.js';

/** What a picture may ask for, so that no single file can use up the machine. */
export interface PictureLimits {
  /** Pixels of one page, before anything is decoded. */
  readonly pixels: number;
  /** Pages of one document. */
  readonly pages: number;
  /** Bytes of decoded pages that are kept as they are; further ones are kept compressed. */
  readonly keptBytes: number;
  /** Bytes of a document's decoded pages in all, after that compression. */
  readonly storedBytes: number;
}

/** A letter page at 800 dpi has 60 million pixels. */
export const PICTURE_LIMITS: PictureLimits = { pixels: MOST_PIXELS, pages: 1000, keptBytes: 48_000_000, storedBytes: 250_000_000 };
