import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Box } from '../../src/geometry/box.js';
import { inTempFolder, runTool, tryTool } from './tools.js';

/** A picture of black (0) and white (255) pixels, row by row from the top. */
export interface Dots {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
  readonly dpi: number;
}

/** Rasterisers that the product doesn't use. */
export const RASTERISERS = ['pdftoppm', 'gs'] as const;
export type Rasteriser = (typeof RASTERISERS)[number];

/** Reads binary PBM and PGM (netpbm's own format pages); grey is cut at half. */
function readPnm(bytes: Buffer, dpi: number): Dots {
  const header = /^(P[45])\s+(?:#.*\n)*(\d+)\s+(\d+)\s(?:(?<=P4[^]*)|(\d+)\s)/.exec(bytes.subarray(0, 200).toString('latin1'));
  const [all, kind] = header ?? [];
  if (all === undefined || !header) throw new Error('not a binary PBM or PGM');
  const [width, height] = [Number(header[2]), Number(header[3])];
  const body = bytes.subarray(all.length);
  const data = new Uint8Array(width * height);
  const stride = Math.ceil(width / 8);
  if (kind === 'P5') for (let at = 0; at < data.length; at++) data[at] = (body[at] ?? 255) < 128 ? 0 : 255;
  else {
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) data[y * width + x] = ((body[y * stride + (x >> 3)] ?? 0) >> (7 - (x & 7))) & 1 ? 0 : 255;
  }
  return { width, height, data, dpi };
}

/** The pages of a PDF with these numbers (from 1) as dots, each at true size. */
export async function rasterisedOnly(pdf: Uint8Array, dpi: number, numbers: readonly number[]): Promise<ReadonlyMap<number, Dots>> {
  return inTempFolder((folder) => {
    const input = join(folder, 'in.pdf');
    writeFileSync(input, pdf);
    return new Map([...new Set(numbers)].map((number) => [number, pageByPoppler(input, folder, number, ['-r', String(dpi)], dpi)]));
  });
}

function pageByPoppler(input: string, folder: string, number: number, size: readonly string[], dpi: number): Dots {
  const [page, output] = [String(number), join(folder, `page-${number}`)];
  runTool('pdftoppm', [...size, '-gray', '-aa', 'no', '-aaVector', 'no', '-f', page, '-l', page, '-singlefile', input, output]);
  return readPnm(readFileSync(`${output}.pgm`), dpi);
}

/**
 * Every page of a PDF as dots. `fit`: the whole page is fitted to a page of so many dots, as a print dialogue's "fit to
 * page" does; without it pages come at true size.
 */
export async function rasterisedPages(
  tool: Rasteriser,
  pdf: Uint8Array,
  dpi: number,
  fit?: { readonly width: number; readonly height: number },
): Promise<readonly Dots[]> {
  return inTempFolder((folder) => {
    const input = join(folder, 'in.pdf');
    writeFileSync(input, pdf);
    const pages = Number(/Pages:\s+(\d+)/.exec(runTool('pdfinfo', [input]).toString())?.[1] ?? 0);
    return Array.from({ length: pages }, (_, i) => {
      const page = String(i + 1);
      const output = join(folder, `page-${page}`);
      if (tool === 'pdftoppm') {
        return pageByPoppler(
          input,
          folder,
          i + 1,
          fit ? ['-scale-to-x', String(fit.width), '-scale-to-y', '-1'] : ['-r', String(dpi)],
          dpi,
        );
      }
      const size = fit ? ['-dPDFFitPage', '-dFIXEDMEDIA', `-g${fit.width}x${fit.height}`] : [];
      const common = [
        '-q',
        '-dNOPAUSE',
        '-dBATCH',
        '-dSAFER',
        '-sDEVICE=pnggray',
        '-dTextAlphaBits=1',
        '-dGraphicsAlphaBits=1',
        `-r${dpi}`,
      ];
      runTool('gs', [
        ...common.map((each) => each.replace('pnggray', 'pgmraw')),
        ...size,
        `-dFirstPage=${page}`,
        `-dLastPage=${page}`,
        `-sOutputFile=${output}.pgm`,
        input,
      ]);
      return readPnm(readFileSync(`${output}.pgm`), dpi);
    });
  });
}

/** The part of a page in `box` (pt, y down), with a white border of `border` dots. */
export function cut(page: Dots, box: Box, border = 20): Dots {
  const k = page.dpi / 72;
  const [x0, y0] = [Math.max(0, Math.floor(box.x * k)), Math.max(0, Math.floor(box.y * k))];
  const [x1, y1] = [Math.min(page.width, Math.ceil((box.x + box.width) * k)), Math.min(page.height, Math.ceil((box.y + box.height) * k))];
  const [width, height] = [x1 - x0 + 2 * border, y1 - y0 + 2 * border];
  const data = new Uint8Array(width * height).fill(255);
  for (let y = y0; y < y1; y++) data.set(page.data.subarray(y * page.width + x0, y * page.width + x1), (y - y0 + border) * width + border);
  return { width, height, data, dpi: page.dpi };
}

/** A page turned clockwise by a quarter. */
export function turnedRight({ width, height, data, dpi }: Dots): Dots {
  const turned = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) turned[x * height + (height - 1 - y)] = data[y * width + x] ?? 255;
  return { width: height, height: width, data: turned, dpi };
}

const pgm = ({ width, height, data }: Dots): Buffer => Buffer.concat([Buffer.from(`P5\n${width} ${height}\n255\n`), data]);

/** What zbar reads on a picture, as hex of the bytes: linear codes and QR. */
export async function zbarCodes(picture: Dots): Promise<readonly { readonly type: string; readonly bytes: string }[]> {
  return inTempFolder((folder) => {
    const path = join(folder, 'in.pgm');
    writeFileSync(path, pgm(picture));
    // Exit code 4: nothing found.
    const { code, out } = tryTool('zbarimg', ['--quiet', '--nodbus', '--xml', '-Sqrcode.binary', path]);
    if (code !== 0 && code !== 4) throw new Error(`zbarimg ended with ${String(code)}`);
    const symbols = [...out.toString('utf8').matchAll(/<symbol type='([^']+)'[^>]*>\s*<data([^>]*)><!\[CDATA\[([^]*?)\]\]><\/data>/g)];
    return symbols.map(([, type = '', attributes = '', data = '']) => ({
      type,
      bytes: Buffer.from(data, attributes.includes("format='base64'") ? 'base64' : 'latin1').toString('hex'),
    }));
  });
}

/** What libdmtx reads on a picture of one Data Matrix, as hex; FNC1 in later places as GS. Undefined when it reads none. */
export async function dmtxCode(picture: Dots, gs1: boolean): Promise<string | undefined> {
  return inTempFolder((folder) => {
    const path = join(folder, 'in.pgm');
    writeFileSync(path, pgm(picture));
    const { out } = tryTool('dmtxread', ['-N1', '-m5000', ...(gs1 ? ['-G29'] : []), path]);
    return out.length === 0 ? undefined : out.toString('hex').replace(gs1 ? /^1d/ : /^$/, '');
  });
}
