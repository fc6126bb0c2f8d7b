import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { outdoneLabel } from '../../src/locating/larger-copy.js';
import type { Drawing } from '../samples/drawing.js';
import { code128 } from '../samples/code-art.js';
import { other } from '../samples/layout.js';
import { openedPages } from '../steps/on-pages.js';
import * as pages from './survey-pages.js';

const NUMBER = 'LM35863805470450';
const UPPER: Box = { x: 30, y: 30, width: 400, height: 150 };

/** Whether the box at the top of a page is outdone by bars below it; the page's codes are counted as they are read. */
async function outdone(
  above: { number: string; height: number },
  below: { number: string; height: number },
): Promise<readonly [boolean, number]> {
  const bars = ({ number, height }: typeof above): Drawing => pages.lines(400, 150, []).bars(code128(number), 200, 75, 1.2, height);
  const document = await openedPages([pages.letter(other(bars(above), UPPER.x, UPPER.y), other(bars(below), UPPER.x, 400))]);
  const page = document.page(1);
  let reads = 0;
  const label = await outdoneLabel([{ box: UPPER }], page, (box) => ((reads += 1), page.codes(box, 203 / 72)));
  document.close();
  return [label !== undefined, reads];
}

describe('a number that stands in larger bars elsewhere', () => {
  it('makes its label a receipt, perhaps', async () => {
    expect(await outdone({ number: NUMBER, height: 30 }, { number: NUMBER, height: 80 })).toEqual([true, 2]);
  });

  it('is none where the bars elsewhere say another number', async () => {
    expect(await outdone({ number: NUMBER, height: 30 }, { number: 'LM35863805470451', height: 80 })).toEqual([false, 2]);
  });

  it("is nothing to read for where the label's own are as large or larger, as they mostly are", async () => {
    expect(await outdone({ number: NUMBER, height: 80 }, { number: NUMBER, height: 30 })).toEqual([false, 0]);
    expect(await outdone({ number: NUMBER, height: 60 }, { number: NUMBER, height: 60 })).toEqual([false, 0]);
  });
});
