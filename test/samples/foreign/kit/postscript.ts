import type { Document, Page, Part } from './page.js';
import type { Family, Rect, Shape, Text } from './shapes.js';
import { n } from './svg.js';

const NAMES: Record<string, readonly [string, string]> = {
  Helvetica: ['Helvetica', 'Helvetica-Bold'],
  AvantGarde: ['AvantGarde-Book', 'AvantGarde-Demi'],
  Times: ['Times-Roman', 'Times-Bold'],
  Palatino: ['Palatino-Roman', 'Palatino-Bold'],
  Bookman: ['Bookman-Light', 'Bookman-Demi'],
  Courier: ['Courier', 'Courier-Bold'],
};
const USUAL: Record<Family, string> = { sans: 'Helvetica', serif: 'Times', mono: 'Courier' };

const colour = (hex: string): string => [1, 3, 5].map((i) => n(Number.parseInt(hex.slice(i, i + 2), 16) / 255)).join(' ');
/** A PostScript string in ISO Latin 1, with the nearest there is for what it lacks. */
function literal(text: string): string {
  let out = '';
  for (const each of text.replaceAll('–', '-').replaceAll('’', "'").replaceAll('€', 'EUR')) {
    const code = each.codePointAt(0) ?? 63;
    if (code > 255) throw new Error(`PostScript's Latin 1 has no ${each}`);
    out += code > 126 || '()\\'.includes(each) ? `\\${code.toString(8).padStart(3, '0')}` : each;
  }
  return `(${out})`;
}

const dash = (lengths: readonly number[] | undefined): string => `[${(lengths ?? []).map(n).join(' ')}] 0 setdash`;

function text(shape: Text, fonts: Partial<Record<Family, string>>): string {
  const pair = NAMES[fonts[shape.family] ?? USUAL[shape.family]] ?? NAMES['Helvetica'];
  const font = pair?.[shape.bold ? 1 : 0] ?? 'Helvetica';
  const back = { start: '', middle: 'dup stringwidth pop -2 div 0 rmoveto ', end: 'dup stringwidth pop neg 0 rmoveto ' }[shape.anchor];
  const to = `${n(shape.at[0])} ${n(shape.at[1])} translate ${n(shape.turn + (shape.lean ?? 0))} rotate 1 -1 scale 0 0 moveto`;
  return `gsave ${colour(shape.fill)} setrgbcolor /${font}-L1 ${n(shape.size)} selectfont ${to} ${literal(shape.text)} ${back}show grestore`;
}

function rounded({ x, y, width, height, fill, line, stroke, dash: dashed }: Rect, radius: number): string {
  const [right, bottom] = [x + width, y + height];
  const corners = [`${n(right)} ${n(y)} ${n(right)} ${n(bottom)}`, `${n(right)} ${n(bottom)} ${n(x)} ${n(bottom)}`];
  corners.push(`${n(x)} ${n(bottom)} ${n(x)} ${n(y)}`, `${n(x)} ${n(y)} ${n(right)} ${n(y)}`);
  const path = `${n(x + width / 2)} ${n(y)} moveto ${corners.map((corner) => `${corner} ${n(radius)} arct`).join(' ')} closepath`;
  const filled = fill === undefined ? '' : `${path} ${colour(fill)} setrgbcolor fill `;
  return `${filled}${line > 0 ? `${path} ${colour(stroke)} setrgbcolor ${n(line)} setlinewidth ${dash(dashed)} stroke` : ''}`;
}

export function psShape(shape: Shape, fonts: Partial<Record<Family, string>>): string {
  switch (shape.kind) {
    case 'rect': {
      const box = [shape.x, shape.y, shape.width, shape.height].map(n).join(' ');
      if (shape.radius) return rounded(shape, shape.radius);
      const fill = shape.fill === undefined ? '' : `${colour(shape.fill)} setrgbcolor ${box} rectfill `;
      const line = `${colour(shape.stroke)} setrgbcolor ${n(shape.line)} setlinewidth ${dash(shape.dash)} ${box} rectstroke`;
      return fill + (shape.line > 0 ? line : '');
    }
    case 'line': {
      const path = `${n(shape.from[0])} ${n(shape.from[1])} moveto ${n(shape.to[0])} ${n(shape.to[1])} lineto stroke`;
      return `${colour(shape.stroke)} setrgbcolor ${n(shape.line)} setlinewidth ${dash(shape.dash)} ${path}`;
    }
    case 'poly': {
      const path = shape.points.map(([x, y], index) => `${n(x)} ${n(y)} ${index === 0 ? 'moveto' : 'lineto'}`).join(' ');
      return `${colour(shape.fill)} setrgbcolor ${path} closepath fill`;
    }
    case 'disc':
      return `${colour(shape.fill)} setrgbcolor ${n(shape.at[0])} ${n(shape.at[1])} ${n(shape.radius)} 0 360 arc fill`;
    case 'text':
      return text(shape, fonts);
    case 'picture':
      throw new Error('This PostScript draws no pictures');
  }
}

/** Fonts again, in ISO Latin 1, as printer drivers do it. */
const reencoded = (): string =>
  Object.values(NAMES)
    .flat()
    .map(
      (name) => `/${name}-L1 /${name} findfont dup length dict begin { 1 index /FID ne { def } { pop pop } ifelse } forall
/Encoding ISOLatin1Encoding def currentdict end definefont pop`,
    )
    .join('\n');

const page = (each: Page, number: number, document: Document, wanted: (part: Part) => boolean): string => {
  const body = each.parts
    .filter(wanted)
    .flatMap((part) => part.shapes.map((shape) => psShape(shape, document.fonts ?? {})))
    .join('\n');
  return `%%Page: ${number} ${number}
<< /PageSize [${n(each.width)} ${n(each.height)}] >> setpagedevice
gsave 0 ${n(each.height)} translate 1 -1 scale
${body}
grestore showpage`;
};

/** A document of drawings in PostScript, each page with its own size. */
export function psDocument(document: Document, wanted: (part: Part) => boolean): string {
  const pages = document.pages.map((each, index) => page(each, index + 1, document, wanted));
  return `%!PS-Adobe-3.0\n%%Pages: ${document.pages.length}\n%%EndComments\n${reencoded()}\n${pages.join('\n')}\n%%EOF\n`;
}

/** One drawing as an encapsulated file, for programs that place such. */
export function epsDrawing(
  size: { width: number; height: number },
  shapes: readonly Shape[],
  fonts: Partial<Record<Family, string>>,
): string {
  const body = shapes.map((shape) => psShape(shape, fonts)).join('\n');
  return `%!PS-Adobe-3.0 EPSF-3.0
%%BoundingBox: 0 0 ${Math.ceil(size.width)} ${Math.ceil(size.height)}
%%EndComments
${reencoded()}
gsave 0 ${n(size.height)} translate 1 -1 scale
${body}
grestore
%%EOF
`;
}
