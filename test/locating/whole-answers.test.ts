import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
import type { Judged } from '../../src/locating/candidate.js';
import { withoutParts as withoutOthersParts } from '../../src/locating/whole-answers.js';
import { barsAt, barsIn, inches, judged, matrixAt } from './judged.js';

const withoutParts = (all: readonly Judged[]): readonly Judged[] => withoutOthersParts(all, () => false);

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

  it('leaves away ink with a matrix code alone inside ink that has bars, too, rules or not, and no frame', () => {
    const matrix = matrixAt(inches(2, 3, 1, 1));
    const all = judged(whole, 0.7, { edge: 'ink', codes: [barsAt(inches(2, 6, 2, 0.6)), matrix] });
    for (const more of [{}, { ruled: 'level' }] as const) expect(withoutParts([part({ codes: [matrix], ...more }), all])).toEqual([all]);
    const framed = part({ codes: [matrix], edge: 'frame' });
    expect(withoutParts([framed, all])).toEqual([framed, all]);
    // Rules that close such a part make nothing around it more than a label.
    const beside = judged(inches(0, 1, 5, 6), 0.7, { edge: 'ink', codes: all.codes });
    const closed = judged(upper, 0.8, { edge: 'ink', codes: [matrix], ruled: 'level', closed: true, clear: 40 });
    expect(withoutParts([closed, beside])).toEqual([beside]);
    const other = judged(whole, 0.7, { edge: 'ink', codes: [matrix, matrix] });
    expect(withoutParts([part({ codes: [matrix] }), other])).toHaveLength(2);
  });

  it("leaves away ink that ends inside a picture of a label's size, where text stands close above it", () => {
    const picture = judged(whole, 0.7, { edge: 'picture', codes });
    const across = judged(inches(1, 0.2, 6, 4), 0.9, { edge: 'ink', codes });
    expect(withoutParts([across, picture])).toEqual([picture]);
    const above = judged(inches(1, 0.2, 6, 0.83), 0.9, { edge: 'ink', codes });
    expect(withoutParts([above, picture])).toEqual([above, picture]);
    const around = judged(inches(0.5, 0.5, 5, 7), 0.9, { edge: 'ink', codes });
    expect(withoutParts([around, picture])).toEqual([around, picture]);
  });

  it('leaves away a part of all that lines leave room for, where both have one width', () => {
    const all = judged(whole, 0.9, { edge: 'ink', codes });
    const of = (cells: readonly Box[], isOther = false): readonly Judged[] => withoutOthersParts([all, part()], () => isOther, cells);
    expect(of([whole])).toEqual([all]);
    expect(of([])).toContainEqual(part());
    expect(of([whole], true)).toContainEqual(part());
    expect(of([inches(1, 1, 4, 7)])).toContainEqual(part());
    // Rules run through it and leave bars beside them out.
    const beside = part({ box: inches(1, 1, 3.2, 6), ruled: 'level' });
    const withBars = judged(whole, 0.9, { edge: 'ink', codes: [...codes, barsAt(inches(4.4, 2, 0.5, 2))] });
    expect(withoutOthersParts([withBars, beside], () => false, [whole])).toEqual([withBars]);
    for (const more of [{ closed: true }, { codes: withBars.codes }])
      expect(withoutOthersParts([withBars, { ...beside, ...more }], () => false, [whole])).toContainEqual({ ...beside, ...more });
    const corner = judged(inches(2, 2, 3, 4), 0.8, { edge: 'ink', codes });
    expect(withoutOthersParts([all, corner], () => false, [whole])).toContainEqual(corner);
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
  });

  it('leaves away what is little less than a likelier whole of its width, unless what is added says what it is', () => {
    const most = judged(inches(1, 1, 4, 5.4), 0.7, { edge: 'ink', codes, clear: mmToPt(8) });
    const of = (more: Partial<Judged>): Judged => judged(whole, 0.75, { edge: 'ink', codes, clear: mmToPt(20), ...more });
    expect(withoutParts([most, of({})])).toEqual([of({})]);
    for (const other of [of({ clear: mmToPt(9) }), of({ score: 0.65 }), of({ box: inches(1, 1, 4, 8) }), of({ box: inches(1, 1, 4.5, 6) })])
      expect(withoutParts([most, other])).toContainEqual(most);
    expect(withoutOthersParts([most, of({})], ({ y }) => y > most.box.y)).toContainEqual(most);
    const ruled = { ...most, ruled: 'level' } as const;
    expect(withoutParts([ruled, of({ ruled: 'level' })])).toEqual([of({ ruled: 'level' })]);
  });

  it('leaves away ink that goes on beyond rules with something else, and keeps it where what it has more is of a label', () => {
    const ruled = part({ ruled: 'level' });
    const more = judged(whole, 0.85, { edge: 'ink', codes, clear: mmToPt(20) });
    const across = (strip: Box, rules?: string): boolean => rules === 'level' && strip.y > upper.y;
    expect(withoutOthersParts([ruled, more], across)).toEqual([ruled]);
    expect(withoutParts([ruled, more])).toContainEqual(more);
  });

  it('leaves away ink that reaches beyond the sides of rules which close a label, over more than a line of white, or beyond those of others, over far more', () => {
    const wider = judged(inches(1, 1, 6.5, 4.5), 0.85, { edge: 'ink', codes });
    const ruled = (more: Partial<Judged>): Judged => part({ ruled: 'level', closed: true, clear: mmToPt(12), ...more });
    expect(withoutParts([ruled({}), wider])).toEqual([ruled({})]);
    for (const more of [{ closed: false }, { clear: mmToPt(2) }]) expect(withoutParts([ruled(more), wider])).toContainEqual(wider);
    const far = ruled({ closed: false, clear: mmToPt(20) });
    expect(withoutParts([far, wider])).toEqual([far]);
    const longer = judged(whole, 0.85, { edge: 'ink', codes });
    expect(withoutParts([ruled({}), longer])).toContainEqual(longer);
  });

  it('leaves rules inside a frame or a picture to it', () => {
    const frame = judged(whole, 0.9, { codes });
    expect(withoutParts([frame, part({ ruled: 'level' })])).toEqual([frame]);
  });
});
