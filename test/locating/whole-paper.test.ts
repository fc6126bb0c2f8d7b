import { describe, expect, it } from 'vitest';
import { survey, type Survey } from '../../src/locating/survey.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { label, type LayoutPage } from '../samples/layout.js';
import { openedPages } from '../steps/on-pages.js';
import { mediaNamed } from '../steps/on-sample.js';
import { contentOf } from './survey-pages.js';

const A5 = { width: 420, height: 595 };
const HALF_LETTER = { width: 396, height: 612 };
const MEDIA = mediaNamed('4x6in');

/** A framed page with a parcel's number in bars, these lines above them and a margin (pt) around. */
function framed({ width, height }: { width: number; height: number }, lines: readonly string[], margin = 24): Drawing {
  const d = new Drawing(width, height);
  d.frame(margin, margin, width - 2 * margin, height - 2 * margin, 1.5);
  d.line(margin, height * 0.45, width - margin, height * 0.45, 1);
  d.block(margin + 14, margin + 30, lines, { size: 12 }, 1.5);
  d.bars(code128('QX2044178833'), width / 2, height * 0.7, 1.5, 70);
  d.text(width / 2, height * 0.7 + 50, 'QX 2044 1788 33', { size: 11, align: 'center' });
  d.text(width / 2, height - margin - 14, 'Sample, not valid for carriage', { size: 9, align: 'center' });
  return d;
}

async function surveyOf(drawing: Drawing): Promise<Survey> {
  const page = await drawnPage(drawing);
  return survey(page, MEDIA, (box) => page.codes(box, 406 / 72));
}

const ADDRESS = ['Ship to', 'Ada Example', 'Example Street 4', '00012 Sampleton', 'Weight 2.1 kg'];
const ITEMS = ['2   Mug, celadon   18.00', '1   Bowl, tenmoku   31.00', '3   Tile, cobalt   12.00', 'Weight 2.1 kg'];

describe('labels that fill their paper', () => {
  it.each([
    ['A5 upright', A5, 24],
    ['A5 lying', { width: 595, height: 420 }, 24],
    ['half a letter page', HALF_LETTER, 20],
    ['A5 to its edges', A5, 6],
  ])('%s: found by the frame, with why', async (_, paper, margin) => {
    const seen = await surveyOf(framed(paper, ADDRESS, margin));
    expect(seen).toMatchObject({ kind: 'labels', labels: [{ edge: 'frame', fillsPaper: true }], doubts: [] });
    const [found] = seen.kind === 'labels' ? seen.labels : [];
    expect(found?.box.width).toBeCloseTo(paper.width - 2 * margin, -1);
    expect(found?.evidence).toContain('it fills its page, as labels on A5 do');
  });

  it.each<[string, Drawing]>([
    ['a list of items', framed(A5, ITEMS)],
    ['a list of items in a frame on larger paper', framed({ width: 595, height: 842 }, ITEMS, 100)],
    ['larger paper', framed({ width: 480, height: 680 }, ADDRESS)],
    [
      'no word of a label and a short number',
      (() => {
        const d = framed(A5, ['Mugmonger', 'Open day on Saturday']);
        d.items.splice(0, d.items.length, ...d.items.filter(({ kind }) => kind !== 'code'));
        d.bars(code128('TENOFF'), 210, 420, 1.8, 70);
        return d;
      })(),
    ],
  ])('%s is none', async (_, drawing) => {
    expect((await surveyOf(drawing)).kind).not.toBe('labels');
  });

  const A4 = { width: 595, height: 842 };

  /** The same in a frame on A4, from this height. */
  function onA4(top: number): Drawing {
    const d = new Drawing(A4.width, A4.height)
      .frame(8, top, 579, 404, 1.5)
      .line(8, top + 180, 587, top + 180, 2)
      .line(470, top, 470, top + 404, 1);
    d.block(22, top + 30, ADDRESS, { size: 12 }, 1.5);
    d.bars(code128('QX2044178833'), 230, top + 290, 1.5, 80).text(160, top + 350, 'QX 2044 1788 33', { size: 11 });
    d.text(30, top + 390, 'Sample, not valid for carriage', { size: 9 });
    return d;
  }

  it('half of A4: found by the frame, though lines in it reach nearly from edge to edge', async () => {
    const seen = await surveyOf(onA4(8));
    expect(seen).toMatchObject({ kind: 'labels', labels: [{ edge: 'frame', fillsPaper: true }], doubts: [] });
    const [found] = seen.kind === 'labels' ? seen.labels : [];
    expect(found?.evidence).toContain('it fills half of its page, as labels on A5 do');
    expect(await surveyOf(onA4(430))).toMatchObject({ kind: 'labels', labels: [{ edge: 'frame' }] });
  });

  it('such a frame across the middle of A4 is none', async () => {
    const seen = await surveyOf(onA4(220));
    expect(seen.kind === 'labels' ? seen.labels.map(({ edge }) => edge) : []).not.toContain('frame');
  });

  it('a label of an ordinary size on such paper is that label', async () => {
    const page: LayoutPage = { ...A5, regions: [label(tidewick(contentOf(3)), 60, 60)] };
    const document = await openedPages([page]);
    const first = document.page(1);
    const seen = await survey(first, MEDIA, (box) => first.codes(box, 406 / 72));
    document.close();
    expect(seen.kind === 'labels' && seen.labels.map(({ fillsPaper, box }) => [fillsPaper, Math.round(box.width / 10)])).toEqual([
      [undefined, 29],
    ]);
  });
});
