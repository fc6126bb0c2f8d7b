import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { badlyDecodable, codesDiffer, modulesTooFine, tooFine, uneven, unmeasured, type BarsDrawn } from '../../src/proof/reasons.js';
import { codeOf } from './code-of.js';

const code = codeOf('A1');
const DRAWN: readonly (readonly [way: string, drawn: BarsDrawn, cure: RegExp])[] = [
  ['left as drawn', { scale: 1, barsAsDrawn: true }, /^Let bars be brought onto the printer's dots: take `bars: as-drawn` out/],
  ['shrunk', { scale: 0.97 }, /^Let the recipe leave the label at true size/],
  ['brought as near to whole dots as can be', { scale: 0.985 }, /^Get the label from the channel .* or print it on a finer printer\./],
];

describe('what a remedy tells to do', () => {
  it.each(DRAWN)('can help with uneven bars of a label that is %s', (_, drawn, cure) => {
    for (const { remedy } of [uneven(code, 1.2, 2.4, drawn), unmeasured(code, drawn), badlyDecodable(code, 0.4, 0.5, 2.4, drawn)]) {
      expect(remedy).toMatch(cure);
      expect(remedy).toContain('`verify: { allow: decodability }`');
    }
  });

  it('speaks of true size only where the label is shrunk', () => {
    const nothing = { same: [], lost: [], changed: [], moved: [], extra: [] };
    const all = (scale: number): readonly string[] => [
      tooFine(code, 1.5, gridOf('203dpi'), { scale }).remedy,
      modulesTooFine(code, 1.5, gridOf('203dpi'), 0.25, { scale }).remedy,
      codesDiffer({ ...nothing, lost: [code] }, { scale })?.remedy ?? '',
    ];
    for (const remedy of all(0.9)) expect(remedy).toContain('true size');
    for (const remedy of all(1)) expect(remedy).toMatch(/^(?!.*true size).*finer printer/);
  });

  it('is something that a seller can do tonight where the drawing itself is wrong', () => {
    const nothing = { same: [], lost: [], changed: [], moved: [], extra: [] };
    const pair = [{ source: code, output: code }];
    for (const differs of [{ changed: pair }, { moved: pair }]) {
      const reason = codesDiffer({ ...nothing, ...differs }, { scale: 1 });
      expect(reason?.remedy).toMatch(/^Do not print it\. Get the label from the channel in another form/);
    }
  });
});
