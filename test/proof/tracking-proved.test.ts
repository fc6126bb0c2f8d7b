import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import * as reasons from '../../src/proof/reasons.js';
import { withTracking, type Weighed } from '../../src/proof/tracking-proved.js';
import { codeOf, gs1Of } from './code-of.js';

const grid = gridOf('203dpi');
const SSCC = '00006141411234567890';
const weighed = (code: Weighed['code'], breaks?: Weighed['breaks']): Weighed => ({ code, moduleDots: undefined, breaks });

const link = codeOf('https://studio.example', ']Q1', 'QR');
const reason = reasons.quietAround(link, 2.7, 4);
const said = (broken: Weighed, ...others: readonly Weighed[]): string =>
  withTracking(reason, broken, [broken, ...others], 1, { codes: 'required' }, grid).message.slice(reason.message.length);

describe('a code beside the tracking code lies too near to something', () => {
  const broken = weighed(link, reason);

  it('says that the tracking code is proved good, and how sure it is that it is one', () => {
    expect(said(broken, weighed(gs1Of(SSCC)))).toBe('; the tracking code itself, a Code 128 code, is proved good');
    expect(said(broken, weighed(codeOf('ZX4471098821')))).toBe('; what is likely the tracking code, a Code 128 code, is proved good');
  });

  it('says so where the code only repeats the number of the bars', () => {
    const repeats = weighed(codeOf(SSCC, ']Q3', 'QR'), reason);
    expect(said(repeats, weighed(gs1Of(SSCC)))).toBe('; the tracking code itself, a Code 128 code, is proved good');
  });

  it('says nothing where that is not so', () => {
    expect(said(broken)).toBe('');
    expect(said(broken, weighed(gs1Of(SSCC), reason)), 'it breaks a limit itself').toBe('');
    expect(said(broken, weighed(gs1Of('00006141411234567891'))), 'its check digit is wrong').toBe('');
    expect(said(weighed(gs1Of(SSCC), reason), weighed(codeOf('ZX4471098821'))), 'it is the tracking code').toBe('');
    expect(said(broken, weighed(codeOf('https://other.example', ']Q1', 'QR'))), 'there is none').toBe('');
  });
});
