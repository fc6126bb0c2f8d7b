import { describe, expect, it } from 'vitest';
import { packingSlip } from '../../src/steps/packing-slip.js';
import { splitPages } from '../../src/steps/split-pages.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import { openedPages, slipPageWithBars } from './on-pages.js';
import { endOf, onMedia, opened, optionsOf, through } from './on-sample.js';

async function labelThenSlip(changed: Parameters<typeof optionsOf<typeof packingSlip.options>>[1] = {}) {
  const { document, sheets } = await opened('label-then-slip');
  const context = onMedia(document);
  const split = await splitPages.apply(sheets, optionsOf(splitPages, { labels: 'odd', slips: 'even' }), context);
  const located = await through(['locate-label', 'rotate', 'scale'], split, context);
  const made = await packingSlip.apply(located, optionsOf(packingSlip, changed), context);
  document.close();
  return made;
}

describe('packing-slip', () => {
  it("puts the next page's slip into the parcel of its label, shrunk but readable", async () => {
    const made = await labelThenSlip();
    const [label, slip] = [made.find((sheet) => sheet.role === 'label'), made.find((sheet) => sheet.role === 'slip')];
    expect([label?.parcel, slip?.parcel]).toEqual([1, 1]);
    expect(endOf(slip)).toBe('planned');
    expect(slip?.scale ?? 0).toBeLessThan(1);
    expect(slip?.content.kind).toBe('region');
  });

  it('sets the words anew when shrinking would make them too small, and loses none', async () => {
    const made = await labelThenSlip({ readable: { value: 9, unit: 'pt' } });
    const slips = made.filter((sheet) => sheet.role === 'slip');
    const lines = slips.flatMap((sheet) => (sheet.content.kind === 'text' ? sheet.content.lines : []));
    const { document } = await opened('label-then-slip');
    const drawn = document.page(2).words();
    document.close();
    const bare = (text: string): string => Array.from(text.replaceAll(/\s/g, '')).sort().join('');
    expect(drawn.length).toBeGreaterThan(10);
    expect(bare(lines.join(''))).toBe(bare(drawn.map(({ text }) => text).join('')));
    expect(lines.join(' ')).toContain('Packing slip');
    expect(lines.join(' ')).toContain('Thank you');
    expect(new Set(slips.map((sheet) => sheet.parcel))).toEqual(new Set([1]));
  });

  it('holds a slip that may only be shrunk and would be unreadable', async () => {
    const made = await labelThenSlip({ layout: 'shrink', readable: { value: 11, unit: 'pt' } });
    expect(endOf(made.find((sheet) => sheet.role === 'slip'))).toBe('held packing-slip/unreadable');
  });

  it('holds a slip without a label before it', async () => {
    const { document, sheets } = await opened('label-then-slip');
    const context = onMedia(document);
    const split = await splitPages.apply(sheets, optionsOf(splitPages, { slips: 'every' }), context);
    const made = await packingSlip.apply(split, optionsOf(packingSlip), context);
    expect(made.map(endOf)).toEqual(['held split-pages/own-label', 'held packing-slip/no-label']);
    document.close();
  });

  it('holds a slip with bars and no label before it: perhaps its label is on the same page', async () => {
    const document = await openedPages([slipPageWithBars(1)]);
    const slip = { ...pageSheet(1, document.page(1).width, document.page(1).height), role: 'slip' as const };
    const [made] = await packingSlip.apply([slip], optionsOf(packingSlip), onMedia(document));
    expect(endOf(made)).toBe('held packing-slip/shared-page');
    document.close();
  });

  it("cuts the slip out of the label's own page", async () => {
    const { document, sheets } = await opened('letter-label-and-slip');
    const context = onMedia(document);
    const located = await through(['split-pages', 'locate-label', 'rotate', 'scale'], sheets, context);
    const made = await packingSlip.apply(located, optionsOf(packingSlip, { from: 'same-page', place: 'lower-half' }), context);
    const slip = made.find((sheet) => sheet.role === 'slip');
    expect(endOf(slip)).toBe('planned');
    expect(slip?.box.y ?? 0).toBeGreaterThanOrEqual(396);
    document.close();
  });

  it('holds one region for two labels, and a margin that leaves no room', async () => {
    const { document, sheets } = await opened('a4-two-labels');
    const context = onMedia(document);
    const located = await through(['split-pages', 'locate-label', 'rotate', 'scale'], sheets, context);
    const made = await packingSlip.apply(located, optionsOf(packingSlip, { from: 'same-page', place: 'upper-left' }), context);
    expect(made.filter(({ role }) => role === 'slip').map(endOf)).toEqual(['held packing-slip/whose', 'held packing-slip/whose']);
    document.close();
    const wide = await labelThenSlip({ margin: { value: 3, unit: 'in' } });
    expect(wide.filter(({ role }) => role === 'slip').map(endOf)).toEqual(['held packing-slip/unreadable']);
  });

  it('a return label takes no slip of another order', async () => {
    const { document, sheets } = await opened('label-then-slip');
    const context = onMedia(document);
    const split = await splitPages.apply(sheets, optionsOf(splitPages, { returns: 'first', slips: 'even' }), context);
    const made = await packingSlip.apply(split, optionsOf(packingSlip), context);
    expect(made.map(endOf)).toEqual(['planned', 'held packing-slip/no-label']);
    document.close();
  });

  it('from-orders: labels are parcels of their own, and slips of the channel are left out', async () => {
    const made = await labelThenSlip({ from: 'from-orders' });
    expect(made.map((sheet) => `${sheet.role} ${endOf(sheet)} ${sheet.parcel ?? '-'}`)).toEqual([
      'label planned 1',
      'remainder skipped locate-label/remainder -',
      'slip skipped packing-slip/from-orders -',
    ]);
  });
});
