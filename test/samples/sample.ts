import { inkBounds, type Edge, type PlacedCode, type Rect } from './drawing.js';
import { DPI, type Kind, type Layout, type LayoutPage, type Region } from './layout.js';
import { pdfOf, place, type OnPage, type PageDress, type QuarterTurn } from './pdf.js';
import { pictureFile } from './picture-file.js';
import { rasterise, type Pixels } from './raster.js';
import { wholePage } from './whole-page.js';

export type { ExpectedCode } from './code-art.js';
export type { PlacedCode } from './drawing.js';
export { KINDS, type Kind, type Layout, type Trait } from './layout.js';
export type { QuarterTurn } from './pdf.js';
export const QUARTER_TURNS: readonly QuarterTurn[] = [0, 90, 180, 270];

export interface ExpectedLabel {
  readonly role: 'label' | 'return-label';
  /** pt on the visible page, origin top-left, y down. */
  readonly box: Rect;
  /** What `box` is: the outer frame, the cut line, the picture's edge, the whole page, or the bounds of all ink. */
  readonly edge: Edge;
  /** Clockwise turn that makes the label's writing upright. */
  readonly turn: QuarterTurn;
  /** How large the label is drawn; 1 is true size. */
  readonly scale: number;
  /** Each with its box on the visible page (within a dot or two: pixels are whole). */
  readonly codes: readonly PlacedCode[];
}

export interface ExpectedSlip {
  readonly box: Rect;
  readonly turn: QuarterTurn;
}

export interface ExpectedPage {
  /** Visible size, pt. */
  readonly width: number;
  readonly height: number;
  readonly labels: readonly ExpectedLabel[];
  readonly slips: readonly ExpectedSlip[];
  /** Codes on the page that belong to no label. */
  readonly otherCodes: readonly PlacedCode[];
}

export interface Sample {
  /** `layout/kind/turn`. */
  readonly name: string;
  readonly layout: string;
  readonly kind: Kind;
  /** How the page is turned, clockwise. */
  readonly turn: QuarterTurn;
  readonly bytes: Uint8Array;
  readonly fileName: string;
  readonly expected: { readonly pages: readonly ExpectedPage[] };
}

/** Half of the layouts are turned by /Rotate, half by drawing, at 180° some by both. */
function dressFor(layout: Layout, turn: QuarterTurn): PageDress {
  const odd = parity(layout.name) === 1;
  const drawn: QuarterTurn = turn === 0 ? 0 : turn === 180 && !odd ? 90 : odd ? turn : 0;
  return { drawn, rotate: ((turn + 360 - drawn) % 360) as QuarterTurn, origin: layout.origin, bleed: layout.bleed };
}

const parity = (name: string): number => Array.from(name).reduce((sum, character) => sum + character.charCodeAt(0), 0) % 2;
const back = (turn: number): QuarterTurn => ((720 - turn) % 360) as QuarterTurn;
const isLabel = (region: Region): boolean => region.role === 'label' || region.role === 'return-label';

function mapped(box: Rect, w: number, h: number, region: Region): Rect {
  const [a, b, c, d, e, f] = place(w, h, region.turn, region.scale, region.x, region.y);
  const at = (x: number, y: number): [number, number] => [a * x + c * y + e, b * x + d * y + f];
  const [x0, y0] = at(box.x, box.y);
  const [x1, y1] = at(box.x + box.width, box.y + box.height);
  return { x: Math.min(x0, x1), y: Math.min(y0, y1), width: Math.abs(x1 - x0), height: Math.abs(y1 - y0) };
}

/** A box on the page after the page was turned clockwise. */
function turnedBox(box: Rect, page: { width: number; height: number }, turn: QuarterTurn): Rect {
  const { x, y, width: w, height: h } = box;
  switch (turn) {
    case 0:
      return box;
    case 90:
      return { x: page.height - y - h, y: x, width: h, height: w };
    case 180:
      return { x: page.width - x - w, y: page.height - y - h, width: w, height: h };
    case 270:
      return { x: y, y: page.width - x - w, width: h, height: w };
  }
}

/** Where a region's label lies on the page before the turn, and what shows there. `pixels`: it is a placed picture. */
function boxOf(region: Region, page: LayoutPage, pixels: Pixels | undefined): { box: Rect; edge: Edge } {
  const { drawing } = region;
  const [w, h] = pixels ? [(pixels.width * 72) / pixels.dpi, (pixels.height * 72) / pixels.dpi] : [drawing.width, drawing.height];
  const all = { x: 0, y: 0, width: drawing.width, height: drawing.height };
  const whole = mapped({ x: 0, y: 0, width: w, height: h }, w, h, region);
  if (Math.abs(whole.width - page.width) < 1.5 && Math.abs(whole.height - page.height) < 1.5) {
    return { box: { x: 0, y: 0, width: page.width, height: page.height }, edge: 'page' };
  }
  if (drawing.edge !== 'ink') return { box: mapped(all, w, h, region), edge: drawing.edge };
  if (pixels) return { box: whole, edge: 'image' };
  return { box: mapped(inkBounds(drawing), w, h, region), edge: 'ink' };
}

function expectedPage(page: LayoutPage, kind: Kind, turn: QuarterTurn, pixelsOf: (region: Region) => Pixels | undefined): ExpectedPage {
  const size = turn % 180 === 0 ? page : { width: page.height, height: page.width };
  const clip = (box: Rect): Rect => {
    const x = Math.max(0, box.x);
    const y = Math.max(0, box.y);
    return { x, y, width: Math.min(page.width, box.x + box.width) - x, height: Math.min(page.height, box.y + box.height) - y };
  };
  const codesOf = (region: Region): readonly PlacedCode[] =>
    region.drawing.codes(kind === 'vector' ? undefined : DPI[kind] / 72).map((code) => ({
      ...code,
      box: turnedBox(mapped(code.box, region.drawing.width, region.drawing.height, region), page, turn),
    }));
  return {
    width: size.width,
    height: size.height,
    labels: page.regions.filter(isLabel).map((region) => {
      const { box, edge } = boxOf(region, page, pixelsOf(region));
      return {
        role: region.role === 'return-label' ? 'return-label' : 'label',
        box: turnedBox(clip(box), page, turn),
        edge,
        turn: back(region.turn + turn),
        scale: region.scale,
        codes: codesOf(region),
      };
    }),
    slips: page.regions
      .filter((region) => region.role === 'slip')
      .map((region) => ({
        box: turnedBox(mapped(inkBounds(region.drawing), region.drawing.width, region.drawing.height, region), page, turn),
        turn: back(region.turn + turn),
      })),
    otherCodes: page.regions.filter((region) => !isLabel(region)).flatMap(codesOf),
  };
}

const rasters = new Map<string, Promise<Pixels>>();
function rasterOf(layout: Layout, page: number, index: number, region: Region, kind: 'bilevel' | 'grey', mark: boolean): Promise<Pixels> {
  const key = [layout.name, page, index, kind, mark].join('/');
  let found = rasters.get(key);
  if (!found) rasters.set(key, (found = rasterise(region.drawing, DPI[kind], kind === 'bilevel', mark)));
  return found;
}

/**
 * One layout in one kind, its pages turned clockwise by `turn`. The same arguments give the same bytes.
 * @param options.mark `false` leaves the sample's mark away; nothing else changes.
 */
export async function sample(layout: Layout, kind: Kind, turn: QuarterTurn, options: { readonly mark?: boolean } = {}): Promise<Sample> {
  const mark = options.mark ?? true;
  const name = `${layout.name}/${kind}/${turn}`;
  const pages = layout.pages();
  const base = { name, layout: layout.name, kind, turn };

  if (kind !== 'vector' && layout.traits.includes('picture-file')) {
    const page = pages[0] as LayoutPage;
    const pixels = await rasterOf(layout, 0, 0, page.regions[0] as Region, kind, mark);
    const { bytes, ending } = await pictureFile(pixels, turn);
    return {
      ...base,
      bytes,
      fileName: `${layout.name}-${kind}-${turn}.${ending}`,
      expected: { pages: [expectedPage(page, kind, turn, () => undefined)] },
    };
  }

  const drawn: { width: number; height: number; content: OnPage[] }[] = [];
  const expected: ExpectedPage[] = [];
  const dress = dressFor(layout, turn);
  for (const [number, page] of pages.entries()) {
    const pictures = new Map<Region, Pixels>();
    if (kind !== 'vector') {
      for (const [index, region] of page.regions.entries()) {
        if (isLabel(region) || layout.traits.includes('whole-page-picture')) {
          pictures.set(region, await rasterOf(layout, number, index, region, kind, mark));
        }
      }
    }
    if (kind !== 'vector' && layout.traits.includes('whole-page-picture')) {
      const { content, snapped } = wholePage(page, pictures, DPI[kind], kind === 'bilevel', dress.drawn);
      drawn.push({ width: page.width, height: page.height, content: [content] });
      expected.push(expectedPage(snapped, kind, turn, () => undefined));
      continue;
    }
    const content = page.regions.map((region): OnPage => {
      // Some channels turn the pixels, some the picture.
      const pixelTurn = parity(layout.name) === 0 ? back(-(region.turn + dress.drawn)) : 0;
      return { ...region, pixels: pictures.get(region), pixelTurn, withMark: mark };
    });
    drawn.push({ width: page.width, height: page.height, content });
    expected.push(expectedPage(page, kind, turn, (region) => pictures.get(region)));
  }
  return { ...base, bytes: await pdfOf(drawn, dress), fileName: `${layout.name}-${kind}-${turn}.pdf`, expected: { pages: expected } };
}
