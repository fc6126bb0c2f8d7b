import { describe, expect, it } from 'vitest';
import { grow, type Box } from '../../src/geometry/box.js';
import { withShownEdges } from '../../src/locating/settle-edges.js';
import { barsAt, barsIn, inches, judged, matrixAt } from './judged.js';

const label = inches(1, 1, 4, 6);
const codes = [barsIn(label)];
const frame = judged(label, 0.9, { codes });
const of = (edge: 'ink' | 'picture', box: Box, more: Parameters<typeof judged>[2] = {}) => judged(box, 0.8, { edge, codes, ...more });

describe('withShownEdges', () => {
  it('leaves ink away that a frame with the same codes shows the edge of', () => {
    expect(withShownEdges([frame, of('ink', grow(label, 20))], [label])).toEqual([frame]);
    const picture = judged(label, 0.9, { edge: 'picture', codes });
    expect(withShownEdges([picture, of('ink', grow(label, -10))], [label])).toEqual([picture]);
  });

  it('leaves ink away that has a matrix code beside a frame of a label’s size with bars', () => {
    const more = { codes: [...codes, matrixAt(inches(2, 7.1, 1, 1))] };
    const ink = of('ink', inches(1, 1, 4, 7.2), more);
    expect(withShownEdges([frame, ink], [label])).toEqual([frame]);
    const other = judged(inches(1, 1, 4, 4), 0.9, { codes });
    const near = of('ink', inches(1, 1, 4, 5.3), { codes: [...codes, matrixAt(inches(2, 5.2, 1, 1))] });
    expect(withShownEdges([other, near], [other.box])).toEqual([other, near]);
    const far = of('ink', inches(1, 1, 7, 4), { codes: [...other.codes, matrixAt(inches(6.5, 2, 1, 1))] });
    expect(withShownEdges([other, far], [other.box])).toEqual([other]);
    const bars = of('ink', inches(1, 1, 7, 4), { codes: [...other.codes, barsAt(inches(6.5, 2, 1, 1))] });
    expect(withShownEdges([other, bars], [other.box])).toEqual([other, bars]);
  });

  it.each([
    ['has another code', of('ink', grow(label, 20), { codes: [...codes, barsIn(inches(6, 1, 2, 2))] })],
    ['has a small part of it', of('ink', { ...label, height: 0.79 * label.height })],
  ])('keeps ink that %s', (_, ink) => {
    expect(withShownEdges([frame, ink], [label])).toEqual([frame, ink]);
  });

  it('keeps ink where the frame itself is nothing like a label', () => {
    const poor = { ...frame, score: 0.6 };
    const ink = of('ink', grow(label, 20));
    expect(withShownEdges([poor, ink], [label])).toEqual([poor, ink]);
  });

  it('leaves a picture away that has nothing but white paper around a frame', () => {
    const picture = of('picture', grow(label, 30));
    expect(withShownEdges([frame, picture], [label])).toEqual([frame]);
    const line = { x: label.x, y: label.y - 20, width: 100, height: 8 };
    expect(withShownEdges([frame, picture], [label, line])).toEqual([frame, picture]);
    const outside = { x: label.x, y: label.y - 80, width: 100, height: 8 };
    expect(withShownEdges([frame, picture], [label, outside])).toEqual([frame]);
    const cutting = of('picture', { ...label, height: label.height / 2 });
    expect(withShownEdges([frame, cutting], [label])).toEqual([frame, cutting]);
  });

  it('keeps a frame inside another one where there is something between them', () => {
    const inner = judged(grow(label, -40), 0.85, { codes });
    const between = { x: label.x + 10, y: label.y + 10, width: 100, height: 12 };
    expect(withShownEdges([frame, inner], [label, between])).toEqual([frame, inner]);
    expect(withShownEdges([], [])).toEqual([]);
  });

  it('takes a picture of a known size whose edge can be seen for the label, whatever frame fills it but for a border', () => {
    const inner = judged(grow(label, -14), 0.9, { codes });
    const picture = judged(label, 0.85, { edge: 'picture', codes });
    const isShown = () => true;
    expect(withShownEdges([inner, picture], [inner.box], [], isShown)).toEqual([picture]);
    expect(withShownEdges([inner, picture], [inner.box], [], () => false)).toEqual([inner]);
    const smaller = judged(grow(label, -14), 0.85, { edge: 'picture', codes });
    const centred = judged(grow(smaller.box, -10), 0.9, { codes });
    expect(withShownEdges([centred, smaller], [centred.box], [], isShown)).toEqual([smaller]);
    const aside = judged({ ...centred.box, x: centred.box.x + 8 }, 0.9, { codes });
    expect(withShownEdges([aside, smaller], [aside.box], [], isShown)).toEqual([aside]);
    const odd = of('picture', { ...label, height: 1.2 * label.height });
    expect(withShownEdges([inner, odd], [inner.box], [], isShown)).toEqual([inner]);
    const small = judged(grow(label, -40), 0.9, { codes });
    expect(withShownEdges([small, picture], [small.box], [], isShown)).toEqual([small]);
  });
});
