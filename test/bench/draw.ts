import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { contentFor } from '../samples/content.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { A4, label, layout, LETTER, other, slip, type Kind, type Layout, type LayoutPage } from '../samples/layout.js';
import { packingSlip, receipt } from '../samples/other-pages.js';
import { QUARTER_TURNS, sample } from '../samples/sample.js';

export const GROUPS = ['vector', 'raster'] as const;
export type Group = (typeof GROUPS)[number];

interface Shape {
  readonly group: Group;
  readonly kind: Kind;
  readonly traits: Layout['traits'];
  readonly pages: (seed: string, variant: number) => readonly LayoutPage[];
}

const sideways: Shape['pages'] = (seed, variant) => {
  const content = contentFor(seed, variant, 'line');
  return [{ ...LETTER, regions: [label(tidewick(content), 90, 54, 90), other(receipt(540, 300, content), 36, 420)] }];
};
const labelPage: Shape['pages'] = (seed, variant) => [
  { width: 288, height: 432, regions: [label(tidewick(contentFor(seed, variant, 'line')), 0, 0)] },
];
const twoOnA4: Shape['pages'] = (seed, variant) => [
  {
    ...A4,
    regions: [
      label(tidewick(contentFor(`${seed}a`, variant, 'line')), 82, 66, 90),
      label(tidewick(contentFor(`${seed}b`, variant, 'line')), 82, 488, 90),
    ],
  },
];
const labelThenSlip: Shape['pages'] = (seed, variant) => {
  const content = contentFor(seed, variant, 'watermark');
  return [
    { ...LETTER, regions: [label(quillhaul(content), 24, 24)] },
    { ...LETTER, regions: [slip(packingSlip(540, 500, content), 36, 36)] },
  ];
};

/** Ten documents as a day brings them; a batch repeats them with other orders. */
const SHAPES: readonly Shape[] = [
  { group: 'vector', kind: 'vector', traits: [], pages: labelPage },
  { group: 'vector', kind: 'vector', traits: [], pages: sideways },
  { group: 'raster', kind: 'bilevel', traits: [], pages: sideways },
  { group: 'vector', kind: 'vector', traits: [], pages: labelThenSlip },
  { group: 'raster', kind: 'bilevel', traits: ['picture-file'], pages: labelPage },
  { group: 'vector', kind: 'vector', traits: [], pages: labelPage },
  { group: 'vector', kind: 'vector', traits: [], pages: twoOnA4 },
  { group: 'raster', kind: 'bilevel', traits: [], pages: labelPage },
  { group: 'vector', kind: 'vector', traits: [], pages: sideways },
  { group: 'raster', kind: 'grey', traits: [], pages: sideways },
];

/** Beyond this many, documents are copies of these with a comment behind their end: as much work, no duplicate. */
const DISTINCT = 500;

/** What the documents come from: drawn again when any of it changes. */
function drawnFrom(): string {
  const hash = createHash('sha256').update(readFileSync(import.meta.filename));
  const samples = join(import.meta.dirname, '..', 'samples');
  const files = readdirSync(samples, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  for (const path of files.map(({ parentPath, name }) => join(parentPath, name)).sort()) hash.update(readFileSync(path));
  return hash.digest('hex').slice(0, 12);
}

/** Draws the documents once into the system's temporary folder, one folder for each group. Returns the folder that holds both. */
export async function drawInbox(documents: number, onDrawn: (done: number) => void): Promise<string> {
  const folder = join(tmpdir(), 'slipyard-bench', `${documents}-${drawnFrom()}`);
  if (existsSync(folder)) return folder;
  const making = `${folder}.part`;
  rmSync(making, { recursive: true, force: true });
  for (const group of GROUPS) mkdirSync(join(making, 'inbox', group), { recursive: true });
  const drawn: { bytes: Uint8Array; ending: string }[] = [];
  for (let i = 0; i < documents; i++) {
    const shape = SHAPES[i % SHAPES.length];
    if (!shape) throw new Error('no shape');
    const { group, kind, traits, pages } = shape;
    const first = drawn[i % DISTINCT];
    if (!first) {
      const name = `bench-${i}`;
      // A turned picture file is turned by its metadata; the other shapes are turned on their page.
      const turn = QUARTER_TURNS[Math.floor(i / SHAPES.length) % 4] ?? 0;
      const drawing = await sample(
        layout({ name, about: 'One document of the bench.', traits, pages: () => pages(name, i % 12) }),
        kind,
        turn,
      );
      drawn.push({ bytes: drawing.bytes, ending: drawing.fileName.split('.').at(-1) ?? 'pdf' });
    }
    const { bytes, ending } = drawn[i % DISTINCT] ?? { bytes: new Uint8Array(), ending: 'pdf' };
    const comment = i < DISTINCT ? Buffer.alloc(0) : Buffer.from(`\n% ${i}\n`);
    writeFileSync(join(making, 'inbox', group, `${String(i).padStart(5, '0')}.${ending}`), Buffer.concat([bytes, comment]));
    onDrawn(i + 1);
  }
  renameSync(making, folder);
  return folder;
}
