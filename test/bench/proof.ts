import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { pressDocument } from '../../src/press/press-document.js';
import { proveDocument } from '../../src/proof/prove.js';
import { SecondOpinions } from '../../src/proof/second-opinion.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';
import { media4x6, onWholeDots, openSource, perfectSheets } from '../proof/prove-sample.js';

/** CPU of the proof of single labels, ms: one raster, one decode, measuring. Medians over labels of the best of `times`. */
export interface ProofCost {
  readonly labels: number;
  readonly medianMs: number;
}

const GRID: GridName = '203dpi';

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;

/** Proves each vector label of the samples by itself, those with a MaxiCode apart. A page stays open, so that the source's codes are known, as they are when a recipe has found the label. */
export async function proofCost(times: number): Promise<{ readonly plain: ProofCost; readonly maxiCode: ProofCost }> {
  const [plain, maxiCode]: [number[], number[]] = [[], []];
  for (const layout of LAYOUTS.filter(({ kinds }) => kinds.includes('vector'))) {
    const made = await sample(layout, 'vector', 0);
    const source = await openSource(made.bytes);
    for (const sheet of await onWholeDots(perfectSheets(made, source, GRID), source, GRID)) {
      const { bytes, placements } = await pressDocument(source, [sheet], media4x6, gridOf(GRID));
      if (!bytes) continue;
      let best = Infinity;
      let hasMaxiCode = false;
      for (let time = 0; time < times; time++) {
        const before = process.cpuUsage();
        const [proof] = await proveDocument(source, bytes, [sheet], placements, media4x6, gridOf(GRID));
        const { user, system } = process.cpuUsage(before);
        best = Math.min(best, (user + system) / 1000);
        hasMaxiCode = proof?.codes.some(({ code }) => code.symbology === 'MaxiCode') ?? false;
      }
      (hasMaxiCode ? maxiCode : plain).push(best);
    }
    source.close();
  }
  const cost = (each: readonly number[]): ProofCost => ({ labels: each.length, medianMs: median(each) });
  return { plain: cost(plain), maxiCode: cost(maxiCode) };
}

/** CPU of the second engine's drawing of single labels and its comparison, ms; the median of the best of `times`, each opened anew. */
export async function secondOpinionCost(times: number): Promise<ProofCost> {
  const costs: number[] = [];
  for (const layout of LAYOUTS.filter(({ kinds }) => kinds.includes('vector'))) {
    const made = await sample(layout, 'vector', 0);
    const source = await openSource(made.bytes);
    for (const sheet of perfectSheets(made, source, GRID)) {
      let best = Infinity;
      for (let time = 0; time < times; time++) {
        const before = process.cpuUsage();
        const opinions = new SecondOpinions(source, made.bytes, 'always', gridOf(GRID));
        await opinions.about(sheet.page, sheet.box);
        await opinions.close();
        const { user, system } = process.cpuUsage(before);
        best = Math.min(best, (user + system) / 1000);
      }
      costs.push(best);
    }
    source.close();
  }
  return { labels: costs.length, medianMs: median(costs) };
}
