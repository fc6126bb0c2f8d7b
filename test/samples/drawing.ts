import type { CodeArt, ExpectedCode } from './code-art.js';
import { inkOfText, type Face } from './type.js';

/** x, y, width, height in pt, origin top-left, y down. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Align = 'left' | 'center' | 'right';

export interface TextItem {
  readonly kind: 'text';
  /** Anchor of the baseline. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly bold: boolean;
  /** 0 black, 1 white. */
  readonly grey: number;
  readonly align: Align;
  /** Clockwise degrees about the anchor. */
  readonly turn: number;
  /** The type shrinks until the line is not wider than this (pt). */
  readonly maxWidth: number | undefined;
}

export type Item =
  | TextItem
  | { readonly kind: 'rect'; readonly box: Rect; readonly grey: number }
  | {
      readonly kind: 'line';
      readonly x0: number;
      readonly y0: number;
      readonly x1: number;
      readonly y1: number;
      readonly thickness: number;
      readonly dash: number | undefined;
    }
  /** `box` is the outer edge of the stroke. */
  | {
      readonly kind: 'frame';
      readonly box: Rect;
      readonly thickness: number;
      readonly dash: number | undefined;
      readonly as: 'rectangle' | 'lines';
    }
  | { readonly kind: 'polygon'; readonly points: readonly (readonly [number, number])[]; readonly grey: number }
  | { readonly kind: 'disc'; readonly x: number; readonly y: number; readonly radius: number; readonly grey: number }
  /** A barcode, centred on (x, y). `module` and `rowHeight` in pt; `turn` clockwise. */
  | {
      readonly kind: 'code';
      readonly art: CodeArt;
      readonly x: number;
      readonly y: number;
      readonly module: number;
      readonly rowHeight: number;
      readonly turn: 0 | 90 | 180 | 270;
    };

/** A code and where it lies, quiet zone left out. */
export interface PlacedCode extends ExpectedCode {
  readonly box: Rect;
}

/** What shows where the label ends. `ink`: nothing does. `page`: the page is the label. */
export type Edge = 'frame' | 'cut-line' | 'image' | 'page' | 'ink';

export interface TextStyle {
  readonly size?: number;
  readonly bold?: boolean;
  readonly grey?: number;
  readonly align?: Align;
  readonly turn?: number;
  readonly maxWidth?: number;
}

/** One dot of a 203 dpi printer, pt. */
export const DOT = 72 / 203;
/** A thousandth of an inch, pt. */
export const MIL = 0.072;

/** A display list in its own pt, drawn by `pdf.ts` as vectors and by `raster.ts` as pixels. */
export class Drawing {
  readonly items: Item[] = [];
  /** The sample's mark; drawn under everything when `markUnder`. Never counted as ink. */
  readonly mark: Item[] = [];
  markUnder = false;
  /** Codes drawn by other items than `code` (MaxiCode's hexagons). */
  readonly otherCodes: PlacedCode[] = [];
  face: Face = 'helvetica';
  edge: Edge = 'ink';

  constructor(
    readonly width: number,
    readonly height: number,
  ) {}

  rect(x: number, y: number, width: number, height: number, grey = 0): this {
    this.items.push({ kind: 'rect', box: { x, y, width, height }, grey });
    return this;
  }

  text(x: number, y: number, text: string, style: TextStyle = {}): this {
    this.items.push(textItem(x, y, text, style));
    return this;
  }

  /** Lines of text from the baseline `y` downwards; gives the next baseline. */
  block(x: number, y: number, lines: readonly string[], style: TextStyle = {}, leading = 1.2): number {
    let at = y;
    for (const line of lines) {
      this.text(x, at, line, style);
      at += (style.size ?? 9) * leading;
    }
    return at;
  }

  /** A level or upright line; (x0, y0) and (x1, y1) are the ends of its middle. */
  line(x0: number, y0: number, x1: number, y1: number, thickness = 1, dash?: number): this {
    this.items.push({ kind: 'line', x0, y0, x1, y1, thickness, dash });
    return this;
  }

  frame(x: number, y: number, width: number, height: number, thickness = 1, as: 'rectangle' | 'lines' = 'rectangle', dash?: number): this {
    this.items.push({ kind: 'frame', box: { x, y, width, height }, thickness, dash, as });
    return this;
  }

  polygon(points: readonly (readonly [number, number])[], grey = 0): this {
    this.items.push({ kind: 'polygon', points, grey });
    return this;
  }

  disc(x: number, y: number, radius: number, grey = 0): this {
    this.items.push({ kind: 'disc', x, y, radius, grey });
    return this;
  }

  /** MaxiCode at its fixed size (ISO/IEC 16023: columns 0.88 mm and rows 0.76 mm apart), centred on (x, y). */
  maxi(art: { readonly expected: ExpectedCode; readonly cells: readonly (readonly [number, number])[] }, x: number, y: number): this {
    const pitch = (0.88 / 25.4) * 72;
    const rowPitch = (0.76 / 25.4) * 72;
    const left = x - 14.5 * pitch;
    const top = y - 16 * rowPitch;
    // 0.86 of the pitch: neighbours stay apart on paper, as a thermal printer's dots grow.
    const half = (pitch / 2) * 0.86;
    const long = half / Math.cos(Math.PI / 6);
    for (const [column, row] of art.cells) {
      const cx = left + (column + (row % 2) / 2) * pitch;
      const cy = top + row * rowPitch;
      this.polygon([
        [cx, cy - long],
        [cx + half, cy - long / 2],
        [cx + half, cy + long / 2],
        [cx, cy + long],
        [cx - half, cy + long / 2],
        [cx - half, cy - long / 2],
      ]);
    }
    // The finder: three dark rings, outer and inner radius in mm.
    for (const mm of [3.87, 3.2, 2.53, 1.86, 1.18, 0.51]) {
      this.disc(left + 14 * pitch, y, (mm / 25.4) * 72, [3.2, 1.86, 0.51].includes(mm) ? 1 : 0);
    }
    const width = 30 * pitch;
    const height = 33 * rowPitch;
    this.otherCodes.push({ ...art.expected, box: { x: x - width / 2, y: y - height / 2, width, height } });
    return this;
  }

  /** What a reader must find on the drawing; `perPt`: as drawn in pixels, so many a pt. */
  codes(perPt?: number): readonly PlacedCode[] {
    const whole = (length: number): number => (perPt === undefined ? length : Math.max(1, Math.round(length * perPt)) / perPt);
    const drawn = this.items.flatMap((item) => {
      if (item.kind !== 'code') return [];
      return [{ ...item.art.expected, box: inkOf({ ...item, module: whole(item.module), rowHeight: whole(item.rowHeight) }) }];
    });
    return [...drawn, ...this.otherCodes];
  }

  /** A linear code with bars `height` pt long. */
  bars(art: CodeArt, x: number, y: number, module: number, height: number, turn: 0 | 90 | 180 | 270 = 0): this {
    this.items.push({ kind: 'code', art, x, y, module, rowHeight: height, turn });
    return this;
  }

  /** A matrix or stacked code. */
  matrix(art: CodeArt, x: number, y: number, module: number, turn: 0 | 90 | 180 | 270 = 0): this {
    this.items.push({ kind: 'code', art, x, y, module, rowHeight: module * art.modulesPerRow, turn });
    return this;
  }
}

export function textItem(x: number, y: number, text: string, style: TextStyle): TextItem {
  return {
    kind: 'text',
    x,
    y,
    text,
    size: style.size ?? 9,
    bold: style.bold ?? false,
    grey: style.grey ?? 0,
    align: style.align ?? 'left',
    turn: style.turn ?? 0,
    maxWidth: style.maxWidth,
  };
}

/** Where an item's ink lies. Text is measured on the outlines of the outline face, so only a drawing in that face has exact bounds. */
export function inkOf(item: Item): Rect {
  switch (item.kind) {
    case 'text':
      return inkOfText(item);
    case 'rect':
    case 'frame':
      return item.box;
    case 'line': {
      const half = item.thickness / 2;
      const level = item.y0 === item.y1;
      const x = Math.min(item.x0, item.x1) - (level ? 0 : half);
      const y = Math.min(item.y0, item.y1) - (level ? half : 0);
      return {
        x,
        y,
        width: Math.abs(item.x1 - item.x0) + (level ? 0 : 2 * half),
        height: Math.abs(item.y1 - item.y0) + (level ? 2 * half : 0),
      };
    }
    case 'polygon':
      return around(item.points);
    case 'disc':
      return { x: item.x - item.radius, y: item.y - item.radius, width: 2 * item.radius, height: 2 * item.radius };
    case 'code': {
      const w = item.art.columns * item.module;
      const h = item.art.rows * item.rowHeight;
      const [width, height] = item.turn % 180 === 0 ? [w, h] : [h, w];
      return { x: item.x - width / 2, y: item.y - height / 2, width, height };
    }
  }
}

export function around(points: readonly (readonly [number, number])[]): Rect {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

export function unionOf(rects: readonly Rect[]): Rect {
  return around(
    rects.flatMap((r): [number, number][] => [
      [r.x, r.y],
      [r.x + r.width, r.y + r.height],
    ]),
  );
}

/** The bounds of all ink but the mark, white things left out. */
export function inkBounds(drawing: Drawing): Rect {
  return unionOf(drawing.items.filter((item) => !('grey' in item) || item.grey < 0.99).map(inkOf));
}
