import { describe, expect, it } from 'vitest';
import { distance, judge, type Surroundings } from '../../src/locating/judge.js';
import type { Box } from '../../src/geometry/box.js';
import type { Candidate } from '../../src/locating/candidate.js';
import type { CodeLikeArea } from '../../src/reading/code-like.js';
import { barsAt, barsIn, candidate, inches, matrixAt, word } from './judged.js';

const label = inches(1, 1, 4, 6);
const alone: Surroundings = { blobs: [label], codes: [barsIn(label)], words: [] };
const score = (around: Partial<Surroundings>, more: Parameters<typeof candidate>[1] = {}): number =>
  judge(candidate(label, more), { ...alone, ...around })?.score ?? 0;

describe('judge', () => {
  it('is nearly sure of a frame of a known size, alone on white, around bars', () => {
    expect(score({})).toBeGreaterThan(0.95);
    expect(judge(candidate(label), alone)?.evidence).toEqual(['frame 4.00×6.00 in around 1 code', 'nothing else on the page']);
  });

  it.each([
    ['without a code', inches(1, 1, 4, 6), []],
    ['too small', inches(1, 1, 2, 3), [barsIn(inches(1, 1, 2, 3))]],
    ['too narrow', inches(1, 1, 1.9, 6), [barsIn(inches(1, 1, 1.9, 6))]],
    ['too large', inches(0, 0, 8.5, 11), [barsIn(inches(0, 0, 8.5, 11))]],
  ])('a box %s is no label', (_, box, codes) => {
    expect(judge(candidate(box, { codes }), alone)).toBeUndefined();
  });

  it("a page of the media's size needs no code: verify asks for it", () => {
    expect(judge(candidate(label, { edge: 'page', codes: [] }), { ...alone, codes: [] })).toBeDefined();
  });

  it('a code near it that lies in a frame of its own speaks against nothing', () => {
    const next = inches(5.2, 1, 4, 6);
    const codes = [barsIn(label), barsAt(inches(5.3, 3, 1, 0.5))];
    expect(score({ codes })).toBeLessThan(score({}) - 0.2);
    expect(score({ codes, owners: [label, next] })).toBeCloseTo(score({}), 5);
  });

  it('a code near ink that lies in ink of the same size speaks against nothing: it is that of the next label', () => {
    const [next, small] = [inches(5.2, 1, 4, 6), inches(5.2, 1, 3, 6)];
    const codes = [barsIn(label), barsAt(inches(5.3, 3, 1, 0.5))];
    const of = (inks: readonly Box[]): number => score({ codes, inks }, { edge: 'ink' });
    expect(of([label, next])).toBeGreaterThan(of([label, small]) + 0.2);
    expect(of([label, small])).toBeCloseTo(of([]), 5);
  });

  it('a code in a frame of any size, a little way off, speaks against nothing with edges of its own', () => {
    const at = inches(1, 1, 4, 6);
    const advert = inches(1, 7.25, 6, 1);
    const around = (code: CodeLikeArea) => ({ blobs: [advert], codes: [code], words: [] });
    const scoreOf = (more: Partial<Candidate>, frames: readonly Box[], code = barsAt(inches(4.4, 7.4, 0.5, 0.5))): number =>
      judge(candidate(at, more), { ...around(code), frames })?.score ?? 0;
    expect(scoreOf({}, [advert])).toBeCloseTo(scoreOf({}, []) + 0.25);
    const matrix = matrixAt(inches(4.4, 7.4, 0.5, 0.5));
    expect(scoreOf({}, [], matrix), 'a matrix code beside a whole label').toBeCloseTo(scoreOf({}, [advert]));
    expect(scoreOf({ codes: [matrixAt(inches(2, 2, 1, 1))] }, [], matrix)).toBeCloseTo(scoreOf({}, []));
    expect(scoreOf({ edge: 'ink' }, [advert])).toBeCloseTo(scoreOf({ edge: 'ink' }, []));
    const near = { ...advert, y: advert.y - 10 };
    expect(scoreOf({}, [near])).toBeCloseTo(scoreOf({}, []));
  });

  it('a code beside rules that show its sides is no stray, one below is', () => {
    const ruled = { edge: 'ink', ruled: 'level' } as const;
    const without = score({}, ruled);
    expect(without).toBeGreaterThan(score({}, { edge: 'ink' }));
    expect(score({ codes: [barsIn(label), barsAt(inches(5.3, 3, 1, 0.5))] }, ruled)).toBeCloseTo(without, 5);
    expect(score({ codes: [barsIn(label), barsAt(inches(2, 7.2, 1, 0.5))] }, ruled)).toBeLessThan(without - 0.2);
    expect(score({ codes: [barsIn(label), barsAt(inches(5.3, 3, 1, 0.5))] }, { edge: 'ink', ruled: 'upright' })).toBeLessThan(
      without - 0.2,
    );
  });

  it('each thing that speaks against it costs: another size, ink near or across, no edge, a stray code, words both ways', () => {
    const best = score({});
    expect(judge(candidate(inches(1, 1, 4, 4)), alone)?.score).toBeLessThan(best - 0.05);
    const near = score({ blobs: [label, inches(5.1, 1, 2, 2)] });
    const across = score({ blobs: [label, inches(4.5, 1, 2, 2)] });
    expect(judge(candidate(label), { ...alone, blobs: [label, inches(5.1, 1, 2, 2)] })?.evidence).toContain(
      'clear space of 3 mm to what is on its right',
    );
    expect(judge(candidate(label), { ...alone, blobs: [label, inches(4.5, 1, 2, 2)] })?.evidence).toContain('other ink crosses its edge');
    expect(near).toBeLessThan(best - 0.05);
    expect(across).toBeLessThan(near);
    expect(score({}, { edge: 'ink' })).toBeLessThan(best - 0.05);
    expect(score({ codes: [barsIn(label), barsAt(inches(1.5, 7.1, 2, 0.8))] })).toBeLessThan(best - 0.2);
    const oneWay = [word('twelve letters', inches(2, 2, 1, 0.2)), word('and some more', inches(2, 3, 1, 0.2))];
    const bothWays = [word('twelve letters', inches(2, 2, 1, 0.2)), word('and some more', inches(2, 3, 0.2, 1), 90)];
    expect(score({ words: bothWays })).toBeLessThan(score({ words: oneWay }) - 0.05);
  });

  it('tells of a code just outside', () => {
    const around = { ...alone, codes: [barsIn(label), barsAt(inches(1.5, 7.1, 2, 0.8))] };
    expect(judge(candidate(label), around)?.evidence).toContain('a code just outside it');
  });

  it('the gap between boxes is negative where they overlap', () => {
    expect(distance(inches(0, 0, 1, 1), inches(2, 0, 1, 1))).toBe(72);
    expect(distance(inches(0, 0, 1, 1), inches(0, 3, 1, 1))).toBe(144);
    expect(distance(inches(0, 0, 2, 2), inches(1, 1, 2, 2))).toBe(-72);
  });
});
