import { describe, expect, it } from 'vitest';
import { contains, type Box } from '../../src/geometry/box.js';
import { readCodes } from '../../src/reading/codes.js';
import type { GreyRaster, SourcePage } from '../../src/reading/source.js';
import { aztec, code128, code39, dataMatrix, gs1Code128, gs1DataMatrix, itf, maxiCode, pdf417, qr } from '../samples/code-art.js';
import { DOT, Drawing } from '../samples/drawing.js';
import { QUARTER_TURNS } from '../samples/sample.js';
import { drawnPage, rasterWith } from './drawn-page.js';

const page = (width = 300, height = 300): Drawing => new Drawing(width, height);
const DRAWN = {
  'Code 128': page().bars(code128('SAMPLE-0001'), 150, 150, 3 * DOT, 60),
  'GS1-128': page().bars(gs1Code128(['420', '00001'], ['92', '0000012345']), 150, 150, 2 * DOT, 60),
  ITF: page().bars(itf('12345678901234'), 150, 150, 3 * DOT, 60),
  'Code 39': page().bars(code39('SAMPLE1'), 150, 150, 2 * DOT, 60),
  'Data Matrix': page().matrix(dataMatrix('SAMPLE|0001'), 120, 120, 4 * DOT),
  'GS1 Data Matrix': page().matrix(gs1DataMatrix(['01', '00000000000017'], ['21', 'S1']), 120, 120, 4 * DOT),
  QR: page().matrix(qr('https://example.test/0001'), 100, 100, 4 * DOT),
  Aztec: page().matrix(aztec('SAMPLE 0001'), 100, 100, 4 * DOT),
  PDF417: page().matrix(pdf417('SAMPLE 0001, NOT VALID FOR CARRIAGE', 6), 150, 150, 2 * DOT),
} as const;

const whole = (of: SourcePage): Box => ({ x: 0, y: 0, width: of.width, height: of.height });
const raster = (of: SourcePage): GreyRaster => of.render(whole(of), 406 / 72, false);
const told = (codes: readonly { symbology: string; identifier: string; bytes: string; turn: number | undefined }[]) =>
  codes.map(({ symbology, identifier, bytes, turn }) => ({ symbology, identifier, bytes, turn }));

describe('readCodes', () => {
  it.each(Object.entries(DRAWN))('%s: identifier, bytes, place and direction at each turn of the page', async (_, drawing) => {
    const [expected] = drawing.codes();
    for (const turn of QUARTER_TURNS) {
      const read = await drawnPage(drawing, turn);
      const codes = await readCodes(raster(read));
      expect(told(codes)).toEqual([{ symbology: expected?.symbology, identifier: expected?.identifier, bytes: expected?.bytes, turn }]);
      if (turn !== 0) continue;
      // A reader's corners of a row of bars follow the one scan line that was read; along the bars they are right.
      const box = codes[0]?.box as Box;
      expect(contains(expected?.box as Box, box, 4)).toBe(true);
      expect(box.width).toBeGreaterThan(0.9 * (expected?.box.width ?? Infinity));
    }
  });

  it('with the run known reads the same in half the directions, and nothing across', async () => {
    for (const turn of QUARTER_TURNS) {
      const read = raster(await drawnPage(DRAWN['Code 128'], turn));
      const [along, across] = turn % 180 === 0 ? (['level', 'upright'] as const) : (['upright', 'level'] as const);
      expect(told(await readCodes(read, { run: along }))).toEqual(told(await readCodes(read)));
      expect(await readCodes(read, { run: across })).toEqual([]);
    }
  });

  it('tells where a code lies by the origin of its raster, with the run known, too', async () => {
    const read = await drawnPage(DRAWN['GS1-128'], 90);
    const [all] = await readCodes(raster(read));
    const part = { x: 100, y: 20, width: 120, height: 260 };
    for (const run of [undefined, 'upright'] as const) {
      const [code] = await readCodes(read.render(part, 406 / 72, false), run ? { run } : {});
      const [a, b] = [all?.box as Box, code?.box as Box];
      expect(contains(a, b, 2) && contains(b, a, 2)).toBe(true);
      expect(code?.turn).toBe(90);
    }
  });

  it('reads only what it is asked for', async () => {
    const read = raster(await drawnPage(DRAWN.QR));
    expect(await readCodes(read, { symbologies: ['Code 128', 'ITF'] })).toEqual([]);
  });

  it('does not believe an interleaved code of a few digits', async () => {
    expect(await readCodes(raster(await drawnPage(page().bars(itf('1234'), 150, 150, 3 * DOT, 60))))).toEqual([]);
  });

  it('leaves MaxiCodes out of a page unless asked, and reads one alone', async () => {
    const drawing = new Drawing(120, 120).maxi(maxiCode('SAMPLE 0001'), 60, 60);
    const read = raster(await drawnPage(drawing));
    expect(await readCodes(read)).toEqual([]);
    expect((await readCodes(read, { symbologies: ['MaxiCode'] })).map(({ bytes }) => bytes)).toEqual([drawing.codes()[0]?.bytes]);
  });

  it('white on black is read only when looked for thoroughly', async () => {
    const read = raster(await drawnPage(DRAWN.QR));
    const inverted = { ...read, data: read.data.map((grey) => 255 - grey) };
    expect(await readCodes(inverted)).toEqual([]);
    expect(told(await readCodes(inverted, { thorough: true }))).toHaveLength(1);
  });

  it('has nothing to say of blank paper and of a speck', async () => {
    expect(await readCodes(rasterWith(100, 100, []))).toEqual([]);
    expect(await readCodes(rasterWith(3, 3, [[0, 0, 1, 1]]))).toEqual([]);
  });
});
