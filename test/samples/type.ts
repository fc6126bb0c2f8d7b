import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import * as fontkit from '@cantoo/fontkit';
import type { Rect, TextItem } from './drawing.js';

/** `helvetica`: a standard face that a PDF names and never holds. `noto`: outlines, the same in the PDF and in the pixels. */
export type Face = 'helvetica' | 'noto';

const folder = dirname(createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans/package.json'));
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(folder, name, `NotoSans_${name}.ttf`)));

export const OUTLINE_BYTES = { regular: bytesOf('400Regular'), bold: bytesOf('700Bold') };

interface Glyph {
  readonly advanceWidth: number;
  readonly bbox: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };
  readonly path: { toSVG(): string };
}
interface OutlineFont {
  readonly unitsPerEm: number;
  layout(text: string, features: Readonly<Record<string, boolean>>): { readonly glyphs: readonly Glyph[] };
}

const FONTS = {
  regular: fontkit.create(OUTLINE_BYTES.regular) as unknown as OutlineFont,
  bold: fontkit.create(OUTLINE_BYTES.bold) as unknown as OutlineFont,
};

const runs = new Map<string, { glyphs: readonly Glyph[]; width: number; em: number }>();
function run(text: string, bold: boolean): { glyphs: readonly Glyph[]; width: number; em: number } {
  const key = `${bold ? 'b' : 'r'}${text}`;
  let found = runs.get(key);
  if (!found) {
    const font = bold ? FONTS.bold : FONTS.regular;
    const { glyphs } = font.layout(text, { liga: false });
    found = { glyphs, width: glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0), em: font.unitsPerEm };
    runs.set(key, found);
  }
  return found;
}

/** Width in pt of a line set in the outline face; kerning is not applied, as in the PDFs. */
export function outlineWidth(text: string, bold: boolean, size: number): number {
  const { width, em } = run(text, bold);
  return (width / em) * size;
}

/** Size after shrinking to `maxWidth`, and where the line starts from its anchor. */
export function setLine(item: TextItem, widthAtOne: number): { size: number; start: number } {
  const size = item.maxWidth !== undefined && widthAtOne * item.size > item.maxWidth ? item.maxWidth / widthAtOne : item.size;
  const width = widthAtOne * size;
  return { size, start: item.align === 'left' ? 0 : item.align === 'center' ? -width / 2 : -width };
}

/** The line as filled outlines for an SVG. */
export function svgOfText(item: TextItem, fill: string): string {
  const { glyphs, em } = run(item.text, item.bold);
  const { size, start } = setLine(item, outlineWidth(item.text, item.bold, 1));
  const scale = size / em;
  let x = 0;
  let paths = '';
  for (const glyph of glyphs) {
    const path = glyph.path.toSVG();
    if (path !== '') paths += `<path transform="translate(${x} 0)" d="${path}"/>`;
    x += glyph.advanceWidth;
  }
  return `<g fill="${fill}" transform="translate(${item.x} ${item.y}) rotate(${item.turn}) translate(${start} 0) scale(${scale} ${-scale})">${paths}</g>`;
}

/** Bounds of the outlines of a line, pt. Exact for quarter turns; for other turns the bounds of the turned box. */
export function inkOfText(item: TextItem): Rect {
  const { glyphs, em } = run(item.text, item.bold);
  const { size, start } = setLine(item, outlineWidth(item.text, item.bold, 1));
  const scale = size / em;
  let pen = 0;
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const glyph of glyphs) {
    const { minX, minY, maxX, maxY } = glyph.bbox;
    if (maxX > minX && maxY > minY) {
      x0 = Math.min(x0, start + (pen + minX) * scale);
      x1 = Math.max(x1, start + (pen + maxX) * scale);
      y0 = Math.min(y0, -maxY * scale);
      y1 = Math.max(y1, -minY * scale);
    }
    pen += glyph.advanceWidth;
  }
  const cos = Math.cos((item.turn * Math.PI) / 180);
  const sin = Math.sin((item.turn * Math.PI) / 180);
  const xs: number[] = [];
  const ys: number[] = [];
  for (const [u, v] of [
    [x0, y0],
    [x1, y0],
    [x0, y1],
    [x1, y1],
  ] as const) {
    xs.push(item.x + u * cos - v * sin);
    ys.push(item.y + u * sin + v * cos);
  }
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
