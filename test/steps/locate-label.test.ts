import { describe, expect, it } from 'vitest';
import { locateLabel } from '../../src/steps/locate-label.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { LETTER, other } from '../samples/layout.js';
import { openedPages, twoLabelsAbove } from './on-pages.js';
import { blankPages, endOf, onMedia, opened, optionsOf } from './on-sample.js';

const inches = (value: number) => ({ value, unit: 'in' as const });

describe('locate-label', () => {
  it('gives the label and names what is left of the page', async () => {
    const { document, sheets, sample } = await opened('letter-upper-sideways');
    const made = await locateLabel.apply(sheets, optionsOf(locateLabel), onMedia(document));
    expect(made.map((sheet) => `${sheet.id} ${sheet.role} ${endOf(sheet) ?? ''}`)).toEqual([
      'p1 label planned',
      'p1.rest remainder skipped locate-label/remainder',
    ]);
    const wanted = sample.expected.pages[0]?.labels[0]?.box;
    expect(made[0]?.box.x).toBeCloseTo(wanted?.x ?? NaN, -0.5);
    expect(made[0]?.evidence.join('; ')).toMatch(/frame \d\.\d\d×\d\.\d\d in around 2 codes/);
    document.close();
  });

  it('gives two sheets for two labels, in reading order', async () => {
    const { document, sheets } = await opened('a4-two-labels');
    const made = await locateLabel.apply(sheets, optionsOf(locateLabel), onMedia(document));
    const labels = made.filter((sheet) => sheet.role === 'label');
    expect(labels.map((sheet) => sheet.id)).toEqual(['p1.1', 'p1.2']);
    expect(labels[0]?.box.y ?? 0).toBeLessThan(labels[1]?.box.y ?? 0);
    document.close();
  });

  it('looks only in the named places, and holds the page when one is empty', async () => {
    const { document, sheets } = await opened('letter-upper-sideways');
    const at = (place: readonly ('upper-half' | 'lower-half')[]) =>
      locateLabel.apply(sheets, optionsOf(locateLabel, { place }), onMedia(document));
    expect(endOf((await at(['upper-half']))[0])).toBe('planned');
    expect((await at(['lower-half'])).map(endOf)).toEqual(['held locate-label/not-found']);
    expect((await at(['upper-half', 'lower-half'])).map(endOf)).toEqual(['held locate-label/not-found']);
    document.close();
  });

  it('holds a label by its ink where more ink stands in line with it, by a hand-written recipe as well', async () => {
    const d = new Drawing(280, 400);
    d.block(10, 20, ['From Slip Studio, 00010 Sampleton', 'To', 'Ada Example', 'Example Street 4', '00012 Sampleton'], { size: 16 }, 1.4);
    d.bars(code128('QX2044178833'), 140, 134, 1.5, 150);
    d.text(140, 288, 'QX 2044 1788 33', { size: 11, align: 'center' });
    d.text(10, 360, 'Sample, not valid for carriage', { size: 9 });
    const document = await openedPages([{ ...LETTER, regions: [other(d, 60, 60)] }]);
    const { width, height } = document.page(1);
    const made = await locateLabel.apply(
      [pageSheet(1, width, height)],
      optionsOf(locateLabel, { by: ['frame', 'ink'] }),
      onMedia(document),
    );
    expect(made.map(endOf)).toEqual(['held locate-label/doubtful']);
    const state = made[0]?.state;
    expect(state?.kind === 'held' && state.message).toMatch(/^the ink \d\.\d\d×\d\.\d\d in may go on: more ink stands in line with it$/);
    document.close();
  });

  it('holds a place with two labels instead of taking one of them', async () => {
    const document = await openedPages([twoLabelsAbove()]);
    const page = document.page(1);
    const at = (changed: Parameters<typeof optionsOf<typeof locateLabel.options>>[1]) =>
      locateLabel.apply([pageSheet(1, page.width, page.height)], optionsOf(locateLabel, changed), onMedia(document));
    const upper = await at({ place: ['upper-half'] });
    expect(upper.map(endOf)).toEqual(['held locate-label/doubtful']);
    const state = upper[0]?.state;
    expect(state?.kind === 'held' && state.message).toContain('2 labels on the upper-half');
    expect((await at({ place: ['upper-left', 'upper-right'] })).slice(0, 2).map(endOf)).toEqual(['planned', 'planned']);
    expect((await at({})).slice(0, 2).map(({ id }) => id)).toEqual(['p1.1', 'p1.2']);
    document.close();
  });

  it.each([
    [['upper-half', 'lower-half'], undefined],
    [['upper-left', 'right-half', 'lower-left'], undefined],
    [['left-half', 'upper-left'], '`left-half` and `upper-left` overlap: a label in both would be printed twice'],
    [['lower-right', 'upper-half', 'right-half'], '`lower-right` and `right-half` overlap: a label in both would be printed twice'],
  ] as const)('refuses places that overlap, as one label would be printed twice: %j', (place, message) => {
    expect(locateLabel.together?.(optionsOf(locateLabel, { place }))?.message).toBe(message);
  });

  it("takes a page of the media's own size although nothing on it looks like a code: verify says whether there must be one", async () => {
    const blank = onMedia(blankPages(288, 432));
    expect((await locateLabel.apply([pageSheet(1, 288, 432)], optionsOf(locateLabel), blank)).map(endOf)).toEqual(['planned']);
    const letter = onMedia(blankPages(612, 792));
    expect((await locateLabel.apply([pageSheet(1, 612, 792)], optionsOf(locateLabel), letter)).map(endOf)).toEqual([
      'held locate-label/not-found',
    ]);
  });

  it('takes a box at its word, and holds one outside the page or through ink', async () => {
    const { document, sheets } = await opened('letter-upper-sideways');
    const at = (box: readonly [number, number, number, number]) => {
      const [x, y, w, h] = box.map(inches) as [
        ReturnType<typeof inches>,
        ReturnType<typeof inches>,
        ReturnType<typeof inches>,
        ReturnType<typeof inches>,
      ];
      return locateLabel.apply(sheets, optionsOf(locateLabel, { box: [x, y, w, h] }), onMedia(document));
    };
    expect((await at([1, 0.5, 6.5, 4.5]))[0]?.box).toEqual({ x: 72, y: 36, width: 468, height: 324 });
    expect((await at([1.2, 0.5, 5.9, 4.5])).map(endOf)).toEqual(['held locate-label/cut-ink']);
    expect((await at([6, 1, 4, 6])).map(endOf)).toEqual(['held locate-label/outside-page']);
    document.close();
  });

  it('a return label stays one', async () => {
    const { document, sheets } = await opened('letter-return-label');
    const made = await locateLabel.apply(
      sheets.map((sheet) => ({ ...sheet, role: 'return-label' as const })),
      optionsOf(locateLabel),
      onMedia(document),
    );
    expect(made[0]?.role).toBe('return-label');
    document.close();
  });
});
