import { atCounter, confirmation, coupon, manifest, picking } from '../designs/fourth-none.js';
import { bill, declaration, goodsSlip, instructions, returnSheet } from '../designs/fourth-papers.js';
import { sent, WEST } from '../designs/fourth-words.js';
import type { Art } from '../kit/art.js';
import type { Document, Kind, Layout, Page, Producer } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { a4, a5, a6, letter } from './fourth-parts.js';
import { cycle, other, page, range, slipPart } from './parts.js';

const each = (k: number) => sent(1800 + k, k % WEST);
type Paper = { readonly width: number; readonly height: number };
const one = (kind: Kind, size: Paper, art: Art, x = 54, y = 44): Page =>
  page(kind, size, [kind === 'packing-slip' ? slipPart(art, { x, y }) : other(art, { x, y })]);
const office = (size: Paper) => ({ width: size.width - 108, height: size.height - 100 });
const paperOf = (k: number) => cycle([a4, letter], k);

export const fourthNone: Layout = {
  name: 'w18-none',
  about:
    'pages without a label: invoices, packing slips on office and label paper, coupons, declarations, picking and hand-over lists, confirmations, codes for a counter, return sheets, help, blanks',
  documents: () => {
    const bills = range(5).map((k) =>
      one('invoice', paperOf(k), bill(each(k), office(paperOf(k)), cycle(['none', 'qr', 'code128'] as const, k))),
    );
    const slips = range(3).map((k) => one('packing-slip', paperOf(k + 1), goodsSlip(each(k + 5), office(paperOf(k + 1)))));
    const rollSlips = range(3).map((k) => {
      const size = k === 1 ? a6 : SIZES['4x6'];
      return one('packing-slip', size, goodsSlip(each(k + 8), { width: size.width - 32, height: 390 }, k !== 2), 16, 18);
    });
    const coupons = range(4).map((k) => {
      if (k === 0) return one('advert', SIZES['4x6'], coupon(each(k), { width: 268, height: 412 }, 'code128'), 10, 10);
      if (k === 1) return one('advert', a6, coupon(each(k), { width: 270, height: 390 }, 'qr', false), 14, 14);
      return one('advert', paperOf(k), coupon(each(k), { width: 420, height: 300 }, k === 2 ? 'qr' : 'code128'), 80, 90);
    });
    const forms = range(4).map((k) => {
      const size = cycle([a4, letter, a5, a4], k);
      return one('customs', size, declaration(each(k + 2), { width: size.width - 70, height: k === 2 ? 300 : 340 }, k !== 1), 35, 40);
    });
    const picks = range(2).map((k) =>
      one(
        'pick-list',
        paperOf(k),
        picking(
          range(8).map((row) => each(k * 20 + row * WEST)),
          office(paperOf(k)),
        ),
      ),
    );
    const lists = range(3).map((k) =>
      one(
        'other',
        paperOf(k),
        manifest(
          range(10 + k * 6).map((row) => each(k + row * WEST)),
          office(paperOf(k)),
          k !== 2,
        ),
      ),
    );
    const mails = range(2).map((k) => one('other', paperOf(k + 1), confirmation(each(k + 4), office(paperOf(k + 1)))));
    const counters = range(3).map((k) =>
      one('other', cycle([a4, letter, a5], k), atCounter(each(k + 1), { width: cycle([480, 500, 340], k), height: 500 }), 40, 40),
    );
    const backs = range(2).map((k) =>
      one('other', cycle([a5, letter], k), returnSheet(each(k), { width: 330 + k * 150, height: 160 }), 42, 50),
    );
    const help = range(2).map((k) => one('instructions', paperOf(k), instructions(each(k + 3), office(paperOf(k)))));
    const blanks = [page('blank', letter, []), page('blank', a6, [])];
    const named = (name: string, producer: Producer, pages: readonly Page[], more: Partial<Document> = {}): Document => ({
      name: `w18-none-${name}`,
      producer,
      pages,
      ...more,
    });
    return [
      named('books', 'itext', [...bills.slice(0, 2), ...lists.slice(0, 1), ...picks.slice(0, 1), ...forms.slice(0, 1)]),
      named('shop', 'fpdf', [
        ...bills.slice(2, 3),
        ...slips.filter((_, k) => k !== 1),
        ...coupons.slice(0, 1),
        ...mails.slice(1),
        ...blanks,
      ]),
      named('desk', 'jspdf', [...rollSlips.slice(0, 2), ...forms.slice(1, 3), ...counters.slice(0, 2), ...backs.slice(0, 1)], {
        fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' },
      }),
      named('van', 'pdfbox', [...lists.slice(1), ...picks.slice(1), ...coupons.slice(1, 3), ...help.slice(0, 1)], {
        fonts: { sans: 'open-sans/OpenSans' },
      }),
      named(
        'web',
        'dompdf',
        [bills[4], slips[1]].filter((p) => p !== undefined),
        { fonts: { sans: 'Helvetica' } },
      ),
      named('kiosk', 'libharu', [...rollSlips.slice(2), ...coupons.slice(3), ...forms.slice(3), ...counters.slice(2), ...backs.slice(1)]),
      named(
        'mail',
        'wkhtmltopdf',
        [bills[3], mails[0], help[1]].filter((p) => p !== undefined),
        { fonts: { sans: 'Liberation Sans' } },
      ),
    ];
  },
};
