import { advert, appCode, coupon, customs, instructions, logo, slip } from '../designs/beside.js';
import type { Vocabulary } from '../designs/content.js';
import { parcel } from '../designs/content.js';
import { invoice, pickList, remittance, shelfLabels, shopReceipt, terms } from '../designs/papers.js';
import type { Document, Kind, Layout, Page, Producer } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Art } from '../kit/art.js';
import { other, page, range, slipPart } from './parts.js';

/** What differs between the halves: words, paper, producers, and which of the papers carry codes. */
interface Taste {
  readonly prefix: string;
  readonly words: Vocabulary;
  readonly seed: number;
  readonly paper: { readonly width: number; readonly height: number };
  readonly other: { readonly width: number; readonly height: number };
  readonly producers: readonly [Producer, Producer, Producer, Producer, Producer];
  readonly odd: 0 | 1;
}

/** Thirty pages without any label. */
export function noLabels(taste: Taste): Layout {
  const { prefix, words, paper, odd } = taste;
  const one = (k: number) => parcel(taste.seed + k, words);
  const area = { width: paper.width - 100, height: paper.height - 100 };
  const at = { x: 50, y: 50 };
  const sheet = (kind: Kind, art: Art, more: readonly Art[] = [], size = paper): Page =>
    page(kind, size, [
      kind === 'packing-slip' ? slipPart(art, at) : other(art, at),
      ...more.map((each, k) => other(each, { x: 60, y: size.height - 190 - k * 90 })),
    ]);
  const family = odd === 1 ? ('serif' as const) : ('sans' as const);
  const invoices = range(5).map((k) => sheet('invoice', invoice(one(k), words, { ...area, family }, k % 2 === odd)));
  const termPages = range(3).map((k) => sheet('other', terms(one(10 + k), { ...area, family }, k === odd ? 1 : 2)));
  const adverts = range(4).map((k) => {
    const spot = k % 2 === 0 ? area : { width: 330, height: 480 };
    return sheet(
      'advert',
      k === 3 ? coupon(one(20 + k), { width: 400, height: 260 }) : advert(one(20 + k), words, spot),
      k === 1 ? [appCode(one(24), { width: 200, height: 70 })] : [],
    );
  });
  const blanks = [page('blank', paper, []), page('blank', taste.other, [])];
  const slips = range(5).map((k) => {
    const spot = k === 4 ? { width: 260, height: 400 } : { ...area, family };
    const size = k === 4 ? SIZES['4x6'] : paper;
    const art = slip(one(30 + k), words, spot, {
      barcode: k % 2 === odd || k === 4,
      title: ['Packing slip', 'Delivery note', 'What is inside'][k % 3] ?? '',
    });
    return k === 4
      ? page('packing-slip', size, [slipPart(art, { x: 14, y: 12 })])
      : sheet('packing-slip', art, [logo(words, { width: 220, height: 34 }, k)]);
  });
  const forms = range(4).map((k) => {
    const small = k === 3;
    const spot = small ? { width: 272, height: 412 } : { width: 420, height: 480 };
    const art = customs(one(40 + k), { ...spot, family }, k % 2 === 0);
    return page('customs', small ? SIZES['4x6'] : paper, [other(art, small ? { x: 8, y: 10 } : at)]);
  });
  const picks = range(2).map((k) =>
    sheet(
      'pick-list',
      pickList(
        range(8 + k * 3).map((i) => one(50 + i + k * 12)),
        area,
        k === odd,
      ),
    ),
  );
  const letters = range(2).map((k) => sheet('other', remittance(one(80 + k), { ...area, family }, k === odd)));
  const shelves = [
    sheet('other', shelfLabels(taste.seed + 1, words, area, 3 - odd, 7)),
    sheet('other', shelfLabels(taste.seed + 2, words, { width: area.width, height: 300 }, 2 + odd, 3)),
  ];
  const receiptPage = page('other', { width: 226, height: 260 }, [
    other(shopReceipt(one(90), { width: 200, height: 230 }), { x: 13, y: 12 }),
  ]);
  const help = sheet('instructions', instructions({ width: 360, height: 200 }, one(95)), [appCode(one(96), { width: 240, height: 80 })]);
  const [a, b, c, d, e] = taste.producers;
  const named = (name: string, producer: Producer, pages: readonly Page[], more: Partial<Document> = {}): Document => ({
    name: `${prefix}-none-${name}`,
    producer,
    pages,
    ...more,
  });
  return {
    name: `${prefix}-none`,
    about:
      'thirty pages that are no labels: bills, terms, adverts, blanks, slips, customs forms, pick lists, letters, shelf labels, a receipt',
    documents: () => [
      named('bills', a, [...invoices.slice(0, 3), ...termPages.slice(0, 1)]),
      named('letters', b, [...invoices.slice(3), ...termPages.slice(1, 2), ...letters.slice(0, 1)]),
      named('adverts', c, [...adverts.slice(0, 2), ...blanks.slice(0, 1), ...shelves.slice(0, 1), ...slips.slice(0, 2)]),
      named('forms', d, [...forms.slice(0, 2), ...picks.slice(0, 1), ...slips.slice(2, 3), ...letters.slice(1)]),
      named('small', c, [...slips.slice(4), ...forms.slice(3), receiptPage]),
      named('pictures', e, [...forms.slice(2, 3), ...adverts.slice(2, 3), ...shelves.slice(1), ...slips.slice(3, 4), ...blanks.slice(1)], {
        dpi: 150,
      }),
      named('more', a, [...adverts.slice(3), ...termPages.slice(2), ...picks.slice(1), help]),
    ],
  };
}
