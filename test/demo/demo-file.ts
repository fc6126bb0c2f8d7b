import { createHash } from 'node:crypto';
import { zipOf } from '../faults/inputs/zips.js';
import { layout, type Layout, type LayoutPage } from '../samples/layout.js';
import { sample, type Kind, type QuarterTurn } from '../samples/sample.js';

/** What must become of one document. */
export interface DemoDocument {
  /** `channel/file`, or `channel/file.zip/entry`. */
  readonly path: string;
  /** `role state`, `role state reason` of each item, sorted; what a label leaves of its page isn't counted. */
  readonly ends: readonly string[];
  /** Digests of the codes that its printed labels must carry, as run.json tells them, sorted. */
  readonly codes: readonly string[];
  /** What is wrong with it, in plain words. */
  readonly fault?: string;
}

/** A file as a channel hands it over. */
export interface DemoFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly documents: readonly DemoDocument[];
}

/** What is wrong with a planted fault, and how its one item ends. */
export interface Planted {
  readonly fault: string;
  readonly ends: string;
}

export const document = (name: string, pages: () => readonly LayoutPage[], traits: Layout['traits'] = []): Layout =>
  layout({ name, about: name, traits, pages });

/** A drawn document: every label and slip on it must be ready, unless it is a planted fault. */
export async function file(path: string, made: Layout, kind: Kind = 'vector', turn: QuarterTurn = 0, planted?: Planted): Promise<DemoFile> {
  const { bytes, fileName, expected } = await sample(made, kind, turn);
  const full = `${path}${fileName.slice(fileName.lastIndexOf('.'))}`;
  if (planted) return plantedFile(full, bytes, planted);
  const ends = expected.pages.flatMap((page) => [...page.labels.map(({ role }) => `${role} ready`), ...page.slips.map(() => 'slip ready')]);
  const codes = expected.pages.flatMap((page) => page.labels.flatMap((label) => label.codes.map(digestOf)));
  return { path: full, bytes, documents: [{ path: full, ends: ends.sort(), codes: codes.sort() }] };
}

/** The same with customs forms behind its labels, which must be ready too; each has one Code 128 code that says `number`. */
export const withForms = ({ documents, ...made }: DemoFile, count: number, number: string): DemoFile => ({
  ...made,
  documents: documents.map((each) => ({
    ...each,
    ends: [...each.ends, ...Array.from({ length: count }, () => 'customs-form ready')].sort(),
    codes: [
      ...each.codes,
      ...Array.from({ length: count }, () => digestOf({ identifier: ']C0', bytes: Buffer.from(number).toString('hex') })),
    ].sort(),
  })),
});

export const plantedFile = (path: string, bytes: Uint8Array, { fault, ends }: Planted): DemoFile => ({
  path,
  bytes,
  documents: [{ path, ends: [ends], codes: [], fault }],
});

/** The files in one ZIP. */
export const zipped = (path: string, files: readonly DemoFile[]): DemoFile => ({
  path,
  bytes: zipOf(files.map((each) => ({ name: each.path, data: each.bytes }))),
  documents: files.flatMap(({ documents }) => documents.map((each) => ({ ...each, path: `${path}/${each.path}` }))),
});

const digestOf = ({ identifier, bytes }: { readonly identifier: string; readonly bytes: string }): string =>
  createHash('sha256').update(identifier).update(Buffer.from(bytes, 'hex')).digest('hex');
