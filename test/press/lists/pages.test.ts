import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Media } from '../../../src/geometry/media.js';
import { ListFace } from '../../../src/press/lists/face.js';
import type { List } from '../../../src/press/lists/list.js';
import { measuresOf } from '../../../src/press/lists/measures.js';
import { pagesOf } from '../../../src/press/lists/pages.js';

const face = new ListFace();

/** A list whose rows are named in their first cell, `r0`, `r1` …, and are as long as asked for. */
const listOf = (sections: readonly (readonly number[])[], ownPage = false): List => ({
  title: 'A list',
  date: '28 November 2026',
  intro: ['For the test.'],
  columns: [
    { head: 'Row', align: 'left', width: 0.2 },
    { head: 'Words', align: 'left', width: 'rest' },
    { head: 'Pieces', align: 'right', width: 0.2 },
  ],
  sections: sections.map((rows, at) => ({
    heading: `Part ${at + 1}`,
    ownPage,
    rows: rows.map((words, row) => ({
      name: `r${at}.${row}`,
      cells: [
        [{ text: `r${at}.${row}`, style: 'strong' as const }],
        [{ text: Array.from({ length: words }, (_, word) => `w${at}.${row}.${word}`).join(' '), style: 'plain' as const }],
        [{ text: String(words), style: 'big' as const }],
      ],
    })),
    closing: { of: `End ${at + 1}`, sum: 'done' },
    sign: ['Name', 'Signature'],
  })),
  caution: 'For the bench only.',
});

interface Said {
  readonly text: string;
  readonly page: number;
  readonly x: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function said(list: List, media: Media): readonly Said[] {
  return pagesOf(list, measuresOf(media), face).flatMap(({ placed }, page) =>
    placed.flatMap(({ block, x, y }) =>
      block.marks.flatMap((mark) =>
        mark.kind === 'text'
          ? {
              text: mark.line.text,
              page,
              x: x + mark.x,
              right: x + mark.x + mark.line.width,
              top: y + mark.baseline - mark.line.up,
              bottom: y + mark.baseline + mark.line.down,
            }
          : [],
      ),
    ),
  );
}

const label: Media = { name: '4x6in', width: 288, height: 432 };
const letter: Media = { name: 'letter', width: 612, height: 792 };
const someMedia = fc
  .record({ width: fc.integer({ min: 144, max: 900 }), height: fc.integer({ min: 216, max: 1200 }) })
  .map((size) => ({ name: 'some', ...size }));
const someRows = fc.array(
  fc.array(fc.oneof({ weight: 6, arbitrary: fc.nat(12) }, { weight: 1, arbitrary: fc.nat(400) }), { maxLength: 20 }),
  {
    minLength: 1,
    maxLength: 3,
  },
);

describe('the pages of a list', () => {
  it('have title, head of the table and their number on each', () => {
    const lines = said(listOf([Array.from({ length: 60 }, () => 5)]), label);
    const pages = new Set(lines.map(({ page }) => page)).size;
    expect(pages).toBeGreaterThan(2);
    for (let page = 0; page < pages; page++) {
      const texts = lines.filter((each) => each.page === page).map(({ text }) => text);
      expect(texts.filter((text) => text === 'A list')).toHaveLength(1);
      expect(texts.filter((text) => text === 'Words')).toHaveLength(1);
      expect(texts).toContain(`Page ${page + 1} of ${pages}`);
      expect(texts).toContain('For the bench only.');
      expect(texts).toContain(page === 0 ? 'Part 1' : 'Part 1 (continued)');
    }
  });

  it('keep a row whole on a page', () => {
    const lines = said(listOf([Array.from({ length: 40 }, (_, at) => 3 + ((at * 7) % 30))]), label);
    for (let row = 0; row < 40; row++) {
      const own = lines.filter(({ text }) => text === `r0.${row}` || text.includes(`w0.${row}.`));
      expect(new Set(own.map(({ page }) => page)).size, `row ${row}`).toBe(1);
    }
  });

  it('go on with a row that is higher than a page, under its name, and lose nothing of it', () => {
    const lines = said(listOf([[2, 900, 2]]), label);
    const words = lines.flatMap(({ text }) => text.split(' ').filter((word) => word.startsWith('w0.1.')));
    expect(words).toEqual(Array.from({ length: 900 }, (_, word) => `w0.1.${word}`));
    const pages = new Set(lines.filter(({ text }) => text.includes('w0.1.')).map(({ page }) => page));
    expect(pages.size).toBeGreaterThan(1);
    expect(lines.filter(({ text }) => text === 'r0.1, continued')).toHaveLength(pages.size - 1);
  });

  it('begin a section on a page of its own where it asks for one', () => {
    const pageOf = (list: List, text: string): number | undefined => said(list, letter).find((each) => each.text === text)?.page;
    expect(pageOf(listOf([[1], [1]]), 'Part 2')).toBe(0);
    expect(pageOf(listOf([[1], [1]], true), 'Part 2')).toBe(1);
  });

  it('hold every word once, inside the margins, nothing over anything else, whatever the paper', () => {
    fc.assert(
      fc.property(someRows, fc.boolean(), someMedia, (rows, own, media) => {
        const list = listOf(rows, own);
        const lines = said(list, media);
        const wanted = rows.flatMap((each, at) =>
          each.flatMap((words, row) => Array.from({ length: words }, (_, word) => `w${at}.${row}.${word}`)),
        );
        const found = lines.flatMap(({ text }) => text.split(' ').filter((word) => word.startsWith('w')));
        expect(found.join('')).toBe(wanted.join(''));
        for (const { text, x, right, top, bottom } of lines) {
          expect(x, text).toBeGreaterThanOrEqual(0);
          expect(right, text).toBeLessThanOrEqual(media.width);
          expect(top, text).toBeGreaterThanOrEqual(0);
          expect(bottom, text).toBeLessThanOrEqual(media.height);
        }
        for (const number of new Set(lines.map(({ page }) => page))) {
          const sorted = lines.filter(({ page }) => page === number).sort((a, b) => a.top - b.top);
          sorted.forEach((a, at) => {
            for (const b of sorted.slice(at + 1)) {
              if (b.top > a.bottom - 0.01) break;
              // Lines of type reach to the next one's top; what would be one on the other is more than a fifth of a line.
              const high = Math.min(a.bottom, b.bottom) - b.top;
              const wide = Math.min(a.right, b.right) - Math.max(a.x, b.x);
              expect(high > 0.2 * (b.bottom - b.top) && wide > 0.05, `${a.text} over ${b.text}`).toBe(false);
            }
          });
        }
      }),
      { numRuns: 60 },
    );
  });
});
