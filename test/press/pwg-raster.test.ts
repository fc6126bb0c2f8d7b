import { describe, expect, it } from 'vitest';
import { gridOf, wholeDots, type GridName } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { pwgRaster, type Dots } from '../../src/press/pwg-raster.js';

const HEADER = 1796;

function page(width: number, height: number, burned: (x: number, y: number) => boolean): Dots {
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data[y * width + x] = burned(x, y) ? 0 : 255;
  return { width, height, data };
}

async function written(pages: readonly Dots[], grid: GridName = '203dpi', media = '4x6in'): Promise<Buffer> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of pwgRaster(pages, pages.length, mediaNamed(media), gridOf(grid))) chunks.push(chunk);
  return Buffer.concat(chunks);
}

/** Reads the packed lines of a page of `width` × `height` dots at `at`: its dots, and where it ends. */
function unpacked(bytes: Buffer, at: number, width: number, height: number): { readonly data: Uint8Array; readonly end: number } {
  const length = Math.ceil(width / 8);
  const lines: Buffer[] = [];
  while (lines.length < height) {
    const times = bytes.readUInt8(at) + 1;
    at += 1;
    const line: number[] = [];
    while (line.length < length) {
      const code = bytes.readUInt8(at);
      at += 1;
      expect(code).not.toBe(128);
      const count = code < 128 ? code + 1 : 257 - code;
      for (let i = 0; i < count; i++) line.push(bytes.readUInt8(code < 128 ? at : at + i));
      at += code < 128 ? 1 : count;
    }
    expect(line).toHaveLength(length);
    for (let i = 0; i < times; i++) lines.push(Buffer.from(line));
  }
  expect(lines).toHaveLength(height);
  const data = new Uint8Array(width * height);
  lines.forEach((line, y) => {
    for (let x = 0; x < width; x++) data[y * width + x] = line.readUInt8(x >> 3) & (0x80 >> (x & 7)) ? 0 : 255;
  });
  return { data, end: at };
}

describe('PWG raster', () => {
  // Each is a case of its own for the packing: nothing, everything, no two bytes or lines alike, a byte alone between pairs, long runs, a last byte in part.
  let state = 7;
  const noise = (): boolean => ((state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff) >> 16) % 2 === 0;
  const pages: Readonly<Record<string, Dots>> = {
    white: page(812, 1218, () => false),
    black: page(812, 1218, () => true),
    noise: page(812, 1218, noise),
    'a byte alone between pairs': page(803, 300, (x) => (x >> 3) % 3 === 2),
    'one dot in each line': page(817, 600, (x, y) => x === y),
    'more equal lines than one count holds': page(64, 700, (x, y) => (y < 257 ? x > 7 : x > 9)),
    'a run as long as one count holds': page(128 * 8, 4, () => true),
    'a longer one': page(129 * 8, 4, () => true),
    'a stretch as long as one count holds': page(128 * 8, 4, (x) => ((x >> 3) & (1 << (x & 7))) !== 0),
    'a longer stretch': page(129 * 8, 4, (x) => ((x >> 3) & (1 << (x & 7))) !== 0),
    'a single dot': page(1, 1, () => true),
  };

  it.each(Object.entries(pages))('gives back every dot: %s', async (_, dots) => {
    const bytes = await written([dots]);
    const { data, end } = unpacked(bytes, 4 + HEADER, dots.width, dots.height);
    expect(Buffer.compare(data, dots.data)).toBe(0);
    expect(end).toBe(bytes.length);
  });

  it('leaves the bits beyond the last dot of a line white', async () => {
    const bytes = await written([page(9, 1, () => true)]);
    expect([...bytes.subarray(4 + HEADER)]).toEqual([0, 255, 0xff, 0x80]);
  });

  it('says equal lines once, and is small for a label', async () => {
    expect((await written([pages['white'] as Dots])).length).toBeLessThan(4 + HEADER + 16);
  });

  it('puts page behind page, each with its header, and the number of all in each', async () => {
    const [first, second] = [page(812, 1218, (x) => x < 100), page(812, 1218, (_, y) => y < 100)];
    const bytes = await written([first, second]);
    const one = unpacked(bytes, 4 + HEADER, 812, 1218);
    expect(bytes.toString('latin1', one.end, one.end + 9)).toBe('PwgRaster');
    expect([4, one.end].map((at) => bytes.readUInt32BE(at + 452))).toEqual([2, 2]);
    const two = unpacked(bytes, one.end + HEADER, 812, 1218);
    expect([Buffer.compare(one.data, first.data), Buffer.compare(two.data, second.data), two.end]).toEqual([0, 0, bytes.length]);
  });

  it('gives a page as soon as it has it', async () => {
    const asked: number[] = [];
    function* pagesOf(): Generator<Dots> {
      for (const number of [1, 2, 3]) {
        asked.push(number);
        yield page(8, 8, () => false);
      }
    }
    const stream = pwgRaster(pagesOf(), 3, mediaNamed('4x6in'), gridOf('203dpi'));
    const parts: Uint8Array[] = [];
    for (let i = 0; i < 3; i++) {
      const next = await stream.next();
      if (next.done !== true) parts.push(next.value);
    }
    expect(asked).toEqual([1]);
    expect(parts.map((part) => part.length).slice(0, 2)).toEqual([4, HEADER]);
  });

  it.each([
    ['203dpi', '4x6in', 203, 'na_index-4x6_4x6in', [288, 432]],
    ['300dpi', '100x150mm', 300, 'om_small-photo_100x150mm', [283, 425]],
    ['600dpi', 'a6', 600, 'iso_a6_105x148mm', [298, 420]],
    ['203dpi', '4x8in', 203, 'custom_4x8in_4x8in', [288, 576]],
    ['300dpi', '100x200mm', 300, 'custom_100x200mm_100x200mm', [283, 567]],
    ['203dpi', 'oe_4x7-label_4x7in', 203, 'oe_4x7-label_4x7in', [288, 504]],
  ] as const)('names grid and media: %s on %s', async (grid, name, dpi, pwg, points) => {
    const media = mediaNamed(name);
    const [width, height] = [wholeDots(media.width, gridOf(grid)), wholeDots(media.height, gridOf(grid))];
    const bytes = await written([page(width, height, () => false)], grid, name);
    const number = (at: number): number => bytes.readUInt32BE(4 + at);
    expect(bytes.toString('latin1', 0, 4)).toBe('RaS2');
    expect([number(276), number(280)]).toEqual([dpi, dpi]);
    expect([number(352), number(356)]).toEqual(points);
    expect([number(372), number(376), number(392)]).toEqual([width, height, Math.ceil(width / 8)]);
    expect(bytes.toString('latin1', 4 + 1732, 4 + 1732 + 64).replace(/\0+$/, '')).toBe(pwg);
  });

  it.each(['8dpmm', '12dpmm', '24dpmm'] as const)('is refused for %s, which the format can’t name', async (grid) => {
    await expect(written([], grid)).rejects.toThrow(grid);
  });

  it('tells when the number of pages is another than was said', async () => {
    const few = async (): Promise<void> => {
      for await (const chunk of pwgRaster([], 1, mediaNamed('4x6in'), gridOf('203dpi'))) expect(chunk).toHaveLength(4);
    };
    await expect(few()).rejects.toThrow('0 pages instead of 1');
  });
});
