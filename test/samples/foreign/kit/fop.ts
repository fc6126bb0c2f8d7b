import type { Document, Page, Part } from './page.js';
import { escape, FONTS, n, svgShape } from './svg.js';

/** Faces from two folders only: looking through all of a machine's fonts takes minutes. */
export const FOP_FONTS = `<?xml version="1.0"?><fop version="1.0"><renderers><renderer mime="application/pdf"><fonts>
<directory>/usr/share/fonts/truetype/dejavu</directory><directory>/usr/share/fonts/truetype/liberation</directory>
</fonts></renderer></renderers></fop>`;

function pageSequence(page: Page, index: number, document: Document, wanted: (part: Part) => boolean): string {
  const fonts = { ...FONTS, ...document.fonts };
  const [w, h] = [`${n(page.width)}pt`, `${n(page.height)}pt`];
  // One drawing for each part, as a form engine lays them.
  const drawings = page.parts.filter(wanted).map((part) => {
    const inside = part.shapes.map((shape) => svgShape(shape, fonts)).join('\n');
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="${w}" height="${h}" viewBox="0 0 ${n(page.width)} ${n(page.height)}">${inside}</svg>`;
    return `<fo:block-container absolute-position="absolute" left="0" top="0" width="${w}" height="${h}"><fo:block font-size="0" line-height="0"><fo:instream-foreign-object>${svg}</fo:instream-foreign-object></fo:block></fo:block-container>`;
  });
  return `<fo:page-sequence master-reference="p${index}"><fo:flow flow-name="xsl-region-body">${drawings.join('\n')}<fo:block/></fo:flow></fo:page-sequence>`;
}

/** A document of XSL formatting objects with drawings in SVG. */
export function foDocument(document: Document, wanted: (part: Part) => boolean): string {
  const masters = document.pages.map(
    ({ width, height }, index) =>
      `<fo:simple-page-master master-name="p${index}" page-width="${n(width)}pt" page-height="${n(height)}pt"><fo:region-body/></fo:simple-page-master>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<fo:root xmlns:fo="http://www.w3.org/1999/XSL/Format"><fo:layout-master-set>${masters.join('')}</fo:layout-master-set>
<fo:declarations><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" rdf:about=""><dc:title>${escape(document.name)}</dc:title></rdf:Description></rdf:RDF></x:xmpmeta></fo:declarations>
${document.pages.map((page, index) => pageSequence(page, index, document, wanted)).join('\n')}</fo:root>
`;
}
