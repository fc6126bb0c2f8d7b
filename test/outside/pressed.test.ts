import { describe, expect } from 'vitest';
import { area, grow } from '../../src/geometry/box.js';
import { LAYOUTS } from '../samples/layouts.js';
import { KINDS, QUARTER_TURNS, sample } from '../samples/sample.js';
import { pressSample, type PressedLabel } from './press-sample.js';
import { cut, dmtxCode, RASTERISERS, rasterisedPages, zbarCodes } from './rasters.js';
import { outsideCheck } from './tools.js';

/**
 * Who reads what: zbar linear codes and QR, libdmtx Data Matrix. For PDF417, Aztec and MaxiCode there is no reader that is
 * independent of ours among the tools at hand; placed-modules.test.ts compares the modules of the first two as drawn.
 */
const READ_BY_ZBAR = ['Code 128', 'ITF', 'Code 39', 'QR'];

/** Of a label drawn small, the lesser code has modules under the least that ISO 15394 allows (0.25 mm), and outside readers differ on it. */
const isLargest = ({ box }: Placed, _: number, codes: readonly Placed[]): boolean =>
  area(box) === Math.max(...codes.map((each) => area(each.box)));
type Placed = PressedLabel['codes'][number];

// One turn for each layout and kind, so that every turn comes up for every kind; the layouts' own turns come on top.
const cases = LAYOUTS.flatMap((layout, i) =>
  KINDS.filter((kind) => layout.kinds.includes(kind)).map((kind, k) => ({ layout, kind, turn: QUARTER_TURNS[(i + k) % 4] ?? 0 })),
);

describe('what the press draws, outside readers read', () => {
  for (const { layout, kind, turn } of cases) {
    if (layout.traits.includes('no-label')) continue;
    const rasterisers = kind === 'vector' ? RASTERISERS : RASTERISERS.filter((_, i) => (i === 0) === (kind === 'bilevel'));
    outsideCheck(
      `${layout.name}, ${kind}, page turned ${turn}: ${rasterisers.join(' and ')}`,
      [...rasterisers, 'pdfinfo', 'zbarimg', 'dmtxread'],
      async () => {
        const { pdf, media, labels } = await pressSample(await sample(layout, kind, turn));
        let read = 0;
        for (const rasteriser of rasterisers) {
          const pages = await rasterisedPages(rasteriser, pdf, 203);
          expect(pages).toHaveLength(labels.length);
          // A6 is 839.2 dots wide: one tool makes 839 of it and the other 840.
          for (const { width, height } of pages) {
            expect(Math.abs(width - (media.width / 72) * 203)).toBeLessThan(1);
            expect(Math.abs(height - (media.height / 72) * 203)).toBeLessThan(1);
          }
          for (const { page, scale, codes } of labels) {
            for (const { code, box } of scale < 1 ? codes.filter(isLargest) : codes) {
              const raster = pages[page - 1];
              if (!raster) throw new Error(`page ${page} is missing`);
              // A code that is not where it must be is not in this part of the page.
              const part = cut(raster, grow(box, 2));
              if (READ_BY_ZBAR.includes(code.symbology)) expect((await zbarCodes(part)).map(({ bytes }) => bytes)).toContain(code.bytes);
              else if (code.symbology === 'Data Matrix') expect(await dmtxCode(part, code.identifier === ']d2')).toBe(code.bytes);
              else continue;
              read++;
            }
          }
        }
        expect(read).toBeGreaterThan(0);
      },
    );
  }
});
