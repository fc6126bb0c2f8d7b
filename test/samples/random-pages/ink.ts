import type { CodeArt } from '../code-art.js';
import { around, textItem, unionOf, type Rect } from '../drawing.js';
import { Art } from '../foreign/kit/art.js';
import { place, type Box, type Shape, type Text, type Turn } from '../foreign/kit/shapes.js';
import { inkOfText, outlineWidth } from '../type.js';

const BLACK = '#000000';

/** A drawing whose codes come from a package instead of a program. */
export class Sheet extends Art {
  /** A code with its top left corner at `x`, `y`, modules of `module` pt; a linear one is `height` pt high. */
  symbol(art: CodeArt, x: number, y: number, module: number, height: number, turn: Turn = 0): this {
    const rowHeight = art.rows === 1 ? height : module * art.modulesPerRow;
    const size = { width: art.columns * module, height: art.rows * rowHeight };
    const bars = art.rects.map(([column, row, w, h]): Shape => {
      const box = { x: column * module, y: row * rowHeight, width: w * module, height: h * rowHeight };
      return { kind: 'rect', ...box, fill: BLACK, line: 0, stroke: BLACK };
    });
    this.shapes.push(...place(bars, size, { x: this.onDot(x), y: this.onDot(y), turn }));
    return this;
  }

  onDot(value: number): number {
    return this.dot === undefined ? value : Math.round(value / this.dot) * this.dot;
  }
}

/** How wide a line is set in the outline face, pt. */
export const lineWidth = (text: string, size: number, bold = false): number => outlineWidth(text, bold, size);

export const asTextItem = (text: Text): ReturnType<typeof textItem> => ({
  ...textItem(text.at[0], text.at[1], text.text, { size: text.size, bold: text.bold }),
  align: text.anchor === 'start' ? 'left' : text.anchor === 'middle' ? 'center' : 'right',
  turn: text.turn + (text.lean ?? 0),
  grey: greyOf(text.fill),
});

/** 0 black, 1 white: the mean of a colour's three parts. */
export function greyOf(colour: string): number {
  const parts = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255);
  return parts.reduce((sum, each) => sum + each, 0) / 3;
}

/** Nearly white on white is no ink: a tint of the paper. */
const SEEN = 200 / 255;

function inkOf(shape: Shape): Rect | undefined {
  switch (shape.kind) {
    case 'rect': {
      if (shape.line === 0) return shape.fill !== undefined && greyOf(shape.fill) < SEEN ? shape : undefined;
      const half = shape.line / 2;
      return { x: shape.x - half, y: shape.y - half, width: shape.width + shape.line, height: shape.height + shape.line };
    }
    case 'line': {
      const { from, to, line } = shape;
      const level = from[1] === to[1] ? line / 2 : 0;
      const upright = from[0] === to[0] ? line / 2 : 0;
      const { x, y, width, height } = around([from, to]);
      return { x: x - upright, y: y - level, width: width + 2 * upright, height: height + 2 * level };
    }
    case 'poly':
      return greyOf(shape.fill) < SEEN ? around(shape.points) : undefined;
    case 'disc': {
      const { at, radius } = shape;
      const box = { x: at[0] - radius, y: at[1] - radius, width: 2 * radius, height: 2 * radius };
      return greyOf(shape.fill) < SEEN ? box : undefined;
    }
    case 'text':
      return greyOf(shape.fill) < SEEN ? inkOfText(asTextItem(shape)) : undefined;
    case 'picture':
      return shape;
  }
}

/** Bounds of all ink as the direct writer sets it; a picture counts to its edge. Throws where there is none. */
export function boundsOf(shapes: readonly Shape[]): Box {
  const all = shapes.flatMap((shape) => inkOf(shape) ?? []);
  if (all.length === 0) throw new Error('nothing drawn');
  return unionOf(all);
}
