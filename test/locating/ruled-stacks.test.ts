import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { ruledStacks, type RuledStack } from '../../src/locating/ruled-stacks.js';
import type { IsOther } from '../../src/locating/whole-answers.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

/** A label of 280 pt across from (60, 60): rules at three heights, blocks between them, and a last block `white` below the last rule. */
const label = (white: number): Drawing => {
  const drawing = new Drawing(612, 792);
  for (const y of [100, 220, 340]) drawing.rect(60, y, 280, 1.5);
  return drawing
    .rect(62, 60, 180, 28)
    .rect(62, 112, 120, 96)
    .rect(62, 232, 200, 96)
    .rect(62, 341 + white, 150, 50);
};

const stacksOf = async (drawing: Drawing, isOther: IsOther = () => false): Promise<readonly RuledStack[]> => {
  const page = await drawnPage(drawing);
  return ruledStacks(page, inkBlobs(page.ink()), isOther);
};
const extent = ({ box: { y, height } }: RuledStack): readonly [number, number] => [Math.round(y), Math.round(y + height)];

describe('ruledStacks', () => {
  it('reach from the ink above the first rule to that below the last one, and to the ends of the rules', async () => {
    const [stack, ...more] = await stacksOf(label(12));
    expect(more).toEqual([]);
    expect(stack?.ruled).toBe('level');
    expect(stack?.box.x).toBeCloseTo(60, 0);
    expect(stack?.box.width).toBeCloseTo(280, 0);
    expect(stack && extent(stack)).toEqual([60, 403]);
  });

  it('tell when rules are their first and last ink', async () => {
    expect((await stacksOf(label(12))).map(({ closed }) => closed)).toEqual([false]);
    const closed = new Drawing(612, 792).rect(60, 100, 280, 6).rect(60, 220, 280, 1.5).rect(60, 340, 280, 6).rect(62, 112, 120, 96);
    expect((await stacksOf(closed)).map((stack) => stack.closed)).toEqual([true]);
  });

  it('end with the first and the last rule where those alone are thick, and a line of type stands clear of them', async () => {
    const closed = (thick: number, white: number): Drawing =>
      new Drawing(612, 792)
        .rect(60, 60, 280, thick)
        .rect(60, 180, 280, 1)
        .rect(60, 340, 280, thick)
        .rect(62, 75, 180, 60)
        .rect(62, 200, 200, 60)
        .rect(62, 300, 200, 30)
        .rect(62, 340 + thick + white, 150, 8);
    expect((await stacksOf(closed(3, 28))).map(extent)).toEqual([[60, 343]]);
    expect((await stacksOf(closed(1, 28))).map(extent)).not.toContainEqual([60, 343]);
    expect((await stacksOf(closed(3, 5))).map(extent)).not.toContainEqual([60, 343]);
  });

  it('know a label that lies', async () => {
    const drawing = new Drawing(792, 612);
    for (const x of [100, 220, 340]) drawing.rect(x, 60, 1.5, 280);
    const [stack] = await stacksOf(drawing.rect(60, 62, 28, 180).rect(112, 62, 96, 120).rect(232, 62, 96, 200).rect(353, 62, 50, 150));
    expect(stack?.ruled).toBe('upright');
    expect(stack?.box.height).toBeCloseTo(280, 0);
    expect(stack?.box.width).toBeCloseTo(343, 0);
  });

  it('end before ink that keeps to no column, what calls itself something, and white as wide as no label has it', async () => {
    expect((await stacksOf(label(12).rect(40, 420, 400, 60))).map(extent)).toEqual([[60, 403]]);
    const saysSlip = ({ y }: Box): boolean => y > 345;
    expect((await stacksOf(label(12), saysSlip)).map(extent)).toEqual([[60, 342]]);
    expect((await stacksOf(label(60))).map(extent)).toEqual([[60, 342]]);
  });

  it('end before a line of type that begins beside the rules, of which some words stand below them', async () => {
    const words = (from: number): Drawing =>
      label(12)
        .rect(from, 415, 60 - from + 30, 12)
        .rect(94, 415, 40, 12);
    expect((await stacksOf(words(62))).map(extent)).toEqual([[60, 427]]);
    const wide = label(12).rect(20, 415, 38, 12).rect(62, 415, 40, 12).rect(106, 415, 30, 12);
    expect((await stacksOf(wide)).map(extent)).toEqual([[60, 403]]);
  });

  it('end before a block of which only the whole says what it is', async () => {
    const block = (): Drawing => label(12).rect(62, 420, 60, 40).rect(130, 421, 60, 60).rect(200, 421, 60, 60);
    const isTall = ({ height }: Box): boolean => height > 62;
    expect((await stacksOf(block(), (part) => part.y > 415 && isTall(part))).map(extent)).toEqual([[60, 403]]);
    const isSecondLine = ({ y }: Box): boolean => y > 425;
    expect((await stacksOf(label(12).rect(62, 420, 60, 8).rect(62, 433, 60, 8), isSecondLine)).map(extent)).toEqual([[60, 428]]);
  });

  it('end before what is written across them', async () => {
    const isAcross: IsOther = ({ y }, rules) => rules === 'level' && y > 345;
    expect((await stacksOf(label(12), isAcross)).map(extent)).toEqual([[60, 342]]);
  });

  it('reach around a line of small print along a side, but not around a block there or what has more behind it', async () => {
    const widthOf = async (drawing: Drawing): Promise<number> => Math.round((await stacksOf(drawing))[0]?.box.width ?? 0);
    expect(await widthOf(label(12).rect(344, 80, 6, 120).rect(344, 210, 6, 90))).toBe(290);
    expect(await widthOf(label(12).rect(50, 80, 6, 120))).toBe(290);
    expect(await widthOf(label(12).rect(344, 80, 20, 120))).toBe(280);
    expect(await widthOf(label(12).rect(344, 80, 6, 120).rect(354, 80, 6, 120))).toBe(280);
    expect(await widthOf(label(12).rect(352, 80, 6, 120))).toBe(280);
  });

  it('give both answers where white inside may as well be the end', async () => {
    expect((await stacksOf(label(30))).map(extent)).toEqual([
      [60, 342],
      [60, 421],
    ]);
  });

  it('take the end that fills a known size', async () => {
    const drawing = label(12).rect(62, 435, 150, 44).rect(62, 515, 150, 12);
    expect((await stacksOf(drawing)).map(extent)).toEqual([[60, 479]]);
  });

  it('are not made of the two sides of a box inside a label', async () => {
    const drawing = new Drawing(612, 792).frame(60, 300, 280, 60, 1.5).rect(62, 240, 200, 40).rect(62, 100, 200, 60);
    expect(await stacksOf(drawing)).toEqual([]);
  });

  it('need rules of one length with nothing across their ends', async () => {
    const drawing = new Drawing(612, 792).rect(60, 100, 280, 1.5).rect(60, 220, 240, 1.5).rect(60, 340, 200, 1.5);
    expect(await stacksOf(drawing)).toEqual([]);
    expect(await stacksOf(label(12).rect(300, 150, 120, 20))).toEqual([]);
  });
});
