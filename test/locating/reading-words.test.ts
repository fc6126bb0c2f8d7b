import { expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { survey } from '../../src/locating/survey.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { pictureFile } from '../samples/picture-file.js';
import { rasterise } from '../samples/raster.js';
import { mediaNamed } from '../steps/on-sample.js';

interface Made {
  readonly words?: readonly string[];
  readonly title?: string;
  /** Height of the bars, pt. */
  readonly high?: number;
}
const ADDRESSES = [
  'From: Larchgate Pottery',
  '14 Sample Lane',
  'Larch Halt EX 00187',
  '',
  'Ship to: Ada Invented',
  '9 Figment Street',
  'Mockville EX 00973',
];
const NOTHING = ['//', '/', '//', '/', '//'];

/** What is made of a picture of 4×6 in with one code, words and nothing else. */
async function seen({ words = ADDRESSES, title = '', high = 70 }: Made): Promise<string> {
  const d = new Drawing(288, 432);
  d.text(20, 24, title, { size: 18, bold: true });
  d.block(20, 50, words, { size: 11 }, 1.6);
  for (let line = 0; line < 14; line++) d.rect(20 + 30 * (line % 7), line < 7 ? 200 : 215, 20, 5);
  d.bars(code128('9261290100130435082878'), 144, 300, 1.35, high);
  const { bytes } = await pictureFile(await rasterise(d, 203, true, false), 0);
  const document = await openSource(bytes);
  if ('refused' in document) return document.refused.message;
  const page = document.page(1);
  const found = await survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 300 / 72));
  document.close();
  return found.kind === 'doubtful' ? found.why : found.kind;
}

it('a picture with one code is a label when the words on it are those of one', { timeout: 60_000 }, async () => {
  expect(await seen({})).toBe('labels');
});

it('a picture on which nobody has an address is held, however large its bars', { timeout: 60_000 }, async () => {
  const words = ['Open studio weekend', 'Bring this page along', 'and get a glazed tile', 'for nothing at all', 'Larchgate Pottery Shed'];
  expect(await seen({ words })).toMatch(/^no address stands on/);
});

it('a picture that says what else it is, is that', { timeout: 60_000 }, async () => {
  expect(await seen({ title: 'Packing slip', high: 40, words: ['3 x Mug, blue', '1 x Bowl', 'Thank you'] })).toBe('named');
});

it('a picture that says that it is something else, but looks like a label, is held', { timeout: 60_000 }, async () => {
  expect(await seen({ title: 'Customs declaration' })).toBe(
    'the page calls itself "customs declaration", but the page 4.00×6.00 in looks like a label',
  );
});

it('a picture that nobody can read is held unless it has all of the looks of a label', { timeout: 60_000 }, async () => {
  expect(await seen({ words: NOTHING, high: 40 })).toMatch(/^no words could be read on/);
  expect(await seen({ words: NOTHING })).toBe('labels');
});
