import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { packingSlip } from '../../src/steps/packing-slip.js';
import type { LargePages } from '../../src/steps/step.js';
import { contentFor } from '../samples/content.js';
import { LETTER, slip, type LayoutPage } from '../samples/layout.js';
import { packingSlip as slipDrawing } from '../samples/other-pages.js';
import { openedPages, sharedPage, slipPage, slipPageWithBars } from './on-pages.js';
import { endOf, labelOf, mediaNamed, onMedia, optionsOf } from './on-sample.js';

const letter = mediaNamed('letter');
const office: LargePages = { name: 'office', media: letter, grid: gridOf('300dpi'), reach: { x: 14, y: 14, width: 584, height: 764 } };
const label = (page: number): Sheet => labelOf(288, 432, { id: `p${page}`, page });
const slipSheet = (page: number): Sheet => ({ ...pageSheet(page, 612, 792), role: 'slip' });
const small = (order: number): LayoutPage => ({
  ...LETTER,
  regions: [slip(slipDrawing(260, 300, contentFor(`order ${order}`, order, 'line')), 36, 36)],
});

type Changed = Parameters<typeof optionsOf<typeof packingSlip.options>>[1];
async function apply(sheets: readonly Sheet[], pages: readonly LayoutPage[], changed: Changed = {}, large = office) {
  const document = await openedPages(pages);
  const made = await packingSlip.apply(sheets, optionsOf(packingSlip, changed), { ...onMedia(document), large });
  document.close();
  return made;
}
const blank: LayoutPage = { ...LETTER, regions: [] };
/** No type of the sample slip is that large on a label. */
const unreadable = { readable: { value: 9, unit: 'pt' } } as const;
const places = (sheets: readonly Sheet[]): readonly string[] =>
  sheets.map(({ output = 'roll', role, parcel, content }) => `${role} ${parcel ?? '-'} ${output} ${content.kind}`);

describe('a packing slip that would be too small to read on a label', () => {
  it('goes whole and at true size to the printer for large pages, in its parcel', async () => {
    const [, made] = await apply([label(1), slipSheet(2)], [blank, slipPage(1)], unreadable);
    expect(endOf(made)).toBe('planned');
    expect(made).toMatchObject({ output: 'office', parcel: 1, scale: 1, turn: 0, ifSlipHeld: 'hold', box: { width: 612, height: 792 } });
    expect(made?.evidence).toEqual(['true size on office (letter)']);
  });

  it('stays behind its label where it is readable there', async () => {
    expect(places(await apply([label(1), slipSheet(2)], [blank, slipPage(1)]))).toEqual(['label 1 roll region', 'slip 1 roll region']);
  });

  it('is set anew, as before, where there is no such printer or the recipe says so', async () => {
    const without = await openedPages([blank, slipPage(1)]);
    const made = await packingSlip.apply([label(1), slipSheet(2)], optionsOf(packingSlip, unreadable), onMedia(without));
    without.close();
    expect(places(made)[1]).toBe('slip 1 roll text');
    const asked = await apply([label(1), slipSheet(2)], [blank, slipPage(1)], { ...unreadable, layout: 'reflow' });
    expect(places(asked)[1]).toBe('slip 1 roll text');
  });

  it('goes there rather than be held: with a code, which no words hold, and with `layout: shrink`', async () => {
    for (const layout of ['reflow', 'auto', 'shrink'] as const) {
      const made = await apply([label(1), slipSheet(2)], [blank, slipPageWithBars(1)], { ...unreadable, layout });
      expect(places(made)[1]).toBe('slip 1 office region');
    }
  });

  it('takes the other pages of the slip along, and leaves those of another parcel', async () => {
    const sheets = [label(1), slipSheet(2), slipSheet(3), label(4), slipSheet(5)];
    const made = await apply(sheets, [blank, slipPage(1), small(1), blank, small(2)], unreadable);
    expect(places(made)).toEqual([
      'label 1 roll region',
      'slip 1 office region',
      'slip 1 office region',
      'label 2 roll region',
      'slip 2 roll region',
    ]);
  });

  it('goes as the part of the page that it is where label and slip share one', async () => {
    const sheet: Sheet = { ...label(1), box: { x: 90, y: 40, width: 432, height: 288 } };
    const [, made] = await apply([sheet], [sharedPage(1)], { ...unreadable, from: 'same-page', place: 'lower-half' });
    expect(made).toMatchObject({ output: 'office', scale: 1, box: { x: 0, y: 396, width: 612, height: 396 } });
  });

  it('is what it was without a large page where it fits that printer no better', async () => {
    const tiny = { ...office, media: mediaNamed('a5'), reach: { x: 14, y: 14, width: 300, height: 400 } };
    const made = await apply([label(1), slipSheet(2)], [blank, slipPageWithBars(1)], unreadable, tiny);
    expect(endOf(made[1])).toBe('held packing-slip/unreadable');
    const anew = await apply([label(1), slipSheet(2)], [blank, slipPage(1)], unreadable, tiny);
    expect(places(anew)[1]).toBe('slip 1 roll text');
  });
});
