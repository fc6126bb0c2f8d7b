import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFObjectCopier,
  PDFPageLeaf,
  ParseSpeeds,
  type PDFContext,
  type PDFFont,
  type PDFObject,
  type PDFRef,
} from '../reading/pdf-library.js';
import type { Box } from '../geometry/box.js';
import type { Grid } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import type { Cell } from './impose.js';
import { joinLayers } from './layers.js';
import { cm, flip, num } from './operators.js';
import { addPage } from './output.js';
import { formOfPage } from './page-form.js';
import { compose } from '../geometry/placement.js';
import { askForTrueSize, PdfStreamWriter } from './pdf-stream-writer.js';
import { stampOperators, type Stamp } from './stamp.js';
import { stampDots, stampPicture, type StampDots } from './stamp-dots.js';
import { embedFace } from './text-face.js';

/** One page of a stack. */
export interface StackPage {
  /** Which pressed document it comes from: what `load` is asked for. */
  readonly part: number;
  /** Page of that document, from 1. */
  readonly page: number;
  readonly stamp: Stamp | undefined;
}

export interface Stack {
  /** In the order of the stack. */
  readonly pages: readonly StackPage[];
  /** The media that the parts were pressed for. */
  readonly media: Media;
  /** Of pages that are dots: their grid; numbers are set in dots, too. Imposed pages are never dots. */
  readonly dots?: Grid | undefined;
  /** For imposed stacks. */
  readonly imposed: Imposed | undefined;
}

/** Pages on larger sheets. */
export interface Imposed {
  readonly sheet: Media;
  /** One for each page. */
  readonly cells: readonly Cell[];
  /** What is drawn black on a sheet beside its pages: cut marks, pt, y down; left out: nothing. */
  readonly marks?: ((pages: readonly Cell[]) => readonly Box[]) | undefined;
}

/** Gives the bytes of a pressed document; each is asked for once and forgotten after. */
export type LoadPart = (part: number) => Uint8Array | Promise<Uint8Array>;

/** Told for each page of the stack, by its index from 0, when it has its place in the document. */
export type OnPlaced = (index: number) => void;

/**
 * Joins pressed pages into one PDF, in order, stamps their numbers and lays them on sheets. Pages are copied, never drawn
 * again. The bytes come in chunks, so that memory does not grow with the stack; the same stack gives the same bytes.
 * @throws when a part is not what the press wrote (a bug: parts are the press's own)
 */
export async function* stackChunks(load: LoadPart, stack: Stack, onPlaced?: OnPlaced): AsyncGenerator<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const { context, catalog } = document;
  const { dots } = stack;
  const inDotsOf = dots && { grid: dots, numbers: await numbersInDots(stack, dots) };
  const face = !inDotsOf && stack.pages.some((page) => page.stamp) ? await embedFace(document) : undefined;
  const writer = new PdfStreamWriter(context);
  const layers: PDFDict[] = [];
  const refs: PDFRef[] = [];
  const root = context.trailerInfo.Root as PDFRef;
  const treeRef = catalog.get(PDFName.of('Pages')) as PDFRef;
  const tree = catalog.Pages();
  // Both are written last: they list what the parts bring.
  context.delete(root);
  context.delete(treeRef);
  for (const [part, indexes] of pagesByPart(stack.pages)) {
    const source = await openPart(await load(part));
    const copier = PDFObjectCopier.for(source.context, context);
    const properties: unknown = source.catalog.lookup(PDFName.of('OCProperties'));
    if (properties instanceof PDFDict) layers.push(copier.copy(properties));
    const forms = new Map<number, PDFRef>();
    for (const index of indexes) {
      const page = at(stack.pages, index);
      const leaf = source.getPage(page.page - 1).node;
      if (stack.imposed) {
        const form = forms.get(page.page) ?? formOfPage(leaf, [0, 0, stack.media.width, stack.media.height], context, copier);
        forms.set(page.page, form);
        refs[index] = form;
      } else {
        const stamp = inDotsOf ? inDots(inDotsOf.numbers.get(index), stack.media, inDotsOf.grid, context) : inType(page, stack.media, face);
        refs[index] = context.register(copiedPage(leaf, copier, treeRef, document, stamp));
      }
    }
    yield* writer.flushObjects();
  }
  context.assign(root, catalog);
  context.assign(treeRef, tree);
  if (stack.imposed) addSheets(document, stack, stack.imposed, refs, face, onPlaced);
  else {
    for (const [index, ref] of refs.entries()) {
      tree.pushLeafNode(ref);
      onPlaced?.(index);
    }
  }
  const joined = joinLayers(layers, context);
  if (joined) catalog.set(PDFName.of('OCProperties'), joined);
  askForTrueSize(catalog, context);
  await face?.embed();
  yield* writer.end(root);
}

/** `stackChunks` in one piece. */
export async function joinStack(load: LoadPart, stack: Stack): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of stackChunks(load, stack)) chunks.push(chunk);
  return Buffer.concat(chunks);
}

/** Indexes of the pages of each part, parts in the order in which the stack first needs them. */
function pagesByPart(pages: readonly StackPage[]): Map<number, number[]> {
  const parts = new Map<number, number[]>();
  pages.forEach((page, index) => {
    const known = parts.get(page.part);
    if (known) known.push(index);
    else parts.set(page.part, [index]);
  });
  return parts;
}

const openPart = (bytes: Uint8Array): Promise<PDFDocument> =>
  PDFDocument.load(bytes, { parseSpeed: ParseSpeeds.Fastest, updateMetadata: false });

function stampOf(page: StackPage, media: Media, face: PDFFont | undefined): string | undefined {
  return page.stamp && face ? stampOperators(page.stamp, media.height, face, STAMP_NAME) : undefined;
}

const STAMP_NAME = 'N';

/** What is drawn over a copied page, and the one resource that it needs. */
interface Over {
  readonly operators: string;
  readonly kind: 'Font' | 'XObject';
  readonly ref: PDFRef;
}

function inType(page: StackPage, media: Media, face: PDFFont | undefined): Over | undefined {
  const operators = stampOf(page, media, face);
  return operators !== undefined && face ? { operators, kind: 'Font', ref: face.ref } : undefined;
}

function inDots(stamp: StampDots | undefined, media: Media, grid: Grid, context: PDFContext): Over | undefined {
  return stamp && { ...stampPicture(stamp, context, media, grid, STAMP_NAME), kind: 'XObject' };
}

/** The numbers of a stack as dots, by the page's index. */
export async function numbersInDots({ pages, media }: Stack, grid: Grid): Promise<ReadonlyMap<number, StampDots>> {
  const stamped = pages.flatMap(({ stamp }, index) => (stamp ? [{ stamp, index }] : []));
  const drawn = await stampDots(
    stamped.map(({ stamp }) => stamp),
    media,
    grid,
  );
  return new Map(drawn.map((each, at) => [stamped[at]?.index ?? -1, each]));
}

function copiedPage(
  leaf: PDFPageLeaf,
  copier: PDFObjectCopier,
  parent: PDFRef,
  document: PDFDocument,
  over: Over | undefined,
): PDFPageLeaf {
  const { context } = document;
  const page = PDFPageLeaf.fromMapWithContext(new Map<PDFName, PDFObject>(), context);
  page.set(PDFName.of('Type'), PDFName.of('Page'));
  page.set(PDFName.of('Parent'), parent);
  for (const key of ['MediaBox', 'CropBox', 'Contents']) {
    const value = leaf.get(PDFName.of(key));
    if (value) page.set(PDFName.of(key), copier.copy(value));
  }
  // A page that is used twice gets its own resources each time: only one of them may have the number's font.
  const resources = context.obj({});
  for (const [key, value] of leaf.Resources()?.entries() ?? []) resources.set(key, copier.copy(value));
  page.set(PDFName.of('Resources'), resources);
  if (over) {
    const named = context.obj({ [STAMP_NAME]: over.ref });
    const own: unknown = resources.lookup(PDFName.of(over.kind));
    if (own instanceof PDFDict) for (const [key, value] of own.entries()) named.set(key, value);
    resources.set(PDFName.of(over.kind), named);
    const contents = PDFArray.withContext(context);
    const drawn = page.get(PDFName.of('Contents'));
    if (drawn) contents.push(drawn);
    contents.push(context.register(context.flateStream(over.operators)));
    page.set(PDFName.of('Contents'), contents);
  }
  return page;
}

function addSheets(
  document: PDFDocument,
  stack: Stack,
  { sheet, cells, marks }: Imposed,
  forms: readonly PDFRef[],
  face: PDFFont | undefined,
  onPlaced: OnPlaced | undefined,
): void {
  const pagesOf = new Map<number, number[]>();
  cells.forEach((cell, index) => {
    pagesOf.set(cell.sheet, [...(pagesOf.get(cell.sheet) ?? []), index]);
  });
  for (const indexes of pagesOf.values()) {
    const drawn = indexes.map((index, position) => {
      const map = compose(compose(flip(stack.media.height), at(cells, index).matrix), flip(sheet.height));
      const stamp = stampOf(at(stack.pages, index), stack.media, face);
      const { width, height } = stack.media;
      return `q\n${cm(map)}\n0 0 ${num(width)} ${num(height)} re W n\n/P${position} Do\n${stamp ?? ''}\nQ`;
    });
    const beside = marks?.(indexes.map((index) => at(cells, index))) ?? [];
    drawn.push(
      ...beside.map(({ x, y, width, height }) => `0 g ${num(x)} ${num(sheet.height - y - height)} ${num(width)} ${num(height)} re f`),
    );
    const names = Object.fromEntries(indexes.map((index, position) => [`P${position}`, at(forms, index)]));
    addPage(document, sheet, drawn.join('\n'), { XObject: names, ...(face && { Font: { [STAMP_NAME]: face.ref } }) });
    if (onPlaced) indexes.forEach(onPlaced);
  }
}

function at<T>(list: readonly T[], index: number): T {
  const value = list[index];
  if (value === undefined) throw new Error(`stack: nothing at ${index}`);
  return value;
}
