import { describe, expect, it } from 'vitest';
import { contentFor } from '../samples/content.js';
import { Drawing } from '../samples/drawing.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { label, LETTER, type LayoutPage } from '../samples/layout.js';
import { documentOf, instructionsPage, labelPage, labelPageWithoutCode, sharedPage, slipPage } from '../steps/on-pages.js';
import { documentsOf, drafted, itemsBy, recipeFor, stepOf } from './drafting.js';

const endsOf = async (text: string, pages: readonly LayoutPage[]): Promise<string[]> =>
  (await itemsBy(text, await documentOf(pages))).map(({ page, role, state, parcel }) => `${page} ${role} ${state.kind} ${parcel ?? '-'}`);

/** A label without a frame in the middle of the page, where no half holds it. */
const middlePage = (order: number, x = 162): LayoutPage => ({
  ...LETTER,
  regions: [label(quillhaul(contentFor(`order ${order}`, order, 'line')), x, 180)],
});

/** The drawing of a packing slip without the words that say so. */
function unnamed(whole: Drawing): Drawing {
  const drawing = new Drawing(whole.width, whole.height);
  drawing.face = whole.face;
  const rename = (text: string): string => (text === 'Packing slip' ? 'Order' : text);
  drawing.items.push(...whole.items.map((item) => (item.kind === 'text' ? { ...item, text: rename(item.text) } : item)));
  return drawing;
}

describe('a recipe drafted from some orders, run over others', () => {
  it('label, then slip: the words of the slips tell', async () => {
    const text = await recipeFor(...(await documentsOf([labelPage(1), slipPage(1)], [labelPage(2), slipPage(2)])));
    expect(stepOf(text, 'split-pages')).toBe('split-pages: { slip-words: [packing slip] }');
    expect(stepOf(text, 'packing-slip')).toBe('packing-slip: next-page');
    // A second slip page is no trouble to words; it would be to positions.
    expect(await endsOf(text, [labelPage(3), slipPage(3), slipPage(3), labelPage(4), slipPage(4)])).toEqual([
      '1 label ready 1',
      '1 remainder skipped -',
      '2 slip ready 1',
      '3 slip ready 1',
      '4 label ready 2',
      '4 remainder skipped -',
      '5 slip ready 2',
    ]);
  });

  it('label and slip on one page', async () => {
    const text = await recipeFor(...(await documentsOf([sharedPage(1)], [sharedPage(2)])));
    expect(stepOf(text, 'packing-slip')).toBe('packing-slip: { from: same-page, place: lower-half }');
    expect((await endsOf(text, [sharedPage(5)])).filter((each) => each.includes('ready'))).toEqual(['1 label ready 1', '1 slip ready 1']);
  });

  it('a page that is no label and says what it is', async () => {
    const text = await recipeFor(...(await documentsOf([labelPage(1), instructionsPage()], [labelPage(2)])));
    expect(stepOf(text, 'split-pages')).toBe('split-pages: { without-code: skip }');
    expect(text).not.toContain('does not say what it is');
    expect(await endsOf(text, [labelPage(3), instructionsPage()])).toEqual([
      '1 label ready 1',
      '1 remainder skipped -',
      '2 page skipped -',
    ]);
  });

  it('a second page without a code that does not say what it is: skipped, and the seller is told how to make it a slip', async () => {
    const blankSlip = { ...LETTER, regions: slipPage(1).regions.map((each) => ({ ...each, drawing: unnamed(each.drawing) })) };
    const text = await recipeFor(...(await documentsOf([labelPage(1), blankSlip], [labelPage(2), blankSlip], [labelPage(3)])));
    const comment = text.replaceAll(/\n#\s+/g, ' ');
    expect(comment).toContain('2 of 3 documents have a page 2 without a barcode that does not say what it is: skipped.');
    expect(comment).toContain('say `slips: 2` under split-pages and add `- packing-slip` below scale');
    // What the remark says can be done as it stands.
    const changed = text.replace(/- split-pages.*/, '- split-pages: { slips: 2 }').replace(/( {2}- scale.*)/, '$1\n  - packing-slip');
    expect((await endsOf(changed, [labelPage(4), blankSlip])).filter((each) => each.includes('ready'))).toEqual([
      '1 label ready 1',
      '2 slip ready 1',
    ]);
  });

  it('a label in the middle: a fixed box when two orders agree, with the warning that it breaks', async () => {
    const text = await recipeFor(...(await documentsOf([middlePage(1)], [middlePage(2)])));
    expect(stepOf(text, 'locate-label')).toMatch(/^locate-label: \{ box: \[/);
    expect(text.replaceAll(/\n#\s+/g, ' ')).toContain('if the channel moves its label, the box cuts it');
    expect((await endsOf(text, [middlePage(7)]))[0]).toBe('1 label ready 1');
    // Moved by 4 cm it is not printed.
    expect((await endsOf(text, [middlePage(8, 50)]))[0]).toBe('1 label held 1');
  });

  it('the same from one order only: its ink says too little of where the next one ends', async () => {
    const text = await recipeFor(await documentOf([middlePage(1)]));
    expect(stepOf(text, 'locate-label')).toBe('locate-label: auto');
    expect(text).toContain('One label does not show what changes from order to order');
  });

  it('the same place in other orders does not matter where the label moves about', async () => {
    const text = await recipeFor(...(await documentsOf([middlePage(1)], [middlePage(2, 60)])));
    expect(stepOf(text, 'locate-label')).toBe('locate-label: auto');
  });

  it('one sample that no recipe can do keeps the recipe back, and is named with its page', async () => {
    const result = await drafted(...(await documentsOf([labelPage(1)], [labelPage(2), slipPage(2)], [slipPage(3), labelPage(3)])));
    expect(result.kind).toBe('none');
    expect(result.kind === 'none' && result.problems.map(({ sample, reason }) => `${sample} ${reason.code}`)).toContain(
      '3.pdf packing-slip/whose',
    );
  });

  it('a document of one page without a code keeps the recipe back: it may be a label, which would be skipped', async () => {
    const result = await drafted(...(await documentsOf([labelPage(1)], [labelPageWithoutCode(2)])));
    expect(result).toMatchObject({ kind: 'none', problems: [{ sample: '2.pdf', page: 1, reason: { code: 'draft/unsettled' } }] });
  });

  it('a label that scale prints without its cut line is still the label that was seen', async () => {
    const page = (order: number): LayoutPage => {
      const art = new Drawing(300, 444);
      art.edge = 'cut-line';
      art.frame(0, 0, 300, 444, 0.75, 'rectangle', 4);
      return { ...LETTER, regions: [label(art, 84, 44, 90), label(quillhaul(contentFor(`order ${order}`, order, 'line')), 90, 50, 90)] };
    };
    const text = await recipeFor(...(await documentsOf([page(1)], [page(2)])));
    const [item] = await itemsBy(text, await documentOf([page(3)]));
    expect(item).toMatchObject({ role: 'label', scale: 1, state: { kind: 'ready' } });
    expect(item?.evidence.join()).toContain('the cut line is left out');
  });

  it('the same documents give the same text', async () => {
    const documents = await documentsOf([labelPage(1), slipPage(1)], [labelPage(2), slipPage(2)]);
    expect(await recipeFor(...documents)).toBe(await recipeFor(...documents));
  });
});
