import { describe, expect, it } from 'vitest';
import { contains, type Box } from '../../src/geometry/box.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { filledOut, goesOnWith } from '../../src/locating/filled-out.js';
import { type Said } from '../../src/locating/kind-of-words.js';
import { STEPS } from '../../src/locating/list-of-steps.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { blankPages } from '../steps/on-sample.js';
import { inches } from './judged.js';

const part = inches(1, 1, 4, 5);
const foot = inches(1, 6.6, 2, 0.35);
const nothing: Said = { names: [], labelWords: 0, characters: 0 };

const filled = (blobs: readonly Box[], units: readonly Box[] = [], said = nothing, of = part): Box | undefined =>
  filledOut(of, { page: blankPages(612, 792).page(1), blobs: [of, ...blobs], units, said: () => said });

describe('filledOut', () => {
  it('adds the ink in its column or row that makes it fill a known size', () => {
    const box = filled([foot]);
    expect(box?.y).toBeCloseTo(72);
    expect(box?.height).toBeCloseTo(5.95 * 72 + 0.7);
    expect(filled([inches(6.6, 1, 0.35, 2)], [], nothing, inches(1, 1, 5, 4))?.width).toBeCloseTo(5.95 * 72 + 0.7);
  });

  it('leaves away what stands for itself, lies farther apart, or calls itself something', () => {
    const coupon = inches(1, 7.4, 4, 1.5);
    expect(filled([foot, coupon, inches(1.5, 7.6, 1, 0.2)], [coupon])?.height).toBeCloseTo(5.95 * 72 + 0.7);
    expect(filled([coupon], [coupon])).toBeUndefined();
    expect(filled([foot], [], { ...nothing, names: [{ kind: 'advert', words: 'coupon', heading: true }] })).toBeUndefined();
  });

  it('answers nothing where it fills a size already, nothing does it, or more ink follows line by line', () => {
    expect(filled([foot], [], nothing, inches(1, 1, 4, 6))).toBeUndefined();
    expect(filled([])).toBeUndefined();
    expect(filled([foot, inches(1, 7, 2, 0.1), inches(1, 7.15, 2, 0.1)])).toBeUndefined();
  });

  it('takes a label drawn a little smaller where nothing else in line is in reach', () => {
    const upper = inches(1, 1, 3.8, 4.8);
    const last = inches(1, 6.3, 2, 0.37);
    expect(filled([last], [], nothing, upper)?.height).toBeCloseTo(5.67 * 72 + 0.7);
    expect(filled([last, inches(1, 7.5, 2, 0.3)], [], nothing, upper)).toBeUndefined();
    expect(filled([last, inches(1, 8, 2, 0.3)], [], nothing, upper)?.height).toBeCloseTo(5.67 * 72 + 0.7);
  });
});

describe('ink far from what is nearly a label', () => {
  it('is not taken in, though both together fill a larger size: nothing tells which of them is the label', () => {
    const nearly = inches(1, 2.4, 3.83, 5.4);
    const last = inches(1, 7.95, 2, 0.1);
    const mark = (y: number): Box => inches(1, y, 2, 0.1);
    expect(filled([last, mark(1.38)], [], nothing, nearly)).toBeUndefined();
    expect(filled([last, mark(1.9), mark(1.38)], [], nothing, nearly)?.height).toBeCloseTo(6.67 * 72 + 1.4);
  });
});

describe('goesOnWith', () => {
  const page = blankPages(612, 792).page(1);
  const goesOn = (of: Box, beside: readonly Box[], others: readonly Box[] = []): boolean =>
    goesOnWith({ box: of }, { page, blobs: [of, ...beside], said: () => nothing }, others).length > 0;

  it('is so where ink in line lies within reach of ink that fills no size', () => {
    expect(goesOn(inches(1, 1, 3.5, 4.6), [inches(1, 5.9, 2, 0.3)])).toBe(true);
    expect(goesOn(inches(1, 1, 4.6, 3.5), [inches(5.9, 1, 0.3, 2)])).toBe(true);
  });

  it('is not so for ink that fills most of a size, and for ink far away, wider, or of another label', () => {
    const foot = inches(1, 5.9, 2, 0.3);
    expect(goesOn(inches(1, 1, 3.75, 5.63), [inches(1, 6.8, 2, 0.3)])).toBe(false);
    expect(goesOn(inches(1, 1, 3.5, 4.6), [])).toBe(false);
    expect(goesOn(inches(1, 1, 3.5, 4.6), [inches(1, 8, 2, 0.3)])).toBe(false);
    expect(goesOn(inches(1, 1, 3.5, 4.6), [inches(1, 5.9, 5, 0.3)])).toBe(false);
    expect(goesOn(inches(1, 1, 3.5, 4.6), [foot], [inches(1, 5.8, 3.5, 4)])).toBe(false);
  });

  it('is not so for ink in a block that reaches farther than any label, and not beside rules that show the sides', () => {
    const lines = [0, 1, 2].map((line) => inches(5, 1 + 0.2 * line, 1.5, 0.1));
    const beside = inches(6.6, 1, 3.5, 0.5);
    const part = inches(1, 1, 3.5, 4.6);
    expect(goesOn(part, lines)).toBe(true);
    expect(goesOn(part, [...lines, beside])).toBe(false);
    const ruled = (how: 'level' | 'upright'): number =>
      goesOnWith({ box: part, ruled: how }, { page, blobs: [part, ...lines], said: () => nothing }, []).length;
    expect(ruled('level')).toBe(0);
    expect(ruled('upright')).toBe(3);
  });

  it('is not so for what stands clear of sender, receiver and the widest white between them', async () => {
    const goesOnBelow = async (gap: number, to: readonly string[]): Promise<boolean> => {
      const d = new Drawing(612, 792);
      d.block(80, 90, ['Thistle & Tin', '3 Example Street', 'Sampleton EX 00730'], { size: 10 });
      d.block(80, 150, to, { size: 10 });
      d.rect(75, 210, 240, 150).text(80, 360 + gap, 'Order summary', { size: 10 });
      const drawn = await drawnPage(d);
      const blobs = inkBlobs(drawn.ink());
      return goesOnWith({ box: { x: 74, y: 78, width: 242, height: 283 } }, { page: drawn, blobs, said: () => nothing }, []).length > 0;
    };
    const to = ['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'];
    expect(await goesOnBelow(60, to)).toBe(false);
    expect(await goesOnBelow(25, to)).toBe(true);
    expect(await goesOnBelow(60, ['Ada Invented'])).toBe(true);
  });

  it('is so for what makes it fill a size, however clear of its rules', () => {
    const of = inches(1, 1, 3.8, 4.9);
    const ruled = (foot: Box): number =>
      goesOnWith({ box: of, ruled: 'level' }, { page, blobs: [of, foot], said: () => nothing }, []).length;
    expect(ruled(inches(1, 6.55, 2, 0.1))).toBe(1);
    expect(ruled(inches(1, 6.95, 2, 0.1))).toBe(0);
  });

  it('is not so for what says what it is, and for what stands behind that', () => {
    const of = inches(1, 1, 3.5, 4.6);
    const [heading, list] = [inches(1, 5.9, 2, 0.2), inches(1, 6.4, 2, 0.2)];
    const said = (part: Box): Said =>
      contains(part, heading) && part.height < 100
        ? { ...nothing, names: [{ kind: 'instructions', words: 'how to', heading: true }] }
        : nothing;
    expect(goesOnWith({ box: of }, { page, blobs: [of, heading, list], said }, [])).toEqual([]);
    expect(goesOnWith({ box: of }, { page, blobs: [of, inches(1, 5.7, 2, 0.05), heading, list], said }, [])).toHaveLength(1);
  });

  it('is not so for a list of numbered steps beside it, nor for text that begins far beside it and stands clear of it', () => {
    const of = inches(1, 1, 3.5, 4.6);
    const steps = [0, 1, 2].map((step) => inches(5.2, 1 + 0.35 * step, 1, 0.12));
    const said = (part: Box): Said =>
      steps.every((step) => contains(part, step))
        ? { ...nothing, names: [{ kind: 'instructions', words: STEPS, heading: false }] }
        : nothing;
    expect(goesOn(of, steps)).toBe(true);
    expect(goesOnWith({ box: of }, { page, blobs: [of, ...steps], said }, [])).toEqual([]);
    const right = inches(4, 0.4, 3.5, 3.3);
    const line = (from: number): Box => inches(from, 4.6, 7.4 - from, 0.12);
    const words = (from: number): readonly Box[] => [line(from), inches(4.2, 4.74, 2, 0.12)];
    expect(goesOn(right, words(4))).toBe(true);
    expect(goesOn(right, words(2))).toBe(false);
  });

  it('is so for ink that fills a size, too, where the next line of type would stand', () => {
    expect(goesOn(inches(1, 1, 4, 6), [inches(1, 7.08, 2, 0.2)])).toBe(true);
    expect(goesOn(inches(1, 1, 4, 6), [inches(1, 7.2, 2, 0.2)])).toBe(false);
  });

  it('is so for ink that fills a size, too, where a block with a banner from side to side stands in its column', () => {
    const [line, banner] = [inches(1.2, 7.3, 2, 0.2), inches(1, 7.55, 4, 0.5)];
    const full = inches(1, 1, 4, 6);
    expect(goesOn(full, [line, banner])).toBe(true);
    expect(goesOn(full, [line, inches(1, 7.55, 3, 0.5)])).toBe(false);
    expect(goesOn(full, [inches(1.2, 7.7, 2, 0.2), inches(1, 7.95, 4, 0.5)])).toBe(false);
  });

  it('is not so for what rules along two sides show the ends of', async () => {
    const part = { x: 100, y: 200, width: 390, height: 270 };
    const line = { x: 120, y: 180, width: 150, height: 9 };
    const count = async (drawing: Drawing): Promise<number> => {
      const drawn = await drawnPage(drawing.rect(120, 220, 200, 40).rect(300, 300, 150, 120));
      return goesOnWith({ box: part }, { page: drawn, blobs: [part, line], said: () => nothing }, []).length;
    };
    const left = (d: Drawing): Drawing => d.rect(100, 200, 3, 270);
    expect(await count(left(new Drawing(595, 842)).rect(100, 467, 390, 3))).toBe(0);
    expect(await count(left(new Drawing(595, 842)))).toBe(1);
    expect(await count(left(new Drawing(595, 842)).rect(100, 467, 300, 3))).toBe(1);
  });

  it('is not so for the marks at the edge of the paper where it is to be folded', () => {
    const part = inches(1, 6.2, 4.6, 3.5);
    expect(goesOn(part, [{ x: 200, y: 775, width: 1, height: 17 }])).toBe(false);
    expect(goesOn(part, [{ x: 200, y: 740, width: 1, height: 17 }])).toBe(true);
    expect(goesOn(part, [{ x: 200, y: 775, width: 9, height: 17 }])).toBe(true);
  });
});
