import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { pageTitles } from '../../src/locating/page-titles.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { word } from './judged.js';

const TITLE: Box = { x: 50, y: 27, width: 200, height: 12 };
const LABEL: Box = { x: 115, y: 70, width: 376, height: 200 };
const written = (boxes: readonly Box[]) => phrasesOf(boxes.map((box) => word('Batch print', box)));
const titles = (blocks: readonly Box[], isWriting = (): boolean => true) => pageTitles(blocks, written([TITLE]), isWriting);

describe('pageTitles', () => {
  it('is the line at the head of a page that nothing below is set with', () => {
    expect(titles([LABEL, TITLE])).toEqual([TITLE]);
  });

  it('goes on with the line below it', () => {
    const hint: Box = { x: 70, y: 56, width: 300, height: 8 };
    const below = { ...LABEL, y: 90 };
    expect(pageTitles([TITLE, hint, below], written([TITLE, hint]), () => true)).toEqual([TITLE, hint]);
  });

  it.each<[string, readonly Box[]]>([
    ['is set with the label, from the left', [{ ...TITLE, x: 116 }, LABEL]],
    ['… or in its middle', [{ ...TITLE, x: 204 }, LABEL]],
    ['stands close to it', [{ ...TITLE, y: 50 }, LABEL]],
    ['is more than two lines', [{ ...TITLE, y: 10, height: 46 }, LABEL]],
    ['has something beside it', [TITLE, { x: 400, y: 30, width: 40, height: 10 }, LABEL]],
    ['is all there is', [TITLE]],
  ])('is none where it %s', (_, blocks) => {
    expect(titles(blocks)).toEqual([]);
  });

  it('is no less one where something below happens to have its middle, and something all along the page passes it', () => {
    const block = { x: 120, y: 110, width: 60, height: 30 };
    const fold = { x: 560, y: 20, width: 1, height: 500 };
    const other = { ...LABEL, y: 150, height: 120 };
    expect(titles([TITLE, block, other, fold])).toEqual([TITLE]);
    expect(titles([{ ...TITLE, x: 204 }, { ...block, x: 274 }, other])).toEqual([]);
  });

  it('is one line although a blank in it is as wide as those between blocks', () => {
    const [start, end] = [
      { ...TITLE, width: 90 },
      { ...TITLE, x: 149, width: 101 },
    ];
    expect(titles([start, end, LABEL])).toEqual([TITLE]);
  });

  it('says what is on the page, however it is set: its label, its order', () => {
    const set = { ...TITLE, x: LABEL.x };
    const named = (text: string) => pageTitles([set, LABEL], phrasesOf([{ ...word(text, set), fontSize: 12 }]), () => true).length;
    for (const text of ['Thistle & Tin label', 'Etikett zu Auftrag 7', 'Order 10-4471, paid']) expect(named(text), text).toBe(1);
    for (const text of ['Thistle & Tin', 'Return label', 'Label', 'Order lines']) expect(named(text), text).toBe(0);
  });

  it('is a title with what is said below it', () => {
    const [title, order] = [
      { ...TITLE, x: LABEL.x },
      { ...TITLE, x: LABEL.x, y: 46, height: 8 },
    ];
    const head = (text: string) =>
      pageTitles([title, order, { ...LABEL, y: 80 }], phrasesOf([word('Consignment note', title), word(text, order)]), () => true).length;
    expect(head('Order 22-4410')).toBe(2);
    expect(head('Express')).toBe(0);
  });

  it('is what stands close above a hint, however near that is to the label', () => {
    const title = { ...TITLE, x: LABEL.x };
    const hint = { ...title, y: 52, height: 8 };
    const over = (hints: readonly Box[]) => pageTitles([title, hint, LABEL], written([title, hint]), () => true, hints);
    expect(over([hint])).toEqual([title]);
    expect(over([])).toEqual([]);
  });

  it('is no banner with a name in it', () => {
    const banner = { ...TITLE, x: 20, y: 20, width: 400, height: 38 };
    expect(titles([{ ...LABEL, y: 90 }, banner])).toEqual([]);
  });

  it('is none without words, or with a code or an address', () => {
    expect(pageTitles([TITLE, LABEL], [], () => true)).toEqual([]);
    expect(titles([TITLE, LABEL], () => false)).toEqual([]);
  });
});
