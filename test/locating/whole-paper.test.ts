import { describe, expect, it } from 'vitest';
import { survey, type Survey } from '../../src/locating/survey.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128, dataMatrix } from '../samples/code-art.js';
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

  it('A5 without a frame: all ink, where the address stands far above the bars', async () => {
    const d = new Drawing(A5.width, A5.height);
    d.block(30, 60, ADDRESS, { size: 16 }, 1.5);
    d.text(400, 60, 'Home parcel', { size: 14, align: 'right' });
    d.text(210, 330, '90 - SAM 3', { size: 40, align: 'center' });
    d.bars(code128('QX2044178833'), 210, 420, 1.5, 100);
    d.text(210, 560, 'Sample, not valid for carriage', { size: 9, align: 'center' });
    const seen = await surveyOf(d);
    expect(seen).toMatchObject({ kind: 'labels', labels: [{ edge: 'ink', fillsPaper: true }], doubts: [] });
    expect(seen.kind === 'labels' && seen.labels[0]?.box.height).toBeGreaterThan(500);
  });

  it('A5 with a declaration in the midst of the label: found by its frame', async () => {
    const d = framed(A5, ADDRESS);
    d.items.splice(0, d.items.length, ...d.items.filter(({ kind }) => kind !== 'code'));
    d.bars(code128('QX2044178833'), 210, 240, 1.5, 60).text(40, 330, 'CUSTOMS DECLARATION', { size: 16 });
    d.block(40, 360, ['Mug, celadon   1   18.00', 'Bowl, tenmoku   1   31.00'], { size: 9 }, 1.5);
    expect(await surveyOf(d)).toMatchObject({ kind: 'labels', labels: [{ edge: 'frame', fillsPaper: true }] });
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

describe('papers that are like labels', () => {
  it('an article’s label on label paper is none: bars that carriers don’t use, an article’s matrix code and its maker’s address', async () => {
    const article = (bars: boolean): Drawing => {
      const d = new Drawing(288, 432).text(20, 40, 'Oat bar', { size: 16 }).text(20, 60, 'Sample soap, hand made', { size: 10 });
      if (bars) d.bars(code128('QX2044178833'), 144, 200, 1.2, 60);
      else for (let at = 0; at < 40; at++) d.rect(70 + at * 3.7, 170, 1 + (at % 3) * 0.7, 60);
      d.matrix(dataMatrix('SAMPLE20441788330099'), 230, 320, 1.4);
      d.block(20, 310, ['Slip Studio', '5 Example Mews', '00187 Larch Halt'], { size: 9 });
      return d;
    };
    expect((await surveyOf(article(false))).kind).toBe('doubtful');
    expect((await surveyOf(article(true))).kind).toBe('labels');
  });

  it('ink between rules with rows of goods is none where the page is headed as a slip', async () => {
    const note = (title: string): Drawing => {
      const d = new Drawing(595, 842).text(58, 60, title, { size: 16, bold: true }).text(58, 88, 'Sender', { size: 8 });
      d.block(58, 100, ['Slip Studio', '14 Sample Street', '00187 Larch Halt'], { size: 9 });
      d.text(312, 88, 'Ship to', { size: 8 });
      d.block(312, 104, ['Ada Invented', '27 Example Way', '00188 Larch Halt'], { size: 12 });
      d.bars(code128('LS20260055817'), 140, 176, 0.9, 40).line(58, 222, 538, 222, 1.5).line(58, 324, 538, 324, 1.5);
      const goods = [
        ['1', 'Bird house', '1'],
        ['2', 'Feeder', '2'],
      ] as const;
      for (const [at, [pos, item, count]] of goods.entries())
        d.text(58, 270 + 14 * at, pos, { size: 9 })
          .text(86, 270 + 14 * at, item, { size: 9 })
          .text(254, 270 + 14 * at, count, { size: 9 });
      return d.text(58, 350, 'All received: ____________', { size: 9 });
    };
    expect((await surveyOf(note('Delivery note'))).kind).not.toBe('labels');
  });
});
