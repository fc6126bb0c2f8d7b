import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { prepareZXingModule, readBarcodes, type ReaderOptions, type ReadResult } from 'zxing-wasm/reader';
import { boxFromCorners } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';
import { count } from './counters.js';
import { borrowPicture, copyLines, giveBack, linesOf, type Lines } from './reader-picture.js';
import type { Code, GreyRaster, Point, Symbology } from './source.js';

/** How hard to look. All of it narrows or widens the search; none of it changes what a found code says. */
export interface ReadCodesOptions {
  /** Only these; by default all that are looked for on a page: every one but MaxiCode. */
  readonly symbologies?: readonly Symbology[];
  /** Only codes whose bars stand in a row along x (`level`) or along y (`upright`), in either reading direction; matrix codes take a third of the time. */
  readonly run?: 'level' | 'upright';
  /** Of a `run`: a line of pixels in each so many pt is enough. */
  readonly every?: number;
  /** Another way to tell ink from paper, inverted and smaller copies tried too: several times slower. */
  readonly thorough?: boolean;
}

/** The symbologies whose codes are one row of bars. */
export const LINEAR: readonly Symbology[] = ['Code 128', 'ITF', 'Code 39'];

const FORMATS = {
  'Code 128': 'Code128',
  ITF: 'ITF',
  'Code 39': 'Code39',
  PDF417: 'PDF417',
  'Data Matrix': 'DataMatrix',
  QR: 'QRCode',
  Aztec: 'Aztec',
  MaxiCode: 'MaxiCode',
} as const satisfies Record<Symbology, string>;

const SYMBOLOGY_OF = new Map(Object.entries(FORMATS).map(([symbology, format]) => [format as string, symbology as Symbology]));

/** MaxiCode is read only when cut out alone (the library's own limit): `readMaxiCodes` does that. */
const ON_A_PAGE: readonly Symbology[] = [...LINEAR, 'PDF417', 'Data Matrix', 'QR', 'Aztec'];

/** More codes than this are on no label; the reader stops there. */
const MOST_CODES = 32;

/** Shorter interleaved codes are read out of table rulings and other bars by chance; trade labels use 14 digits. */
const SHORTEST_ITF = 6;

let prepared: Promise<unknown> | undefined;

function prepare(): Promise<unknown> {
  prepared ??= (() => {
    const file = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
    const wasmBinary = new Uint8Array(readFileSync(file)).buffer;
    return prepareZXingModule({ overrides: { wasmBinary }, fireImmediately: true });
  })();
  return prepared;
}

/**
 * Reads the codes in a raster. Corners come back in pt of the source page through the raster's origin and resolution.
 * Never throws for what is on the picture: an unreadable one has no codes.
 */
export async function readCodes(raster: GreyRaster, options: ReadCodesOptions = {}): Promise<readonly Code[]> {
  if (raster.width < 8 || raster.height < 8) return [];
  await prepare();
  count('decodes');
  const symbologies = options.symbologies ?? ON_A_PAGE;
  const reader: ReaderOptions = {
    formats: symbologies.map((each) => FORMATS[each]),
    tryHarder: true,
    tryRotate: options.run === undefined,
    tryInvert: options.thorough === true,
    tryDownscale: options.thorough === true,
    binarizer: options.thorough === true ? 'LocalAverage' : 'FixedThreshold',
    maxNumberOfSymbols: MOST_CODES,
    textMode: 'Plain',
  };
  const lines = linesOf(raster, options.run, options.every ?? 0);
  const picture = borrowPicture(lines.width, lines.height);
  try {
    copyLines(raster, lines, picture.pixels);
    const results = await readBarcodes(picture.bytes, reader);
    return results.flatMap((result) => toCode(result, raster, lines)).sort(byPlace);
  } finally {
    giveBack(picture);
  }
}

function toCode(result: ReadResult, raster: GreyRaster, { turned, every }: Lines): Code[] {
  const symbology = SYMBOLOGY_OF.get(result.format) ?? SYMBOLOGY_OF.get(result.symbology);
  if (!result.isValid || symbology === undefined) return [];
  if (symbology === 'ITF' && result.bytes.length < SHORTEST_ITF) return [];
  const toPt = (p: Point): Point => ({
    x: raster.origin.x + (turned ? p.y * every : p.x) / raster.pixelsPerPt,
    y: raster.origin.y + (turned ? raster.height - p.x : p.y * every) / raster.pixelsPerPt,
  });
  const { topLeft, topRight, bottomRight, bottomLeft } = result.position;
  const corners = [toPt(topLeft), toPt(topRight), toPt(bottomRight), toPt(bottomLeft)] as const;
  const xs = corners.map((p) => p.x);
  const ys = corners.map((p) => p.y);
  return [
    {
      symbology,
      identifier: result.symbologyIdentifier,
      bytes: Buffer.from(result.bytes).toString('hex'),
      corners,
      box: boxFromCorners(Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)),
      turn: quarterTurn(Math.atan2(corners[1].y - corners[0].y, corners[1].x - corners[0].x)),
      ...seenOf(result),
    },
  ];
}

/** What the reader says of a matrix or stacked code beside its content; for others, nothing. */
function seenOf({ symbol, extra }: ReadResult): Pick<Code, 'modules' | 'unusedCorrection'> {
  const unused = /"UEC":(\d(?:\.\d+)?)/.exec(extra)?.[1];
  return {
    ...(symbol.width > 0 && symbol.height > 0 ? { modules: { columns: symbol.width, rows: symbol.height } } : {}),
    ...(unused === undefined ? {} : { unusedCorrection: Number(unused) }),
  };
}

/** The clockwise quarter turn (y down) that an angle in radians is within 10° of. */
function quarterTurn(angle: number): Turn | undefined {
  const degrees = ((angle * 180) / Math.PI + 360) % 360;
  const nearest = Math.round(degrees / 90) * 90;
  return Math.abs(degrees - nearest) <= 10 ? ((nearest % 360) as Turn) : undefined;
}

const byPlace = (a: Code, b: Code): number => a.box.y - b.box.y || a.box.x - b.box.x || (a.bytes < b.bytes ? -1 : 1);
