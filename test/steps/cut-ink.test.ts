import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import { heldForCutInk } from '../../src/steps/cut-ink.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { endOf } from './on-sample.js';

const LABEL: Box = { x: 100, y: 100, width: 288, height: 432 };
const drawing = (): Drawing =>
  new Drawing(612, 792)
    .frame(LABEL.x, LABEL.y, LABEL.width, LABEL.height, 1)
    .bars(code128('SAMPLE-000001'), 244, 320, 1.06, 60)
    .text(120, 500, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 8 });

const page = await drawnPage(drawing());
const at = (box: Box, on = page) => heldForCutInk(pageSheet(1, 612, 792), box, on);
/** The label's box with its sides moved by so many mm: left, top, right, bottom; outwards above 0. */
const moved = (left: number, top: number, right: number, bottom: number): Box => {
  const [l, t, r, b] = [left, top, right, bottom].map(mmToPt) as [number, number, number, number];
  return { x: LABEL.x - l, y: LABEL.y - t, width: LABEL.width + l + r, height: LABEL.height + t + b };
};

describe('heldForCutInk', () => {
  it('has nothing against a box around a label, and one on its edge', () => {
    for (const by of [0, 0.5, 3, 12]) expect(at(moved(by, by, by, by)), `${by} mm`).toBeUndefined();
  });

  it.each([
    ['left', moved(-3, 2, 2, 2)],
    ['top', moved(2, -3, 2, 2)],
    ['right', moved(2, 2, -3, 2)],
    ['bottom', moved(2, 2, 2, -3)],
  ] as const)('holds a box that leaves 3 mm of the label away at its %s, and names one that holds all of it', (side, box) => {
    const sheet = at(box);
    const state = sheet?.state;
    if (state?.kind !== 'held') throw new Error('not held');
    const { code, message, remedy } = state;
    expect(code).toBe('locate-label/cut-ink');
    expect(Number(new RegExp(`(\\d\\.\\d) mm at its ${side}$`).exec(message)?.[1])).toBeCloseTo(3, 0.5);
    const offered = /box: \[(.*?)\]/
      .exec(remedy)?.[1]
      ?.split(', ')
      .map((each) => mmToPt(Number.parseFloat(each)));
    const [x = NaN, y = NaN, width = NaN, height = NaN] = offered ?? [];
    expect(at({ x, y, width, height })).toBeUndefined();
  });

  it('holds one that runs through a line of type', async () => {
    const beside = await drawnPage(drawing().text(120, 560, 'A LAST LINE', { size: 24 }));
    expect(at(moved(3, 3, 3, 6), beside)).toBeUndefined();
    expect(endOf(at({ ...LABEL, height: 555 - LABEL.y }, beside) ?? pageSheet(1, 612, 792))).toBe('held locate-label/cut-ink');
  });

  it('has nothing against rules that go on across the page, ink of a neighbour, and a frame around everything', async () => {
    const ruled = await drawnPage(drawing().rect(0, 560, 612, 1).frame(20, 20, 572, 752, 1));
    expect(at(moved(3, 3, 3, 14), ruled)).toBeUndefined();
    const neighbour = await drawnPage(drawing().rect(400, 300, 60, 60));
    expect(at(moved(3, 3, 7, 3), neighbour)).toBeUndefined();
  });
});
