import { execFileSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesUnder, ROOT, textOf } from '../../house/tree.js';
import { outsideCheck } from '../../outside/tools.js';
import { CARRIERS, TUNING, UNSEEN } from './designs/content.js';
import { inkBounds, pageSizes, renderGrey } from './kit/measure.js';
import { FRESH } from './designs/fresh-words.js';
import { SECOND } from './designs/second-words.js';
import { FIFTH } from './designs/fifth-words.js';
import { FOURTH } from './designs/fourth-words.js';
import { THIRD } from './designs/third-words.js';
import type { ForeignFile, Half, LabelTruth } from './load.js';
import { foreignCorpus, foreignFiles, HALVES } from './load.js';

const pathOf = ({ file, truth }: ForeignFile): string => join(import.meta.dirname, truth.half, file);
const documents = (): readonly ForeignFile[] => foreignCorpus().filter(({ file }) => file.endsWith('.pdf'));
const labelPages = (half: Half) => foreignFiles(half).flatMap(({ truth }) => truth.pages.filter(({ labels }) => labels.length > 0));
/** Layouts with labels and pages with labels; the first three parts have ten and 150. */
const SIZES: Partial<Record<Half, readonly [number, number]>> = {
  'second-sight': [15, 120],
  'third-sight': [16, 110],
  'fourth-sight': [25, 200],
  'fifth-sight': [28, 220],
  'sixth-sight': [60, 150],
  'seventh-sight': [90, 250],
};
const DPI = 150;

interface Names {
  readonly carriers: readonly string[];
  readonly shops: Readonly<Record<string, readonly string[]>>;
  readonly people: Readonly<Record<string, readonly (readonly string[])[]>>;
}

/** Names of the parts whose drawing code is Python: carriers, shops and the first line of each address. */
const WRITTEN_NAMES = ['designs-sixth/j_words.json', 'designs-seventh/r_words.json']
  .map((path) => JSON.parse(textOf(`test/samples/foreign/${path}`)) as Names)
  .flatMap(({ carriers, shops, people }) => [
    ...carriers,
    ...Object.values(shops).flatMap(([name]) => name ?? []),
    ...Object.values(people)
      .flat()
      .flatMap(([name]) => name ?? []),
  ]);

/** Sides of a box along which nothing is printed within 1 pt inside. */
function emptySides(file: ForeignFile, page: number, { box }: LabelTruth): string[] {
  const { width, height, pixels } = renderGrey(pathOf(file), page, DPI);
  const px = (pt: number): number => Math.round((pt * DPI) / 72);
  const near = px(1) + 1;
  const [left, top] = [Math.max(0, px(box.x) - 1), Math.max(0, px(box.y) - 1)];
  const [right, bottom] = [Math.min(width, px(box.x + box.width) + 1), Math.min(height, px(box.y + box.height) + 1)];
  const inked = (x0: number, y0: number, x1: number, y1: number): boolean => {
    for (let y = y0; y < y1; y++) if (pixels.subarray(y * width + x0, y * width + x1).some((value) => value < 220)) return true;
    return false;
  };
  const sides = {
    left: inked(left, top, left + near, bottom),
    right: inked(right - near, top, right, bottom),
    top: inked(left, top, right, top + near),
    bottom: inked(left, bottom - near, right, bottom),
  };
  return Object.entries(sides).flatMap(([side, found]) => (found ? [] : [`${file.file}, page ${page}: ${side}`]));
}

describe('samples of foreign producers', () => {
  it('are whole: each document has its truth, and all stay small', () => {
    for (const half of HALVES) {
      const names = readdirSync(join(import.meta.dirname, half));
      const stems = (end: string): string[] => names.filter((name) => name.endsWith(end)).map((name) => name.slice(0, -end.length));
      expect(stems('.json')).toEqual([...stems('.pdf'), ...stems('.png')].sort());
    }
    const bytes = filesUnder('test/samples/foreign').reduce((sum, path) => sum + statSync(join(ROOT, path)).size, 0);
    expect(bytes).toBeLessThan(40 * 1024 * 1024);
  });

  it.each(HALVES)(
    'part %s has at least ten layouts with labels, 110 label pages of six producers, thirty pages without a label',
    (half) => {
      const [layouts, pages] = SIZES[half] ?? [10, 150];
      const files = foreignFiles(half);
      expect(files.every(({ truth }) => truth.half === half)).toBe(true);
      const withLabels = files.filter(({ truth }) => truth.pages.some(({ labels }) => labels.length > 0));
      expect(new Set(withLabels.map(({ truth }) => truth.layout)).size).toBeGreaterThanOrEqual(layouts);
      expect(new Set(withLabels.map(({ truth }) => truth.producer)).size).toBeGreaterThanOrEqual(6);
      expect(labelPages(half).length).toBeGreaterThanOrEqual(pages);
      const none = files.filter(({ truth }) => truth.layout.endsWith('-none')).flatMap(({ truth }) => truth.pages);
      expect(none.length).toBeGreaterThanOrEqual(30);
      expect(none.flatMap(({ labels }) => labels)).toEqual([]);
      for (const kind of ['invoice', 'advert', 'blank', 'packing-slip', 'customs', 'pick-list', 'other'])
        expect(none.map((page) => page.kind)).toContain(kind);
    },
  );

  it('have every turn and every kind of edge in each part', () => {
    for (const half of HALVES) {
      const labels = labelPages(half).flatMap((page) => page.labels);
      expect(new Set(labels.map(({ turn }) => turn))).toEqual(new Set([0, 90, 180, 270]));
      expect(new Set(labels.map(({ edge }) => edge))).toEqual(new Set(['frame', 'cut', 'picture', 'ink', 'page']));
      expect(labels.filter(({ role }) => role === 'return-label').length).toBeGreaterThanOrEqual(5);
      expect(labels.filter(({ codes }) => codes.length === 0)).toEqual([]);
    }
  });

  it('name boxes that lie on their page', () => {
    const outside = foreignCorpus().flatMap(({ file, truth }) =>
      truth.pages.flatMap(({ page, width, height, labels, slip }) =>
        [...labels.map(({ box }) => box), ...(slip ? [slip] : [])]
          .filter((box) => box.x < -0.3 || box.y < -0.3 || box.x + box.width > width + 0.3 || box.y + box.height > height + 0.3)
          .map(() => `${file}, page ${page}`),
      ),
    );
    expect(outside).toEqual([]);
  });

  it('are unknown to the program and its recipes', () => {
    const words = [
      ...CARRIERS,
      ...WRITTEN_NAMES,
      ...[TUNING, UNSEEN, FRESH, SECOND, THIRD, FOURTH, FIFTH].flatMap((each) => [...each.shops, ...each.people, ...each.marks]),
    ];
    const found = [...filesUnder('src'), ...filesUnder('recipes')].flatMap((path) => {
      const text = textOf(path).toLowerCase();
      return words.filter((word) => text.includes(word.toLowerCase())).map((word) => `${path}: ${word}`);
    });
    expect(found).toEqual([]);
  });

  outsideCheck('have as many pages as their truth, of its sizes', ['pdfinfo'], () => {
    for (const each of documents()) {
      const told = each.truth.pages.map(({ width, height }) => ({ width, height }));
      expect(pageSizes(pathOf(each)), each.file).toEqual(told);
    }
  });

  outsideCheck('are pictures of the pixels that their truth says, where they are no documents', ['convert'], () => {
    const files = foreignCorpus().filter(({ file }) => file.endsWith('.png'));
    expect(files.length).toBeGreaterThanOrEqual(8);
    for (const each of files) {
      const said = execFileSync('convert', [pathOf(each), '-format', '%w %h', 'info:'], { encoding: 'utf8' });
      const [page] = each.truth.pages;
      const sizes = [203, 300].map((dpi) => [page?.width, page?.height].map((pt = 0) => Math.round((pt / 72) * dpi)).join(' '));
      expect(sizes, each.file).toContain(said);
    }
  });

  outsideCheck('have ink at every side of a box, on the first page of each document that lies straight', ['pdftoppm'], () => {
    const checked = documents().flatMap((each) => {
      const page = each.truth.pages.find(({ labels }) =>
        labels.some(({ edge, skew }) => skew === undefined && edge !== 'page' && edge !== 'picture'),
      );
      const label = page?.labels.find(({ edge }) => edge !== 'page' && edge !== 'picture');
      return page && label ? [emptySides(each, page.page, label)] : [];
    });
    expect(checked.length).toBeGreaterThan(20);
    expect(checked.flat()).toEqual([]);
  });

  outsideCheck('would show a box that is 2 mm too large', ['pdftoppm'], () => {
    const [each] = foreignFiles('tuning').filter(({ truth }) => truth.layout === 't02-folded-a4');
    const label = each?.truth.pages[0]?.labels[0];
    if (!each || !label) throw new Error('t02-folded-a4 is absent');
    const { x, y, width, height } = label.box;
    const larger = { ...label, box: { x: x - 6, y: y - 6, width: width + 12, height: height + 12 } };
    expect(emptySides(each, 1, larger)).toHaveLength(4);
  });

  outsideCheck('are blank where the truth says so', ['pdftoppm'], () => {
    const blanks = documents().flatMap((each) =>
      each.truth.pages.filter(({ kind }) => kind === 'blank').map(({ page }) => inkBounds(pathOf(each), page)),
    );
    expect(blanks.length).toBeGreaterThanOrEqual(2 * HALVES.length);
    expect(blanks.filter((each) => each !== undefined)).toEqual([]);
  });
});
