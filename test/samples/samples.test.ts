import { describe, expect, it } from 'vitest';
import type { Rect } from './drawing.js';
import { LAYOUTS, NO_LABEL_LAYOUTS } from './layouts.js';
import { cut, darkBounds, read, shots } from './render.js';
import { QUARTER_TURNS, sample } from './sample.js';
import { turnPixels } from './raster.js';

const grown = (box: Rect, by: number): Rect => ({ x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by });
const key = (code: { symbology: string; identifier: string; bytes: string }): string =>
  `${code.symbology} ${code.identifier} ${code.bytes}`;

// Boxes are looked at coarsely, of pictures at two turns; codes are read at one turn, another for each layout and kind.
const CASES = [...LAYOUTS, ...NO_LABEL_LAYOUTS].flatMap((layout, l) =>
  layout.kinds.map((kind, k) => ({ layout, kind, readAt: QUARTER_TURNS[(l + k) % 4] ?? 0 })),
);

describe.each(CASES)('$layout.name, $kind', ({ layout, kind, readAt }) => {
  it.each(QUARTER_TURNS.filter((turn) => kind === 'vector' || (turn - readAt + 360) % 360 <= 90))(
    'holds at %d° what it says',
    async (turn) => {
      const made = await sample(layout, kind, turn);
      if (turn === readAt) expect(Buffer.compare(made.bytes, (await sample(layout, kind, turn)).bytes)).toBe(0);
      const first = made.expected.pages[0];
      const pages = await shots(made.bytes, turn === readAt ? 300 / 72 : 2, first?.width ?? 0);
      expect(pages.length).toBe(made.expected.pages.length);
      for (const [index, page] of made.expected.pages.entries()) {
        const shot = pages[index];
        if (!shot) throw new Error('page missing');
        expect(Math.abs(shot.width / shot.perPt - page.width)).toBeLessThan(0.6);
        expect(Math.abs(shot.height / shot.perPt - page.height)).toBeLessThan(0.6);
        for (const label of page.labels) {
          // All ink near a label is inside its box; where the ink is the box, it reaches each side.
          const around = grown(label.box, 6);
          const ink = darkBounds(cut(shot, around), 150);
          if (!ink) throw new Error('nothing drawn');
          const x = ink.x + Math.max(0, Math.floor(around.x * shot.perPt)) / shot.perPt;
          const y = ink.y + Math.max(0, Math.floor(around.y * shot.perPt)) / shot.perPt;
          const over = [
            label.box.x - x,
            label.box.y - y,
            x + ink.width - label.box.x - label.box.width,
            y + ink.height - label.box.y - label.box.height,
          ];
          for (const by of over) expect(by).toBeLessThan(0.8);
          if (label.edge !== 'image' && label.edge !== 'page') for (const by of over) expect(by).toBeGreaterThan(-0.8);
        }
        if (turn !== readAt) continue;
        for (const code of [...page.labels.flatMap((label) => label.codes), ...page.otherCodes]) {
          const part = cut(shot, grown(code.box, 8));
          // A MaxiCode is read only upright.
          const upright =
            code.symbology === 'MaxiCode'
              ? turnPixels(
                  { ...part, dpi: part.perPt * 72, bilevel: false },
                  page.labels.find((label) => label.codes.includes(code))?.turn ?? 0,
                )
              : part;
          const found = await read({ ...part, ...upright }, code.symbology);
          expect(found.map(key)).toContain(key(code));
        }
      }
    },
  );
});
