import { describe, expect, it } from 'vitest';
import { mmToPt } from '../../src/geometry/length.js';
import type { Judged } from '../../src/locating/candidate.js';
import { choose } from '../../src/locating/choose.js';
import { inches, judged } from './judged.js';

const label = inches(1, 1, 4, 6);

describe('choose', () => {
  it('takes the best of several answers for one place, names the next, and knows no rivals where it is clear', () => {
    const best = judged(label, 0.95);
    const next = judged(inches(1, 1, 4, 3), 0.7);
    expect(choose([next, best])).toEqual({ labels: [{ ...best, next }], rivals: [] });
    expect(choose([best]).labels[0]?.next).toBeUndefined();
  });

  it('names an answer that comes too near; the same box found twice is none', () => {
    const near = judged(inches(1, 1, 4, 7), 0.93);
    expect(choose([judged(label, 0.95), near]).rivals).toEqual([near]);
    const again = judged({ ...label, x: label.x + 3 }, 0.95, { edge: 'ink' });
    expect(choose([judged(label, 0.95), again]).rivals).toEqual([]);
  });

  it('ink of no known size in which all that has codes stands far from the rest is no sure answer', () => {
    const whole = judged(inches(1, 1, 7, 3.7), 0.86, { edge: 'ink' });
    const part = (more: Partial<Judged> = {}): Judged =>
      judged(inches(1, 1, 3.65, 3.7), 0.78, { edge: 'ink', codes: whole.codes, clear: mmToPt(17), ...more });
    expect(choose([whole, part()]).rivals).toEqual([part()]);
    expect(choose([whole, part({ clear: mmToPt(14) })]).rivals).toEqual([]);
    expect(choose([whole, part({ codes: [] })]).rivals).toEqual([]);
    expect(choose([{ ...whole, ruled: 'level' }, part()]).rivals).toEqual([]);
    const known = judged(inches(1, 1, 6, 4), 0.86, { edge: 'ink' });
    expect(choose([known, part({ codes: known.codes })]).rivals).toEqual([]);
  });

  it('whether something is one label or several alike is never sure', () => {
    const whole = judged(label, 0.95, { edge: 'picture' });
    const place = judged(inches(1, 1, 4, 3), 0.7, { edge: 'ink', alike: 2 });
    expect(choose([whole, place]).rivals).toEqual([place]);
  });

  it('a page of the size of the media has no rivals inside it', () => {
    const page = judged(inches(0, 0, 4, 6), 0.95, { edge: 'page' });
    const { labels, rivals } = choose([page, judged(inches(0.1, 0.1, 3.8, 5.8), 0.94)]);
    expect(labels).toMatchObject([page]);
    expect(rivals).toEqual([]);
  });

  it('takes nothing that is too unlike a label', () => {
    expect(choose([judged(label, 0.6)])).toEqual({ labels: [], rivals: [] });
    expect(choose([])).toEqual({ labels: [], rivals: [] });
  });

  it('gives labels in reading order: rows from the top, in a row from the left, even when one stands a little lower', () => {
    const [a, b, c] = [judged(inches(0.2, 1.1, 4, 6), 0.9), judged(inches(4.4, 1, 4, 6), 0.91), judged(inches(0.2, 8, 4, 6), 0.99)];
    expect(choose([c, b, a]).labels).toMatchObject([a, b, c]);
  });

  it('is sure of one place that was found in two ways, however clear it stands', () => {
    const ink = judged(inches(1, 1, 3.5, 4.8), 0.87, { edge: 'ink', clear: 60 });
    const { labels, rivals } = choose([ink, { ...ink }]);
    expect([labels.length, rivals]).toEqual([1, []]);
  });
});
