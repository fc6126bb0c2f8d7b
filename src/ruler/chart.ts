import type { Box } from '../geometry/box.js';
import { wholeDots, type Grid } from '../geometry/grid.js';
import { mmToPt, MM_PER_IN } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import type { TypeLine } from '../press/dot-page.js';
import { LINE_HEIGHT, measureLine } from '../press/text-face.js';

/** Size of all type but the title, pt. */
export const TYPE = 7;
/** From one line of type to the next, mm. */
export const LINE = (TYPE * LINE_HEIGHT * MM_PER_IN) / 72;

/** Collects what a ruler page shows. Lengths are mm from the page's top left corner, y down, unless they are called dots. */
export class Chart {
  /** The page in whole dots. */
  readonly columns: number;
  readonly rows: number;
  /** The page in mm. */
  readonly width: number;
  readonly height: number;
  /** Thickness of fine lines in dots: about 0.13 mm, so that they are seen on fine grids too. */
  readonly hair: number;
  readonly #marks: Box[] = [];
  readonly #lines: TypeLine[] = [];

  constructor(
    media: Media,
    readonly grid: Grid,
  ) {
    this.columns = wholeDots(media.width, grid);
    this.rows = wholeDots(media.height, grid);
    this.width = media.width / mmToPt(1);
    this.height = media.height / mmToPt(1);
    this.hair = Math.max(1, Math.round(grid.dpi / 203));
  }

  get marks(): readonly Box[] {
    return this.#marks;
  }

  get lines(): readonly TypeLine[] {
    return this.#lines;
  }

  /** The nearest whole number of dots. */
  dots(mm: number): number {
    return Math.round((mm / MM_PER_IN) * this.grid.dpi);
  }

  /** A black rectangle in whole dots. Throws for one that isn't whole or leaves the page (our bug). */
  mark(x: number, y: number, width: number, height: number): void {
    const inside = x >= 0 && y >= 0 && width > 0 && height > 0 && x + width <= this.columns && y + height <= this.rows;
    if (!inside || ![x, y, width, height].every(Number.isInteger)) throw new RangeError(`chart: no mark at ${x} ${y} ${width} ${height}`);
    this.#marks.push({ x, y, width, height });
  }

  /** A fine line whose middle is at `x` within half a dot; at the page's edge it is moved onto the page. */
  upright(x: number, from: number, to: number): void {
    const [top, end] = [this.dots(from), Math.min(this.rows, this.dots(to))];
    this.mark(this.#lineStart(x, this.columns), top, this.hair, end - top);
  }

  /** As `upright`, from left to right. */
  level(y: number, from: number, to: number): void {
    const [left, end] = [this.dots(from), Math.min(this.columns, this.dots(to))];
    this.mark(left, this.#lineStart(y, this.rows), end - left, this.hair);
  }

  /** One line of type with its top left corner there. */
  write(text: string, x: number, y: number, fontSize = TYPE): void {
    this.#lines.push({ text, fontSize, x: mmToPt(x), y: mmToPt(y) });
  }

  /** As many lines of type as `width` needs; the place (y) below them. */
  writeWrapped(text: string, x: number, y: number, width: number): number {
    const lines = wrapped(text, (line) => measureLine(line, TYPE) <= mmToPt(width));
    lines.forEach((line, index) => {
      this.write(line, x, y + index * LINE);
    });
    return y + lines.length * LINE;
  }

  #lineStart(at: number, most: number): number {
    const start = Math.round((at / MM_PER_IN) * this.grid.dpi - this.hair / 2);
    return Math.min(Math.max(0, start), most - this.hair);
  }
}

/** A text in lines, broken at its blanks as soon as one more word would not fit. A word that doesn't fit alone has a line of its own. */
export function wrapped(text: string, fits: (line: string) => boolean): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && !fits(longer)) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}
