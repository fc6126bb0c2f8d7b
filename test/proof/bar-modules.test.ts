import bwipjs from 'bwip-js';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { barModules, plannedModules, wideOf } from '../../src/proof/bar-modules.js';
import type { CodeMeasure } from '../../src/proof/measure-code.js';
import { brokenLimit } from '../../src/proof/verdict.js';
import { codeOf } from './code-of.js';

/** The widths of a code's elements in modules, with wide ones `ratio` narrow ones wide. */
function elements(bcid: 'code39' | 'interleaved2of5', text: string, ratio: number): readonly number[] {
  const [{ sbs }] = bwipjs.raw({ bcid, text } as never) as unknown as [{ sbs: readonly number[] }];
  return (sbs.length % 2 === 0 ? sbs.slice(0, -1) : sbs).map((each) => (each > 1 ? ratio : 1));
}

/** The same in whole dots, each edge rounded by itself. */
function inDots(modules: readonly number[], dots: number): readonly number[] {
  let at = 0;
  return modules.map((each) => {
    const from = Math.round(at);
    at += each * dots;
    return Math.round(at) - from;
  });
}

const ITF = elements('interleaved2of5', '13579246801234', 3);
const CODE39 = elements('code39', 'SAMPLE-7', 2);

describe('narrow and wide elements', () => {
  it('are told apart on coarse dots, where other gaps between widths are as wide', () => {
    // The printer's driver moves an edge of some bars by a dot.
    const clean = inDots(CODE39, 3);
    const moved = clean.map((dots, at) => (at < 20 || at > 60 ? dots : at % 2 === 0 ? dots - 1 : dots + 1));
    expect(new Set(moved)).toEqual(new Set([2, 3, 4, 5, 6, 7]));
    for (const widths of [clean, moved])
      expect(barModules(widths, 'Code 39')?.modules.map((each) => each > 1)).toEqual(CODE39.map((each) => each > 1));
  });

  it('of no symbol are not told, however their widths lie', () => {
    expect(barModules(clean39WithOneMore(), 'Code 39')).toBeUndefined();
    expect(barModules(inDots(ITF, 4).toReversed().slice(2), 'ITF')).toBeUndefined();
  });

  // 3.65 dots: narrow ones come out 3 or 4 wide, and by their mean alone the code would be a few per cent too small.
  it.each([3.65, 3.75, 3.83, 3.9, 4.1, 4.3])('of %s dots a module are of their size when all of them together are', (dots) => {
    const found = barModules(inDots(ITF, dots), 'ITF');
    if (!found) throw new Error('no symbol');
    const planned = { moduleDots: dots, wide: wideOf(ITF, 'ITF') };
    expect(plannedModules(found.modules, planned)).toEqual(ITF);
    const measure = { moduleDots: found.module, modules: found.modules, decodability: { mean: 1, worst: 1, atGain: 1 } };
    const proved = (plannedBars: typeof planned) => ({
      code: codeOf('13579246801234', ']I1', 'ITF'),
      moduleDots: found.module,
      measure: { ...measure, farthestOff: 0, quiet: { before: 20, after: 20 } } as unknown as CodeMeasure,
      plannedBars,
    });
    const verdict = (moduleDots: number): string | undefined =>
      brokenLimit(proved({ ...planned, moduleDots }), { codes: 'required' }, gridOf('203dpi'), { scale: 1 })?.code;
    expect(verdict(dots)).toBeUndefined();
    expect([verdict(dots * 1.01), verdict(dots * 0.99)]).toEqual(['verify/size', 'verify/size']);
  });
});

/** A code of which one narrow element is wide: four wide ones of nine. */
function clean39WithOneMore(): readonly number[] {
  const clean = [...inDots(CODE39, 3)];
  const narrow = clean.indexOf(3, 20);
  clean[narrow] = 6;
  return clean;
}
