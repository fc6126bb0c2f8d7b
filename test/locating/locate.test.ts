import { describe, expect, it } from 'vitest';
import { EDGES } from '../../src/locating/candidate.js';
import { locate } from '../../src/locating/locate.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128, qr } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed } from '../steps/on-sample.js';

const media = mediaNamed('4x6in');

/** A letter page; how often a framed 4×6 stands on it, and at which size, is a test's. */
const letter = (): Drawing => new Drawing(612, 792).text(20, 780, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 8 });
const framed = (d: Drawing, x: number, y: number, width: number, height: number): Drawing =>
  d.frame(x, y, width, height, 1.5).bars(code128('SAMPLE-000001'), x + width / 2, y + height / 2, 1.06, 60);

async function located(drawing: Drawing) {
  const page = await drawnPage(drawing);
  const { labels, rivals } = locate(page, { x: 0, y: 0, width: page.width, height: page.height }, EDGES, media);
  return {
    labels: labels.map(({ edge, box }) => `${edge} ${Math.round(box.width / 7.2) / 10}×${Math.round(box.height / 7.2) / 10}`),
    rivals,
  };
}

describe('locate', () => {
  it('finds a framed label, one and two', async () => {
    expect(await located(framed(letter(), 100, 100, 288, 432))).toEqual({ labels: ['frame 4×6'], rivals: [] });
    const two = framed(framed(letter(), 90, 40, 432, 288), 90, 420, 432, 288);
    expect(await located(two)).toEqual({ labels: ['frame 6×4', 'frame 6×4'], rivals: [] });
  });

  it('finds none on a page without codes, and none around a code alone', async () => {
    expect((await located(letter().frame(100, 100, 288, 432, 1.5))).labels).toEqual([]);
    expect((await located(letter().bars(code128('SAMPLE-000001'), 300, 300, 1.06, 60))).labels).toEqual([]);
  });

  it('prefers the page itself where it has the size of the media, whatever is framed on it', async () => {
    expect((await located(framed(new Drawing(288, 432), 10, 10, 268, 412))).labels).toEqual(['page 4×6']);
  });

  it('a matrix code alone is no label beside a label with bars, but is one by itself, and a rival when it reads like one', async () => {
    const coupon = (d: Drawing): Drawing => d.frame(110, 540, 390, 240, 1.5).text(130, 560, 'Coupon: come again soon', { size: 12 });
    const matrix = (d: Drawing): Drawing => d.matrix(qr('SAMPLE-COUPON-0123456789-ABCDEFGHIJKLMNOPQRSTUVWXYZ-0123456789'), 300, 680, 1);
    expect((await located(matrix(coupon(framed(letter(), 100, 60, 400, 270))))).labels).toEqual(['frame 5.6×3.8']);
    expect((await located(matrix(coupon(letter())))).labels).toHaveLength(1);
    const reads = matrix(coupon(framed(letter(), 100, 60, 400, 270)))
      .text(130, 600, 'Ship to', { size: 10 })
      .text(130, 640, 'Sender', { size: 10 });
    expect((await located(reads)).rivals).toHaveLength(1);
  });
});
