import { describe, expect, it } from 'vitest';
import { rotate } from '../../src/steps/rotate.js';
import { QUARTER_TURNS } from '../samples/sample.js';
import { blankPages, endOf, labelOf, onMedia, opened, optionsOf, through } from './on-sample.js';

describe('rotate', () => {
  it.each(QUARTER_TURNS.flatMap((turn) => [['vector', turn] as const, ['bilevel', turn] as const]))(
    'turns a label upright by words or codes: %s, page turned by %d°',
    async (kind, turn) => {
      const { document, sheets, sample } = await opened('letter-upper-sideways', kind, turn);
      const made = await through(['split-pages', 'locate-label', 'rotate'], sheets, onMedia(document));
      expect(made[0]?.turn).toBe(sample.expected.pages[0]?.labels[0]?.turn);
      document.close();
    },
  );

  it('lays a label designed landscape along the media', async () => {
    const { document, sheets, sample } = await opened('letter-lying-design');
    const made = await through(['split-pages', 'locate-label', 'rotate'], sheets, onMedia(document));
    expect(made[0]?.turn).toBe(((sample.expected.pages[0]?.labels[0]?.turn ?? 0) + 90) % 360);
    expect(made[0]?.evidence.at(-1)).toContain('designed landscape');
    document.close();
  });

  it('holds a label of a page that was scanned too crooked', async () => {
    const document = blankPages(612, 792);
    const crooked = { ...document, page: (number: number) => ({ ...document.page(number), skew: 0, slant: { degrees: 4.5, sure: true } }) };
    const made = await rotate.apply([labelOf(288, 432)], optionsOf(rotate), onMedia(crooked));
    expect(made.map(endOf)).toEqual(['held rotate/slanted']);
  });

  it('turns by a fixed angle when told', async () => {
    const made = await rotate.apply([labelOf(288, 432)], optionsOf(rotate, { to: '270' }), onMedia(blankPages(612, 792)));
    expect(made[0]?.turn).toBe(270);
  });

  it('holds a label without words and codes', async () => {
    const made = await rotate.apply([labelOf(288, 432)], optionsOf(rotate), onMedia(blankPages(612, 792)));
    expect(made.map(endOf)).toEqual(['held rotate/doubtful']);
  });
});
