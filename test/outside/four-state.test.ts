import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { pressDocument } from '../../src/press/press-document.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import { findFourState } from '../../src/reading/four-state.js';
import { judgeFourState } from '../../src/proof/four-state-size.js';
import { openImage } from '../../src/reading/open-image.js';
import { barsOf, vectorPage } from '../reading/four-state-art.js';
import { RASTERISERS, rasterisedPages, type Dots } from './rasters.js';
import { bytesOf, inTempFolder, outsideCheck, runTool } from './tools.js';

/** Worked examples of USPS-B-3200 and the publisher's test file (handbook section 11.5; VERIFIED-P through the file, re-computed). */
const EXAMPLES = [
  ['01234567094987654321', '', 'ATTFATTDTTADTAATTDTDTATTDAFDDFADFDFTFFFFFTATFAAAATDFFTDAADFTFDTDT'],
  ['01234567094987654321', '01234', 'DTTAFADDTTFTDTFTFDTDDADADAFADFATDDFTAAAFDTTADFAAATDFDTDFADDDTDFFT'],
  ['01234567094987654321', '012345678', 'ADFTTAFDTTTTFATTADTAAATFTFTATDAAAFDDADATATDTDTTDFDTDATADADTDFFTFA'],
  ['01234567094987654321', '01234567891', 'AADTFFDFTDADTAADAATFDTDDAAADDTDTTDAFADADDDTFFFDDTTTADFAAADFTDAADA'],
  ['53379777234994544928', '51135759461', 'DAFDTDAFFDFTDADTDDFTTFDTATATFFFDFTTFFFTFDDTDAAFATDFTFDFDTTTDTTFDA'],
  ['40120111574675115924', '', 'FAAADFDDADFFDAFDFFTFDFFFFTADFADTTTATTTADDDAFTATADDTADDDATATFFTFDD'],
] as const;

describe('Intelligent Mail bars', () => {
  it.each(EXAMPLES)('of %s %s, drawn from the published letters, are told as they were published', async (_, __, letters) => {
    const source = await vectorPage(barsOf(letters));
    const [row] = findFourState(source.page(1), { x: 0, y: 0, width: 288, height: 432 });
    expect(row?.bars).toBe(letters);
    source.close();
  });

  for (const [tracking, routing, letters] of EXAMPLES) {
    outsideCheck(`as zint draws ${tracking} ${routing}: the published letters, in the sizes of the specification`, ['zint'], () =>
      inTempFolder(async (folder) => {
        const file = `${folder}/code.png`;
        // At scale 4 a bar and its gap are 16 pixels: 43 elements to the inch are 344 dpi.
        const dpi = 344;
        runTool('zint', [
          ...['-b', '85', '--scale', '4', '--compliantheight'],
          ...['-d', routing === '' ? tracking : `${tracking}-${routing}`, '-o', file],
        ]);
        const code = await sharp(bytesOf(file)).toBuffer({ resolveWithObject: true });
        const beside = { left: 100, top: 200, right: 4 * dpi - 100 - code.info.width, bottom: 6 * dpi - 200 - code.info.height };
        const label = await sharp(code.data)
          .extend({ ...beside, background: 'white' })
          .withMetadata({ density: dpi })
          .png()
          .toBuffer();
        const source = await openImage(new Uint8Array(label));
        if ('refused' in source) throw new Error(source.refused.message);
        const page = source.page(1);
        const [row] = findFourState(page, { x: 0, y: 0, width: page.width, height: page.height });
        expect(row?.bars).toBe(letters);
        const measures = row ? judgeFourState(row, 1, 0.18) : [];
        expect(measures).toHaveLength(6);
        expect(measures.filter(({ isInside }) => !isInside)).toEqual([]);
        source.close();
      }),
    );
  }

  for (const rasteriser of RASTERISERS) {
    outsideCheck(`pressed, and measured on a raster of ${rasteriser}: the published letters`, [rasteriser, 'pdfinfo'], async () => {
      const grid = gridOf('203dpi');
      for (const [, , letters] of EXAMPLES) {
        const source = await vectorPage(barsOf(letters));
        const sheet = { ...pageSheet(1, 288, 432), role: 'label' as const };
        const { bytes } = await pressDocument(source, [sheet], mediaNamed('4x6in'), grid);
        source.close();
        const [page] = await rasterisedPages(rasteriser, bytes ?? new Uint8Array(), 203);
        if (!page) throw new Error('no page');
        expect(lettersOn(page)).toBe(letters);
      }
    });
  }
});

/** Above the writing of the page there are the bars only. */
const BARS_END = 1.4 * 203;

/** T, A, D and F by where ink begins and ends in each bar; told without our reader. */
function lettersOn({ width, data }: Dots): string {
  const isInk = (x: number, y: number): boolean => data[y * width + x] === 0;
  const bars: { top: number; bottom: number }[] = [];
  for (let x = 0, before = false; x < width; x++) {
    const rows = Array.from({ length: BARS_END }, (_, y) => y).filter((y) => isInk(x, y));
    const [top, bottom] = [rows[0], rows.at(-1)];
    if (top === undefined || bottom === undefined) {
      before = false;
      continue;
    }
    const last = bars.at(-1);
    if (before && last) {
      last.top = Math.min(last.top, top);
      last.bottom = Math.max(last.bottom, bottom);
    } else bars.push({ top, bottom });
    before = true;
  }
  const [least, most] = [Math.min(...bars.map(({ top }) => top)), Math.max(...bars.map(({ bottom }) => bottom))];
  // Ascenders and descenders are 0.048 in, 9.7 dots, beyond the trackers.
  return bars.map(({ top, bottom }) => 'TADF'[(top - least < 5 ? 1 : 0) + (most - bottom < 5 ? 2 : 0)]).join('');
}
