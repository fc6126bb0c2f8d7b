import { readFileSync } from 'node:fs';
import type { Family, Picture, Shape } from './shapes.js';

export const FONTS: Record<Family, string> = { sans: 'Liberation Sans', serif: 'Liberation Serif', mono: 'Liberation Mono' };
export const n = (value: number): string => String(Math.round(value * 1000) / 1000);
export const escape = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
export const dataUri = (file: string): string =>
  `data:image/${file.endsWith('.jpg') ? 'jpeg' : 'png'};base64,${readFileSync(file).toString('base64')}`;

/** The box of a picture before its turn, centred where it lies. */
export function unturned(picture: Picture): { x: number; y: number; width: number; height: number } {
  if (picture.turn % 180 === 0) return picture;
  const { x, y, width, height } = picture;
  return { x: x + (width - height) / 2, y: y + (height - width) / 2, width: height, height: width };
}

const dash = (lengths: readonly number[] | undefined): string => (lengths ? ` stroke-dasharray="${lengths.map(n).join(' ')}"` : '');

export function svgShape(shape: Shape, fonts: Record<Family, string>): string {
  switch (shape.kind) {
    case 'rect': {
      const stroke = shape.line > 0 ? ` stroke="${shape.stroke}" stroke-width="${n(shape.line)}"${dash(shape.dash)}` : '';
      const at = `x="${n(shape.x)}" y="${n(shape.y)}" width="${n(shape.width)}" height="${n(shape.height)}"`;
      const round = shape.radius ? ` rx="${n(shape.radius)}"` : '';
      return `<rect ${at}${round} fill="${shape.fill ?? 'none'}"${stroke}/>`;
    }
    case 'line': {
      const [[x1, y1], [x2, y2]] = [shape.from, shape.to];
      const ends = `x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}"`;
      return `<line ${ends} stroke="${shape.stroke}" stroke-width="${n(shape.line)}"${dash(shape.dash)}/>`;
    }
    case 'poly':
      return `<polygon points="${shape.points.map(([x, y]) => `${n(x)},${n(y)}`).join(' ')}" fill="${shape.fill}"/>`;
    case 'disc':
      return `<circle cx="${n(shape.at[0])}" cy="${n(shape.at[1])}" r="${n(shape.radius)}" fill="${shape.fill}"/>`;
    case 'text': {
      const [x, y] = shape.at;
      const turn = shape.turn === 0 && !shape.lean ? '' : ` transform="rotate(${n(shape.turn + (shape.lean ?? 0))} ${n(x)} ${n(y)})"`;
      const anchor = shape.anchor === 'start' ? '' : ` text-anchor="${shape.anchor}"`;
      const font = `font-family="${fonts[shape.family]}" font-size="${n(shape.size)}"${shape.bold ? ' font-weight="bold"' : ''}`;
      return `<text x="${n(x)}" y="${n(y)}" ${font}${anchor}${turn} fill="${shape.fill}" xml:space="preserve">${escape(shape.text)}</text>`;
    }
    case 'picture': {
      const { x, y, width, height } = unturned(shape);
      const turn = `rotate(${shape.turn} ${n(x + width / 2)} ${n(y + height / 2)})`;
      const at = `x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}"`;
      return `<image ${at} preserveAspectRatio="none" transform="${turn}" xlink:href="${dataUri(shape.file)}"/>`;
    }
  }
}

/** A page as an SVG file, in pt. */
export function svgPage(
  size: { readonly width: number; readonly height: number },
  shapes: readonly Shape[],
  fonts: Partial<Record<Family, string>> = {},
): string {
  const { width, height } = size;
  const all = { ...FONTS, ...fonts };
  const head = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"`;
  const body = shapes.map((shape) => svgShape(shape, all)).join('\n');
  return `${head} width="${n(width)}pt" height="${n(height)}pt" viewBox="0 0 ${n(width)} ${n(height)}">\n${body}\n</svg>\n`;
}
