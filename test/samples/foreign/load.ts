import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Truth } from './kit/page.js';

export type { LabelTruth, PageTruth, Truth } from './kit/page.js';
export const HALVES = [
  'tuning',
  'unseen',
  'fresh',
  'second-sight',
  'third-sight',
  'fourth-sight',
  'fifth-sight',
  'sixth-sight',
  'seventh-sight',
] as const;
export type Half = (typeof HALVES)[number];

export interface ForeignFile {
  /** `t01-browser-slip-1.pdf`; some are pictures by themselves, `w08-picture-files-1.png` */
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly truth: Truth;
}

/** The stored documents of one half, by name. */
export function foreignFiles(half: Half): readonly ForeignFile[] {
  const folder = join(import.meta.dirname, half);
  return readdirSync(folder)
    .filter((name) => /\.(?:pdf|png)$/.test(name))
    .sort()
    .map((file) => ({
      file,
      bytes: new Uint8Array(readFileSync(join(folder, file))),
      truth: JSON.parse(readFileSync(join(folder, file.replace(/\.\w+$/, '.json')), 'utf8')) as Truth,
    }));
}

/** All parts: `tuning` may be looked at while the locator is tuned, `unseen` only when it is reported; `fresh` was made after both had been used. */
export const foreignCorpus = (): readonly ForeignFile[] => HALVES.flatMap((half) => foreignFiles(half));
