import { describe, expect, it } from 'vitest';
import { pageLine } from '../../src/report/explain-json.js';
import { explainText } from '../../src/report/explain-text.js';
import { explainSample } from '../explain/explain-sample.js';
import { FAMILY, GIVEN, STREETS, TOWNS } from '../samples/names.js';

const LAYOUTS_LOOKED_AT = ['letter-upper-sideways', 'letter-ninety-percent', 'label-then-slip', 'a4-quarter-ruled-cells'] as const;
const SHOWN = { colour: false, picture: undefined };

describe('what explain says', () => {
  it.each(LAYOUTS_LOOKED_AT)('of %s holds no name, no address, no whole number, and no gap', async (layout) => {
    const { known, explained } = await explainSample(layout);
    const said = explained.pages.map((page) => explainText(page, SHOWN) + pageLine(page, undefined)).join('');
    const numbers = known.expected.pages
      .flatMap(({ labels }) => labels.flatMap(({ codes }) => codes))
      .map(({ bytes }) =>
        Buffer.from(bytes, 'hex')
          .toString('latin1')
          .replaceAll(/[^\x21-\x7e]/g, ''),
      );
    expect(numbers.length).toBeGreaterThan(0);
    for (const secret of [...numbers, ...GIVEN, ...FAMILY, ...TOWNS, ...STREETS]) expect(said).not.toContain(secret);
    expect(said).not.toMatch(/undefined|NaN|null/);
  });

  it('as text says what can not be measured in words', async () => {
    const { explained } = await explainSample('letter-upper-sideways');
    const text = explained.pages.map((page) => explainText(page, SHOWN)).join('');
    expect(text).toMatch(/Data Matrix, .*; its module can not be measured\n/);
    expect(text).toMatch(/\[3\] code +bars can not be measured; can be read from flawless dots\n/);
  });

  it('as text explains the lines of the picture, and only when there is one', async () => {
    const { explained } = await explainSample('letter-upper-sideways');
    const [page] = explained.pages;
    if (!page) throw new Error('a page');
    expect(explainText(page, SHOWN)).not.toContain('dashes');
    expect(explainText(page, { colour: false, picture: 'a.png' })).toMatch(/picture +a\.png\n +long dashes: label; dots: code;/);
  });

  it('as JSON is rounded, on one line, with its picture', async () => {
    const { explained } = await explainSample('letter-upper-sideways');
    const [page] = explained.pages;
    if (!page) throw new Error('a page');
    const line = pageLine(page, 'a.png');
    expect(line).toMatch(/^\{"type":"page",.*\}\n$/);
    const value = JSON.parse(line) as { picture: string; asItIs: { factor: number; codes: { moduleDots: number }[] } };
    expect(value.picture).toBe('a.png');
    expect(value.asItIs.factor).toBe(0.4706);
    expect(line).not.toMatch(/\.\d{5}/);
  });
});
