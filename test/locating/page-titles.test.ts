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
    ['is more than a line', [{ ...TITLE, y: 10, height: 40 }, LABEL]],
    ['has something beside it', [TITLE, { x: 400, y: 30, width: 40, height: 10 }, LABEL]],
    ['is all there is', [TITLE]],
  ])('is none where it %s', (_, blocks) => {
    expect(titles(blocks)).toEqual([]);
  });

  it('is none without words, or with a code or an address', () => {
    expect(pageTitles([TITLE, LABEL], [], () => true)).toEqual([]);
    expect(titles([TITLE, LABEL], () => false)).toEqual([]);
  });
});
