import { describe, expect, it } from 'vitest';
import { choose } from '../../src/locating/choose.js';
import { inches, judged, matrixAt } from './judged.js';

const label = inches(1, 1, 4, 6);

describe('choose', () => {
  it('takes the best of several answers for one place, and knows no rivals where it is clear', () => {
    const best = judged(label, 0.95);
    expect(choose([judged(inches(1, 1, 4, 3), 0.7), best])).toEqual({ labels: [best], rivals: [] });
  });

  it('names an answer that comes too near; the same box found twice is none', () => {
    const near = judged(inches(1, 1, 4, 7), 0.93);
    expect(choose([judged(label, 0.95), near]).rivals).toEqual([near]);
    const again = judged({ ...label, x: label.x + 3 }, 0.95, { edge: 'ink' });
    expect(choose([judged(label, 0.95), again]).rivals).toEqual([]);
  });

  it('a page of the size of the media has no rivals inside it', () => {
    const page = judged(inches(0, 0, 4, 6), 0.95, { edge: 'page' });
    expect(choose([page, judged(inches(0.1, 0.1, 3.8, 5.8), 0.94)])).toEqual({ labels: [page], rivals: [] });
  });

  it('takes nothing that is too unlike a label', () => {
    expect(choose([judged(label, 0.6)])).toEqual({ labels: [], rivals: [] });
    expect(choose([])).toEqual({ labels: [], rivals: [] });
  });

  it('gives labels in reading order: rows from the top, in a row from the left, even when one stands a little lower', () => {
    const [a, b, c] = [judged(inches(0.2, 1.1, 4, 6), 0.9), judged(inches(4.4, 1, 4, 6), 0.91), judged(inches(0.2, 8, 4, 6), 0.99)];
    expect(choose([c, b, a]).labels).toEqual([a, b, c]);
  });

  it('a matrix code alone is no label beside a label with bars, but is one by itself', () => {
    const coupon = judged(inches(1, 8, 4, 3), 0.9, { codes: [matrixAt(inches(2, 9, 1, 1))] });
    expect(choose([judged(label, 0.9), coupon]).labels).toHaveLength(1);
    expect(choose([coupon]).labels).toEqual([coupon]);
  });
});
