import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { existsSync } from 'node:fs';
import { it } from 'vitest';

/** General-purpose programs that the product doesn't use, and the Debian package of each. */
const PACKAGES = {
  zbarimg: 'zbar-tools',
  dmtxread: 'dmtx-utils',
  zint: 'zint',
  pdftoppm: 'poppler-utils',
  pdfinfo: 'poppler-utils',
  pdftotext: 'poppler-utils',
  pdftocairo: 'poppler-utils',
  gs: 'ghostscript',
  qpdf: 'qpdf',
  convert: 'imagemagick',
  python3: 'python3',
} as const;
export type OutsideTool = keyof typeof PACKAGES;

/** The whole path of a tool; undefined where it isn't installed. */
export function outsideTool(name: OutsideTool): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  return folders.map((folder) => join(folder, name)).find((path) => existsSync(path));
}

const required = process.env['SLIPYARD_OUTSIDE'] === 'required';

/**
 * A check that needs outside tools. Where one is absent the check is skipped by name, or fails when SLIPYARD_OUTSIDE is
 * `required`; the skip reporter prints which and how many.
 */
export function outsideCheck(name: string, tools: readonly OutsideTool[], check: () => void | Promise<void>): void {
  const absent = tools.filter((tool) => outsideTool(tool) === undefined);
  const needs = absent.map((tool) => `${tool}, Debian package ${PACKAGES[tool]}`).join('; ');
  if (absent.length === 0) it(name, check);
  else if (required) {
    it(name, () => {
      throw new Error(`An outside tool is absent: ${needs}.`);
    });
  } else it.skip(`${name} (absent: ${needs})`, check);
}

/** Runs a tool and gives its standard output. Throws with its words when it fails. */
export function runTool(name: OutsideTool, args: readonly string[], input?: Uint8Array): Buffer {
  const path = outsideTool(name);
  if (path === undefined) throw new Error(`${name} is absent`);
  return execFileSync(path, args, { input, maxBuffer: 256 * 1024 * 1024, stdio: ['pipe', 'pipe', 'pipe'] });
}

/** As `runTool`, for tools that answer "nothing found" by their exit code. */
export function tryTool(name: OutsideTool, args: readonly string[]): { code: number | null; out: Buffer } {
  const path = outsideTool(name);
  if (path === undefined) throw new Error(`${name} is absent`);
  const { status, stdout } = spawnSync(path, args, { maxBuffer: 64 * 1024 * 1024 });
  return { code: status, out: stdout };
}

/** A new folder under the system's temporary folder, gone when `use` ends. */
export async function inTempFolder<T>(use: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'slipyard-outside-'));
  try {
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const bytesOf = (path: string): Uint8Array => new Uint8Array(readFileSync(path));
