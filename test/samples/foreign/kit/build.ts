import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import prettier from 'prettier';
import { askew, difference, inkBounds, pageSizes, rounded } from './measure.js';
import type { Document, Half, LabelTruth, Layout, Page, PageTruth, Part, Truth } from './page.js';
import { produce } from './produce.js';
import { pictureFile } from './server.js';
import type { Box, Turn } from './shapes.js';

const isLabel = (part: Part): boolean => part.role === 'label' || part.role === 'return-label';
const labelsOf = (page: Page): readonly Part[] => page.parts.filter(isLabel);

/** A picture as a black area: its edge shows where its paper is white. */
const blackened = (document: Document): Document => ({
  ...document,
  pages: document.pages.map((page) => ({
    ...page,
    parts: page.parts.map((part) => ({
      ...part,
      shapes: part.shapes.map((shape) =>
        shape.kind === 'picture' ? { ...shape, kind: 'rect' as const, fill: '#000000', line: 0, stroke: '#000000' } : shape,
      ),
    })),
  })),
});

/** A scan is measured as it was before the scanner: straight and clean. */
const unscanned = (document: Document): Document =>
  document.producer.startsWith('scan') || document.producer === 'picture-file' ? { ...document, producer: 'cairo' } : document;

/** Bounds of one part of each page, measured on the same page with only that part on it; `whole` must show the same there. */
function boundsOf(
  document: Document,
  pick: (page: Page) => Part | undefined,
  folder: string,
  name: string,
  whole?: string,
): (Box | undefined)[] {
  const picked = new Set(document.pages.map(pick));
  picked.delete(undefined);
  if (picked.size === 0) return document.pages.map(() => undefined);
  const pdf = produce(document, (part) => picked.has(part), folder, name);
  return document.pages.map((page, index) => {
    const box = pick(page) ? inkBounds(pdf, index + 1) : undefined;
    const off = box && whole !== undefined ? difference(whole, pdf, index + 1, box) : 0;
    if (off > 0.002) throw new Error(`${document.name}, page ${index + 1}: what was measured alone lies elsewhere or is covered (${off})`);
    return box;
  });
}

function labelTruth(page: Page, part: Part, found: { edge: Box | undefined; ink: Box | undefined; page: Box }): LabelTruth {
  const { edge = 'ink', turn = 0, codes = [], role } = part;
  // A frame drawn in a picture, with white around it, is measured as ink.
  const measured = edge === 'page' ? found.page : edge === 'picture' ? found.edge : found.ink;
  if (!measured) throw new Error('A label without any ink');
  const upright = ((720 - turn - (page.rotate ?? 0)) % 360) as Turn;
  const { skew } = page;
  const place = skew === undefined ? { box: rounded(measured) } : { skew, ...askew(measured, found.page, skew) };
  const ink = found.ink && (edge === 'page' || edge === 'picture') ? { ink: found.ink } : {};
  return { ...place, turn: upright, edge, ...ink, role: role === 'return-label' ? role : 'label', codes };
}

/** Makes a document's PDF and its truth. */
function truthOf(document: Document, folder: string): { pdf: string; pages: PageTruth[] } {
  const isFile = document.producer === 'picture-file';
  const pdf = isFile ? pictureFile(document, folder, 'whole') : produce(document, () => true, folder, 'whole');
  const sizes = isFile ? document.pages.map(({ width, height }) => ({ width, height })) : pageSizes(pdf);
  if (sizes.length !== document.pages.length) throw new Error(`${document.name}: ${sizes.length} pages, ${document.pages.length} expected`);
  for (const [index, { width: whole, height: tall, crop, rotate = 0 }] of document.pages.entries()) {
    const { width, height } = crop ?? { width: whole, height: tall };
    const { width: w = 0, height: h = 0 } = sizes[index] ?? {};
    const [expected, across] = rotate % 180 === 0 ? [width, height] : [height, width];
    if (Math.abs(w - expected) > 1 || Math.abs(h - across) > 1) throw new Error(`${document.name}, page ${index + 1}: ${w} x ${h} pt`);
  }
  const plain = unscanned(document);
  const straight = plain === document ? pdf : produce(plain, () => true, folder, 'straight');
  const most = Math.max(...document.pages.map((page) => labelsOf(page).length));
  const measured = Array.from({ length: most }, (_, i) => {
    const black = blackened(plain);
    const pick = (page: Page): Part | undefined => labelsOf(page)[i];
    const withPictures = document.pages.some((page) => pick(page)?.shapes.some(({ kind }) => kind === 'picture'));
    const edge = boundsOf(black, pick, folder, `edge${i}`, withPictures ? undefined : straight);
    return { edge, ink: withPictures ? boundsOf(plain, pick, folder, `ink${i}`, straight) : edge };
  });
  const slips = boundsOf(plain, (page) => page.parts.find(({ role }) => role === 'slip'), folder, 'slip', straight);
  const pages = document.pages.map((page, index): PageTruth => {
    const size = sizes[index] ?? page;
    const whole = { x: 0, y: 0, width: size.width, height: size.height };
    const labels = labelsOf(page).map((part, i) =>
      labelTruth(page, part, { edge: measured[i]?.edge[index], ink: measured[i]?.ink[index], page: whole }),
    );
    const slip = slips[index];
    const slipBox = slip && (page.skew === undefined ? slip : askew(slip, whole, page.skew).box);
    return { page: index + 1, kind: page.kind, ...size, labels, ...(slipBox ? { slip: slipBox } : {}) };
  });
  return { pdf, pages };
}

/** Builds a layout's documents into `into`. */
export async function build(layout: Layout, half: Half, into: string): Promise<string[]> {
  const done: string[] = [];
  for (const document of layout.documents()) {
    const folder = mkdtempSync(join(tmpdir(), 'foreign-'));
    try {
      const { pdf, pages } = truthOf(document, folder);
      const truth: Truth = { producer: document.producer, layout: layout.name, half, pages };
      mkdirSync(into, { recursive: true });
      copyFileSync(pdf, join(into, `${document.name}${extname(pdf)}`));
      const json = await prettier.format(JSON.stringify(truth), { parser: 'json', printWidth: 140 });
      writeFileSync(join(into, `${document.name}.json`), json);
      done.push(document.name);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }
  return done;
}
