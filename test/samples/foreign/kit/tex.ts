import type { Document, Page, Part } from './page.js';
import type { Rect, Shape, Text } from './shapes.js';
import { n } from './svg.js';

/** Computer Modern, 7 bits: no accents. */
const FACES = { sans: ['cmss10', 'cmssbx10'], serif: ['cmr10', 'cmbx10'], mono: ['cmtt10', 'cmtt10'] } as const;
const rgb = (hex: string): string => [1, 3, 5].map((i) => n(Number.parseInt(hex.slice(i, i + 2), 16) / 255)).join(' ');
const literal = (ops: string): string => `\\pdfliteral{q ${ops} Q}`;
const dashes = (lengths: readonly number[] | undefined): string => `[${(lengths ?? []).map(n).join(' ')}] 0 d`;

function escaped(text: string): string {
  if (/[^\x20-\x7e]/.test(text)) throw new Error(`Computer Modern in plain TeX has no ${text}`);
  return text.replaceAll(/[#$%&_{}\\^~<>|"]/g, (each) => `\\char${each.charCodeAt(0)} `);
}

function words(shape: Text, height: number): string {
  const face = FACES[shape.family][shape.bold ? 1 : 0];
  const turn = ((shape.turn + (shape.lean ?? 0)) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)].map((each) => each.toFixed(6));
  const [before, after] = { start: ['', '\\hss'], middle: ['\\hss', '\\hss'], end: ['\\hss', ''] }[shape.anchor];
  const line = `\\font\\f=${face} at ${n(shape.size)}bp\\f ${escaped(shape.text)}`;
  const set = `\\pdfsave\\pdfsetmatrix{${cos} ${n(-Number(sin))} ${sin} ${cos}}\\hbox to 0pt{${before}${line}${after}}\\pdfrestore`;
  return `\\hbox to 0pt{\\kern ${n(shape.at[0])}bp\\raise ${n(height - shape.at[1])}bp\\hbox to 0pt{\\pdfliteral{q ${rgb(shape.fill)} rg}${set}\\pdfliteral{Q}\\hss}\\hss}%`;
}

function outline({ x, y, width: w, height: h, radius: r = 0 }: Rect, height: number): string {
  const bottom = height - y - h;
  if (r === 0) return `${[x, bottom, w, h].map(n).join(' ')} re`;
  const k = 0.4477 * r;
  const [left, right, low, high] = [x, x + w, bottom, bottom + h];
  const curve = (...at: number[]): string => `${at.map(n).join(' ')} c`;
  return [
    `${n(left + r)} ${n(low)} m ${n(right - r)} ${n(low)} l`,
    curve(right - k, low, right, low + k, right, low + r),
    `${n(right)} ${n(high - r)} l`,
    curve(right, high - k, right - k, high, right - r, high),
    `${n(left + r)} ${n(high)} l`,
    curve(left + k, high, left, high - k, left, high - r),
    `${n(left)} ${n(low + r)} l`,
    curve(left, low + k, left + k, low, left + r, low),
    'h',
  ].join(' ');
}

function texShape(shape: Shape, height: number): string {
  switch (shape.kind) {
    case 'text':
      return words(shape, height);
    case 'rect': {
      const fill = shape.fill === undefined ? '' : `${rgb(shape.fill)} rg ${outline(shape, height)} f `;
      const line = shape.line > 0 ? `${rgb(shape.stroke)} RG ${n(shape.line)} w ${dashes(shape.dash)} ${outline(shape, height)} S` : '';
      return literal(fill + line);
    }
    case 'line': {
      const path = `${n(shape.from[0])} ${n(height - shape.from[1])} m ${n(shape.to[0])} ${n(height - shape.to[1])} l S`;
      return literal(`${rgb(shape.stroke)} RG ${n(shape.line)} w ${dashes(shape.dash)} ${path}`);
    }
    case 'poly':
      return literal(
        `${rgb(shape.fill)} rg ${shape.points.map(([x, y], i) => `${n(x)} ${n(height - y)} ${i === 0 ? 'm' : 'l'}`).join(' ')} h f`,
      );
    case 'disc': {
      const { radius: r } = shape;
      const box: Rect = {
        kind: 'rect',
        x: shape.at[0] - r,
        y: shape.at[1] - r,
        width: 2 * r,
        height: 2 * r,
        line: 0,
        stroke: '#000000',
        radius: r,
      };
      return literal(`${rgb(shape.fill)} rg ${outline(box, height)} f`);
    }
    case 'picture':
      throw new Error('Pictures are not drawn by TeX here');
  }
}

function texPage(page: Page, wanted: (part: Part) => boolean): string {
  const drawn = page.parts.filter(wanted).flatMap(({ shapes }) => shapes.map((shape) => texShape(shape, page.height)));
  return `\\pdfpagewidth=${n(page.width)}bp \\pdfpageheight=${n(page.height)}bp
\\setbox0=\\hbox to 0pt{%
${drawn.map((each) => (each.endsWith('%') ? each : `${each}%`)).join('\n')}
\\hss}\\ht0=${n(page.height)}bp \\dp0=0pt \\wd0=0pt \\shipout\\box0`;
}

/** A document in plain TeX for pdfTeX, words in Computer Modern. */
export const texDocument = (document: Document, wanted: (part: Part) => boolean): string =>
  `\\pdfoutput=1 \\pdfcompresslevel=9 \\hoffset=-1in \\voffset=-1in \\pdfinfoomitdate=1 \\pdfsuppressptexinfo=15 \\pdftrailerid{}
${document.pages.map((page) => texPage(page, wanted)).join('\n')}
\\end
`;
