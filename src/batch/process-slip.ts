import { gridOf } from '../geometry/grid.js';
import { mediaNamed } from '../geometry/media.js';
import { slipPages } from '../press/slip/slip-pages.js';
import { takeCounts } from '../reading/counters.js';
import { openPdf } from '../reading/open-pdf.js';
import type { DocumentResult, ItemResult } from '../recipe/outcome.js';
import { held, pageSheet, type Reason, type Sheet } from '../sheet/sheet.js';
import type { SlipOrder } from './messages.js';
import { itemOf, pressAndProve } from './press-and-prove.js';
import { StageClock } from './stage-clock.js';

/**
 * The packing slip of one parcel, drawn from its orders and proved like any other page: each page is one item, in their order. A code that does
 * not say the order's number when it is read back holds them all.
 */
export async function processSlip({ content, look, media: mediaName, grid: gridName, printer }: SlipOrder): Promise<DocumentResult> {
  takeCounts();
  const clock = new StageClock();
  const media = mediaNamed(mediaName);
  const grid = gridOf(gridName);
  const drawn = await clock.time('slips', () => slipPages(content, look, media, grid));
  const source = await openPdf(drawn.pdf);
  if ('refused' in source) throw new Error(`process-slip: the press's own slip does not open (${source.refused.code})`);
  try {
    const sheets = Array.from({ length: source.pageCount }, (_, index): Sheet => {
      const page = source.page(index + 1);
      return { ...pageSheet(page.number, page.width, page.height), role: 'slip', proof: { codes: 'required' } };
    });
    const made = await pressAndProve(source, sheets, { media, grid, printer }, clock, {});
    const says = (sheet: Sheet): boolean =>
      (made.proofs.get(sheet.id)?.codes ?? []).some(({ code }) => Buffer.from(code.bytes, 'hex').toString('utf8') === content.orderNumber);
    const wrong = drawn.codeBox !== undefined && !sheets.some(says);
    const items = sheets.map((sheet): ItemResult => ({
      ...itemOf(wrong ? held(sheet, OTHER_CODE) : sheet, made),
      numberBox: drawn.numberBox,
    }));
    return {
      pageCount: source.pageCount,
      items,
      diagnostics: drawn.warnings.map(({ text }) => ({
        code: 'press/substituted',
        severity: 'warning',
        message: `on the slip of order ${content.orderNumber}: ${text}`,
        place: { kind: 'run' },
      })),
      pressed: made.bytes,
      pictures: [],
      times: clock.times(),
      counts: takeCounts(),
    };
  } finally {
    source.close();
  }
}

const OTHER_CODE: Reason = {
  code: 'packing-slip/order-code',
  message: "the slip's code does not say the order's number when it is read back",
  remedy: 'Print slips without a code (`packing-slip: { code: none }`), and report this line.',
};
