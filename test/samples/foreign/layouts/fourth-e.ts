import { marlowend, postalba, rijnkoerel, skarvline } from '../designs/fourth-labels-c.js';
import { colisandre, dornwald } from '../designs/fourth-labels-a.js';
import type { FourthDesign } from '../designs/fourth-labels-a.js';
import { bill, foldAcross, masthead, record, trackingText } from '../designs/fourth-papers.js';
import { backHelp, pickTicket, thanksCard, tillReceipt } from '../designs/fourth-roll.js';
import type { Sent } from '../designs/fourth-words.js';
import { ALL, sent, WEST } from '../designs/fourth-words.js';
import { Art } from '../kit/art.js';
import type { Edge, Kind, Layout, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';
import type { Turn } from '../kit/shapes.js';
import { a4, a6, documents, INNER, letter } from './fourth-parts.js';
import { cycle, label, other, page, range } from './parts.js';

const MIXED: readonly (readonly [FourthDesign, Edge])[] = [
  [skarvline, 'frame'],
  [rijnkoerel, 'ink'],
  [colisandre, 'frame'],
  [marlowend, 'frame'],
  [dornwald, 'frame'],
];

const underInvoice: Layout = {
  name: 'y01-under-invoice',
  about: 'PDFBox, A4 and letter: the invoice on the upper half of the page, a line to cut along, the label lying on the lower half',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(3100 + i, i % ALL);
      const size = i % 2 === 0 ? a4 : letter;
      const [design, edge] = cycle(MIXED, i);
      const turn: Turn = i % 4 === 1 ? 270 : 90;
      return page('label', size, [
        other(bill(each, { width: size.width - 110, height: 340 }, 'none'), { x: 55, y: 30 }),
        other(foldAcross(size.width - 36, each.words.cut), { x: 18, y: size.height - INNER.width - 62 }),
        label(design(each, INNER), { x: (size.width - INNER.height) / 2, y: size.height - INNER.width - 30, turn }, edge),
      ]);
    });
    return documents(
      'y01-under-invoice',
      pages,
      { producer: 'pdfbox', fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' } },
      { producer: 'pdfbox', fonts: { sans: 'liberation/LiberationSans' } },
    );
  },
};

const postAlone: Layout = {
  name: 'y02-post-abroad',
  about: 'libharu, pages of 4x6 in and A6: a post’s label for abroad alone on its page, the declaration for customs in its lower half',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const each = sent(3200 + i, i % ALL);
      if (i % 4 === 3)
        return page('label', a6, [label(postalba(each, { width: a6.width - 18, height: a6.height - 18 }), { x: 9, y: 9 }, 'frame')]);
      return page('label', SIZES['4x6'], [label(postalba(each, INNER), { x: 8, y: 9 }, 'page')]);
    });
    return documents(
      'y02-post-abroad',
      pages,
      { producer: 'libharu', fonts: { sans: 'liberation/LiberationSans' } },
      { producer: 'libharu', fonts: { sans: 'roboto/unhinted/RobotoTTF/Roboto' } },
    );
  },
};

/** Back goes from the buyer to the shop. */
const goingBack = (each: Sent): Sent => ({ ...each, parcel: { ...each.parcel, from: each.parcel.to, to: each.parcel.from } });

const backBelow: Layout = {
  name: 'y03-return-below',
  about: 'FPDF, letter and A4: how to send goods back in large letters on the upper half, the return label lying on the lower half',
  documents: () => {
    const pages = range(8).map((i): Page => {
      const sold = sent(3300 + i, i % WEST);
      const size = i % 2 === 0 ? letter : a4;
      const [design, edge] = cycle(MIXED, i + 2);
      const steps = new Art(size.width - 110, 300)
        .put(masthead(sold, size.width - 110), 0, 0)
        .text(0, 82, sold.words.back[0], { size: 22, bold: true, fit: 480 });
      let y = 110;
      for (const [k, step] of sold.words.how.slice(1, 5).entries()) {
        steps.text(0, y, `${k + 1}`, { size: 15, bold: true });
        y = steps.paragraph(26, y, size.width - 140, step, { size: 11, leading: 14 }) + 8;
      }
      steps.text(0, y + 6, sold.parcel.mark, { size: 7, fill: '#555555' });
      return page('return-label', size, [
        other(steps, { x: 55, y: 34 }),
        other(foldAcross(size.width - 36, sold.words.cut), { x: 18, y: size.height - INNER.width - 66 }),
        label(
          design(goingBack(sold), { ...INNER, back: true }),
          { x: (size.width - INNER.height) / 2, y: size.height - INNER.width - 34, turn: i % 3 === 1 ? 270 : 90 },
          edge,
          'return-label',
        ),
      ]);
    });
    return documents('y03-return-below', pages, { producer: 'fpdf' }, { producer: 'fpdf' });
  },
};

const roll = { width: 256, height: 396 };
/** Papers that a shop prints on its label roll besides labels. */
function onRoll(kind: Kind, i: number, art: Art): Page {
  const size = i % 3 === 2 ? a6 : SIZES['4x6'];
  return page(kind, size, [other(art, { x: (size.width - roll.width) / 2, y: 18 })]);
}
const none: Layout = {
  name: 'y04-roll-none',
  about:
    'pages of 4x6 in and A6 without a label: till receipts, records of the sender, cards of thanks, picking tickets, how to send goods back',
  documents: () => {
    const each = (k: number): Sent => sent(3400 + k, k % WEST);
    const receipts = range(5).map((k) => onRoll('other', k, tillReceipt(each(k), roll, k % 2 === 0)));
    const records = range(5).map((k) => onRoll('other', k + 1, record(each(k + 5), roll, trackingText(each(k + 5)), k % 2 === 1)));
    const cards = range(4).map((k) => onRoll('advert', k, thanksCard(each(k + 2), roll, k % 2 === 0)));
    const tickets = range(4).map((k) => onRoll('pick-list', k + 1, pickTicket(each(k + 3), roll)));
    const help = range(4).map((k) => onRoll('instructions', k, backHelp(each(k + 1), roll, k % 2 === 0)));
    const half = (k: number): Page[] => [receipts, records, cards, tickets, help].flatMap((list) => list.filter((_, at) => at % 3 === k));
    return [
      { name: 'y04-roll-none-1', producer: 'fpdf', pages: half(0) },
      { name: 'y04-roll-none-2', producer: 'libharu', pages: half(1), fonts: { sans: 'open-sans/OpenSans' } },
      { name: 'y04-roll-none-3', producer: 'itext', pages: half(2), fonts: { sans: 'lato/Lato' } },
    ];
  },
};

export const FOURTH_E = [underInvoice, postAlone, backBelow, none] as const;
