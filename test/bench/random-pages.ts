/**
 * Draws many random pages by programs that are not this project's, and counts what the search makes of them:
 * `npx tsx test/bench/random-pages.ts FOLDER [first seed] [how many]`. Pages that are in the folder already are only counted. Needs chromium,
 * rsvg-convert, pdftoppm, qpdf.
 */
import { appendFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { inkBounds } from '../samples/foreign/kit/measure.js';
import type { Page, Part, Truth } from '../samples/foreign/kit/page.js';
import { produce } from '../samples/foreign/kit/produce.js';
import { run } from '../samples/foreign/kit/run.js';
import type { Box } from '../samples/foreign/kit/shapes.js';
import { tallyOf, type Tally } from '../samples/foreign/tally.js';
import { drawDirect, shapesOf, truthOf } from '../samples/random-pages/draw.js';
import { randomPage, type RandomPage } from '../samples/random-pages/page.js';
import { labelPixels } from '../samples/random-pages/pixels.js';

const [folder = '', first = '1', count = '100'] = process.argv.slice(2);
if (folder === '') throw new Error('Name a folder for the pages.');
mkdirSync(folder, { recursive: true });
const seeds = Array.from({ length: Number(count) }, (_, index) => Number(first) + index);

interface Stored {
  readonly producer: string;
  readonly made: Readonly<Record<string, string>>;
  readonly truth: Truth;
}
const pdfOf = (seed: number): string => join(folder, `${seed}.pdf`);
const truthFile = (seed: number): string => join(folder, `${seed}.json`);

/** Scans are drawn here, of the rest two in five each by a browser and by cairo. */
function producerOf({ seed, scan }: RandomPage): 'chromium' | 'cairo' | 'direct' {
  if (scan) return 'direct';
  return (['chromium', 'cairo', 'direct', 'chromium', 'cairo'] as const)[seed % 5] ?? 'direct';
}

function store(page: RandomPage, producer: string, truth: Truth): void {
  const stored: Stored = { producer, made: { ...page.made, producer }, truth };
  writeFileSync(truthFile(page.seed), JSON.stringify(stored));
}

/** Pages of one program with the same fonts, in one run. The ink of labels without a line is measured on the same pages with nothing but labels. */
async function drawTogether(pages: readonly RandomPage[], producer: 'chromium' | 'cairo'): Promise<void> {
  const own = mkdtempSync(join(tmpdir(), 'random-'));
  try {
    const made: Page[] = [];
    for (const page of pages) {
      const parts: Part[] = [{ role: 'other', shapes: page.others }];
      for (const [index, label] of page.labels.entries()) {
        const file = join(own, `${page.seed}-${index}.png`);
        if (label.picture) {
          const { width, height, data, bilevel } = await labelPixels(label, page.fonts);
          const png = sharp(data, { raw: { width, height, channels: 1 } }).toColourspace('b-w');
          await png.png(bilevel ? { palette: true, colours: 2 } : {}).toFile(file);
        }
        parts.push({ role: 'label', shapes: shapesOf(label, file) });
      }
      made.push({ kind: page.kind, width: page.width, height: page.height, rotate: page.rotate, parts });
    }
    const document = { name: 'random', producer, pages: made, fonts: pages[0]?.fonts ?? {} };
    const pdf = produce(document, () => true, own, 'whole');
    const upright = { ...document, pages: made.map((page) => ({ ...page, rotate: 0 as const })) };
    const labels = produce(upright, ({ role }) => role === 'label', own, 'labels');
    run('qpdf', ['--split-pages=1', pdf, join(own, 'page-%d.pdf')]);
    const digits = String(pages.length).length;
    for (const [index, page] of pages.entries()) {
      const measured = page.labels.length > 0 ? inkBounds(labels, index + 1) : undefined;
      checkLine(page, measured);
      // A browser sets its lines on whole pixels.
      const lined = page.labels.map((label) => (measured && !label.picture && label.edge !== 'page' ? { ...label, box: measured } : label));
      const truth = truthOf({ ...page, labels: lined }, () => measured ?? ({ x: 0, y: 0, width: 0, height: 0 } satisfies Box));
      writeFileSync(pdfOf(page.seed), readFileSync(join(own, `page-${String(index + 1).padStart(digits, '0')}.pdf`)));
      store(page, producer, { producer: 'cairo', layout: 'random', half: 'tuning', pages: [truth] });
    }
  } finally {
    rmSync(own, { recursive: true, force: true });
  }
}

/** A label with a line has no ink beyond it. */
function checkLine(page: RandomPage, ink: Box | undefined): void {
  const [label] = page.labels;
  if (!label?.box || label.picture || !ink) return;
  const { x, y, width, height } = label.box;
  const over = Math.max(x - ink.x, y - ink.y, ink.x + ink.width - x - width, ink.y + ink.height - y - height);
  if (over > 1.5) console.error(`seed ${page.seed}: ink ${over.toFixed(1)} pt outside the line`);
}

async function drawMissing(): Promise<void> {
  const groups = new Map<string, RandomPage[]>();
  for (const seed of seeds) {
    if (existsSync(truthFile(seed))) continue;
    const page = randomPage(seed);
    const producer = producerOf(page);
    if (producer === 'direct') {
      const { bytes, truth } = await drawDirect(page, page.scan ? page.fonts : 'outlines');
      writeFileSync(pdfOf(seed), bytes);
      store(page, producer, truth);
      continue;
    }
    const key = `${producer} ${JSON.stringify(page.fonts)}`;
    groups.set(key, [...(groups.get(key) ?? []), page]);
  }
  for (const [key, pages] of groups) await drawTogether(pages, key.startsWith('chromium') ? 'chromium' : 'cairo');
}

const endOf = ({ labels, found, wrong, lost, held }: Tally): string =>
  labels === 0
    ? wrong > 0
      ? 'mistaken'
      : 'kept'
    : wrong > 0
      ? 'wrong'
      : lost > 0
        ? 'lost'
        : held > 0
          ? 'held'
          : found > 0
            ? 'found'
            : 'nothing';

await drawMissing();
const counts = new Map<string, Map<string, number>>();
const results = join(folder, 'results.txt');
writeFileSync(results, '');
for (const seed of seeds) {
  const { made, truth } = JSON.parse(readFileSync(truthFile(seed), 'utf8')) as Stored;
  const tally = await tallyOf({ file: String(seed), bytes: new Uint8Array(readFileSync(pdfOf(seed))), truth });
  const end = endOf(tally);
  appendFileSync(results, `${seed} ${end} ${JSON.stringify(made)} ${tally.notes.join(' ')}\n`);
  for (const each of ['all', ...Object.entries(made).map(([name, value]) => (name === 'order' ? '' : `${name}: ${value}`))]) {
    if (each === '') continue;
    const of = counts.get(each) ?? new Map<string, number>();
    of.set(end, (of.get(end) ?? 0) + 1);
    counts.set(each, of);
  }
}
for (const [name, ends] of [...counts].sort(([a], [b]) => (a === 'all' ? -1 : b === 'all' ? 1 : a < b ? -1 : 1))) {
  const all = [...ends].filter(([end]) => end !== 'kept' && end !== 'mistaken').reduce((sum, [, each]) => sum + each, 0);
  const share = all === 0 ? '' : ` ${((100 * (ends.get('found') ?? 0)) / all).toFixed(0)} % found`;
  console.log(
    `${name}:${share} ${[...ends]
      .sort()
      .map(([end, each]) => `${each} ${end}`)
      .join(', ')}`,
  );
}
