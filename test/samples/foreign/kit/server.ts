import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { htmlDocument } from './html.js';
import { MUHAMMARA, REACT_PDF } from './later-node.js';
import { rScript, xetexDocument } from './later-plain.js';
import { FPDF2, MUPDF, PILLOW, QT as QT_WRITER } from './later-python.js';
import type { Document, Page, Part, Producer } from './page.js';
import { PDF_API2 } from './pdfapi2.js';
import { rasterise, scanPage } from './raster.js';
import { run } from './run.js';
import { fontFile } from './server-fonts.js';
import { LIBHARU } from './server-haru.js';
import { drawingLines, ITEXT, ITEXT5, JARS, PDFBOX } from './server-java.js';
import { JSPDF, PDFKIT } from './server-node.js';
import { DOMPDF, FPDF } from './server-php.js';
import type { Family, Shape } from './shapes.js';
import { place } from './shapes.js';

const SERVED = ['itext', 'pdfbox', 'fpdf', 'dompdf', 'pdfkit', 'jspdf', 'libharu', 'wkhtmltopdf', 'scan-flat', 'picture-file'] as const;
const LATER = ['fpdf2', 'qt', 'mupdf', 'muhammara', 'react-pdf', 'xetex', 'r', 'pillow', 'scan-pillow', 'itext5', 'pdf-builder'] as const;
type ServedProducer = (typeof SERVED)[number] | (typeof LATER)[number];
export const isServed = (producer: Producer): producer is ServedProducer => [...SERVED, ...LATER].some((each) => each === producer);

const FAMILIES: readonly Family[] = ['sans', 'serif', 'mono'];
/** Qt without a screen takes a CSS pixel for less than a 96th of an inch; pages that come out at true size are written this much larger. */
const QT = 1.3013;

/** Makes the PDF with a program that servers of shops use. */
export function serve(producer: ServedProducer, document: Document, wanted: (part: Part) => boolean, folder: string, pdf: string): void {
  const { pages, fonts = {} } = document;
  const drawn = pages.map((page) => ({ ...page, shapes: page.parts.filter(wanted).flatMap((part) => part.shapes) }));
  const faces = (): Record<string, readonly string[]> =>
    Object.fromEntries(FAMILIES.map((family) => [family, [fontFile(fonts, family, false), fontFile(fonts, family, true)]]));
  const json = (more: object = {}): string => JSON.stringify({ pages: drawn, ...more });
  const inPixels = (): string[] =>
    drawn.map((page, index) => {
      const ink = document.grey === true ? 'grey' : 'bilevel';
      return rasterise(page, page.shapes, join(folder, `page${index}`), { dpi: document.dpi ?? 203, ink, fonts });
    });
  const programs: Record<ServedProducer, () => void> = {
    itext: () => java('itext', ITEXT, drawn, fonts, folder, pdf),
    pdfbox: () => java('pdfbox', PDFBOX, drawn, fonts, folder, pdf),
    fpdf: () => run('php', ['-r', FPDF, '--', pdf], JSON.stringify(drawn)),
    dompdf: () => run('php', ['-d', 'memory_limit=1G', '-r', DOMPDF, '--', pdf, fonts.sans ?? 'Helvetica'], JSON.stringify(drawn)),
    pdfkit: () => run('node', ['-e', PDFKIT, pdf], json(fonts.sans === undefined ? {} : { faces: faces() })),
    jspdf: () => run('node', ['-e', JSPDF, pdf], json({ faces: faces() })),
    libharu: () => run('/usr/bin/python3', ['-c', LIBHARU, pdf], json({ faces: faces() })),
    wkhtmltopdf: () => {
      const [first] = pages;
      const html = join(folder, 'document.html');
      writeFileSync(
        html,
        htmlDocument(enlarged(document, wanted), () => true),
      );
      const margins = ['-T', '-B', '-L', '-R'].flatMap((each) => [each, '0']);
      const size = ['--page-width', mm(first?.width), '--page-height', mm(first?.height)];
      run('wkhtmltopdf', ['-q', ...margins, ...size, '--dpi', '96', html, pdf]);
    },
    fpdf2: () => run('/usr/bin/python3', ['-c', FPDF2, pdf], json({ faces: faces() })),
    qt: () => run('/usr/bin/python3', ['-c', QT_WRITER, pdf], json({ faces: faces() })),
    itext5: () => java('itext5', ITEXT5, drawn, fonts, folder, pdf),
    'pdf-builder': () =>
      run('/usr/bin/perl', ['-e', PDF_API2.replaceAll('PDF::API2', 'PDF::Builder'), pdf, JSON.stringify(fonts)], JSON.stringify(drawn)),
    mupdf: () => run('/usr/bin/python3', ['-c', MUPDF, pdf], json()),
    muhammara: () => run('node', ['-e', MUHAMMARA, pdf], json({ faces: faces() })),
    'react-pdf': () => run('node', ['-e', REACT_PDF, pdf], json()),
    xetex: () => {
      writeFileSync(join(folder, 'document.tex'), xetexDocument(drawn, faces()));
      run('xetex', ['-interaction=batchmode', '-halt-on-error', `-output-directory=${folder}`, join(folder, 'document.tex')]);
      copyFileSync(join(folder, 'document.pdf'), pdf);
    },
    r: () => {
      writeFileSync(join(folder, 'document.R'), rScript(drawn, pdf));
      run('Rscript', ['--vanilla', join(folder, 'document.R')]);
    },
    pillow: () => run('/usr/bin/python3', ['-c', PILLOW, pdf], JSON.stringify({ files: inPixels(), dpi: document.dpi ?? 203 })),
    'scan-pillow': () => {
      const { dpi = 150 } = document;
      const files = drawn.map((page, index) =>
        scanPage(page, page.shapes, join(folder, `scan${index}`), { dpi, g4: false, clean: true, seed: index + 21 }),
      );
      run('/usr/bin/python3', ['-c', PILLOW, pdf], JSON.stringify({ files, dpi }));
    },
    'picture-file': () => {
      throw new Error('A picture file is no PDF');
    },
    'scan-flat': () => {
      const { dpi = 200 } = document;
      const look = (index: number) => ({ dpi, g4: false, clean: true, seed: index + 1 });
      const whole = drawn.map((page, index) => wrapped(page, scanPage(page, page.shapes, join(folder, `scan${index}`), look(index))));
      run('/usr/bin/python3', ['-c', LIBHARU, pdf], JSON.stringify({ pages: whole, faces: faces() }));
    },
  };
  programs[producer]();
}

const wrapped = ({ width, height }: Page, file: string) => ({
  width,
  height,
  shapes: [{ kind: 'picture', x: 0, y: 0, width, height, file, turn: 0 }],
});

const enlarged = (document: Document, wanted: (part: Part) => boolean): Document => ({
  ...document,
  pages: document.pages.map((page) => ({
    ...page,
    width: page.width * QT,
    // A hair less than the paper: rounding must not make a second page.
    height: page.height * QT * 0.992,
    parts: page.parts.filter(wanted).map((part) => ({ ...part, shapes: place(part.shapes, page, { x: 0, y: 0, scale: QT }) })),
  })),
});

function java(
  name: keyof typeof JARS,
  program: string,
  pages: readonly (Page & { readonly shapes: readonly Shape[] })[],
  fonts: Partial<Record<Family, string>>,
  folder: string,
  pdf: string,
): void {
  const source = join(folder, 'Draw.java');
  writeFileSync(source, program);
  run('java', ['-Djava.awt.headless=true', '-cp', JARS[name], source, pdf], drawingLines(pages, fonts));
}

/** A label as a picture file of its own, as a shop hands it over; `density` tells whether it says its dots per inch. */
export function pictureFile(document: Document, folder: string, name: string): string {
  const [page] = document.pages;
  if (!page || document.pages.length !== 1) throw new Error(`${document.name}: a picture file has one page`);
  const { dpi = 203, fonts = {}, grey = false } = document;
  const shapes = page.parts.flatMap((part) => part.shapes);
  return rasterise(page, shapes, join(folder, name), { dpi, ink: grey ? 'grey' : 'bilevel', fonts, bare: document.bare === true });
}

const mm = (pt = 0): string => `${((pt / 72) * 25.4).toFixed(2)}mm`;
