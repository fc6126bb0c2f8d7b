import { describe, expect, it } from 'vitest';
import { namedPage } from '../../src/locating/named-page.js';
import { survey, type Survey } from '../../src/locating/survey.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed } from '../steps/on-sample.js';
import { barsAt, inches, judged, nothingSaid } from './judged.js';

interface Made {
  readonly title: string;
  readonly number?: string;
  readonly address?: boolean;
  readonly items?: boolean;
}

/** A framed label without a word of one, but with a large word that is a name of something else. */
async function surveyOf({ title, number = 'XX9059961705749', address = true, items = false }: Made): Promise<Survey> {
  const d = new Drawing(612, 792).frame(60, 100, 288, 432, 1.2);
  d.text(74, 134, 'Halvorne', { size: 20, bold: true }).text(74, 156, title, { size: 18, bold: true });
  if (address) d.block(90, 200, ['Bela Invented', '3 Sample Row', 'Alder Halt EX 00188'], { size: 12 });
  if (items) {
    d.block(90, 270, ['2', '1', '4'], { size: 9 }, 1.8);
    d.block(120, 270, ['Bud vase', 'Ramen bowl', 'Salt pig'], { size: 9 }, 1.8);
  }
  d.bars(code128(number), 204, 420, 1.2, 80).text(150, 490, number, { size: 9 });
  const page = await drawnPage(d);
  return survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72));
}

describe('a page that calls itself something else than a label', () => {
  it.each(['Receipt', 'Invoice', 'Sale', 'Manifest', 'Packing slip'])(
    'is looked at where an address and a long number stand in a frame of its own, but nothing that is listed: %s',
    async (title) => {
      expect(await surveyOf({ title })).toMatchObject({
        kind: 'doubtful',
        why: `the page calls itself "${title.toLowerCase()}", but the frame 4.02×6.02 in is like a label`,
      });
    },
  );

  it.each<[string, Made]>([
    ['without an address', { title: 'Receipt', address: false }],
    ["with an order's number", { title: 'Receipt', number: '17-2081-44' }],
    ['with rows of items', { title: 'Packing slip', items: true }],
  ])('is what it says %s', async (_, made) => {
    expect(await surveyOf(made)).toMatchObject({ kind: 'named' });
  });

  it('is looked at where instructions stand with an address and bars that say a parcel’s number: a label too small to be known as one', async () => {
    const steps = async (number: string, address = true): Promise<Survey> => {
      const d = new Drawing(612, 792).text(60, 300, 'How to use', { size: 18, bold: true });
      d.block(60, 330, ['1. Print this page.', '2. Cut the label out.', '3. Hand the parcel over.'], { size: 10 }, 1.5);
      if (address) d.block(60, 60, ['Bela Invented', '3 Sample Row', 'Alder Halt EX 00188'], { size: 9 });
      const page = await drawnPage(d.bars(code128(number), 150, 110, 0.9, 34));
      return survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72));
    };
    expect(await steps('XX9059961705749')).toEqual({ kind: 'unnamed', codes: true });
    expect(await steps('17-2081-44')).toMatchObject({ kind: 'named' });
    expect(await steps('XX9059961705749', false)).toMatchObject({ kind: 'named' });
  });

  it('is looked at where a parcel’s number stands above the title of a customs form, which begins with it', async () => {
    const form = async (y: number, number = 'XX9059961705749'): Promise<Survey> => {
      const d = new Drawing(612, 792).text(60, 300, 'Customs declaration', { size: 18, bold: true });
      d.block(60, 330, ['Contents, Wool hat', 'Value, 18.00', 'I certify that this is a sample'], { size: 10 }, 1.5);
      const page = await drawnPage(d.bars(code128(number), 150, y, 0.9, 34));
      return survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72));
    };
    expect(await form(110)).toEqual({ kind: 'unnamed', codes: true });
    expect(await form(110, '17-2081-44')).toMatchObject({ kind: 'named' });
    expect(await form(450)).toMatchObject({ kind: 'named' });
  });

  it("is looked at where a frame of a label's size without words has large bars, as pictures of labels do", async () => {
    const wordless = async (bars: boolean): Promise<Survey> => {
      const d = new Drawing(612, 792).frame(60, 100, 288, 432, 1.2).rect(80, 120, 120, 60);
      d.text(380, 60, 'Receipt', { size: 20, bold: true }).block(380, 90, ['Two parcels', 'Paid in cash'], { size: 9 });
      if (bars) d.bars(code128('XX9059961705749'), 204, 420, 1.2, 80);
      // What keeps it from being an answer by itself: a code just outside, and ink at its edge.
      const page = await drawnPage(d.bars(code128('1207'), 396, 300, 0.8, 30).rect(54, 300, 3, 3));
      return survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72));
    };
    expect(await wordless(true)).toMatchObject({
      kind: 'doubtful',
      why: 'the page calls itself "receipt", but the frame 4.02×6.02 in is like a label',
    });
    expect(await wordless(false)).toMatchObject({ kind: 'named' });
  });
});

describe('what was passed over on such a page for what stands close to it', () => {
  const box = inches(2, 2, 6, 4);
  const codes = [barsAt({ x: 160, y: 200, width: 150, height: 60 }), barsAt({ x: 160, y: 300, width: 90, height: 40 })];
  const slip = { kind: 'packing-slip', words: 'packing slip', heading: true } as const;
  const end = async (number: string, edge: 'picture' | 'ink' = 'picture', kind: 'packing-slip' | 'customs-form' = 'packing-slip') => {
    const d = new Drawing(612, 792).bars(code128(number), 306, 300, 1.2, 60);
    const page = await drawnPage(d);
    const readCodes = () => page.codes({ x: 0, y: 0, width: 612, height: 792 }, 203 / 72);
    const passed = { ...judged(box, 0.59, { edge, codes }), said: nothingSaid };
    return await namedPage({ ...slip, kind }, { named: [], others: [passed] }, { page, blobs: [], phrases: [], readCodes });
  };

  it('is looked at where it has edges of its own and everything that a label has', async () => {
    expect(await end('BR532247232443')).toMatchObject({
      kind: 'doubtful',
      why: 'the page calls itself "packing slip", but the picture 6.00×4.00 in is like a label',
    });
  });

  it('and is nothing with a short number, without edges, or on a declaration', async () => {
    expect((await end('1072326667')).kind).toBe('named');
    expect((await end('BR532247232443', 'ink')).kind).toBe('named');
    expect((await end('BR532247232443', 'picture', 'customs-form')).kind).toBe('named');
  });
});
