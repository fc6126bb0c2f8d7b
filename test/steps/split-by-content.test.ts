import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../src/sheet/sheet.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import { locateLabel } from '../../src/steps/locate-label.js';
import { splitPages } from '../../src/steps/split-pages.js';
import * as pages from '../locating/survey-pages.js';
import { contentFor } from '../samples/content.js';
import { A4, label, LETTER, other, type LayoutPage } from '../samples/layout.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { invoice } from '../samples/other-pages.js';
import { instructionsPage, openedPages, sharedPage, slipPage, slipPageWithBars } from './on-pages.js';
import { endOf, onMedia, optionsOf } from './on-sample.js';

type Options = Parameters<typeof optionsOf<typeof splitPages.options>>[1];

async function split(document: readonly LayoutPage[], changed: Options = {}): Promise<readonly Sheet[]> {
  const opened = await openedPages(document);
  const sheets = document.map(({ width, height }, index) => pageSheet(index + 1, width, height));
  const made = await splitPages.apply(sheets, optionsOf(splitPages, { by: 'content', ...changed }), onMedia(opened));
  opened.close();
  return made;
}
const told = (sheets: readonly Sheet[]): string[] => sheets.map((sheet) => `${sheet.role} ${endOf(sheet) ?? ''}`);

const doubtfulPage = pages.letter(other(pages.bareBox(230, 300, 'BOX-17', 1.2, 22), 60, 60));
const returnArt = quillhaul(contentFor('return by content', 1, 'line'), { cutLine: true }).text(200, 110, 'Return label', { size: 9 });

describe('split-pages by content', () => {
  it('each page says what it is; none gets lost', async () => {
    const sheets = await split([
      pages.letter(pages.sidewaysLabel(1, 54)),
      slipPage(1),
      pages.letter(other(pages.customs(500, 400), 36, 36)),
      { ...A4, regions: [other(invoice(A4.width, A4.height, contentFor('invoice')), 0, 0)] },
      instructionsPage(),
      pages.letter(),
      pages.letter(other(pages.writing(), 36, 36)),
    ]);
    expect(told(sheets)).toEqual([
      'label planned',
      'slip planned',
      'customs-form planned',
      'page skipped split-pages/skipped',
      'page skipped split-pages/skipped',
      'page skipped split-pages/skipped',
      'page skipped split-pages/no-code',
    ]);
    expect(sheets.slice(1, 3).map(({ evidence }) => evidence)).toEqual([
      ['the page calls itself "packing slip"'],
      ['the page calls itself "customs declaration"'],
    ]);
    expect(sheets[3]?.state).toMatchObject({ message: 'the page calls itself "invoice"' });
    expect(sheets[5]?.state).toMatchObject({ message: 'the page is blank' });
  });

  it('holds a page with codes that says nothing of itself, be they ever so coarse', async () => {
    const withBars = pages.letter(other(pages.writing(), 36, 36), other(pages.bareBox(150, 90, 'MUGS-0001', 0.9, 40), 36, 300));
    const coarse = pages.letter(other(pages.matrixAlone(8), 50, 200));
    expect(told(await split([withBars, coarse]))).toEqual(['page held split-pages/unknown', 'page held split-pages/unknown']);
  });

  it('holds a doubtful page with its answers, numbered, and the line for the recipe', async () => {
    const [sheet] = await split([doubtfulPage]);
    expect(endOf(sheet)).toBe('held split-pages/doubtful');
    expect(sheet?.answers).toHaveLength(1);
    const remedy = sheet?.state.kind === 'held' ? sheet.state.remedy : '';
    const option = /`locate-label: \{ box: \[([\d.]+)mm, ([\d.]+)mm, ([\d.]+)mm, ([\d.]+)mm\] \}`/.exec(remedy);
    const mm = option?.slice(1).map(Number) ?? [];
    [60, 60, 230, 300].forEach((pt, index) => expect(Math.abs((mm[index] ?? NaN) - (pt * 25.4) / 72)).toBeLessThan(1));
  });

  it('a slip with bars is a slip, a page with label and slip stays whole', async () => {
    expect(told(await split([slipPageWithBars(1), sharedPage(1)]))).toEqual(['slip planned', 'label planned']);
  });

  it("the recipe's own words and pages to skip go before what the page says", async () => {
    const words = { 'skip-words': ['customs declaration'], 'slip-words': ['how to use'], 'return-words': ['kiln on thursdays'] };
    const sheets = await split(
      [pages.letter(other(pages.customs(500, 400), 36, 36)), instructionsPage(), pages.letter(other(pages.writing(), 36, 36)), slipPage(1)],
      { ...words, skip: 'last' },
    );
    expect(told(sheets)).toEqual([
      'page skipped split-pages/skipped',
      'slip planned',
      'return-label planned',
      'page skipped split-pages/skipped',
    ]);
  });

  it.each([
    ['labels', { labels: 'odd' }],
    ['slips', { slips: 'even' }],
    ['returns', { returns: 'last' }],
    ['without-code', { 'without-code': 'hold' as const }],
  ])('refuses `%s`, which would have no effect', (name, changed) => {
    expect(splitPages.together?.(optionsOf(splitPages, { by: 'content', ...changed }))?.message).toContain(`\`${name}\` has no effect`);
    expect(splitPages.together?.(optionsOf(splitPages, changed))).toBeUndefined();
  });
});

async function located(page: LayoutPage): Promise<readonly Sheet[]> {
  const document = await openedPages([page]);
  const made = await locateLabel.apply(
    [pageSheet(1, page.width, page.height)],
    optionsOf(locateLabel, { by: ['auto'] }),
    onMedia(document),
  );
  document.close();
  return made;
}
const ids = (sheets: readonly Sheet[]): string[] => sheets.map((sheet) => `${sheet.id} ${sheet.role} ${endOf(sheet) ?? ''}`);

describe('locate-label: auto', () => {
  it('a label and its slip on one page', async () => {
    const made = await located(sharedPage(1));
    expect(ids(made)).toEqual(['p1 label planned', 'p1.slip slip planned']);
    expect(made[1]?.evidence).toEqual(['beside the label the page says "packing slip"']);
    expect(made[1]?.box.y).toBeGreaterThan(414);
  });

  it('a label and its customs form on one page', async () => {
    const made = await located(pages.letter(pages.sidewaysLabel(6, 40), other(pages.customs(260, 330), 36, 420)));
    expect(ids(made)).toEqual(['p1 label planned', 'p1.form customs-form planned']);
  });

  it('holds one slip beside two labels: whose it is, nobody knows', async () => {
    const regions = [pages.uprightLabel(1, 60, 60), pages.uprightLabel(2, 480, 60), other(pages.slipDrawing(1), 60, 600)];
    const made = await located({ width: 842, height: 1191, regions });
    expect(ids(made)).toEqual(['p1.1 label planned', 'p1.2 label planned', 'p1.slip slip held packing-slip/whose']);
  });

  it('holds a slip that lies around its label', async () => {
    expect(ids(await located(pages.slipAround(1)))).toEqual(['p1 label planned', 'p1.slip slip held packing-slip/overlaps-label']);
  });

  it('makes a sure label and holds what may be another one with the one line that chooses it', async () => {
    const box = other(pages.bareBox(260, 240, '00340000123456789012', 1, 40), 90, 460);
    const made = await located(pages.letter(pages.sidewaysLabel(3, 40), box));
    expect(ids(made)).toEqual([
      'p1.1 label planned',
      'p1.2 page held locate-label/doubtful',
      'p1.rest remainder skipped locate-label/remainder',
    ]);
    const doubt = made[1];
    expect(doubt?.state).toMatchObject({ message: expect.stringMatching(/; the other label of this page goes on without it$/) as string });
    const remedy = doubt?.state.kind === 'held' ? doubt.state.remedy : '';
    expect(remedy.match(/box: \[/g)).toHaveLength(1);
    expect(doubt?.answers).toHaveLength(1);
    expect(doubt?.box.y).toBeGreaterThan(450);
    expect(doubt?.evidence.join('; ')).toMatch(/around 1 code/);
  });

  it('a return label by words on it, or beside it', async () => {
    const beside = pages.letter(
      label(quillhaul(contentFor('r', 1, 'line'), { cutLine: true }), 60, 40),
      other(pages.lines(300, 40, ['Return label'], 16), 36, 560),
    );
    for (const page of [pages.letter(label(returnArt, 60, 40)), beside]) {
      const [made] = await located(page);
      expect(made?.role).toBe('return-label');
      expect(made?.evidence).toContain('it says "return label"');
    }
  });

  it.each([
    ["a receipt with the label's own number", other(pages.senderCopy(pages.contentOf(3)), 90, 440)],
    ['a voucher with bars of its own', other(pages.voucher(), 90, 440)],
    ['a voucher larger than the label', other(pages.voucher(540, 330), 36, 440)],
  ])('takes only the label beside %s, and names the rest', async (_, paper) => {
    const made = await located(pages.letter(pages.sidewaysLabel(3, 40), paper));
    expect(ids(made)).toEqual(['p1 label planned', 'p1.rest remainder skipped locate-label/remainder']);
    expect(made[0]?.box.y).toBeLessThan(41);
  });

  it.each([
    ['nothing on it', { ...LETTER, regions: [] }, 'held locate-label/not-found'],
    ['a name of its own', slipPage(1), 'held locate-label/not-found'],
    ['nothing like a label', pages.letter(other(pages.writing(), 36, 36)), 'held locate-label/not-found'],
    ['more than one answer or a poor one', doubtfulPage, 'held locate-label/doubtful'],
  ])('holds a page with %s', async (_, page, end) => {
    const made = await located(page);
    expect(made.map(endOf)).toEqual([end]);
  });

  it('takes nothing beside the word `auto`', () => {
    const together = (changed: Parameters<typeof optionsOf<typeof locateLabel.options>>[1]) =>
      locateLabel.together?.(optionsOf(locateLabel, changed));
    const refused = '`auto` looks at the whole page by every edge';
    expect(together({ by: ['auto', 'frame'] })?.message).toBe(refused);
    expect(together({ by: ['auto'], place: ['upper-half'] })?.message).toBe(refused);
    const mm = { value: 10, unit: 'mm' as const };
    expect(together({ by: ['auto'], box: [mm, mm, mm, mm] })?.message).toBe(refused);
    expect(together({ by: ['auto'] })).toBeUndefined();
    expect(together({ by: ['frame', 'ink'] })).toBeUndefined();
  });
});
