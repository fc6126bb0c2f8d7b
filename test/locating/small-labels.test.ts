import { describe, expect, it } from 'vitest';
import { isSmallLabel } from '../../src/locating/small-labels.js';
import { survey } from '../../src/locating/survey.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed } from '../steps/on-sample.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { candidate, word } from './judged.js';

const FROM = ['Sender: Thistle & Tin, 3 Example Street, Sampleton EX1 9ZZ'];
const TO = ['Ada Invented', '14 Sample Lane', 'Larch Halt', 'EX1 2AB'];

/** A letter page with a frame of 90×50 mm and bars in it, unless told otherwise, and addresses. */
async function found(from: readonly string[], to: readonly string[], above = 40, framed = true) {
  const d = new Drawing(612, 792);
  if (framed) d.frame(60, 60, 255, 142, 1.2);
  else d.rect(60, 60, 255, 6);
  d.block(68, 72, from, { size: 6.5 });
  d.block(68, 92, to, { size: 10 });
  if (above < 60) d.block(60, 60 - above, ['Spring mailing'], { size: 10 });
  d.bars(code128('RX401188821ZZ'), 190, 165, 0.85, 28).text(68, 197, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 6 });
  const page = await drawnPage(d);
  const seen = await survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 36));
  return seen.kind === 'labels' ? seen.labels.map(({ edge, box }) => `${edge} ${box.width.toFixed(0)}×${box.height.toFixed(0)}`) : [];
}

describe('a label of a letter', () => {
  it('is found in a frame smaller than other labels by sender and receiver', async () => {
    expect(await found(FROM, TO)).toEqual(['frame 257×143']);
  });

  it('is found by its ink alone, with both', async () => {
    const bare = (from: readonly string[], above?: number) => found(from, TO, above, false);
    expect(await bare(FROM, 60)).toEqual(['ink 257×139']);
    expect(await bare([], 60)).toEqual([]);
  });

  it('has both, and white around', async () => {
    expect(await found([], TO)).toEqual([]);
    expect(await found(FROM, ['Ada Invented'])).toEqual([]);
    expect(await found(FROM, TO, 5)).toEqual([]);
  });
});

describe('isSmallLabel', () => {
  const line = (text: string, y: number) => word(text, { x: 70, y, width: text.length * 5, height: 10 });
  const phrases = phrasesOf([...TO.map((text, at) => line(text, 90 + at * 12)), line(FROM[0] ?? '', 72)]);
  const small = (height: number, edge: 'frame' | 'ink'): boolean => {
    const box = { x: 60, y: 60, width: 320, height };
    return isSmallLabel(candidate(box, { edge }), { page: { width: 612, height: 792 }, blobs: [box], phrases, lines: [], others: [] });
  };

  it('is ink smaller than other labels, which are told by their size, or a frame up to more', () => {
    expect([small(140, 'ink'), small(200, 'ink')]).toEqual([true, false]);
    expect([small(140, 'frame'), small(200, 'frame')]).toEqual([true, true]);
  });
});
