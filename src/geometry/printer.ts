import { intersection, type Box } from './box.js';
import type { GridName } from './grid.js';
import type { Media } from './media.js';

/**
 * What a stack is made of. `vector`: pages drawn as their source draws them. `dots`: each page one picture of exactly the printer's dots, so that
 * what was proved is what is printed. `pwg-raster`: dots, and beside the PDF a file in the format of PWG 5102.4 for printers that take it.
 */
export const OUTPUT_KINDS = ['vector', 'dots', 'pwg-raster'] as const;
export type OutputKind = (typeof OUTPUT_KINDS)[number];

/** Clear borders, pt. */
export interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** What is known of a printer beside its media and grid. Lengths in pt on the page as it leaves the printer. Plain data. */
export interface PrinterSetup {
  readonly output: OutputKind;
  /** How far the head reaches across the page, in the middle of it; undefined: over the whole of it. */
  readonly printWidth: number | undefined;
  /** Where nothing can be printed. */
  readonly margins: Margins;
  /** By how much everything is moved to the right and down, because the printer puts it as much too far to the left and up. */
  readonly offset: { readonly x: number; readonly y: number };
}

export const PLAIN_PRINTER: PrinterSetup = {
  output: 'vector',
  printWidth: undefined,
  margins: { top: 0, right: 0, bottom: 0, left: 0 },
  offset: { x: 0, y: 0 },
};

/** A printer by its name: what it takes, the dots that it draws, and what is known of it beside. Plain data. */
export interface Output {
  /** `ROLL`, or the seller's own word. */
  readonly name: string;
  /** Media name, checked by `parseMedia`. */
  readonly media: string;
  readonly grid: GridName;
  readonly printer: PrinterSetup;
}

/** The name of the printer that labels go to where nothing else is said. */
export const ROLL = 'roll';

/** Whether pages go out as dots. */
export const isDots = ({ output }: PrinterSetup): boolean => output !== 'vector';

/** The part of a page of this media that the printer can reach, pt, y down; undefined when margins and print width leave nothing. */
export function printableArea({ printWidth, margins }: PrinterSetup, media: Media): Box | undefined {
  const inside: Box = {
    x: margins.left,
    y: margins.top,
    width: Math.max(0, media.width - margins.left - margins.right),
    height: Math.max(0, media.height - margins.top - margins.bottom),
  };
  const width = Math.min(printWidth ?? media.width, media.width);
  return intersection(inside, { x: (media.width - width) / 2, y: 0, width, height: media.height });
}
