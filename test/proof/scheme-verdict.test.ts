import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import type { ProvedCode } from '../../src/proof/judge-codes.js';
import type { CodeMeasure } from '../../src/proof/measure-code.js';
import type { Code } from '../../src/reading/source.js';
import { SCHEME_LIMITS } from '../../src/proof/scheme-limits.js';
import { judgeSchemes } from '../../src/proof/scheme-verdict.js';
import { codeOf, gs1Of } from './code-of.js';

const grid = gridOf('203dpi');
const DOT_MM = 25.4 / 203;

/** A code with bars of such a size on the print, 156 modules long. */
function printed(code: Code, moduleMm: number, barHeightMm: number, plannedDots?: number): ProvedCode {
  const measure: CodeMeasure = {
    moduleDots: moduleMm / DOT_MM,
    moduleMm,
    moduleMil: moduleMm / 0.0254,
    barHeightMm,
    quiet: { before: 20, after: 20 },
    farthestOff: 0,
    decodability: { mean: 1, worst: 1, atGain: 1 },
    modulation: 1,
    defects: 0,
    grade: 4,
    modules: Array<number>(156).fill(1),
  };
  return { code, moduleDots: measure.moduleDots, measure, plannedDots };
}

const SSCC = gs1Of('00006141411234567890');
const PACKAGE = gs1Of('42000012~9200123456789012345676');
const S10 = codeOf('EE876543216CA');
const OF_SCHEME: readonly (readonly ['sscc' | 'package' | 's10', Code])[] = [
  ['sscc', SSCC],
  ['package', PACKAGE],
  ['s10', S10],
];
const none = { allow: [] };

describe('sizes of a code against its own standard', () => {
  it.each(OF_SCHEME)('%s: as small as is published holds nothing and is not told', (name, code) => {
    const { least, height } = SCHEME_LIMITS[name];
    expect(judgeSchemes([printed(code, least.value, height.value)], 1, none, grid)).toEqual({ reason: undefined, notes: [] });
  });

  it('an SSCC of 3 dots at 203 dpi is held, and says whose fault it is', () => {
    const { reason, notes } = judgeSchemes([printed(SSCC, 3 * DOT_MM, 25, 3)], 1, none, grid);
    expect(reason).toEqual({
      code: 'verify/module-range',
      message:
        'the narrowest bars of a Code 128 code with an SSCC come out 0.375 mm wide, and so they do in the source; at least 0.495 mm by rule (GS1 and ISO 15394)',
      remedy:
        "Ask the channel for the label in its full size. If this channel's labels are read all the same, set the limit aside: `verify: { allow: module-range }` below `options:` of the channel.",
      allow: 'module-range',
    });
    expect(notes).toEqual(['a Code 128 code with an SSCC: narrowest bars of 0.375 mm, at least 0.495 mm by rule (GS1 and ISO 15394)']);
  });

  it('a label that the recipe shrinks is to be left at true size', () => {
    const { reason } = judgeSchemes([printed(SSCC, 0.45, 25, 0.45 / DOT_MM)], 0.9, none, grid);
    expect(reason?.message).toContain("come out 0.450 mm wide at 90 % of the label's size; ");
    expect(reason?.remedy).toMatch(/^Let the recipe leave the label at true size/);
    const low = judgeSchemes([printed(SSCC, 0.5, 11.7)], 0.9, none, grid).reason;
    expect(low?.message).toBe(
      "the bars of a Code 128 code with an SSCC come out 11.7 mm high at 90 % of the label's size; at least 12.7 mm by rule (ISO 15394)",
    );
  });

  it('bars drawn anew too narrow are to be left as drawn', () => {
    const { reason } = judgeSchemes([printed(S10, 2 * DOT_MM, 20, 2.7)], 1, none, grid);
    expect(reason?.message).not.toContain('source');
    expect(reason?.remedy).toContain('`scale: { bars: as-drawn }`');
  });

  it('low bars are held unless a recipe sets it aside, and then told', () => {
    const low = [printed(PACKAGE, 0.375, 15)];
    expect(judgeSchemes(low, 1, none, grid).reason?.message).toBe(
      'the bars of a Code 128 code with a package number come out 15.0 mm high, and so they do in the source; at least 19.05 mm by rule (USPS Publication 199)',
    );
    expect(judgeSchemes(low, 1, { allow: ['bar-height'] }, grid)).toEqual({
      reason: undefined,
      notes: ['a Code 128 code with a package number: bars 15.0 mm high, at least 19.05 mm by rule (USPS Publication 199)'],
    });
    expect(judgeSchemes(low, 1, { allow: ['module-range'] }, grid).reason?.code).toBe('verify/bars-too-low');
  });

  it('an S10 number wants 15 % of its length as well (handbook section 4.3, VERIFIED-S)', () => {
    // 156 modules of 0.55 mm are 85.8 mm: 12.87 mm high.
    expect(judgeSchemes([printed(S10, 0.55, 12.1)], 1, none, grid).reason?.message).toContain('at least 12.5 mm');
    expect(judgeSchemes([printed(S10, 0.55, 12.4)], 1, none, grid).reason?.message).toContain('at least 12.87 mm');
    expect(judgeSchemes([printed(S10, 0.51, 12.5)], 1, none, grid).reason).toBeUndefined();
  });

  it('modules wider than published are told only', () => {
    expect(judgeSchemes([printed(PACKAGE, 0.626, 25)], 1, none, grid)).toEqual({
      reason: undefined,
      notes: ['a Code 128 code with a package number: narrowest bars of 0.626 mm, at most 0.533 mm by rule (USPS Publication 199)'],
    });
  });

  it('a limit from memory is told only', () => {
    expect(judgeSchemes([printed(codeOf('1Z999AA10123456784'), 0.375, 18)], 1, none, grid)).toEqual({
      reason: undefined,
      notes: [
        "a Code 128 code with a number from 1Z: bars 18.0 mm high, at least 25.4 mm by rule (the carrier's guide, not seen in its text)",
      ],
    });
  });

  it('what is published for labels in general holds GS1-128 by which the parcel is known, and is told of other tracking codes', () => {
    const own = gs1Of('99ABC1234567890123');
    expect(judgeSchemes([printed(own, 0.375, 9)], 1, none, grid).reason?.code).toBe('verify/bars-too-low');
    // Beside an SSCC it is one of the codes that no carrier needs to read.
    expect(judgeSchemes([printed(SSCC, 0.5, 25), printed(own, 0.375, 9)], 1, none, grid)).toEqual({ reason: undefined, notes: [] });
    const plain = codeOf('QH0417225588');
    expect(judgeSchemes([printed(plain, 0.375, 9)], 1, none, grid)).toEqual({
      reason: undefined,
      notes: ['a Code 128 code: bars 9.0 mm high, at least 12.7 mm by rule (ISO 15394)'],
    });
  });

  it('of two codes with one number the better one counts, and the other is told', () => {
    const small = printed(S10, 0.375, 8);
    expect(judgeSchemes([small], 1, none, grid).reason?.code).toBe('verify/bars-too-low');
    const both = judgeSchemes([small, printed(S10, 0.375, 20)], 1, none, grid);
    expect(both.reason).toBeUndefined();
    expect(both.notes).toHaveLength(1);
    expect(judgeSchemes([small, printed(codeOf('RR473124829CA'), 0.375, 20)], 1, none, grid).reason).toBeDefined();
  });

  it('what was not measured is not judged', () => {
    expect(judgeSchemes([{ code: SSCC, moduleDots: 2 }], 1, none, grid)).toEqual({ reason: undefined, notes: [] });
  });

  it('says no number', () => {
    for (const [, code] of OF_SCHEME) {
      const { reason, notes } = judgeSchemes([printed(code, 0.26, 8)], 1, none, grid);
      expect(`${reason?.message} ${notes.join(' ')}`).not.toMatch(/\d{6}/);
    }
  });
});

describe('made smaller, the verdict changes at the limit and nowhere else', () => {
  const factor = fc.double({ min: 0.5, max: 1.5, noNaN: true });

  it('modules: at 0.98 of the least', () => {
    fc.assert(
      fc.property(fc.constantFrom(...OF_SCHEME), factor, ([name, code], by) => {
        const { least } = SCHEME_LIMITS[name];
        const { reason } = judgeSchemes([printed(code, least.value * by, 60)], 1, none, grid);
        expect(reason?.code).toBe(by < 0.98 ? 'verify/module-range' : undefined);
      }),
    );
  });

  it('bars: at 0.98 of the least, a dot given', () => {
    fc.assert(
      fc.property(fc.constantFrom(...OF_SCHEME), factor, ([name, code], by) => {
        const { least, height } = SCHEME_LIMITS[name];
        const { reason } = judgeSchemes([printed(code, least.value, height.value * by - DOT_MM)], 1, none, grid);
        expect(reason?.code).toBe(by < 0.98 ? 'verify/bars-too-low' : undefined);
      }),
    );
  });
});
