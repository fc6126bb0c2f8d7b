import { openPdf } from '../../src/reading/open-pdf.js';
import { survey } from '../../src/locating/survey.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';
import { media4x6 } from '../proof/prove-sample.js';

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;

/**
 * CPU of finding the labels on the samples' vector pages without reading a code, ms: words, ink, frames, candidates, the choice. Each document is opened
 * anew, as a page's facts are gathered once; the median over pages of the best of `times`.
 */
export async function locationCost(times: number): Promise<{ readonly pages: number; readonly medianMs: number }> {
  const best: number[] = [];
  for (const layout of LAYOUTS.filter(({ kinds }) => kinds.includes('vector'))) {
    const { bytes } = await sample(layout, 'vector', 0);
    const pages: number[] = [];
    for (let time = 0; time < times; time++) {
      const document = await openPdf(bytes);
      if ('refused' in document) throw new Error(document.refused.message);
      for (let index = 0; index < document.pageCount; index++) {
        const page = document.page(index + 1);
        const before = process.cpuUsage();
        await survey(page, media4x6, () => Promise.resolve([]));
        const { user, system } = process.cpuUsage(before);
        pages[index] = Math.min(pages[index] ?? Infinity, (user + system) / 1000);
      }
      document.close();
    }
    best.push(...pages);
  }
  return { pages: best.length, medianMs: median(best) };
}
