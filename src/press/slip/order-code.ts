import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Box } from '../../geometry/box.js';
import { dotsPerPt, type Grid } from '../../geometry/grid.js';
import { ptToMm } from '../../geometry/length.js';
import { code128Modules, QUIET_MODULES } from '../code128.js';

/** The order number as a code. Everything in whole dots of the grid, from the code's own top left bar or module, y down. */
export interface OrderCode {
  readonly kind: 'code128' | 'qr';
  readonly width: number;
  readonly height: number;
  /** Clear space: at the left and right, and above and below. */
  readonly quiet: { readonly x: number; readonly y: number };
  readonly marks: readonly Box[];
}

/** What a code may take, pt, its clear space at the right and above included; that at the left and below is the page's margin. */
export interface CodeRoom {
  readonly width: number;
  readonly height: number;
}

/** Narrowest bar or module, mm: what scanners at a bench read (common practice); and the widest of each that is of use. */
const NARROWEST = 0.25;
const WIDEST = 0.38;
const WIDEST_QR = 0.5;

/** Bars of at least this height, pt, and this share of their width (common practice: 15 %, from memory). */
const BAR_HEIGHT = 24;
const BAR_SHARE = 0.15;

/** Clear space of QR, modules on every side: ISO/IEC 18004 (handbook section 4.4). */
const QR_QUIET = 4;

/**
 * A Code 128 that fits, at the widest bars that do; undefined for characters that it can't hold and for what doesn't fit at a readable width.
 */
export function linearCode(text: string, grid: Grid, room: CodeRoom): OrderCode | undefined {
  const modules = code128Modules(text);
  if (!modules) return undefined;
  const perMm = dotsPerPt(grid) / ptToMm(1);
  const total = modules.reduce((sum, width) => sum + width, 0);
  const most = Math.floor((room.width * dotsPerPt(grid)) / (total + QUIET_MODULES));
  const dots = Math.min(most, Math.floor(WIDEST * perMm));
  // A head's 8 dots/mm and a driver's 203 dpi both take 2 dots for 0.25 mm.
  if (dots < Math.max(2, Math.ceil(NARROWEST * perMm - 0.01))) return undefined;
  const height = Math.ceil(Math.max(BAR_HEIGHT * dotsPerPt(grid), BAR_SHARE * total * dots));
  if (height > room.height * dotsPerPt(grid)) return undefined;
  const marks: Box[] = [];
  let x = 0;
  modules.forEach((width, index) => {
    if (index % 2 === 0) marks.push({ x: x * dots, y: 0, width: width * dots, height });
    x += width;
  });
  return { kind: 'code128', width: total * dots, height, quiet: { x: QUIET_MODULES * dots, y: 0 }, marks };
}

/** A QR code that fits, correction level M; undefined where the text is too long for one or for the room. */
export async function qrCode(text: string, grid: Grid, room: CodeRoom): Promise<OrderCode | undefined> {
  const { data, width, height } = await qrModules(text);
  if (width === 0) return undefined;
  const perMm = dotsPerPt(grid) / ptToMm(1);
  const most = Math.floor((Math.min(room.width, room.height) * dotsPerPt(grid)) / (width + QR_QUIET));
  const dots = Math.min(most, Math.max(2, Math.round(WIDEST_QR * perMm)));
  if (dots < Math.max(2, Math.ceil(NARROWEST * perMm - 0.01))) return undefined;
  const marks: Box[] = [];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width;) {
      let end = x;
      while (end < width && data[y * width + end] === 0) end += 1;
      if (end > x) marks.push({ x: x * dots, y: y * dots, width: (end - x) * dots, height: dots });
      x = end + 1;
    }
  }
  return { kind: 'qr', width: width * dots, height: height * dots, quiet: { x: QR_QUIET * dots, y: QR_QUIET * dots }, marks };
}

interface Modules {
  /** 0 is dark. */
  readonly data: Uint8ClampedArray | Uint8Array;
  readonly width: number;
  readonly height: number;
}

let ready: Promise<typeof import('zxing-wasm/writer')> | undefined;

async function qrModules(text: string): Promise<Modules> {
  ready ??= loadWriter();
  const { writeBarcode } = await ready;
  const { symbol, error } = await writeBarcode(text, { format: 'QRCode', options: 'ecLevel=M', addQuietZones: false });
  return error === '' ? symbol : { data: new Uint8Array(0), width: 0, height: 0 };
}

async function loadWriter(): Promise<typeof import('zxing-wasm/writer')> {
  const writer = await import('zxing-wasm/writer');
  const file = createRequire(import.meta.url).resolve('zxing-wasm/writer/zxing_writer.wasm');
  await writer.prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(readFileSync(file)).buffer }, fireImmediately: true });
  return writer;
}
