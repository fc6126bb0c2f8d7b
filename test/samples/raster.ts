import sharp from 'sharp';
import { inkOf, type Drawing, type Item } from './drawing.js';
import { svgOfText } from './type.js';

/** Grey pixels, row by row from the top; 0 is black. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly dpi: number;
  /** Every pixel is 0 or 255. */
  readonly bilevel: boolean;
  readonly data: Uint8Array;
}

const shade = (grey: number): string => {
  const level = Math.round(grey * 255);
  return `rgb(${level},${level},${level})`;
};

function svgOf(item: Item): string {
  switch (item.kind) {
    case 'text':
      return svgOfText(item, shade(item.grey));
    case 'rect': {
      const { x, y, width, height } = item.box;
      return `<rect shape-rendering="crispEdges" x="${x}" y="${y}" width="${width}" height="${height}" fill="${shade(item.grey)}"/>`;
    }
    case 'line':
      return `<path shape-rendering="crispEdges" d="M${item.x0} ${item.y0}L${item.x1} ${item.y1}" stroke="black" stroke-width="${item.thickness}"${dashes(item.dash)}/>`;
    case 'frame': {
      const half = item.thickness / 2;
      const { x, y, width, height } = item.box;
      return `<rect shape-rendering="crispEdges" x="${x + half}" y="${y + half}" width="${width - 2 * half}" height="${height - 2 * half}" fill="none" stroke="black" stroke-width="${item.thickness}"${dashes(item.dash)}/>`;
    }
    case 'polygon':
      return `<polygon points="${item.points.map(([x, y]) => `${x},${y}`).join(' ')}" fill="${shade(item.grey)}"/>`;
    case 'disc':
      return `<circle cx="${item.x}" cy="${item.y}" r="${item.radius}" fill="${shade(item.grey)}"/>`;
    case 'code':
      // Codes are set afterwards, in whole pixels.
      return '';
  }
}

const dashes = (dash: number | undefined): string => (dash === undefined ? '' : ` stroke-dasharray="${dash}"`);

async function grey(items: readonly Item[], width: number, height: number, dpi: number): Promise<Uint8Array> {
  const view = `0 0 ${(width * 72) / dpi} ${(height * 72) / dpi}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="${view}"><rect width="100%" height="100%" fill="white"/>${items.map(svgOf).join('')}</svg>`;
  const { data } = await sharp(Buffer.from(svg), { unlimited: true })
    .flatten({ background: 'white' })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return new Uint8Array(data);
}

/** Sets a code in whole pixels: every module is as wide as every other, as a label's maker draws it for his printer. */
function setCode(data: Uint8Array, width: number, height: number, item: Extract<Item, { kind: 'code' }>, perPt: number): void {
  const module = Math.max(1, Math.round(item.module * perPt));
  const rowHeight = Math.max(1, Math.round(item.rowHeight * perPt));
  const w = item.art.columns * module;
  const h = item.art.rows * rowHeight;
  const [across, down] = item.turn % 180 === 0 ? [w, h] : [h, w];
  const left = Math.round(item.x * perPt - across / 2);
  const top = Math.round(item.y * perPt - down / 2);
  for (const [mx, my, mw, mh] of item.art.rects) {
    for (let v = my * rowHeight; v < (my + mh) * rowHeight; v++) {
      for (let u = mx * module; u < (mx + mw) * module; u++) {
        const [px, py] =
          item.turn === 0 ? [u, v] : item.turn === 90 ? [h - 1 - v, u] : item.turn === 180 ? [w - 1 - u, h - 1 - v] : [v, w - 1 - u];
        const x = left + px;
        const y = top + py;
        if (x >= 0 && y >= 0 && x < width && y < height) data[y * width + x] = 0;
      }
    }
  }
}

/** The mark as sparse dots, as a 1-bit driver draws light grey, and never on a code or its quiet zone. */
function dither(data: Uint8Array, mark: Uint8Array, drawing: Drawing, width: number, perPt: number): void {
  const codes = drawing.items.filter((item) => item.kind === 'code').map(inkOf);
  for (let index = 0; index < data.length; index++) {
    if ((mark[index] ?? 255) > 240) continue;
    const x = index % width;
    const y = Math.floor(index / width);
    if ((x + 2 * y) % 5 !== 0 || y % 2 !== 0) continue;
    const px = x / perPt;
    const py = y / perPt;
    const inCode = codes.some((c) => px > c.x - 12 && px < c.x + c.width + 12 && py > c.y - 6 && py < c.y + c.height + 6);
    if (!inCode) data[index] = 0;
  }
}

/** Draws at `dpi`; the picture is whole pixels, at least as large as the drawing. */
export async function rasterise(drawing: Drawing, dpi: number, bilevel: boolean, withMark: boolean): Promise<Pixels> {
  const perPt = dpi / 72;
  const width = Math.ceil(drawing.width * perPt - 1e-6);
  const height = Math.ceil(drawing.height * perPt - 1e-6);
  const mark = withMark ? drawing.mark : [];
  const under = drawing.markUnder && !bilevel ? mark : [];
  const over = drawing.markUnder ? [] : mark;
  const data = await grey([...under, ...drawing.items, ...over], width, height, dpi);
  if (bilevel) for (let index = 0; index < data.length; index++) data[index] = (data[index] ?? 255) < 128 ? 0 : 255;
  if (bilevel && drawing.markUnder && mark.length > 0) dither(data, await grey(mark, width, height, dpi), drawing, width, perPt);
  for (const item of drawing.items) if (item.kind === 'code') setCode(data, width, height, item, perPt);
  return { width, height, dpi, bilevel, data };
}

/** The pixels turned clockwise. */
export function turnPixels(pixels: Pixels, turn: 0 | 90 | 180 | 270): Pixels {
  if (turn === 0) return pixels;
  const { width: w, height: h, data } = pixels;
  const [width, height] = turn === 180 ? [w, h] : [h, w];
  const turned = new Uint8Array(data.length);
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const [tx, ty] = turn === 90 ? [h - 1 - y, x] : turn === 180 ? [w - 1 - x, h - 1 - y] : [y, w - 1 - x];
      turned[ty * width + tx] = data[y * w + x] ?? 255;
    }
  }
  return { ...pixels, width, height, data: turned };
}

/** One bit a pixel, rows padded to whole bytes, 1 is white: as an image XObject of one bit wants it. */
export function packBits(pixels: Pixels): Uint8Array {
  const stride = Math.ceil(pixels.width / 8);
  const packed = new Uint8Array(stride * pixels.height);
  for (let y = 0; y < pixels.height; y++) {
    for (let x = 0; x < pixels.width; x++) {
      if ((pixels.data[y * pixels.width + x] ?? 255) >= 128)
        packed[y * stride + (x >> 3)] = (packed[y * stride + (x >> 3)] ?? 0) | (0x80 >> (x & 7));
    }
  }
  return packed;
}
