import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { foDocument, FOP_FONTS } from './fop.js';
import { htmlDocument } from './html.js';
import { odgDocument } from './opendocument.js';
import type { Document, Page, Part } from './page.js';
import { PDF_API2 } from './pdfapi2.js';
import { epsDrawing, psDocument } from './postscript.js';
import { PRAWN } from './prawn.js';
import { rasterise, scanPage } from './raster.js';
import { REPORTLAB } from './reportlab.js';
import { convertOffice, printHtml, run } from './run.js';
import { isServed, serve } from './server.js';
import { n, svgPage } from './svg.js';
import { TCPDF } from './tcpdf.js';
import { texDocument } from './tex.js';

const shapesOf = (page: Page, wanted: (part: Part) => boolean) => page.parts.filter(wanted).flatMap((part) => part.shapes);
/** How PostScript becomes PDF: nothing of the day or the machine, pages as they lie. */
const DISTILL = [
  '-q',
  '-dNOPAUSE',
  '-dBATCH',
  '-sDEVICE=pdfwrite',
  '-dOmitInfoDate=true',
  '-dOmitID=true',
  '-dOmitXMP=true',
  '-dAutoRotatePages=/None',
];

/** Text of a letter for troff at its place, and drawings as encapsulated PostScript. */
function troff(document: Document, wanted: (part: Part) => boolean, folder: string): string {
  const out = ['.nh', '.po 0', '.pl 3000p'];
  for (const [number, page] of document.pages.entries()) {
    if (number > 0) out.push('.bp');
    for (const [index, part] of page.parts.entries()) {
      if (!wanted(part)) continue;
      if (part.shapes.length > 0) {
        const eps = join(folder, `part${number}-${index}.eps`);
        writeFileSync(eps, epsDrawing(page, part.shapes, document.fonts ?? {}));
        out.push('.ps 10', '.vs 12', '.sp |0', '.ll 3000p', `.PSPIC -L ${eps} ${n(page.width)}p ${n(page.height)}p`);
      }
      const letter = part.html;
      if (letter)
        out.push(`.sp |${n(letter.y)}p`, `.in ${n(letter.x)}p`, `.ll ${n(letter.x + letter.width)}p`, letter.markup, '.br', '.in 0');
    }
  }
  return `${out.join('\n')}\n`;
}

function make(document: Document, wanted: (part: Part) => boolean, folder: string, pdf: string): void {
  const { pages, dpi = 203, producer } = document;
  if (isServed(producer)) {
    serve(producer, document, wanted, folder, pdf);
    return;
  }
  const base = join(folder, 'document');
  const pictures = (): string[] =>
    pages.map((page, index) =>
      rasterise(page, shapesOf(page, wanted), join(folder, `page${index}`), {
        dpi,
        ink: document.grey === true ? 'grey' : 'bilevel',
        fonts: document.fonts ?? {},
      }),
    );
  const drawn = (): string => JSON.stringify(pages.map((page) => ({ ...page, shapes: shapesOf(page, wanted) })));
  switch (producer) {
    case 'chromium':
      writeFileSync(`${base}.html`, htmlDocument(document, wanted));
      printHtml(`${base}.html`, pdf, folder);
      break;
    case 'weasyprint':
      writeFileSync(`${base}.html`, htmlDocument(document, wanted));
      run('weasyprint', [`${base}.html`, pdf]);
      break;
    case 'cairo': {
      const files = pages.map((page, index) => {
        const file = join(folder, `page${index}.svg`);
        writeFileSync(file, svgPage(page, shapesOf(page, wanted), document.fonts));
        return file;
      });
      run('rsvg-convert', ['-f', 'pdf', '-o', pdf, ...files]);
      break;
    }
    case 'ghostscript':
      writeFileSync(`${base}.ps`, psDocument(document, wanted));
      run('gs', [...DISTILL, `-sOutputFile=${pdf}`, `${base}.ps`]);
      break;
    case 'groff': {
      const [first] = pages;
      writeFileSync(`${base}.tr`, troff(document, wanted, folder));
      const paper = `-P-p${n((first?.height ?? 0) / 72)}i,${n((first?.width ?? 0) / 72)}i`;
      writeFileSync(`${base}.ps`, run('groff', ['-Tps', '-Kutf8', '-U', paper, '-I', folder, `${base}.tr`]));
      run('gs', [...DISTILL, `-sOutputFile=${pdf}`, `${base}.ps`]);
      break;
    }
    case 'libreoffice':
      writeFileSync(`${base}.fodg`, odgDocument(document, wanted));
      convertOffice(`${base}.fodg`, folder);
      writeFileSync(pdf, readFileSync(`${base}.pdf`));
      break;
    case 'img2pdf':
      run('img2pdf', ['--nodate', '--imgsize', `${dpi}dpi`, '-o', pdf, ...pictures()]);
      break;
    case 'tiff2pdf':
      run('/usr/bin/convert', [
        ...pictures(),
        ...['-units', 'PixelsPerInch', '-density', String(dpi)],
        ...['-compress', document.grey === true ? 'Zip' : 'Group4', `${base}.tif`],
      ]);
      run('tiff2pdf', ['-z', '-e', '20200101000000', '-o', pdf, `${base}.tif`]);
      break;
    case 'outlines':
      writeFileSync(`${base}.ps`, psDocument(document, wanted));
      run('gs', [...DISTILL, '-dNoOutputFonts', `-sOutputFile=${pdf}`, `${base}.ps`]);
      break;
    case 'reportlab':
      run('/usr/bin/python3', ['-c', REPORTLAB, pdf], drawn());
      break;
    case 'prawn':
      run('ruby', ['-e', PRAWN, pdf], drawn());
      break;
    case 'pdfapi2':
      run('/usr/bin/perl', ['-e', PDF_API2, pdf, JSON.stringify(document.fonts ?? {})], drawn());
      break;
    case 'tcpdf':
      run('php', ['-r', TCPDF, '--', pdf, document.fonts?.sans ?? 'helvetica'], drawn());
      break;
    case 'pdftex':
      writeFileSync(`${base}.tex`, texDocument(document, wanted));
      run('pdftex', ['-interaction=batchmode', '-halt-on-error', `-output-directory=${folder}`, `${base}.tex`]);
      writeFileSync(pdf, readFileSync(`${base}.pdf`));
      break;
    case 'fop':
      writeFileSync(`${base}.fo`, foDocument(document, wanted));
      writeFileSync(`${base}.xconf`, FOP_FONTS);
      run('fop', ['-q', '-c', `${base}.xconf`, `${base}.fo`, pdf]);
      break;
    case 'pixels': {
      const whole = pages.map((page, index) => {
        const ink = document.grey === true ? 'grey' : 'bilevel';
        const file = rasterise(page, shapesOf(page, wanted), join(folder, `page${index}`), { dpi, ink, fonts: document.fonts ?? {} });
        return { ...page, shapes: [{ kind: 'picture', x: 0, y: 0, width: page.width, height: page.height, file, turn: 0 }] };
      });
      run('/usr/bin/perl', ['-e', PDF_API2, pdf, '{}'], JSON.stringify(whole));
      break;
    }
    case 'scan-colour':
    case 'scan-shade':
    case 'scan-jpeg':
    case 'scan-g4': {
      const g4 = document.producer === 'scan-g4';
      const files = pages.map((page, index) =>
        scanPage(page, shapesOf(page, wanted), join(folder, `scan${index}`), {
          dpi: document.dpi ?? 200,
          g4,
          shade: document.producer === 'scan-shade',
          colour: document.producer === 'scan-colour',
          seed: index + 1,
        }),
      );
      run('img2pdf', ['--nodate', '-o', pdf, ...files]);
      break;
    }
    case 'typst':
    case 'luatex':
    case 'skia':
    case 'pdf-lib':
    case 'gofpdf':
    case 'pdfmake':
      throw new Error(`Documents by ${producer} are drawn by the Python files of designs-sixth.`);
    case 'hand-written':
    case 'inkscape':
    case 'rsvg':
      throw new Error(`Documents by ${producer} are drawn by the files of designs-seventh.`);
  }
}

/** Makes the PDF of a document with the wanted parts only, and gives its path. */
export function produce(document: Document, wanted: (part: Part) => boolean, folder: string, name: string): string {
  const own = join(folder, name);
  mkdirSync(own, { recursive: true });
  let pdf = join(own, 'made.pdf');
  make(document, wanted, own, pdf);
  const turns = document.pages.flatMap(({ rotate = 0 }, index) => (rotate === 0 ? [] : [`--rotate=+${rotate}:${index + 1}`]));
  if (turns.length > 0) {
    const turnedPdf = join(own, 'turned.pdf');
    run('qpdf', ['--deterministic-id', ...turns, pdf, turnedPdf]);
    pdf = turnedPdf;
  }
  // No day of making: dates in the document's information keep their length.
  const text = readFileSync(pdf, 'latin1').replaceAll(/D:2\d{13}/g, 'D:20200101000000');
  writeFileSync(pdf, text, 'latin1');
  return pdf;
}
