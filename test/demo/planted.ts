import { contentFor, seeded } from '../samples/content.js';
import { Drawing } from '../samples/drawing.js';
import { bramblerun } from '../samples/labels/bramblerun.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { A4, label, LETTER, other, slip } from '../samples/layout.js';
import { invoice, packingSlip, receipt } from '../samples/other-pages.js';
import { resaved } from '../samples/resaved.js';
import { document, file, plantedFile, type DemoFile } from './demo-file.js';
import { PAGES, PICTURES, SHEETS } from './studio.js';

/** What goes wrong on any day, beside the forty orders. */
export async function plantedFaults(good: readonly DemoFile[]): Promise<readonly DemoFile[]> {
  const [first] = good;
  if (!first) throw new Error('the demo has no documents');
  const draw = seeded('noise');
  return [
    plantedFile(`${SHEETS}/second download of ${first.path.slice(first.path.indexOf('/') + 1)}`, first.bytes, {
      fault: 'the same download twice',
      ends: 'page skipped intake/duplicate',
    }),
    plantedFile(`${SHEETS}/saved anew ${first.path.slice(first.path.indexOf('/') + 1)}`, await resaved(first.bytes), {
      fault: 'the same label, its file saved anew',
      ends: 'label skipped batch/duplicate',
    }),
    plantedFile(`${SHEETS}/cut-off.pdf`, first.bytes.slice(0, Math.floor(first.bytes.length * 0.6)), {
      fault: 'a download that broke off',
      ends: 'page failed reading/cut-off',
    }),
    plantedFile(`${SHEETS}/nothing.pdf`, new Uint8Array(), { fault: 'an empty file', ends: 'page failed intake/empty' }),
    plantedFile(`${SHEETS}/sign-in.pdf`, Buffer.from('<!DOCTYPE html><html><body>Please sign in</body></html>'), {
      fault: 'a sign-in page named .pdf',
      ends: 'page failed intake/html',
    }),
    plantedFile(
      `${PAGES}/noise.pdf`,
      Uint8Array.from({ length: 900 }, () => draw(256)),
      { fault: 'a file of noise named .pdf', ends: 'page failed intake/unknown-kind' },
    ),
    await drawnTooSmall(),
    await smeared(),
    await loneSlip(),
    await bill(),
    ...(await asPdfAndPicture()),
  ];
}

/** Drawn at 90 %: its smallest code falls below the least bar that prints. */
function drawnTooSmall(): Promise<DemoFile> {
  const content = contentFor('too fine', 3);
  const regions = [label(bramblerun(content), 110, 60, 90, 0.9), other(receipt(540, 300, content), 36, 420)];
  const made = document('too fine', () => [{ ...LETTER, regions }]);
  return file(`${SHEETS}/drawn-too-small`, made, 'vector', 0, {
    fault: 'a label drawn too small for its bars',
    ends: 'label held verify/too-fine',
  });
}

/** Its one code is smeared over its whole height, so that no line across it can be read. */
function smeared(): Promise<DemoFile> {
  const content = contentFor('smeared', 5);
  const whole = tidewick(content);
  const art = new Drawing(whole.width, whole.height);
  art.edge = whole.edge;
  art.mark.push(...whole.mark);
  art.items.push(...whole.items.filter((item) => item.kind !== 'code' || item.art.expected.symbology === 'Code 128'));
  for (const x of [60, 118, 190]) {
    art.polygon([
      [x, 288],
      [x + 22, 288],
      [x + 34, 376],
      [x + 8, 376],
    ]);
  }
  const made = document('smeared', () => [{ ...LETTER, regions: [label(art, 90, 50, 90), other(receipt(540, 300, content), 36, 420)] }]);
  return file(`${SHEETS}/smeared`, made, 'vector', 0, {
    fault: 'a label whose only barcode is smeared',
    ends: 'label held verify/nothing-to-prove',
  });
}

function loneSlip(): Promise<DemoFile> {
  const regions = [slip(packingSlip(540, 400, contentFor('lone slip')), 36, 36)];
  const made = document('lone slip', () => [{ ...LETTER, regions }]);
  return file(`${PAGES}/lone-slip`, made, 'vector', 0, {
    fault: 'a packing slip without its label',
    ends: 'slip held packing-slip/no-label',
  });
}

function bill(): Promise<DemoFile> {
  const regions = [other(invoice(A4.width, A4.height, contentFor('bill')), 0, 0)];
  const made = document('bill', () => [{ ...A4, regions }], ['no-label']);
  return file(`${PAGES}/invoice`, made, 'vector', 0, {
    fault: 'an invoice among the labels',
    ends: 'page skipped split-pages/skipped',
  });
}

/** Downloaded as a page and as a picture: which of the two is to be printed is the seller's to say. */
async function asPdfAndPicture(): Promise<readonly DemoFile[]> {
  const art = bramblerun(contentFor('both ways', 2));
  const planted = { fault: 'one label as PDF and as PNG', ends: 'label held batch/same-tracking-code' };
  const asPage = document('both ways', () => [{ width: 288, height: 432, regions: [label(art, 0, 0)] }]);
  const asPicture = document('both ways as picture', () => asPage.pages(), ['picture-file']);
  return [
    await file(`${PICTURES}/both-ways`, asPage, 'vector', 0, planted),
    await file(`${PICTURES}/both-ways`, asPicture, 'bilevel', 0, planted),
  ];
}
