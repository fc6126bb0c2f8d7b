import { describe, expect, it } from 'vitest';
import { mmToPt } from '../../src/geometry/length.js';
import type { Judged } from '../../src/locating/candidate.js';
import { withoutParts } from '../../src/locating/whole-answers.js';
import { barsIn, inches, judged } from './judged.js';

const whole = inches(1, 1, 4, 6);
const upper = inches(1, 1, 4, 4.5);
const codes = [barsIn(upper)];
const part = (more: Partial<Judged> = {}): Judged => judged(upper, 0.8, { edge: 'ink', codes, ...more });

describe('withoutParts', () => {
  it('leaves away ink inside rules from side to side and inside a picture of a known size', () => {
    for (const more of [{ edge: 'ink', ruled: 'level' }, { edge: 'picture' }] as const) {
      const answer = judged(whole, 0.7, { ...more, codes });
      expect(withoutParts([part(), answer])).toEqual([answer]);
    }
  });

  it('keeps ink inside an answer that is no label by itself, a picture of another size or one with more codes', () => {
    const poor = judged(whole, 0.6, { edge: 'ink', ruled: 'level', codes });
    expect(withoutParts([part(), poor])).toEqual([part()]);
    for (const other of [
      judged(inches(0.5, 0.5, 6, 6.5), 0.7, { edge: 'picture', codes }),
      judged(whole, 0.7, { edge: 'picture', codes: [...codes, ...codes] }),
    ])
      expect(withoutParts([part(), other])).toContainEqual(part());
  });

  it("leaves away ink that a line's white parts from the rest, where the whole stands clearer", () => {
    const of = (clear: number): Judged => judged(whole, 0.7, { edge: 'ink', codes, clear });
    const near = part({ clear: mmToPt(2.5) });
    expect(withoutParts([near, of(mmToPt(6))])).toEqual([of(mmToPt(6))]);
    expect(withoutParts([near, of(mmToPt(3))])).toContainEqual(near);
    const far = part({ clear: mmToPt(5) });
    expect(withoutParts([far, of(mmToPt(9))])).toContainEqual(far);
  });

  it('leaves rules inside a frame or a picture to it', () => {
    const frame = judged(whole, 0.9, { codes });
    expect(withoutParts([frame, part({ ruled: 'level' })])).toEqual([frame]);
  });
});
