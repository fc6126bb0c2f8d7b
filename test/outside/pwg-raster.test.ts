import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { gridOf, wholeDots, type GridName } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { pwgRaster, type Dots } from '../../src/press/pwg-raster.js';
import { libcupsPages } from './libcups.js';
import { inTempFolder, outsideCheck, runTool } from './tools.js';

async function written(pages: readonly Dots[], media: string, grid: GridName): Promise<Buffer> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of pwgRaster(pages, pages.length, mediaNamed(media), gridOf(grid))) chunks.push(chunk);
  return Buffer.concat(chunks);
}

/** A page with bars, a field of noise, white and black: long runs, none, and equal lines. */
function page(media: string, grid: GridName, seed: number): Dots {
  const { width: wide, height: high } = mediaNamed(media);
  const [width, height] = [wholeDots(wide, gridOf(grid)), wholeDots(high, gridOf(grid))];
  const data = new Uint8Array(width * height).fill(255);
  let state = seed;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
      const part = Math.floor((8 * y) / height);
      const burned = part === 1 ? (x / 3) % 5 < 2 : part === 3 ? (state >> 16) % 2 === 0 : part === 5;
      if (burned) data[y * width + x] = 0;
    }
  }
  return { width, height, data };
}

describe('PWG raster (PWG 5102.4) by programs that share no code with ours', () => {
  for (const [media, grid, pageSizeName] of [
    ['4x6in', '203dpi', 'na_index-4x6_4x6in'],
    ['4x8in', '203dpi', 'custom_4x8in_4x8in'],
    ['100x150mm', '300dpi', 'om_small-photo_100x150mm'],
    ['a6', '600dpi', 'iso_a6_105x148mm'],
  ] as const) {
    outsideCheck(`libcups reads every dot and says the same of the page: ${media} at ${grid}`, ['python3', 'gs'], async () => {
      const pages = [page(media, grid, 1), page(media, grid, 2)];
      const read = await libcupsPages(await written(pages, media, grid));
      const { dpi } = gridOf(grid);
      expect(read.map(({ data, ...rest }) => ({ ...rest, dots: data.length }))).toEqual(
        pages.map(({ width, height, data }) => ({
          mediaClass: 'PwgRaster',
          resolution: [dpi, dpi],
          pageSize: [Math.round(mediaNamed(media).width), Math.round(mediaNamed(media).height)],
          width,
          height,
          bitsPerPixel: 1,
          colourSpace: 3,
          totalPages: 2,
          pageSizeName,
          dots: data.length,
        })),
      );
      for (const [index, { data }] of read.entries()) expect(Buffer.compare(data, (pages[index] as Dots).data)).toBe(0);
    });
  }

  /** A page as Ghostscript's own device writes it. */
  const byGhostscript = (media: string, grid: GridName, postscript: string): Promise<Buffer> =>
    inTempFolder((folder) => {
      const { width, height } = mediaNamed(media);
      const output = join(folder, 'out.pwg');
      writeFileSync(join(folder, 'in.ps'), postscript);
      const kind = ['-sDEVICE=pwgraster', '-sMediaClass=PwgRaster', '-dcupsBitsPerColor=1', '-dcupsColorSpace=3'];
      const size = [`-r${String(gridOf(grid).dpi)}`, `-dDEVICEWIDTHPOINTS=${String(width)}`, `-dDEVICEHEIGHTPOINTS=${String(height)}`];
      runTool('gs', [
        '-q',
        '-dNOPAUSE',
        '-dBATCH',
        '-dSAFER',
        ...kind,
        ...size,
        '-dFIXEDMEDIA',
        `-sOutputFile=${output}`,
        join(folder, 'in.ps'),
      ]);
      return readFileSync(output);
    });

  /** Words of the header that differ on purpose (the media's name comes after the last one compared): Ghostscript isn't told the number of pages and leaves transforms and image box out. */
  const OURS = new Set([452, 456, 460, 472, 476]);

  for (const [media, grid] of [
    ['4x6in', '203dpi'],
    ['4x8in', '300dpi'],
    ['a5', '203dpi'],
  ] as const) {
    outsideCheck(`the header is Ghostscript's word for word: ${media} at ${grid}`, ['gs'], async () => {
      const theirs = await byGhostscript(media, grid, 'showpage');
      const [width, height] = [theirs.readUInt32BE(4 + 372), theirs.readUInt32BE(4 + 376)];
      const { width: wide, height: high } = mediaNamed(media);
      // Ghostscript rounds where a page ends in part of a dot; ours is never a dot too large (handbook section 1.3).
      expect(Math.abs(width - wholeDots(wide, gridOf(grid)))).toBeLessThanOrEqual(1);
      expect(Math.abs(height - wholeDots(high, gridOf(grid)))).toBeLessThanOrEqual(1);
      const ours = await written([{ width, height, data: new Uint8Array(width * height).fill(255) }], media, grid);
      expect(ours.toString('latin1', 0, 4)).toBe(theirs.toString('latin1', 0, 4));
      const differing = Array.from({ length: 1732 / 4 }, (_, index) => 4 * index).filter(
        (at) => ours.readUInt32BE(4 + at) !== theirs.readUInt32BE(4 + at),
      );
      expect(differing.filter((at) => !OURS.has(at))).toEqual([]);
    });
  }

  outsideCheck("Ghostscript's packing and ours mean the same dots", ['gs', 'python3'], async () => {
    const theirs = await byGhostscript('4x6in', '203dpi', '0 0 144 432 rectfill 200 100 1 50 rectfill 250 300 30 30 rectfill showpage');
    const [drawn] = await libcupsPages(theirs);
    if (!drawn) throw new Error('no page');
    const { width, height, data } = drawn;
    // As many burned dots as were painted, so that an empty page would not do.
    expect(data.filter((value) => value === 0).length).toBeGreaterThan(406 * 1218);
    const [again] = await libcupsPages(await written([{ width, height, data }], '4x6in', '203dpi'));
    expect(Buffer.compare(again?.data ?? new Uint8Array(), data)).toBe(0);
  });
});
