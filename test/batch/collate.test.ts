import { describe, expect, it } from 'vitest';
import { collate, type CollateDocument, type CollateOrders, type DocumentItem } from '../../src/batch/collate.js';
import { cautionsOf } from '../../src/batch/cautions.js';
import type { CodeSummary, ItemResult } from '../../src/recipe/outcome.js';
import type { ImposePlan, StackPlan } from '../../src/steps/step.js';
import { HELD, item } from './fakes.js';

const NUMBERED: StackPlan = { number: { onLabelPage: true, fontSize: 9 }, impose: undefined };
const TWO_UP: ImposePlan = { sheet: 'letter', columns: 1, rows: 2, turn: 90, firstFree: 1 };

const parcel = (plan: StackPlan, held = false): CollateDocument => ({
  plan,
  items: [
    item('p1', { parcel: 1, ...(held ? { state: HELD } : {}) }),
    item('p2', { page: 2, role: 'slip', parcel: 1, pressedPage: 2, numberBox: { x: 5, y: 5, width: 30, height: 12 } }),
  ],
});

const told = (documents: CollateDocument[]): unknown =>
  collate(documents, () => '4x6in').stacks.map(({ name, parcels, pages }) => ({
    name,
    parcels,
    pages: pages.map((page) => `${page.document} ${page.item.id} ${page.stamp?.text ?? '-'}`),
  }));

describe('collate', () => {
  it('numbers only the parcels that are printed, without a gap', () => {
    expect(told([parcel(NUMBERED), parcel(NUMBERED, true), parcel(NUMBERED)])).toEqual([
      { name: 'stack-4x6in.pdf', parcels: 2, pages: ['0 p1 1/2', '0 p2 1/2', '2 p1 2/2', '2 p2 2/2'] },
    ]);
  });

  it('makes one stack for each way of laying pages on sheets, and no number is there twice', () => {
    const imposed = { ...NUMBERED, impose: TWO_UP };
    expect(told([parcel(NUMBERED), parcel(imposed), parcel(NUMBERED)])).toEqual([
      { name: 'stack-4x6in.pdf', parcels: 2, pages: ['0 p1 1/3', '0 p2 1/3', '2 p1 2/3', '2 p2 2/3'] },
      { name: 'stack-letter-1x2.pdf', parcels: 1, pages: ['1 p1 3/3', '1 p2 3/3'] },
    ]);
    const from3: StackPlan = { ...NUMBERED, impose: { ...TWO_UP, firstFree: 2 } };
    expect(collate([parcel(imposed), parcel(from3)], () => '4x6in').stacks.map(({ name }) => name)).toEqual([
      'stack-letter-1x2.pdf',
      'stack-letter-1x2-2.pdf',
    ]);
  });

  it('stamps a label only where the recipe wants it and paper is free', () => {
    const slipOnly: StackPlan = { number: { onLabelPage: false, fontSize: 9 }, impose: undefined };
    expect(told([parcel(slipOnly)])).toMatchObject([{ pages: ['0 p1 -', '0 p2 1/1'] }]);
    expect(told([{ plan: slipOnly, items: [item('p1', { role: 'return-label' })] }])).toMatchObject([{ pages: ['0 p1 -'] }]);
    expect(told([parcel({ number: undefined, impose: undefined })])).toMatchObject([{ pages: ['0 p1 -', '0 p2 -'] }]);
    expect(told([{ plan: NUMBERED, items: [item('p1', { numberBox: undefined })] }])).toMatchObject([{ pages: ['0 p1 -'] }]);
  });

  it('says on the slip, and only there, how the tracking number ends', () => {
    const code = (
      tail: string | undefined,
      role: CodeSummary['role'] = 'tracking',
      trust: 'published' | 'likely' = 'published',
    ): CodeSummary => ({
      symbology: 'Code 128',
      identifier: ']C0',
      role,
      ...(role === 'tracking' ? { tracking: { digest: tail ?? '', trust, ...(tail === undefined ? {} : { tail }) } } : {}),
      digest: '',
      tail: 'WXYZ',
      moduleDots: 2,
    });
    const more = (codes: readonly CodeSummary[]): readonly unknown[] => {
      const { plan, items } = parcel(NUMBERED);
      const document = { plan, items: items.map((each) => (each.role === 'label' ? { ...each, codes } : each)) };
      return collate([document], () => '4x6in').stacks.flatMap(({ pages }) => pages.map(({ stamp }) => stamp));
    };
    const alone = { text: '1/1', fontSize: 9 };
    expect(more([code('9012'), code('9012'), code(undefined, 'routing')])).toEqual([alone, { ...alone, more: ' ·9012' }]);
    expect(more([code('9012'), code('3456')])).toEqual([alone, alone]);
    expect(more([code(undefined)])).toEqual([alone, alone]);
    expect(more([code('9012', 'tracking', 'likely')])).toEqual([alone, alone]);
    expect(more([code('9012', 'routing')])).toEqual([alone, alone]);
    expect(more([])).toEqual([alone, alone]);
  });

  it('says how the number ends that the order knows, whatever the label’s codes may be', () => {
    const orders: CollateOrders = { slips: new Map(), goesWith: new Map(), tailOf: (id) => (id === '0 p1' ? '1251' : undefined) };
    const { stacks } = collate([parcel(NUMBERED), parcel(NUMBERED)], () => '4x6in', orders);
    expect(stacks.flatMap(({ pages }) => pages.map(({ stamp }) => stamp?.more))).toEqual([undefined, ' ·1251', undefined, undefined]);
  });

  describe('pages for another printer', () => {
    const form = (page: number, changes: Partial<ItemResult> = {}): ItemResult =>
      item(`p${page}`, {
        page,
        role: 'customs-form',
        output: 'office',
        parcel: 1,
        numberBox: { x: 5, y: 5, width: 300, height: 12 },
        ...changes,
      });
    const abroad = (...forms: readonly ItemResult[]): CollateDocument => ({ plan: NUMBERED, items: [item('p1', { parcel: 1 }), ...forms] });
    const mediaOf = (name: string): string => (name === 'roll' ? '4x6in' : 'letter');
    const stamped = (documents: readonly CollateDocument[], orders?: CollateOrders): unknown =>
      collate(documents, mediaOf, orders).stacks.map(({ name, output, parcels, pages }) => ({
        name,
        output,
        parcels,
        pages: pages.map(({ document, item: { id }, stamp }) => `${document} ${id} ${stamp?.text ?? '-'}${stamp?.more ?? ''}`),
      }));

    it('have a stack of their own, in the order and with the numbers of their labels', () => {
      const sort = (labels: readonly string[]): readonly string[] => labels.toReversed();
      const orders: CollateOrders = { slips: new Map(), goesWith: new Map(), sort, orderOf: (id) => (id === '0 p1' ? 'A-17' : undefined) };
      expect(stamped([abroad(form(2), form(3)), parcel(NUMBERED), abroad(form(2))], orders)).toEqual([
        { name: 'stack-4x6in.pdf', output: 'roll', parcels: 3, pages: ['2 p1 1/3', '1 p1 2/3', '1 p2 2/3', '0 p1 3/3'] },
        {
          name: 'stack-office-letter.pdf',
          output: 'office',
          parcels: 2,
          pages: ['2 p2 1/3', '0 p2 3/3 · order A-17', '0 p3 3/3 · order A-17'],
        },
      ]);
    });

    it('share a stack with the labels of a channel that prints there, by number', () => {
      const there: CollateDocument = { ...parcel(NUMBERED), output: 'office' };
      expect(stamped([abroad(form(2)), there, abroad(form(2))])).toMatchObject([
        { output: 'roll', pages: ['0 p1 1/3', '2 p1 2/3'] },
        { output: 'office', parcels: 3, pages: ['0 p2 1/3', '2 p2 2/3', '1 p1 3/3', '1 p2 3/3'] },
      ]);
      const laid: CollateDocument = { ...parcel({ ...NUMBERED, impose: TWO_UP }), output: 'office' };
      expect(stamped([abroad(form(2)), laid])).toMatchObject([
        { name: 'stack-4x6in.pdf' },
        { name: 'stack-office-letter-1x2.pdf' },
        { name: 'stack-office-letter.pdf' },
      ]);
    });

    it('come apart from a parcel of another printer that they are put to', () => {
      const guest: CollateDocument = { plan: NUMBERED, output: 'office', items: [item('p1', { role: 'return-label' })] };
      const orders: CollateOrders = { slips: new Map(), goesWith: new Map([['1 p1', '0 p1']]) };
      expect(stamped([parcel(NUMBERED), guest], orders)).toMatchObject([
        { output: 'roll', pages: ['0 p1 1/1', '0 p2 1/1'] },
        { output: 'office', pages: ['1 p1 1/1'] },
      ]);
    });

    it('are told where no number has room, since nothing else says whose they are', () => {
      const told = cautionsOf(collate([abroad(form(2, { numberBox: undefined }))], mediaOf));
      expect(told.map(({ code, message }) => `${code} ${message}`)).toEqual([
        'number/no-room page 1 of print/stack-office-letter.pdf has no free margin for the number of its parcel, which is 1',
      ]);
      expect(cautionsOf(collate([abroad(form(2))], mediaOf))).toEqual([]);
    });
  });

  it('makes no stack of nothing', () => {
    expect(collate([parcel(NUMBERED, true)], () => '4x6in')).toMatchObject({ parcels: 0, stacks: [] });
  });

  it('keeps odd characters of a media name out of the file name', () => {
    expect(collate([parcel(NUMBERED)], () => 'om_../x_100x150mm').stacks[0]?.name).toBe('stack-om_..-x_100x150mm.pdf');
  });

  it('puts slips made from orders behind their labels, and a return label into the parcel of its order', () => {
    const label = (role: 'label' | 'return-label' = 'label'): CollateDocument => ({ plan: NUMBERED, items: [item('p1', { role })] });
    const slip = (id: string, page: number): DocumentItem => ({ document: 3, item: item(id, { role: 'slip', page }) });
    const orders: CollateOrders = {
      slips: new Map([['1 p1', [slip('s1', 1), slip('s2', 2)]]]),
      goesWith: new Map([['0 p1', '1 p1']]),
    };
    const { stacks, parcels } = collate([label('return-label'), label(), label()], () => '4x6in', orders);
    expect(parcels).toBe(2);
    expect(stacks.flatMap(({ pages }) => pages.map((page) => `${page.document} ${page.item.id} ${page.number}`))).toEqual([
      '1 p1 1',
      '3 s1 1',
      '3 s2 1',
      '0 p1 1',
      '2 p1 2',
    ]);
  });

  it('packs in the order that the orders want, and numbers by it', () => {
    const sort = (labels: readonly string[]): readonly string[] => labels.toReversed();
    const { stacks } = collate([parcel(NUMBERED), parcel(NUMBERED)], () => '4x6in', { slips: new Map(), goesWith: new Map(), sort });
    expect(stacks.flatMap(({ pages }) => pages.map((page) => `${page.document} ${page.item.id} ${page.stamp?.text ?? ''}`))).toEqual([
      '1 p1 1/2',
      '1 p2 1/2',
      '0 p1 2/2',
      '0 p2 2/2',
    ]);
    expect(() => collate([parcel(NUMBERED)], () => '4x6in', { slips: new Map(), goesWith: new Map(), sort: () => [] })).toThrow(
      'lost a parcel',
    );
  });

  it('prints a return label by itself when the label that it goes with is held', () => {
    const orders: CollateOrders = { slips: new Map(), goesWith: new Map([['1 p1', '0 p1']]) };
    const documents = [parcel(NUMBERED, true), { plan: NUMBERED, items: [item('p1', { role: 'return-label' })] }];
    expect(collate(documents, () => '4x6in', orders).stacks.flatMap(({ pages }) => pages.map((page) => page.document))).toEqual([1]);
  });
});
