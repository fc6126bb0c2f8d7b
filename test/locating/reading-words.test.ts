import { expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { survey } from '../../src/locating/survey.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { label, layout, other } from '../samples/layout.js';
import { pictureFile } from '../samples/picture-file.js';
import { rasterise } from '../samples/raster.js';
import { sample } from '../samples/sample.js';
import { mediaNamed } from '../steps/on-sample.js';
import { letter, lines, smallBarred } from './survey-pages.js';

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

it('a picture of a label on a page that calls itself something else is read before it is held', { timeout: 60_000 }, async () => {
  const beside = async (from: readonly string[], to: readonly string[]): Promise<string> => {
    const art = smallBarred(from, to, [], 'LM35863805470450');
    const page = letter(other(lines(500, 50, ['Packing slip'], 22), 40, 20), label(art, 40, 300));
    const made = layout({ name: `picture below a title, ${from.join(' ')}`, about: 'Made by a test.', traits: [], pages: () => [page] });
    const document = await openSource((await sample(made, 'grey', 0)).bytes);
    if ('refused' in document) return document.refused.message;
    const first = document.page(1);
    const found = await survey(first, mediaNamed('4x6in'), (box) => first.codes(box, 203 / 72));
    document.close();
    return found.kind === 'doubtful' ? found.why : found.kind;
  };
  const [from, to] = [ADDRESSES.slice(0, 3), ADDRESSES.slice(4)];
  expect(await beside(from, to)).toBe('labels');
  expect(await beside(['Open studio weekend', 'Bring this page along'], ['and get a glazed tile', 'for nothing at all'])).toMatch(
    /^no address/,
  );
});
