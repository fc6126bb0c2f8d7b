import type { Grid } from './grid.js';

export const UNITS = ['mm', 'in', 'pt', 'dots'] as const;
export type Unit = (typeof UNITS)[number];

/** A length as somebody wrote it, with its unit. */
export interface Length {
  readonly value: number;
  readonly unit: Unit;
}

/** 1 in = 25.4 mm exactly; 1 pt = 1/72 in (ISO 32000). */
export const PT_PER_IN = 72;
export const MM_PER_IN = 25.4;

export const mmToPt = (mm: number): number => (mm / MM_PER_IN) * PT_PER_IN;
export const ptToMm = (pt: number): number => (pt / PT_PER_IN) * MM_PER_IN;
export const inToPt = (inches: number): number => inches * PT_PER_IN;
export const ptToIn = (pt: number): number => pt / PT_PER_IN;

/** Reads `4in`, `10mm`, `12pt`, `24dots`, `0.5in`, `-2mm`; undefined for anything else (a bare number has no unit). */
export function parseLength(text: string): Length | undefined {
  const match = /^(-?\d+(?:\.\d+)?|-?\.\d+)\s*(mm|in|pt|dots)$/.exec(text.trim());
  if (!match) return undefined;
  return { value: Number(match[1]), unit: match[2] as Unit };
}

/** A length in pt; `dots` are dots of `grid`. */
export function lengthToPt(length: Length, grid: Grid): number {
  switch (length.unit) {
    case 'mm':
      return mmToPt(length.value);
    case 'in':
      return inToPt(length.value);
    case 'pt':
      return length.value;
    case 'dots':
      return (length.value / grid.dpi) * PT_PER_IN;
  }
}

/** `4.00×6.00 in`, for people. */
export function formatSize(widthPt: number, heightPt: number): string {
  return `${ptToIn(widthPt).toFixed(2)}×${ptToIn(heightPt).toFixed(2)} in`;
}
