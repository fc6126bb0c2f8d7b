import { describe, expect, it } from 'vitest';
import { contains, type Box } from '../../src/geometry/box.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { leftBehind } from '../../src/locating/left-behind.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128, qr, type CodeArt } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';

const LABEL: Box = { x: 20, y: 20, width: 288, height: 432 };
const OWN = 'QX204417';
const [OTHER, ORDER] = ['QX00931177', 'MUG-20311129-07'];

interface Beside {
  /** What the bars beside the label say; under some lines of writing. */
  readonly code?: CodeArt;
  readonly lines?: readonly string[];
  readonly height?: number;
}

/** A framed label with a number of its own, and something as large as a small label on its right. */
function page({ code, lines = [], height = 300 }: Beside, own = `${OWN}88`): Drawing {
  const d = new Drawing(700, 560);
  d.frame(LABEL.x, LABEL.y, LABEL.width, LABEL.height, 1.5);
  d.text(40, 60, 'Ship to', { size: 9 });
  d.text(40, 80, 'Example Street 4, sample, not valid', { size: 11 });
  d.bars(code128(own), 164, 300, 1.2, 60);
  d.text(164, 345, own, { size: 11, align: 'center' });
  d.block(380, 60, lines, { size: 9 }, 1.4);
  if (code) d.bars(code, 510, 150, 1.2, 60);
  for (let y = 40; y <= 40 + height; y += 50) d.line(380, y, 395, y, 1);
  return d;
}

async function besideLabel(
  drawing: Drawing,
): Promise<{ readonly doubts: readonly string[]; readonly boxes: readonly Box[]; readonly reads: number }> {
  const source = await drawnPage(drawing);
  let reads = 0;
  const doubts = await leftBehind([LABEL], {
    page: source,
    blobs: inkBlobs(source.ink()),
    phrases: phrasesOf(source.words()),
    readCodes(box) {
      reads += 1;
      return source.codes(box, 406 / 72);
    },
  });
  return { doubts: doubts.map(({ why }) => why), boxes: doubts.flatMap(({ answers }) => answers.map(({ box }) => box)), reads };
}

const TO_AND_FROM = ['Ship to', 'Weight 2 lb', 'Service: ground'];

const FROM = 'Sender: Thistle & Tin, 3 Example Street, Sampleton EX1 9ZZ';
const TO = ['Ada Invented', '14 Sample Lane', 'Larch Halt', 'EX1 2AB'];

describe('left behind beside a label', () => {
  it('ink as large as a small label, with sender, receiver and a number', async () => {
    const beside = (lines: readonly string[], number = 'PM082816677980'): Drawing => {
      const d = page({ height: 1 });
      d.block(380, 60, lines, { size: 8 }, 1.3);
      d.bars(code128(number), 500, 140, 0.8, 30).text(380, 175, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 6 });
      return d;
    };
    expect((await besideLabel(beside([FROM, ...TO]))).doubts).toHaveLength(1);
    expect((await besideLabel(beside([FROM, ...TO], 'HZW33011'))).doubts).toHaveLength(1);
    expect((await besideLabel(beside(TO))).doubts).toEqual([]);
    expect((await besideLabel(beside(TO, 'HZW33011'))).doubts).toEqual([]);
  });

  it('a picture as large as the label is read, for its code may be too coarse to be seen', async () => {
    const doubtsOf = async (text: string, box: Box): Promise<readonly string[]> => {
      const d = page({ height: 1 });
      d.matrix(qr(text), 490, 160, 7).text(360, 330, 'Sample', { size: 30 });
      const source = await drawnPage(d);
      Object.defineProperty(source, 'images', { value: () => [{ box, pixelWidth: 800, pixelHeight: 1200, turn: 0 }] });
      Object.defineProperty(source, 'words', { value: () => [] });
      const doubts = await leftBehind([LABEL], {
        page: source,
        blobs: inkBlobs(source.ink()),
        phrases: [],
        readCodes: (part) => source.codes(part, 203 / 72),
      });
      return doubts.map(({ why }) => why);
    };
    const beside = { x: 350, y: 30, width: 288, height: 420 };
    expect(await doubtsOf('ZD99812345678', beside)).toEqual([expect.stringMatching(/ beside the label is like a label, too/)]);
    expect(await doubtsOf('https://shop.example', beside)).toEqual([]);
    expect(await doubtsOf('ZD99812345678', { ...beside, height: 150, width: 200 })).toEqual([]);
  });

  it.each<[string, Beside, RegExp]>([
    [
      "bars of the make of the label's own, with another number",
      { code: code128(OTHER) },
      /^the ink .* in beside the label has a number as a parcel's own$/,
    ],
    [
      'the words of a label, and a number of another make',
      { code: code128('007734129966'), lines: TO_AND_FROM },
      /is like a label, too, but where it ends/,
    ],
  ])('%s: held', async (_, beside, why) => {
    const { doubts, boxes } = await besideLabel(page(beside));
    expect(doubts).toEqual([expect.stringMatching(why)]);
    expect(contains(boxes[0] as Box, { x: 450, y: 125, width: 110, height: 50 })).toBe(true);
  });

  it.each<[string, Beside]>([
    ["the label's own number once more", { code: code128(`${OWN}88`), lines: TO_AND_FROM }],
    ["the label's own number in a longer code", { code: code128(`PLACE7${OWN}88`), lines: TO_AND_FROM }],
    ["an order's number on a bill", { code: code128(ORDER), lines: ['Invoice', 'Mug, celadon'] }],
    ["an order's number and no word of a label", { code: code128(ORDER), lines: ['Mug, celadon', 'Bowl, tenmoku'] }],
    ["a coupon's code and the words of a label", { code: code128('TENOFF-31'), lines: TO_AND_FROM }],
    ['a web address and the words of a label', { code: qr('https://mugmonger.example/20311129/0771'), lines: TO_AND_FROM }],
    ['a number as a parcel has on a strip too small for a label', { code: code128(OTHER), height: 150 }],
    ['nothing but words', { lines: TO_AND_FROM }],
  ])('%s: no reason', async (_, beside) => {
    expect((await besideLabel(page(beside))).doubts).toEqual([]);
  });

  it('rows of items with a number and the words of a label are a bill', async () => {
    const drawing = page({ code: code128('007734129966'), lines: TO_AND_FROM });
    expect((await besideLabel(drawing)).doubts).toHaveLength(1);
    ['Mug, celadon', 'Bowl, tenmoku', 'Vase, ash'].forEach((item, row) => {
      drawing.text(410, 220 + 18 * row, `${row + 2}`, { size: 9 });
      drawing.text(440, 220 + 18 * row, item, { size: 9 });
    });
    expect((await besideLabel(drawing)).doubts).toEqual([]);
  });

  it('a number that stands in letters and figures on the label is its own', async () => {
    const drawing = page({ code: code128(OTHER), lines: TO_AND_FROM });
    drawing.text(40, 420, 'QX 0093 1177', { size: 12 });
    expect((await besideLabel(drawing)).doubts).toEqual([]);
  });

  it('reads no code where none is left, nor on what says that it is something else', async () => {
    expect((await besideLabel(page({ lines: TO_AND_FROM }))).reads).toBe(0);
    expect((await besideLabel(page({ code: code128(OTHER), lines: ['Packing slip'] }))).reads).toBe(0);
  });
});
