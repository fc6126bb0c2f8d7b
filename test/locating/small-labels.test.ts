import { describe, expect, it } from 'vitest';
import { survey } from '../../src/locating/survey.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed } from '../steps/on-sample.js';

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
