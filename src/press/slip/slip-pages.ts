import type { Box } from '../../geometry/box.js';
import type { Grid } from '../../geometry/grid.js';
import type { Media } from '../../geometry/media.js';
import type { SlipContent, SlipLook } from '../../sheet/slip-content.js';
import { drawSlip } from './draw-slip.js';
import { layOutSlip } from './lay-out.js';

/** A slip, ready to be taken in like any other document. */
export interface SlipPages {
  /** One page of the media's size for each page of the slip. */
  readonly pdf: Uint8Array;
  readonly pages: number;
  /** What is not printed as it was given. Never a name, an address or a number of an order. */
  readonly warnings: readonly { readonly text: string }[];
  /** Kept free on every page for the stack's number, pt. */
  readonly numberBox: Box;
  /** The code of the order number with its clear space, on every page; undefined where there is none. pt. */
  readonly codeBox?: Box;
}

/**
 * Draws an order's packing slip: as many pages as it takes, in black, for the printer's dots. Any content gives a slip; what can't be printed as it was given is
 * named in `warnings`. The same content gives the same bytes.
 * @param grid the dots that bars and strokes are put on
 */
export async function slipPages(content: SlipContent, look: SlipLook, media: Media, grid: Grid): Promise<SlipPages> {
  const laid = await layOutSlip(content, look, media, grid);
  const pdf = await drawSlip(laid, media);
  return {
    pdf,
    pages: laid.pages.length,
    warnings: laid.warnings.map((text) => ({ text })),
    numberBox: laid.numberBox,
    ...(laid.codeBox ? { codeBox: laid.codeBox } : {}),
  };
}
