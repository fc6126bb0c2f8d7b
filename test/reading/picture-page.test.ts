import { describe, expect, it } from 'vitest';
import { takeCounts } from '../../src/reading/counters.js';
import { MOST_PIXELS } from '../../src/reading/source.js';
import { fromGrey, pattern } from '../faults/inputs/pictures.js';
import { averagePixels, cropPixels, samplePixels, turnedPixels } from '../../src/reading/picture-raster.js';
import { opened } from './opened-picture.js';

const grey = (width: number, rows: readonly (readonly number[])[]) => ({ width, height: rows.length, data: Uint8Array.from(rows.flat()) });

describe('picture-raster', () => {
  const four = grey(4, [
    [0, 100, 200, 40],
    [20, 120, 220, 60],
  ]);

  it('copies whole pixels, with paper beyond the picture', () => {
    expect([...cropPixels(four, { x: 1, y: 0, width: 2, height: 2 })]).toEqual([100, 200, 120, 220]);
    expect([...cropPixels(four, { x: 3, y: 1, width: 2, height: 2 })]).toEqual([60, 255, 255, 255]);
    expect([...cropPixels(four, { x: -1, y: -1, width: 2, height: 2 })]).toEqual([255, 255, 255, 0]);
    expect([...cropPixels(four, { x: 9, y: 9, width: 1, height: 2 })]).toEqual([255, 255]);
  });

  it('takes the mean of what a sample covers, parts in proportion', () => {
    expect([...averagePixels(four, { x: 0, y: 0, width: 4, height: 2 }, 2, 1)]).toEqual([60, 130]);
    expect([...averagePixels(four, { x: 0.5, y: 0, width: 1, height: 1 }, 1, 1)]).toEqual([50]);
    expect([...averagePixels(four, { x: 0, y: 0, width: 1.5, height: 1 }, 1, 1)]).toEqual([33]);
    expect([...averagePixels(four, { x: 3, y: 0, width: 2, height: 1 }, 1, 1)]).toEqual([148]);
    expect([...averagePixels(four, { x: 0, y: 0, width: 1, height: 1 }, 2, 2)]).toEqual([0, 0, 0, 0]);
  });

  it('mixes nothing when it samples', () => {
    expect([...samplePixels(four, { x: 0, y: 0, width: 4, height: 2 }, 2, 1)]).toEqual([120, 60]);
    expect([...samplePixels(four, { x: 0, y: 0, width: 2, height: 1 }, 4, 1)]).toEqual([0, 0, 100, 100]);
    expect([...samplePixels(four, { x: -1, y: 0, width: 2, height: 1 }, 2, 1)]).toEqual([255, 0]);
  });
});

describe('turnedPixels', () => {
  const three = grey(3, [
    [10, 20, 30],
    [40, 50, 60],
    [70, 80, 90],
  ]);

  it('turns clockwise about the centre, and not at all by 0', () => {
    expect([...turnedPixels(three, 0)]).toEqual([...three.data]);
    expect([...turnedPixels(three, 90)]).toEqual([70, 40, 10, 80, 50, 20, 90, 60, 30]);
    expect([...turnedPixels(three, -180)]).toEqual([90, 80, 70, 60, 50, 40, 30, 20, 10]);
  });

  it('has paper where nothing of the picture comes to lie, and mixes what lies between', () => {
    const black = grey(3, [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ]);
    const turned = turnedPixels(black, 45);
    expect([turned[4], turned[1]]).toEqual([0, 0]);
    // A corner's place before the turn lies 0.41 of a pixel beyond the outer row or column.
    for (const corner of [0, 2, 6, 8]) expect(turned[corner]).toBe(Math.round(255 * (Math.SQRT2 - 1)));
  });
});

describe('picture-page', () => {
  const LABEL = pattern(812, 1218);
  const page = async () => (await opened(await fromGrey(LABEL).png().withMetadata({ density: 203 }).toBuffer())).page(1);

  it('has its true size, one picture and no words', async () => {
    const it = await page();
    expect([it.number, it.width, it.height]).toEqual([1, expect.closeTo(288, 9), expect.closeTo(432, 9)]);
    expect(it.words()).toEqual([]);
    expect(it.images()).toEqual([{ box: { x: 0, y: 0, width: it.width, height: it.height }, pixelWidth: 812, pixelHeight: 1218, turn: 0 }]);
    expect(it.pictureUnder({ x: 5, y: 5, width: 9, height: 9 })).toEqual({ pixelsPerPt: 203 / 72, origin: { x: 0, y: 0 } });
    expect(it.pictureUnder({ x: 500, y: 5, width: 9, height: 9 })).toBeUndefined();
  });

  it('gives its own pixels untouched, the region grown to whole ones', async () => {
    const it = await page();
    const whole = it.render({ x: 0, y: 0, width: it.width, height: it.height }, 'own');
    expect([whole.width, whole.height, whole.origin]).toEqual([812, 1218, { x: 0, y: 0 }]);
    expect(Buffer.compare(whole.data, LABEL.data)).toBe(0);
    const k = 203 / 72;
    const part = it.render({ x: 10.4 / k, y: 20.6 / k, width: 2 / k, height: 3 / k }, 'own');
    expect([part.width, part.height]).toEqual([3, 4]);
    expect(part.origin.x * k).toBeCloseTo(10, 6);
    expect(part.origin.y * k).toBeCloseTo(20, 6);
    expect(part.pixelsPerPt).toBe(k);
    const outside = it.render({ x: -100, y: -100, width: it.width + 200, height: it.height + 200 }, 'own');
    expect([outside.width, outside.height]).toEqual([812, 1218]);
  });

  it('keeps two levels when asked to soften nothing, and area when it may soften', async () => {
    const it = await page();
    const region = { x: 0, y: 0, width: it.width, height: it.height };
    const share = (data: Uint8Array): number => data.reduce((sum, value) => sum + (255 - value), 0) / 255 / data.length;
    const hard = it.render(region, 1.3, false);
    expect([hard.width, hard.height]).toEqual([374, 561]);
    expect([...new Set(hard.data)].sort()).toEqual([0, 255]);
    const soft = it.render(region, 1.3);
    expect(share(soft.data)).toBeCloseTo(share(LABEL.data), 3);
    const twice = it.render(region, (203 / 72) * 2, false);
    expect([twice.width, twice.data[811], twice.data[812]]).toEqual([1624, 0, 255]);
  });

  it('draws its ink once, and counts what it draws', async () => {
    takeCounts();
    const document = await opened(await fromGrey(LABEL).png().withMetadata({ density: 203 }).toBuffer());
    expect(takeCounts()).toMatchObject({ sourceRasters: 0, documentsOpened: 1 });
    // Taken up, a page is looked at: it may be a crooked scan.
    const it = document.page(1);
    expect(document.page(1)).toBe(it);
    expect(it.ink()).toBe(it.ink());
    expect([it.ink().width, it.ink().height]).toEqual([432, 648]);
    expect(takeCounts()).toMatchObject({ sourceRasters: 1, documentsOpened: 0 });
  });

  it('refuses a raster that no machine should make', async () => {
    const it = await page();
    const tooFine = Math.sqrt(MOST_PIXELS / (it.width * it.height)) + 1;
    expect(() => it.render({ x: 0, y: 0, width: it.width, height: it.height }, tooFine)).toThrow(RangeError);
  });
});
