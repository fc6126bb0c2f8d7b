import { describe, expect, it } from 'vitest';
import { mmToPt } from '../../src/geometry/length.js';
import { boxOnPage, PLACES, placeOnPage } from '../../src/steps/place-on-page.js';

const letter = { width: 612, height: 792 };

describe('places on a page', () => {
  it.each([
    ['upper-half', { x: 0, y: 0, width: 612, height: 396 }],
    ['lower-half', { x: 0, y: 396, width: 612, height: 396 }],
    ['left-half', { x: 0, y: 0, width: 306, height: 792 }],
    ['right-half', { x: 306, y: 0, width: 306, height: 792 }],
    ['lower-right', { x: 306, y: 396, width: 306, height: 396 }],
  ] as const)('%s', (name, box) => {
    expect(placeOnPage(name, letter)).toEqual(box);
  });

  it('cover the page: four halves twice, four quarters once', () => {
    const areas = PLACES.map((name) => placeOnPage(name, letter)).map((box) => box.width * box.height);
    expect(areas.reduce((sum, each) => sum + each)).toBe(3 * 612 * 792);
  });

  it('a box is left, top, width, height', () => {
    const mm = (value: number) => ({ value, unit: 'mm' as const });
    expect(boxOnPage([mm(1), mm(2), mm(3), mm(4)], (length) => mmToPt(length.value))).toEqual({
      x: mmToPt(1),
      y: mmToPt(2),
      width: mmToPt(3),
      height: mmToPt(4),
    });
  });
});
