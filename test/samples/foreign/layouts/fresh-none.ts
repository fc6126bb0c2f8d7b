import { advertPanel, appPanel, declaration, helpSteps, letterhead, packed, smallPrint, voucherPanel } from '../designs/fresh-beside.js';
import { bill, greeting, manifest, plainLetter, priceTags, returnForm, ticket } from '../designs/fresh-papers.js';
import { freshParcel, POLISH, wordsOf } from '../designs/fresh-words.js';
import type { Art } from '../kit/art.js';
import type { Document, Kind, Layout, Page, Producer } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { other, page, range, slipPart } from './parts.js';

type Size = { readonly width: number; readonly height: number };
const { a4, letter, a6 } = SIZES;
const FOUR_SIX = SIZES['4x6'];
const inner = ({ width, height }: Size, margin = 50): Size => ({ width: width - 2 * margin, height: height - 2 * margin });
const one = (k: number) => ({ each: freshParcel(2000 + k, k % POLISH), words: wordsOf(k % POLISH) });
const sheet = (kind: Kind, size: Size, art: Art, at = { x: 50, y: 50 }, more: readonly Art[] = []): Page =>
  page(kind, size, [
    kind === 'packing-slip' ? slipPart(art, at) : other(art, at),
    ...more.map((extra, k) => other(extra, { x: 56, y: size.height - 160 - k * 90 })),
  ]);

/** Thirty pages without any label, in seven languages; Polish is left to the producers that have its letters. */
export const freshNone: Layout = {
  name: 'f11-none',
  about:
    'thirty pages that are no labels: bills, adverts, cards, tickets, blanks, slips, declarations, dispatch lists, letters, price tags, forms',
  documents: () => {
    const bills = range(5).map((k) => {
      const { each, words } = one(k);
      const size = k % 2 === 0 ? a4 : letter;
      return sheet('invoice', size, bill(each, words, inner(size), (['qr', 'code128', 'none', 'qr', 'code128'] as const)[k] ?? 'none'));
    });
    const adverts = range(4).map((k) => {
      const { each, words } = one(10 + k);
      if (k === 3) return sheet('advert', FOUR_SIX, advertPanel(each, words, { width: 272, height: 416 }), { x: 8, y: 8 });
      return sheet(
        'advert',
        a4,
        advertPanel(each, words, k === 0 ? inner(a4) : { width: 300, height: 440 }),
        { x: 50 + k * 60, y: 60 },
        k === 1 ? [voucherPanel(each, words, { width: 240, height: 120 })] : [],
      );
    });
    const cards = range(2).map((k) => {
      const { each, words } = one(20 + k);
      return k === 0
        ? sheet('other', a6, greeting(each, words, { width: 285, height: 406 }), { x: 6, y: 6 })
        : sheet('other', letter, greeting(each, words, FOUR_SIX), { x: 160, y: 120 });
    });
    const tickets = range(2).map((k) => {
      const { each, words } = one(25 + k);
      return sheet('other', a4, ticket(each, words, { width: 432, height: 288 }), { x: 80, y: 60 + k * 300 }, [
        smallPrint(words, { width: 430, height: 120 }, 2, 1),
      ]);
    });
    const blanks = [page('blank', a4, []), page('blank', FOUR_SIX, [])];
    const slips = range(5).map((k) => {
      const { each, words } = one(30 + k);
      if (k === 4) return sheet('packing-slip', FOUR_SIX, packed(each, words, { width: 264, height: 400 }, true), { x: 12, y: 12 });
      return sheet(
        'packing-slip',
        k % 2 === 0 ? a4 : letter,
        packed(each, words, { width: 300 + k * 60, height: 400, family: k % 2 === 0 ? 'serif' : 'sans' }, k % 2 === 1),
        { x: 60, y: 70 },
        [letterhead(each, { width: 400, height: 30 })],
      );
    });
    const forms = range(4).map((k) => {
      const { each, words } = one(40 + k);
      const small = k === 3;
      const art = declaration(each, words, small ? { width: 276, height: 420 } : { width: 430, height: 400 + k * 20 }, k !== 1);
      return sheet('customs', small ? FOUR_SIX : letter, art, small ? { x: 6, y: 6 } : { x: 90, y: 80 + k * 100 });
    });
    const lists = range(2).map((k) => {
      const { words } = one(50 + k);
      const parcels = range(9 + k * 5).map((i) => freshParcel(2100 + k * 20 + i, k));
      return sheet('pick-list', a4, manifest(parcels, words, inner(a4), k === 0));
    });
    const letters = range(2).map((k) =>
      sheet('other', k === 0 ? a4 : letter, plainLetter(one(60 + k).each, one(60 + k).words, inner(k === 0 ? a4 : letter), k === 0)),
    );
    const tags = sheet('other', a4, priceTags(7, one(65).words, inner(a4), 3, 7));
    const help = sheet('instructions', letter, helpSteps(one(70).each, one(70).words, { width: 380, height: 220 }), { x: 60, y: 60 }, [
      appPanel(one(70).each, one(70).words, { width: 240, height: 80 }),
    ]);
    const back = sheet('other', a4, returnForm(one(72).each, one(72).words, inner(a4)));
    const named = (name: string, producer: Producer, pages: readonly Page[], more: Partial<Document> = {}): Document => ({
      name: `f11-none-${name}`,
      producer,
      pages,
      ...more,
    });
    return [
      named('bills', 'weasyprint', [...bills.slice(0, 3), ...letters.slice(0, 1), ...adverts.slice(0, 1)], {
        fonts: { sans: 'DejaVu Sans', serif: 'Noto Serif' },
      }),
      named('cards', 'cairo', [...cards, ...tickets, ...adverts.slice(3), ...slips.slice(4), ...blanks.slice(1)], {
        fonts: { sans: 'Nimbus Sans' },
      }),
      named('forms', 'ghostscript', [...forms.slice(0, 2), ...bills.slice(3, 4), ...slips.slice(0, 2), back], {
        fonts: { sans: 'Palatino' },
      }),
      named('office', 'libreoffice', [...lists.slice(0, 1), tags], { fonts: { sans: 'Liberation Sans Narrow' } }),
      named('pixels', 'img2pdf', [...forms.slice(2), ...adverts.slice(1, 2), ...slips.slice(2, 3), ...blanks.slice(0, 1)], { dpi: 150 }),
      named(
        'shop',
        'chromium',
        [...adverts.slice(2, 3), ...bills.slice(4), ...lists.slice(1), ...slips.slice(3, 4), ...letters.slice(1), help],
        { fonts: { sans: 'Noto Sans' } },
      ),
    ];
  },
};
