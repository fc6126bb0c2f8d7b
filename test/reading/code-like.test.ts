import { describe, expect, it } from 'vitest';
import { contains, intersection, type Box } from '../../src/geometry/box.js';
import { codeLikeAreas } from '../../src/reading/code-like.js';
import { denseAreas } from '../../src/reading/dense-areas.js';
import { code128, dataMatrix, itf, qr, type CodeArt } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { instructions, invoice, receipt } from '../samples/other-pages.js';
import { contentFor } from '../samples/content.js';
import { drawnPage } from './drawn-page.js';

const bars = (art: CodeArt, module: number, turn: 0 | 90) => {
  const d = new Drawing(400, 400);
  d.text(20, 30, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 12 });
  return d.bars(art, 200, 200, module, 60, turn);
};

describe('code-like areas', () => {
  it('are each told once, also where rules go around more than a code', async () => {
    const drawing = new Drawing(400, 400).matrix(dataMatrix('SAMPLE|0001|NOT VALID'), 150, 150, 1.4).frame(60, 60, 300, 260, 4);
    const boxes = denseAreas(await drawnPage(drawing));
    expect(boxes.filter((box) => boxes.some((other) => other !== box && intersection(other, box)))).toEqual([]);
    expect(codeLikeAreas(await drawnPage(drawing)).map(({ kind }) => kind)).toEqual(['matrix']);
  });

  it.each([
    ['Code 128 of 10 mil bars', code128('SAMPLE-0001'), 0.72],
    ['Code 128 of 3 dot bars', code128('SAMPLE-000001'), 1.06],
    ['ITF of 4 dot bars', itf('12345678901234'), 1.42],
  ] as const)('%s is a row of bars, level or upright, where it stands', async (_, art, module) => {
    for (const turn of [0, 90] as const) {
      const drawing = bars(art, module, turn);
      const areas = codeLikeAreas(await drawnPage(drawing));
      expect(areas.map(({ kind, run }) => [kind, run])).toEqual([['linear', turn === 0 ? 'level' : 'upright']]);
      const code = drawing.codes()[0]?.box as Box;
      const found = areas[0]?.box as Box;
      expect(contains(code, found, 6)).toBe(true);
      const shared = intersection(code, found);
      expect((shared?.width ?? 0) * (shared?.height ?? 0)).toBeGreaterThan(0.7 * code.width * code.height);
    }
  });

  it.each([
    ['QR', qr('https://example.test/sample/0001'), 3],
    ['Data Matrix', dataMatrix('SAMPLE|0001|NOT VALID'), 4 * (72 / 203)],
  ] as const)('%s is dense, and no row of bars', async (_, art, module) => {
    const drawing = new Drawing(400, 400).matrix(art, 150, 150, module);
    const page = await drawnPage(drawing);
    expect(codeLikeAreas(page).filter(({ kind }) => kind === 'linear')).toEqual([]);
    const box = drawing.codes()[0]?.box as Box;
    const dense = denseAreas(page);
    expect(dense.some((area) => intersection(area, box) !== undefined && contains(box, area, 8))).toBe(true);
  });

  it('a QR code with modules as large as type is a matrix code', async () => {
    const drawing = new Drawing(400, 400).matrix(qr('SAMPLE-0001 NOT VALID FOR CARRIAGE'), 150, 150, 4.2);
    const areas = codeLikeAreas(await drawnPage(drawing));
    expect(areas.map(({ kind }) => kind)).toEqual(['matrix']);
    expect(contains(drawing.codes()[0]?.box as Box, areas[0]?.box as Box, 8)).toBe(true);
  });

  it('type, tables and solid areas are no codes', async () => {
    const content = contentFor('code-like');
    const d = new Drawing(400, 400);
    d.rect(20, 20, 200, 80);
    d.rect(20, 120, 300, 5);
    d.rect(20, 140, 200, 80, 0.5);
    d.text(200, 300, 'A 9', { size: 60, bold: true });
    for (const drawing of [instructions(540, 600), receipt(540, 600, content), invoice(540, 700, content), d]) {
      expect(codeLikeAreas(await drawnPage(drawing))).toEqual([]);
    }
  });

  it('a page is looked at once', async () => {
    const page = await drawnPage(bars(code128('SAMPLE-0001'), 1, 0));
    expect(codeLikeAreas(page)).toBe(codeLikeAreas(page));
    expect(denseAreas(page)).toBe(denseAreas(page));
  });
});
