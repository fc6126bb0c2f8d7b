import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** The checkout's top folder. */
export const ROOT = join(import.meta.dirname, '..', '..');

const GENERATED = new Set(['node_modules', 'dist', 'demo', '.git', 'coverage']);

/** Every file of the checkout that isn't generated, with `/`, relative to `ROOT`, sorted. `under`: `src`, `test/samples` …; `` is all. */
export function filesUnder(under: string): readonly string[] {
  const found: string[] = [];
  const walk = (folder: string): void => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = join(folder, entry.name);
      // test/demo is ours; only the generated demo/ at the top is not.
      const top = folder === ROOT;
      if (entry.isDirectory()) {
        if (!(top && (GENERATED.has(entry.name) || entry.name.startsWith('.slipyard')))) walk(path);
      } else if (entry.isFile() && !(top && entry.name.endsWith('.tgz'))) found.push(relative(ROOT, path).split(sep).join('/'));
    }
  };
  walk(join(ROOT, under));
  return found.sort();
}

export const textOf = (path: string): string => readFileSync(join(ROOT, path), 'utf8');
export const sources = (): readonly string[] => filesUnder('src').filter((path) => path.endsWith('.ts'));

/** A file that a person reads and edits: not a picture, a font or a tarball. */
export const isText = (path: string): boolean => /(?:\.(?:ts|js|mjs|cjs|json|ya?ml|md|txt|out|csv|svg)|\/run|^\.[a-z]+)$/.test(path);
