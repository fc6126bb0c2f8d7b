import { describe, expect, it } from 'vitest';
import { splitPages } from '../../src/steps/split-pages.js';
import { blankPages, endOf, onMedia, opened, optionsOf } from './on-sample.js';
import { held, pageSheet } from '../../src/sheet/sheet.js';
import { labelPage, openedPages, sharedPage, slipPage, slipPageWithBars } from './on-pages.js';

const four = [1, 2, 3, 4].map((page) => pageSheet(page, 288, 432));
const split = (changed: Parameters<typeof optionsOf<typeof splitPages.options>>[1]) =>
  splitPages.apply(four, optionsOf(splitPages, changed), onMedia(blankPages(288, 432, 4)));

describe('split-pages', () => {
  it('takes every page for a label unless told otherwise', async () => {
    expect((await split({})).map((sheet) => sheet.role)).toEqual(['label', 'label', 'label', 'label']);
  });

  it('tells labels, slips, returns and pages to skip by position; no page gets lost', async () => {
    const sheets = await split({ labels: 'odd', slips: '2', returns: '3', skip: 'last' });
    expect(sheets.map((sheet) => `${sheet.role} ${endOf(sheet) ?? ''}`)).toEqual([
      'label planned',
      'slip planned',
      'return-label planned',
      'page skipped split-pages/skipped',
    ]);
  });

  it('skips pages that are not among the labels, by name', async () => {
    const sheets = await split({ labels: 'first' });
    expect(sheets.map(endOf)).toEqual(['planned', ...Array<string>(3).fill('skipped split-pages/skipped')]);
    expect(sheets[1]?.state).toMatchObject({ message: 'page 2 is not among the label pages' });
  });

  it.each([
    ['skip', 'skipped split-pages/no-code'],
    ['hold', 'held split-pages/no-code'],
    ['label', 'planned'],
  ] as const)('a page on which nothing looks like a code: %s', async (what, end) => {
    expect((await split({ 'without-code': what })).map(endOf)).toEqual(Array(4).fill(end));
  });

  it('tells a slip by its words, whatever their case, and keeps the label beside it', async () => {
    const { document, sheets } = await opened('label-then-slip');
    const made = await splitPages.apply(sheets, optionsOf(splitPages, { 'slip-words': ['PACKING  slip'] }), onMedia(document));
    expect(made.map((sheet) => sheet.role)).toEqual(['label', 'slip']);
    const skipping = await splitPages.apply(sheets, optionsOf(splitPages, { 'skip-words': ['packing slip'] }), onMedia(document));
    expect(skipping.map(endOf)).toEqual(['planned', 'skipped split-pages/skipped']);
    const returns = await splitPages.apply(sheets, optionsOf(splitPages, { 'return-words': ['packing slip'] }), onMedia(document));
    expect(returns.map((sheet) => sheet.role)).toEqual(['label', 'return-label']);
    document.close();
  });

  it('words beat positions, in the order skip, slip, return, label', async () => {
    const { document, sheets } = await opened('label-then-slip');
    const words = ['packing slip'];
    const second = async (changed: Parameters<typeof optionsOf<typeof splitPages.options>>[1]) => {
      const made = await splitPages.apply(sheets, optionsOf(splitPages, { skip: '2', ...changed }), onMedia(document));
      return `${made[1]?.role ?? ''} ${endOf(made[1]) ?? ''}`;
    };
    expect(await second({})).toBe('page skipped split-pages/skipped');
    expect(await second({ 'label-words': words })).toBe('label planned');
    expect(await second({ 'label-words': words, 'return-words': words })).toBe('return-label planned');
    expect(await second({ 'label-words': words, 'return-words': words, 'slip-words': words })).toBe('slip planned');
    expect(await second({ skip: 'none', 'slip-words': words, 'skip-words': words })).toBe('page skipped split-pages/skipped');
    document.close();
  });

  it('holds a page that is a slip by its words and has a label on it', async () => {
    const document = await openedPages([sharedPage(1)]);
    const page = document.page(1);
    const made = await splitPages.apply(
      [pageSheet(1, page.width, page.height)],
      optionsOf(splitPages, { 'slip-words': ['packing slip'] }),
      onMedia(document),
    );
    expect(made.map(endOf)).toEqual(['held split-pages/shared-page']);
    document.close();
  });

  it('holds a page that is a slip by its position and has a label of its own, with or without a slip beside it; bars alone make no label', async () => {
    const document = await openedPages([
      labelPage(1),
      labelPage(2),
      labelPage(3),
      sharedPage(4),
      labelPage(5),
      slipPageWithBars(5),
      slipPage(5),
    ]);
    const sheets = Array.from({ length: 7 }, (_, index) =>
      pageSheet(index + 1, document.page(index + 1).width, document.page(index + 1).height),
    );
    const made = await splitPages.apply(sheets, optionsOf(splitPages, { labels: 'odd', slips: '2,4,6-7' }), onMedia(document));
    expect(made.map((sheet) => `${sheet.role} ${endOf(sheet) ?? ''}`)).toEqual([
      'label planned',
      'slip held split-pages/own-label',
      'label planned',
      'slip held split-pages/own-label',
      'label planned',
      'slip planned',
      'slip planned',
    ]);
    expect(made[1]?.state).toMatchObject({ forParcel: 'page 2, which the recipe takes for its packing slip, has a label of its own' });
    expect(made[1]?.state).toMatchObject({
      message: 'page 2 has a label of its own: is this recipe right for this channel?',
      remedy: expect.stringContaining('recipe: any-page') as unknown,
    });
    document.close();
  });

  it('a page that is held already takes its role from its position only, and stays undecided where words decide', async () => {
    const unfit = held(pageSheet(2, 288, 432), { code: 'reading/damaged', message: 'm', remedy: 'r' });
    const role = async (changed: Parameters<typeof optionsOf<typeof splitPages.options>>[1]) =>
      (await splitPages.apply([unfit], optionsOf(splitPages, changed), onMedia(blankPages(288, 432, 2))))[0];
    expect(await role({ labels: 'odd', slips: 'even' })).toEqual({
      ...unfit,
      role: 'slip',
      evidence: ['page 2 is a slip by its position'],
    });
    expect(await role({ labels: 'odd', slips: 'even', 'slip-words': ['packing slip'] })).toEqual(unfit);
  });
});
