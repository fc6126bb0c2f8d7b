import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { buildStack, type BuiltStack, type StackTarget } from '../../src/batch/build-stacks.js';
import { collate, type CollateDocument } from '../../src/batch/collate.js';
import { Scratch } from '../../src/files/scratch.js';
import type { ImposePlan } from '../../src/steps/step.js';
import { showPage } from '../press/pdfium-page.js';
import { item } from './fakes.js';

const TARGET = { media: '4x6in', grid: '203dpi', output: 'vector' } as const;
/** Four 4×6 pages on a sheet twice as wide and high, 72 pt between them and at its edges. */
const SHEET: ImposePlan = {
  sheet: '11x15in',
  columns: 2,
  rows: 2,
  turn: 0,
  firstFree: 1,
  marginLeft: 72,
  marginTop: 72,
  pitchAcross: 360,
  pitchDown: 504,
  pairs: true,
};

/** A pressed document of as many black pages. */
async function pressed(pages: number): Promise<Uint8Array> {
  const document = await PDFDocument.create();
  for (let at = 0; at < pages; at++) document.addPage([288, 432]).drawRectangle({ x: 0, y: 0, width: 288, height: 432 });
  return document.save({ useObjectStreams: false });
}

const parcel = (impose: ImposePlan, pages: number): CollateDocument => ({
  plan: { number: undefined, impose },
  items: Array.from({ length: pages }, (_, at) =>
    item(`p${at + 1}`, { page: at + 1, parcel: 1, pressedPage: at + 1, ...(at > 0 ? { role: at === 1 ? 'slip' : 'customs-form' } : {}) }),
  ),
});

async function built(
  impose: ImposePlan,
  parcels: readonly number[],
  offset?: StackTarget['offset'],
): Promise<{ readonly stack: BuiltStack; readonly bytes: Uint8Array }> {
  const documents = parcels.map((pages) => parcel(impose, pages));
  const [planned] = collate(documents, () => '4x6in').stacks;
  if (!planned) throw new Error('one stack');
  const scratch = new Scratch(undefined, 0);
  const kept = await Promise.all(
    parcels.map(async (pages) => {
      const put = await scratch.put(await pressed(pages));
      if (!put.ok) throw new Error(put.reason.message);
      return put.kept;
    }),
  );
  const stack = buildStack(planned, { ...TARGET, ...(offset ? { offset } : {}) }, (document) => kept[document], scratch);
  const chunks: Uint8Array[] = [];
  for await (const chunk of stack.chunks()) chunks.push(chunk);
  return { stack, bytes: Buffer.concat(chunks) };
}

/** Which positions of a sheet are black, from 1. */
async function blackOn(bytes: Uint8Array, sheet: number): Promise<readonly number[]> {
  const { data, width } = await showPage(bytes, sheet, 792, 1080);
  return [1, 2, 3, 4].filter((position) => {
    const [x, y] = [72 + 144 + ((position - 1) % 2) * 360, 72 + 216 + Math.floor((position - 1) / 2) * 504];
    return data[y * width + x] === 0;
  });
}

describe('a stack on larger sheets', () => {
  it('lays each parcel whole on a sheet, its slip beside its label, and counts the sheets', async () => {
    const { stack, bytes } = await built(SHEET, [1, 2, 3, 2]);
    expect(await blackOn(bytes, 1)).toEqual([1, 3, 4]);
    expect(await blackOn(bytes, 2)).toEqual([1, 2, 3]);
    expect(await blackOn(bytes, 3)).toEqual([1, 2]);
    expect(stack.record()).toMatchObject({ file: 'print/stack-11x15in-2x2.pdf', parcels: 4, pages: 8, sheets: 3 });
  });

  it("lies moved by its printer's offset, cut marks and all, and is not cut by it", async () => {
    const impose = { ...SHEET, cutMarks: true };
    const plain = await showPage((await built(impose, [2])).bytes, 1, 792, 1080);
    const moved = await showPage((await built(impose, [2], { x: 6, y: -4 })).bytes, 1, 792, 1080);
    const wrong = [...plain.data.keys()].filter((at) => {
      const [x, y] = [at % 792, Math.floor(at / 792)];
      return x + 6 < 792 && y >= 4 && plain.data[at] !== moved.data[at + 6 - 4 * 792];
    });
    expect(wrong).toEqual([]);
    expect(plain.data.filter((grey) => grey === 0).length).toBeGreaterThan(2 * 288 * 432 - 1);
  });

  it('prints cut marks beside its pages only when asked, and none on a page or a free position', async () => {
    const plain = await showPage((await built(SHEET, [1])).bytes, 1, 792, 1080);
    const marked = await showPage((await built({ ...SHEET, cutMarks: true }, [1])).bytes, 1, 792, 1080);
    const changed = [...marked.data.keys()]
      .filter((at) => marked.data[at] !== plain.data[at])
      .map((at) => [at % 792, Math.floor(at / 792)]);
    expect(changed.length).toBeGreaterThan(8 * 10);
    for (const [x = 0, y = 0] of changed) {
      const inColumn = (x >= 72 && x < 360) || (x >= 432 && x < 720);
      const inRow = (y >= 72 && y < 504) || (y >= 576 && y < 1008);
      expect(inColumn && inRow, `${x} ${y}`).toBe(false);
      expect(x > 50 && x < 382 && y > 50 && y < 526).toBe(true);
    }
  });
});
