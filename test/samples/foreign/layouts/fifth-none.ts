import { handOver, manual, terms, ticket, till, toPack, voucher } from '../designs/fifth-none.js';
import { customsSheet, invoiceSheet, packing, returnForm, returnTitle, steps, stub, numberOf } from '../designs/fifth-papers.js';
import { posted, tongue } from '../designs/fifth-words.js';
import { Art } from '../kit/art.js';
import type { Document, Kind, Layout, Page, Producer } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { FONTS } from './fifth-parts.js';
import { a4, a5, a6, letter } from './fourth-parts.js';
import { cycle, other, page, range, slipPart } from './parts.js';

const each = (k: number) => posted(2200 + k, tongue(k));
type Paper = { readonly width: number; readonly height: number };
const roll = SIZES['4x6'];
const one = (kind: Kind, size: Paper, art: Art, x = 60, y = 46): Page =>
  page(kind, size, [kind === 'packing-slip' ? slipPart(art, { x, y }) : other(art, { x, y })]);
const office = (size: Paper) => ({ width: size.width - 120, height: size.height - 100 });
const onRoll = (size: Paper = roll) => ({ width: size.width - 32, height: size.height - 36 });
const paperOf = (k: number) => cycle([letter, a4], k);
const back = (k: number, size: Paper): Art =>
  new Art(size.width - 120, 220)
    .put(returnTitle(each(k), size.width - 120), 0, 0)
    .put(returnForm(each(k), { width: size.width - 120, height: 130 }, true), 0, 60);

export const fifthNone: Layout = {
  name: 'z22-none',
  about:
    'pages without a label: invoices, packing lists on office and label paper, adverts, vouchers, gift cards, tickets, till receipts and receipts on label paper, declarations, lists to pack and to hand over, terms, a manual with a figure of a label, return forms, blanks',
  documents: () => {
    const bills = range(5).map((k) =>
      one('invoice', paperOf(k), invoiceSheet(each(k), office(paperOf(k)), cycle(['qr', 'none', 'code128'] as const, k))),
    );
    const slips = range(3).map((k) => one('packing-slip', paperOf(k), packing(each(k + 5), office(paperOf(k)), k !== 1)));
    const rollSlips = range(3).map((k) =>
      one('packing-slip', cycle([roll, a6, roll], k), packing(each(k + 8), onRoll(cycle([roll, a6, roll], k)), k === 0), 16, 18),
    );
    const adverts = range(5).map((k) => {
      const code = cycle(['qr', 'code128', 'datamatrix', 'none', 'code128'] as const, k);
      if (k < 2) return one('advert', paperOf(k), voucher(each(k + 11), { width: 400, height: 320 }, code, k === 0), 90, 120);
      return one('advert', k === 3 ? a6 : roll, voucher(each(k + 11), onRoll(k === 3 ? a6 : roll), code, k === 2), 16, 18);
    });
    const tickets = range(5).map((k) => {
      const size = cycle([a5, roll, roll, letter, roll], k);
      const spot = k === 0 || k === 3 ? { width: 300, height: 400 } : onRoll();
      return one(
        'other',
        size,
        ticket(each(k + 16), spot, cycle(['qr', 'pdf417', 'aztec', 'code128', 'code128'] as const, k)),
        k === 0 || k === 3 ? 50 : 16,
        18,
      );
    });
    const tills = range(4).map((k) =>
      one('other', k === 3 ? SIZES['100x150'] : roll, till(each(k + 21), onRoll(k === 3 ? SIZES['100x150'] : roll), k % 2 === 0), 16, 18),
    );
    const stubs = range(3).map((k) => {
      const size = cycle([roll, letter, a6], k);
      return one(
        'other',
        size,
        stub(each(k + 25), k === 1 ? { width: 280, height: 300 } : onRoll(size), numberOf(each(k + 25)), k !== 2),
        k === 1 ? 60 : 16,
        k === 1 ? 60 : 22,
      );
    });
    const forms = range(4).map((k) => {
      const size = cycle([a4, roll, letter, a5], k);
      return one(
        'customs',
        size,
        customsSheet(each(k + 28), k === 1 ? { width: 264, height: 400 } : { width: size.width - 80, height: 340 }, k !== 2),
        k === 1 ? 12 : 40,
        k === 1 ? 16 : 50,
      );
    });
    const picks = range(2).map((k) =>
      one(
        'pick-list',
        paperOf(k),
        toPack(
          range(5).map((row) => each(32 + k + row * 2)),
          office(paperOf(k)),
        ),
      ),
    );
    const lists = range(3).map((k) =>
      one(
        'other',
        paperOf(k),
        handOver(
          range(8 + k * 5).map((row) => each(40 + k + row * 2)),
          office(paperOf(k)),
          k !== 1,
        ),
      ),
    );
    const words = [
      one('other', letter, terms(each(60), office(letter))),
      one('other', a4, terms(each(61), office(a4))),
      one('instructions', letter, manual(each(62), office(letter))),
      one('instructions', a4, manual(each(63), office(a4))),
      one('instructions', a4, steps(each(65), office(a4))),
      one('other', letter, back(66, letter)),
      one('other', a5, back(67, a5)),
    ];
    const blanks = [page('blank', a4, []), page('blank', roll, [])];
    const named = (name: string, producer: Producer, pages: readonly (Page | undefined)[], more: Partial<Document> = {}): Document => ({
      name: `z22-none-${name}`,
      producer,
      pages: pages.filter((p) => p !== undefined),
      ...more,
    });
    return [
      named('books', 'fpdf2', [...bills.slice(0, 2), ...lists.slice(0, 1), ...picks.slice(0, 1), ...words.slice(0, 2)], {
        fonts: FONTS.lato,
      }),
      named('desk', 'qt', [...slips.slice(0, 2), ...rollSlips.slice(0, 2), ...tickets.slice(0, 2), ...tills.slice(0, 1), ...blanks], {
        fonts: FONTS.open,
      }),
      named('web', 'react-pdf', [...bills.slice(2, 4), ...adverts.slice(0, 3), ...forms.slice(0, 2), ...words.slice(2, 3)]),
      named('van', 'muhammara', [...lists.slice(1), ...stubs, ...tickets.slice(2, 4), ...words.slice(3, 5)], { fonts: FONTS.roboto }),
      named('print', 'xetex', [...forms.slice(2), ...adverts.slice(3), ...tills.slice(1, 3), ...words.slice(5)], {
        fonts: FONTS.liberation,
      }),
      named('kiosk', 'mupdf', [
        ...bills.slice(4),
        ...slips.slice(2),
        ...rollSlips.slice(2),
        ...picks.slice(1),
        ...tickets.slice(4),
        ...tills.slice(3),
      ]),
    ];
  },
};
