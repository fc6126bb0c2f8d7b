import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import type { Box } from '../../src/geometry/box.js';
import { dotsPerPt, gridOf } from '../../src/geometry/grid.js';
import { PLAIN_PRINTER } from '../../src/geometry/printer.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { ROOT } from '../house/tree.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';
import { pipelineOf, run, temporaryFolder, write } from './inbox.js';

/** The pages of a PWG raster file, as PWG 5102.4 packs them; 0 burned, 255 paper. */
function unpacked(file: Buffer): { width: number; height: number; data: Uint8Array }[] {
  expect(file.toString('latin1', 0, 4)).toBe('RaS2');
  const pages: { width: number; height: number; data: Uint8Array }[] = [];
  for (let at = 4; at < file.length;) {
    const [width, height, bytes] = [372, 376, 392].map((field) => file.readUInt32BE(at + field)) as [number, number, number];
    at += 1796;
    const data = new Uint8Array(width * height).fill(255);
    for (let y = 0; y < height;) {
      const lines = (file[at++] ?? 0) + 1;
      const line: number[] = [];
      while (line.length < bytes) {
        const count = file[at++] ?? 0;
        if (count === 128) while (line.length < bytes) line.push(0);
        else if (count > 128) for (let left = 257 - count; left > 0; left--) line.push(file[at++] ?? 0);
        else {
          const value = file[at++] ?? 0;
          for (let left = count + 1; left > 0; left--) line.push(value);
        }
      }
      for (let copy = 0; copy < lines; copy++, y++) {
        for (let x = 0; x < width; x++) if (((line[x >> 3] ?? 0) & (128 >> (x & 7))) !== 0) data[y * width + x] = 0;
      }
    }
    pages.push({ width, height, data });
  }
  return pages;
}

const PRINTER = { ...PLAIN_PRINTER, output: 'pwg-raster' } as const;

it('prints the very dots that were proved, in the PDF and in the PWG raster, and numbers in dots too', async () => {
  const folder = temporaryFolder();
  const layouts = ['page-4x6-full-bleed', 'label-then-slip'];
  const bytes = await Promise.all(layouts.map(sampleBytes));
  bytes.forEach((each, index) => write(join(folder, `inbox/order ${index + 1}.pdf`), each));
  const { value: recipe } = loadRecipe('any-page', ROOT);
  if (!recipe) throw new Error('any-page has mistakes');
  const channels = [{ name: 'all', files: ['inbox/*.pdf'], recipe }];
  const { end } = await run(pipelineOf(folder, {}, { channels, printer: PRINTER }), { worker: {} });
  expect(end.kind).toBe('finished');

  const proved = await Promise.all(
    bytes.map((each) => processDocument({ bytes: each, shownName: 'order', recipe, media: '4x6in', grid: '203dpi', printer: PRINTER })),
  );
  const items = proved.flatMap((document) => document.items.filter(({ state }) => state.kind === 'ready'));
  expect(items.map(({ role }) => role)).toEqual(['label', 'label', 'slip']);
  const stack = await openPdf(readFileSync(join(folder, 'out/print/stack-4x6in.pdf')), { as: 'output' });
  if ('refused' in stack) throw new Error(stack.refused.message);
  const raster = unpacked(readFileSync(join(folder, 'out/print/stack-4x6in.pwg')));
  expect([stack.pageCount, raster.length]).toEqual([3, 3]);
  let numbered = 0;
  for (const [index, item] of items.entries()) {
    const page = stack.page(index + 1).render({ x: 0, y: 0, width: 288, height: 432 }, dotsPerPt(gridOf('203dpi')));
    expect(page.data.every((value) => value === 0 || value === 255)).toBe(true);
    expect(Buffer.compare(page.data, raster[index]?.data ?? new Uint8Array()), 'PDF and raster').toBe(0);
    const { numberBox } = item;
    if (numberBox) numbered += white(page, numberBox);
    expect(createHash('sha256').update(page.data).digest('hex'), item.id).toBe(item.picture);
  }
  expect(numbered).toBeGreaterThan(20);
  stack.close();
});

/** Makes a box (pt) white and gives how many dots were burned there. */
function white({ width, data, pixelsPerPt: k }: GreyRaster, box: Box): number {
  let burned = 0;
  for (let y = Math.floor(box.y * k); y < Math.ceil((box.y + box.height) * k); y++) {
    for (let x = Math.floor(box.x * k); x < Math.ceil((box.x + box.width) * k); x++) {
      if (data[y * width + x] === 0) burned += 1;
      data[y * width + x] = 255;
    }
  }
  return burned;
}

async function sampleBytes(name: string): Promise<Uint8Array> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(`no layout ${name}`);
  return (await sample(layout, 'vector', 0)).bytes;
}
