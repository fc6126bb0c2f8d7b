import type { GreyRaster } from '../../src/reading/source.js';
import { runTool } from './tools.js';

/** Draws the modules of a linear symbol as black bars on white: `dots` pixels a module, a quiet zone of 10 modules at each end. */
export function drawModules(modules: string, dots: number, height = 80): GreyRaster {
  const quiet = 10 * dots;
  const width = modules.length * dots + 2 * quiet;
  const data = new Uint8Array(width * height).fill(255);
  for (let y = 8; y < height - 8; y++) {
    for (let x = 0; x < modules.length * dots; x++) {
      if (modules[Math.floor(x / dots)] === '1') data[y * width + quiet + x] = 0;
    }
  }
  return { width, height, data, pixelsPerPt: 203 / 72, origin: { x: 0, y: 0 } };
}

/** Draws rows of modules of a matrix symbol, `dots` pixels a module, with a quiet zone of `quiet` modules around. */
export function drawMatrix(rows: readonly string[], dots: number, quiet: number, rowHeight = 1): GreyRaster {
  const columns = rows[0]?.length ?? 0;
  const width = (columns + 2 * quiet) * dots;
  const height = (rows.length * rowHeight + 2 * quiet) * dots;
  const data = new Uint8Array(width * height).fill(255);
  for (let y = 0; y < rows.length * rowHeight * dots; y++) {
    for (let x = 0; x < columns * dots; x++) {
      if (rows[Math.floor(y / dots / rowHeight)]?.[Math.floor(x / dots)] === '1') data[(y + quiet * dots) * width + quiet * dots + x] = 0;
    }
  }
  return { width, height, data, pixelsPerPt: 203 / 72, origin: { x: 0, y: 0 } };
}

/**
 * The modules that zint draws, row by row, from its hexadecimal dump. Every row is padded to whole hex digits with 0:
 * for linear symbols the row ends with its last bar, for matrix symbols `columns` says where.
 */
export function zintModules(args: readonly string[], columns?: number): readonly string[] {
  const rows = runTool('zint', [...args, '--dump'])
    .toString('latin1')
    .trim()
    .split('\n');
  return rows.map((row) => {
    const bits = row
      .replaceAll(' ', '')
      .split('')
      .map((digit) => Number.parseInt(digit, 16).toString(2).padStart(4, '0'))
      .join('');
    return columns === undefined ? bits.slice(0, bits.lastIndexOf('1') + 1) : bits.slice(0, columns);
  });
}
