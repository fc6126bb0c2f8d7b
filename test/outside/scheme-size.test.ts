import { describe, expect } from 'vitest';
import { pressAndProve, openSource, perfectSheets, verdictOf } from '../proof/prove-sample.js';
import { code128, gs1Code128, type CodeArt } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { label, layout, type LayoutPage } from '../samples/layout.js';
import { sample } from '../samples/sample.js';
import { rasterisedPages, turnedRight, type Dots } from './rasters.js';
import { outsideCheck } from './tools.js';

/** mm: the least module and height by handbook section 2.2 (SSCC), 3.1 (package number) and 4.3 (S10), all VERIFIED-S. Drawn a tenth larger. */
const SCHEMES: readonly { name: string; art: CodeArt; module: number; height: number }[] = [
  { name: 'SSCC', art: gs1Code128(['00', '006141411234567890']), module: 0.495, height: 12.7 },
  { name: 'package number', art: gs1Code128(['420', '00012'], ['92', '00123456789012345676']), module: 0.3302, height: 19.05 },
  { name: 'S10', art: code128('EE876543216XX'), module: 0.33, height: 12.5 },
];
const LARGER = 1.1;
const TURNS = [0, 90, 180, 270] as const;
/** Of the drawn size; 0.98 of the published one is at 0.891. */
const FACTORS = [1, 0.94, 0.905, 0.895, 0.887, 0.88, 0.84, 0.78];
const DPI = 300;
const DOT_MM = 25.4 / DPI;
const pt = (length: number): number => (length / 25.4) * 72;

/** A 4×6 page with the code alone, upright or as a ladder. */
function pageWith(art: CodeArt, module: number, height: number, turn: (typeof TURNS)[number]): LayoutPage {
  const d = new Drawing(288, 432);
  d.edge = 'page';
  d.text(20, 40, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 10 });
  d.bars(art, 144, 230, pt(module), pt(height), turn);
  return { width: 288, height: 432, regions: [label(d, 0, 0)] };
}

/**
 * A module's width and the bars' height on a page of dots, mm: the columns with a long black run are bars. Poppler blackens every dot that a bar touches:
 * the height comes out about a dot more than is drawn, and that is the dot which verify gives for rounding.
 */
function sizeOf(page: Dots, modules: number): { module: number; height: number } {
  const runs = Array.from({ length: page.width }, (_, x) => {
    let [run, longest] = [0, 0];
    for (let y = 0; y < page.height; y++) {
      run = page.data[y * page.width + x] === 0 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  });
  const longest = Math.max(...runs);
  const isBar = (run: number): boolean => run > 0.8 * longest;
  const long = runs.findLastIndex(isBar) + 1 - runs.findIndex(isBar);
  return { module: (long / modules / page.dpi) * 25.4, height: (longest / page.dpi) * 25.4 };
}

/** The verdicts on a drawn code when the label is printed at each factor, and what poppler's dots measure. */
async function judged(
  art: CodeArt,
  module: number,
  height: number,
): Promise<readonly { factor: number; turn: number; verdict: string; size: { module: number; height: number } }[]> {
  const cases = FACTORS.map((factor, index) => ({ factor, turn: TURNS[index % 4] ?? 0 }));
  const pages = cases.map(({ turn }) => pageWith(art, module, height, turn));
  const made = await sample(layout({ name: 'schemes', about: 'One code a page.', traits: [], pages: () => pages }), 'vector', 0);
  const source = await openSource(made.bytes);
  const sheets = perfectSheets(made, source, '300dpi').map((sheet, index) => ({
    ...sheet,
    scale: cases[index]?.factor ?? 1,
    proof: { codes: 'required' as const, allow: ['decodability', 'quiet-zone'] },
  }));
  const { pressed, proofs } = await pressAndProve(source, sheets, '300dpi');
  source.close();
  const drawn = await rasterisedPages('pdftoppm', pressed.bytes ?? new Uint8Array(), DPI);
  return cases.map(({ factor, turn }, index) => {
    const dots = drawn[index];
    if (!dots) throw new Error('a page for each case');
    const upright = turn % 180 === 0 ? dots : turnedRight(dots);
    return { factor, turn, verdict: verdictOf(proofs[index]), size: sizeOf(upright, art.columns) };
  });
}

describe("sizes by the number's own standard, printed smaller and smaller: the verdict changes where poppler measures the limit", () => {
  for (const { name, art, module, height } of SCHEMES) {
    outsideCheck(`${name}: bars`, ['pdftoppm', 'pdfinfo'], async () => {
      for (const { factor, turn, verdict, size } of await judged(art, module * LARGER, height * 2)) {
        expect(size.module, 'drawn as large as planned').toBeCloseTo(module * LARGER * factor, 2);
        const isUnder = size.module < 0.98 * module;
        expect(verdict, `at ${factor}, turned ${turn}: ${size.module.toFixed(4)} mm`).toBe(isUnder ? 'verify/module-range' : 'proved');
      }
    });

    outsideCheck(`${name}: height`, ['pdftoppm', 'pdfinfo'], async () => {
      const sides = new Set<boolean>();
      let judgedFactors = 0;
      // Bars wide enough at any factor.
      for (const { factor, turn, verdict, size } of await judged(art, module * 1.29, height * LARGER)) {
        expect(size.height, 'drawn as high as planned').toBeCloseTo(height * LARGER * factor, 0);
        // Which way a dot is rounded is each program's own.
        if (Math.abs(size.height - 0.98 * height) < 1.01 * DOT_MM) continue;
        const isUnder = size.height < 0.98 * height;
        sides.add(isUnder);
        judgedFactors += 1;
        expect(verdict, `at ${factor}, turned ${turn}: ${size.height.toFixed(2)} mm`).toBe(isUnder ? 'verify/bars-too-low' : 'proved');
      }
      expect([sides.size, judgedFactors >= FACTORS.length - 3]).toEqual([2, true]);
    });
  }
});
