import { PDFArray, PDFDict, PDFDocument, PDFName } from '../../src/reading/pdf-library.js';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { parseMedia } from '../../src/geometry/media.js';
import { imposeCells, type Cell } from '../../src/press/impose.js';
import { pressDocument } from '../../src/press/press-document.js';
import { joinStack, stackChunks, type Stack, type StackPage } from '../../src/press/stack.js';
import { stampSize } from '../../src/press/stamp.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import { inkCentre, shareDifferent, showPage } from './pdfium-page.js';
import { pdfWith, sourceDouble } from './source-double.js';

const media = { name: '4x6in', width: 288, height: 432 };
const grid = gridOf('203dpi');

/** A pressed document whose page n has one square at its own height. */
async function part(heights: readonly number[]): Promise<Uint8Array> {
  const sources = await Promise.all(
    heights.map(async (y) => {
      const bytes = await pdfWith({ mediaBox: [0, 0, 288, 432] }, `0 g 50 ${432 - y} 30 30 re f 20 20 5 50 re f`);
      return PDFDocument.load(bytes, { updateMetadata: false });
    }),
  );
  const sheets = heights.map((_, index) => ({ ...pageSheet(1, 288, 432), id: `p${index + 1}` }));
  const pressed = await Promise.all(
    sources.map(async (pdf, index) => {
      const source = sourceDouble([{ width: 288, height: 432, press: { kind: 'pdf', pdf } }]);
      const sheet = sheets[index];
      return sheet ? (await pressDocument(source, [sheet], media, grid)).bytes : undefined;
    }),
  );
  const joined = await joinStack((index) => pressed[index] ?? new Uint8Array(), {
    pages: pressed.map((_, index) => ({ part: index, page: 1, stamp: undefined })),
    media,
    imposed: undefined,
  });
  return joined;
}

const page = (part: number, number: number, text?: string): StackPage => {
  const size = stampSize('88/88', 9);
  const box = { x: 288 - size.width - 6, y: 432 - size.height - 6, ...size };
  return { part, page: number, stamp: text === undefined ? undefined : { text, fontSize: 9, box } };
};

const show = (bytes: Uint8Array, number: number): ReturnType<typeof showPage> => showPage(bytes, number, 576, 864);

describe('a stack', () => {
  it('has the pages of all parts in the order asked for, each as it was pressed', async () => {
    const parts = [await part([100, 200]), await part([300])];
    const stack: Stack = { pages: [page(1, 1), page(0, 2), page(0, 1), page(0, 2)], media, imposed: undefined };
    const bytes = await joinStack((index) => parts[index] ?? new Uint8Array(), stack);
    expect((await PDFDocument.load(bytes)).getPageCount()).toBe(4);
    for (const [index, { part: from, page: number }] of stack.pages.entries()) {
      const expected = await show(parts[from] ?? new Uint8Array(), number);
      expect(inkCentre(expected, 2).count).toBeGreaterThan(1000);
      expect(shareDifferent(expected, await show(bytes, index + 1), 0)).toBe(0);
    }
  });

  it.each([
    ['as it is', undefined],
    ['two on a sheet', 2],
  ] as const)('tells each page that has its place in it, once: %s', async (_, rows) => {
    const parts = [await part([100, 200]), await part([300])];
    const sheet = { name: 'letter', width: 612, height: 792 };
    const pages = [page(1, 1), page(0, 2), page(0, 1)];
    const cells = imposeCells(3, media, sheet, { columns: 1, rows: rows ?? 1, turn: 90, firstFree: 1 });
    if ('refused' in cells) throw new Error(cells.refused.message);
    const placed: number[] = [];
    const imposed = rows === undefined ? undefined : { sheet, cells };
    const chunks: Uint8Array[] = [];
    for await (const chunk of stackChunks(
      (index) => parts[index] ?? new Uint8Array(),
      { pages, media, imposed },
      (index) => placed.push(index),
    ))
      chunks.push(chunk);
    expect((await PDFDocument.load(Buffer.concat(chunks))).getPageCount()).toBe(rows === undefined ? 3 : 2);
    expect(placed).toEqual([0, 1, 2]);
  });

  it('asks for each part once', async () => {
    const parts = [await part([100, 200]), await part([300])];
    const asked: number[] = [];
    const load = (index: number): Uint8Array => {
      asked.push(index);
      return parts[index] ?? new Uint8Array();
    };
    await joinStack(load, { pages: [page(0, 1), page(1, 1), page(0, 2), page(1, 1)], media, imposed: undefined });
    expect(asked).toEqual([0, 1]);
  });

  it('stamps numbers into their boxes and changes nothing else', async () => {
    const pressed = await part([100]);
    const stack: Stack = { pages: [page(0, 1, '7/41'), page(0, 1), page(0, 1, '41/41')], media, imposed: undefined };
    const bytes = await joinStack(() => pressed, stack);
    const plain = await show(pressed, 1);
    for (const [index, each] of stack.pages.entries()) {
      const drawn = await show(bytes, index + 1);
      const changed: number[] = [];
      drawn.data.forEach((value, at) => {
        if (value !== plain.data[at]) changed.push(at);
      });
      if (!each.stamp) {
        expect(changed).toEqual([]);
        continue;
      }
      const { box } = each.stamp;
      expect(changed.length).toBeGreaterThan(50);
      const outside = changed.filter((at) => {
        const [x, y] = [(at % 576) / 2, Math.floor(at / 576) / 2];
        return x < box.x - 0.5 || x > box.x + box.width || y < box.y - 0.5 || y > box.y + box.height;
      });
      expect(outside).toEqual([]);
    }
  });

  it('asks viewers for true size and says nothing else about itself', async () => {
    const pressed = await part([100]);
    const bytes = await joinStack(() => pressed, { pages: [page(0, 1)], media, imposed: undefined });
    const document = await PDFDocument.load(bytes, { updateMetadata: false });
    const preferences = document.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict);
    expect(preferences.lookup(PDFName.of('PrintScaling'))?.toString()).toBe('/None');
    expect(document.context.trailerInfo.Info).toBeUndefined();
    expect(document.context.lookup(document.context.trailerInfo.ID, PDFArray).size()).toBe(2);
    const leaf = document.getPage(0).node;
    expect(leaf.MediaBox().asRectangle()).toEqual({ x: 0, y: 0, width: 288, height: 432 });
  });

  it('is the same bytes each time, and other bytes for another stack', async () => {
    const pressed = await part([100, 200]);
    const join = (first: number): Promise<Uint8Array> =>
      joinStack(() => pressed, { pages: [page(0, first, '1/2'), page(0, 3 - first, '2/2')], media, imposed: undefined });
    const [one, again, other] = [await join(1), await join(1), await join(2)];
    expect(Buffer.compare(one, again)).toBe(0);
    const id = async (bytes: Uint8Array): Promise<string | undefined> => (await PDFDocument.load(bytes)).context.trailerInfo.ID?.toString();
    expect(await id(other)).not.toBe(await id(one));
  });

  it('hands its bytes on while it works', async () => {
    const pressed = await part([100, 200]);
    const noise = Buffer.from(Array.from({ length: 400_000 }, (_, index) => (Math.imul(index, 2654435761) >>> 13) & 255));
    const large = await PDFDocument.load(pressed, { updateMetadata: false });
    const leaf = large.getPage(0).node;
    const extra = large.context.register(large.context.stream(noise, { Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 1, 1] }));
    leaf.Resources()?.set(PDFName.of('XObject'), large.context.obj({ Extra: extra }));
    const loaded = await large.save({ useObjectStreams: false });
    let asked = 0;
    const chunksBefore: number[] = [];
    let chunks = 0;
    const load = (): Uint8Array => {
      asked += 1;
      chunksBefore.push(chunks);
      return loaded;
    };
    for await (const chunk of stackChunks(load, { pages: [page(0, 1), page(1, 1), page(2, 1)], media, imposed: undefined })) {
      expect(chunk.length).toBeGreaterThan(0);
      chunks += 1;
    }
    expect(asked).toBe(3);
    expect(chunksBefore).toEqual([0, 1, 2]);
  });
});

const mediaNamed = (name: string): NonNullable<ReturnType<typeof parseMedia>> => {
  const found = parseMedia(name);
  if (!found) throw new Error(name);
  return found;
};
const cellsOf = (result: ReturnType<typeof imposeCells>): readonly Cell[] => {
  if ('refused' in result) throw new Error(result.refused.message);
  return result;
};

describe('impose', () => {
  const letter = mediaNamed('letter');
  const twoUp = { columns: 1, rows: 2, turn: 90, firstFree: 1 } as const;

  it('lays 4×6 in two-up on letter at true size, in the middle of the halves', () => {
    const cells = cellsOf(imposeCells(3, media, letter, twoUp));
    // By hand: 8.5 in − 6 in leaves 1.25 in at each side, 5.5 in − 4 in leaves 0.75 in above and below.
    expect(cells.map((cell) => [cell.sheet, cell.box])).toEqual([
      [1, { x: 90, y: 54, width: 432, height: 288 }],
      [1, { x: 90, y: 54 + 396, width: 432, height: 288 }],
      [2, { x: 90, y: 54, width: 432, height: 288 }],
    ]);
  });

  it('starts at the first free position, along the rows', () => {
    const small = { name: 'small', width: 72, height: 72 };
    const cells = cellsOf(imposeCells(4, small, mediaNamed('a4'), { columns: 2, rows: 3, turn: 0, firstFree: 4 }));
    expect(cells.map((cell) => cell.sheet)).toEqual([1, 1, 1, 2]);
    const a4 = mediaNamed('a4');
    const column = (cell: Cell | undefined): number => Math.floor((cell?.box.x ?? NaN) / (a4.width / 2));
    const row = (cell: Cell | undefined): number => Math.floor((cell?.box.y ?? NaN) / (a4.height / 3));
    expect(cells.map((cell) => [column(cell), row(cell)])).toEqual([
      [1, 1],
      [0, 2],
      [1, 2],
      [0, 0],
    ]);
  });

  it('refuses what does not fit instead of shrinking it, and a position that is not there', () => {
    const upright = imposeCells(1, media, letter, { ...twoUp, turn: 0 });
    const nowhere = imposeCells(1, media, letter, { ...twoUp, firstFree: 3 });
    expect('refused' in upright && upright.refused.code).toBe('impose/too-large');
    expect('refused' in nowhere && nowhere.refused.code).toBe('impose/no-such-position');
  });

  it('draws marks on each sheet for the pages on it, and nothing more', async () => {
    const parts = [await part([100]), await part([300])];
    const load = (index: number): Uint8Array => parts[index] ?? new Uint8Array();
    const cells = cellsOf(imposeCells(2, media, letter, { ...twoUp, firstFree: 2 }));
    const pages = [page(0, 1), page(1, 1)];
    const mark = { x: 10, y: 20, width: 30, height: 4 };
    const marks = (on: readonly Cell[]): readonly (typeof mark)[] => (on.some((cell) => cell === cells[1]) ? [mark] : []);
    const plain = await joinStack(load, { pages, media, imposed: { sheet: letter, cells } });
    const marked = await joinStack(load, { pages, media, imposed: { sheet: letter, cells, marks } });
    const shown = (bytes: Uint8Array, number: number): ReturnType<typeof showPage> => showPage(bytes, number, 612, 792);
    expect(shareDifferent(await shown(plain, 1), await shown(marked, 1), 0)).toBe(0);
    const [before, after] = [await shown(plain, 2), await shown(marked, 2)];
    const changed = [...after.data.keys()].filter((at) => after.data[at] !== before.data[at]).map((at) => [at % 612, Math.floor(at / 612)]);
    expect(changed).toHaveLength(30 * 4);
    expect(changed[0]).toEqual([10, 20]);
    expect(changed.at(-1)).toEqual([39, 23]);
  });

  it('draws each page in its cell just as it was pressed, its number with it', async () => {
    const parts = [await part([100]), await part([300])];
    const pages = [page(0, 1, '1/2'), page(1, 1, '2/2')];
    const load = (index: number): Uint8Array => parts[index] ?? new Uint8Array();
    const single = await joinStack(load, { pages, media, imposed: undefined });
    const cells = cellsOf(imposeCells(2, media, letter, { ...twoUp, firstFree: 2 }));
    const sheets = await joinStack(load, { pages, media, imposed: { sheet: letter, cells } });
    const document = await PDFDocument.load(sheets, { updateMetadata: false });
    expect(document.getPages().map((each) => each.getSize())).toEqual([
      { width: 612, height: 792 },
      { width: 612, height: 792 },
    ]);
    for (const [index, cell] of cells.entries()) {
      const alone = await showPage(single, index + 1, 576, 864);
      const sheet = await showPage(sheets, cell.sheet, 612 * 2, 792 * 2);
      // A page turned clockwise: its (x, y) comes to (height − 1 − y, x) of the cell.
      let different = 0;
      for (let y = 0; y < 864; y++) {
        for (let x = 0; x < 576; x++) {
          const at = (cell.box.y * 2 + x) * sheet.width + cell.box.x * 2 + 863 - y;
          if ((alone.data[y * 576 + x] ?? 0) >= 128 !== (sheet.data[at] ?? 0) >= 128) different += 1;
        }
      }
      expect(inkCentre(alone, 2).count).toBeGreaterThan(1000);
      // Turned type is smoothed on other edges: a handful of the number's dots may fall on the other side of the threshold.
      expect(different).toBeLessThan(60);
    }
  });
});
