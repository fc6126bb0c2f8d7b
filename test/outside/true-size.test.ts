import { describe, expect } from 'vitest';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS, sample } from '../samples/sample.js';
import { pressSample } from './press-sample.js';
import { RASTERISERS, rasterisedPages } from './rasters.js';
import { modulesFromRuns, runsAcross, totalDots } from './runs.js';
import { outsideCheck } from './tools.js';
import { DESIGNED_DOTS, zintOf } from './zint-code.js';

const LAYOUT = LAYOUTS.find(({ name }) => name === 'letter-upper-sideways');
describe('true size, measured in the dots of another rasteriser', () => {
  if (!LAYOUT) throw new Error('the layout is gone');
  for (const turn of QUARTER_TURNS) {
    outsideCheck(`a picture of dots comes out dot for dot, page turned ${turn}`, ['pdftoppm', 'pdfinfo', 'zint'], async () => {
      const { pdf, labels } = await pressSample(await sample(LAYOUT, 'bilevel', turn));
      const [page] = await rasterisedPages('pdftoppm', pdf, 203);
      const placed = labels[0]?.codes.find(({ code }) => code.symbology === 'Code 128');
      if (!page || !placed) throw new Error('a label with a linear code');
      expect(labels[0]?.pixelForDot).toBe(true);
      const runs = runsAcross(page, placed.box, 'x');
      expect(runs.filter(({ dots }) => dots % DESIGNED_DOTS !== 0)).toEqual([]);
      expect(modulesFromRuns(runs, DESIGNED_DOTS)).toBe(zintOf(placed.code.bytes));
    });
  }

  for (const rasteriser of RASTERISERS) {
    outsideCheck(
      `vector bars come out as the modules that zint writes, within a dot each (${rasteriser})`,
      [rasteriser, 'pdfinfo', 'zint'],
      async () => {
        const { pdf, labels } = await pressSample(await sample(LAYOUT, 'vector', 0));
        const [page] = await rasterisedPages(rasteriser, pdf, 203);
        const placed = labels[0]?.codes.find(({ code }) => code.symbology === 'Code 128');
        if (!page || !placed) throw new Error('a label with a linear code');
        const modules = zintOf(placed.code.bytes);
        const runs = runsAcross(page, placed.box, 'x');
        expect(Math.abs(totalDots(runs) - modules.length * DESIGNED_DOTS)).toBeLessThanOrEqual(1);
        expect(modulesFromRuns(runs, DESIGNED_DOTS)).toBe(modules);
        for (const { dots } of runs) expect(Math.abs(dots - Math.round(dots / DESIGNED_DOTS) * DESIGNED_DOTS)).toBeLessThanOrEqual(1);
      },
    );
  }
});
