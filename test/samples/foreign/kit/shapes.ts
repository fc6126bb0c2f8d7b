/** What every producer can draw. Lengths in pt, origin top-left of the page (or of the drawing), y down, turns clockwise. */
export type Turn = 0 | 90 | 180 | 270;
export type Family = 'sans' | 'serif' | 'mono';
export type Point = readonly [number, number];
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export interface Rect extends Box {
  readonly kind: 'rect';
  readonly fill?: string | undefined;
  /** Width of the outline, centred on the box's sides; 0 is none. */
  readonly line: number;
  readonly stroke: string;
  readonly dash?: readonly number[] | undefined;
  /** Of its corners. */
  readonly radius?: number | undefined;
}
export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
  readonly line: number;
  readonly stroke: string;
  readonly dash?: readonly number[] | undefined;
}
export interface Poly {
  readonly kind: 'poly';
  readonly points: readonly Point[];
  readonly fill: string;
}
export interface Disc {
  readonly kind: 'disc';
  readonly at: Point;
  readonly radius: number;
  readonly fill: string;
}
/** `at` is the anchor on the baseline. */
export interface Text {
  readonly kind: 'text';
  readonly at: Point;
  readonly text: string;
  readonly size: number;
  readonly family: Family;
  readonly bold: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turn: Turn;
  /** Degrees clockwise besides the turn, as a watermark lies. */
  readonly lean?: number | undefined;
  readonly fill: string;
}
/** A raster file; the box is where it lies after its turn. */
export interface Picture extends Box {
  readonly kind: 'picture';
  readonly file: string;
  readonly turn: Turn;
}
export type Shape = Rect | Line | Poly | Disc | Text | Picture;

const turned = (before: Turn, turn: Turn): Turn => ((before + turn) % 360) as Turn;

/** Moves a drawing of `width` x `height` so that its bounds, after scale and clockwise turn, begin at `x`, `y`. */
export function place(
  shapes: readonly Shape[],
  size: { readonly width: number; readonly height: number },
  to: { readonly x: number; readonly y: number; readonly turn?: Turn; readonly scale?: number },
): Shape[] {
  const { x, y, turn = 0, scale = 1 } = to;
  const { width, height } = size;
  const point = ([px, py]: Point): Point => {
    if (turn === 90) return [x + (height - py) * scale, y + px * scale];
    if (turn === 180) return [x + (width - px) * scale, y + (height - py) * scale];
    if (turn === 270) return [x + py * scale, y + (width - px) * scale];
    return [x + px * scale, y + py * scale];
  };
  const box = (of: Box): Box => {
    const [ax, ay] = point([of.x, of.y]);
    const [bx, by] = point([of.x + of.width, of.y + of.height]);
    return { x: Math.min(ax, bx), y: Math.min(ay, by), width: Math.abs(bx - ax), height: Math.abs(by - ay) };
  };
  const dashes = (dash: readonly number[] | undefined): number[] | undefined => dash?.map((each) => each * scale);
  return shapes.map((shape): Shape => {
    switch (shape.kind) {
      case 'rect':
        return { ...shape, ...box(shape), line: shape.line * scale, radius: (shape.radius ?? 0) * scale, dash: dashes(shape.dash) };
      case 'line':
        return { ...shape, from: point(shape.from), to: point(shape.to), line: shape.line * scale, dash: dashes(shape.dash) };
      case 'poly':
        return { ...shape, points: shape.points.map(point) };
      case 'disc':
        return { ...shape, at: point(shape.at), radius: shape.radius * scale };
      case 'text':
        return { ...shape, at: point(shape.at), size: shape.size * scale, turn: turned(shape.turn, turn) };
      case 'picture':
        return { ...shape, ...box(shape), turn: turned(shape.turn, turn) };
    }
  });
}
