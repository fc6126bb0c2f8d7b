import type { Family, Shape, Turn } from './shapes.js';
import { place } from './shapes.js';
import { textWidth, wrap } from './text-width.js';
import type { Symbology } from './zint.js';
import { readText, symbol } from './zint.js';

export interface Code {
  readonly symbology: Symbology;
  readonly text: string;
}
export interface TextStyle {
  readonly size?: number;
  readonly bold?: boolean;
  readonly family?: Family;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly fill?: string;
  /** Widest the line may become; it is set smaller if need be. */
  readonly fit?: number;
  readonly turn?: Turn;
  readonly lean?: number;
}
interface LineStyle {
  readonly line?: number;
  readonly stroke?: string;
  readonly fill?: string;
  readonly dash?: readonly number[];
  readonly radius?: number;
}

const BLACK = '#000000';

/** A drawing under construction. Everything returns the y below what was drawn, where that helps. */
export class Art {
  readonly shapes: Shape[] = [];
  readonly codes: Code[] = [];
  constructor(
    readonly width: number,
    readonly height: number,
    readonly family: Family = 'sans',
    /** A dot in pt: modules become whole dots, as software that makes rasters draws them. */
    readonly dot?: number,
  ) {}

  rect(x: number, y: number, width: number, height: number, style: LineStyle = {}): this {
    const { line = style.fill === undefined ? 1 : 0, stroke = BLACK, fill, dash, radius } = style;
    this.shapes.push({ kind: 'rect', x, y, width, height, line, stroke, fill, dash, radius });
    return this;
  }

  line(x1: number, y1: number, x2: number, y2: number, style: LineStyle = {}): this {
    const { line = 1, stroke = BLACK, dash } = style;
    this.shapes.push({ kind: 'line', from: [x1, y1], to: [x2, y2], line, stroke, dash });
    return this;
  }

  poly(points: readonly (readonly [number, number])[], fill = BLACK): this {
    this.shapes.push({ kind: 'poly', points, fill });
    return this;
  }

  disc(x: number, y: number, radius: number, fill = BLACK): this {
    this.shapes.push({ kind: 'disc', at: [x, y], radius, fill });
    return this;
  }

  text(x: number, y: number, text: string, style: TextStyle = {}): this {
    const { bold = false, family = this.family, anchor = 'start', fill = BLACK, turn = 0 } = style;
    const asked = style.size ?? 9;
    const width = textWidth(text, asked, family === 'mono') * (bold ? 1.07 : 1);
    const size = style.fit !== undefined && width > style.fit ? (asked * style.fit) / width : asked;
    if (text !== '') this.shapes.push({ kind: 'text', at: [x, y], text, size, family, bold, anchor, turn, lean: style.lean, fill });
    return this;
  }

  /** Lines below one another, `y` the first baseline; gives the baseline that would be next. */
  lines(x: number, y: number, lines: readonly string[], style: TextStyle & { readonly leading?: number } = {}): number {
    const leading = style.leading ?? (style.size ?? 9) * 1.2;
    for (const [index, line] of lines.entries()) this.text(x, y + index * leading, line, style);
    return y + lines.length * leading;
  }

  /** A paragraph of `width` pt. */
  paragraph(x: number, y: number, width: number, text: string, style: TextStyle & { readonly leading?: number } = {}): number {
    return this.lines(x, y, wrap(text, width, style.size ?? 9), style);
  }

  /** A code that fills the box: a linear one in both directions, another centred with square modules. Turned, its runs stand. */
  code(symbology: Symbology, data: string, x: number, y: number, width: number, height: number, turn: Turn = 0): this {
    const made = symbol(symbology, data);
    const linear = !['datamatrix', 'gs1-datamatrix', 'qr', 'pdf417', 'maxicode', 'aztec'].includes(symbology);
    const lying = turn % 180 === 0;
    const [w, h] = lying ? [width, height] : [height, width];
    if (linear) {
      const fx = this.whole(w / made.width);
      const fy = h / made.height;
      const bars = made.shapes.flatMap((bar) =>
        bar.kind === 'rect' ? [{ ...bar, x: bar.x * fx, width: bar.width * fx, y: bar.y * fy, height: bar.height * fy }] : [],
      );
      const run = made.width * fx;
      const at = lying
        ? { x: this.snap(x + (width - run) / 2), y: this.snap(y) }
        : { x: this.snap(x), y: this.snap(y + (height - run) / 2) };
      this.shapes.push(...place(bars, { width: run, height: h }, { ...at, turn }));
    } else {
      const scale = this.whole(Math.min(w / made.width, h / made.height));
      const [tw, th] = lying ? [made.width, made.height] : [made.height, made.width];
      const at = { x: this.snap(x + (width - tw * scale) / 2), y: this.snap(y + (height - th * scale) / 2), turn, scale };
      this.shapes.push(...place(made.shapes, made, at));
    }
    this.codes.push({ symbology, text: readText(symbology, data) });
    return this;
  }

  private snap(value: number): number {
    return this.dot === undefined ? value : Math.round(value / this.dot) * this.dot;
  }

  /** The largest scale at which a module, two units wide, is whole dots. */
  private whole(scale: number): number {
    if (this.dot === undefined) return scale;
    const dots = Math.floor((scale * 2) / this.dot + 1e-6);
    return dots === 0 ? scale : (dots * this.dot) / 2;
  }

  /** Another drawing, put down here. */
  put(other: Art, x: number, y: number, turn: Turn = 0, scale = 1): this {
    this.shapes.push(...place(other.shapes, other, { x, y, turn, scale }));
    this.codes.push(...other.codes);
    return this;
  }

  bounds(turn: Turn = 0, scale = 1): { width: number; height: number } {
    const lying = turn % 180 === 0;
    return { width: (lying ? this.width : this.height) * scale, height: (lying ? this.height : this.width) * scale };
  }
}
