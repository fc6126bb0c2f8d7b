import type { Document, Page, Part } from './page.js';
import type { Family, Rect, Shape, Text } from './shapes.js';
import { dataUri, escape, FONTS, n, svgShape, unturned } from './svg.js';

const pt = (value: number): string => `${n(value)}pt`;
const at = (x: number, y: number): string => `left:${pt(x)};top:${pt(y)};`;
const area = (x: number, y: number, width: number, height: number): string => `${at(x, y)}width:${pt(width)};height:${pt(height)};`;
const div = (style: string, inside = ''): string => `<div style="${style}">${inside}</div>`;

function text(shape: Text, fonts: Record<Family, string>): string {
  const { at: anchorAt, size, anchor } = shape;
  const turn = shape.turn + (shape.lean ?? 0);
  const shift = anchor === 'middle' ? ' translateX(-50%)' : anchor === 'end' ? ' translateX(-100%)' : '';
  const transform = turn === 0 && shift === '' ? '' : `transform:rotate(${turn}deg)${shift};transform-origin:0 .85em;`;
  const font = `font:${shape.bold ? 'bold ' : ''}${pt(size)}/1 '${fonts[shape.family]}';color:${shape.fill};`;
  return div(`${at(anchorAt[0], anchorAt[1] - 0.85 * size)}${font}${transform}white-space:pre`, escape(shape.text));
}

function rect(shape: Rect): string {
  const { line } = shape;
  const fill = shape.fill === undefined ? '' : `background:${shape.fill};`;
  const border = line > 0 ? `border:${pt(line)} ${shape.dash ? 'dashed' : 'solid'} ${shape.stroke};` : '';
  return div(
    `${area(shape.x - line / 2, shape.y - line / 2, shape.width + line, shape.height + line)}${fill}${border}${shape.radius ? `border-radius:${pt(shape.radius + line / 2)};` : ''}`,
  );
}

/** Shapes as boxes, borders and lines of text; bars and other areas as one inline SVG where they stand. */
function shapes(list: readonly Shape[], fonts: Record<Family, string>, page: Page): string {
  const out: string[] = [];
  let run: Shape[] = [];
  const flush = (): void => {
    if (run.length === 0) return;
    const view = `viewBox="0 0 ${n(page.width)} ${n(page.height)}" width="${pt(page.width)}" height="${pt(page.height)}"`;
    out.push(
      `<svg xmlns="http://www.w3.org/2000/svg" style="left:0;top:0" ${view}>${run.map((each) => svgShape(each, fonts)).join('')}</svg>`,
    );
    run = [];
  };
  for (const shape of list) {
    const drawn =
      shape.kind === 'poly' || shape.kind === 'disc' || shape.kind === 'line' || (shape.kind === 'rect' && shape.fill === '#000000');
    if (drawn) run.push(shape);
    else {
      flush();
      if (shape.kind === 'text') out.push(text(shape, fonts));
      else if (shape.kind === 'rect') out.push(rect(shape));
      else {
        const { x, y, width, height } = unturned(shape);
        const style = `${area(x, y, width, height)}transform:rotate(${shape.turn}deg);image-rendering:pixelated`;
        out.push(`<img style="${style}" src="${dataUri(shape.file)}">`);
      }
    }
  }
  flush();
  return out.join('\n');
}

function part(each: Part, fonts: Record<Family, string>, page: Page): string {
  const flow = each.html
    ? div(`${at(each.html.x, each.html.y)}width:${pt(each.html.width)}`, `<div class="flow">${each.html.markup}</div>`)
    : '';
  return shapes(each.shapes, fonts, page) + flow;
}

const STYLE = `html,body{margin:0;padding:0}
.page{position:relative;overflow:hidden;break-after:page}
.page:last-child{break-after:auto}
.page>div,.page>svg,.page>img{position:absolute;box-sizing:border-box;print-color-adjust:exact;-webkit-print-color-adjust:exact}
.flow table{border-collapse:collapse;width:100%}
.flow td,.flow th{padding:3pt 5pt;text-align:left;border-bottom:.75pt solid #999}
.flow th{background:#e8e8e8}
.flow p{margin:0 0 6pt}.flow h1{font-size:1.6em;margin:0 0 6pt}.flow h2{font-size:1.2em;margin:8pt 0 4pt}`;

/** A whole document, one named page size for each page. */
export function htmlDocument(document: Document, wanted: (part: Part) => boolean): string {
  const fonts = { ...FONTS, ...document.fonts };
  const sizes = document.pages.map(({ width, height }, index) => `@page p${index}{size:${pt(width)} ${pt(height)};margin:0}`);
  const pages = document.pages.map((page, index) => {
    const inside = page.parts.filter(wanted).map((each) => part(each, fonts, page));
    // A hair less than the paper: rounding must not make a second page.
    const style = `page:p${index};width:${pt(page.width)};height:${pt(page.height - 0.5)};font:9pt '${fonts.sans}'`;
    return `<div class="page" style="${style}">${inside.join('\n')}</div>`;
  });
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${document.name}</title><style>${sizes.join('\n')}
${STYLE}</style></head><body>${pages.join('\n')}</body></html>`;
}
