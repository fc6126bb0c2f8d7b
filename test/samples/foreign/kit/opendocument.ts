import { readFileSync } from 'node:fs';
import type { Document, Part } from './page.js';
import type { Box, Family, Point, Shape, Text } from './shapes.js';
import { escape, FONTS, n, unturned } from './svg.js';

const NAMESPACES = [
  'office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"',
  'style="urn:oasis:names:tc:opendocument:xmlns:style:1.0"',
  'text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"',
  'draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0"',
  'fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"',
  'svg="urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0"',
  'xlink="http://www.w3.org/1999/xlink"',
].map((each) => `xmlns:${each}`);

/** Styles that a document's shapes ask for, each once. */
class Styles {
  private readonly names = new Map<string, string>();
  graphic(properties: string): string {
    return this.name(`<style:style style:name="#" style:family="graphic"><style:graphic-properties ${properties}/></style:style>`);
  }
  paragraph(align: string): string {
    return this.name(
      `<style:style style:name="#" style:family="paragraph"><style:paragraph-properties fo:text-align="${align}"/></style:style>`,
    );
  }
  text(properties: string): string {
    return this.name(`<style:style style:name="#" style:family="text"><style:text-properties ${properties}/></style:style>`);
  }
  private name(xml: string): string {
    const before = this.names.get(xml);
    if (before !== undefined) return before;
    const name = `s${this.names.size}`;
    this.names.set(xml, name);
    return name;
  }
  xml(): string {
    return [...this.names].map(([xml, name]) => xml.replace('#', name)).join('\n');
  }
}

const pt = (value: number): string => `${n(value)}pt`;
const area = (box: Box): string => `svg:x="${pt(box.x)}" svg:y="${pt(box.y)}" svg:width="${pt(box.width)}" svg:height="${pt(box.height)}"`;

/** Areas of one colour as one path, in hundredths of a millimetre of the page. */
function path(outlines: readonly (readonly Point[])[], fill: string, styles: Styles): string {
  const xs = outlines.flat().map(([x]) => x);
  const ys = outlines.flat().map(([, y]) => y);
  const box = {
    x: Math.min(...xs),
    y: Math.min(...ys),
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
  };
  const unit = 1000;
  const d = outlines
    .map(
      (points) =>
        points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${Math.round((x - box.x) * unit)} ${Math.round((y - box.y) * unit)}`).join('') +
        'Z',
    )
    .join('');
  const style = styles.graphic(`draw:stroke="none" draw:fill="solid" draw:fill-color="${fill}"`);
  return `<draw:path draw:style-name="${style}" ${area(box)} svg:viewBox="0 0 ${Math.round(box.width * unit)} ${Math.round(box.height * unit)}" svg:d="${d}"/>`;
}

function text(shape: Text, styles: Styles, fonts: Record<Family, string>): string {
  const width = 500;
  const height = shape.size * 1.3;
  const left = { start: 0, middle: -width / 2, end: -width }[shape.anchor];
  const [x, y] = shape.at;
  const top = -shape.size * 0.91;
  const radians = (-shape.turn * Math.PI) / 180;
  // The file format turns anticlockwise about the origin, then shifts.
  const cos = Math.cos(radians);
  const sin = Math.sin(radians);
  const place = `rotate (${radians.toFixed(6)}) translate (${pt(x + left * cos + top * sin)} ${pt(y - left * sin + top * cos)})`;
  const frame = styles.graphic(
    'draw:stroke="none" draw:fill="none" fo:padding="0pt" draw:auto-grow-height="false" draw:auto-grow-width="false" fo:wrap-option="no-wrap" draw:textarea-vertical-align="top"',
  );
  const look = `fo:font-family="'${fonts[shape.family]}'" fo:font-size="${n(shape.size)}pt" fo:font-weight="${shape.bold ? 'bold' : 'normal'}" fo:color="${shape.fill}"`;
  const paragraph = styles.paragraph({ start: 'start', middle: 'center', end: 'end' }[shape.anchor]);
  return `<draw:frame draw:style-name="${frame}" svg:width="${pt(width)}" svg:height="${pt(height)}" draw:transform="${place}"><draw:text-box><text:p text:style-name="${paragraph}"><text:span text:style-name="${styles.text(look)}">${escape(shape.text)}</text:span></text:p></draw:text-box></draw:frame>`;
}

function shapeXml(shape: Shape, styles: Styles, fonts: Record<Family, string>): string {
  switch (shape.kind) {
    case 'rect': {
      const fill = shape.fill === undefined ? 'draw:fill="none"' : `draw:fill="solid" draw:fill-color="${shape.fill}"`;
      const line = `svg:stroke-width="${pt(shape.line)}" svg:stroke-color="${shape.stroke}" draw:stroke-linejoin="miter"`;
      const style = styles.graphic(
        `${fill} draw:stroke="${shape.line > 0 ? (shape.dash ? 'dash' : 'solid') : 'none'}" draw:stroke-dash="cut" ${line}`,
      );
      return `<draw:rect draw:style-name="${style}" ${area(shape)}/>`;
    }
    case 'line': {
      const style = styles.graphic(
        `draw:stroke="${shape.dash ? 'dash' : 'solid'}" draw:stroke-dash="cut" svg:stroke-width="${pt(shape.line)}" svg:stroke-color="${shape.stroke}"`,
      );
      const [[x1, y1], [x2, y2]] = [shape.from, shape.to];
      return `<draw:line draw:style-name="${style}" svg:x1="${pt(x1)}" svg:y1="${pt(y1)}" svg:x2="${pt(x2)}" svg:y2="${pt(y2)}"/>`;
    }
    case 'poly':
      return path([shape.points], shape.fill, styles);
    case 'disc': {
      const [x, y] = shape.at;
      const box = { x: x - shape.radius, y: y - shape.radius, width: 2 * shape.radius, height: 2 * shape.radius };
      const style = styles.graphic(`draw:stroke="none" draw:fill="solid" draw:fill-color="${shape.fill}"`);
      return `<draw:ellipse draw:style-name="${style}" ${area(box)}/>`;
    }
    case 'text':
      return text(shape, styles, fonts);
    case 'picture': {
      if (shape.turn !== 0) throw new Error('Pictures are stored turned for this producer');
      const data = readFileSync(shape.file).toString('base64');
      return `<draw:frame ${area(unturned(shape))}><draw:image><office:binary-data>${data}</office:binary-data></draw:image></draw:frame>`;
    }
  }
}

/** Neighbouring black areas become one shape: thousands of bars are slow. */
function shapesXml(list: readonly Shape[], styles: Styles, fonts: Record<Family, string>): string {
  const out: string[] = [];
  let run: Point[][] = [];
  const flush = (): void => {
    if (run.length > 0) out.push(path(run, '#000000', styles));
    run = [];
  };
  for (const shape of list) {
    if (shape.kind === 'rect' && shape.fill === '#000000' && shape.line === 0) {
      const { x, y, width, height } = shape;
      run.push([
        [x, y],
        [x + width, y],
        [x + width, y + height],
        [x, y + height],
      ]);
    } else if (shape.kind === 'poly' && shape.fill === '#000000') run.push([...shape.points]);
    else {
      flush();
      out.push(shapeXml(shape, styles, fonts));
    }
  }
  flush();
  return out.join('\n');
}

/** A drawing document in one flat XML file, each page with a master of its own size. */
export function odgDocument(document: Document, wanted: (part: Part) => boolean): string {
  const styles = new Styles();
  const fonts = { ...FONTS, ...document.fonts };
  const pages = document.pages.map((page, index) => {
    const body = page.parts.filter(wanted).map((each) => shapesXml(each.shapes, styles, fonts));
    return `<draw:page draw:name="page${index + 1}" draw:master-page-name="m${index}">${body.join('\n')}</draw:page>`;
  });
  const layouts = document.pages.map(
    ({ width, height }, i) =>
      `<style:page-layout style:name="l${i}"><style:page-layout-properties fo:margin="0pt" fo:page-width="${pt(width)}" fo:page-height="${pt(height)}" style:print-orientation="${width > height ? 'landscape' : 'portrait'}"/></style:page-layout>`,
  );
  const masters = document.pages.map((_, i) => `<style:master-page style:name="m${i}" style:page-layout-name="l${i}"/>`);
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document ${NAMESPACES.join(' ')} office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.graphics">
<office:styles><draw:stroke-dash draw:name="cut" draw:style="rect" draw:dots1="1" draw:dots1-length="5pt" draw:distance="3pt"/></office:styles>
<office:automatic-styles>${styles.xml()}${layouts.join('')}</office:automatic-styles>
<office:master-styles>${masters.join('')}</office:master-styles>
<office:body><office:drawing>${pages.join('\n')}</office:drawing></office:body></office:document>`;
}
