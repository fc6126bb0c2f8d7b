import { describe, expect, it } from 'vitest';
import { pageDividers } from '../../src/locating/page-dividers.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

const dividersOf = async (drawing: Drawing) => pageDividers(await drawnPage(drawing)).map((box) => Object.values(box).map(Math.round));

describe('pageDividers', () => {
  it('are rules from edge to edge, either way, dashed or not', async () => {
    expect(await dividersOf(new Drawing(612, 792).line(0, 400, 612, 400, 1))).toHaveLength(1);
    expect(await dividersOf(new Drawing(612, 792).line(306, 20, 306, 780, 1, 4))).toHaveLength(1);
    expect(await dividersOf(new Drawing(612, 792).line(60, 400, 552, 400, 1))).toEqual([]);
  });

  it('are dashed lines over most of the way, with the scissors at their end and the words that stand in them', async () => {
    const cut = () => new Drawing(612, 792).line(60, 400, 270, 400, 1, 4).line(340, 400, 570, 400, 1, 4);
    const [plain] = await dividersOf(cut());
    expect(plain?.[0]).toBeGreaterThanOrEqual(59);
    const [signed, ...others] = await dividersOf(cut().rect(36, 394, 18, 12).rect(280, 396, 50, 8));
    expect(others).toEqual([]);
    expect(signed).toEqual([36, 394, expect.closeTo(534, -1), 12]);
  });

  it("are not a frame's own lines, but a dashed one through it", async () => {
    const framed = (): Drawing => new Drawing(595, 842).frame(8, 8, 579, 404, 1.5).line(8, 180, 587, 180, 1);
    expect(await dividersOf(framed())).toEqual([]);
    expect(await dividersOf(framed().line(0, 300, 595, 300, 1, 4))).toHaveLength(1);
    expect(await dividersOf(new Drawing(595, 842).line(8, 180, 587, 180, 1))).toHaveLength(1);
  });

  it('are not the rules of labels as wide as the page, where a line to cut along parts those', async () => {
    const rules = (): Drawing => new Drawing(595, 842).line(20, 220, 575, 220, 1).line(20, 260, 575, 260, 2);
    expect(await dividersOf(rules().line(0, 280, 595, 280, 1, 4))).toHaveLength(1);
    expect(await dividersOf(rules())).toHaveLength(2);
    expect(await dividersOf(new Drawing(595, 420).line(20, 220, 575, 220, 1).line(20, 260, 575, 260, 2))).toEqual([]);
    expect(await dividersOf(new Drawing(595, 420).line(20, 220, 575, 220, 1))).toHaveLength(1);
    expect(await dividersOf(new Drawing(595, 842).line(20, 260, 575, 260, 2).line(0, 280, 595, 280, 1, 4))).toHaveLength(2);
  });

  it('leave out what stands beside a line, and lines that are short, or of which too little is drawn', async () => {
    const [cut] = await dividersOf(new Drawing(612, 792).line(40, 400, 572, 400, 1, 4).rect(80, 404, 100, 9));
    expect(cut?.[3]).toBeLessThan(4);
    expect(await dividersOf(new Drawing(612, 792).line(60, 400, 500, 400, 1, 4))).toEqual([]);
    expect(await dividersOf(new Drawing(612, 792).line(40, 400, 200, 400, 1, 4).line(430, 400, 572, 400, 1, 4))).toEqual([]);
  });

  it('are rules that go down by a hair on a page that was straightened, and on no other', async () => {
    const page = await drawnPage(new Drawing(612, 792).line(20, 400, 330, 400, 1).line(315, 402, 600, 402, 1));
    expect(pageDividers(page)).toEqual([]);
    const crooked = await drawnPage(new Drawing(612, 792).line(20, 400, 330, 400, 1).line(315, 402, 600, 402, 1));
    Object.defineProperty(crooked, 'skew', { value: 1.2 });
    expect(pageDividers(crooked)).toHaveLength(1);
    const apart = await drawnPage(new Drawing(612, 792).line(20, 400, 290, 400, 1).line(315, 402, 600, 402, 1));
    Object.defineProperty(apart, 'skew', { value: 1.2 });
    expect(pageDividers(apart)).toEqual([]);
  });

  it('are pale dashes or dots from edge to edge, as a scan and a browser have them, with or without words on the page', async () => {
    const scan = async (from: number, ...words: readonly object[]) => {
      const page = await drawnPage(new Drawing(612, 792));
      const ink = page.ink();
      const row = Math.round(400 * ink.pixelsPerPt) * ink.width;
      const data = ink.data.map((_, at) => (at >= row + from && at < row + ink.width && at % 9 < 5 ? 215 : 255));
      Object.defineProperty(page, 'ink', { value: () => Object.assign({}, ink, { data }) });
      if (words.length > 0) Object.defineProperty(page, 'words', { value: () => words });
      return pageDividers(page);
    };
    const [line, ...others] = await scan(0);
    expect(others).toEqual([]);
    expect(Math.abs((line?.y ?? 0) - 400)).toBeLessThan(2);
    expect(await scan(90)).toEqual([]);
    expect(await scan(0, { text: 'word', box: { x: 300, y: 600, width: 30, height: 10 }, turn: 0, fontSize: 10 })).toHaveLength(1);
  });

  it('are dashed lines across long label paper, where a tab is torn off, and no others there', async () => {
    expect(await dividersOf(new Drawing(288, 576).line(0, 432, 288, 432, 1, 4))).toHaveLength(1);
    expect(await dividersOf(new Drawing(288, 576).line(0, 432, 288, 432, 1))).toEqual([]);
    expect(await dividersOf(new Drawing(288, 576).line(200, 0, 200, 576, 1, 4))).toEqual([]);
    expect(await dividersOf(new Drawing(288, 432).line(0, 324, 288, 324, 1, 4))).toEqual([]);
  });

  it('have the words that stand on them and touch them', async () => {
    const cut = (top: number): Drawing => {
      const drawing = new Drawing(612, 792).line(40, 400, 572, 400, 1, 4);
      for (let letter = 0; letter < 6; letter++) drawing.rect(44 + 9 * letter, top, 5, 8.4);
      return drawing;
    };
    expect((await dividersOf(cut(391.5)))[0]?.[1]).toBeLessThan(393);
    expect((await dividersOf(cut(386)))[0]?.[1]).toBeGreaterThan(396);
  });

  it('are none on a small page: the page is the label', async () => {
    expect(await dividersOf(new Drawing(288, 432).line(0, 200, 288, 200, 1))).toEqual([]);
  });
});
