import * as fontkit from '@cantoo/fontkit';
import { PDFDocument, PDFName, PDFNumber, StandardFonts, type PDFFont, type PDFRef } from 'pdf-lib';
import type { Drawing, Item, TextItem } from './drawing.js';
import { packBits, turnPixels, type Pixels } from './raster.js';
import { OUTLINE_BYTES, setLine } from './type.js';

export type QuarterTurn = 0 | 90 | 180 | 270;

/** A drawing, or its pixels, on a page. `x`, `y`: top-left corner of its turned bounds, pt from the page's top-left corner, y down. */
export interface OnPage {
  readonly drawing: Drawing;
  readonly x: number;
  readonly y: number;
  readonly turn: QuarterTurn;
  readonly scale: number;
  /** Drawn as a picture with these pixels, which the file holds turned clockwise by `pixelTurn`. */
  readonly pixels: Pixels | undefined;
  readonly pixelTurn: QuarterTurn;
  readonly withMark: boolean;
}

export interface PdfPage {
  /** Of the visible page before its turn, pt. */
  readonly width: number;
  readonly height: number;
  readonly content: readonly OnPage[];
}

export interface PageDress {
  /** The turn of the content as drawn, clockwise, and the turn by /Rotate: the visible page shows their sum. */
  readonly drawn: QuarterTurn;
  readonly rotate: QuarterTurn;
  /** Where the visible page's lower left corner lies in user space. */
  readonly origin: readonly [number, number];
  /** The MediaBox is larger than the CropBox by this on all sides. */
  readonly bleed: number;
}

type Matrix = readonly [number, number, number, number, number, number];

/** Takes a w × h box at the origin (y down), turned clockwise and scaled, to (x, y). */
export function place(w: number, h: number, turn: QuarterTurn, s: number, x: number, y: number): Matrix {
  switch (turn) {
    case 0:
      return [s, 0, 0, s, x, y];
    case 90:
      return [0, s, -s, 0, x + s * h, y];
    case 180:
      return [-s, 0, 0, -s, x + s * w, y + s * h];
    case 270:
      return [0, -s, s, 0, x, y + s * w];
  }
}

const num = (value: number): string => String(Math.round(value * 10000) / 10000);
const cm = (matrix: Matrix): string => `${matrix.map(num).join(' ')} cm\n`;

class Fonts {
  private readonly made = new Map<string, { font: PDFFont; name: string }>();
  constructor(private readonly doc: PDFDocument) {}

  async of(item: TextItem, drawing: Drawing): Promise<{ font: PDFFont; name: string }> {
    // Helvetica's encoding has Latin-1 only.
    const outline = drawing.face === 'noto' || /[^\x20-\x7e\xa1-\xff–—]/.test(item.text);
    const key = `${outline ? 'N' : 'H'}${item.bold ? 'b' : 'r'}`;
    let found = this.made.get(key);
    if (!found) {
      const font = outline
        ? await this.doc.embedFont(item.bold ? OUTLINE_BYTES.bold : OUTLINE_BYTES.regular, { subset: true, features: { liga: false } })
        : await this.doc.embedFont(item.bold ? StandardFonts.HelveticaBold : StandardFonts.Helvetica);
      found = { font, name: key };
      this.made.set(key, found);
    }
    return found;
  }

  all(): readonly { font: PDFFont; name: string }[] {
    return [...this.made.values()];
  }
}

async function operators(drawing: Drawing, item: Item, fonts: Fonts): Promise<string> {
  switch (item.kind) {
    case 'text': {
      const { font, name } = await fonts.of(item, drawing);
      const { size, start } = setLine(item, font.widthOfTextAtSize(item.text, 1));
      const cos = Math.cos((item.turn * Math.PI) / 180);
      const sin = Math.sin((item.turn * Math.PI) / 180);
      const at = [cos, sin, sin, -cos, item.x + start * cos, item.y + start * sin].map(num).join(' ');
      return `BT ${num(item.grey)} g /${name} ${num(size)} Tf ${at} Tm ${font.encodeText(item.text).toString()} Tj ET\n`;
    }
    case 'rect':
      return `${num(item.grey)} g ${num(item.box.x)} ${num(item.box.y)} ${num(item.box.width)} ${num(item.box.height)} re f\n`;
    case 'line':
      return `q ${num(item.thickness)} w ${dashes(item.dash)}${num(item.x0)} ${num(item.y0)} m ${num(item.x1)} ${num(item.y1)} l S Q\n`;
    case 'frame': {
      const half = item.thickness / 2;
      const [x, y, w, h] = [item.box.x + half, item.box.y + half, item.box.width - 2 * half, item.box.height - 2 * half];
      const style = `q 0 G ${num(item.thickness)} w ${dashes(item.dash)}`;
      if (item.as === 'rectangle') return `${style}${num(x)} ${num(y)} ${num(w)} ${num(h)} re S Q\n`;
      // Projecting ends close the corners.
      const sides = [
        [x, y, x + w, y],
        [x, y + h, x + w, y + h],
        [x, y, x, y + h],
        [x + w, y, x + w, y + h],
      ] as const;
      return `${style}2 J ${sides.map(([a, b, c, d]) => `${num(a)} ${num(b)} m ${num(c)} ${num(d)} l S`).join(' ')} Q\n`;
    }
    case 'polygon':
      return `${num(item.grey)} g ${item.points.map(([x, y], i) => `${num(x)} ${num(y)} ${i === 0 ? 'm' : 'l'}`).join(' ')} h f\n`;
    case 'disc': {
      const { x, y, radius: r } = item;
      const k = r * 0.5523;
      const arc = (a: number, b: number, c: number, d: number, e: number, f: number): string =>
        `${[a, b, c, d, e, f].map(num).join(' ')} c`;
      return `${num(item.grey)} g ${num(x + r)} ${num(y)} m ${arc(x + r, y + k, x + k, y + r, x, y + r)} ${arc(x - k, y + r, x - r, y + k, x - r, y)} ${arc(x - r, y - k, x - k, y - r, x, y - r)} ${arc(x + k, y - r, x + r, y - k, x + r, y)} h f\n`;
    }
    case 'code': {
      const w = item.art.columns * item.module;
      const h = item.art.rows * item.rowHeight;
      const [across, down] = item.turn % 180 === 0 ? [w, h] : [h, w];
      const rects = item.art.rects.map(
        ([x, y, width, height]) =>
          `${num(x * item.module)} ${num(y * item.rowHeight)} ${num(width * item.module)} ${num(height * item.rowHeight)} re`,
      );
      return `q 0 g ${cm(place(w, h, item.turn, 1, item.x - across / 2, item.y - down / 2))}${rects.join('\n')} f Q\n`;
    }
  }
}

const dashes = (dash: number | undefined): string => (dash === undefined ? '' : `[${num(dash)}] 0 d `);

function pictureObject(doc: PDFDocument, pixels: Pixels): PDFRef {
  const dict = { Type: 'XObject', Subtype: 'Image', Width: pixels.width, Height: pixels.height, ColorSpace: 'DeviceGray' };
  return doc.context.register(
    pixels.bilevel
      ? doc.context.flateStream(packBits(pixels), { ...dict, BitsPerComponent: 1 })
      : doc.context.flateStream(pixels.data, { ...dict, BitsPerComponent: 8 }),
  );
}

const back = (turn: QuarterTurn): QuarterTurn => ((360 - turn) % 360) as QuarterTurn;

/** A PDF of these pages. The same input gives the same bytes. */
export async function pdfOf(pages: readonly PdfPage[], dress: PageDress): Promise<Uint8Array> {
  const doc = await PDFDocument.create({ updateMetadata: false });
  doc.registerFontkit(fontkit);
  const fonts = new Fonts(doc);
  for (const { width, height, content } of pages) {
    const [w, h] = dress.drawn % 180 === 0 ? [width, height] : [height, width];
    const [ox, oy] = dress.origin;
    const page = doc.addPage([w, h]);
    page.setMediaBox(ox - dress.bleed, oy - dress.bleed, w + 2 * dress.bleed, h + 2 * dress.bleed);
    if (dress.bleed > 0) page.setCropBox(ox, oy, w, h);
    if (dress.rotate !== 0) page.node.set(PDFName.of('Rotate'), PDFNumber.of(dress.rotate));
    // User space is y up: one flip, then everything is y down.
    let stream = `q\n${cm([1, 0, 0, -1, ox, oy + h])}${cm(place(width, height, dress.drawn, 1, 0, 0))}`;
    for (const [index, on] of content.entries()) {
      const { drawing } = on;
      if (on.pixels) {
        const unit = (72 / on.pixels.dpi) * on.scale;
        const [pw, ph] = [on.pixels.width * unit, on.pixels.height * unit];
        const turned = on.pixelTurn % 180 === 0 ? [pw, ph] : [ph, pw];
        const [tw = 0, th = 0] = turned;
        const rest = ((on.turn + back(on.pixelTurn)) % 360) as QuarterTurn;
        page.node.setXObject(PDFName.of(`P${index}`), pictureObject(doc, turnPixels(on.pixels, on.pixelTurn)));
        stream += `q ${cm(place(tw, th, rest, 1, on.x, on.y))}${cm([tw, 0, 0, -th, 0, th])}/P${index} Do Q\n`;
        continue;
      }
      const mark = on.withMark ? drawing.mark : [];
      const items = drawing.markUnder ? [...mark, ...drawing.items] : [...drawing.items, ...mark];
      stream += `q ${cm(place(drawing.width, drawing.height, on.turn, on.scale, on.x, on.y))}`;
      for (const item of items) stream += await operators(drawing, item, fonts);
      stream += 'Q\n';
    }
    stream += 'Q\n';
    for (const { font, name } of fonts.all()) page.node.setFontDictionary(PDFName.of(name), font.ref);
    page.node.set(PDFName.of('Contents'), doc.context.register(doc.context.flateStream(stream)));
  }
  return doc.save({ addDefaultPage: false });
}
