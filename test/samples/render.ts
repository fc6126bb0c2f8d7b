import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { init } from '@embedpdf/pdfium';
import sharp from 'sharp';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import type { ExpectedCode } from './code-art.js';
import type { Rect } from './drawing.js';

const require = createRequire(import.meta.url);
const wasm = (path: string): ArrayBuffer => {
  const bytes = readFileSync(require.resolve(path));
  return bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
};

let loading: ReturnType<typeof init> | undefined;
async function pdfium(): ReturnType<typeof init> {
  loading ??= init({ wasmBinary: wasm('@embedpdf/pdfium/pdfium.wasm') }).then((module) => {
    module.PDFiumExt_Init();
    return module;
  });
  return loading;
}

/** Grey pixels of a page. */
export interface Shot {
  readonly width: number;
  readonly height: number;
  /** Pixels per pt. */
  readonly perPt: number;
  readonly data: Uint8Array;
}

/** What a person would see of each page of a sample: a PDF drawn by PDFium, a picture decoded and turned by its EXIF. */
export async function shots(bytes: Uint8Array, perPt: number, visibleWidth: number): Promise<readonly Shot[]> {
  if (Buffer.from(bytes.subarray(0, 5)).toString('latin1') !== '%PDF-') {
    const { data, info } = await sharp(bytes)
      .autoOrient()
      .flatten({ background: 'white' })
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    return [{ width: info.width, height: info.height, perPt: info.width / visibleWidth, data: new Uint8Array(data) }];
  }
  const lib = await pdfium();
  const heap = lib.pdfium.wasmExports.malloc(bytes.length);
  lib.pdfium.HEAPU8.set(bytes, heap);
  const doc = lib.FPDF_LoadMemDocument(heap, bytes.length, '');
  if (doc === 0) throw new Error('the sample does not open');
  try {
    return Array.from({ length: lib.FPDF_GetPageCount(doc) }, (_, index) => {
      const page = lib.FPDF_LoadPage(doc, index);
      const width = Math.round(lib.FPDF_GetPageWidthF(page) * perPt);
      const height = Math.round(lib.FPDF_GetPageHeightF(page) * perPt);
      const bitmap = lib.FPDFBitmap_Create(width, height, 0);
      lib.FPDFBitmap_FillRect(bitmap, 0, 0, width, height, 0xffffffff);
      lib.FPDF_RenderPageBitmap(bitmap, page, 0, 0, width, height, 0, 0x01);
      const buffer = lib.FPDFBitmap_GetBuffer(bitmap);
      const data = new Uint8Array(width * height);
      // Samples are grey: one channel tells all.
      for (let i = 0; i < data.length; i++) data[i] = lib.pdfium.HEAPU8[buffer + 4 * i] ?? 255;
      lib.FPDFBitmap_Destroy(bitmap);
      lib.FPDF_ClosePage(page);
      return { width, height, perPt, data };
    });
  } finally {
    lib.FPDF_CloseDocument(doc);
    lib.pdfium.wasmExports.free(heap);
  }
}

/** A part of a shot; `box` in pt, cut at the page's edges. */
export function cut(shot: Shot, box: Rect): Shot {
  const x0 = Math.max(0, Math.floor(box.x * shot.perPt));
  const y0 = Math.max(0, Math.floor(box.y * shot.perPt));
  const x1 = Math.min(shot.width, Math.ceil((box.x + box.width) * shot.perPt));
  const y1 = Math.min(shot.height, Math.ceil((box.y + box.height) * shot.perPt));
  const data = new Uint8Array((x1 - x0) * (y1 - y0));
  for (let y = y0; y < y1; y++) data.set(shot.data.subarray(y * shot.width + x0, y * shot.width + x1), (y - y0) * (x1 - x0));
  return { width: x1 - x0, height: y1 - y0, perPt: shot.perPt, data };
}

/** Bounds in pt of what is darker than `below`; undefined for a blank page. */
export function darkBounds(shot: Shot, below: number): Rect | undefined {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -1, -1];
  for (let y = 0; y < shot.height; y++) {
    for (let x = 0; x < shot.width; x++) {
      if ((shot.data[y * shot.width + x] ?? 255) >= below) continue;
      x0 = Math.min(x0, x);
      x1 = Math.max(x1, x + 1);
      y0 = Math.min(y0, y);
      y1 = Math.max(y1, y + 1);
    }
  }
  if (x1 < 0) return undefined;
  return { x: x0 / shot.perPt, y: y0 / shot.perPt, width: (x1 - x0) / shot.perPt, height: (y1 - y0) / shot.perPt };
}

const NAMES = {
  Code128: 'Code 128',
  ITF: 'ITF',
  Code39: 'Code 39',
  PDF417: 'PDF417',
  DataMatrix: 'Data Matrix',
  QRCode: 'QR',
  Aztec: 'Aztec',
  MaxiCode: 'MaxiCode',
} as const;

/** The codes of a shot, by zxing. */
export async function read(shot: Shot, format: ExpectedCode['symbology']): Promise<readonly ExpectedCode[]> {
  prepareZXingModule({ overrides: { wasmBinary: wasm('zxing-wasm/reader/zxing_reader.wasm') } });
  const only = (Object.keys(NAMES) as (keyof typeof NAMES)[]).filter((key) => NAMES[key] === format);
  const header = Buffer.from(`P5\n${shot.width} ${shot.height}\n255\n`);
  const found = await readBarcodes(new Uint8Array(Buffer.concat([header, shot.data])), { formats: only, tryHarder: true });
  return found.map((code) => ({
    symbology: format,
    identifier: code.symbologyIdentifier,
    bytes: Buffer.from(code.bytes).toString('hex'),
  }));
}
