import * as fontkit from '@cantoo/fontkit';
import { PDFDocument, PDFName, PDFNumber, type PDFFont, type PDFPage } from 'pdf-lib';
import type { Shape, Turn } from '../foreign/kit/shapes.js';
import { unturned } from '../foreign/kit/svg.js';
import { packBits } from '../raster.js';
import { OUTLINE_BYTES, setLine } from '../type.js';
import { asTextItem } from './ink.js';
import type { GreyPicture } from './pixels.js';

const num = (value: number): string => String(Math.round(value * 10000) / 10000);
const colour = (hex: string, operator: 'rg' | 'RG'): string =>
  `${[1, 3, 5].map((at) => num(Number.parseInt(hex.slice(at, at + 2), 16) / 255)).join(' ')} ${operator}`;
const dashes = (dash: readonly number[] | undefined): string => (dash ? `[${dash.map(num).join(' ')}] 0 d` : '');

/** A rectangle with round corners as a path. */
function path({ x, y, width: w, height: h, radius = 0 }: Extract<Shape, { kind: 'rect' }>): string {
  if (radius === 0) return `${num(x)} ${num(y)} ${num(w)} ${num(h)} re`;
  const r = Math.min(radius, w / 2, h / 2);
  const k = r * 0.4477;
  const at = (...values: number[]): string => values.map(num).join(' ');
  return [
    `${at(x + r, y)} m ${at(x + w - r, y)} l ${at(x + w - k, y, x + w, y + k, x + w, y + r)} c`,
    `${at(x + w, y + h - r)} l ${at(x + w, y + h - k, x + w - k, y + h, x + w - r, y + h)} c`,
    `${at(x + r, y + h)} l ${at(x + k, y + h, x, y + h - k, x, y + h - r)} c`,
    `${at(x, y + r)} l ${at(x, y + k, x + k, y, x + r, y)} c h`,
  ].join(' ');
}

function disc(x: number, y: number, r: number): string {
  return path({ kind: 'rect', x: x - r, y: y - r, width: 2 * r, height: 2 * r, radius: r, line: 0, stroke: '#000000' });
}

/** A PDF of one page, type in the outline face. Pictures are given by the `file` that a shape names. */
export async function directPdf(
  size: { readonly width: number; readonly height: number },
  shapes: readonly Shape[],
  pictures: ReadonlyMap<string, GreyPicture>,
  rotate: Turn,
): Promise<Uint8Array> {
  const doc = await PDFDocument.create({ updateMetadata: false });
  doc.registerFontkit(fontkit);
  const page = doc.addPage([size.width, size.height]);
  if (rotate !== 0) page.node.set(PDFName.of('Rotate'), PDFNumber.of(rotate));
  const fonts = new Map<boolean, PDFFont>();
  let stream = `q 1 0 0 -1 0 ${num(size.height)} cm\n`;
  for (const shape of shapes) {
    switch (shape.kind) {
      case 'rect': {
        if (shape.fill !== undefined) stream += `${colour(shape.fill, 'rg')} ${path(shape)} f\n`;
        if (shape.line > 0) stream += `q ${colour(shape.stroke, 'RG')} ${num(shape.line)} w ${dashes(shape.dash)} ${path(shape)} S Q\n`;
        break;
      }
      case 'line': {
        const ends = `${shape.from.map(num).join(' ')} m ${shape.to.map(num).join(' ')} l S`;
        stream += `q ${colour(shape.stroke, 'RG')} ${num(shape.line)} w ${dashes(shape.dash)} ${ends} Q\n`;
        break;
      }
      case 'poly':
        stream += `${colour(shape.fill, 'rg')} ${shape.points.map(([x, y], i) => `${num(x)} ${num(y)} ${i === 0 ? 'm' : 'l'}`).join(' ')} h f\n`;
        break;
      case 'disc':
        stream += `${colour(shape.fill, 'rg')} ${disc(shape.at[0], shape.at[1], shape.radius)} f\n`;
        break;
      case 'text':
        stream += await textOf(doc, fonts, shape);
        break;
      case 'picture':
        stream += await pictureOf(doc, page, shape, pictures);
        break;
    }
  }
  for (const [bold, font] of fonts) page.node.setFontDictionary(PDFName.of(bold ? 'Fb' : 'Fr'), font.ref);
  page.node.set(PDFName.of('Contents'), doc.context.register(doc.context.flateStream(`${stream}Q\n`)));
  return doc.save({ addDefaultPage: false });
}

async function textOf(doc: PDFDocument, fonts: Map<boolean, PDFFont>, shape: Extract<Shape, { kind: 'text' }>): Promise<string> {
  const item = asTextItem(shape);
  let font = fonts.get(item.bold);
  if (!font) {
    font = await doc.embedFont(item.bold ? OUTLINE_BYTES.bold : OUTLINE_BYTES.regular, { subset: true, features: { liga: false } });
    fonts.set(item.bold, font);
  }
  const { size, start } = setLine(item, font.widthOfTextAtSize(item.text, 1));
  const [cos, sin] = [Math.cos((item.turn * Math.PI) / 180), Math.sin((item.turn * Math.PI) / 180)];
  const at = [cos, sin, sin, -cos, item.x + start * cos, item.y + start * sin].map(num).join(' ');
  return `BT ${colour(shape.fill, 'rg')} /${item.bold ? 'Fb' : 'Fr'} ${num(size)} Tf ${at} Tm ${font.encodeText(item.text).toString()} Tj ET\n`;
}

async function pictureOf(
  doc: PDFDocument,
  page: PDFPage,
  shape: Extract<Shape, { kind: 'picture' }>,
  pictures: ReadonlyMap<string, GreyPicture>,
): Promise<string> {
  const picture = pictures.get(shape.file);
  if (!picture) throw new Error(`no picture ${shape.file}`);
  const { width, height, data, bilevel, jpeg } = picture;
  const dict = { Type: 'XObject', Subtype: 'Image', Width: width, Height: height, ColorSpace: 'DeviceGray' };
  const ref = jpeg
    ? (await doc.embedJpg(jpeg)).ref
    : doc.context.register(
        bilevel
          ? doc.context.flateStream(packBits({ width, height, data, bilevel, dpi: 0 }), { ...dict, BitsPerComponent: 1 })
          : doc.context.flateStream(data, { ...dict, BitsPerComponent: 8 }),
      );
  page.node.setXObject(PDFName.of('P0'), ref);
  const { x, y, width: w, height: h } = unturned(shape);
  const angle = (shape.turn * Math.PI) / 180;
  const [cos, sin] = [Math.round(Math.cos(angle)), Math.round(Math.sin(angle))];
  const turned = `1 0 0 1 ${num(x + w / 2)} ${num(y + h / 2)} cm ${cos} ${sin} ${-sin} ${cos} 0 0 cm`;
  return `q ${turned} ${num(w)} 0 0 ${num(-h)} ${num(-w / 2)} ${num(h / 2)} cm /P0 Do Q\n`;
}
