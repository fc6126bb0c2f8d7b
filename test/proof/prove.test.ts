import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { contains, near } from '../../src/geometry/box.js';
import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { addTurns, TURNS } from '../../src/geometry/placement.js';
import { pressDocument } from '../../src/press/press-document.js';
import { proveDocument } from '../../src/proof/prove.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Kind, type Sample } from '../samples/sample.js';
import { ANY_BARS, onWholeDots, media4x6, openSource, perfectSheets, pressAndProve, verdictOf } from './prove-sample.js';

const samples = new Map<string, Promise<Sample>>();
function sampleOf(name: string, kind: Kind = 'vector'): Promise<Sample> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(`no layout ${name}`);
  const key = `${name}/${kind}`;
  const known = samples.get(key) ?? sample(layout, kind, 0);
  samples.set(key, known);
  return known;
}

const first = (sheets: readonly Sheet[]): Sheet => {
  const [sheet] = sheets;
  if (!sheet) throw new Error('the sample has no label');
  return sheet;
};

async function withSource<T>(each: Sample, use: (source: SourceDocument) => Promise<T>): Promise<T> {
  const source = await openSource(each.bytes);
  try {
    return await use(source);
  } finally {
    source.close();
  }
}

async function verdict(name: string, change: (sheet: Sheet) => Sheet, grid: GridName = '203dpi'): Promise<string> {
  const each = await sampleOf(name);
  return withSource(each, async (source) => {
    const { proofs } = await pressAndProve(source, [change(first(perfectSheets(each, source, grid)))], grid);
    return verdictOf(proofs[0]);
  });
}

describe('a good label is proved', () => {
  const grids: readonly GridName[] = ['203dpi', '300dpi', '8dpmm'];
  it.each(grids.flatMap((grid) => (['vector', 'bilevel', 'grey'] as const).map((kind) => [grid, kind] as const)))(
    'on %s from %s, with every code of its source',
    async (grid, kind) => {
      const each = await sampleOf('letter-upper-sideways', kind);
      await withSource(each, async (source) => {
        const { proofs } = await pressAndProve(source, await onWholeDots(perfectSheets(each, source, grid), source, grid), grid);
        expect(proofs.map(verdictOf)).toEqual(['proved']);
        const said = proofs[0]?.codes.map(({ code }) => `${code.identifier} ${code.bytes}`).toSorted();
        const drawn = each.expected.pages[0]?.labels[0]?.codes.map((code) => `${code.identifier} ${code.bytes}`).toSorted();
        expect(said).toEqual(drawn);
        expect(said?.length).toBeGreaterThan(0);
      });
    },
  );

  it.each(TURNS)('however it is turned: %s', async (turn) => {
    // The page's own media, so that all four turns of the label fit.
    const each = await sampleOf('letter-return-label');
    await withSource(each, async (source) => {
      const sheet = first(perfectSheets(each, source, '203dpi'));
      const media = { name: 'square', width: 440, height: 440 };
      const grid = gridOf('203dpi');
      const sheets = [{ ...sheet, turn: addTurns(sheet.turn, turn) }];
      const pressed = await pressDocument(source, sheets, media, grid);
      const proofs = await proveDocument(source, pressed.bytes ?? new Uint8Array(), sheets, pressed.placements, media, grid);
      expect(proofs.map(verdictOf)).toEqual(['proved']);
    });
  });

  it('reports its modules in dots: 3 and 4 at 203 dpi as the sample is drawn', async () => {
    const each = await sampleOf('letter-return-label', 'bilevel');
    await withSource(each, async (source) => {
      const { proofs } = await pressAndProve(source, perfectSheets(each, source, '203dpi'), '203dpi');
      const modules = proofs[0]?.codes.map((code) => code.moduleDots ?? NaN).toSorted((a, b) => a - b);
      expect(modules?.[0]).toBeCloseTo(3, 1);
      expect(modules?.[1]).toBeCloseTo(4, 1);
    });
  });
});

describe('what must not be printed is held', () => {
  it('a letter page fitted whole, factor 0.4706: bars of about 1.4 dots', async () => {
    const each = await sampleOf('letter-upper-sideways');
    await withSource(each, async (source) => {
      const scale = Math.min(288 / 612, 432 / 792);
      const sheet: Sheet = { ...pageSheet(1, 612, 792), role: 'label', scale, proof: ANY_BARS };
      const { proofs } = await pressAndProve(source, [sheet], '203dpi');
      expect(scale).toBeCloseTo(0.4706, 4);
      expect(verdictOf(proofs[0])).toBe('verify/too-fine');
      // Drawn with 3 dots a module: 3 × 0.4706 = 1.41.
      expect(proofs[0]?.verdict).toMatchObject({
        message: expect.stringMatching(/ come out 1\.[345] dots wide .* at 47 % of its size/) as unknown,
      });
    });
  });

  it('a crop through a code', async () => {
    const each = await sampleOf('letter-upper-sideways');
    const code = each.expected.pages[0]?.labels[0]?.codes.find((one) => one.symbology === 'Code 128');
    if (!code) throw new Error('no linear code');
    const { box } = code;
    // Half of the code along its bars' row: its other half is on the label, the box ends in the middle of it.
    const along = box.height > box.width;
    const cut = await verdict('letter-upper-sideways', (sheet) => ({
      ...sheet,
      box: along
        ? { ...sheet.box, height: box.y + box.height / 2 - sheet.box.y }
        : { ...sheet.box, width: box.x + box.width / 2 - sheet.box.x },
    }));
    expect(cut).toBe('verify/cut');
  });

  it('a label whose drawn page is another one’s', async () => {
    const each = await sampleOf('a4-two-labels');
    await withSource(each, async (source) => {
      const sheets = perfectSheets(each, source, '203dpi');
      const grid = gridOf('203dpi');
      const pressed = await pressDocument(source, sheets, media4x6, grid);
      const swapped = pressed.placements.map((placement) => ({ ...placement, page: 3 - placement.page }));
      const proofs = await proveDocument(source, pressed.bytes ?? new Uint8Array(), sheets, swapped, media4x6, grid);
      expect(proofs.map(verdictOf)).toEqual(['verify/code-changed', 'verify/code-changed']);
    });
  });

  it('a page drawn upside down', async () => {
    const each = await sampleOf('letter-upper-sideways');
    await withSource(each, async (source) => {
      const sheet = first(perfectSheets(each, source, '203dpi'));
      const grid = gridOf('203dpi');
      const pressed = await pressDocument(source, [{ ...sheet, turn: addTurns(sheet.turn, 180) }], media4x6, grid);
      const upright = await pressDocument(source, [sheet], media4x6, grid);
      const proofs = await proveDocument(source, pressed.bytes ?? new Uint8Array(), [sheet], upright.placements, media4x6, grid);
      expect(verdictOf(proofs[0])).toBe('verify/code-moved');
    });
  });

  it('a blank page, and one with codes gone', async () => {
    const each = await sampleOf('letter-upper-sideways');
    await withSource(each, async (source) => {
      const sheet = first(perfectSheets(each, source, '203dpi'));
      const grid = gridOf('203dpi');
      const { placements, bytes } = await pressDocument(source, [sheet], media4x6, grid);
      const white = await PDFDocument.load(bytes ?? new Uint8Array(), { updateMetadata: false });
      const page = white.getPage(0);
      page.drawRectangle({ x: 0, y: 0, width: 288, height: 432 });
      const { rgb } = await import('pdf-lib');
      page.drawRectangle({ x: 0, y: 0, width: 288, height: 432, color: rgb(1, 1, 1) });
      const blank = await proveDocument(source, await white.save(), [sheet], placements, media4x6, grid);
      expect(verdictOf(blank[0])).toBe('verify/blank');

      const patched = await PDFDocument.load(bytes ?? new Uint8Array(), { updateMetadata: false });
      const proofs = await proveDocument(source, bytes ?? new Uint8Array(), [sheet], placements, media4x6, grid);
      const linear = proofs[0]?.codes.find(({ code }) => code.symbology === 'Code 128')?.code.box;
      if (!linear) throw new Error('no linear code');
      // What the reader reports is the part of the bars that it scanned; the bars go on above and below.
      const { x, width } = linear;
      const [y, height] = [linear.y - 60, linear.height + 120];
      patched.getPage(0).drawRectangle({ x, y: 432 - y - height, width, height, color: rgb(1, 1, 1) });
      const lost = await proveDocument(source, await patched.save(), [sheet], placements, media4x6, grid);
      expect(verdictOf(lost[0])).toBe('verify/code-lost');
    });
  });

  it('a label in which nothing can be read, unless the recipe says that there are no codes', async () => {
    const noCode = (sheet: Sheet): Sheet => ({ ...sheet, box: { x: 30, y: 480, width: 250, height: 200 }, turn: 0 });
    expect(await verdict('letter-upper-sideways', noCode)).toBe('verify/nothing-to-prove');
    expect(await verdict('letter-upper-sideways', (sheet) => ({ ...noCode(sheet), proof: { codes: 'none' } }))).toBe('proved');
    expect(await verdict('letter-upper-sideways', (sheet) => ({ ...noCode(sheet), role: 'slip' }))).toBe('proved');
  });

  it('art that is missing though all codes are there', async () => {
    const each = await sampleOf('letter-upper-sideways');
    await withSource(each, async (source) => {
      const sheet = first(perfectSheets(each, source, '203dpi'));
      const grid = gridOf('203dpi');
      const { placements, bytes } = await pressDocument(source, [sheet], media4x6, grid);
      const document = await PDFDocument.load(bytes ?? new Uint8Array(), { updateMetadata: false });
      const { rgb } = await import('pdf-lib');
      const proofs = await proveDocument(source, bytes ?? new Uint8Array(), [sheet], placements, media4x6, grid);
      const codes = proofs[0]?.codes.map(({ code }) => code.box) ?? [];
      expect(codes.length).toBeGreaterThan(0);
      // White over everything but the bands of the codes.
      let y = 0;
      for (const box of [...codes.toSorted((a, b) => a.y - b.y), { y: 432 + 14, height: 0 }]) {
        const height = box.y - 14 - y;
        if (height > 0) document.getPage(0).drawRectangle({ x: 0, y: 432 - y - height, width: 288, height, color: rgb(1, 1, 1) });
        y = Math.max(y, box.y + box.height + 14);
      }
      const gone = await proveDocument(source, await document.save(), [sheet], placements, media4x6, grid);
      expect(verdictOf(gone[0])).toBe('verify/ink-differs');
    });
  });
});

describe('a slip', () => {
  it('set anew is proved when there is ink, and told blank when there is none', async () => {
    const each = await sampleOf('letter-upper-sideways');
    await withSource(each, async (source) => {
      const text = (lines: readonly string[]): Sheet => ({
        ...pageSheet(1, 612, 792),
        role: 'slip',
        content: { kind: 'text', lines, fontSize: 10 },
        margin: 8,
      });
      const written = await pressAndProve(source, [text(['1 × paper star'])], '203dpi');
      const empty = await pressAndProve(source, [text([''])], '203dpi');
      expect([written, empty].map(({ proofs }) => verdictOf(proofs[0]))).toEqual(['proved', 'verify/blank']);
    });
  });
});

describe('the free rectangle for a number', () => {
  const numberSize = { width: 40, height: 12 };
  let each: Sample;
  let source: SourceDocument;
  beforeAll(async () => {
    each = await sampleOf('letter-at-corner');
    source = await openSource(each.bytes);
  });
  afterAll(() => source.close());

  it('is outside a label’s box, and there is none where the label fills the page', async () => {
    const [sheet] = perfectSheets(each, source, '203dpi');
    if (!sheet) throw new Error('no label');
    const small: Sheet = { ...sheet, scale: 0.9, margin: 0 };
    const { proofs, pressed } = await pressAndProve(source, [sheet, { ...small, id: 'small' }], '203dpi', { numberSize });
    expect(proofs[0]?.numberBox).toBeUndefined();
    const box = proofs[1]?.numberBox;
    const drawn = pressed.placements[1]?.drawnBox;
    if (!box || !drawn) throw new Error('no free rectangle');
    expect(box.y).toBeGreaterThanOrEqual(drawn.y + drawn.height);
    expect(box.x + box.width).toBeLessThanOrEqual(288);
    expect(box.y + box.height).toBeLessThanOrEqual(432);
  });

  it('is on the label only where that is wanted and there is none beside it', async () => {
    const [sheet] = perfectSheets(each, source, '203dpi');
    if (!sheet) throw new Error('no label');
    const sheets: Sheet[] = [sheet, { ...sheet, scale: 0.9, margin: 0, id: 'small' }];
    const { proofs, pressed } = await pressAndProve(source, sheets, '203dpi', { numberSize, numberOnLabel: true });
    const [on, beside] = proofs;
    const [whole] = pressed.placements;
    if (!on?.numberBox || !whole) throw new Error('the label has free paper');
    expect(on.numberOnLabel).toBe(true);
    expect(contains(whole.drawnBox, on.numberBox)).toBe(true);
    for (const { code } of on.codes) expect(near(code.box, on.numberBox, 6)).toBe(false);
    expect(beside?.numberBox).toBeDefined();
    expect(beside?.numberOnLabel).toBeUndefined();
  });
});
