import { expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { survey, type Survey } from '../../src/locating/survey.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { pictureFile } from '../samples/picture-file.js';
import { rasterise } from '../samples/raster.js';
import { mediaNamed } from '../steps/on-sample.js';

const GOODS = ['2 x Mug, celadon glaze', '1 x Bowl, tenmoku', '3 x Tile, cobalt blue', 'Thank you for your order from the studio'];

/** A letter page as one picture: a label at the top left, or none, and words under a heading below it, or beside and below it. */
async function seen(heading: string, { label = true, note = '' } = {}): Promise<Survey> {
  const d = new Drawing(612, 792);
  if (label) {
    d.frame(40, 40, 288, 290, 1.5).line(40, 130, 328, 130, 1);
    d.block(60, 66, ['Slip Studio', '14 Sample Lane', 'Larch Halt EX 00187'], { size: 11 }, 1.4);
    d.block(60, 156, ['Ship to: Ada Invented', '9 Figment Street', 'Mockville EX 00973'], { size: 13 }, 1.4);
    d.bars(code128('9261290100130435082878'), 184, 260, 1.2, 60).text(100, 310, 'Sample, not valid for carriage', { size: 9 });
  }
  d.text(360, 60, note, { size: 12 });
  d.text(50, 440, heading, { size: 20, bold: true }).block(50, 480, GOODS, { size: 13 }, 1.6);
  const { bytes } = await pictureFile(await rasterise(d, 203, true, false), 0);
  const document = await openSource(bytes);
  if ('refused' in document) throw new Error(document.refused.message);
  const page = document.page(1);
  const found = await survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 300 / 72));
  document.close();
  return found;
}
const restOf = async (heading: string, more: { note?: string } = {}): Promise<string | undefined> => {
  const found = await seen(heading, more);
  return found.kind === 'labels' ? `${found.labels.length} ${found.rest.name?.words}` : found.kind;
};

it('the slip below a label in a picture is known by its words, also where more stands beside the label', { timeout: 60_000 }, async () => {
  expect(await restOf('Packing slip')).toBe('1 packing slip');
  expect(await restOf('Packing slip', { note: 'Peel the label off' })).toBe('1 packing slip');
});

it('what a picture says beside its label is nothing where it is no paper that goes along', { timeout: 60_000 }, async () => {
  expect(await restOf('Opening hours')).toBe('1 undefined');
});

it('a picture without a code is what its heading says', { timeout: 60_000 }, async () => {
  expect(await seen('Packing slip', { label: false })).toMatchObject({ kind: 'named', name: { kind: 'packing-slip' } });
  expect(await seen('Opening hours', { label: false })).toEqual({ kind: 'unnamed', codes: false });
});
