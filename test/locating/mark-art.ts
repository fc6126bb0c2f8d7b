import { PDFDocument, PDFName, StandardFonts, degrees, rgb } from 'pdf-lib';
import sharp from 'sharp';
import { mmToPt } from '../../src/geometry/length.js';
import { openImage } from '../../src/reading/open-image.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { SourceDocument } from '../../src/reading/source.js';

/** A label of 100 × 150 mm; SVG in mm, y down. */
export const SIZE = { width: 100, height: 150 };
type Turn = 0 | 90 | 180 | 270;

const polygon = (points: readonly (readonly [number, number])[], style: string): string =>
  `<polygon points="${points.map((point) => point.join(',')).join(' ')}" ${style}/>`;

const corners = (x: number, y: number, half: number): readonly (readonly [number, number])[] => [
  [x, y - half],
  [x + half, y],
  [x, y + half],
  [x - half, y],
];

/** A square on its point: middle, side and line in mm. The line lies inside the side. */
export function diamond(x: number, y: number, side: number, line: number, more = 'fill="white"'): string {
  const half = side * Math.SQRT1_2;
  return polygon(corners(x, y, half - (line / 2) * Math.SQRT2), `stroke="black" stroke-width="${line}" stroke-linejoin="miter" ${more}`);
}

/** The mark of limited quantities as 49 CFR 172.315 and ADR 3.4.7 describe it: black upper and lower corner, white middle. */
export function limitedQuantity(x: number, y: number, side: number, line: number): string {
  const half = side * Math.SQRT1_2;
  const cap = (down: 1 | -1): string =>
    polygon(
      [
        [x, y + down * half],
        [x + 0.46 * half, y + down * 0.54 * half],
        [x - 0.46 * half, y + down * 0.54 * half],
      ],
      'fill="black"',
    );
  return diamond(x, y, side, line) + cap(1) + cap(-1);
}

/** A hazard label: coloured ground, inner line, a figure. */
export function hazardLabel(x: number, y: number, side: number, colour: string): string {
  const half = side * Math.SQRT1_2;
  return (
    polygon(corners(x, y, half), `fill="${colour}"`) +
    polygon(corners(x, y, half * 0.9), 'fill="none" stroke="white" stroke-width="0.8"') +
    `<circle cx="${x}" cy="${y - 0.3 * half}" r="${0.22 * half}" fill="white"/>`
  );
}

/** A frame of slanted red stripes `band` mm wide, with a figure inside; a corner of each stripe leans by half its height. */
export function stripedFrame(x: number, y: number, width: number, height: number, band: number, colour = 'red'): string {
  const stripes: string[] = [];
  for (let at = x - height; at < x + width + height; at += 2 * 0.8 * band) {
    stripes.push(
      polygon(
        [
          [at, y + height],
          [at + 0.8 * band, y + height],
          [at + 0.8 * band + height, y],
          [at + height, y],
        ],
        `fill="${colour}"`,
      ),
    );
  }
  return (
    `<clipPath id="f"><rect x="${x}" y="${y}" width="${width}" height="${height}"/></clipPath><g clip-path="url(#f)">${stripes.join('')}</g>` +
    `<rect x="${x + band}" y="${y + band}" width="${width - 2 * band}" height="${height - 2 * band}" fill="white"/>` +
    `<rect x="${x + width / 2 - 4}" y="${y + height / 2 - 5}" width="8" height="10" fill="black"/>`
  );
}

/** SVG in mm as pixels of a page. */
function pixels(svg: string, dpi: number, turn: Turn): Promise<Buffer> {
  const { width, height } = SIZE;
  const [w, h] = [Math.round((width / 25.4) * dpi), Math.round((height / 25.4) * dpi)];
  const document = `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}" viewBox="0 0 ${width} ${height}"><rect width="${width}" height="${height}" fill="white"/>${svg}</svg>`;
  return sharp(Buffer.from(document)).flatten({ background: 'white' }).rotate(turn).withMetadata({ density: dpi }).png().toBuffer();
}

/** The label as a picture file of so many dpi. */
export async function asPicture(svg: string, dpi: number, turn: Turn = 0): Promise<SourceDocument> {
  const source = await openImage(new Uint8Array(await pixels(svg, dpi, turn)));
  if ('refused' in source) throw new Error(source.refused.message);
  return source;
}

/** The label's polygons as vectors on a page, turned by /Rotate. Understands what the functions above write, but clip paths. */
export async function asVectors(svg: string, turn: Turn = 0): Promise<SourceDocument> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([mmToPt(SIZE.width), mmToPt(SIZE.height)]);
  page.setRotation(degrees(turn));
  const colours: Readonly<Record<string, ReturnType<typeof rgb>>> = {
    black: rgb(0, 0, 0),
    white: rgb(1, 1, 1),
    red: rgb(1, 0, 0),
    green: rgb(0, 0.5, 0),
  };
  for (const [, points = '', style = ''] of svg.matchAll(/<polygon points="([^"]*)" ([^/]*)\/>/g)) {
    const of = (key: string): string | undefined => new RegExp(`${key}="([^"]*)"`).exec(style)?.[1];
    const [fill, stroke] = [colours[of('fill') ?? ''], colours[of('stroke') ?? '']];
    page.drawSvgPath(`M${points.replaceAll(' ', ' L')} Z`, {
      x: 0,
      y: mmToPt(SIZE.height),
      scale: mmToPt(1),
      ...(fill ? { color: fill } : {}),
      ...(stroke ? { borderColor: stroke, borderWidth: Number(of('stroke-width')) } : {}),
    });
  }
  return openedPdf(await pdf.save());
}

/** A page with lines of words, the first at the top. */
export async function withWords(lines: readonly string[], turn: Turn = 0): Promise<SourceDocument> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([mmToPt(SIZE.width), mmToPt(SIZE.height)]);
  page.setRotation(degrees(turn));
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  for (const [index, line] of lines.entries()) page.drawText(line, { x: 20, y: 380 - 30 * index, size: 10, font });
  pdf.catalog.delete(PDFName.of('Lang'));
  return openedPdf(await pdf.save());
}

async function openedPdf(bytes: Uint8Array): Promise<SourceDocument> {
  const source = await openPdf(bytes);
  if ('refused' in source) throw new Error(source.refused.message);
  return source;
}
