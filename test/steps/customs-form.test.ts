import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { held, pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { customsForm } from '../../src/steps/customs-form.js';
import type { OptionValues } from '../../src/steps/option.js';
import { customs } from '../locating/survey-pages.js';
import { Drawing } from '../samples/drawing.js';
import { LETTER, other, type LayoutPage } from '../samples/layout.js';
import { openedPages } from './on-pages.js';
import { blankPages, endOf, labelOf, mediaNamed, onMedia, optionsOf } from './on-sample.js';

const formPage = (drawing: Drawing): LayoutPage => ({ ...LETTER, regions: [other(drawing, 36, 36)] });
const formSheet = (page: number, more: Partial<Sheet> = {}): Sheet => ({ ...pageSheet(page, 612, 792), role: 'customs-form', ...more });
const label = (page: number, more: Partial<Sheet> = {}): Sheet => labelOf(288, 432, { id: `p${page}`, page, ...more });

/** Each page is a form; the label's own page is never asked for. */
async function apply(sheets: readonly Sheet[], drawing: Drawing, changed: Partial<OptionValues<typeof customsForm.options>> = {}) {
  const pages = Array.from({ length: Math.max(...sheets.map(({ page }) => page)) }, () => formPage(drawing));
  const document = await openedPages(pages);
  const made = await customsForm.apply(sheets, optionsOf(customsForm, changed), onMedia(document));
  document.close();
  return made;
}
const small = customs(250, 300);
const parcels = (sheets: readonly Sheet[]): string[] => sheets.map((sheet) => `${sheet.role} ${sheet.parcel ?? '-'} ${endOf(sheet) ?? ''}`);

describe('customs-form', () => {
  it('brings a form that fits behind its label at true size, as it was drawn', async () => {
    const [, form] = await apply([label(1), formSheet(2)], small);
    expect(form).toMatchObject({ parcel: 1, scale: 1, content: { kind: 'region' } });
    expect(endOf(form)).toBe('planned');
    expect(form?.evidence).toEqual(['true size']);
    expect(form && form.box.width).toBeLessThan(250);
    expect(form && form.box.width).toBeGreaterThan(220);
  });

  it('turns and shrinks a larger one, and says how much', async () => {
    const [, form] = await apply([label(1), formSheet(2)], customs(540, 380, 12));
    expect(endOf(form)).toBe('planned');
    expect(form?.turn).toBe(90);
    expect(form?.evidence.join()).toMatch(/^shrunk to [78]\d %$/);
    const { box, scale, margin } = form ?? label(1);
    expect(box.width * scale).toBeLessThanOrEqual(432 - 2 * margin + 0.01);
    expect(box.height * scale).toBeLessThanOrEqual(288 - 2 * margin + 0.01);
  });

  it('holds one that would be unreadable for the office printer, and lets its label go', async () => {
    const made = await apply([label(1), formSheet(2)], customs(540, 700, 7));
    expect(made.map(endOf)).toEqual(['planned', 'held customs-form/office-printer']);
    expect(made[1]?.parcel).toBeUndefined();
    const easier = await apply([label(1), formSheet(2)], customs(540, 700, 7), { readable: { value: 3, unit: 'pt' } });
    expect(endOf(easier[1])).toBe('planned');
  });

  describe('with a printer for large pages', () => {
    const media = mediaNamed('letter');
    const large = { name: 'office', media, grid: gridOf('300dpi'), reach: { x: 9, y: 9, width: 594, height: 774 } };
    async function applyLarge(
      sheets: readonly Sheet[],
      pages: readonly LayoutPage[],
      changed: Partial<OptionValues<typeof customsForm.options>> = {},
    ) {
      const document = await openedPages([{ ...LETTER, regions: [] }, ...pages]);
      const made = await customsForm.apply(sheets, optionsOf(customsForm, changed), { ...onMedia(document), large });
      document.close();
      return made;
    }

    it('sends one there that would be unreadable, whole and at true size, in its parcel', async () => {
      const [, form] = await applyLarge([label(1), formSheet(2)], [formPage(customs(540, 700, 7))]);
      expect(endOf(form)).toBe('planned');
      expect(form).toMatchObject({ output: 'office', parcel: 1, scale: 1, turn: 0, margin: 0, box: { width: 612, height: 792 } });
      expect(form?.ifSlipHeld).toBe('hold');
      const [, released] = await applyLarge([label(1), formSheet(2)], [formPage(customs(540, 700, 7))], { 'if-held': 'print-label' });
      expect(released?.ifSlipHeld).toBe('release');
    });

    it('leaves one that fits on the label media', async () => {
      const [, form] = await applyLarge([label(1), formSheet(2)], [formPage(small)]);
      expect(form).toMatchObject({ parcel: 1, scale: 1 });
      expect(form?.output).toBeUndefined();
    });

    it('keeps the pages of one form together, and leaves one of another size or parcel where it fits', async () => {
      const sheets = [
        label(1),
        formSheet(2),
        formSheet(3),
        { ...formSheet(4), box: { x: 0, y: 0, width: 288, height: 432 } },
        label(5),
        formSheet(6),
      ];
      const pages = [formPage(customs(540, 700, 7)), formPage(small), formPage(small), { ...LETTER, regions: [] }, formPage(small)];
      const made = await applyLarge(sheets, pages);
      expect(made.map(({ output = 'roll', role, parcel }) => `${role} ${parcel ?? '-'} ${output}`)).toEqual([
        'label 1 roll',
        'customs-form 1 office',
        'customs-form 1 office',
        'customs-form 1 roll',
        'label 2 roll',
        'customs-form 2 roll',
      ]);
    });

    it('holds one that is too large for that too, by itself and with figures', async () => {
      const sheet = { ...formSheet(2), box: { x: 0, y: 0, width: 842, height: 1191 } };
      const page = { width: 842, height: 1191, regions: [other(customs(780, 1100, 7), 31, 40)] };
      const made = await applyLarge([label(1), sheet], [page]);
      expect(made.map(endOf)).toEqual(['planned', 'held customs-form/too-large']);
      expect(made[1]?.parcel).toBeUndefined();
      expect(made[1]?.state).toMatchObject({
        message: expect.stringMatching(/it is 10\.\d+×15\.\d+ in .* office prints 8\.25×10\.75 in/) as string,
      });
    });
  });

  it('holds a form without words that does not fit at true size: its type cannot be measured', async () => {
    const wordless = (width: number): Drawing =>
      new Drawing(540, 700)
        .frame(0, 0, width, 300, 2)
        .rect(20, 40, width - 40, 3)
        .rect(20, 80, width - 40, 3);
    expect(endOf((await apply([label(1), formSheet(2)], wordless(520)))[1])).toBe('held customs-form/office-printer');
    expect(endOf((await apply([label(1), formSheet(2)], wordless(240)))[1])).toBe('planned');
  });

  it('holds an empty page, and a margin that leaves no room', async () => {
    expect(endOf((await apply([label(1), formSheet(2)], new Drawing(10, 10)))[1])).toBe('held customs-form/empty');
    expect(endOf((await apply([label(1), formSheet(2)], small, { margin: { value: 60, unit: 'mm' } }))[1])).toBe('held customs-form/empty');
  });

  it('numbers parcels on from those that there are', async () => {
    const made = await apply([label(1, { parcel: 4 }), formSheet(2), label(3), formSheet(4)], small);
    expect(parcels(made)).toEqual(['label 4 planned', 'customs-form 4 planned', 'label 5 planned', 'customs-form 5 planned']);
  });

  it('goes with the label, never with a return label between them', async () => {
    const made = await apply([label(1), label(2, { role: 'return-label' }), formSheet(3)], small);
    expect(parcels(made)).toEqual(['label 1 planned', 'return-label 2 planned', 'customs-form 1 planned']);
    expect(parcels(await apply([label(1, { role: 'return-label' }), formSheet(2)], small))).toEqual([
      'return-label 1 planned',
      'customs-form - held customs-form/no-label',
    ]);
  });

  it('holds what may be another label’s: labels and forms in rows, a page nobody recognised, forms before labels', async () => {
    const rows = await apply([label(1), label(2), formSheet(3), formSheet(4)], small);
    expect(rows.map(endOf)).toEqual(['planned', 'planned', 'held packing-slip/whose', 'held packing-slip/whose']);
    expect(rows.map(({ parcel }) => parcel)).toEqual([1, 2, 1, 2]);
    const unknown = held(pageSheet(2, 612, 792), { code: 'split-pages/unknown', message: 'm', remedy: 'r' });
    expect((await apply([label(1), unknown, formSheet(3)], small)).map(endOf)).toEqual([
      'planned',
      'held split-pages/unknown',
      'held packing-slip/whose',
    ]);
    const first = await apply([formSheet(1), label(2), formSheet(3), label(4)], small);
    expect(first.map(endOf)).toEqual(['held customs-form/no-label', 'planned', 'held packing-slip/whose', 'planned']);
  });

  it('leaves everything else alone, and a form that is held already', async () => {
    const others: Sheet[] = [
      { ...pageSheet(1, 612, 792), role: 'slip' },
      held(formSheet(2), { code: 'packing-slip/whose', message: 'm', remedy: 'r' }),
      { ...pageSheet(3, 612, 792), role: 'remainder' },
    ];
    expect(await customsForm.apply(others, optionsOf(customsForm), onMedia(blankPages(612, 792, 3)))).toEqual(others);
    expect(await customsForm.apply([], optionsOf(customsForm), onMedia(blankPages(612, 792)))).toEqual([]);
  });
});
