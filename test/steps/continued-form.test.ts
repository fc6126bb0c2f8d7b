import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { s10CheckDigit } from '../../src/proof/check-digits.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { customsForm } from '../../src/steps/customs-form.js';
import { splitPages } from '../../src/steps/split-pages.js';
import * as pages from '../locating/survey-pages.js';
import { other, type LayoutPage } from '../samples/layout.js';
import { instructionsPage, openedPages, slipPage } from './on-pages.js';
import { endOf, labelOf, onMedia, optionsOf } from './on-sample.js';

/** An S10 number of the invented post XX with its check digit. */
const s10 = (serial: string): string => `RR${serial}${s10CheckDigit(serial) ?? 0}XX`;
const grouped = (number: string): string => number.replace(/^(..)(...)(...)(..)(.)(..)$/, '$1 $2 $3 $4$5 $6');

const form = (...words: readonly string[]): LayoutPage =>
  pages.letter(other(pages.customs(500, 400), 36, 36), ...(words.length > 0 ? [other(pages.lines(500, 80, words), 36, 460)] : []));
const goods = (...words: readonly string[]): LayoutPage =>
  pages.letter(
    other(pages.lines(500, 300, [...words, 'Paper star, 2 pieces, 0.2 kg', 'Country of origin XX', 'Sample, not valid']), 36, 36),
  );

async function split(document: readonly LayoutPage[]): Promise<readonly Sheet[]> {
  const opened = await openedPages(document);
  const sheets = document.map(({ width, height }, index) => pageSheet(index + 1, width, height));
  const made = await splitPages.apply(sheets, optionsOf(splitPages, { by: 'content' }), onMedia(opened));
  opened.close();
  return made;
}
const told = (sheets: readonly Sheet[]): string[] => sheets.map((sheet) => `${sheet.role} ${endOf(sheet) ?? ''}`);
const FORM = 'customs-form planned';
const HELD = 'customs-form held split-pages/continuation';

describe('a page behind a customs form', () => {
  it('is a page of it by its number and the count of pages', async () => {
    const made = await split([form('Page 1 of 3'), goods('Page 2 of 3'), goods('Page 3 of 3')]);
    expect(told(made)).toEqual([FORM, FORM, FORM]);
    expect(made[1]?.evidence).toEqual(['page 2 of 3 of the customs form before it']);
  });

  it.each(['Seite 1 von 2|Seite 2 von 2', 'Página 1 de 2|Página 2 de 2', 'Strona 1/2|Strona 2/2', 'стр. 1 из 2|стр. 2 из 2'])(
    'is one in other languages: %s',
    async (words) => {
      const [first = '', second = ''] = words.split('|');
      expect(told(await split([form(first), goods(second)]))).toEqual([FORM, FORM]);
    },
  );

  it('is a page of it by its number of the parcel, in groups or not', async () => {
    const number = s10('47312455');
    expect(told(await split([form(number), goods(grouped(number))]))).toEqual([FORM, FORM]);
    expect(told(await split([form(number), goods(grouped(number)), goods('Page 3')]))).toEqual([FORM, FORM, HELD]);
  });

  it('is held where it only may be one, and not skipped', async () => {
    expect(told(await split([form(), goods()]))).toEqual([FORM, HELD]);
    // Neither the page after the first nor of as many, nor said by the form itself; a fraction may be a size.
    for (const [first, second] of [
      ['Page 1 of 3', 'Page 3 of 3'],
      ['Page 1 of 2', 'Page 2 of 3'],
      ['Page 2 of 2', 'Page 1 of 2'],
      ['Copy', 'Page 2 of 2'],
      ['1/2', '2/2'],
    ] as const)
      expect(told(await split([form(first), goods(second)]))).toEqual([FORM, HELD]);
  });

  it('is held where it has the number of another parcel, whatever page it says to be', async () => {
    const [one, two] = [s10('47312455'), s10('47312456')];
    expect(told(await split([form(one, 'Page 1 of 2'), goods(two, 'Page 2 of 2')]))).toEqual([FORM, HELD]);
    // A wrong check digit is no number.
    const wrong = one.replace(/.(?=XX$)/, (digit) => String((Number(digit) + 1) % 10));
    expect(told(await split([form(wrong), goods(wrong)]))).toEqual([FORM, HELD]);
  });

  it('is what it says that it is, and nothing where it is blank or no form lies before it', async () => {
    const made = await split([
      form('Page 1 of 2'),
      slipPage(1),
      goods('Page 2 of 2'),
      form(),
      instructionsPage(),
      form(),
      pages.letter(),
      goods(),
    ]);
    expect(told(made)).toEqual([
      FORM,
      'slip planned',
      'page skipped split-pages/no-code',
      FORM,
      'page skipped split-pages/skipped',
      FORM,
      'page skipped split-pages/skipped',
      'page skipped split-pages/no-code',
    ]);
  });

  it('goes into the parcel of the form, and where it is held by itself', async () => {
    const document = [pages.letter(), form('Page 1 of 2'), goods('Page 2 of 2'), goods()];
    const opened = await openedPages(document);
    const [, ...rest] = await split(document);
    const label = labelOf(288, 432, { id: 'p1', page: 1 });
    const made = await customsForm.apply([label, ...rest], optionsOf(customsForm), onMedia(opened));
    opened.close();
    expect(made.map(({ role, parcel }) => `${role} ${parcel ?? '-'}`)).toEqual([
      'label 1',
      'customs-form 1',
      'customs-form 1',
      'customs-form -',
    ]);
    expect(made.map(endOf)).toEqual(['planned', 'planned', 'planned', 'held split-pages/continuation']);
  });

  it('of any count of pages is found, each by the one before', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 0, max: 3 }), async (of, lost) => {
        const said = Array.from({ length: of }, (_, at) => `Page ${at + 1} of ${of}`);
        const kept = said.filter((_, at) => at === 0 || at !== lost);
        const made = told(await split(kept.map((words, at) => (at === 0 ? form(words) : goods(words)))));
        const gap = lost > 0 && lost < of ? lost : of;
        expect(made).toEqual(kept.map((_, at) => (at < gap ? FORM : HELD)));
      }),
      { numRuns: 8 },
    );
  });
});
