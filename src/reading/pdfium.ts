import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { init, type WrappedPdfiumModule } from '@embedpdf/pdfium';

/** PDFium as one warm engine a thread. Everything here is synchronous once `pdfium()` has resolved. */
export type Pdfium = WrappedPdfiumModule;

/** What is asked of the engine for each letter and each object, without the library's wrappers, which cost more than the call. Yes and no are 1 and 0. */
export interface DirectCalls {
  FPDFText_GetUnicode(text: number, index: number): number;
  FPDFText_GetCharBox(text: number, index: number, left: number, right: number, bottom: number, top: number): number;
  FPDFText_GetLooseCharBox(text: number, index: number, box: number): number;
  FPDFText_GetFontSize(text: number, index: number): number;
  FPDFText_GetMatrix(text: number, index: number, matrix: number): number;
  FPDFPageObj_GetType(object: number): number;
  FPDFPageObj_GetBounds(object: number, left: number, bottom: number, right: number, top: number): number;
  FPDFPage_GetObject(page: number, index: number): number;
}

export const direct = ({ pdfium: { wasmExports } }: Pdfium): DirectCalls => wasmExports as typeof wasmExports & DirectCalls;

let engine: Promise<Pdfium> | undefined;

/** The thread's engine; started on the first call (about 0.1 s), the same one ever after. */
export function pdfium(): Promise<Pdfium> {
  engine ??= (async () => {
    const file = createRequire(import.meta.url).resolve('@embedpdf/pdfium/pdfium.wasm');
    const started = await init({ wasmBinary: new Uint8Array(readFileSync(file)).buffer });
    started.PDFiumExt_Init();
    return started;
  })();
  return engine;
}

/** Borrows `size` bytes of the engine's memory for the length of `use`. */
export function withMemory<T>(engine: Pdfium, size: number, use: (pointer: number) => T): T {
  const pointer = allocate(engine, size);
  try {
    return use(pointer);
  } finally {
    free(engine, pointer);
  }
}

/** Bytes of the engine's memory that the caller must `free`. Throws RangeError when the engine has no more. */
export function allocate(engine: Pdfium, size: number): number {
  const pointer = engine.pdfium.wasmExports.malloc(size);
  if (pointer === 0) throw new RangeError(`the PDF engine has no ${Math.round(size / 1e6)} MB left`);
  return pointer;
}

export function free(engine: Pdfium, pointer: number): void {
  engine.pdfium.wasmExports.free(pointer);
}

/** Reads `count` 32-bit floats from the engine's memory. */
export const floats = (engine: Pdfium, pointer: number, count: number): number[] => numbers(engine.pdfium.HEAPF32, pointer >> 2, count);

/** Reads `count` 64-bit floats from the engine's memory. */
export const doubles = (engine: Pdfium, pointer: number, count: number): number[] => numbers(engine.pdfium.HEAPF64, pointer >> 3, count);

function numbers(memory: Float32Array | Float64Array, from: number, count: number): number[] {
  const read: number[] = [];
  for (let at = from; at < from + count; at++) read.push(memory[at] as number);
  return read;
}
