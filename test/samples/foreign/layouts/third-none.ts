import { howTo, invoice, packingSlip, senderPart } from '../designs/third-papers-a.js';
import { counterfoil, customsForm, handOver, returnForm, smallPrint, voucher } from '../designs/third-papers-b.js';
import { posted, WESTERN } from '../designs/third-words.js';
import { Art } from '../kit/art.js';
import type { Document, Kind, Layout, Page, Producer } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import { other, page, range, slipPart } from './parts.js';

const { a4, letter, a5, a6 } = SIZES;
const each = (k: number) => posted(1700 + k, k % WESTERN);
const one = (kind: Kind, size: { readonly width: number; readonly height: number }, art: Art, x = 50, y = 40): Page =>
  page(kind, size, [kind === 'packing-slip' ? slipPart(art, { x, y }) : other(art, { x, y })]);
const box = { width: 490, height: 600 };

/** Goods by shelf: what to fetch for a day's orders. */
function fetchList(k: number): Art {
  const art = new Art(490, 600)
    .text(0, 18, 'Picking list', { size: 18, bold: true })
    .text(490, 16, each(k).day, { size: 10, anchor: 'end' });
  for (const row of range(14)) {
    const { parcel } = each(k * 14 + row + 40);
    const [good] = parcel.goods;
    const y = 50 + row * 22;
    art
      .rect(0, y - 10, 12, 12, { line: 0.8 })
      .text(24, y, `${String.fromCharCode(65 + (row % 5))}-${row + 1}`, { size: 10, family: 'mono' });
    art
      .text(90, y, String(good?.[0] ?? ''), { size: 10, bold: true })
      .text(120, y, good?.[1] ?? '', { size: 10, fit: 260 })
      .text(490, y, parcel.order, { size: 9, anchor: 'end' });
    art.line(0, y + 7, 490, y + 7, { line: 0.3 });
  }
  return art.text(0, 380, each(k).parcel.mark, { size: 8 });
}

export const thirdNone: Layout = {
  name: 'v17-none',
  about:
    'pages without a label: invoices with codes, vouchers as large as a label, declarations, picking lists, slips on label paper, hand-over lists, small print, counterfoils, blanks',
  documents: () => {
    const bills = range(4).map((k) =>
      one('invoice', k % 2 === 0 ? a4 : letter, invoice(each(k), box, (['qr', 'code128', 'none', 'qr'] as const)[k])),
    );
    const slips = range(5).map((k) =>
      k < 3
        ? one('packing-slip', k === 1 ? letter : a4, packingSlip(each(k + 5), box))
        : one('packing-slip', k === 3 ? SIZES['4x6'] : a6, packingSlip(each(k + 5), { width: 252, height: 380 }, k === 3), 18, 18),
    );
    const vouchers = range(4).map((k) => {
      if (k === 3) return one('advert', SIZES['4x6'], voucher(each(k), { width: 276, height: 420 }, 'code128'), 6, 6);
      return one(
        'advert',
        k === 0 ? letter : a5,
        voucher(each(k), k === 0 ? { width: 432, height: 288 } : { width: 288, height: 432 }, k === 1 ? 'code128' : 'qr', '#ffffff'),
        60,
        60,
      );
    });
    const forms = range(4).map((k) =>
      k === 3
        ? one('customs', a6, customsForm(each(k), { width: 276, height: 396 }), 10, 10)
        : one('customs', k === 0 ? a5 : a4, customsForm(each(k), { width: k === 0 ? 380 : 500, height: 300 + k * 40 }, k !== 1), 20, 40),
    );
    const picks = range(2).map((k) => one('pick-list', k === 0 ? a4 : letter, fetchList(k)));
    const lists = range(2).map((k) =>
      one(
        'other',
        k === 0 ? letter : a4,
        handOver(
          range(12 + k * 8).map((row) => each(k * 30 + row)),
          box,
        ),
      ),
    );
    const help = range(3).map((k) =>
      one('instructions', k === 0 ? letter : a4, k === 2 ? smallPrint(each(k), { width: 490, height: 740 }) : howTo(each(k + 2), box)),
    );
    const stubs = range(3).map((k) =>
      one(
        'other',
        k === 0 ? SIZES['4x6'] : a5,
        k === 0 ? senderPart(each(k), { width: 250, height: 190 }) : counterfoil(each(k), { width: 300, height: 190 }),
        20,
        30,
      ),
    );
    const backs = range(2).map((k) => one('other', k === 0 ? a4 : a5, returnForm(each(k + 3), { width: 360, height: 200 }), 30, 40));
    const blanks = [page('blank', a4, []), page('blank', SIZES['4x6'], [])];
    const named = (name: string, producer: Producer, pages: readonly Page[], more: Partial<Document> = {}): Document => ({
      name: `v17-none-${name}`,
      producer,
      pages,
      ...more,
    });
    return [
      named('office', 'fop', [...bills.slice(0, 2), ...slips.slice(0, 2), ...picks.slice(0, 1), ...lists.slice(0, 1)]),
      named('counter', 'prawn', [...vouchers.slice(0, 2), ...forms.slice(0, 2), ...stubs.slice(0, 1), ...backs, ...blanks]),
      named('workshop', 'tcpdf', [...bills.slice(2, 3), ...slips.slice(2), ...lists.slice(1), ...help.slice(1, 2)]),
      named('van', 'pdfapi2', [...vouchers.slice(2), ...forms.slice(2), ...picks.slice(1), ...help.slice(2), ...stubs.slice(1, 2)]),
      named('pixels', 'pixels', [...bills.slice(3), ...stubs.slice(2), ...help.slice(0, 1)], { dpi: 150, grey: true }),
    ];
  },
};
